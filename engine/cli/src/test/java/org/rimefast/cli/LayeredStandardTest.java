package org.rimefast.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** House standards on disk that build on the shipped one, with the real engine. */
class LayeredStandardTest {
  private static final String PLAN = "../../examples/loon-narrows/wet-lab.json";

  @TempDir Path folder;

  private int code;
  private String out = "";
  private String err = "";

  @BeforeEach
  void house() throws IOException {
    write(
        "house.rime",
        """
        standard tamarack-house edition 2026-12
          builds on cold-steel-modules edition 2026-11
          title "House standard (invented)"

        include "parts/own.rime"

        in rule box-in-outer-bay, foam behind a box is 60 mm
          because "our guns need the room"
        """);
    write(
        "parts/own.rime",
        """
        withdraw bar-off-the-shell
          because "we set no bars"
        """);
  }

  private void write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private String read(String name) throws IOException {
    return Files.readString(folder.resolve(name));
  }

  private void run(String... words) {
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    ByteArrayOutputStream told = new ByteArrayOutputStream();
    code = Main.run(words, printed, told);
    String here = folder.toString().replace('\\', '/') + "/";
    out = printed.toString(StandardCharsets.UTF_8).replace(here, "");
    err = told.toString(StandardCharsets.UTF_8).replace(here, "");
  }

  private String file(String name) {
    return folder.resolve(name).toString();
  }

  @Test
  void anAmendmentWithoutItsSealIsToldInItsOwnFile() {
    run("check", PLAN, "--standard", file("house.rime"));
    assertThat(code).isEqualTo(ExitCode.UNUSABLE);
    assertThat(err)
        .contains("house.rime:7:9: error[missing-seen]")
        .contains("parts/own.rime:1:10: error[missing-seen]")
        .contains("house.rime: this standard cannot be used: 2 faults.");
    run("check", PLAN, "--standard", file("house.rime"), "--format", "json");
    assertThat(out).contains("parts/own.rime\"");
  }

  @Test
  void pinTellsFirstAndThenWritesAllFilesOfTheStandard() throws IOException {
    String before = read("house.rime");
    run("pin", "--check", file("house.rime"));
    assertThat(code).isEqualTo(ExitCode.FINDINGS);
    assertThat(out)
        .contains("in rule box-in-outer-bay, foam behind a box is 60 mm: would be pinned")
        .contains("foam behind a box: 2 in; hold; layout)");
    assertThat(read("house.rime")).isEqualTo(before);

    run("pin", file("house.rime"));
    assertThat(code).isEqualTo(ExitCode.SOUND);
    assertThat(err).isEmpty();
    assertThat(read("house.rime")).contains("  seen edition 2026-11 hash ");
    assertThat(read("parts/own.rime")).contains("  seen edition 2026-11 hash ");

    run("pin", "--check", file("house.rime"));
    assertThat(code).isEqualTo(ExitCode.SOUND);
    assertThat(out).isEmpty();
    run("format", "--check", file("house.rime"), file("parts/own.rime"));
    assertThat(code).isEqualTo(ExitCode.SOUND);
  }

  @Test
  void aCheckSaysByWhomARuleWasAmended() {
    run("pin", file("house.rime"));
    run("check", PLAN, "--standard", file("house.rime"));
    assertThat(code).isEqualTo(ExitCode.FINDINGS);
    assertThat(flat(out))
        .contains("not at least 60 mm (foam behind a box)")
        .contains(
            "amended by tamarack-house edition 2026-12: foam behind a box: 60 mm, was 2 in"
                + " (stricter), because our guns need the room")
        .contains("bar-off-the-shell: by tamarack-house edition 2026-12, because we set no bars")
        .contains("on base cold-steel-modules edition 2026-11");
    assertThat(out).doesNotContain("[bar-off-the-shell]");
    run("check", PLAN, "--standard", file("house.rime"), "--format", "json");
    assertThat(out).contains("\"effect\": \"stricter\"").contains("\"kind\": \"withdrawn\"");
  }

