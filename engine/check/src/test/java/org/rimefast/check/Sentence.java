package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceText;
import org.rimefast.plan.Plan;

/** A sentence, the plans that it is asked of, and what it says of their elements. */
final class Sentence {
  private static final Path FOLDER = Path.of("src", "test", "resources", "sentences");
  private static final Set<String> READ = new TreeSet<>();

  private final String name;
  private final String sentence;
  private final StringBuilder said = new StringBuilder();
  private String definitions = "";
  private Dictionary dictionary = Given.DICTIONARY;
  private Plan plan;

  @SuppressWarnings("NullAway") // the plan comes with "on"
  Sentence(String name, String sentence) {
    this.name = name;
    this.sentence = sentence;
    said.append(sentence).append('\n');
  }

  /** Definitions that stand before the rule. */
  Sentence with(String text) {
    definitions = text;
    return this;
  }

  Sentence in(InventedWords words) {
    dictionary = words.build();
    return this;
  }

  Sentence on(Plan next) {
    plan = next;
    return this;
  }

  /** Both evaluators are asked, and must agree. */
  Sentence says(Verdict verdict, String... elements) {
    PlanFacts facts = new PlanFacts(plan, dictionary);
    Checker checker = checker();
    for (String element : elements) {
      int handle = facts.handleNamed(element);
      Finding finding = checker.explain("r", handle, facts);
      assertThat(finding.verdict()).as("%s: %s", element, finding.reason()).isEqualTo(verdict);
      said.append('\n')
          .append(finding.element().label() + ": " + verdict.words() + '\n')
          .append("  " + finding.reason() + '\n');
      finding.evidence().forEach(evidence -> write(evidence, "  - "));
      finding
          .missing()
          .forEach(missing -> said.append("  missing: " + missing.description() + '\n'));
    }
    return this;
  }

  private void write(Evidence evidence, String indent) {
    said.append(indent).append(evidence.statement()).append('\n');
    for (Evidence.Fact fact : evidence.facts()) {
      said.append(" ".repeat(indent.length()) + fact.name() + ": " + fact.value() + '\n');
    }
    evidence.parts().forEach(part -> write(part, "  " + indent));
  }

  /** What was said is what the file says; a file that is missing is written, to be read. */
  void isHeld() {
    Path file = FOLDER.resolve(name + ".expected");
    READ.add(FOLDER.relativize(file).toString().replace('\\', '/'));
    try {
      if (!Files.exists(file)) {
        Files.createDirectories(FOLDER.resolve(name).getParent());
        Files.writeString(file, said);
        throw new AssertionError(file + " was written; read it and run the test again");
      }
      assertThat(said.toString()).isEqualTo(Files.readString(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Files of a folder that no sentence reads. */
  static List<String> unread(String folder) {
    try (Stream<Path> files = Files.list(FOLDER.resolve(folder))) {
      return files
          .map(file -> folder + "/" + file.getFileName())
          .filter(file -> !READ.contains(file))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Checker checker() {
    String text =
        """
        standard test edition 1

        %srule r "A rule"
          %s
          severity hold
          stage layout
          because "a reason"
          source "common practice, no source"
        """
            .formatted(definitions, sentence);
    Compilation compilation =
        new RuleCompiler(dictionary.vocabulary()).compile(new SourceText("test.rime", text));
    assertThat(compilation.diagnostics())
        .as(
            compilation.diagnostics().stream()
                .map(diagnostic -> diagnostic.headline() + " " + diagnostic.help())
                .collect(Collectors.joining("\n")))
        .extracting(Diagnostic::headline)
        .isEmpty();
    return new Checker(dictionary, compilation.standard().orElseThrow());
  }
}
