package org.rimefast.check.internal;

import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.lang.rule.Value;

/** Arithmetic on numbers that are known only to lie between two ends. */
public final class Arithmetics {
  private Arithmetics() {}

  /** Puts {@code left operator right} in {@code left}. A division by what may be zero fails. */
  public static void combine(Value.Arithmetic.Operator operator, Reading left, Reading right) {
    if (left.isFailed() || right.isFailed()) {
      left.failed();
      return;
    }
    if (!left.isPresent() || !right.isPresent()) {
      left.missing();
      return;
    }
    switch (operator) {
      case PLUS -> left.between(left.least() + right.least(), left.most() + right.most());
      case MINUS -> left.between(left.least() - right.most(), left.most() - right.least());
      case TIMES -> products(left, right.least(), right.most());
      case DIVIDED_BY -> {
        if (right.least() <= 0 && right.most() >= 0) {
          left.failed();
        } else {
          products(left, 1 / right.most(), 1 / right.least());
        }
      }
    }
    if (left.isPresent() && !(Double.isFinite(left.least()) && Double.isFinite(left.most()))) {
      left.failed();
    }
  }

  private static void products(Reading left, double low, double high) {
    double a = left.least() * low;
    double b = left.least() * high;
    double c = left.most() * low;
    double d = left.most() * high;
    left.between(
        Math.min(Math.min(a, b), Math.min(c, d)), Math.max(Math.max(a, b), Math.max(c, d)));
  }

  /** Puts in {@code one} all that it and {@code other} may be, if both are known. */
  public static void hull(Reading one, Reading other) {
    if (one.isFailed() || other.isFailed()) {
      one.failed();
    } else if (!one.isPresent() || !other.isPresent()) {
      one.missing();
    } else {
      one.between(Math.min(one.least(), other.least()), Math.max(one.most(), other.most()));
    }
  }

  /** True for a function to which each element adds, so that it matters how many there are. */
  public static boolean adds(Value.Aggregate.Function function) {
    return function == Value.Aggregate.Function.COUNT
        || function == Value.Aggregate.Function.TOTAL
        || function == Value.Aggregate.Function.AVERAGE;
  }

  /**
   * Makes one number of many, some of which may not count. What is not certain widens the result or
   * leaves it missing; it is never taken for granted.
   */
  public static final class Tally {
    private Value.Aggregate.Function function = Value.Aggregate.Function.COUNT;
    private int certain;
    private int possible;
    private double least;
    private double most;
    private boolean missing;
    private boolean failed;

    /** Forgets everything and starts anew. */
    public void start(Value.Aggregate.Function next) {
      function = next;
      certain = 0;
      possible = 0;
      missing = false;
      failed = false;
      least = startOf(next);
      most = startOf(next);
    }

    private static double startOf(Value.Aggregate.Function function) {
      return switch (function) {
        case SMALLEST, NEAREST -> Double.POSITIVE_INFINITY;
        case LARGEST -> Double.NEGATIVE_INFINITY;
        case COUNT, TOTAL, AVERAGE -> 0;
      };
    }

    /**
     * Adds the number of one element.
     *
     * @param counts whether the element counts; not FALSE
     * @param value its number; for a count, anything present, or nothing if the element stands for
     *     it is not known how many
     * @param conditionFailed true if whether it counts could not be worked out
     */
    public void add(Truth counts, Reading value, boolean conditionFailed) {
      boolean sure = counts == Truth.TRUE;
      possible++;
      certain += sure ? 1 : 0;
      failed |= value.isFailed() || conditionFailed;
      if (!value.isPresent()) {
        missing = true;
        return;
      }
      switch (function) {
        case COUNT -> {}
        case TOTAL, AVERAGE -> {
          least += sure ? value.least() : Math.min(0, value.least());
          most += sure ? value.most() : Math.max(0, value.most());
        }
        case SMALLEST, NEAREST -> {
          least = Math.min(least, value.least());
          most = sure ? Math.min(most, value.most()) : most;
        }
        case LARGEST -> {
          most = Math.max(most, value.most());
          least = sure ? Math.max(least, value.least()) : least;
        }
      }
    }

    /** Puts the result in {@code into}. */
    public void finish(Reading into) {
      if (failed) {
        into.failed();
      } else if (missing) {
        into.missing();
      } else if (function == Value.Aggregate.Function.COUNT) {
        into.between(certain, possible);
      } else if (function == Value.Aggregate.Function.TOTAL) {
        into.between(least, most);
      } else if (certain == 0
          || (function == Value.Aggregate.Function.AVERAGE && certain < possible)) {
        into.missing();
      } else if (function == Value.Aggregate.Function.AVERAGE) {
        into.between(least / certain, most / certain);
      } else {
        into.between(least, most);
      }
    }
  }
}
