package org.rimefast.languageserver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.lsp4j.CompletionItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What could be written at a place; {@code |} marks the place. */
class CompletionTest {
  /** How a sentence could go on behind a word, whatever it is. */
  private static final List<String> ENDINGS =
      List.of(
          "",
          " clearance",
          " device",
          " must have gauge <= 14",
          " must serve a box",
          " 1 m by 1 m by 1 m",
          " 1 m by 1 m by 1 m must be metal",
          " a conductor",
          " a conductor must be metal",
          " a face",
          " an opening",
          " an opening must be metal",
          " a face must be metal",
          " serves it must be metal",
          " is insulated must be metal",
          " >= 1 m2",
          " >= 1 m2 must be metal",
          " >= 1 m3",
          " >= 1 m3 must be metal",
          " must be at least 1 m2",
          " must be at least 1 m3",
          " 1 m in wall spaces from 1 m must be at most 1 m",
          " 1 W/(m K)",
          " must be metal",
          " must have clearance >= 2 in",
          " must sit in outer bay",
          " be recessed",
          " recessed",
          " clearance >= 2 in",
          " touch the shell",
          " a stud",
          " stud",
          " box",
          " outer bay",
          " 2 in",
          " >= 2 in",
          " 2 in of a stud",
          " each stud >= 2 in",
          " flush",
          " is flush",
          " is steel",
          " face >= 2 in",
          " clearance of cables >= 2 in",
          " its clearance of cables >= 2 in",
          " its clearance",
          " its foam cover",
          " it is metal must be metal",
          " it must be metal",
          " = 2 in must be metal",
          " >= 2 in must be metal",
          " >= 2 in) ",
          " = 2 must be metal",
          " >= 0.2 W/(m K)",
          " = 50 % must be metal",
          " = 5 degC must be metal",
          " = 5 degC",
          " = 50 %",
          " = 2",
          " = \"x\"",
          " = \"x\" must be metal",
          " is steel must be metal",
          " is flush must be metal",
          " is closed-cell must be metal",
          " is closed-cell",
          " is device",
          " is device must be metal",
          " >= 0.2 W/(m K) must be metal",
          " a stud must be metal",
          " outer bay must be metal",
          " outer bay with depth >= 2 in",
          " metal must be metal",
          " touches it must be metal",
          " touches the box must be metal",
          " touch it must be metal",
          " hold it",
          " holds it must be metal",
          " is metal must be metal",
          " is a stud must be metal",
          " enters a box must be metal",
          " studs must be metal",
          " stud must be metal",
          " 2 boxes touch it must be metal",
          " 2 boxes enter it must be metal",
          " 2 studs",
          " 2 studs must be metal",
          " boxes = 2 must be metal",
          " boxes times 1 in",
          " depth of boxes must be metal",
          " depth of boxes = 2 in must be metal",
          " depth of boxes",
          " clearance = 2 in must be metal",
          " clearance of boxes = 2 in must be metal",
          " each stud = 2 in must be metal",
          " 2 in of a stud must be metal",
          " is within 2 in of a stud must be metal",
          " its face is a wall must be metal",
          " face is a wall must be metal",
          " it touches a stud must be metal",
          " not sit in outer bay",
          " touch a stud must be metal",
          " must have foam thickness >= 2 in",
          " must have width >= 2 in",
          " must have humidity >= 5 %",
          " box, it must be metal",
          " = flush",
          " = junction",
          " = steel",
          " = closed-cell",
          " boxes >= 2",
          " has width > 2 in must be metal",
          " has humidity > 5 % must be metal",
          " has pitch > 2 in must be metal",
          " is a wall must be metal",
          " box touches it must be metal",
          " device must be metal",
          " the box is device must be metal",
          " the box",
          " 2 in must be metal",
          " 2 >= 2 in",
          " 2 >= 2 in must be metal",
          " must be at least 2 in",
          " must be at least 0.02 W/(m K)",
          " must be at least 5 degC",
          " must be at least 5 %",
          " must be at least 2",
          " must be closed-cell",
          " must be \"x\"",
          " must touch a stud",
          " must be a room",
          " face must have pitch > 2 in",
          " pitch must be at least 2 in",
          " boxes must be at least 2",
          " clearance of boxes must be at least 2 in",
          " stud must be on a wall",
          " opening must have width > 2 in",
          " pitch > 2 in, its pitch must be at least 2 in",
          " box must be metal",
          " 2 boxes must be metal",
          " clearance of the box >= 2 in",
          " 1 mm",
          " 1 %",
          " of the box must be metal",
          " each box must be metal",
          " wall must have pitch > 2 in",
          " floor must have pitch > 2 in",
          " the box must be metal",
          " outer bay with clearance >= 2 in",
          " its pitch must be at least 2 in",
          " it >= 2 in",
          " distance to it of cables >= 2 in",
          " clearance of boxes >= 2 in must be metal",
          " its clearance >= 2 in",
          " the stud is metal");

