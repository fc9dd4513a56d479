package org.rimefast.languageserver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.ReferenceContext;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.rimefast.check.SteelModules;
import org.rimefast.lang.CaseCompiler;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.WaiverCompiler;
import org.rimefast.lang.source.SourceFinder;
import org.rimefast.lang.source.SourceText;

/** Standards of several files, their cases and their waivers. All of them are invented. */
class FilesTogetherTest {
  private static final String FOLDER = "file:///jobs/";
  private static final String PARTS =
      "  severity fix\n  stage framing\n  because \"b\"\n  source \"s\"\n\n";
  private static final String BASE =
      "standard yard edition 1\n\nlet gap be 2 in\n\n"
          + "rule clear \"t\"\n  box must have clearance >= gap\n"
          + PARTS
          + "rule held \"t\"\n  box must touch a stud\n"
          + PARTS
          + "include \"more/walls.rime\"\n";
  private static final String WALLS =
      "rule wide \"t\"\n  each box where its face is a wall must have clearance >= gap\n" + PARTS;
  private static final String HOUSE =
      "standard home edition 1 builds on yard edition 1\n\n"
          + "in rule clear, gap is 3 in\n  because \"wet\"\n\n"
          + "withdraw held\n  because \"glued\"\n\n"
          + "rule own \"t\"\n  box must have clearance >= 2 times gap\n"
          + PARTS;
  private static final String CASES =
      "cases for home\n\ncase \"one\" of clear\n  plan \"p.json\"\n  expect met\n\n"
          + "case \"all\" of every rule\n  plan \"p.json\"\n  expect clear broken by \"A\"\n";
  private static final String WAIVERS =
      "waivers for home\n\nwaive clear for \"A\"\n  because \"b\"\n  approved by \"a\"\n"
          + "  from 2026-11-01 until 2027-03-31\n";

  private final DiskOfTests disk = new DiskOfTests();
  private final Map<String, String> texts = new LinkedHashMap<>();
  private final Editor editor = Editor.ready(disk);

  @AfterEach
  void nothingFailed() {
    assertThat(editor.logged()).isEmpty();
    editor.close();
  }

  private TextDocumentService server() {
    return editor.server().getTextDocumentService();
  }

  private void onDisk(String name, String text) {
    texts.put(FOLDER + name, text);
    disk.put(FOLDER + name, text);
  }

  private void opened(String name, String text) {
    texts.put(FOLDER + name, text);
    editor.open(FOLDER + name, text);
  }

  /** All files; the house standard has the lines that say what it amends. */
  private void all() {
    onDisk("yard.rime", BASE);
    onDisk("more/walls.rime", WALLS);
    onDisk("home.cases.rime", CASES);
    onDisk("let-off.rime", WAIVERS);
    opened("home.rime", pinned(HOUSE));
  }

  private SourceFinder finder() {
    return new SourceFinder() {
      @Override
      public Optional<SourceText> include(String name) {
        return Optional.ofNullable(texts.get(FOLDER + name)).map(t -> new SourceText(name, t));
      }

      @Override
      public Optional<SourceText> base(String name, String edition) {
        return include(name + ".rime");
      }
    };
  }

  private Compilation compiled(String name) {
    return new RuleCompiler(SteelModules.dictionary().vocabulary())
        .compile(new SourceText(name, texts.getOrDefault(FOLDER + name, "")), finder());
  }

  private String pinned(String text) {
    texts.put(FOLDER + "home.rime", text);
    StringBuilder pinned = new StringBuilder(text);
    List<org.rimefast.lang.rule.Pin> pins = new ArrayList<>(compiled("home.rime").pins());
    assertThat(pins).hasSize(2);
    for (int i = pins.size() - 1; i >= 0; i--) {
      pinned.replace(pins.get(i).place().start(), pins.get(i).place().end(), pins.get(i).line());
    }
    return pinned.toString();
  }

  private Position at(String name, String word, int number) {
    String text = texts.getOrDefault(FOLDER + name, "");
    int at = -1;
    for (int i = 0; i <= number; i++) {
      at = text.indexOf(word, at + 1);
    }
    assertThat(at).isNotNegative();
    return Editor.position(text, at + 1);
  }

