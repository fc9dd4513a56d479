package org.rimefast.check.internal.hot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.check.Cost.Factor;
import org.rimefast.check.Cost.Product;
import org.rimefast.check.Cost.Reach;
import org.rimefast.check.Word;
import org.rimefast.check.internal.Sparing;
import org.rimefast.check.internal.Words;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Value;

/** Finds which elements a rule makes the fast pass look at, one inside the other. */
public final class CostFinder implements Condition.Visitor<Boolean>, Value.Visitor<Boolean> {
  // Visitors have to answer something.
  private static final boolean NOTHING_MORE = true;

  private final Words words;
  private final List<Product> found = new ArrayList<>();
  private List<Factor> around;

  private CostFinder(Words words, List<Factor> around) {
    this.words = words;
    this.around = around;
  }

  /** The products of a rule; one that is part of another is left out. */
  public static List<Product> products(Words words, Rule rule) {
    List<Factor> subject = List.of(new Factor(rule.subject().noun(), Reach.ALL));
    CostFinder finder = new CostFinder(words, subject);
    finder.found.add(new Product(subject));
    finder.visit(rule.where());
    finder.visit(rule.onlyIf());
    rule.requirement().accept(finder);
    List<Product> all = finder.found.stream().distinct().toList();
    return all.stream()
        .filter(product -> all.stream().noneMatch(other -> isPart(product, other)))
        .toList();
  }

  private static boolean isPart(Product product, Product other) {
    List<Factor> factors = product.factors();
    return factors.size() < other.factors().size()
        && other.factors().subList(0, factors.size()).equals(factors);
  }

  private void visit(Optional<Condition> condition) {
    condition.ifPresent(c -> c.accept(this));
  }

  /** Does {@code inner} with one factor more. */
  private void within(Factor factor, Runnable inner) {
    List<Factor> outer = around;
    List<Factor> more = new ArrayList<>(outer);
    more.add(factor);
    around = List.copyOf(more);
    found.add(new Product(around));
    inner.run();
    around = outer;
  }

  private boolean arguments(List<Argument> arguments) {
    for (Argument argument : arguments) {
      if (argument instanceof Value value) {
        value.accept(this);
      } else if (argument instanceof Argument.Along along) {
        arguments(along.arguments());
      } else if (argument instanceof Argument.Those those) {
        visit(those.where());
      }
    }
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitAnd(Condition.And and) {
    and.parts().forEach(part -> part.accept(this));
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitOr(Condition.Or or) {
    or.parts().forEach(part -> part.accept(this));
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitNot(Condition.Not not) {
    return not.part().accept(this);
  }

  @Override
  public Boolean visitCompare(Condition.Compare compare) {
    compare.left().accept(this);
    return compare.right().accept(this);
  }

  @Override
  public Boolean visitHolds(Condition.Holds holds) {
    if (words.relation(holds.relation()) instanceof Word.ChainWord) {
      within(
          new Factor(holds.relation().subject(), Reach.CHAIN), () -> arguments(holds.arguments()));
      return NOTHING_MORE;
    }
    return arguments(holds.arguments());
  }

  @Override
  public Boolean visitIsA(Condition.IsA isA) {
    isA.term().ifPresent(term -> term.condition().accept(this));
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitSame(Condition.Same same) {
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitAnswered(Condition.Answered answered) {
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitQuantified(Condition.Quantified quantified) {
    boolean near = Sparing.of(words, quantified).isPresent();
    within(
        new Factor(quantified.variable().noun(), near ? Reach.NEAR : Reach.ALL),
        () -> {
          visit(quantified.where());
          quantified.body().accept(this);
        });
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitLiteral(Value.Literal literal) {
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitWord(Value.Word word) {
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitText(Value.Text text) {
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitNamed(Value.Named named) {
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitOf(Value.Of of) {
    return arguments(of.arguments());
  }

  @Override
  public Boolean visitArithmetic(Value.Arithmetic arithmetic) {
    arithmetic.left().accept(this);
    return arithmetic.right().accept(this);
  }

  @Override
  public Boolean visitAggregate(Value.Aggregate aggregate) {
    within(
        new Factor(
            aggregate.variable().noun(),
            Sparing.of(words, aggregate).isPresent() ? Reach.NEAR : Reach.ALL),
        () -> {
          visit(aggregate.where());
          aggregate.of().ifPresent(value -> value.accept(this));
        });
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitConditional(Value.Conditional conditional) {
    conditional.condition().accept(this);
    conditional.then().accept(this);
    return conditional.otherwise().accept(this);
  }

  /** All inputs of a table are worked out, whichever row they lead to. */
  @Override
  public Boolean visitLookup(Value.Lookup lookup) {
    lookup.table().inputs().forEach(input -> input.accept(this));
    return NOTHING_MORE;
  }
}
