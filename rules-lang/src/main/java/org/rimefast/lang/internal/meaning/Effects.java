package org.rimefast.lang.internal.meaning;

import java.util.List;
import java.util.function.Predicate;
import org.rimefast.lang.rule.Change.Effect;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Severity;
import org.rimefast.lang.rule.Value;
import org.rimefast.units.Rational;

/** Works out what a change does to a rule, whatever the plan. */
public final class Effects {
  private Effects() {}

  /**
   * One number becomes another.
   *
   * @param rule the rule as it was
   * @param isChanged true of the values in it that are the number
   * @param before what the number was, in SI units
   * @param after what it is
   */
  public static Effect ofNumber(
      Rule rule, Predicate<Value> isChanged, Rational before, Rational after) {
    if (before.compareTo(after) == 0) {
      return Effect.UNCHANGED;
    }
    Directions directions = new Directions(isChanged, before, after);
    // Broken is what the rule speaks of and what does not do what is asked.
    Direction broken =
        directions
            .of(rule.where())
            .with(directions.of(rule.onlyIf()))
            .with(rule.requirement().accept(directions).reversed());
    return switch (broken) {
      case STILL -> Effect.UNCHANGED;
      case UP -> Effect.STRICTER;
      case DOWN -> Effect.LOOSER;
      case ASIDE -> Effect.NEITHER;
      case UNKNOWN -> Effect.UNPROVED;
    };
  }

  /** A graver severity is stricter. */
  public static Effect ofSeverity(Severity before, Severity after) {
    return byOrder(after.compareTo(before));
  }

  /** An earlier stage is stricter. */
  public static Effect ofStage(List<String> stages, String before, String after) {
    return byOrder(stages.indexOf(after) - stages.indexOf(before));
  }

  private static Effect byOrder(int later) {
    return later == 0 ? Effect.UNCHANGED : later < 0 ? Effect.STRICTER : Effect.LOOSER;
  }
}