  private static TextDocumentIdentifier id(String name) {
    return new TextDocumentIdentifier(FOLDER + name);
  }

  private List<Diagnostic> said(String name) {
    return editor.said(FOLDER + name, said -> true).getDiagnostics();
  }

  private List<String> found(List<? extends Location> places) {
    return places.stream()
        .map(
            place -> {
              String text = texts.getOrDefault(place.getUri(), "");
              int start = Editor.offset(text, place.getRange().getStart());
              int end = Editor.offset(text, place.getRange().getEnd());
              return place.getUri().substring(FOLDER.length()) + " " + text.substring(start, end);
            })
        .toList();
  }

  @Test
  void aStandardOfSeveralFilesHasNothingWrong() {
    all();
    assertThat(said("home.rime")).isEmpty();
    opened("home.cases.rime", CASES);
    assertThat(said("home.cases.rime")).isEmpty();
    opened("let-off.rime", WAIVERS);
    assertThat(said("let-off.rime")).isEmpty();
    opened("more/walls.rime", WALLS);
    assertThat(said("more/walls.rime")).isEmpty();
  }

  @Test
  void aFaultIsToldInTheFileInWhichItStands() {
    onDisk("more/walls.rime", WALLS.replace("a wall", "a wool"));
    opened("yard.rime", BASE);
    Diagnostic told =
        editor
            .said(FOLDER + "more/walls.rime", said -> !said.getDiagnostics().isEmpty())
            .getDiagnostics()
            .get(0);
    assertThat(told.getRange().getStart().getLine()).isEqualTo(1);
    // What is open counts, and not what is on disk.
    opened("more/walls.rime", WALLS);
    assertThat(said("more/walls.rime")).isEmpty();
  }

  @Test
  void aFileThatIsNotThereIsTold() {
    opened("yard.rime", BASE);
    assertThat(said("yard.rime")).hasSize(1);
    assertThat(hover("yard.rime", "gap", 1)).contains("2 in");
  }

  @Test
  void aShippedStandardIsBuiltOn() {
    opened(
        "home.rime",
        "standard home edition 1 builds on cold-steel-modules edition 2026-11\n\n"
            + "withdraw box-is-held because \"b\"\n");
    assertThat(said("home.rime"))
        .extracting(d -> d.getCode().getLeft())
        .containsExactly("missing-seen");
    assertThat(hover("home.rime", "box-is-held", 0)).contains("severity fix");
    assertThat(definition("home.rime", "box-is-held", 0)).isEmpty();
  }

  private String hover(String name, String word, int number) {
    Hover hover = Editor.await(server().hover(new HoverParams(id(name), at(name, word, number))));
    return hover.getContents().getRight().getValue();
  }

  private List<String> definition(String name, String word, int number) {
    return found(
        Editor.await(server().definition(new DefinitionParams(id(name), at(name, word, number))))
            .getLeft());
  }

  @Test
  void anAmendedRuleSaysByWhomAndToWhat() {
    all();
    assertThat(hover("home.rime", "clear", 0))
        .contains(
            "amended by home edition 1: in rule clear, gap is 3 in",
            "(gap: 2 in -> gap: 3 in), stricter; because: wet");
    assertThat(hover("home.rime", "held", 0))
        .contains("rule, withdrawn", "withdrawn by home edition 1", "because: glued");
    assertThat(hover("home.rime", "own", 0)).contains("added by home edition 1");
  }

  @Test
  void aNameLeadsToTheFileInWhichItIsGiven() {
    all();
    opened("home.cases.rime", CASES);
    opened("let-off.rime", WAIVERS);
    opened("more/walls.rime", WALLS);
    assertThat(definition("home.rime", "gap is", 0)).containsExactly("yard.rime gap");
    assertThat(definition("home.rime", "clear,", 0)).containsExactly("yard.rime clear");
    assertThat(definition("home.cases.rime", "clear", 1)).containsExactly("yard.rime clear");
    assertThat(definition("let-off.rime", "clear", 0)).containsExactly("yard.rime clear");
    assertThat(definition("more/walls.rime", "gap", 0)).containsExactly("yard.rime gap");
  }

