package org.rimefast.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What the command prints and returns, whole, for each of its answers. */
class CommandTest {
  private static final Path GOLDEN = Path.of("src/test/resources/golden");
  private static final String PLANS = "src/test/resources/plans/";
  private static final Map<String, String> RUNS = runs();

  private static Map<String, String> runs() {
    Map<String, String> runs = new LinkedHashMap<>();
    String standard = " --standard cold-steel-modules";
    runs.put("help", "--help");
    runs.put("help-check", "check --help");
    runs.put("help-check-beside-mistakes", "check --nonsense --help");
    runs.put("help-standards", "standards --help");
    runs.put("help-language-server", "language-server --help");
    runs.put("help-cost", "cost --help");
    runs.put("cost-no-rules", "cost house.rime");
    runs.put("cost-of-nothing", "cost");
    runs.put("cost-of-two", "cost house.rime wet-rooms");
    runs.put("cost-wrong-standard", "cost wrong.rime");
    runs.put("cost-unknown-standard", "cost cold-steel");
    runs.put("version", "--version");
    runs.put("standards", "standards");
    runs.put("sound", "check sound.json" + standard);
    runs.put("hold-broken", "check hold.json" + standard);
    runs.put("fix-broken", "check fix.json" + standard);
    runs.put("fix-broken-only-hold-counts", "check fix.json --fail-on hold" + standard);
    runs.put("advise-broken", "check advise.json" + standard);
    runs.put("advise-broken-and-counts", "check advise.json --fail-on advise" + standard);
    runs.put("error", "check error.json" + standard);
    runs.put("undecided", "check undecided.json" + standard);
    runs.put("undecided-strict", "check undecided.json --strict" + standard);
    runs.put("broken-beats-undecided", "check undecided.json fix.json --strict" + standard);
    runs.put("stage-and-date", "check sound.json --stage pre-foam --as-of 2026-11-25" + standard);
    runs.put("json", "check hold.json --format json" + standard);
    runs.put("several-plans", "check sound.json hold.json undecided.json" + standard);
    runs.put("several-plans-json", "check sound.json faulty.json --format json" + standard);
    runs.put("faulty-plan", "check faulty.json" + standard);
    runs.put("others-are-checked", "check faulty.json hold.json nowhere.json" + standard);
    runs.put("no-such-plan", "check nowhere.json" + standard);
    runs.put("plan-is-a-folder", "check ." + standard);
    runs.put("plan-from-input", "check -" + standard);
    runs.put("house-standard", "check sound.json --standard house.rime");
    runs.put("house-standard-with-mark", "check sound.json --standard marked.rime");
    runs.put("standard-with-warning", "check sound.json --standard warned.rime");
    runs.put("wrong-standard", "check sound.json faulty.json --standard wrong.rime");
    runs.put("wrong-standard-json", "check sound.json --standard wrong.rime --format json");
    runs.put("unknown-standard", "check sound.json --standard cold-steel-module");
    runs.put("unlike-any-standard", "check sound.json --standard zzz");
    runs.put("no-such-standard-file", "check sound.json --standard nowhere.rime");
    runs.put("standard-is-a-folder", "check sound.json --standard ./.");
    runs.put("standard-is-not-utf8", "check sound.json --standard latin.rime");
    runs.put("no-command", "");
    runs.put("unknown-command", "chekc");
    runs.put("unknown-root-option", "--versoin");
    runs.put("no-plan", "check" + standard);
    runs.put("no-standard", "check sound.json");
    runs.put("empty-standard", "check sound.json --standard=");
    runs.put("option-without-value", "check sound.json --standard");
    runs.put("option-twice", "check sound.json --stage foam --stage foam" + standard);
    runs.put("unknown-option", "check sound.json --fial-on hold" + standard);
    runs.put("flag-with-value", "check sound.json --strict=yes" + standard);
    runs.put("word-too-many", "standards all");
    runs.put("input-twice", "check - -" + standard);
    runs.put("unknown-stage", "check sound.json --stage prefoam" + standard);
    runs.put("unknown-format", "check sound.json --format table" + standard);
    runs.put("unknown-severity", "check sound.json --fail-on holt" + standard);
    runs.put("no-date", "check sound.json --as-of tomorrow" + standard);
    runs.put("no-such-day", "check sound.json --as-of 2026-02-30" + standard);
    runs.put("no-number", "check sound.json --threads many" + standard);
    runs.put("help-format", "format --help");
    runs.put("format-would-change", "format --check untidy.rime");
    runs.put("format-nothing-to-change", "format tidy.rime");
    runs.put("format-nothing-would-change", "format tidy.rime --check");
    runs.put("format-with-mark", "format --check tidy-marked.rime");
    runs.put("format-several", "format --check tidy.rime untidy.rime untidy.rime");
    runs.put("format-unreadable-statements", "format --check unreadable.rime");
    runs.put("format-others-are-seen-to", "format --check nowhere.rime latin.rime . untidy.rime");
    runs.put("format-no-such-file", "format nowhere.rime");
    runs.put("format-folder", "format .");
    runs.put("format-not-utf8", "format latin.rime");
    runs.put("format-no-file", "format --check");
    runs.put("format-input", "format -");
    runs.put("format-unknown-option", "format tidy.rime --chekc");
    runs.put("format-unknown-command", "fromat");
    runs.put("help-cases", "cases --help");
    runs.put("cases-no-file", "cases --junit out.xml");
    runs.put("cases-input", "cases -");
    runs.put("cases-file-of-cases", "cases ./house.cases.rime");
    runs.put("cases-no-such-file", "cases nowhere.rime");
    runs.put("cases-none", "cases house.rime");
    runs.put("cases-wrong-standard", "cases wrong.rime");
    runs.put("cases-option-without-value", "cases house.rime --junit");
    String today = " --as-of 2026-11-25" + standard;
    runs.put("waived", "check hold.json --waivers waivers.rime" + today);
    runs.put("waived-json", "check hold.json --format json --waivers waivers.rime" + today);
    runs.put(
        "waived-several",
        "check sound.json hold.json --waivers waivers.rime --waivers more-waivers.rime" + today);
    runs.put("waivers-without-date", "check hold.json --waivers waivers.rime" + standard);
    runs.put(
        "waivers-twice", "check hold.json --waivers waivers.rime --waivers waivers.rime" + today);
    runs.put(
        "wrong-waivers",
        "check hold.json faulty.json --waivers wrong-waivers.rime --waivers nowhere.rime" + today);
    runs.put(
        "wrong-waivers-json", "check hold.json --format json --waivers wrong-waivers.rime" + today);
    runs.put("waivers-are-a-folder", "check hold.json --waivers ./." + today);
    runs.put("format-waivers", "format --check waivers.rime");
    runs.put("help-document", "document --help");
    runs.put("document-no-standard", "document");
    runs.put("document-two-standards", "document house.rime wrong.rime");
    runs.put("document-unknown-standard", "document cold-steel-module");
    runs.put("document-wrong-standard", "document wrong.rime");
    runs.put("document-into-rules", "document house.rime --out house.rime");
    runs.put("help-explain", "explain --help");
    runs.put("explain", "explain box-clear-of-steel" + standard);
    runs.put("explain-unknown-rule", "explain box-clear-of-stel" + standard);
    runs.put("explain-no-rule", "explain" + standard);
    runs.put("explain-no-standard", "explain box-clear-of-steel");
    runs.put("explain-wrong-standard", "explain box-clear-of-steel --standard wrong.rime");
    runs.put("explain-unknown-standard", "explain box-clear-of-steel --standard zzz");
    runs.put("help-pin", "pin --help");
    runs.put("pin-nothing", "pin house.rime");
    runs.put("pin-wrong-standard", "pin wrong.rime");
    runs.put("pin-others-are-seen-to", "pin nowhere.rime house.rime");
    runs.put("pin-no-file", "pin --check");
    runs.put("pin-input", "pin -");
    runs.put("our-fault", "check bug.json" + standard);
    return runs;
  }

