package org.rimefast.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.rimefast.check.Dictionary;
import org.rimefast.check.StandardFiles;
import org.rimefast.check.StandardLibrary;
import org.rimefast.check.cases.CaseProblem;
import org.rimefast.check.cases.CaseResult;
import org.rimefast.check.cases.CaseRunner;
import org.rimefast.check.cases.Mismatch;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceText;
import org.rimefast.languageserver.CaseOutcome;
import org.rimefast.languageserver.EditorHost;

/** Gives a language server the files on disk, the shipped standards, and verdicts on cases. */
final class DiskHost implements EditorHost {
  private static final String END = ".rime";

  private final CaseRunner runner;

  DiskHost(Dictionary dictionary) {
    this.runner = new CaseRunner(dictionary, DiskHost::plan);
  }

  /** A plan beside the file of its case. */
  private static Optional<byte[]> plan(String caseFile, String name) throws IOException {
    Path file =
        path(caseFile)
            .orElseThrow(() -> new IOException("the case stands in no file on this machine"))
            .resolveSibling(name);
    return Files.exists(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
  }

  @Override
  public Optional<SourceText> shipped(String name) {
    return StandardLibrary.find(name);
  }

  @Override
  public Optional<String> read(String uri) {
    return path(uri).flatMap(StandardFiles::text);
  }

  @Override
  public List<String> files(String uri) {
    Optional<Path> folder = path(uri).filter(Files::isDirectory);
    if (folder.isEmpty()) {
      return List.of();
    }
    List<String> found = new ArrayList<>();
    try (Stream<Path> all = Files.list(folder.get())) {
      all.filter(file -> file.getFileName().toString().endsWith(END))
          .sorted()
          .forEach(
              file -> {
                String name = file.toUri().getRawPath();
                found.add(uri + name.substring(name.lastIndexOf('/') + 1));
              });
    } catch (IOException | UncheckedIOException e) {
      // A folder that cannot be listed has no files that could be read.
      return List.of();
    }
    return found;
  }

  @Override
  public List<CaseOutcome> runCases(Standard standard, List<Case> cases) {
    return runner.run(standard, cases).results().stream().map(DiskHost::outcome).toList();
  }

  private static CaseOutcome outcome(CaseResult result) {
    List<String> faults = new ArrayList<>();
    for (CaseProblem problem : result.problems()) {
      faults.add((problem.message() + " " + problem.remedy()).strip());
    }
    for (Mismatch mismatch : result.mismatches()) {
      faults.add(
          mismatch.rule().map(rule -> rule.id() + ": ").orElse("")
              + "expected "
              + mismatch.expected()
              + "; found "
              + mismatch.found());
    }
    return new CaseOutcome(result.example(), faults);
  }

  /** The file that a URI names; empty if it names none on this machine. */
  private static Optional<Path> path(String uri) {
    try {
      URI parsed = URI.create(uri);
      return "file".equals(parsed.getScheme()) ? Optional.of(Path.of(parsed)) : Optional.empty();
    } catch (IllegalArgumentException e) {
      // InvalidPathException among them.
      return Optional.empty();
    }
  }
}
