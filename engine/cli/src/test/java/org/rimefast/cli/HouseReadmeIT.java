package org.rimefast.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the example house standard's README shows is what its files say and its commands print. A
 * line of three dots stands for lines left out; a block without a command goes on with the output
 * of the one before it.
 */
class HouseReadmeIT {
  private static final Path HOME = Path.of("../..");
  private static final Path HOUSE = HOME.resolve("examples/tamarack-house");
  private static final String PROMPT = "$ rimefast ";
  private static final String LEFT_OUT = "...";
  private static final Pattern BLOCK =
      Pattern.compile("^```(\\w*)\\n(.*?)^```$", Pattern.MULTILINE | Pattern.DOTALL);

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> everyCommandPrintsWhatIsShown() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    List<List<String>> shown = new ArrayList<>();
    for (String block : blocks("")) {
      List<String> lines = block.lines().toList();
      if (lines.get(0).startsWith(PROMPT)) {
        shown.add(new ArrayList<>(lines));
      } else {
        shown.get(shown.size() - 1).addAll(lines);
      }
    }
    for (List<String> session : shown) {
      String command = session.get(0).substring(PROMPT.length());
      List<String> output = session.subList(1, session.size());
      tests.add(DynamicTest.dynamicTest(command, () -> prints(command, output)));
    }
    assertThat(tests).hasSizeGreaterThanOrEqualTo(5);
    return tests.stream();
  }

  private void prints(String command, List<String> shown) throws Exception {
    String out = run(command);
    List<String> pieces = new ArrayList<>();
    StringBuilder piece = new StringBuilder();
    for (String line : shown) {
      if (line.equals(LEFT_OUT)) {
        pieces.add(piece.toString());
        piece.setLength(0);
      } else {
        piece.append(line).append('\n');
      }
    }
    pieces.add(piece.toString());
    if (pieces.size() == 1) {
      assertThat(out).isEqualTo(pieces.get(0));
      return;
    }
    assertThat(out).startsWith(pieces.get(0)).endsWith(pieces.get(pieces.size() - 1));
    int from = 0;
    for (String next : pieces) {
      assertThat(out.substring(from)).contains(next);
      from = out.indexOf(next, from) + next.length();
    }
  }

  @Test
  void everyRuleShownStandsInAFile() throws IOException {
    List<String> files = new ArrayList<>();
    try (Stream<Path> all = Files.list(HOUSE)) {
      for (Path file : all.filter(path -> path.toString().endsWith(".rime")).toList()) {
        files.add(Files.readString(file));
      }
    }
    assertThat(files).hasSize(5);
    assertThat(blocks("rime"))
        .isNotEmpty()
        .allSatisfy(block -> assertThat(files).anyMatch(file -> file.contains(block)));
  }

  @Test
  void everyLinkLeadsToAFileAndEveryFileIsLinked() throws IOException {
    Matcher links = Pattern.compile("\\]\\(([^)]+)\\)").matcher(readme());
    List<Path> linked = new ArrayList<>();
    while (links.find()) {
      linked.add(HOUSE.resolve(links.group(1)).normalize());
    }
    assertThat(linked).isNotEmpty().allSatisfy(file -> assertThat(file).exists());
    try (Stream<Path> all = Files.walk(HOUSE)) {
      assertThat(linked)
          .containsAll(
              all.filter(Files::isRegularFile)
                  .filter(file -> !file.endsWith("README.md"))
                  .map(Path::normalize)
                  .toList());
    }
  }

  private static String readme() throws IOException {
    return Files.readString(HOUSE.resolve("README.md"));
  }

  private static List<String> blocks(String language) throws IOException {
    return BLOCK
        .matcher(readme())
        .results()
        .filter(block -> block.group(1).equals(language))
        .map(block -> block.group(2))
        .toList();
  }

  /** Runs a command in the project's folder; nothing may be told on standard error. */
  private String run(String command) throws Exception {
    File out = Files.createTempFile(folder, "out", "").toFile();
    File err = Files.createTempFile(folder, "err", "").toFile();
    List<String> line =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                Path.of(Objects.requireNonNull(System.getProperty("rimefast.jar")))
                    .toAbsolutePath()
                    .toString()));
    line.addAll(Arrays.asList(command.split(" ")));
    ProcessBuilder builder =
        new ProcessBuilder(line)
            .directory(HOME.toAbsolutePath().toFile())
            .redirectOutput(out)
            .redirectError(err);
    // These would be told on standard error by the machine, not by the command.
    builder.environment().keySet().removeAll(List.of("JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS"));
    builder.start().waitFor();
    assertThat(Files.readString(err.toPath())).isEmpty();
    return Files.readString(out.toPath());
  }
}