  private final Editor editor = Editor.ready();

  @BeforeEach
  void nothingHasFailed() {
    assertThat(editor.logged()).isEmpty();
  }

  @AfterEach
  void nothingFailed() {
    assertThat(editor.logged()).isEmpty();
    editor.close();
  }

  private List<CompletionItem> at(String marked) {
    int offset = marked.indexOf('|');
    String text = marked.replace("|", "");
    editor.open(text);
    return editor.completion(Editor.position(text, offset));
  }

  private static String accepted(String marked, CompletionItem item) {
    return Editor.apply(marked.replace("|", ""), List.of(item.getTextEdit().getLeft()));
  }

  private static List<String> labels(List<CompletionItem> items) {
    return items.stream().map(CompletionItem::getLabel).toList();
  }

  /** Each item, accepted, gives a text that compiles as it stands. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "box must sit in |",
        "box must sit in o|",
        "box must touch a |",
        "box must touch at least 2 |",
        "box must have clearance >= 50 |",
        "box must have clearance >= 50|",
        "box must have clearance >= 50 m|",
        "for each room, its humidity must be at least 50 |",
        "for each room, its temperature must be at least 5 |",
        "for each face, its foam conductivity must be at most 0.02 |",
        "each box where kind is | must be recessed",
        "each box where its mount is not su| must be metal",
        "box must be m|",
        "for each box, its face must be a |",
        "for each room, number of | must be at most 3",
      })
  void eachAcceptedItemCompiles(String sentence) {
    String marked = Texts.rule(sentence);
    List<CompletionItem> items = at(marked);
    List<String> wrong = new ArrayList<>();
    int complete = 0;
    for (CompletionItem item : items) {
      String text = accepted(marked, item);
      boolean whole = Texts.compiles(text);
      complete += whole ? 1 : 0;
      if (!whole && !leadsOn(marked, item)) {
        wrong.add(item.getLabel());
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(items).isNotEmpty();
    assertThat(complete).isPositive();
  }

  /** Each item, accepted, can be gone on with so that the text compiles. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "|",
        "each |",
        "box |",
        "box must |",
        "box must touch |",
        "box must have |",
        "box must have clearance |",
        "box must have clearance >= |",
        "box must have clearance >= foam |",
        "box must be |",
        "box must touch a stud |",
        "each box where |",
        "each box where it |",
        "each box where it is |",
        "each box where kind |",
        "each box where clearance |",
        "for each wall, |",
        "for each wall |",
      })
  void eachAcceptedItemCanBeGoneOnWith(String sentence) {
    String marked = Texts.rule(sentence);
    List<CompletionItem> items = at(marked);
    assertThat(items).isNotEmpty();
    assertThat(items)
        .filteredOn(item -> !leadsOn(marked, item))
        .extracting(CompletionItem::getLabel)
        .isEmpty();
  }

  private static boolean leadsOn(String marked, CompletionItem item) {
    String text = accepted(marked, item);
    String before = marked.replace("|", "");
    int end =
        text.length()
            - (before.length()
                - Editor.offset(before, item.getTextEdit().getLeft().getRange().getEnd()));
    return ENDINGS.stream()
        .anyMatch(ending -> Texts.compiles(text.substring(0, end) + ending + text.substring(end)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "box must sit in |; outer bay, inward rib, web",
        "box must |; touch, sit in, have, be, not",
        "box must have clearance >= |; foam behind a box, depth, foam thickness of its face",
        "box must have clearance >= 50 |; mm, in, ft",
        "for each room, its humidity must be at least 50 |; %",
        "each box where its room is a |; wet room",
        "box must touch |; a stud, each, no, another, at least",
        "each box where kind is |; device, square, octagon, handy, junction",
        "box |; must, must not, where",
        "each box where it |; touches, sits in, is, has, does not",
        "box must touch a stud |; with, if, unless, and, or",
      })
  void whatFitsIsOffered(String sentence, String expected) {
    assertThat(labels(at(Texts.rule(sentence)))).contains(expected.split(", "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "box must sit in |; steel, 50 mm, clearance",
        "box must |; touches, be armoured, enter, hold",
        "box must have clearance >= |; temperature, kind, mount, foam kind of its face",
        "box must have clearance >= 50 |; degC, %, V",
        "each box where kind is |; flush, steel, surface",
        "each box where kind |; >=, <, at least",
        "box must touch |; an opening, a face, a room, a wet room",
        "cable must |; sit in, hold",
        "each box where it |; touch, sit in",
      })
  void whatDoesNotFitIsNot(String sentence, String unexpected) {
    assertThat(labels(at(Texts.rule(sentence)))).doesNotContain(unexpected.split(", "));
  }

  @Test
  void partsThatAreMissingAreOffered() {
    String marked =
        Texts.HOUSE
            + "\nrule x \"t\"\n  box must touch a stud\n  severity hold\n  |\n  source \"s\"\n";
    assertThat(labels(at(marked)))
        .contains("stage", "because")
        .doesNotContain("severity", "source", "title");
  }

  @Test
  void severitiesStagesAndSourcesAreOffered() {
    String rule = Texts.HOUSE + "\nrule x \"t\"\n  box must touch a stud\n  ";
    assertThat(labels(at(rule + "severity |"))).containsExactly("hold", "fix", "advise");
    assertThat(labels(at(rule + "stage pre|")))
        .containsExactly("layout", "framing", "rough-in", "pre-foam", "foam", "lining", "handover");
    assertThat(labels(at(rule + "source |"))).containsExactly("\"common practice, no source\"");
  }

  @Test
  void statementsAreOfferedAtTheStartOfALine() {
    assertThat(labels(at("|")))
        .containsExactly(
            "standard",
            "cases for",
            "waivers for",
            "let",
            "table",
            "rule",
            "inspect",
            "case",
            "include");
    assertThat(labels(at(Texts.HOUSE + "\nru|")))
        .containsExactly("let", "table", "rule", "inspect", "case", "include");
  }

  @Test
  void nothingIsOfferedInQuotesAndComments() {
    assertThat(at(Texts.HOUSE + "\nrule x \"a bo|x\"\n")).isEmpty();
    assertThat(at(Texts.HOUSE + "\nrule x \"t\"\n  box must -- touch |\n")).isEmpty();
    assertThat(at("-- a standard of |\n")).isEmpty();
  }

  @Test
  void aTermCanUseOnlyTermsBeforeIt() {
    String text =
        """
        standard t edition 1

        let cold box be a box where its room is a |

        let wet room be a room where its humidity >= 50 %
        """;
    assertThat(labels(at(text))).doesNotContain("wet room");
    assertThat(
            labels(
                at(
                    text.replace("its room is a |", "depth > 2 in")
                        + "\nlet deep box be a box where it is a |\n")))
        .contains("cold box");
  }

  @Test
  void aMistakeBeforeThePlaceDoesNotSilenceIt() {
    assertThat(labels(at(Texts.rule("each box where wobble > 2 in must sit in |"))))
        .contains("outer bay");
  }

  @Test
  void aWordThatHasBegunIsReplacedWhole() {
    String marked = Texts.rule("box must sit in out|er");
    CompletionItem bay =
        at(marked).stream().filter(i -> i.getLabel().equals("outer bay")).findFirst().orElseThrow();
    assertThat(accepted(marked, bay)).isEqualTo(Texts.rule("box must sit in outer bay"));
  }

  @Test
  void anItemSaysWhatItMeans() {
    CompletionItem item =
        at(Texts.rule("box must have clearance >= |")).stream()
            .filter(i -> i.getLabel().equals("foam behind a box"))
            .findFirst()
            .orElseThrow();
    assertThat(item.getDetail()).isEqualTo("2 in");
    assertThat(item.getDocumentation().getRight().getValue())
        .contains("constant", "because: one lift of foam has to fit");
  }
}
