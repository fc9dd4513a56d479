package org.rimefast.languageserver.internal;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.lsp4j.CodeLens;
import org.eclipse.lsp4j.Command;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.tooling.OutlineEntry;

/** What can be clicked on to run cases. */
final class CaseLenses {
  private CaseLenses() {}

  static List<CodeLens> of(View view) {
    List<Case> all = new ArrayList<>(view.standard().cases());
    view.workspace().casesOf(view.standard()).ifPresent(beside -> all.addAll(beside.cases()));
    List<CodeLens> lenses = new ArrayList<>();
    for (OutlineEntry entry : view.analysis().outline(view.part())) {
      switch (entry.keyword()) {
        case "rule", "inspect" -> {
          long count = all.stream().filter(example -> speaksOf(example, entry.name())).count();
          if (count > 0) {
            lenses.add(lens(view, entry, count == 1 ? "run 1 case" : "run " + count + " cases"));
          }
        }
        case "case" -> {
          if (view.analysis().cases().stream().anyMatch(c -> c.name().equals(entry.name()))) {
            lenses.add(lens(view, entry, "run this case"));
          }
        }
        default -> {
          // Nothing else has cases.
        }
      }
    }
    return lenses;
  }

  /** True for a case of the rule, and for one of every rule that expects something of it. */
  static boolean speaksOf(Case example, String rule) {
    return example.rule().filter(rule::equals).isPresent()
        || example.expectations().stream()
            .anyMatch(expectation -> expectation.rule().filter(rule::equals).isPresent());
  }

  private static CodeLens lens(View view, OutlineEntry entry, String title) {
    String kind = entry.keyword().equals("case") ? CaseRuns.CASE : CaseRuns.RULE;
    return new CodeLens(
        view.range(entry.nameSpan()),
        new Command(title, CaseRuns.COMMAND, List.of(view.document().uri(), kind, entry.name())),
        null);
  }
}
