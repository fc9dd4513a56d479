package org.rimefast.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the command does to files. */
class FormatCommandTest {
  private static final String UNTIDY =
      "standard   house edition 1\r\nlet foam\tbe 2 in -- \u00b0C\n";
  private static final String TIDY = "standard house edition 1\n\nlet foam be 2 in -- \u00b0C\n";
  private static final FileTime LONG_AGO = FileTime.fromMillis(1_000_000_000_000L);

  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @Test
  void aFileIsLaidOutInPlace() throws IOException {
    Path file = Files.writeString(folder.resolve("house.rime"), UNTIDY);
    assertThat(run(file.toString())).isEqualTo(ExitCode.SOUND);
    assertThat(out()).isEqualTo(file + ": formatted\n");
    assertThat(Files.readString(file)).isEqualTo(TIDY);
    assertThat(names()).containsExactly("house.rime");
  }

  @Test
  void aFileThatIsLaidOutAlreadyIsNotTouched() throws IOException {
    Path file = Files.writeString(folder.resolve("house.rime"), TIDY);
    Files.setLastModifiedTime(file, LONG_AGO);
    assertThat(run(file.toString())).isEqualTo(ExitCode.SOUND);
    assertThat(out()).isEmpty();
    assertThat(Files.getLastModifiedTime(file)).isEqualTo(LONG_AGO);
  }

  @Test
  void checkingChangesNothing() throws IOException {
    Path file = Files.writeString(folder.resolve("house.rime"), UNTIDY);
    Files.setLastModifiedTime(file, LONG_AGO);
    assertThat(run("--check", file.toString())).isEqualTo(ExitCode.FINDINGS);
    assertThat(out()).isEqualTo(file + ": would be formatted\n");
    assertThat(Files.readString(file)).isEqualTo(UNTIDY);
    assertThat(Files.getLastModifiedTime(file)).isEqualTo(LONG_AGO);
    assertThat(names()).containsExactly("house.rime");
  }

  @Test
  void aFileThatCannotBeReadKeepsNoOtherFromItsTurn() throws IOException {
    Path wrong = Files.write(folder.resolve("latin.rime"), new byte[] {'-', '-', (byte) 0xb0});
    Path file = Files.writeString(folder.resolve("house.rime"), UNTIDY);
    String nowhere = folder.resolve("nowhere.rime").toString();
    assertThat(run(nowhere, wrong.toString(), file.toString())).isEqualTo(ExitCode.UNUSABLE);
    assertThat(err.toString(StandardCharsets.UTF_8))
        .contains("nowhere.rime: error[no-such-file]", "latin.rime: error[not-utf8]");
    assertThat(Files.readString(file)).isEqualTo(TIDY);
    assertThat(Files.readAllBytes(wrong)).containsExactly('-', '-', 0xb0);
  }

  @Test
  void aByteOrderMarkStays() throws IOException {
    Path file = Files.writeString(folder.resolve("house.rime"), "\ufeff" + UNTIDY);
    run(file.toString());
    assertThat(Files.readString(file)).isEqualTo("\ufeff" + TIDY);
  }

  @Test
  void permissionsStay() throws IOException {
    Path file = Files.writeString(folder.resolve("house.rime"), UNTIDY);
    assumeTrue(Files.getFileStore(file).supportsFileAttributeView("posix"));
    for (String permissions : List.of("rw-r-----", "rwxrwxr-x")) {
      Files.writeString(file, UNTIDY);
      Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(permissions));
      run(file.toString());
      assertThat(Files.readString(file)).isEqualTo(TIDY);
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
          .isEqualTo(permissions);
    }
  }

  @Test
  void aFileThatMustNotBeWrittenIsLeftAlone() throws IOException {
    Path file = Files.writeString(folder.resolve("house.rime"), UNTIDY);
    assumeTrue(file.toFile().setReadOnly() && !Files.isWritable(file), "not for a superuser");
    assertThat(run(file.toString())).isEqualTo(ExitCode.UNUSABLE);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("error[not-allowed]");
    assertThat(Files.readString(file)).isEqualTo(UNTIDY);
  }

  @Test
  void aLinkStillLeadsToItsFile() throws IOException {
    Path inner = Files.createDirectory(folder.resolve("inner"));
    Path file = Files.writeString(inner.resolve("house.rime"), UNTIDY);
    Path link = Files.createSymbolicLink(folder.resolve("link.rime"), file);
    run(link.toString());
    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(Files.isSymbolicLink(file)).isFalse();
    assertThat(Files.readString(file)).isEqualTo(TIDY);
  }

  @Test
  void nothingIsLeftBesideAFileThatCannotBeReplaced() throws IOException {
    Path target = Files.createDirectory(folder.resolve("house.rime"));
    Files.writeString(target.resolve("inner"), "x");
    assertThatThrownBy(() -> FileReplacement.write(target, new byte[] {1}))
        .isInstanceOf(IOException.class);
    assertThat(names()).containsExactly("house.rime");
    assertThat(target.resolve("inner")).hasContent("x");
  }

  @Test
  void whyAFileCannotBeWrittenIsTold() {
    assertThat(Inputs.unwritable("a.rime", new IOException("no space left")).faults())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.code()).isEqualTo("cannot-write");
              assertThat(fault.message()).isEqualTo("This file cannot be written: no space left.");
              assertThat(fault.remedy()).isEqualTo("The file is as it was.");
            });
  }

  @Test
  void onlyTheFirstOfManyFaultsAreShown() throws IOException {
    String text = "rule\n".repeat(250);
    Path file = Files.writeString(folder.resolve("house.rime"), text);
    assertThat(run("--check", file.toString())).isEqualTo(ExitCode.FINDINGS);
    String told = err.toString(StandardCharsets.UTF_8);
    assertThat(told.lines().filter(line -> line.contains(": error["))).hasSize(100);
    assertThat(told).endsWith(": what cannot be read is left as it stands: 250 faults.\n");
  }

  private int run(String... words) {
    Surroundings surroundings =
        new Surroundings(InputStream.nullInputStream(), out, err, false, Map.of());
    List<String> line = Stream.concat(Stream.of("format"), Stream.of(words)).toList();
    return new Main(surroundings, new FakeChecks()).run(line);
  }

  private String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
