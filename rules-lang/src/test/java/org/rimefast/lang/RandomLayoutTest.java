package org.rimefast.lang;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.rimefast.lang.internal.grammar.StatementReader;
import org.rimefast.lang.internal.syntax.Piece;
import org.rimefast.lang.internal.syntax.Piece.Kind;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceText;

/** Standards made at random, laid out at random, are laid out alike and mean the same. */
final class RandomLayoutTest {
  private static final Set<Kind> TIGHT = Set.of(Kind.LEFT, Kind.RIGHT, Kind.COMMA, Kind.SIGN);
  private static final List<String> SPACES =
      List.of(" ", " ", " ", "   ", "\t", "\n", "\n    ", "\r\n", "\r", "\n\n\n", " \n\t \n ");
  private static final List<String> COMMENTS =
      List.of(
          " -- behind\n",
          "-- close behind \t\r\n",
          "\n-- at the start of a line\n",
          "\n   -- indented\n",
          " --\n",
          " -- two\n\n\n  -- of them \"\n\n",
          "\r\n\r\n-- rule x \"y\"\r\n");

  @Property(seed = "20261125", tries = 600)
  void howItWasLaidOutDoesNotMatter(@ForAll long seed) {
    Random random = new Random(seed);
    String text = standard(random);
    String other = laidOut(text, random, false);
    assertThat(format(other)).as(other).isEqualTo(format(text));
    FormattingLaws.hold(other);
    assertThat(dump(other)).as(other).isEqualTo(dump(text));
  }

  @Property(seed = "20261125", tries = 600)
  void commentsStayAndTheMeaningStays(@ForAll long seed) {
    Random random = new Random(seed);
    String text = standard(random);
    String other = laidOut(text, random, true);
    FormattingLaws.hold(other);
    assertThat(dump(format(other))).as(other).isEqualTo(dump(text));
  }

  @Property(seed = "20261125", tries = 600)
  void noLineIsTooLongThatCouldBeBroken(@ForAll long seed) {
    String text = format(standard(new Random(seed)));
    for (String line : text.lines().toList()) {
      assertThat(line.length() <= 100 || line.indexOf('"') >= 0 || hasNoPlace(line))
          .as(line)
          .isTrue();
    }
  }

  @Property(seed = "20261125", tries = 2_000)
  void anyTextKeepsAllItsWords(@ForAll("scraps") List<String> scraps) {
    FormattingLaws.hold(String.join("", scraps));
  }

  @Provide
  Arbitrary<List<String>> scraps() {
    return Arbitraries.of(
            "rule",
            "let",
            "standard",
            " edition ",
            "1",
            "r",
            " ",
            " ",
            "\n",
            "\n",
            "\r",
            "\t",
            "\"t\"",
            "\"",
            "\"\"\"",
            "\"\"\" {\n -- } \"\"\"",
            "--",
            "-",
            " -- c\n",
            "\n-- c\n",
            "(",
            ")",
            ",",
            ">=",
            "<",
            "=",
            "+",
            "\nrule r \"t\" box must touch a stud",
            "\nlet a be 2 in",
            "\ntable a of a box by its mount | flush | 1 in |",
            "|",
            " | any ",
            " otherwise 2 in",
            "\ninspect i \"t\" for each box ask \"q\" answer yes",
            " reading at least ",
            "\nwaivers for s ",
            "\nwaive r for \"R-1\", \"R-2\" in plan \"p\"",
            " from 2026-11-01",
            " until ",
            " down to ",
            " approved by ",
            "\nstandard s edition 1 ",
            "\ncase \"c\" of r plan \"p\"",
            "\ncases for s",
            " set a of \"b\" to 2 in",
            " add to boxes ",
            " expect broken by \"b\"",
            " severity hold",
            " because \"b\"",
            " title ",
            "must ",
            " be ",
            " 5 ft",
            " 6 in",
            " in",
            "'",
            "%",
            "/",
            "\u00e9",
            "\u2265",
            "\u0000",
            "\ufeff",
            "\ud83d\ude00",
            "\u00a0",
            "\f")
        .list()
        .ofMaxSize(30);
  }

  /** The words that a line may begin with stand nowhere within it. */
  private static boolean hasNoPlace(String line) {
    String inner = line.strip().replaceFirst("^[a-z(]+ ", "");
    return !inner.matches(".* (must|with|if|unless|and|or) .*");
  }

