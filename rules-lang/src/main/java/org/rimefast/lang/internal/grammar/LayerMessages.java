package org.rimefast.lang.internal.grammar;

import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.IntervalSet;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;

/** The words for an include, a {@code builds on} or an amendment that cannot be read. */
final class LayerMessages {
  private static final String AMENDMENTS =
      "Write for example: in rule box-in-outer-bay, foam behind a box is 60 mm; or: the limit 2 in is"
          + " 60 mm; or: severity is hold; or: except where its room is dry";

  private static final String SEEN =
      "The command \"rimefast pin\" writes this line: seen edition 2026-11 hash 9f2c31ab40d1 \"the"
          + " rule as it was\"";

  private final String instead;
  private final Token before;
  private final IntervalSet expected;

  private LayerMessages(String text, int type, Token before, IntervalSet expected) {
    this.instead =
        type == Token.EOF
            ? ""
            : ", not " + (type == RimeLexer.TEXT ? "a text in quotes" : "\"" + text + "\"");
    this.before = before;
    this.expected = expected;
  }

  /** The fault; empty if it is not one of layers. */
  static Optional<Diagnostic> of(
      List<Token> tokens,
      Span span,
      String text,
      int type,
      Token before,
      IntervalSet expected,
      List<String> rules) {
    LayerMessages messages = new LayerMessages(text, type, before, expected);
    Optional<String[]> said =
        switch (tokens.get(0).getType()) {
          case RimeLexer.INCLUDE -> Optional.of(messages.include());
          case RimeLexer.STANDARD ->
              rules.contains("buildsOn") ? Optional.of(messages.buildsOn()) : Optional.empty();
          case RimeParser.IN ->
              rules.contains("whereClause") && before.getType() != RimeParser.EXCEPT
                  ? Optional.empty()
                  : Optional.of(messages.inRule(rules));
          case RimeLexer.WITHDRAW -> Optional.of(messages.withdraw(rules));
          default -> Optional.empty();
        };
    return said.map(
        words -> LexicalProblems.error(DiagnosticCode.UNREADABLE, span, words[0], words[1]));
  }

  private String[] include() {
    return before.getType() == RimeLexer.INCLUDE
        ? say("After \"include\" comes the name of a file in quotes", "include \"doors.rime\"")
        : say("After the name of the file nothing follows", "include \"doors.rime\"");
  }

  private String[] buildsOn() {
    String example = "builds on cold-steel-modules edition 2026-11";
    if (before.getType() == RimeParser.ON) {
      return say("After \"builds on\" comes the name of a standard", example);
    }
    return before.getType() == RimeLexer.EDITION
        ? say("After \"edition\" it says which one", example)
        : say("After the name of the standard that is built on comes \"edition\"", example);
  }

  private String[] withdraw(List<String> rules) {
    return before.getType() == RimeLexer.WITHDRAW
        ? say("After \"withdraw\" comes the name of a rule", "withdraw bar-off-shell")
        : part(rules);
  }

  private String[] inRule(List<String> rules) {
    if (before.getType() == RimeLexer.RULE) {
      return raw("After \"in rule\" comes the name of a rule" + instead + ".", AMENDMENTS);
    }
    if (expects(RimeLexer.COMMA) && !expects(RimeLexer.BECAUSE)) {
      return raw("After the rule's name comes a comma" + instead + ".", AMENDMENTS);
    }
    if (before.getType() == RimeLexer.COMMA) {
      return raw("After the comma comes what is changed" + instead + ".", AMENDMENTS);
    }
    if (before.getType() == RimeParser.EXCEPT) {
      return raw("After \"except\" comes \"where\"" + instead + ".", AMENDMENTS);
    }
    if (rules.contains("change") && before.getType() == RimeLexer.IS) {
      boolean word = expects(RimeLexer.WORD);
      return raw(
          (word
                  ? "After \"is\" comes the new word"
                  : "After \"is\" comes the new limit, a number with its unit")
              + instead
              + ".",
          AMENDMENTS);
    }
    if (rules.contains("change")) {
      return raw(
          "Between what is changed and what it becomes stands \"is\"" + instead + ".", AMENDMENTS);
    }
    return part(rules);
  }

  private String[] part(List<String> rules) {
    return switch (before.getType()) {
      case RimeLexer.BECAUSE, RimeLexer.SOURCE ->
          say(
              "After \"" + before.getText() + "\" comes a text in quotes",
              before.getText() + " \"our wet labs run at 70 % humidity\"");
      case RimeParser.SEEN, RimeLexer.EDITION, RimeParser.HASH -> seen();
      default ->
          rules.contains("amendmentPart") && expects(RimeParser.HASH) || expects(RimeLexer.TEXT)
              ? seen()
              : raw(
                  "After the amendment only \"because\", \"source\" and \"seen\" can follow"
                      + instead
                      + ".",
                  "Write for example: because \"our wet labs run at 70 % humidity\"");
    };
  }

  private String[] seen() {
    return raw(
        "After \"seen\" come \"edition\" and which one, \"hash\" and its twelve signs, and the rule's"
            + " text in quotes"
            + instead
            + ".",
        SEEN);
  }

  private boolean expects(int token) {
    return expected.contains(token);
  }

  private String[] say(String headline, String example) {
    return raw(headline + instead + ".", "Write it as: " + example);
  }

  private static String[] raw(String headline, String help) {
    return new String[] {headline, help};
  }
}
