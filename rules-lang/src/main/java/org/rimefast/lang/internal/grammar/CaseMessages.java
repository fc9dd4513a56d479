package org.rimefast.lang.internal.grammar;

import java.util.List;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.IntervalSet;
import org.rimefast.lang.internal.message.English;

/** The words for a case that cannot be read. */
final class CaseMessages {
  private static final String HEAD =
      "Write it as: case \"a box before an inward rib\" of box-in-outer-bay";
  private static final String SET =
      "Write for example: set along of \"R-1\" to 1720 mm; or by its place in the plan: set"
          + " \"/room/humidity\" to 60 %";
  private static final String REMOVE =
      "Write for example: remove depth of \"R-2\"; or a whole element: remove \"R-3\"";
  private static final String ADD =
      "Write for example: add to boxes \"\"\"{\"id\": \"R-9\"}\"\"\", with all the fields of the entry.";
  private static final String FIELD = "After a field comes \"of\" and the element's id in quotes";
  private static final String EXPECT =
      "Write for example: expect broken by \"R-1\"; expect undecided by \"R-2\" for want of depth;"
          + " expect met; expect nothing";

  private final Token before;
  private final IntervalSet expected;
  private final List<String> rules;
  private final String instead;
  private final String found;

  /**
   * Words for one fault.
   *
   * @param before the last word that was understood
   * @param expected what could have followed
   * @param rules the rules of the grammar within which it stands
   * @param instead {@code , not "x"}; empty at the end
   * @param found what stands there, in quotes
   */
  CaseMessages(
      Token before, IntervalSet expected, List<String> rules, String instead, String found) {
    this.before = before;
    this.expected = expected;
    this.rules = rules;
    this.instead = instead;
    this.found = found;
  }

  /** Headline and help. */
  String[] message(int statement) {
    if (statement == RimeLexer.CASES) {
      return say(
          before.getType() == RimeLexer.CASES
              ? "After \"cases\" comes \"for\" and the standard's name"
              : before.getType() == RimeLexer.FOR
                  ? "After \"for\" comes the standard's name"
                  : "After the standard's name nothing can follow",
          "Write it as: cases for tamarack-house");
    }
    if (within("want")) {
      return say(
          "After \"" + before.getText() + "\" comes " + afterWant(),
          "Write for example: expect undecided by \"R-2\" for want of depth; or: within tolerance");
    }
    if (within("caseOutcome") || before.getType() == RimeParser.EXPECT) {
      return outcome();
    }
    return within("caseStep") ? step() : head();
  }

  private String[] head() {
    return switch (before.getType()) {
      case RimeLexer.CASE -> say("After \"case\" comes its name in quotes", HEAD);
      case RimeParser.OF -> say("After \"of\" comes the name of a rule, or \"every rule\"", HEAD);
      case RimeParser.EVERY ->
          say("After \"every\" comes \"rule\"", "Write it as: case \"a sound room\" of every rule");
      default ->
          expects(RimeParser.OF)
              ? say("After the case's name comes \"of\" and the rule that it is about", HEAD)
              : new String[] {
                English.sentence(found) + " cannot stand here.",
                "After its first line a case has plan, set, remove, add and expect, each with what"
                    + " belongs to it, and nothing else."
              };
    };
  }

  private String[] outcome() {
    return switch (before.getType()) {
      case RimeParser.BROKEN, RimeParser.UNDECIDED, RimeParser.ERROR_WORD ->
          say("After \"" + before.getText() + "\" comes \"by\" and which elements", EXPECT);
      case RimeLexer.BY, RimeLexer.COMMA, RimeParser.TO ->
          say("After \"" + before.getText() + "\" comes an element's id in quotes", EXPECT);
      case RimeLexer.NOT -> say("After \"not\" comes \"applicable\"", EXPECT);
      default ->
          say(
              "After \""
                  + (before.getType() == RimeParser.EXPECT ? "expect" : before.getText())
                  + "\" comes what the rule must say",
              EXPECT);
    };
  }

  private String afterWant() {
    return switch (before.getType()) {
      case RimeLexer.FOR -> "\"want of\" and the missing value";
      case RimeParser.WANT -> "\"of\" and the missing value";
      case RimeParser.WITHIN -> "\"tolerance\"";
      default -> "the missing value, such as depth, or the element in quotes that it belongs to";
    };
  }

  private String[] step() {
    return switch (before.getType()) {
      case RimeParser.PLAN ->
          say(
              "After \"plan\" comes the file's name in quotes, or a whole plan in triple quotes",
              "Write for example: plan \"cases/small.json\"");
      case RimeParser.SET -> say("After \"set\" comes what is set", SET);
      case RimeParser.REMOVE -> say("After \"remove\" comes what is taken away", REMOVE);
      case RimeParser.ADD -> say("After \"add\" comes \"to\" and a list of the plan", ADD);
      case RimeParser.OF -> say("After \"of\" comes the element's id in quotes", SET);
      case RimeParser.TO ->
          expects(RimeLexer.BLOCK) && expects(RimeLexer.TEXT)
              ? say("After \"to\" comes the new value", SET)
              : expects(RimeParser.OF)
                  ? say(FIELD, SET)
                  : say("After \"to\" comes a list of the plan, such as boxes", ADD);
      case RimeLexer.MINUS -> say("After the minus sign comes a number", SET);
      default ->
          expects(RimeLexer.BLOCK)
              ? say("After the list comes the new entry in triple quotes", ADD)
              : expects(RimeParser.OF)
                  ? say(FIELD, SET)
                  : expects(RimeParser.TO)
                      ? say("After what is set comes \"to\" and the new value", SET)
                      : new String[] {English.sentence(found) + " cannot stand here.", SET};
    };
  }

  private String[] say(String headline, String help) {
    return new String[] {headline + instead + ".", help};
  }

  private boolean expects(int token) {
    return expected.contains(token);
  }

  private boolean within(String rule) {
    return rules.contains(rule);
  }
}
