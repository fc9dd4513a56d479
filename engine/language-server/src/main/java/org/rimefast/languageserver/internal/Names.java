package org.rimefast.languageserver.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.rimefast.lang.rule.Meaning;
import org.rimefast.lang.tooling.Mention;

/** The names that a standard gives: where each is given, and where it is used. */
final class Names {
  private Names() {}

  /** The name at a position. */
  static Optional<Mention> at(Document document, Position position) {
    int offset = document.lines().offset(position);
    return document.analysis().mentionAt(offset).filter(m -> isName(m.meaning()));
  }

  /** Where the name is given. */
  static List<Location> definition(Document document, Mention mention) {
    return locations(
        document, same(document, mention.meaning()).stream().filter(Mention::declaration).toList());
  }

  /** Where the name is used. */
  static List<Location> references(Document document, Mention mention, boolean withDeclaration) {
    return locations(
        document,
        same(document, mention.meaning()).stream()
            .filter(m -> withDeclaration || !m.declaration())
            .toList());
  }

  /** Every mention of the same name. */
  static List<Mention> same(Document document, Meaning meaning) {
    String key = key(meaning);
    return document.analysis().mentions().stream()
        .filter(m -> isName(m.meaning()) && key(m.meaning()).equals(key))
        .distinct()
        .toList();
  }

  /** What tells one name from all others. */
  static String key(Meaning meaning) {
    if (meaning instanceof Meaning.OfConstant constant) {
      return "constant " + constant.constant().name();
    }
    if (meaning instanceof Meaning.OfTerm term) {
      return "term " + term.term().singular();
    }
    return meaning instanceof Meaning.OfRule rule ? "rule " + rule.id() : "";
  }

  private static boolean isName(Meaning meaning) {
    return !key(meaning).isEmpty();
  }

  private static List<Location> locations(Document document, List<Mention> mentions) {
    List<Location> locations = new ArrayList<>();
    mentions.forEach(m -> locations.add(new Location(document.uri(), document.range(m.span()))));
    return locations;
  }
}
