package org.rimefast.lang.tooling;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.Limits;
import org.rimefast.lang.internal.grammar.StatementReader;
import org.rimefast.lang.internal.layer.UnfitText;
import org.rimefast.lang.internal.syntax.Piece;
import org.rimefast.lang.source.SourceText;

/**
 * What a file is for, as far as its own words say.
 *
 * @param kind what it is
 * @param standard the name of the standard that it is, or is for; empty if it does not say
 * @param namesOthers true if it includes a file or builds on a standard
 */
public record TextRole(Kind kind, String standard, boolean namesOthers) {
  /** What a file is. */
  public enum Kind {
    /** It begins a standard. */
    STANDARD,
    /** It has statements of a standard but does not say of which: another file may include it. */
    PART,
    /** It begins with {@code cases for}. */
    CASES,
    /** It begins with {@code waivers for}. */
    WAIVERS
  }

  /** The role of a text, right or wrong. */
  public static TextRole of(SourceText source) {
    if (UnfitText.problem(source.text(), Limits.DEFAULT.characters()).isPresent()) {
      return new TextRole(Kind.PART, "", false);
    }
    List<List<Piece>> statements = StatementReader.pieces(source, 0);
    boolean namesOthers =
        statements.stream()
            .anyMatch(
                statement ->
                    word(source, statement, 0).equals("include")
                        || (word(source, statement, 0).equals("standard")
                            && statement.stream()
                                .anyMatch(piece -> text(source, piece).equals("builds"))));
    for (List<Piece> statement : statements) {
      Optional<Kind> kind =
          switch (word(source, statement, 0)) {
            case "standard" -> Optional.of(Kind.STANDARD);
            case "cases" -> Optional.of(Kind.CASES);
            case "waivers" -> Optional.of(Kind.WAIVERS);
            default -> Optional.empty();
          };
      if (kind.isPresent()) {
        int name = kind.get() == Kind.STANDARD ? 1 : 2;
        return new TextRole(kind.get(), word(source, statement, name), namesOthers);
      }
    }
    return new TextRole(Kind.PART, "", namesOthers);
  }

  private static String word(SourceText source, List<Piece> statement, int number) {
    return number < statement.size() ? text(source, statement.get(number)) : "";
  }

  private static String text(SourceText source, Piece piece) {
    return source.textOf(piece.span());
  }
}
