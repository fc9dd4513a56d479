package org.rimefast.check;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.rimefast.check.internal.Words;
import org.rimefast.check.internal.hot.CostFinder;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.vocabulary.Noun;

/**
 * How the work of a rule grows with the size of a plan: a formula in numbers of elements, such as
 * {@code boxes x (studs near)}. It is the most that can be looked at; a check stops earlier where
 * the answer is found.
 *
 * <p>Use: {@code Cost.of(dictionary, standard).forEach(cost -> print(cost.formula()))}.
 *
 * @param rule the rule
 * @param products what is looked at, one product for each way in which elements are nested; none is
 *     the beginning of another
 */
public record Cost(Rule rule, List<Product> products) {
  /** A module has one room and six faces, however large it is. */
  private static final Set<String> FIXED_IN_NUMBER = Set.of("room", "face");

  /** Which elements of a kind are looked at. */
  public enum Reach {
    /** All of them. */
    ALL,
    /** Those that an index finds near the other element. */
    NEAR,
    /** Those that chains from the other element lead to. */
    CHAIN
  }

  /**
   * Elements of one kind.
   *
   * @param noun the kind
   * @param reach which of them
   */
  public record Factor(Noun noun, Reach reach) {
    /** {@code studs} or {@code (studs near)}. */
    public String words() {
      return switch (reach) {
        case ALL -> noun.plural();
        case NEAR -> "(" + noun.plural() + " near)";
        case CHAIN -> "(" + noun.plural() + " along chains)";
      };
    }

    /** True if their number grows with the plan. */
    boolean grows() {
      return reach == Reach.ALL && !isFixed(noun);
    }

    private static boolean isFixed(Noun noun) {
      return FIXED_IN_NUMBER.contains(noun.id())
          || noun.broader().stream().anyMatch(Factor::isFixed);
    }
  }

  /**
   * Elements that are looked at for each of others.
   *
   * @param factors the kinds, the rule's own first
   */
  public record Product(List<Factor> factors) {
    /** Copies the list. */
    public Product {
      factors = List.copyOf(factors);
    }

    /** {@code boxes x (studs near)}. */
    public String words() {
      return factors.stream().map(Factor::words).collect(Collectors.joining(" x "));
    }

    /**
     * True if two or more of the numbers grow with the plan, so that twice the plan is four times
     * the work.
     */
    public boolean isWarned() {
      return factors.stream().filter(Factor::grows).count() > 1;
    }
  }

  /** Copies the list. */
  public Cost {
    products = List.copyOf(products);
  }

  /**
   * The cost of each rule of a standard, in the order written.
   *
   * @param dictionary the words that the standard was compiled with, and their indexes
   * @throws IllegalArgumentException if the standard uses a word that the dictionary does not have
   */
  public static List<Cost> of(Dictionary dictionary, Standard standard) {
    Words words = new Words(dictionary.lookup());
    return standard.rules().stream()
        .map(rule -> new Cost(rule, CostFinder.products(words, rule)))
        .toList();
  }

  /** The whole formula: {@code boxes x (studs near) + boxes x cables}. */
  public String formula() {
    return products.stream().map(Product::words).collect(Collectors.joining(" + "));
  }

  /** A sentence for each product that no index serves; empty if the work grows as the plan does. */
  public List<String> warnings() {
    return products.stream()
        .filter(Product::isWarned)
        .map(
            product ->
                "no index serves "
                    + product.words()
                    + ": twice as many of each make "
                    + (1L << product.factors().stream().filter(Factor::grows).count())
                    + " times the work")
        .toList();
  }
}