  private static String standard(Random random) {
    StringBuilder text = new StringBuilder("standard shop-standard edition 2026-11\n");
    text.append(random.nextBoolean() ? "title \"A title\" caution \"A\" \"caution\"\n" : "");
    for (int i = random.nextInt(3); i > 0; i--) {
      text.append("\nlet foam number x").append(i).append(" be - ").append(i).append(" degC\n");
      text.append(random.nextBoolean() ? "because \"a\" \"reason\" source \"s\"\n" : "");
    }
    text.append('\n').append(SentenceMaker.TERMS).append(table(random));
    for (int i = random.nextInt(3) + 1; i > 0; i--) {
      List<String> parts =
          new ArrayList<>(
              List.of(
                  " severity hold",
                  " stage pre-foam",
                  " because \"a -- reason\"",
                  " source \"s\""));
      Collections.shuffle(parts, random);
      String sentence = new SentenceMaker(random.nextLong()).sentence();
      text.append("\nrule r-").append(i).append(" \"A title\" ").append(sentence);
      parts.forEach(text::append);
      text.append('\n');
    }
    if (random.nextBoolean()) {
      text.append("\ncase \"A case\" of r-1 plan \"\"\" {\n  \"id\":  \"x\" -- y }\n\"\"\"");
      text.append(random.nextBoolean() ? " set a b of \"c\" to - 2 in" : " remove \"/c\"");
      text.append(" expect broken by \"c\" , \"d\" expect undecided by \"e\" within tolerance\n");
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      List<String> parts =
          new ArrayList<>(
              List.of(
                  " severity fix",
                  " stage pre-foam",
                  " ask \"Is it\" \"so?\"",
                  random.nextBoolean() ? " answer yes" : " answer no",
                  " because \"a reason\"",
                  " source \"s\""));
      parts.addAll(
          random.nextBoolean() ? List.of(" reading more than - 5 degC") : List.<String>of());
      Collections.shuffle(parts, random);
      text.append("\ninspect i-").append(i).append(" \"A title\" for each box where depth > 2 in");
      parts.forEach(text::append);
      text.append('\n');
    }
    return text.toString();
  }

  private static String table(Random random) {
    String name = "cover needed";
    String edge = random.nextInt(90) + " %";
    String otherwise = random.nextBoolean() ? "" : "otherwise " + random.nextInt(9) + " in ";
    return "table "
        + name
        + " of a box by its mount, humidity of its room, (if its depth > 2 in then its depth otherwise"
        + " 3 in)\n| flush or on the lining | < "
        + edge
        + " | any | 2 in |\n| flush or on the lining | >= "
        + edge
        + " | < - 2 in | - 2-1/2 in |\n| flush or on the lining | at least "
        + edge
        + " | "
        + (otherwise.isEmpty() ? ">= -2 in" : "-2 in")
        + " | 1 in |\n| surface | any | any | 1 in |\n"
        + otherwise
        + (random.nextBoolean() ? "because \"a\" \"reason\"\n" : "\n");
  }

  /** The same pieces with other white space, and with comments if asked for. */
  private static String laidOut(String text, Random random, boolean comments) {
    SourceText source = new SourceText("x", text);
    StringBuilder other = new StringBuilder(gap(random, comments));
    for (List<Piece> statement : StatementReader.pieces(source)) {
      Kind left = Kind.STATEMENT;
      for (int i = 0; i < statement.size(); i++) {
        Piece piece = statement.get(i);
        boolean tight = TIGHT.contains(left) || TIGHT.contains(piece.kind());
        // A hyphen of a comment right behind a minus sign would make it part of the comment.
        other.append(left == Kind.MINUS ? " " : "");
        if (i > 0 && !(tight && random.nextBoolean())) {
          other.append(gap(random, comments));
        }
        // A row begins on a line of its own.
        other.append(left == Kind.BAR && piece.kind() == Kind.BAR ? "\n" : "");
        String written = source.textOf(piece.span());
        // Within a quantity, which is one piece, there may be spaces but no comments.
        boolean isText = piece.kind().isText();
        other.append(isText ? written : written.replace(" ", gap(random, false)));
        left = piece.kind();
      }
      other.append(gap(random, comments)).append('\n').append(random.nextBoolean() ? "  " : "");
    }
    return other.toString();
  }

  private static String gap(Random random, boolean comments) {
    List<String> gaps = comments && random.nextInt(4) == 0 ? COMMENTS : SPACES;
    return gaps.get(random.nextInt(gaps.size()));
  }

  private static String dump(String text) {
    Compilation compilation = FormattingLaws.COMPILER.compile(new SourceText("x", text));
    assertThat(compilation.diagnostics()).as(text).isEmpty();
    Standard standard = compilation.standard().orElseThrow();
    return FormattingLaws.dump(standard);
  }

  private static String format(String text) {
    return RuleFormatter.format(new SourceText("x", text));
  }
}
