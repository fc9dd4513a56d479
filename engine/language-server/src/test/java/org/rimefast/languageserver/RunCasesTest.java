package org.rimefast.languageserver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.eclipse.lsp4j.CodeLens;
import org.eclipse.lsp4j.CodeLensParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.MessageType;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Cases that are run from the editor. The plan is invented. */
class RunCasesTest {
  private static final String CASES_URI = "file:///jobs/house.cases.rime";
  private static final String PLAN =
      """
      {"format": "rimefast-plan-1", "id": "small", "title": "Small (invented)", "units": "mm",
       "shell": {"size": "45G1"},
       "faces": {"default": {"profile": "side wall", "phase": 40, "standoff": 25,
         "stud": {"depth": 41.3, "flange": 31.75, "thickness": 0.84}, "lining": 12.7}},
       "boxes": [
         {"id": "R-1", "kind": "device", "face": "left", "along": 1187, "up": 1200, "width": 54,
          "height": 76, "depth": 47.6, "mount": "flush"}]}
      """;
  private static final String CASES =
      """
      cases for small

      case "before a rib" of in-bay
        plan "small.json"
        expect broken by "R-1"

      case "in a bay" of in-bay
        plan "small.json"
        expect met
      """;
  private static final String RULES =
      """
      standard small edition 1

      rule in-bay "A recessed box sits in an outer bay"
        each box where it is recessed must sit in outer bay
        severity hold
        stage layout
        because "room for foam"
        source "common practice, no source"

      rule bare "No case speaks of this one"
        box must touch a stud
        severity fix
        stage layout
        because "b"
        source "s"
      """;

  private final DiskOfTests disk = new DiskOfTests();
  private final Editor editor = Editor.ready(disk);

  RunCasesTest() {
    disk.put("file:///jobs/small.json", PLAN);
  }

  @AfterEach
  void nothingFailed() {
    assertThat(editor.logged()).isEmpty();
    editor.close();
  }

  private List<? extends CodeLens> lenses(String uri) {
    return Editor.await(
        editor
            .server()
            .getTextDocumentService()
            .codeLens(new CodeLensParams(new TextDocumentIdentifier(uri))));
  }

  private MessageParams run(Command command) {
    Editor.await(
        editor
            .server()
            .getWorkspaceService()
            .executeCommand(
                new ExecuteCommandParams(command.getCommand(), command.getArguments())));
    return editor.nextShown();
  }

  @Test
  void aRuleThatHasCasesOffersToRunThem() {
    disk.put(CASES_URI, CASES);
    editor.open(RULES);
    List<? extends CodeLens> lenses = lenses(Editor.URI);
    assertThat(lenses).hasSize(1);
    assertThat(lenses.get(0).getRange().getStart()).isEqualTo(new Position(2, 5));
    assertThat(lenses.get(0).getCommand().getTitle()).isEqualTo("run 2 cases");
    MessageParams shown = run(lenses.get(0).getCommand());
    assertThat(shown.getType()).isEqualTo(MessageType.Warning);
    assertThat(shown.getMessage())
        .startsWith("1 of 2 cases did not come out as expected.\n\"in a bay\": ")
        .contains("broken by box R-1");
    Diagnostic told =
        editor.said(CASES_URI, said -> !said.getDiagnostics().isEmpty()).getDiagnostics().get(0);
    assertThat(told.getRange().getStart()).isEqualTo(new Position(6, 0));
    assertThat(told.getMessage()).contains("broken by box R-1");
    // What came of it holds for no other text.
    editor.type(new Range(new Position(0, 0), new Position(0, 0)), "\n");
    assertThat(editor.said(CASES_URI, said -> true).getDiagnostics()).isEmpty();
  }

  @Test
  void oneCaseIsRunFromItsOwnFile() {
    disk.put(Editor.URI, RULES);
    editor.open(CASES_URI, CASES);
    List<? extends CodeLens> lenses = lenses(CASES_URI);
    assertThat(lenses).hasSize(2);
    MessageParams first = run(lenses.get(0).getCommand());
    assertThat(first.getType()).isEqualTo(MessageType.Info);
    assertThat(first.getMessage()).isEqualTo("1 case came out as expected.");
    assertThat(run(lenses.get(1).getCommand()).getMessage())
        .startsWith("1 of 1 case did not come out as expected.");
  }

  @Test
  void casesInTheStandardsOwnFileAreRunToo() {
    editor.open(RULES + CASES.substring(CASES.indexOf("case ")));
    List<? extends CodeLens> lenses = lenses(Editor.URI);
    assertThat(lenses)
        .extracting(lens -> lens.getCommand().getTitle())
        .containsExactly("run 2 cases", "run this case", "run this case");
    assertThat(run(lenses.get(1).getCommand()).getMessage())
        .isEqualTo("1 case came out as expected.");
  }

  @Test
  void aPlanThatIsNotThereIsToldOnTheCase() {
    disk.put(Editor.URI, RULES);
    editor.open(CASES_URI, CASES.replaceFirst("small.json", "none.json"));
    assertThat(run(lenses(CASES_URI).get(0).getCommand()).getMessage()).contains("none.json");
    assertThat(
            editor
                .said(CASES_URI, said -> !said.getDiagnostics().isEmpty())
                .getDiagnostics()
                .get(0)
                .getMessage())
        .contains("none.json");
  }

  @Test
  void casesOfAStandardWithAFaultAreNotRun() {
    disk.put(CASES_URI, CASES);
    editor.open(RULES.replace("must sit in", "must sit on"));
    assertThat(run(lenses(Editor.URI).get(0).getCommand()).getMessage()).contains("a fault");
  }
}
