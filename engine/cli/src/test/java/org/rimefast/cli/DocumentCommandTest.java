package org.rimefast.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages of standards on disk and of the shipped one, with the real engine. */
class DocumentCommandTest {
  private static final String RULE =
      """
      standard lined edition 1

      rule wall-lined "A wall is lined"
        for each wall, its lining thickness must be at least 12 mm
        severity fix
        stage lining
        because "it is seen"
        source "common practice, no source"
      """;
  private static final String CASES =
      """
      cases for lined

      case "a thin lining" of wall-lined
        plan "module.json"
        set lining of "left wall" to 11 mm
        expect broken by "left wall"
      """;
  private static final String PLAN =
      """
      {"format": "rimefast-plan-1", "id": "module", "title": "Module (invented)", "units": "mm",
       "shell": {"size": "45G1"}, "faces": {"default": {"lining": 12.7}}}
      """;

  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @Test
  void aStandardIsPrintedWithTheCasesBesideIt() throws IOException {
    write("module.json", PLAN);
    write("lined.cases.rime", CASES);
    assertThat(run(write("lined.rime", RULE))).isEqualTo(ExitCode.SOUND);
    assertThat(err()).isEmpty();
    assertThat(out())
        .startsWith("<!DOCTYPE html>\n")
        .contains("<article class=\"rule\" id=\"wall-lined\">")
        .contains("a thin lining", "set lining of \"left wall\" to 11 mm")
        .contains("<span class=\"outcome sound\">as expected</span>")
        .endsWith("</html>\n");
  }

  @Test
  void theSamePageGoesToAFile() throws IOException {
    String file = write("lined.rime", RULE);
    Path page = folder.resolve("lined.html");
    assertThat(run(file)).isEqualTo(ExitCode.SOUND);
    String printed = out();
    out.reset();
    assertThat(run(file, "--out", page.toString())).isEqualTo(ExitCode.SOUND);
    assertThat(out()).isEmpty();
    assertThat(page).hasContent(printed);
    assertThat(printed).contains("This standard has no cases");
  }

  @Test
  void aPageThatCannotBeWrittenIsNoSuccess() throws IOException {
    String page = folder.resolve("nowhere/lined.html").toString();
    assertThat(run(write("lined.rime", RULE), "--out", page)).isEqualTo(ExitCode.UNUSABLE);
    assertThat(err()).contains("lined.html cannot be written");
  }

  @Test
  void aCaseThatComesOutOtherwiseIsShownAndTold() throws IOException {
    write("module.json", PLAN);
    write("lined.cases.rime", CASES.replace("11 mm", "12 mm"));
    assertThat(run(write("lined.rime", RULE))).isEqualTo(ExitCode.SOUND);
    assertThat(err())
        .isEqualTo(
            "rimefast: some cases of lined did not come out as expected; the page says which, and"
                + " so does the command \"rimefast cases\".\n");
    assertThat(out())
        .contains("not as expected")
        .contains("expected broken by left wall; instead met by left wall: lining thickness");
  }

  @Test
  void thereIsNoPageWithoutCasesThatCannotBeRead() throws IOException {
    write("lined.cases.rime", CASES.replace("of wall-lined", "of wall-lind"));
    assertThat(run(write("lined.rime", RULE))).isEqualTo(ExitCode.UNUSABLE);
    assertThat(out()).isEmpty();
    assertThat(err()).contains("error[unknown-rule]");
  }

  @Test
  void theShippedStandardIsShownWithItsShippedCases() {
    assertThat(run("cold-steel-modules")).isEqualTo(ExitCode.SOUND);
    assertThat(err()).isEmpty();
    assertThat(out())
        .contains("id=\"box-in-outer-bay\"", "cases/sound-module.json")
        .contains("all as expected.")
        .doesNotContain("There is no other sentence for it.")
        .doesNotContain("Rules that no case expects to be broken");
  }

  private String write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  private int run(String... words) {
    List<String> line = Stream.concat(Stream.of("document"), Stream.of(words)).toList();
    return Main.run(line.toArray(new String[0]), out, err);
  }

  private String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }
}
