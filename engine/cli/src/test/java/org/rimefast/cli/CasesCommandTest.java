package org.rimefast.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the command does with cases and what lies beside them. */
class CasesCommandTest {
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
  private static final String CASE =
      """
      case "a thin lining" of wall-lined
        plan "plans/module.json"
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

  @BeforeEach
  void writePlan() throws IOException {
    Files.createDirectories(folder.resolve("plans"));
    Files.writeString(folder.resolve("plans/module.json"), PLAN);
  }

  @Test
  void casesInTheStandardAndBesideItAreRun() throws IOException {
    Path file = write("lined.rime", RULE + CASE);
    write("lined.cases.rime", "cases for lined\n\n" + CASE.replace("11 mm", "0.4 in"));
    assertThat(run(file.toString())).isEqualTo(ExitCode.SOUND);
    assertThat(out()).isEqualTo("lined edition 1: 2 cases, all as expected.\n");
    assertThat(err()).isEmpty();
  }

  @Test
  void aCaseThatComesOutOtherwiseIsToldAndFails() throws IOException {
    Path file = write("lined.rime", RULE + CASE.replace("11 mm", "12 mm"));
    assertThat(run(file.toString())).isEqualTo(ExitCode.FINDINGS);
    assertThat(out())
        .contains("NOT AS EXPECTED: a thin lining", "lined.rime:10")
        .endsWith(
            """
              rule      A wall is lined [wall-lined]
              expected  broken by left wall
              instead   met by left wall: lining thickness of left wall is 12 mm, at least 12 mm

            lined edition 1: 1 case, 0 as expected, 1 not.
            """);
  }

  @Test
  void aCaseThatCannotBeRunFails() throws IOException {
    Path file = write("lined.rime", RULE + CASE.replace("module.json", "nowhere.json"));
    assertThat(run(file.toString())).isEqualTo(ExitCode.FINDINGS);
    assertThat(out()).contains("COULD NOT BE RUN: a thin lining", "1 could not be run.");
  }

  @Test
  void rulesThatNoCaseExpectsToBeBrokenAreTold() throws IOException {
    String met = CASE.replace("broken by \"left wall\"", "met").replace("11 mm", "13 mm");
    Path file = write("lined.rime", RULE + met);
    assertThat(run(file.toString())).isEqualTo(ExitCode.SOUND);
    assertThat(out())
        .isEqualTo(
            """
            lined edition 1: 1 case, as expected.
            No case expects this rule to be broken, so nothing shows that it finds anything:
              - A wall is lined [wall-lined]
            """);
  }

  @Test
  void theXmlHoldsEveryStandard() throws IOException {
    Path one = write("one.rime", RULE + CASE);
    Path two = write("two.rime", RULE.replace("lined edition", "two edition") + CASE);
    Path xml = folder.resolve("out.xml");
    assertThat(run(one.toString(), "--junit", xml.toString(), two.toString()))
        .isEqualTo(ExitCode.SOUND);
    assertThat(Files.readString(xml))
        .contains(
            "<testsuites tests=\"2\" failures=\"0\" errors=\"0\">",
            "<testsuite name=\"lined edition 1\"",
            "<testsuite name=\"two edition 1\"",
            "<testcase classname=\"lined.wall-lined\" name=\"a thin lining\">");
  }

  @Test
  void anXmlThatCannotBeWrittenIsNoSuccess() throws IOException {
    Path file = write("lined.rime", RULE + CASE);
    assertThat(run(file.toString(), "--junit", folder.resolve("no/out.xml").toString()))
        .isEqualTo(ExitCode.UNUSABLE);
    assertThat(err()).contains("out.xml cannot be written");
  }

  @Test
  void aFaultyFileKeepsNoOtherFromItsTurn() throws IOException {
    Path faulty = write("faulty.rime", RULE.replace("lined edition", "faulty edition"));
    write("faulty.cases.rime", "cases for lined\n\n" + CASE.replace("of wall", "of wal"));
    Path file = write("lined.rime", RULE + CASE);
    assertThat(run(faulty.toString(), file.toString())).isEqualTo(ExitCode.UNUSABLE);
    assertThat(err())
        .contains("error[wrong-file]", "error[unknown-rule]")
        .endsWith("faulty.cases.rime: this file of cases cannot be used: 2 faults.\n");
    assertThat(out()).isEqualTo("lined edition 1: 1 case, as expected.\n");
  }

  private Path write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private int run(String... words) {
    List<String> line = Stream.concat(Stream.of("cases"), Stream.of(words)).toList();
    return Main.run(line.toArray(new String[0]), out, err);
  }

  private String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }
}
