package org.rimefast.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class GoldenFolderTest {
  @Test
  void everyGoldenFileIsOneThatATestReads() throws IOException {
    try (Stream<Path> files = Files.list(Golden.FOLDER)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder(
              "everything.txt",
              "everything-80.txt",
              "clean.txt",
              "nothing-checked.txt",
              "overview.txt",
              "plan-faults.txt",
              "standard-faults.txt",
              "waived.txt",
              "waived.json",
              "amended.txt",
              "amended.json",
              "explain.txt",
              "standard.html",
              "everything.json",
              "unusable.json",
              "cases.txt",
              "cases-sound.txt",
              "cases.xml");
    }
  }
}
