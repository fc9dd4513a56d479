package org.rimefast.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the terminal, the environment and broken streams change. */
class SurroundingsTest {
  private static final List<String> HOLD =
      List.of("check", "src/test/resources/plans/hold.json", "--standard", "wet-rooms");

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @Test
  void colourIsOnlyForATerminal() {
    assertThat(stdout(false, Map.of(), HOLD)).doesNotContain("\u001b");
    assertThat(stdout(true, Map.of(), HOLD)).contains("\u001b[1;31mHOLD broken:\u001b[0m");
    assertThat(stdout(true, Map.of("NO_COLOR", "1"), HOLD)).doesNotContain("\u001b");
    assertThat(stdout(true, Map.of("NO_COLOR", ""), HOLD)).contains("\u001b");
    assertThat(stdout(true, Map.of("TERM", "dumb"), HOLD)).doesNotContain("\u001b");
  }

  @Test
  void aTerminalSaysHowWideItIs() {
    assertThat(rule(Map.of("COLUMNS", "120"))).hasSize(120);
    assertThat(rule(Map.of("COLUMNS", "20"))).hasSize(80);
    assertThat(rule(Map.of("COLUMNS", "9999"))).hasSize(160);
    assertThat(rule(Map.of("COLUMNS", "wide"))).hasSize(100);
    assertThat(rule(Map.of())).hasSize(100);
  }

  @Test
  void progressIsOnlyForATerminalAndSeveralPlans() {
    List<String> two =
        List.of(
            "check",
            "src/test/resources/plans/hold.json",
            "src/test/resources/plans/fix.json",
            "--standard",
            "wet-rooms");
    stdout(true, Map.of(), two);
    assertThat(err.toString(StandardCharsets.UTF_8)).isEqualTo("plan 1 of 2\nplan 2 of 2\n");
    stdout(false, Map.of(), two);
    assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
    stdout(true, Map.of(), HOLD);
    assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
  }

  @Test
  void aReaderThatGoesAwayIsNoFault() {
    int code = runInto(new FailingStream("Broken pipe"));
    assertThat(code).isEqualTo(ExitCode.FINDINGS);
    assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
  }

  @Test
  void aFullDiskIsTold() {
    int code = runInto(new FailingStream("No space left on device"));
    assertThat(code).isEqualTo(ExitCode.UNUSABLE);
    assertThat(err.toString(StandardCharsets.UTF_8))
        .isEqualTo("rimefast: the report cannot be written: No space left on device\n");
  }

  @Test
  void theTraceOfOurFaultIsShownOnRequest() {
    List<String> bug =
        List.of("check", "src/test/resources/plans/bug.json", "--standard", "wet-rooms");
    stdout(false, Map.of("RIMEFAST_DEBUG", "1"), bug);
    assertThat(err.toString(StandardCharsets.UTF_8))
        .startsWith("rimefast: this is a fault of rimefast itself, not of your files: ")
        .contains("\n\tat org.rimefast.cli.Main.run(");
    List<String> debug = new ArrayList<>(bug);
    debug.add("--debug");
    stdout(false, Map.of(), debug);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("\n\tat org.rimefast.cli.Main.run(");
  }

  @Test
  void runningOutOfMemoryIsTold() {
    InputStream in =
        new InputStream() {
          @Override
          public int read() {
            throw new OutOfMemoryError();
          }

          @Override
          public int read(byte[] bytes, int from, int length) {
            throw new OutOfMemoryError();
          }
        };
    Surroundings surroundings = new Surroundings(in, out, err, false, Map.of());
    int code =
        new Main(surroundings, new FakeChecks())
            .run(List.of("check", "-", "--standard", "wet-rooms"));
    assertThat(code).isEqualTo(ExitCode.OUR_FAULT);
    assertThat(err.toString(StandardCharsets.UTF_8)).startsWith("rimefast: out of memory;");
  }

  @Test
  void inputIsReadOnlyAsFarAsAPlanMayGo() {
    InputStream endless =
        new InputStream() {
          @Override
          public int read() {
            return ' ';
          }
        };
    Surroundings surroundings = new Surroundings(endless, out, err, false, Map.of());
    int code =
        new Main(surroundings, new FakeChecks())
            .run(List.of("check", "-", "--standard", "wet-rooms"));
    // The engine of the test takes a plan of spaces for one that it has no answer for.
    assertThat(code).isEqualTo(ExitCode.OUR_FAULT);
  }

  @Test
  void theDefaultLocaleDoesNotMatter() {
    Locale before = Locale.getDefault();
    List<String> words = new ArrayList<>(HOLD);
    words.addAll(List.of("--fail-on", "fix", "--stage", "lining"));
    List<String> help = List.of("check", "--help");
    try {
      Locale.setDefault(Locale.ROOT);
      String root = stdout(false, Map.of(), words);
      String rootHelp = stdout(false, Map.of(), help);
      for (String tag : List.of("tr", "de", "ar-EG")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(stdout(false, Map.of(), words)).isEqualTo(root).isNotEmpty();
        assertThat(stdout(false, Map.of(), help)).isEqualTo(rootHelp).isNotEmpty();
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  private String rule(Map<String, String> environment) {
    return stdout(true, environment, HOLD)
        .lines()
        .filter(line -> line.startsWith("----"))
        .findFirst()
        .orElseThrow();
  }

  private int runInto(OutputStream broken) {
    InputStream in = InputStream.nullInputStream();
    return new Main(new Surroundings(in, broken, err, false, Map.of()), new FakeChecks()).run(HOLD);
  }

  private String stdout(boolean terminal, Map<String, String> environment, List<String> words) {
    out.reset();
    err.reset();
    InputStream in = new ByteArrayInputStream(new byte[0]);
    new Main(new Surroundings(in, out, err, terminal, environment), new FakeChecks()).run(words);
    return out.toString(StandardCharsets.UTF_8);
  }

  private static final class FailingStream extends OutputStream {
    private final String message;

    FailingStream(String message) {
      this.message = message;
    }

    @Override
    public void write(int b) throws IOException {
      throw new IOException(message);
    }
  }
}
