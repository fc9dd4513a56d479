package org.rimefast.lang.internal.grammar;

import static org.rimefast.lang.internal.grammar.SyntaxMessages.say;

import org.antlr.v4.runtime.Token;

/** The words for an inspect item or a waiver that cannot be read. */
final class SiteMessages {
  private static final String INSPECT_EXAMPLE =
      "Write it as: inspect covers-inward \"Covers are on and face inward\"";
  private static final String WAIVE_EXAMPLE = "Write it as: waive box-in-outer-bay for \"R-7\"";
  private static final String ELEMENTS =
      "Write their ids in quotes, for \"R-7\", \"R-8\"; or describe them: for each box where it is"
          + " on the roof";

  private final SyntaxMessages messages;
  private final int type;
  private final Token before;

  SiteMessages(SyntaxMessages messages, int type, Token before) {
    this.messages = messages;
    this.type = type;
    this.before = before;
  }

  String[] inspect() {
    if (before.getType() == RimeLexer.INSPECT) {
      return instead("After \"inspect\" comes its name, one word with hyphens", INSPECT_EXAMPLE);
    }
    if (messages.expects(RimeLexer.FOR)) {
      return instead(
          "After the title comes \"for each\" and a noun",
          "Write for example: for each box where it is recessed");
    }
    if (messages.expects(RimeLexer.TEXT)
        && !messages.expects(RimeLexer.WORD)
        && !messages.within("inspectField")) {
      return instead("After the inspect item's name comes its title in quotes", INSPECT_EXAMPLE);
    }
    if (before.getType() == RimeParser.ASK) {
      return instead(
          "After \"ask\" comes the question in quotes",
          "Write for example: ask \"Is the cover on and its label to the room?\"");
    }
    if (before.getType() == RimeParser.ANSWER) {
      return instead("After \"answer\" comes yes or no", "Write for example: answer yes");
    }
    if (before.getType() == RimeParser.READING || messages.within("readingLimit")) {
      return instead(
          "After \"reading\" comes a limit",
          "Write at least, more than, at most or less than, and a number with its unit: reading at"
              + " least 5 degC");
    }
    if (type == RimeLexer.MUST) {
      return say(
          "An inspect item asks, and has no \"must\".",
          "Write what is to be looked at behind \"ask\"; what a plan can show belongs in a rule.");
    }
    return messages.expects(RimeLexer.SEVERITY) && type != RimeLexer.RIGHT
        ? messages.fieldOr(
            messages.quoted() + " is no part of an inspect item.",
            "After the elements stand ask, answer, reading, severity, stage, because and source, and"
                + " nothing else.")
        : field();
  }

  String[] waivers() {
    String example = "Write it as: waivers for cold-steel-modules";
    if (before.getType() == RimeLexer.WAIVERS) {
      return instead("After \"waivers\" comes \"for\" and the standard's name", example);
    }
    if (before.getType() == RimeLexer.FOR) {
      return instead("After \"for\" comes the standard's name", example);
    }
    return messages.fieldOr(
        "After the standard's name only \"title\" can follow" + messages.instead() + ".",
        "Each waiver begins on a line of its own with: waive");
  }

  String[] waive() {
    if (before.getType() == RimeLexer.WAIVE) {
      return instead("After \"waive\" comes the id of a rule", WAIVE_EXAMPLE);
    }
    if (messages.expects(RimeLexer.FOR)) {
      return instead("After the rule's id comes \"for\"", WAIVE_EXAMPLE);
    }
    if (before.getType() == RimeLexer.FOR) {
      return instead("After \"for\" come the elements", ELEMENTS);
    }
    if (before.getType() == RimeLexer.COMMA) {
      return instead("After the comma comes another element in quotes", ELEMENTS);
    }
    if (before.getType() == RimeParser.APPROVED) {
      return instead("After \"approved\" comes \"by\"", "Write: approved by \"the engineer\"");
    }
    if (before.getType() == RimeLexer.BY && messages.expects(RimeLexer.TEXT)) {
      return instead(
          "After \"approved by\" comes a text in quotes", "Write: approved by \"the engineer\"");
    }
    if (before.getType() == RimeParser.UNTIL || isWord("from")) {
      String key = isWord("from") ? "from" : "until";
      return say(
          "After \"" + key + "\" comes a date" + (isWord("from") ? "" : messages.instead()) + ".",
          "Write year, month and day: " + key + " 2026-11-01");
    }
    if (isWord("up") || isWord("down")) {
      String key = messages.quoted();
      return say("After " + key + " comes \"to\".", "Write for example: down to 1-1/2 in");
    }
    if (messages.expects(RimeParser.QUANTITY) && !messages.expects(RimeLexer.WORD)) {
      return instead(
          "After \"" + before.getText() + "\" comes a number with its unit",
          "Write for example: down to 1-1/2 in");
    }
    if (isWord("in") || (before.getText().equals("plan") && messages.expects(RimeLexer.TEXT))) {
      return say(
          "After \"in plan\" comes the plan's id in quotes.",
          "Write for example: in plan \"wet-lab\"");
    }
    return messages.expects(RimeLexer.SEVERITY) && type != RimeLexer.RIGHT
        ? messages.fieldOr(
            messages.quoted() + " is no part of a waiver.",
            "After the elements stand in plan, because, approved by, from, until, and down to or up"
                + " to, and nothing else.")
        : field();
  }

  /** True for a word that begins a part, but not with what is behind it here. */
  private boolean isWord(String word) {
    return type == RimeLexer.WORD
        && messages.quoted().equals("\"" + word + "\"")
        && messages.expects(RimeLexer.SEVERITY);
  }

  private String[] field() {
    return messages.within("field") ? messages.fieldOr("", "") : messages.sentence();
  }

  private String[] instead(String start, String help) {
    return say(start + messages.instead() + ".", help);
  }
}
