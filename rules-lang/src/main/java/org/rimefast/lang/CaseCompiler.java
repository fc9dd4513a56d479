package org.rimefast.lang;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.internal.check.CaseChecker;
import org.rimefast.lang.internal.grammar.StatementReader;
import org.rimefast.lang.internal.layer.UnfitText;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceText;

/**
 * Compiles texts that hold the cases of a standard: {@code tamarack-house.cases.rime} beside {@code
 * tamarack-house.rime}. Cases in the standard's own text come with the {@link Standard}.
 */
public final class CaseCompiler {
  private CaseCompiler() {}

  /** Compiles one text. Never throws for what is wrong in the text. */
  public static CaseCompilation compile(SourceText source, Standard standard) {
    Limits limits = Limits.DEFAULT;
    Optional<Diagnostic> refused = UnfitText.problem(source.text(), limits.characters());
    if (refused.isPresent()) {
      return new CaseCompilation(source, List.of(), List.of(refused.get()));
    }
    StatementReader.Statements read =
        StatementReader.read(source, limits.nesting(), limits.errors());
    List<Diagnostic> all = new ArrayList<>(read.diagnostics());
    boolean whole = all.isEmpty();
    CaseChecker checker =
        new CaseChecker(source, Optional.of(standard.rules().stream().map(Rule::id).toList()), all);
    checker.checkFile(read.statements(), standard.name(), whole);
    List<Case> cases = checker.check(read.statements());
    all.sort(Comparator.comparingInt(diagnostic -> diagnostic.span().start()));
    List<Diagnostic> told = RuleCompiler.limited(all, limits);
    boolean failed = all.stream().anyMatch(d -> d.level() == Diagnostic.Level.ERROR);
    return new CaseCompilation(source, failed ? List.of() : cases, told);
  }
}
