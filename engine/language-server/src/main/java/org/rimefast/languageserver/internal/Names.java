package org.rimefast.languageserver.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.rimefast.lang.rule.Meaning;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.tooling.Analysis;
import org.rimefast.lang.tooling.Mention;

/** The names that a standard gives: where each is given, and where it is used. */
final class Names {
  private Names() {}

  /** The name at a position. */
  static Optional<Mention> at(View view, Position position) {
    return view.analysis().mentionAt(view.offset(position)).filter(m -> isName(m.meaning()));
  }

  /** Where the name is given. */
  static List<Location> definition(View view, Mention mention) {
    return locations(view, mention, true, false);
  }

  /** Where the name is used. */
  static List<Location> references(View view, Mention mention, boolean withDeclaration) {
    return locations(view, mention, withDeclaration, true);
  }

  /** The texts in which a name can stand: those of every standard that it is given in. */
  static List<Analysis> projects(View view, Meaning meaning) {
    Set<Analysis> roots = Collections.newSetFromMap(new IdentityHashMap<>());
    List<Analysis> ordered = new ArrayList<>();
    for (Mention given : same(view.standard(), meaning)) {
      SourceText source = view.standard().source();
      String file = source.parts().get(source.partAt(given.span().start())).name();
      if (given.declaration() && Uris.isUri(file)) {
        view.workspace().roots(file).stream().filter(roots::add).forEach(ordered::add);
      }
    }
    if (roots.add(view.standard())) {
      ordered.add(view.standard());
    }
    List<Analysis> all = new ArrayList<>(view.workspace().withCompanions(ordered));
    boolean known = false;
    for (Analysis analysis : all) {
      known |= analysis == view.analysis();
    }
    if (!known) {
      all.add(view.analysis());
    }
    return all;
  }

  /** Every mention of the same name in one text. */
  static List<Mention> same(Analysis analysis, Meaning meaning) {
    String key = key(meaning);
    return analysis.mentions().stream()
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

  private static List<Location> locations(
      View view, Mention mention, boolean declarations, boolean uses) {
    Set<Location> found = new LinkedHashSet<>();
    // What stands in the file at hand comes first.
    List<Analysis> all = new ArrayList<>();
    all.add(view.analysis());
    all.addAll(projects(view, mention.meaning()));
    for (Analysis analysis : all) {
      Places places = new Places(analysis.source());
      for (Mention same : same(analysis, mention.meaning())) {
        if (same.declaration() ? declarations : uses) {
          places.location(same.span()).ifPresent(found::add);
        }
      }
    }
    return List.copyOf(found);
  }
}
