package org.rimefast.languageserver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.ReferenceContext;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.rimefast.lang.RuleFormatter;
import org.rimefast.lang.source.SourceText;

/** What is answered when an author asks. */
class AnswersTest {
  private final Editor editor = Editor.ready();

  @AfterEach
  void nothingFailed() {
    assertThat(editor.logged()).isEmpty();
    editor.close();
  }

  private TextDocumentService texts() {
    return editor.server().getTextDocumentService();
  }

  /** The position within a word; of several, the one with this number, counted from 0. */
  private static Position in(String text, String word, int number) {
    int at = -1;
    for (int i = 0; i <= number; i++) {
      at = text.indexOf(word, at + 1);
    }
    assertThat(at).isNotNegative();
    return Editor.position(text, at + 1);
  }

  private String hover(String text, String word, int number) {
    editor.open(text);
    Hover hover = Editor.await(texts().hover(new HoverParams(editor.id(), in(text, word, number))));
    return hover.getContents().getRight().getValue();
  }

  @Test
  void aConstantSaysItsValueReasonAndSource() {
    assertThat(hover(Texts.HOUSE, "foam behind a box", 1))
        .isEqualTo(
            "**foam behind a box**: constant\n\n2 in\n\nbecause: one lift of foam has to fit\n\n"
                + "source: common practice, no source");
  }

  @Test
  void aTermSaysItsDefinition() {
    assertThat(hover(Texts.HOUSE, "wet room", 1))
        .startsWith("**wet room**: term, several: wet rooms\n\na room where its humidity >= 50 %");
  }

  @Test
  void aRuleSaysWhatItAsks() {
    assertThat(hover(Texts.HOUSE, "few-boxes", 0))
        .contains(
            "A wet room has few boxes", "number of boxes", "severity advise", "because: each");
  }

  @Test
  void aRuleSaysHowItIsRead() {
    String text = Texts.rule("every box must touch some stud").replace("rule x ", "rule held ");
    String said = hover(text, "held", 0);
    assertThat(said).contains("every box must touch some stud", "read as: ");
    String readAs = said.replaceFirst("(?s).*read as: ([^\\n]+).*", "$1");
    assertThat(readAs).isNotEqualTo("every box must touch some stud");
    assertThat(Texts.diagnostics(Texts.rule(readAs))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "clearance >=; **clearance**: property of an item; a number in m, mm, cm, in, ft",
        "sit in; **sit in _**: said of a part; inward rib, web, outer bay",
        "outer bay\\n; **outer bay**: one of a list of words; inward rib",
        "box where its; **box**: noun, several: boxes; electrical part",
        "room is a; **room**: link of an item; Leads to a room",
        "boxes (where; **box**: noun, several: boxes; clearance"
      })
  void aWordOfTheVocabularySaysWhatItIs(String word, String first, String then) {
    String said = hover(Texts.HOUSE, word.replace("\\n", "\n"), 0);
    assertThat(said).startsWith(first).contains(then);
  }

  @Test
  void wordsAreKnownInATextWithFaultsToo() {
    String text = Texts.HOUSE.replace("severity hold", "severity much") + "\nrule x \"t\" box must";
    assertThat(hover(text, "foam behind a box", 1)).contains("2 in");
  }

  @Test
  void nothingIsSaidOfWhatMeansNothing() {
    editor.open(Texts.HOUSE);
    Hover hover = Editor.await(texts().hover(new HoverParams(editor.id(), new Position(2, 0))));
    assertThat(hover).isNull();
  }

