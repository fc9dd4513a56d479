package org.rimefast.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The jar as people run it, in a process of its own. */
class RimefastJarIT {
  private static final Path JAR =
      Path.of(Objects.requireNonNull(System.getProperty("rimefast.jar")));
  private static final String DEMO = "../../examples/loon-narrows/wet-lab.json";
  private static final String STANDARD = "cold-steel-modules";

  @TempDir Path folder;

  @Test
  void theVersionIsTold() throws Exception {
    Run run = run(List.of(), "--version");
    assertThat(run.out()).isEqualTo("rimefast 0.1.0\n");
    assertThat(run.code()).isEqualTo(ExitCode.SOUND);
  }

  @Test
  void theShippedStandardsAreListed() throws Exception {
    Run run = run(List.of(), "standards");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCode.SOUND);
    assertThat(run.out()).startsWith(STANDARD + "  ").contains(" rules  ").endsWith("\n");
  }

  @Test
  void theDemoPlanIsChecked() throws Exception {
    Run run = run(List.of(), "check", DEMO, "--standard", STANDARD);
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(run.out())
        .contains("HOLD broken: ")
        .contains("short by ")
        .contains("CAUTION: ")
        .contains("engine    rimefast 0.1.0\n");
  }

  @Test
  void theReadmesCommandPrintsTheReadmesFinding() throws Exception {
    Path home = Path.of("../..");
    String readme = Files.readString(home.resolve("README.md"));
    String command = "rimefast.jar check examples/loon-narrows/wet-lab.json --standard " + STANDARD;
    assertThat(readme).contains(command);
    String heading = "## One finding, as it prints\n\n```\n";
    int from = readme.indexOf(heading) + heading.length();
    String finding = readme.substring(from, readme.indexOf("```", from));
    Run run =
        finish(
            start(
                home,
                List.of(),
                "check",
                "examples/loon-narrows/wet-lab.json",
                "--standard",
                STANDARD));
    assertThat(finding).startsWith("box ").contains("inward rib", "at least 2 in");
    assertThat(run.out()).contains(finding);
  }

  @Test
  void whatIsPipedHasNoEscapeCodes() throws Exception {
    Run run = run(List.of(), "check", DEMO, "--standard", STANDARD);
    assertThat(run.out()).doesNotContain("\u001b").doesNotContain("\r");
  }

  @Test
  void languageThreadsAndEncodingDoNotMatter() throws Exception {
    for (String format : List.of("text", "json")) {
      String[] words = {"check", DEMO, "--standard", STANDARD, "--format", format};
      Run german = run(List.of("-Duser.language=de", "-Dfile.encoding=ISO-8859-1"), words);
      Run turkish = run(List.of("-Duser.language=tr", "-Duser.country=TR"), words);
      assertThat(turkish).isEqualTo(german);
      String[] threads = {
        "check", DEMO, "--standard", STANDARD, "--format", format, "--threads", "4"
      };
      assertThat(run(List.of("-Duser.language=ar"), threads)).isEqualTo(german);
      assertThat(german.out()).isNotEmpty();
    }
  }

  @Test
  void aPlanFromStandardInputIsChecked() throws Exception {
    Process process = start(List.of(), "check", "-", "--standard", STANDARD);
    process.getOutputStream().write(Files.readAllBytes(Path.of(DEMO)));
    Run piped = finish(process);
    Run read = run(List.of(), "check", DEMO, "--standard", STANDARD);
    assertThat(piped.code()).isEqualTo(read.code());
    assertThat(piped.out()).contains("(standard input):").doesNotContain(DEMO);
  }

  @Test
  void aFaultyPlanIsToldOnStandardError() throws Exception {
    Path plan = Files.writeString(folder.resolve("bunk.json"), "{\"format\": \"rimefast-plan-1\"");
    Run run = run(List.of(), "check", plan.toString(), DEMO, "--standard", STANDARD);
    assertThat(run.code()).isEqualTo(ExitCode.UNUSABLE);
    assertThat(run.err()).contains("bunk.json:1:").contains(": this plan cannot be used: ");
    assertThat(run.out()).contains("HOLD broken: ").contains("not checked: ");
  }

  @Test
  void aFaultyStandardIsToldOnStandardError() throws Exception {
    Path rules = Files.writeString(folder.resolve("house.rime"), "rule x\n");
    Run run = run(List.of(), "check", DEMO, "--standard", rules.toString());
    assertThat(run.code()).isEqualTo(ExitCode.UNUSABLE);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains("house.rime:1:7: error[")
        .contains("house.rime: this standard cannot be used: ");
  }

  @Test
  void aHouseStandardOfOneSentenceIsEnough() throws Exception {
    Path rules =
        Files.writeString(
            folder.resolve("house.rime"),
            """
            standard house edition 1
            rule clear-of-steel "A box leaves room for foam behind it"
              box must sit in outer bay with clearance >= 50 mm
              severity hold
              stage pre-foam
              because "foam needs room"
              source "common practice, no source"
            """);
    Run run = run(List.of(), "check", DEMO, "--standard", rules.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(run.out())
        .contains("rule      box must sit in outer bay with clearance >= 50 mm\n")
        .containsPattern("limit +at least 50 mm\n");
  }

  @Test
  void aFileOfRulesIsLaidOut() throws Exception {
    Path rules =
        Files.writeString(folder.resolve("house.rime"), "standard house  edition 1 -- \u00b0C\r\n");
    Run check = run(List.of(), "format", "--check", rules.toString());
    assertThat(check).isEqualTo(new Run(1, rules + ": would be formatted\n", ""));
    Run format = run(List.of("-Dfile.encoding=ISO-8859-1"), "format", rules.toString());
    assertThat(format).isEqualTo(new Run(0, rules + ": formatted\n", ""));
    assertThat(rules).hasContent("standard house edition 1 -- \u00b0C\n");
    assertThat(run(List.of(), "format", "--check", rules.toString())).isEqualTo(new Run(0, "", ""));
  }

  @Test
  void theCostOfTheShippedRulesIsListed() throws Exception {
    Run run = run(List.of(), "cost", STANDARD);
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCode.SOUND);
    assertThat(run.out())
        .containsPattern("(?m)^box-in-outer-bay +boxes$")
        .containsPattern("(?m)^box-off-metal-bars +boxes x \\(bars near\\)$")
        .containsPattern("(?m)^bar-not-behind-box +bars x \\(boxes near\\)$")
        .doesNotContain("warning");
  }

  @Test
  void fiftyMegabytesOfRulesAreOneFaultInLittleMemory() throws Exception {
    Path rules = folder.resolve("large.rime");
    byte[] million = "a ".repeat(500_000).getBytes(StandardCharsets.UTF_8);
    try (OutputStream out = Files.newOutputStream(rules)) {
      for (int i = 0; i < 50; i++) {
        out.write(million);
      }
    }
    String[][] commands = {
      {"check", DEMO, "--standard", rules.toString()},
      {"format", rules.toString()},
      {"cost", rules.toString()}
    };
    for (String[] words : commands) {
      Run run = run(List.of("-Xmx48m"), words);
      assertThat(run.code()).isEqualTo(ExitCode.UNUSABLE);
      assertThat(run.out()).isEmpty();
      assertThat(run.err()).startsWith(rules + ": error[too-large]: ").contains("4000000");
    }
    assertThat(rules).hasSize(50_000_000);
  }

  @Test
  void hostileRulesAreOneFault() throws Exception {
    String header = "standard s edition 1\nrule r \"t\"\n  box ";
    Map<String, String> hostile = new LinkedHashMap<>();
    hostile.put(header + "where " + "(".repeat(100_000) + " must touch the shell", "too-deep");
    hostile.put("-- \u202e\n" + header, "bidirectional-control");
    hostile.put(header + "must touch", "unreadable|missing-part|unfinished-phrase");
    for (Map.Entry<String, String> one : hostile.entrySet()) {
      Path rules = Files.writeString(folder.resolve("hostile.rime"), one.getKey());
      Run run = run(List.of("-Xmx128m"), "check", DEMO, "--standard", rules.toString());
      assertThat(run.code()).isEqualTo(ExitCode.UNUSABLE);
      assertThat(run.err()).containsPattern("error\\[(" + one.getValue() + ")]");
      assertThat(run.err()).doesNotContain("\u202e");
    }
    // UTF-8 has no lone surrogates: their bytes are no text.
    Path rules = folder.resolve("half.rime");
    Files.write(rules, new byte[] {'-', '-', (byte) 0xed, (byte) 0xa0, (byte) 0x80});
    Run run = run(List.of(), "check", DEMO, "--standard", rules.toString());
    assertThat(run.code()).isEqualTo(ExitCode.UNUSABLE);
    assertThat(run.err()).contains("not UTF-8");
  }

  @Test
  void tenThousandFaultsAreCounted() throws Exception {
    String faults = "standard s edition 1\n" + "rule r \"t\" box must\n".repeat(10_000);
    Path rules = Files.writeString(folder.resolve("faults.rime"), faults);
    Run run = run(List.of("-Xmx128m"), "check", DEMO, "--standard", rules.toString());
    assertThat(run.code()).isEqualTo(ExitCode.UNUSABLE);
    assertThat(run.err()).contains("9900 more errors are not shown");
    assertThat(run.err().lines().filter(line -> line.contains(": error[")).count()).isEqualTo(101);
  }

  @Test
  void aStandardIsWrittenAsAPage() throws Exception {
    Path page = folder.resolve("page.html");
    Run run =
        run(List.of("-Dfile.encoding=ISO-8859-1"), "document", STANDARD, "--out", page.toString());
    assertThat(run).isEqualTo(new Run(0, "", ""));
    assertThat(Files.readString(page))
        .startsWith("<!DOCTYPE html>\n")
        .contains("id=\"box-in-outer-bay\"")
        .endsWith("</html>\n");
  }

  @Test
  void aWrongCommandLineIsTold() throws Exception {
    Run run = run(List.of(), "check", DEMO, "--standrad", STANDARD);
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .isEqualTo(
            """
            rimefast check: there is no option --standrad; did you mean --standard?
            Help: rimefast check --help
            """);
  }

  @Test
  void aReaderThatGoesAwayIsNoFault() throws Exception {
    Process process = start(List.of(), "check", DEMO, "--standard", STANDARD);
    process.getInputStream().close();
    process.getOutputStream().close();
    String err = text(process.getErrorStream());
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(err).isEmpty();
    assertThat(process.exitValue()).isEqualTo(ExitCode.FINDINGS);
  }

  @Test
  void licencesOfAllThatIsInTheJarAreInTheJar() throws IOException {
    try (JarFile jar = new JarFile(JAR.toFile())) {
      // Apache-2.0 of picocli, Jackson, Gson and jte; MIT of SLF4J; BSD-3-Clause of the ANTLR
      // runtime
      // and of LSP4J.
      assertThat(entry(jar, "META-INF/LICENSE")).contains("Apache License");
      assertThat(entry(jar, "META-INF/LICENSE.txt")).contains("Permission is hereby granted");
      assertThat(entry(jar, "META-INF/NOTICE")).contains("Jackson");
      assertThat(entry(jar, "META-INF/licenses/antlr4-runtime.txt")).contains("BSD 3-clause");
      assertThat(entry(jar, "META-INF/licenses/jte-runtime.txt")).contains("Apache License");
      assertThat(entry(jar, "META-INF/licenses/lsp4j.txt")).contains("BSD 3-clause");
      assertThat(entry(jar, "META-INF/FastDoubleParser-LICENSE")).isNotEmpty();
      assertThat(entry(jar, "META-INF/Schubfach-LICENSE")).isNotEmpty();
      assertThat(jar.stream().map(ZipEntry::getName))
          .noneMatch(name -> name.endsWith("module-info.class"))
          .noneMatch(name -> name.matches("META-INF/[^/]*\\.(SF|RSA|DSA)"));
    }
  }

  private static String entry(JarFile jar, String name) throws IOException {
    ZipEntry entry = jar.getEntry(name);
    assertThat(entry).as(name).isNotNull();
    return text(jar.getInputStream(entry));
  }

  private static Run run(List<String> options, String... words) throws Exception {
    return finish(start(options, words));
  }

  private static Process start(List<String> options, String... words) throws IOException {
    return start(Path.of(""), options, words);
  }

  private static Process start(Path home, List<String> options, String... words)
      throws IOException {
    List<String> line = new ArrayList<>();
    line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    line.addAll(options);
    line.addAll(List.of("-jar", JAR.toAbsolutePath().toString()));
    line.addAll(List.of(words));
    ProcessBuilder builder = new ProcessBuilder(line);
    // These would be told on standard error by the machine, not by the command.
    builder.environment().keySet().removeAll(List.of("JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS"));
    return builder.directory(home.toAbsolutePath().toFile()).start();
  }

  private static Run finish(Process process) throws Exception {
    process.getOutputStream().close();
    String[] err = new String[1];
    Thread reader =
        new Thread(
            () -> {
              try {
                err[0] = text(process.getErrorStream());
              } catch (IOException e) {
                err[0] = e.toString();
              }
            });
    reader.start();
    String out = text(process.getInputStream());
    reader.join();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    return new Run(process.exitValue(), out, err[0]);
  }

  private static String text(InputStream in) throws IOException {
    return new String(in.readAllBytes(), StandardCharsets.UTF_8);
  }

  private record Run(int code, String out, String err) {}
}
