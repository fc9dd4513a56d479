package org.rimefast.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.rimefast.check.Dictionary;
import org.rimefast.check.SteelModules;
import org.rimefast.check.cases.CaseResults;
import org.rimefast.check.cases.CaseRunner;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceFinder;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.vocabulary.Vocabulary;

/** A house standard that builds on another, both invented, and its page. */
final class SamplePages {
  private static final Dictionary DICTIONARY = SteelModules.dictionary();

  private SamplePages() {}

  static Vocabulary vocabulary() {
    return DICTIONARY.vocabulary();
  }

  /** Amended, added and withdrawn rules, a term, constants, an inspect item. */
  static Standard house() {
    Compilation compilation =
        new RuleCompiler(vocabulary())
            .compile(
                text("tamarack-house"),
                new SourceFinder() {
                  @Override
                  public Optional<SourceText> include(String name) {
                    return Optional.empty();
                  }

                  @Override
                  public Optional<SourceText> base(String name, String edition) {
                    return Optional.of(text(name));
                  }
                });
    return compilation
        .standard()
        .orElseThrow(() -> new IllegalStateException(compilation.diagnostics().get(0).toString()));
  }

  /** One case that comes out, one that does not, and one whose plan is not there. */
  static CaseResults cases() {
    Standard house = house();
    return new CaseRunner(DICTIONARY, (file, name) -> Optional.empty()).run(house, house.cases());
  }

  private static SourceText text(String name) {
    try {
      return new SourceText(
          name + ".rime", Files.readString(Path.of("src/test/resources/pages", name + ".rime")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
