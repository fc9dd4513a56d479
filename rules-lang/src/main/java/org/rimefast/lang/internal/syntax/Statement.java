package org.rimefast.lang.internal.syntax;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.source.Span;
import org.rimefast.units.Quantity;

/** One statement of a standard or of a file of waivers. */
public sealed interface Statement {
  /** The whole statement. */
  Span span();

  /**
   * {@code standard NAME edition EDITION ...}.
   *
   * @param builds the standards it says it builds on; at most one, if it is written right
   */
  record Header(Word name, Word edition, List<Field> fields, List<BuildsOn> builds, Span span)
      implements Statement {
    /** Copies the lists. */
    public Header {
      fields = List.copyOf(fields);
      builds = List.copyOf(builds);
    }
  }

  /** {@code builds on NAME edition EDITION}. */
  record BuildsOn(Word name, Word edition, Span span) {}

  /** {@code include "NAME"}. */
  record Include(Word name, Span span) implements Statement {}

  /**
   * {@code in rule ID, ...} or {@code withdraw ID}.
   *
   * @param rule the rule's id
   * @param change what is changed
   * @param seen the rule as it was when this was written; at most one, if it is written right
   * @param text what stands before the parts, on one line
   */
  record Amendment(
      Word rule, Change change, List<Field> fields, List<Seen> seen, String text, Span span)
      implements Statement {
    /** Copies the lists. */
    public Amendment {
      fields = List.copyOf(fields);
      seen = List.copyOf(seen);
    }
  }

  /** What an amendment changes. */
  sealed interface Change {
    /** {@code severity is hold}, {@code stage is framing}. */
    record OfPart(Word key, Word value) implements Change {}

    /**
     * {@code foam behind a box is 60 mm}, {@code the limit 2 in is 60 mm}.
     *
     * @param words what stands before the numbers
     * @param before the number that was, if it is named
     */
    record OfLimit(List<Word> words, Optional<Number> before, Number after) implements Change {
      /** Copies the list. */
      public OfLimit {
        words = List.copyOf(words);
      }
    }

    /**
     * {@code except where CONDITION}.
     *
     * @param text the condition on one line
     */
    record Except(Clause condition, String text) implements Change {}

    /** The rule is taken out. */
    record Withdrawn() implements Change {}
  }

  /** {@code seen edition 2026-11 hash 9f2c31ab40d1 "..."}. */
  record Seen(Word edition, Word hash, Word text, Span span) {}

  /** A number with its unit, as it stands. */
  @SuppressWarnings("JavaLangClash") // always written Statement.Number where both are in sight
  record Number(Quantity quantity, Span span) {}

  /** {@code let NAME be QUANTITY ...}. */
  record Let(List<Word> name, Quantity quantity, Span quantitySpan, List<Field> fields, Span span)
      implements Statement {
    /** Copies the lists. */
    public Let {
      name = List.copyOf(name);
      fields = List.copyOf(fields);
    }
  }

  /**
   * {@code let NAME be a NOUN where CONDITION ...}.
   *
   * @param kind the words between {@code be} and {@code where}, with the article
   */
  record Term(
      List<Word> name, List<Word> kind, Optional<Clause> where, List<Field> fields, Span span)
      implements Statement {
    /** Copies the lists. */
    public Term {
      name = List.copyOf(name);
      kind = List.copyOf(kind);
      fields = List.copyOf(fields);
    }
  }

  /**
   * {@code rule ID "TITLE" SENTENCE ...}.
   *
   * @param sentenceText the sentence on one line, without comments
   */
  record Rule(
      Word id, Word title, Sentence sentence, String sentenceText, List<Field> fields, Span span)
      implements Statement {
    /** Copies the list. */
    public Rule {
      fields = List.copyOf(fields);
    }
  }

