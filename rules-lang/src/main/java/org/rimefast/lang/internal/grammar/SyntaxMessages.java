package org.rimefast.lang.internal.grammar;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.IntervalSet;
import org.rimefast.lang.internal.message.English;

/** The words for a statement that cannot be read. */
final class SyntaxMessages {
  private static final String RULE_EXAMPLE =
      "rule box-clear-of-steel \"A box leaves room for foam behind it\"";
  private static final String SENTENCE_EXAMPLE = "box must sit in outer bay";

  private static final String TERM_EXAMPLE =
      "Write it as: let wet room be a room where its humidity >= 50 %";

  private final int statement;
  private final boolean isTerm;
  private final String text;
  private final int type;
  private final Token before;
  private final IntervalSet expected;
  private final List<String> rules;

  SyntaxMessages(
      int statement,
      boolean isTerm,
      String text,
      int type,
      Token before,
      IntervalSet expected,
      List<String> rules) {
    this.statement = statement;
    this.isTerm = isTerm;
    this.text = text;
    this.type = type;
    this.before = before;
    this.expected = expected;
    this.rules = rules;
  }

  String headline() {
    return message()[0];
  }

  String help() {
    return message()[1];
  }

  private String[] message() {
    return switch (statement) {
      case RimeLexer.STANDARD -> header();
      case RimeLexer.LET -> constant();
      case RimeLexer.TABLE -> table();
      case RimeLexer.CASE, RimeLexer.CASES ->
          new CaseMessages(before, expected, rules, instead(), quoted()).message(statement);
      case RimeLexer.INSPECT -> new SiteMessages(this, type, before).inspect();
      case RimeLexer.WAIVERS -> new SiteMessages(this, type, before).waivers();
      case RimeLexer.WAIVE -> new SiteMessages(this, type, before).waive();
      default -> rule();
    };
  }

  private String[] header() {
    String example = "Write it as: standard cold-steel-modules edition 2026-11";
    if (before.getType() == RimeLexer.STANDARD) {
      return say("After \"standard\" comes its name" + instead() + ".", example);
    }
    if (expects(RimeLexer.EDITION)) {
      return say("After the standard's name comes \"edition\"" + instead() + ".", example);
    }
    if (before.getType() == RimeLexer.EDITION) {
      return say("After \"edition\" it says which one" + instead() + ".", example);
    }
    return fieldOr(
        "After the edition only \"title\" and \"caution\" can follow" + instead() + ".",
        "Write for example: title \"Cold-climate foam-insulated steel modules\"");
  }

  private String[] constant() {
    String example = "Write it as: let foam cover be 2 in";
    if (expects(RimeLexer.WORD)
        && !text.isEmpty()
        && Character.isLetter(text.charAt(0))
        && type != RimeLexer.BE
        && before.getType() != RimeLexer.BE
        && !within("letValue")) {
      return say(
          "The language keeps the word " + quoted() + " for itself.", "Choose another name.");
    }
    if (within("whereClause")) {
      return sentence();
    }
    if (isTerm) {
      return fieldOr(
          "After the term's condition only \"because\" and \"source\" can follow" + instead() + ".",
          "Join conditions with \"and\" or \"or\"; what must hold is said in a rule.");
    }
    if (before.getType() == RimeLexer.WORD && !expects(RimeLexer.BE)) {
      return say("After the kind of element comes \"where\"" + instead() + ".", TERM_EXAMPLE);
    }
    if (before.getType() == RimeLexer.LET) {
      return say("After \"let\" comes a name" + instead() + ".", example);
    }
    if (before.getType() == RimeLexer.BE || before.getType() == RimeLexer.MINUS) {
      return say(
          "After \"be\" comes a number with its unit, or a kind of element" + instead() + ".",
          example + "; or: let wet room be a room where its humidity >= 50 %");
    }
    if (expects(RimeLexer.BE)) {
      return say("\"let\" needs \"be\" after the name" + instead() + ".", example);
    }
    return fieldOr(
        "After the constant's value only \"because\" and \"source\" can follow" + instead() + ".",
        "A constant is one number with its unit, such as 2 in.");
  }

  /** What only a table has is said elsewhere; its inputs hold what sentences hold. */
  private String[] table() {
    String[] own = new TableMessages(text, type, before, expected, rules).message();
    return own.length > 0 ? own : within("field") ? fieldOr("", "") : sentence();
  }

