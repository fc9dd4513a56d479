package org.rimefast.lang.internal.grammar;

import java.util.List;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.IntervalSet;

/** The words for a table that cannot be read. */
final class TableMessages {
  private static final String[] NOTHING = {};
  private static final String HEAD_EXAMPLE =
      "Write it as: table foam cover needed of a box by its mount";
  private static final String ROW_EXAMPLE = "Write for example: | flush | 2 in |";

  private final String text;
  private final int type;
  private final Token before;
  private final IntervalSet expected;
  private final List<String> rules;

  TableMessages(String text, int type, Token before, IntervalSet expected, List<String> rules) {
    this.text = text;
    this.type = type;
    this.before = before;
    this.expected = expected;
    this.rules = rules;
  }

  /** Headline and help; empty if what is wrong is no table's own matter. */
  String[] message() {
    if (before.getType() == RimeLexer.TABLE) {
      return say("After \"table\" comes its name" + instead() + ".", HEAD_EXAMPLE);
    }
    if (expected.contains(RimeLexer.BY) && !rules.contains("operand") && !rules.contains("cell")) {
      return say(
          "After the table's name and its kind of element comes \"by\"" + instead() + ".",
          HEAD_EXAMPLE);
    }
    if (before.getType() == RimeLexer.BY && rules.contains("operand") && type != Token.EOF) {
      return say("After \"by\" comes what the table depends on" + instead() + ".", HEAD_EXAMPLE);
    }
    boolean row = rules.contains("row") || rules.contains("cell");
    if (before.getType() == RimeLexer.OTHERWISE) {
      return say("After \"otherwise\" comes a result" + instead() + ".", "Write: otherwise 3 in");
    }
    if (row && before.getType() == RimeLexer.BAR && type == RimeLexer.BAR) {
      return say("A cell of this row is empty.", "Write \"any\" where it does not matter.");
    }
    if (row || (before.getType() == RimeLexer.BAR && isOfSentences())) {
      return cell();
    }
    if (expected.contains(RimeLexer.BAR) && !expected.contains(RimeLexer.BECAUSE)) {
      return say(
          type == Token.EOF
              ? "The table has no rows."
              : "After what the table depends on come its rows" + instead() + ".",
          "Add one for each case: | flush | 2 in |");
    }
    if (rules.contains("operand") || rules.contains("field")) {
      return NOTHING;
    }
    return before.getType() == RimeLexer.BAR || expected.contains(RimeLexer.BECAUSE)
        ? say(
            "After the rows only \"otherwise\", \"because\" and \"source\" can follow"
                + instead()
                + ".",
            ROW_EXAMPLE + "; a row begins and ends with |.")
        : NOTHING;
  }

  /** True for what people may put in a cell because sentences have it. */
  private boolean isOfSentences() {
    return type == RimeLexer.LEFT || type == RimeLexer.TEXT || type == RimeLexer.NOT;
  }

  private String[] cell() {
    if (type == Token.EOF) {
      return say("The last row is not closed.", "End each row with |.");
    }
    return say(
        (isOfSentences()
                ? "A cell holds only words, and numbers with or without a sign"
                : "In a cell something else belongs here")
            + instead()
            + ".",
        "Write for example: flush or covered; 2 in; >= 50 % and < 80 %; any");
  }

  private String instead() {
    return type == Token.EOF
        ? ""
        : type == RimeLexer.TEXT ? ", not a text in quotes" : ", not \"" + text + "\"";
  }

  private static String[] say(String headline, String help) {
    return new String[] {headline, help};
  }
}
