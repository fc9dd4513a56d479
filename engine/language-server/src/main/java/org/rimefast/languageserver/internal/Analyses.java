package org.rimefast.languageserver.internal;

import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.tooling.Analysis;
import org.rimefast.lang.tooling.RuleAnalyser;

/** Analyses, each kept until a text that it was made of changes. */
final class Analyses {
  private record OfStandard(SourceText source, Finder finder, Analysis analysis) {}

  private record OfCompanion(
      SourceText source, boolean isCases, Analysis standard, Analysis analysis) {}

  private final RuleAnalyser analyser;
  private final ConcurrentMap<String, OfStandard> standards = new ConcurrentHashMap<>();
  private final ConcurrentMap<String, OfCompanion> companions = new ConcurrentHashMap<>();

  Analyses(RuleAnalyser analyser) {
    this.analyser = analyser;
  }

  /** The same for other files, with nothing kept yet. */
  Analyses fresh() {
    return new Analyses(analyser);
  }

  /** A standard with all that it includes and builds on. */
  Analysis standard(Files files, SourceText source) {
    OfStandard kept =
        standards.compute(
            Uris.key(source.name()),
            (key, known) ->
                known != null && known.source().equals(source) && known.finder().finds(files)
                    ? known
                    : newStandard(files, source));
    return kept.analysis();
  }

  private OfStandard newStandard(Files files, SourceText source) {
    Finder finder = new Finder(files, source.name());
    return new OfStandard(source, finder, analyser.analyse(source, finder));
  }

  /** Cases of a standard. */
  Analysis cases(SourceText source, Analysis standard) {
    return companion(source, true, standard);
  }

  /** Waivers for a standard. */
  Analysis waivers(SourceText source, Analysis standard) {
    return companion(source, false, standard);
  }

  // An equal analysis is another one: it was made of other texts.
  @SuppressWarnings("ReferenceEquality")
  private Analysis companion(SourceText source, boolean isCases, Analysis standard) {
    OfCompanion kept =
        companions.compute(
            Uris.key(source.name()),
            (key, known) ->
                known != null
                        && known.source().equals(source)
                        && known.isCases() == isCases
                        && known.standard() == standard
                    ? known
                    : new OfCompanion(
                        source,
                        isCases,
                        standard,
                        isCases
                            ? analyser.analyseCases(source, standard)
                            : analyser.analyseWaivers(source, standard)));
    return kept.analysis();
  }
}
