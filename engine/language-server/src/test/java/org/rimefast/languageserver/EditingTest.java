package org.rimefast.languageserver;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

/** What is said of a text while it is typed. */
class EditingTest {
  private final Editor editor = Editor.ready();

  @AfterEach
  void nothingFailed() {
    assertThat(editor.logged()).isEmpty();
    editor.close();
  }

  @Test
  void aSoundTextHasNothingWrong() {
    editor.open(Texts.HOUSE);
    PublishDiagnosticsParams said = editor.diagnostics();
    assertThat(said.getUri()).isEqualTo(Editor.URI);
    assertThat(said.getDiagnostics()).isEmpty();
  }

  @Test
  void aMistakeIsToldWithItsPlaceItsCodeAndTheHelp() {
    editor.open(Texts.HOUSE.replace("sit in outer bay", "sit in outer bey"));
    Diagnostic told = editor.diagnostics().getDiagnostics().get(0);
    assertThat(told.getSeverity()).isEqualTo(DiagnosticSeverity.Error);
    assertThat(told.getSource()).isEqualTo("rimefast");
    assertThat(told.getCode().getLeft()).isEqualTo("unknown-word");
    assertThat(told.getMessage()).contains("\n").contains("Did you mean \"bay\"?");
    assertThat(told.getRange().getStart().getLine()).isEqualTo(11);
  }

  @Test
  void keystrokesInARowAreAnsweredOnce() {
    editor.open(Texts.HOUSE);
    editor.diagnostics();
    Position end = Editor.position(Texts.HOUSE, Texts.HOUSE.length());
    for (int i = 0; i < 40; i++) {
      editor.type(new Range(end, end), "\n");
    }
    assertThat(editor.diagnostics().getVersion()).isEqualTo(41);
    assertThat(editor.publishedSoFar()).isEmpty();
  }

  @Test
  void severalChangesAtOnceCountFromOneAnother() {
    editor.open("standard t edition 1\n");
    Position start = new Position(1, 0);
    editor.change(
        List.of(
            new TextDocumentContentChangeEvent(new Range(start, start), "let a be 2 in\n"),
            new TextDocumentContentChangeEvent(
                new Range(new Position(1, 4), new Position(1, 5)), "gap"),
            new TextDocumentContentChangeEvent(
                new Range(new Position(1, 11), new Position(1, 12)), "3")));
    assertThat(editor.diagnostics().getDiagnostics()).isEmpty();
    assertThat(hover(new Position(1, 5))).contains("gap").contains("3 in");
  }

  private String hover(Position position) {
    return Editor.await(
            editor
                .server()
                .getTextDocumentService()
                .hover(new org.eclipse.lsp4j.HoverParams(editor.id(), position)))
        .getContents()
        .getRight()
        .getValue();
  }

  @Test
  void whatWasSaidOfAFileIsTakenBackWhenItIsClosed() {
    editor.open("rule");
    assertThat(editor.diagnostics().getDiagnostics()).isNotEmpty();
    editor.closeFile();
    assertThat(editor.nextPublished().getDiagnostics()).isEmpty();
  }

  /** A whole standard, letter by letter, with a question at each; every prefix is broken text. */
  @Test
  void textThatIsBrokenAtEveryKeystrokeStopsNothing() {
    editor.open("");
    StringBuilder typed = new StringBuilder();
    for (int i = 0; i < Texts.HOUSE.length(); i++) {
      Position at = Editor.position(typed.toString(), typed.length());
      String next = Texts.HOUSE.substring(i, i + 1);
      editor.type(new Range(at, at), next);
      typed.append(next);
      if (i % 9 == 0) {
        editor.completion(Editor.position(typed.toString(), typed.length()));
      }
    }
    assertThat(editor.diagnostics().getDiagnostics()).isEmpty();
  }

