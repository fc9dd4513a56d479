package org.rimefast.lang.internal.syntax;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.source.Span;
import org.rimefast.units.Quantity;

/** One statement of a standard. */
public sealed interface Statement {
  /** The whole statement. */
  Span span();

  /** {@code standard NAME edition EDITION ...}. */
  record Header(Word name, Word edition, List<Field> fields, Span span) implements Statement {
    /** Copies the list. */
    public Header {
      fields = List.copyOf(fields);
    }
  }

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

  /** {@code severity hold}, {@code because "..."} and the like. */
  record Field(Word key, Word value) {}
}
