package org.rimefast.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimefast.check.SteelModules;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceText;
import org.rimefast.languageserver.CaseOutcome;

/** What a language server gets from the disk. */
class DiskHostTest {
  private final DiskHost host = new DiskHost(SteelModules.dictionary());

  @TempDir Path folder;

  @Test
  void aFileIsReadByItsUriWithoutItsMark() throws IOException {
    Path file = Files.writeString(folder.resolve("the house.rime"), "\uFEFFstandard a edition 1\n");
    assertThat(host.read(file.toUri().toString())).contains("standard a edition 1\n");
  }

  @Test
  void whatIsNoFileOfTextIsNotRead() throws IOException {
    Path binary = Files.write(folder.resolve("b.rime"), new byte[] {(byte) 0xC3, (byte) 0x28});
    assertThat(host.read(binary.toUri().toString())).isEmpty();
    assertThat(host.read(folder.toUri().toString())).isEmpty();
    assertThat(host.read(folder.resolve("none.rime").toUri().toString())).isEmpty();
    assertThat(host.read("untitled:Untitled-1")).isEmpty();
    assertThat(host.read("https://example.org/a.rime")).isEmpty();
    assertThat(host.read("%")).isEmpty();
  }

  @Test
  void theFilesOfRulesInAFolderAreListedInOrder() throws IOException {
    for (String name : List.of("b.rime", "a.cases.rime", "plan.json", "the house.rime")) {
      Files.writeString(folder.resolve(name), "");
    }
    String uri = folder.toUri().toString();
    assertThat(host.files(uri))
        .containsExactly(uri + "a.cases.rime", uri + "b.rime", uri + "the%20house.rime");
    assertThat(host.files(uri + "none/")).isEmpty();
    assertThat(host.files("untitled:")).isEmpty();
  }

  @Test
  void casesFindTheirPlansBesideThem() throws IOException {
    Path file = folder.resolve("small.rime");
    String text =
        "standard small edition 1\n\nrule r \"t\" box must touch a stud severity fix stage layout"
            + " because \"b\" source \"s\"\n\ncase \"c\" of r\n  plan \"plan.json\"\n"
            + "  expect nothing\n";
    Standard standard =
        new RuleCompiler(SteelModules.dictionary().vocabulary())
            .compile(new SourceText(file.toUri().toString(), text))
            .standard()
            .orElseThrow();
    List<CaseOutcome> missing = host.runCases(standard, standard.cases());
    assertThat(missing.get(0).faults()).hasSize(1).first().asString().contains("plan.json");
    Files.writeString(
        folder.resolve("plan.json"),
        "{\"format\": \"rimefast-plan-1\", \"id\": \"p\", \"title\": \"Empty (invented)\","
            + " \"units\": \"mm\", \"shell\": {\"size\": \"45G1\"}}");
    assertThat(host.runCases(standard, standard.cases()).get(0).faults()).isEmpty();
  }
}
