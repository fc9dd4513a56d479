package org.rimefast.check.internal.hot;

import org.jspecify.annotations.Nullable;
import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.check.internal.Intervals;
import org.rimefast.lang.rule.Comparison;

/**
 * Nodes that look tables up. All rows that may hold are found, for an input may lie in several of
 * them within its tolerance, or be missing: then they must agree.
 */
final class Lookups {
  private Lookups() {}

  /** Whether a cell may hold of an input. */
  interface Cell {
    boolean mayHold(SlotValues inputs, int input);
  }

  record WordCell(boolean[] words) implements Cell {
    @Override
    public boolean mayHold(SlotValues inputs, int input) {
      int word = inputs.handles[input];
      return word < 0 || words[word];
    }
  }

  /** Ranges by their ends; an end that is not there is infinite and included. */
  record NumberCell(double[] low, boolean[] withLow, double[] high, boolean[] withHigh)
      implements Cell {
    @Override
    public boolean mayHold(SlotValues inputs, int input) {
      Reading number = inputs.numbers[input];
      if (!number.isPresent()) {
        return true;
      }
      for (int i = 0; i < low.length; i++) {
        if (mayBe(number, withLow[i] ? Comparison.AT_LEAST : Comparison.MORE_THAN, low[i])
            && mayBe(number, withHigh[i] ? Comparison.AT_MOST : Comparison.LESS_THAN, high[i])) {
          return true;
        }
      }
      return false;
    }

    private static boolean mayBe(Reading number, Comparison comparison, double limit) {
      return Double.isInfinite(limit)
          || Intervals.compare(comparison, number.least(), number.most(), limit, limit)
              != Truth.FALSE;
    }
  }

  /**
   * A table's inputs and cells.
   *
   * @param owner whose value it is
   * @param own where the inputs' own element stands in a frame
   * @param numbers reads an input that is a number; null at the place of a word
   * @param words tells an input that is a word; null at the place of a number
   * @param rows the cells of each row
   * @param slots where the inputs are kept
   */
  record Rows(
      Nodes.Find owner,
      int own,
      Nodes.@Nullable Read[] numbers,
      Nodes.@Nullable Choose[] words,
      Cell[][] rows,
      int slots) {

    /** Puts the inputs in their places; false if one of them is not known. */
    boolean read(Frame frame, int element) {
      frame.elements[own] = element;
      SlotValues inputs = frame.slots[slots];
      boolean known = true;
      for (int i = 0; i < numbers.length; i++) {
        Nodes.Read number = numbers[i];
        Nodes.Choose word = words[i];
        if (number != null) {
          Reading reading = inputs.numbers[i];
          number.read(frame, reading);
          frame.failed |= reading.isFailed();
          known &= reading.isPresent();
        } else if (word != null) {
          inputs.handles[i] = word.choose(frame);
          known &= inputs.handles[i] >= 0;
        }
      }
      return known;
    }

    boolean mayHold(Frame frame, int row) {
      Cell[] cells = rows[row];
      for (int i = 0; i < cells.length; i++) {
        if (!cells[i].mayHold(frame.slots[slots], i)) {
          return false;
        }
      }
      return true;
    }
  }

  record Numbers(Rows rows, double[] results) implements Nodes.Read {
    @Override
    public void read(Frame frame, Reading into) {
      int element = rows.owner().find(frame);
      if (element < 0) {
        into.missing();
        return;
      }
      boolean failedBefore = frame.failed;
      frame.failed = false;
      boolean known = rows.read(frame, element);
      boolean failed = frame.failed;
      frame.failed = failedBefore;
      double least = Double.POSITIVE_INFINITY;
      double most = Double.NEGATIVE_INFINITY;
      for (int row = 0; row < results.length; row++) {
        if (rows.mayHold(frame, row)) {
          least = Math.min(least, results[row]);
          most = Math.max(most, results[row]);
        }
      }
      if (known || least == most) {
        into.between(least, most); // infinite, so failed, if no row holds
      } else if (failed) {
        into.failed();
      } else {
        into.missing();
      }
    }
  }

  record Words(Rows rows, int[] results) implements Nodes.Choose {
    @Override
    public int choose(Frame frame) {
      int element = rows.owner().find(frame);
      if (element < 0) {
        return -1;
      }
      boolean failedBefore = frame.failed;
      frame.failed = false;
      boolean known = rows.read(frame, element);
      boolean failed = frame.failed;
      frame.failed = failedBefore;
      int found = -1;
      boolean several = false;
      for (int row = 0; row < results.length; row++) {
        if (rows.mayHold(frame, row)) {
          several |= found >= 0 && found != results[row];
          found = results[row];
        }
      }
      frame.failed |= found < 0 || (several && !known && failed);
      return several ? -1 : found;
    }
  }
}