  /**
   * {@code table NAME of a NOUN by INPUTS ROWS ...}.
   *
   * @param name the words between {@code table} and {@code by}, with the noun
   */
  record Table(
      List<Word> name,
      List<Operand> inputs,
      List<Row> rows,
      Optional<Cell> otherwise,
      List<Field> fields,
      Span span)
      implements Statement {
    /** Copies the lists. */
    public Table {
      name = List.copyOf(name);
      inputs = List.copyOf(inputs);
      rows = List.copyOf(rows);
      fields = List.copyOf(fields);
    }
  }

  /** One line of a table; the last cell is its result. */
  record Row(List<Cell> cells, Span span) {
    /** Copies the list. */
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * One cell of a table.
   *
   * @param conjunctions one fewer than parts
   */
  record Cell(List<CellPart> parts, List<Clause.Conjunction> conjunctions, Span span) {
    /** Copies the lists. */
    public Cell {
      parts = List.copyOf(parts);
      conjunctions = List.copyOf(conjunctions);
    }
  }

  /** What stands in a cell, once or joined. */
  sealed interface CellPart {
    /** Where it stands. */
    Span span();

    /** A number with or without a sign of comparison before it. */
    record Number(Optional<Comparison> comparison, Quantity quantity, Span span)
        implements CellPart {}

    /** One or several words. */
    record Words(String text, Span span) implements CellPart {}
  }

  /** {@code cases for STANDARD}, which begins a file of cases. */
  record CaseFile(Word standard, Span span) implements Statement {}

  /**
   * {@code case "NAME" of RULE ...}.
   *
   * @param rule empty for every rule
   */
  record Case(Word name, Optional<Word> rule, List<CaseStep> steps, Span span)
      implements Statement {
    /** Copies the list. */
    public Case {
      steps = List.copyOf(steps);
    }
  }

  /**
   * {@code inspect ID "TITLE" for each NOUN where CONDITION ask "..." answer yes ...}.
   *
   * @param subject the words after {@code for}
   * @param subjectText {@code for each NOUN where CONDITION} on one line, without comments
   * @param subjectSpan where that stands
   * @param limit the limit of the reading
   */
  record Inspect(
      Word id,
      Word title,
      Phrase subject,
      Optional<Clause> where,
      String subjectText,
      Span subjectSpan,
      Optional<Limit> limit,
      List<Field> fields,
      Span span)
      implements Statement {
    /** Copies the list. */
    public Inspect {
      fields = List.copyOf(fields);
    }
  }

  /**
   * {@code reading at least 5 degC}.
   *
   * @param key the word {@code reading}
   * @param value a quantity; empty for the name of a constant
   * @param name the words of a constant's name; empty for a quantity
   * @param valueSpan where the quantity or the name stands
   * @param text the whole on one line, without comments
   */
  record Limit(
      Word key,
      Comparison comparison,
      Optional<Quantity> value,
      List<Word> name,
      Span valueSpan,
      String text) {
    /** Copies the list. */
    public Limit {
      name = List.copyOf(name);
    }
  }

  /** {@code waivers for STANDARD ...}. */
  record Waivers(Word standard, List<Field> fields, Span span) implements Statement {
    /** Copies the list. */
    public Waivers {
      fields = List.copyOf(fields);
    }
  }

  /**
   * {@code waive RULE for "ID", "ID" ...} or {@code waive RULE for each NOUN where CONDITION ...}.
   *
   * @param elements the ids; empty if the elements are described
   * @param subject the words after {@code for}; empty if the elements are named
   * @param targetText what stands after {@code for}, on one line, without comments
   * @param fields its parts; one of two words, such as {@code down to}, has both in its key
   */
  record Waive(
      Word rule,
      List<Word> elements,
      Optional<Phrase> subject,
      Optional<Clause> where,
      String targetText,
      List<Field> fields,
      Span span)
      implements Statement {
    /** Copies the lists. */
    public Waive {
      elements = List.copyOf(elements);
      fields = List.copyOf(fields);
    }
  }

  /** {@code severity hold}, {@code because "..."} and the like. */
  record Field(Word key, Word value) {}
}