  @Test
  void explainTellsTheChainOfStandards() {
    run("pin", file("house.rime"));
    run("explain", "box-in-outer-bay", "bar-off-the-shell", "--standard", file("house.rime"));
    assertThat(code).isEqualTo(ExitCode.SOUND);
    assertThat(flat(out))
        .contains("severity hold")
        .contains("foam behind a box: 60 mm; because our guns need the room")
        .contains("cold-steel-modules edition 2026-11: wrote it: each box where")
        .contains("in rule box-in-outer-bay, foam behind a box is 60 mm")
        .contains("WITHDRAWN: the standard does not ask this any more.")
        .contains("because we set no bars");
  }

  @Test
  void aThirdStandardBuildsOnAFileBesideIt() throws IOException {
    run("pin", file("house.rime"));
    Files.move(folder.resolve("house.rime"), folder.resolve("tamarack-house.rime"));
    write(
        "site.rime",
        """
        standard loon-narrows-site edition 1
          builds on tamarack-house edition 2026-12

        in rule box-in-outer-bay, severity is fix
          because "this once"
        """);
    run("pin", file("site.rime"));
    assertThat(code).isEqualTo(ExitCode.SOUND);
    assertThat(out).contains("foam behind a box: 60 mm; hold; layout)");
    run("explain", "box-in-outer-bay", "--standard", file("site.rime"));
    assertThat(flat(out)).contains("severity fix, was hold (looser)").contains("(stricter)");
  }

  @Test
  void aBaseThatChangedIsToldWithBothTextsAndAcceptedByPin() throws IOException {
    String base = "standard base edition 1\n\nlet gap be 2 in\n\n" + rule(">= gap");
    write("base.rime", base);
    write(
        "site.rime",
        "standard site edition 1\n  builds on base edition 1\n\n"
            + "in rule r, gap is 3 in\n  because \"b\"\n");
    run("pin", file("site.rime"));
    write("base.rime", base.replace("2 in", "1 in"));
    run("check", PLAN, "--standard", file("site.rime"));
    assertThat(code).isEqualTo(ExitCode.UNUSABLE);
    assertThat(err)
        .contains("site.rime:6:3: error[changed-rule]")
        .contains("gap: [was: 2] [now: 1] in;")
        .contains("base.rime:6:3: the rule is here");
    run("pin", file("site.rime"));
    assertThat(code).isEqualTo(ExitCode.SOUND);
    assertThat(out)
        .isEqualTo(
            """
            site.rime: in rule r, gap is 3 in: accepted with a rule that changed
              old: box must have clearance >= gap (gap: 2 in; hold; layout)
              new: box must have clearance >= gap (gap: 1 in; hold; layout)
            """);
    write("base.rime", base.replace("rule r", "rule q").replace("2 in", "1 in"));
    run("pin", file("site.rime"));
    assertThat(code).isEqualTo(ExitCode.UNUSABLE);
    assertThat(err).contains("error[unknown-rule]").contains("is left as it is");
  }

  @Test
  void aFileThatIsNoTextIsNotIncluded() throws IOException {
    write("site.rime", "standard site edition 1\n\ninclude \"latin.rime\"\ninclude \"parts\"\n");
    Files.write(folder.resolve("latin.rime"), new byte[] {(byte) 0xe9, '\n'});
    run("check", PLAN, "--standard", file("site.rime"));
    assertThat(code).isEqualTo(ExitCode.UNUSABLE);
    assertThat(err)
        .contains("There is no file \"latin.rime\" that can be read.")
        .contains("There is no file \"parts\" that can be read.");
  }

  private static String rule(String limit) {
    return "rule r \"t\"\n  box must have clearance "
        + limit
        + "\n  severity hold\n  stage layout\n  because \"b\"\n  source \"s\"\n";
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }
}
