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

  static List<CodeAction> at(View view, CodeActionParams params) {
    List<CodeAction> actions = new ArrayList<>();
    List<String> only = params.getContext().getOnly();
    boolean asked =
        only == null || only.stream().anyMatch(kind -> CodeActionKind.QuickFix.startsWith(kind));
    if (!asked) {
      return actions;
    }
    int from = view.offset(params.getRange().getStart());
    int to = view.offset(params.getRange().getEnd());
    for (Diagnostic diagnostic : view.analysis().diagnostics()) {
      if (view.holds(diagnostic.span())
          && diagnostic.span().start() <= to
          && from <= diagnostic.span().end()) {
        diagnostic.fixes().forEach(fix -> actions.add(action(view, diagnostic, fix)));
      }
    }
    return actions;
  }

  private static CodeAction action(View view, Diagnostic diagnostic, Diagnostic.Fix fix) {
    CodeAction action = new CodeAction(title(fix));
    action.setKind(CodeActionKind.QuickFix);
    action.setDiagnostics(
        List.of(DiagnosticsPublisher.of(new Places(view.analysis().source()), diagnostic)));
    action.setIsPreferred(diagnostic.fixes().get(0).equals(fix));
    new Places(view.analysis().source())
        .location(fix.span())
        .ifPresent(
            place ->
                action.setEdit(
                    new WorkspaceEdit(
                        Map.of(
                            place.getUri(),
                            List.of(new TextEdit(place.getRange(), fix.replacement()))))));
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