  /** One stretch after another is taken out of a sound text, anywhere, and put back. */
  @Test
  void holesAnywhereStopNothing() {
    editor.open(Texts.HOUSE);
    for (int start = 0; start + 7 < Texts.HOUSE.length(); start += 13) {
      String text = Texts.HOUSE;
      Position from = Editor.position(text, start);
      editor.type(new Range(from, Editor.position(text, start + 7)), "");
      editor.completion(from);
      editor.type(new Range(from, from), text.substring(start, start + 7));
    }
    assertThat(editor.diagnostics().getDiagnostics()).isEmpty();
  }

  @Test
  void hostileTextStopsNothing() {
    List<String> texts =
        List.of(
            "rule x \"t\"\n  box must " + "(".repeat(500),
            "rule x \"t\"\n  box must " + "not ".repeat(3000) + "touch",
            "\ud83e",
            "\u202e rule",
            "let ".repeat(2000),
            "\r\r\n\n\r",
            "rule \"" + "x".repeat(100_000));
    for (String text : texts) {
      editor.open(text);
      editor.diagnostics();
      editor.completion(new Position(1, 1_000_000));
      editor.completion(new Position(1_000_000, 0));
    }
    editor.open(Texts.HOUSE);
    assertThat(editor.diagnostics().getDiagnostics()).isEmpty();
  }

  @Test
  void placesBehindCharactersOfTwoUnitsAreCountedInUnits() {
    // Each of these characters is one code point and two UTF-16 units.
    String line =
        "rule x \"\ud83e\uddca\ud83e\uddca cold\" box must touch a stub severity hold stage framing"
            + " because \"\ud83d\udd25\" source \"s\"";
    String text = "-- \ud83e\uddca\nstandard t edition 1\n" + line + "\n";
    editor.open(text);
    Diagnostic told = editor.diagnostics().getDiagnostics().get(0);
    assertThat(told.getRange().getStart()).isEqualTo(new Position(2, line.indexOf("stub")));
    assertThat(told.getRange().getEnd()).isEqualTo(new Position(2, line.indexOf("stub") + 4));
    // And what is typed behind them lands where it belongs.
    editor.type(told.getRange(), "stud");
    assertThat(editor.diagnostics().getDiagnostics()).isEmpty();
    int after = line.indexOf("stage framing");
    editor.type(new Range(new Position(2, after + 6), new Position(2, after + 13)), "\ud83d\udd25");
    assertThat(editor.diagnostics().getDiagnostics().get(0).getRange().getStart())
        .isEqualTo(new Position(2, after + 6));
  }

  @Test
  void linesMayEndInAnyWay() {
    String text = Texts.HOUSE.replace("outer bay\n", "outer bey\n");
    List<Range> ranges = new ArrayList<>();
    for (String end : List.of("\n", "\r\n", "\r")) {
      editor.open(text.replace("\n", end));
      ranges.add(editor.diagnostics().getDiagnostics().get(0).getRange());
    }
    assertThat(ranges).containsOnly(ranges.get(0));
  }

  @Test
  void aLongFileIsAnsweredInBoundedTime() {
    StringBuilder text = new StringBuilder("standard long edition 1\n\nlet gap be 2 in\n\n");
    for (int i = 0; text.chars().filter(c -> c == '\n').count() < 5000; i++) {
      text.append("rule box-").append(i).append(" \"A box keeps clear of the steel\"\n");
      text.append("  each box where kind is junction and it is on a wall must sit in outer bay\n");
      text.append("    with clearance >= gap\n");
      text.append("  severity hold\n  stage framing\n  because \"b\"\n  source \"s\"\n\n");
    }
    editor.open(text.toString());
    Assertions.assertTimeout(
        Duration.ofSeconds(30), () -> assertThat(editor.diagnostics().getDiagnostics()).isEmpty());
    Position gap = Editor.position(text.toString(), text.indexOf("gap\n"));
    // Once all is warm, a keystroke is answered in a time in which one goes on typing.
    editor.type(new Range(gap, gap), "q");
    Assertions.assertTimeout(
        Duration.ofSeconds(10),
        () -> assertThat(editor.diagnostics().getDiagnostics()).isNotEmpty());
    Assertions.assertTimeout(
        Duration.ofSeconds(10), () -> assertThat(editor.completion(gap)).isNotEmpty());
  }
}
