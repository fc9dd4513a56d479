package org.rimefast.lang.rule;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.ValueType;

/**
 * A lookup or decision table of a standard: {@code table foam cover needed of a box by its mount}.
 *
 * <p>For each combination of inputs exactly one row speaks, or, where none does, {@code otherwise}
 * does. The compiler has made sure of it.
 *
 * @param name how rules call it, as a property of its kind of element; may be several words
 * @param element stands for the element in the inputs; its index is 0, whatever encloses the place
 *     where the table is used
 * @param inputs what it depends on, in the order of the cells; numbers and words of lists
 * @param rows in the order written
 * @param otherwise what holds where no row speaks
 * @param type the type of all results
 * @param because why it is so
 * @param source where it comes from
 * @param span the text it was read from
 */
public record Table(
    String name,
    Variable element,
    List<Value> inputs,
    List<Row> rows,
    Optional<Otherwise> otherwise,
    ValueType type,
    Optional<String> because,
    Optional<String> source,
    Span span) {
  /** Refuses another variable than the outermost, and rows that do not fit the inputs. */
  public Table {
    Types.require(element.index() == 0, "a table stands by itself");
    inputs = List.copyOf(inputs);
    rows = List.copyOf(rows);
    for (Row row : rows) {
      requireFit(row.cells(), inputs);
      Types.require(Types.comparable(row.result().type(), type), "results of one type");
    }
    otherwise.ifPresent(
        last -> Types.require(Types.comparable(last.result().type(), type), "results of one type"));
  }

  private static void requireFit(List<Cell> cells, List<Value> inputs) {
    Types.require(cells.size() == inputs.size(), "a cell for each input");
    for (int i = 0; i < cells.size(); i++) {
      ValueType type = inputs.get(i).type();
      boolean fits =
          cells.get(i) instanceof Cell.Any
              || (cells.get(i) instanceof Cell.Numbers && type instanceof ValueType.Number)
              || (cells.get(i) instanceof Cell.Words words
                  && type instanceof ValueType.Choice choice
                  && choice.words().containsAll(words.words()));
      Types.require(fits, "cell " + i + " does not fit its input");
    }
  }

  /** The kind of element that has it. */
  public Noun noun() {
    return element.noun();
  }

  /**
   * What holds in some cases.
   *
   * @param cells one for each input; all of them must hold
   * @param result a literal or a word
   * @param span the text it was read from
   */
  public record Row(List<Cell> cells, Value result, Span span) {
    /** Copies the list. */
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * What holds where no row speaks.
   *
   * @param result a literal or a word
   * @param cases all cases that no row speaks of, each with a cell for each input; no two of them
   *     have a case in common
   * @param span the text it was read from
   */
  public record Otherwise(Value result, List<List<Cell>> cases, Span span) {
    /** Copies the lists. */
    public Otherwise {
      cases = cases.stream().map(List::copyOf).toList();
    }
  }

  /** What one input must be. */
  public sealed interface Cell {
    /** Whatever it is. */
    record Any() implements Cell {}

    /** One of some words. */
    record Words(List<String> words) implements Cell {
      /** Copies the list. */
      public Words {
        words = List.copyOf(words);
      }
    }

    /** In one of some ranges, which are in order and apart from each other. */
    record Numbers(List<Range> ranges) implements Cell {
      /** Copies the list. */
      public Numbers {
        ranges = List.copyOf(ranges);
      }
    }
  }

  /**
   * The numbers between two ends, or all on one side of an end.
   *
   * @param low the lower end; none if empty
   * @param high the upper end; none if empty
   */
  public record Range(Optional<End> low, Optional<End> high) {}

  /**
   * An end of a range.
   *
   * @param limit where it lies
   * @param included whether the limit itself belongs to the range
   */
  public record End(Value.Literal limit, boolean included) {}
}
