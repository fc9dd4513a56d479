package org.rimefast.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.rimefast.check.internal.hot.RuleProgram;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.plan.InspectReading;

/** Finds the readings that no inspect item asks for. */
final class UnaskedReadings {
  private final PlanFacts facts;
  private final Function<String, Optional<RuleProgram>> programs;

  /**
   * A finder.
   *
   * @param programs the program of a rule or inspect item, by its id
   */
  UnaskedReadings(PlanFacts facts, Function<String, Optional<RuleProgram>> programs) {
    this.facts = facts;
    this.programs = programs;
  }

  List<UnaskedReading> find() {
    List<UnaskedReading> unasked = new ArrayList<>();
    for (InspectReading reading : facts.plan().readings()) {
      int handle = facts.handleOf(reading);
      if (handle < 0) {
        throw new IllegalStateException("a reading of nothing passed: " + reading);
      }
      String label = facts.name(handle).label();
      why(reading, handle, label)
          .ifPresent(why -> unasked.add(new UnaskedReading(reading, label, why)));
    }
    return unasked;
  }

  private Optional<String> why(InspectReading reading, int handle, String label) {
    if (facts.isOfTheFuture(reading)) {
      return Optional.of(
          "its day, " + reading.when() + ", has not come yet, so it counts for nothing");
    }
    Optional<RuleProgram> program = programs.apply(reading.inspect());
    if (program.isEmpty()) {
      return Optional.of("the standard has no inspect item " + reading.inspect());
    }
    if (program.get().rule().question().isEmpty()) {
      return Optional.of(reading.inspect() + " is a rule, which asks nothing on site");
    }
    Noun noun = program.get().rule().subject().noun();
    if (!facts.isMember(noun, handle)) {
      return Optional.of(
          "inspect item " + reading.inspect() + " asks of " + noun.plural() + ", not of " + label);
    }
    Verdict verdict = program.get().verdict(program.get().frame(facts), handle);
    return verdict == Verdict.NOT_APPLICABLE
        ? Optional.of("inspect item " + reading.inspect() + " does not ask it of " + label)
        : Optional.empty();
  }
}
