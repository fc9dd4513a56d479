package org.rimefast.languageserver;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentSkipListMap;
import org.rimefast.check.StandardLibrary;
import org.rimefast.check.SteelModules;
import org.rimefast.check.cases.CaseRunner;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceText;

/** Files in memory, the shipped standards, and the engine that runs cases. */
final class DiskOfTests implements EditorHost {
  private final Map<String, String> files = new ConcurrentSkipListMap<>();

  void put(String uri, String text) {
    files.put(uri, text);
  }

  @Override
  public Optional<SourceText> shipped(String name) {
    return StandardLibrary.find(name);
  }

  @Override
  public Optional<String> read(String uri) {
    return Optional.ofNullable(files.get(uri));
  }

  @Override
  public List<String> files(String uri) {
    return files.keySet().stream()
        .filter(file -> file.startsWith(uri) && file.indexOf('/', uri.length()) < 0)
        .filter(file -> file.endsWith(".rime"))
        .toList();
  }

  @Override
  public List<CaseOutcome> runCases(Standard standard, List<Case> cases) {
    List<CaseOutcome> outcomes = new ArrayList<>();
    new CaseRunner(SteelModules.dictionary(), this::plan)
        .run(standard, cases)
        .results()
        .forEach(
            result -> {
              List<String> faults = new ArrayList<>();
              result.problems().forEach(problem -> faults.add(problem.message()));
              result
                  .mismatches()
                  .forEach(m -> faults.add("expected " + m.expected() + "; found " + m.found()));
              outcomes.add(new CaseOutcome(result.example(), faults));
            });
    return outcomes;
  }

  private Optional<byte[]> plan(String caseFile, String name) {
    String text = files.get(caseFile.substring(0, caseFile.lastIndexOf('/') + 1) + name);
    return Optional.ofNullable(text).map(found -> found.getBytes(StandardCharsets.UTF_8));
  }
}
