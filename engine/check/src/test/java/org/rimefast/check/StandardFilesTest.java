package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimefast.lang.source.SourceText;

/** What a standard on disk is made of is found beside it. */
class StandardFilesTest {
  @TempDir Path folder;

  private StandardFiles files() {
    return StandardFiles.beside(folder.resolve("house.rime"));
  }

  @Test
  void aFileOfItsFolderIsIncludedWithoutItsByteOrderMark() throws IOException {
    Files.createDirectories(folder.resolve("parts"));
    Files.writeString(folder.resolve("parts/doors.rime"), "\uFEFF-- 5 °C");
    assertThat(files().include("parts/doors.rime").map(SourceText::text)).contains("-- 5 °C");
  }

  @Test
  void whatIsNoTextIsNotThere() throws IOException {
    Files.write(folder.resolve("latin.rime"), new byte[] {(byte) 0xe9, '\n'});
    assertThat(files().include("latin.rime")).isEmpty();
    assertThat(files().include("nowhere.rime")).isEmpty();
    assertThat(files().include(".")).isEmpty();
    assertThat(files().include("a\0b")).isEmpty();
  }

  @Test
  void aBaseThatIsNotShippedStandsBesideIt() throws IOException {
    Files.writeString(folder.resolve("base.rime"), "standard base edition 1");
    assertThat(files().base("base", "1").map(SourceText::text)).contains("standard base edition 1");
    assertThat(files().base("other", "1")).isEmpty();
    assertThat(files().ofBase("base", "1").include("base.rime")).isPresent();
  }

  @Test
  void aStandardNamedWithoutAFolderStandsInTheCurrentOne() {
    assertThat(StandardFiles.beside(Path.of("house.rime")).include("pom.xml")).isPresent();
  }
}