  @TestFactory
  Stream<DynamicTest> theCommandSays() {
    return RUNS.entrySet().stream()
        .map(
            run ->
                DynamicTest.dynamicTest(
                    run.getKey(), () -> compare(run.getKey(), printed(run.getValue()))));
  }

  @Test
  void everyGoldenFileHasItsRun() throws IOException {
    try (Stream<Path> files = Files.list(GOLDEN)) {
      assertThat(files.map(file -> file.getFileName().toString().replace(".txt", "")))
          .isSubsetOf(RUNS.keySet());
    }
  }

  private static void compare(String name, String actual) throws IOException {
    Path file = GOLDEN.resolve(name + ".txt");
    if (!Files.exists(file)) {
      Files.createDirectories(GOLDEN);
      Files.writeString(file, actual);
      throw new AssertionError("there was no " + file + "; it is written now: read it");
    }
    assertThat(actual).isEqualTo(Files.readString(file, StandardCharsets.UTF_8));
  }

  private static String printed(String line) {
    List<String> words = new ArrayList<>();
    for (String word : line.split(" ", -1)) {
      if (!word.isEmpty()) {
        boolean file = word.endsWith(".json") || word.endsWith(".rime");
        words.add(file ? PLANS + word : word);
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Surroundings surroundings =
        new Surroundings(
            new ByteArrayInputStream("fix\n".getBytes(StandardCharsets.UTF_8)),
            out,
            err,
            false,
            Map.of());
    int code = new Main(surroundings, new FakeChecks()).run(words);
    return "$ rimefast "
        + line
        + "\n== standard output ==\n"
        + out.toString(StandardCharsets.UTF_8)
        + "== standard error ==\n"
        + err.toString(StandardCharsets.UTF_8).replaceAll("(FakeChecks.check):[0-9]+", "$1:LINE")
        + "== exit code "
        + code
        + " ==\n";
  }
}
