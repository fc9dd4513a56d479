package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimefast.lang.source.SourceText;

/** What a standard on disk is made of lies in its folder. */
class StandardFilesTest {
  @TempDir private Path folder;

  @Test
  void whatLiesInTheFolderOrBelowItIsFound() throws IOException {
    Path rules = Files.createDirectories(folder.resolve("house/rules"));
    Files.writeString(rules.resolve("doors.rime"), "\uFEFF-- doors");
    assertThat(StandardFiles.beside(folder.resolve("house/house.rime")).include("rules/doors.rime"))
        .map(SourceText::text)
        .contains("-- doors");
  }

  @Test
  void aLinkThatLeadsOutOfTheFolderIsNotFollowed() throws IOException {
    Path house = Files.createDirectories(folder.resolve("house"));
    Path outside = Files.writeString(folder.resolve("outside.rime"), "-- of nobody's business");
    Path inside = Files.writeString(house.resolve("inside.rime"), "-- ours");
    Files.createSymbolicLink(house.resolve("out.rime"), outside);
    Files.createSymbolicLink(house.resolve("in.rime"), inside);
    StandardFiles files = StandardFiles.beside(house.resolve("house.rime"));
    assertThat(files.include("out.rime")).isEmpty();
    assertThat(files.include("in.rime")).map(SourceText::text).contains("-- ours");
    assertThat(files.include("nowhere.rime")).isEmpty();
  }
}