  @Test
  void aNameIsFoundInAllFilesAndOnlyThere() {
    all();
    ReferenceParams params =
        new ReferenceParams(
            id("home.rime"), at("home.rime", "clear,", 0), new ReferenceContext(true));
    assertThat(found(Editor.await(server().references(params))))
        .containsExactlyInAnyOrder(
            "home.rime clear",
            "yard.rime clear",
            "home.cases.rime clear",
            "home.cases.rime clear",
            "let-off.rime clear");
  }

  @Test
  void theOutlineHasOnlyWhatStandsInTheFile() {
    all();
    assertThat(Editor.await(server().documentSymbol(new DocumentSymbolParams(id("home.rime")))))
        .extracting(symbol -> symbol.getRight().getName())
        .containsExactly("home", "clear", "held", "own");
  }

  private void rename(String name, String word, int number, String newName) {
    Map<String, List<TextEdit>> changes =
        Editor.await(server().rename(new RenameParams(id(name), at(name, word, number), newName)))
            .getChanges();
    changes.forEach(
        (uri, edits) -> texts.put(uri, Editor.apply(texts.getOrDefault(uri, ""), edits)));
  }

  private void requireSound() {
    Compilation home = compiled("home.rime");
    assertThat(home.diagnostics()).isEmpty();
    assertThat(compiled("yard.rime").diagnostics()).isEmpty();
    SourceText cases = new SourceText("c", texts.getOrDefault(FOLDER + "home.cases.rime", ""));
    assertThat(CaseCompiler.compile(cases, home.standard().orElseThrow()).diagnostics()).isEmpty();
    SourceText waivers = new SourceText("w", texts.getOrDefault(FOLDER + "let-off.rime", ""));
    assertThat(
            new WaiverCompiler(SteelModules.dictionary().vocabulary())
                .compile(waivers, home.standard().orElseThrow())
                .diagnostics())
        .isEmpty();
  }

  @Test
  void aRuleIsRenamedInAllFiles() {
    all();
    rename("home.rime", "clear,", 0, "far-off");
    assertThat(String.join("", texts.values())).doesNotContain("rule clear", "of clear");
    assertThat(texts.getOrDefault(FOLDER + "home.cases.rime", ""))
        .contains("of far-off", "expect far-off broken");
    assertThat(texts.getOrDefault(FOLDER + "let-off.rime", "")).contains("waive far-off for");
    requireSound();
  }

  @Test
  void aConstantIsRenamedInAllFilesAndInWhatAmendmentsHaveSeen() {
    all();
    opened("yard.rime", BASE);
    rename("yard.rime", "gap", 0, "least room");
    assertThat(String.join("", texts.values())).doesNotContain("gap");
    requireSound();
  }

  @Test
  void aNameOfAShippedStandardIsNotRenamed() {
    opened(
        "home.rime",
        "standard home edition 1 builds on cold-steel-modules edition 2026-11\n\n"
            + "rule own \"t\" box must have clearance >= foam behind a box\n"
            + PARTS);
    assertThat(said("home.rime")).isEmpty();
    assertThatThrownBy(() -> rename("home.rime", "foam behind", 0, "gap"))
        .hasStackTraceContaining("a shipped standard, which cannot be changed here");
  }

  @Test
  void aNameThatIsTakenInAnotherFileIsRefused() {
    all();
    opened("yard.rime", BASE);
    assertThatThrownBy(() -> rename("yard.rime", "clear ", 0, "own"))
        .hasStackTraceContaining("already has a rule called own");
  }

  @Test
  void casesAndWaiversAreHeldToTheirStandard() {
    all();
    opened("home.cases.rime", CASES.replace("of clear", "of cleer"));
    assertThat(said("home.cases.rime"))
        .extracting(d -> d.getMessage())
        .hasSize(1)
        .first()
        .asString()
        .contains("cleer");
    opened("let-off.rime", WAIVERS.replace("waive clear", "waive cleer"));
    assertThat(said("let-off.rime"))
        .extracting(d -> d.getMessage())
        .hasSize(1)
        .first()
        .asString()
        .contains("cleer");
  }

