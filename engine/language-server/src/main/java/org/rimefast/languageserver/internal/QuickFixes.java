package org.rimefast.languageserver.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.rimefast.lang.source.Diagnostic;

/** The edits that put faults right. */
final class QuickFixes {
  private QuickFixes() {}

  static List<CodeAction> at(Document document, CodeActionParams params) {
    List<CodeAction> actions = new ArrayList<>();
    List<String> only = params.getContext().getOnly();
    boolean asked =
        only == null || only.stream().anyMatch(kind -> CodeActionKind.QuickFix.startsWith(kind));
    if (!asked) {
      return actions;
    }
    int from = document.lines().offset(params.getRange().getStart());
    int to = document.lines().offset(params.getRange().getEnd());
    for (Diagnostic diagnostic : document.analysis().compilation().diagnostics()) {
      if (diagnostic.span().start() <= to && from <= diagnostic.span().end()) {
        diagnostic.fixes().forEach(fix -> actions.add(action(document, diagnostic, fix)));
      }
    }
    return actions;
  }

  private static CodeAction action(Document document, Diagnostic diagnostic, Diagnostic.Fix fix) {
    CodeAction action = new CodeAction(title(fix));
    action.setKind(CodeActionKind.QuickFix);
    action.setDiagnostics(List.of(DiagnosticsPublisher.of(document, diagnostic)));
    action.setIsPreferred(diagnostic.fixes().get(0).equals(fix));
    action.setEdit(
        new WorkspaceEdit(
            Map.of(
                document.uri(),
                List.of(new TextEdit(document.range(fix.span()), fix.replacement())))));
    return action;
  }

  private static String title(Diagnostic.Fix fix) {
    if (fix.replacement().isEmpty()) {
      return "Take it out";
    }
    String text = fix.replacement().strip().replaceAll("\\s+", " ");
    return "Write " + (text.length() > 60 ? text.substring(0, 57) + "..." : text);
  }
}
