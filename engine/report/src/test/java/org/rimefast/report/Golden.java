package org.rimefast.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files that hold what a test expects. */
final class Golden {
  static final Path FOLDER = Path.of("src/test/resources/golden");

  private Golden() {}

  /** Fails unless the file holds exactly this; writes one that is not there, and still fails. */
  static void check(String name, String actual) throws IOException {
    Path file = FOLDER.resolve(name);
    if (!Files.exists(file)) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, actual);
      throw new AssertionError("there was no " + file + "; it is written now: read it");
    }
    assertThat(Files.readString(file, StandardCharsets.UTF_8)).isEqualTo(actual);
  }
}
