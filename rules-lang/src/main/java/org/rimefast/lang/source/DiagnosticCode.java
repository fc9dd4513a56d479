package org.rimefast.lang.source;

import java.util.Locale;

/**
 * The kinds of fault that rule text can have. Printed in lower case with hyphens, and never
 * renamed.
 */
public enum DiagnosticCode {
  /** The text is longer than the compiler takes on; nothing of it was read. */
  TEXT_TOO_LONG,
  /** Parentheses or sums stand deeper than the compiler takes on. */
  TOO_DEEP,
  /** A phrase has more words or more possible readings than the compiler takes on. */
  PHRASE_TOO_LONG,
  /** There are more errors than are reported; the rest were counted. */
  TOO_MANY_ERRORS,
  /** A character that makes text show in another order than it is read. */
  BIDIRECTIONAL_CONTROL,
  /** Half a character: the text was damaged before it came here. */
  UNPAIRED_SURROGATE,
  /** A character that rule text does not use outside quoted text. */
  UNKNOWN_CHARACTER,
  /** A sign of typesetting where a plain one belongs, such as a curly quote. */
  TYPOGRAPHIC_SIGN,
  /** A quoted text without its closing quote. */
  UNCLOSED_TEXT,
  /** A word with a capital letter. */
  CAPITAL_LETTER,
  /** A number that is not written as numbers are here. */
  BAD_NUMBER,
  /** A number followed by what looks like a unit and is none. */
  UNKNOWN_UNIT,
  /** A date that is not written as year-month-day, or a day that no calendar has. */
  BAD_DATE,
  /** Text that belongs to no statement. */
  STRAY_TEXT,
  /** A statement whose shape cannot be read. */
  UNREADABLE,
  /** A text without the statement that names the standard. */
  MISSING_STANDARD,
  /** The statement that names the standard is not the first, or there are two. */
  MISPLACED_STANDARD,
  /** A file of waivers without the statement that names the standard. */
  MISSING_WAIVERS,
  /** Waivers for another standard than the one at hand. */
  OTHER_STANDARD,
  /** A statement that belongs into another kind of file. */
  MISPLACED_STATEMENT,
  /** A rule, inspect item or waiver without a part that every rule has, such as its severity. */
  MISSING_PART,
  /** A part of a statement that is given twice. */
  REPEATED_PART,
  /** A part that this kind of statement does not have. */
  MISPLACED_PART,
  /** A severity that is not hold, fix or advise. */
  UNKNOWN_SEVERITY,
  /** A stage that the vocabulary does not have. */
  UNKNOWN_STAGE,
  /** A rule that the standard does not have. */
  UNKNOWN_RULE,
  /** An expectation of a case that contradicts another, or does not say of which rule it is. */
  BAD_EXPECTATION,
  /** A file's name that leads out of the folder, or is none. */
  BAD_FILE_NAME,
  /** A change of a plan that says what cannot be changed so. */
  BAD_EDIT,
  /** A statement in a file of another kind. */
  WRONG_FILE,
  /** An answer that is not yes or no. */
  UNKNOWN_ANSWER,
  /** A waiver that ends before it begins. */
  WRONG_PERIOD,
  /** A waiver that reaches to a number which the rule's limit cannot be compared with. */
  WRONG_BOUND,
  /** An included file that is not there or cannot be read. */
  MISSING_FILE,
  /** A file that is included twice. */
  REPEATED_FILE,
  /** A file that includes itself, or a standard that builds on itself, perhaps by way of others. */
  CIRCULAR_FILES,
  /** More files, or more standards that build on each other, than the compiler takes on. */
  TOO_MANY_FILES,
  /** A standard that is built on and is not there. */
  MISSING_BASE,
  /** A standard that is built on is there in another edition, or under another name. */
  WRONG_EDITION,
  /** An amendment of something that the rule does not have. */
  NOTHING_TO_AMEND,
  /** An amendment that could mean two limits of the rule. */
  UNCLEAR_LIMIT,
  /** An amendment that changes nothing. */
  IDLE_AMENDMENT,
  /** An amendment that does not say which rule it was written for. */
  MISSING_SEEN,
  /** The rule that an amendment changes is not as it was when the amendment was written. */
  CHANGED_RULE,
  /** A rule, constant, table, term or case with the name of another. */
  REPEATED_NAME,
  /** A constant, term or table with a name that the vocabulary or the language uses. */
  NAME_TAKEN,
  /** A term that is used in its own definition, or in one that stands before it. */
  EARLY_TERM,
  /** A table that is used in its own definition, before it, or though it has mistakes. */
  EARLY_TABLE,
  /** A row of a table whose cells do not fit its inputs. */
  WRONG_ROW,
  /** A case that no row of a table speaks of. */
  TABLE_GAP,
  /** A case that two rows of a table speak of. */
  TABLE_OVERLAP,
  /** A row, or an {@code otherwise}, that no case can reach. */
  UNREACHABLE_ROW,
  /** A test of kind that is so of every such element, or of none. */
  EMPTY_TEST,
  /** A word that is not in the vocabulary, or cannot stand where it does. */
  UNKNOWN_WORD,
  /** A phrase that stops before it says something. */
  UNFINISHED_PHRASE,
  /** A phrase with more than one reading. */
  AMBIGUOUS_PHRASE,
  /** {@code and} beside {@code or} without parentheses. */
  MIXED_AND_OR,
  /** A {@code not} that can be understood in two ways. */
  UNCLEAR_NOT,
  /** A noun or verb in the wrong form, such as {@code it touch}. */
  WRONG_FORM,
  /** A noun without {@code a}, {@code the}, {@code each} or a number before it. */
  MISSING_DETERMINER,
  /** A word such as {@code some} where it cannot stand. */
  MISPLACED_DETERMINER,
  /** A property, link or verb of another kind of element. */
  WRONG_OWNER,
  /** An element of another kind than a phrase takes. */
  WRONG_ELEMENT,
  /** {@code the box} where no box has been spoken of. */
  UNKNOWN_REFERENCE,
  /** {@code the box} where two boxes have been spoken of. */
  UNCLEAR_REFERENCE,
  /** A number whose unit is missing. */
  MISSING_UNIT,
  /** Two values of different kinds, such as a length and a temperature. */
  WRONG_TYPE,
  /** A word that is not one of those a property can be. */
  WRONG_CHOICE,
  /** Words or texts compared by size. */
  NO_ORDER,
  /** Arithmetic that makes no sense, such as a sum of two temperatures. */
  BAD_ARITHMETIC,
  /** A comparison without its second half, or a value where a condition belongs. */
  MISSING_COMPARISON;

  /** The stable name: {@code unknown-word}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public String toString() {
    return id();
  }
}