  @Test
  void casesOfAStandardThatIsNotThereSaySo() {
    opened("home.cases.rime", CASES);
    List<Diagnostic> said = said("home.cases.rime");
    assertThat(said).hasSize(1);
    assertThat(said.get(0).getSeverity()).isEqualTo(DiagnosticSeverity.Warning);
    assertThat(said.get(0).getMessage()).contains("no standard home.rime beside this file");
  }

  private List<String> proposed(String name, String marked) {
    int at = marked.indexOf('|');
    String text = marked.replace("|", "");
    opened(name, text);
    return editor.completion(FOLDER + name, Editor.position(text, at)).stream()
        .map(CompletionItem::getLabel)
        .toList();
  }

  private List<String> house(String marked) {
    return proposed("home.rime", HOUSE + "\n" + marked);
  }

  @Test
  void amendmentsAreCompleted() {
    all();
    assertThat(house("|")).contains("in rule", "withdraw", "inspect", "case");
    assertThat(house("in rule |")).containsExactly("clear", "held", "wide");
    assertThat(house("in rule wide, |"))
        .contains("severity is", "stage is", "except where", "the limit", "gap");
    assertThat(house("in rule wide, severity is |")).contains("hold", "fix", "advise");
    assertThat(house("in rule wide, gap |")).contains("is");
    assertThat(house("in rule wide, gap is 2 |")).contains("in", "mm").doesNotContain("degC");
    assertThat(house("in rule wide, gap is 2 in |")).contains("because", "source");
    assertThat(house("in rule wide, except where |")).contains("mount", "its");
    assertThat(house("withdraw |")).containsExactly("clear", "held", "wide");
  }

  @Test
  void inspectItemsAreCompleted() {
    all();
    String begun = "inspect on \"t\" for each box ";
    assertThat(house("inspect on \"t\" |")).contains("for each");
    assertThat(house("inspect on \"t\" for each |")).contains("box").doesNotContain("must");
    assertThat(house(begun + "|")).contains("where", "ask", "answer").doesNotContain("must");
    assertThat(house(begun + "where |")).contains("mount");
    assertThat(house(begun + "ask \"q\" answer |")).containsExactly("yes", "no");
    assertThat(house(begun + "ask \"q\" |")).contains("answer", "severity").doesNotContain("ask");
    assertThat(house(begun + "ask \"q\" answer yes reading |")).contains("at least", "<=");
  }

  @Test
  void casesAreCompleted() {
    all();
    String begun = "cases for home\n\ncase \"n\" of ";
    assertThat(proposed("home.cases.rime", "|")).contains("cases for", "case");
    assertThat(proposed("home.cases.rime", "cases for |")).containsExactly("home");
    assertThat(proposed("home.cases.rime", begun + "|"))
        .containsExactly("clear", "wide", "own", "every rule");
    assertThat(proposed("home.cases.rime", begun + "clear |"))
        .contains("plan", "set", "remove", "add to", "expect");
    String expect = begun + "every rule\n  plan \"p.json\"\n  expect ";
    assertThat(proposed("home.cases.rime", expect + "|")).contains("met", "broken by", "wide");
    assertThat(proposed("home.cases.rime", expect + "wide |"))
        .contains("undecided by")
        .doesNotContain("wide");
    assertThat(proposed("home.cases.rime", expect + "wide undecided by \"A\" |"))
        .contains("for want of", "within tolerance", "expect");
  }

  @Test
  void waiversAreCompleted() {
    all();
    String begun = "waivers for home\n\nwaive ";
    assertThat(proposed("let-off.rime", begun + "|")).containsExactly("clear", "wide", "own");
    assertThat(proposed("let-off.rime", begun + "clear |")).containsExactly("for");
    assertThat(proposed("let-off.rime", begun + "clear for each box where |")).contains("mount");
    assertThat(proposed("let-off.rime", begun + "clear for \"A\" |"))
        .contains("in plan", "because", "approved by", "from", "until", "down to", "up to");
  }
}