  @ParameterizedTest
  @CsvSource({
    "foam behind a box,1",
    "foam behind a box,2",
    "wet room,1",
    "wet room,3",
    "few-boxes,0"
  })
  void aNameLeadsToWhereItIsGiven(String name, int number) {
    editor.open(Texts.HOUSE);
    List<? extends Location> found =
        Editor.await(
                texts()
                    .definition(new DefinitionParams(editor.id(), in(Texts.HOUSE, name, number))))
            .getLeft();
    int first = Texts.HOUSE.indexOf(name);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).getRange().getStart()).isEqualTo(Editor.position(Texts.HOUSE, first));
    assertThat(found.get(0).getRange().getEnd())
        .isEqualTo(Editor.position(Texts.HOUSE, first + name.length()));
  }

  @ParameterizedTest
  @CsvSource({"foam behind a box,1,true,3", "foam behind a box,0,false,2", "wet room,0,true,3"})
  void aNameIsFoundWhereverItIsUsed(String name, int number, boolean declaration, int count) {
    editor.open(Texts.HOUSE);
    ReferenceParams params =
        new ReferenceParams(
            editor.id(), in(Texts.HOUSE, name, number), new ReferenceContext(declaration));
    List<? extends Location> found = Editor.await(texts().references(params));
    assertThat(found).hasSize(count);
    for (Location place : found) {
      int start = Editor.offset(Texts.HOUSE, place.getRange().getStart());
      assertThat(Texts.HOUSE.substring(start)).startsWith(name);
    }
  }

  private static List<TextEdit> edits(Map<String, List<TextEdit>> changes) {
    assertThat(changes).containsOnlyKeys(Editor.URI);
    return Objects.requireNonNull(changes.get(Editor.URI));
  }

  private String renamed(String text, String word, int number, String newName) {
    editor.open(text);
    Map<String, List<TextEdit>> changes =
        Editor.await(texts().rename(new RenameParams(editor.id(), in(text, word, number), newName)))
            .getChanges();
    return Editor.apply(text, edits(changes));
  }

  @ParameterizedTest
  @CsvSource({
    "foam behind a box,0,least lift,3",
    "foam behind a box,2,least lift,3",
    "few-boxes,0,not-many-boxes,1",
    "wet room,3,damp room,3",
  })
  void aNewNameCompiles(String name, int number, String newName, int count) {
    String text = renamed(Texts.HOUSE, name, number, newName);
    assertThat(Texts.diagnostics(text)).isEmpty();
    assertThat(text.replace("A " + name, "")).doesNotContain(name);
    assertThat(text.split(newName, -1)).hasSize(count + 1);
  }

  @Test
  void aTermKeepsItsForms() {
    String text =
        Texts.HOUSE
            .replace("for each wet room,", "for each wall,")
            .replace(
                "number of boxes (where its clearance < foam behind a box)", "number of wet rooms");
    assertThat(Texts.diagnostics(text)).isEmpty();
    assertThat(renamed(text, "wet room", 0, "damp room"))
        .contains("let damp room be", "is a damp room", "number of damp rooms");
  }

  @Test
  void everyNameOfTheShippedStandardCanBeChanged() {
    String shipped = Texts.shipped();
    editor.open(shipped);
    List<String> names = new ArrayList<>();
    for (Either<org.eclipse.lsp4j.SymbolInformation, DocumentSymbol> symbol :
        Editor.await(texts().documentSymbol(new DocumentSymbolParams(editor.id())))) {
      DocumentSymbol name = symbol.getRight();
      if (name.getKind() == org.eclipse.lsp4j.SymbolKind.Module) {
        continue;
      }
      names.add(name.getName());
      boolean rule = name.getKind() == org.eclipse.lsp4j.SymbolKind.Method;
      RenameParams params =
          new RenameParams(
              editor.id(), name.getSelectionRange().getStart(), rule ? "other-name" : "other name");
      WorkspaceEdit edit = Editor.await(texts().rename(params));
      assertThat(edit).as(name.getName()).isNotNull();
      String text = Editor.apply(shipped, edits(edit.getChanges()));
      assertThat(Texts.diagnostics(text)).as(name.getName()).isEmpty();
    }
    assertThat(names).hasSizeGreaterThan(15);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "foam behind a box; clearance; already has the word",
        "foam behind a box; foam where; keeps the word",
        "foam behind a box; a \"b\"; ",
        "wet room; damp; must end in",
        "box-in-outer-bay; few-boxes; already is a rule",
        "few-boxes; two words; ",
      })
  void aNameThatWouldNotCompileIsRefused(String name, String newName, String why) {
    editor.open(Texts.HOUSE);
    assertThatThrownBy(
            () ->
                texts()
                    .rename(new RenameParams(editor.id(), in(Texts.HOUSE, name, 0), newName))
                    .get())
        .hasMessageContaining(why == null ? "" : why);
  }

  @Test
  void nothingIsRenamedInATextWithFaults() {
    String text = Texts.HOUSE.replace("severity hold", "severity much");
    editor.open(text);
    assertThatThrownBy(
            () ->
                texts()
                    .rename(new RenameParams(editor.id(), in(text, "foam behind a box", 0), "gap"))
                    .get())
        .hasMessageContaining("fault");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "sit in outer bay; sit in outer bey",
        "sit in outer bay; sits in outer bay",
        "clearance >=; clearence >=",
        "is a wet room; is wet room",
        "severity hold; severity holt",
        "stage layout; stage layouts",
        "must sit; should sit",
        "must sit; Must sit",
        ">= foam; \u2265 foam",
      })
  void aFixGivesATextThatCompiles(String right, String wrong) {
    String text = Texts.HOUSE.replaceFirst(right, wrong);
    assertThat(text).isNotEqualTo(Texts.HOUSE);
    editor.open(text);
    Diagnostic told = editor.diagnostics().getDiagnostics().get(0);
    List<Either<Command, CodeAction>> actions =
        Editor.await(
            texts()
                .codeAction(
                    new CodeActionParams(
                        editor.id(), told.getRange(), new CodeActionContext(List.of(told)))));
    CodeAction action = actions.get(0).getRight();
    assertThat(action.getKind()).isEqualTo("quickfix");
    assertThat(action.getTitle()).startsWith("Write ");
    assertThat(action.getDiagnostics()).containsExactly(told);
    String fixed = Editor.apply(text, edits(action.getEdit().getChanges()));
    assertThat(Texts.diagnostics(fixed)).isEmpty();
  }

  static List<Path> untidyFiles() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("../../rules-lang/src/test/resources/format"))) {
      return files.filter(file -> file.toString().endsWith(".rime")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("untidyFiles")
  void formattingIsTheCommandsFormatting(Path file) throws IOException {
    String text = Files.readString(file);
    editor.open(text);
    List<? extends TextEdit> edits =
        Editor.await(
            texts()
                .formatting(
                    new DocumentFormattingParams(editor.id(), new FormattingOptions(2, true))));
    String expected = RuleFormatter.format(new SourceText("x", text));
    if (text.equals(expected)) {
      assertThat(edits).isEmpty();
    } else if (!text.contains("\r")) {
      assertThat(Editor.apply(text, edits)).isEqualTo(expected);
    } else {
      assertThat(edits).hasSize(1);
    }
  }

  @Test
  void theOutlineNamesEveryStatementReadableOrNot() {
    String text = Texts.HOUSE + "\nrule half \"t\" box must touch\n\nlet\n";
    editor.open(text);
    List<String> names = new ArrayList<>();
    for (Either<org.eclipse.lsp4j.SymbolInformation, DocumentSymbol> symbol :
        Editor.await(texts().documentSymbol(new DocumentSymbolParams(editor.id())))) {
      names.add(symbol.getRight().getKind() + " " + symbol.getRight().getName());
    }
    assertThat(names)
        .containsExactly(
            "Module tamarack-house",
            "Constant foam behind a box",
            "Class wet room",
            "Method box-in-outer-bay",
            "Method few-boxes",
            "Method half",
            "Constant let");
  }
}