  private String[] rule() {
    if (before.getType() == RimeLexer.RULE) {
      return say(
          "After \"rule\" comes its name, one word with hyphens" + instead() + ".",
          "Write it as: " + RULE_EXAMPLE);
    }
    if (within("field")) {
      return fieldOr("", "");
    }
    if (!within("sentence") && expects(RimeLexer.TEXT) && !expects(RimeLexer.WORD)) {
      return say(
          "After the rule's name comes its title in quotes" + instead() + ".",
          "Write it as: " + RULE_EXAMPLE);
    }
    if (before.getType() == RimeLexer.TEXT && expects(RimeLexer.WORD) && !expects(RimeLexer.MUST)) {
      return say(
          "After the title comes the rule's sentence" + instead() + ".",
          "Write for example: " + SENTENCE_EXAMPLE);
    }
    return within("sentence") || within("whereClause") ? sentence() : outside();
  }

  private String[] outside() {
    if (type == RimeLexer.RIGHT) {
      return say("This closing parenthesis has no opening one.", "Take it out, or open it with (.");
    }
    if (type == RimeLexer.MUST) {
      return say(
          "A sentence says \"must\" once.",
          "Join what must hold with \"and\", or write a second rule.");
    }
    if (type == RimeLexer.WHERE) {
      return say(
          "After what must hold, \"where\" stands in parentheses only.",
          "Put it behind the noun it belongs to: each box where mount is flush must ...; or in"
              + " parentheses: touch a stud (where depth > 2 in).");
    }
    if (type == RimeLexer.THEN || type == RimeLexer.OTHERWISE) {
      return say(
          quoted() + " belongs to a choice of values, which stands in parentheses.",
          "Write for example: " + Continuations.CHOICE_EXAMPLE);
    }
    if (type == RimeLexer.IF || type == RimeLexer.UNLESS) {
      return say(
          "A sentence has one \"if\" or one \"unless\".",
          "Join conditions with \"and\" or \"or\".");
    }
    if (isSign(type)) {
      return say(
          "A second comparison cannot follow here.",
          "Join two comparisons: clearance >= 50 mm and clearance <= 80 mm.");
    }
    if (type == RimeLexer.COMMA) {
      return say("A comma cannot stand here.", "Leave it out.");
    }
    if (type == RimeLexer.IS || type == RimeLexer.HAS || type == RimeLexer.DOES) {
      return say(
          quoted() + " begins a second sentence here.",
          "A condition after what must hold begins with \"if\" or \"unless\": must touch a stud if"
              + " mount is flush.");
    }
    if (expects(RimeLexer.SEVERITY) && !expects(RimeLexer.WORD)) {
      return say(
          quoted() + " is no part of a rule.",
          "After the sentence stand severity, stage, because and source, and nothing else.");
    }
    return say(quoted() + " cannot stand here.", hereCanStand());
  }

  String[] sentence() {
    if (type == RimeLexer.MUST
        && isStart(before.getType())
        && !expects(RimeLexer.MUST)
        && (before.getType() == RimeLexer.AND || before.getType() == RimeLexer.OR)
        && rules.contains("predicate")) {
      return say(
          "A sentence says \"must\" once.",
          "Leave out the second one: must sit in outer bay and touch a stud");
    }
    if ((expects(RimeLexer.THEN) || expects(RimeLexer.OTHERWISE)) && !isStart(before.getType())) {
      return choice();
    }
    if ((type == RimeLexer.THEN || type == RimeLexer.OTHERWISE) && !isStart(before.getType())) {
      return outside();
    }
    if (type == RimeLexer.RIGHT && expects(RimeLexer.COMMA) && rules.contains("item")) {
      return say(
          "After \"for\" and its noun comes a comma" + instead() + ".",
          "Write for example: (for each box, its depth is at least 2 in)");
    }
    if (type == RimeLexer.RIGHT && !expects(RimeLexer.RIGHT) && !isStart(before.getType())) {
      return say("This closing parenthesis has no opening one.", "Take it out, or open it with (.");
    }
    if (expects(RimeLexer.MUST) && !expects(RimeLexer.RIGHT)) {
      return missingMust();
    }
    if (expects(RimeLexer.COMMA)) {
      return say(
          "After \"for each\" and its noun comes a comma" + instead() + ".",
          "Write for example: for each box, its clearance must be at least 2 in");
    }
    if (expects(RimeLexer.RIGHT) && !isStart(before.getType())) {
      return say(
          "An opening parenthesis is not closed before " + place() + ".",
          "Close it with ), or take it out.");
    }
    if (before.getType() == RimeLexer.LESS_WORD || before.getType() == RimeLexer.MORE_WORD) {
      return say("After \"" + before.getText() + "\" comes \"than\"" + instead() + ".", than());
    }
    if (before.getType() == RimeLexer.DOES || before.getType() == RimeLexer.DO) {
      return say(
          "After \"" + before.getText() + "\" comes \"not\"" + instead() + ".",
          "Write for example: it does not touch a stud; without \"not\": it touches a stud.");
    }
    if (isStart(before.getType())) {
      return say(
          "After \""
              + before.getText()
              + "\" "
              + Continuations.what(before.getType())
              + instead()
              + ".",
          Continuations.example(before.getType()));
    }
    return say(quoted() + " cannot stand here.", hereCanStand());
  }

