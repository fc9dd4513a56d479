package org.rimefast.check.cases;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Checker;
import org.rimefast.check.Finding;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Verdict;
import org.rimefast.lang.cases.Expectation;
import org.rimefast.lang.cases.Expectation.Outcome;
import org.rimefast.lang.rule.Rule;

/** Compares what one rule says of a plan with what is expected. */
final class RuleComparison {
  private static final int NAMED = 10;

  private final Checker checker;
  private final Rule rule;
  private final PlanFacts facts;
  private final List<Expectation> expectations;
  private final boolean lenient;
  private final int[] elements;
  private final Verdict[] verdicts;

  /**
   * A comparison.
   *
   * @param lenient whether a rule that speaks of no element need not be met
   */
  RuleComparison(
      Checker checker,
      Rule rule,
      PlanFacts facts,
      List<Expectation> expectations,
      boolean lenient) {
    this.checker = checker;
    this.rule = rule;
    this.facts = facts;
    this.expectations = expectations;
    this.lenient = lenient;
    this.elements = facts.members(rule.subject().noun());
    this.verdicts = checker.verdicts(rule.id(), facts);
  }

  /** True if some element meets the rule. */
  boolean isMet() {
    return count(Verdict.MET) > 0;
  }

  /** Gives every mismatch; its words are made only if they are asked for. */
  void compare(Consumer<Supplier<Mismatch>> mismatches) {
    Map<Integer, Expectation> expected = new LinkedHashMap<>();
    boolean nothing = false;
    for (Expectation expectation : expectations) {
      nothing |= expectation.outcome() == Outcome.NOTHING;
      if (expectation.outcome() == Outcome.MET && expectation.elements().isEmpty()) {
        some(expectation, mismatches);
      }
      for (String name : expectation.elements()) {
        int handle = ElementNames.handle(facts, name);
        if (handle < 0) {
          mismatches.accept(() -> mismatch(words(expectation, name), unknown(name)));
        } else if (!facts.isMember(rule.subject().noun(), handle)) {
          mismatches.accept(() -> mismatch(words(expectation, name), stranger(handle)));
        } else {
          expected.put(handle, expectation);
        }
      }
    }
    for (int i = 0; i < elements.length; i++) {
      compare(elements[i], verdicts[i], expected.get(elements[i]), nothing, mismatches);
    }
  }

  private void compare(
      int element,
      Verdict verdict,
      @Nullable Expectation expectation,
      boolean nothing,
      Consumer<Supplier<Mismatch>> mismatches) {
    if (expectation != null) {
      if (verdict != verdict(expectation.outcome()) || !isWanted(expectation, element)) {
        String label = facts.name(element).label();
        mismatches.accept(() -> mismatch(words(expectation, label), found(element)));
      }
      return;
    }
    boolean sound = verdict == Verdict.NOT_APPLICABLE || (verdict == Verdict.MET && !nothing);
    if (!sound) {
      mismatches.accept(
          () ->
              mismatch(
                  nothing
                      ? "nothing: the rule speaks of no " + rule.subject().noun().singular()
                      : "no finding on "
                          + facts.name(element).label()
                          + ", which the case does not name",
                  found(element)));
    }
  }

  private void some(Expectation expectation, Consumer<Supplier<Mismatch>> mismatches) {
    boolean excused = lenient && expectation.rule().isEmpty();
    if (isMet() || (excused && count(Verdict.NOT_APPLICABLE) == elements.length)) {
      return;
    }
    mismatches.accept(
        () ->
            mismatch("met by some " + rule.subject().noun().singular(), "met by none: " + none()));
  }

  private Mismatch mismatch(String expected, String found) {
    return new Mismatch(Optional.of(rule), expected, found);
  }

  /** Why no element meets the rule. */
  private String none() {
    if (elements.length == 0) {
      return "the plan has no " + rule.subject().noun().plural();
    }
    Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
    for (Verdict verdict : verdicts) {
      counts.merge(verdict, 1, Integer::sum);
    }
    if (elements.length == 1) {
      return found(elements[0]);
    }
    return counts.entrySet().stream()
            .map(entry -> entry.getValue() + " " + entry.getKey().words())
            .collect(Collectors.joining(", "))
        + "; the first is "
        + found(elements[0]);
  }

  private int count(Verdict verdict) {
    int count = 0;
    for (Verdict one : verdicts) {
      count += one == verdict ? 1 : 0;
    }
    return count;
  }

  private static @Nullable Verdict verdict(Outcome outcome) {
    return switch (outcome) {
      case MET -> Verdict.MET;
      case BROKEN -> Verdict.BROKEN;
      case UNDECIDED -> Verdict.UNDECIDED;
      case ERROR -> Verdict.ERROR;
      case NOT_APPLICABLE -> Verdict.NOT_APPLICABLE;
      case NOTHING -> null;
    };
  }

  /** True if an undecided element wants for what was expected. */
  private boolean isWanted(Expectation expectation, int element) {
    if (expectation.want().isEmpty()) {
      return true;
    }
    Expectation.Want want = expectation.want().get();
    Finding finding = checker.explain(rule.id(), element, facts);
    if (want.value().isEmpty()) {
      return finding.missing().isEmpty();
    }
    String value = want.value().get();
    Optional<String> owner =
        want.element()
            .map(
                name -> {
                  int handle = ElementNames.handle(facts, name);
                  return handle < 0 ? name : facts.name(handle).label();
                });
    return finding.missing().stream()
        .anyMatch(
            missing ->
                owner.isPresent()
                    ? missing.description().equals(value + " of " + owner.get())
                    : missing.description().equals(value)
                        || missing.description().startsWith(value + " of "));
  }

  private static String words(Expectation expectation, String element) {
    String want =
        expectation
            .want()
            .map(
                wanted ->
                    wanted
                        .value()
                        .map(
                            value ->
                                " for want of "
                                    + value
                                    + wanted.element().map(name -> " of " + name).orElse(""))
                        .orElse(" within tolerance"))
            .orElse("");
    return expectation.outcome().words()
        + (expectation.outcome() == Outcome.NOT_APPLICABLE ? " to " : " by ")
        + element
        + want;
  }

  private String found(int element) {
    Finding finding = checker.explain(rule.id(), element, facts);
    return finding.verdict().words()
        + (finding.verdict() == Verdict.NOT_APPLICABLE ? " to " : " by ")
        + finding.element().label()
        + ": "
        + finding.reason();
  }

  private String unknown(String name) {
    StringBuilder told = new StringBuilder("the plan has no element \"" + name + "\"");
    if (elements.length == 0) {
      return told.append(", and no ").append(rule.subject().noun().plural()).toString();
    }
    told.append("; of its ").append(rule.subject().noun().plural()).append(" there ");
    told.append(elements.length == 1 ? "is " : "are ");
    for (int i = 0; i < Math.min(NAMED, elements.length); i++) {
      String id = facts.name(elements[i]).id();
      told.append(i == 0 ? "" : ", ").append(id.isEmpty() ? facts.name(elements[i]).label() : id);
    }
    return elements.length > NAMED
        ? told.append(String.format(Locale.ROOT, " and %d more", elements.length - NAMED))
            .toString()
        : told.toString();
  }

  private String stranger(int handle) {
    return "the rule speaks of "
        + rule.subject().noun().plural()
        + ", and "
        + facts.name(handle).label()
        + " is none";
  }
}