  /** Within {@code (if ... then ... otherwise ...)}. */
  private String[] choice() {
    return expects(RimeLexer.THEN)
        ? say(
            "After the condition of a choice comes \"then\"" + instead() + ".",
            "Write for example: " + Continuations.CHOICE_EXAMPLE)
        : say(
            "A choice of values also says what holds otherwise; \"otherwise\" is missing"
                + (type == Token.EOF ? "." : " before " + place() + "."),
            "Write for example: " + Continuations.CHOICE_EXAMPLE);
  }

  private static String than() {
    return "Write for example: clearance is less than 2 in";
  }

  private String[] missingMust() {
    if (isSign(type) || type == RimeLexer.IS || type == RimeLexer.HAS || type == RimeLexer.DOES) {
      return say(
          "A rule says what must hold with \"must\"; " + quoted() + " cannot stand before it.",
          "Write for example: box must have clearance >= 50 mm; or, to say which ones: each box where"
              + " it is within 2 in of a stud must ...");
    }
    return say(
        "The sentence has no \"must\"" + (type == Token.EOF ? "." : " before " + place() + "."),
        "Say what must hold: " + SENTENCE_EXAMPLE);
  }

  String[] fieldOr(String headline, String help) {
    return switch (before.getType()) {
      case RimeLexer.TITLE, RimeLexer.CAUTION, RimeLexer.BECAUSE, RimeLexer.SOURCE ->
          say(
              "After \"" + before.getText() + "\" comes a text in quotes" + instead() + ".",
              "Write for example: "
                  + before.getText()
                  + (before.getType() == RimeLexer.SOURCE
                      ? " \"common practice, no source\""
                      : " \"room for one lift of foam\""));
      case RimeLexer.SEVERITY ->
          say(
              "After \"severity\" comes how much it matters" + instead() + ".",
              "Write hold, fix or advise.");
      case RimeLexer.STAGE ->
          say(
              "After \"stage\" comes a stage of the work" + instead() + ".",
              "Write for example: stage pre-foam");
      default -> say(headline, help);
    };
  }

  private static boolean isStart(int before) {
    return switch (before) {
      case RimeLexer.MUST,
          RimeLexer.WHERE,
          RimeLexer.IF,
          RimeLexer.UNLESS,
          RimeLexer.THEN,
          RimeLexer.OTHERWISE,
          RimeLexer.AND,
          RimeLexer.OR,
          RimeLexer.NOT,
          RimeLexer.WITH,
          RimeLexer.BE,
          RimeLexer.IS,
          RimeLexer.ARE,
          RimeLexer.HAVE,
          RimeLexer.HAS,
          RimeLexer.PLUS,
          RimeLexer.MINUS,
          RimeLexer.TIMES,
          RimeLexer.BETWEEN,
          RimeLexer.BY,
          RimeLexer.LEFT,
          RimeLexer.FOR,
          RimeLexer.COMMA ->
          true;
      default -> isSign(before);
    };
  }

  private static boolean isSign(int type) {
    return type >= RimeLexer.AT_LEAST_SIGN && type <= RimeLexer.EQUAL_SIGN;
  }

  boolean expects(int token) {
    return expected.contains(token);
  }

  boolean within(String rule) {
    return rules.contains(rule);
  }

  String instead() {
    return type == Token.EOF ? "" : ", not " + quoted();
  }

  private String place() {
    return type == Token.EOF ? "the sentence ends" : quoted();
  }

  String quoted() {
    return type == Token.EOF
        ? "The end"
        : switch (type) {
          case RimeLexer.TEXT -> "a text in quotes";
          case RimeLexer.BLOCK -> "a text in triple quotes";
          default -> "\"" + text + "\"";
        };
  }

  private String hereCanStand() {
    List<String> words = new ArrayList<>();
    if (expects(RimeLexer.MUST)) {
      words.add("must");
    }
    if (expects(RimeLexer.WITH)) {
      words.add("with");
    }
    if (expects(RimeLexer.AND)) {
      words.add("and");
      words.add("or");
    }
    if (expects(RimeLexer.IF)) {
      words.add("if");
      words.add("unless");
    }
    if (expects(RimeLexer.SEVERITY)) {
      words.add("severity");
    }
    return words.isEmpty()
        ? "Write the sentence as in: " + SENTENCE_EXAMPLE
        : "Here can stand: " + String.join(", ", words) + ".";
  }

  static String[] say(String headline, String help) {
    return new String[] {English.sentence(headline), help};
  }
}
