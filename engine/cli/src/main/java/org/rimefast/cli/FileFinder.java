package org.rimefast.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import org.rimefast.lang.Limits;
import org.rimefast.lang.source.SourceFinder;
import org.rimefast.lang.source.SourceText;

/** Finds included files beside a standard's file, and bases among the shipped ones or beside it. */
final class FileFinder implements SourceFinder {
  private static final String MARK = "\uFEFF";

  private final Checks checks;
  private final Optional<Path> folder;

  private FileFinder(Checks checks, Optional<Path> folder) {
    this.checks = checks;
    this.folder = folder;
  }

  /** For a standard in a file. */
  static FileFinder beside(Checks checks, Path file) {
    Path parent = file.getParent();
    return new FileFinder(checks, Optional.of(parent == null ? Path.of("") : parent));
  }

  /** For a shipped standard, which has no files beside it. */
  static FileFinder shipped(Checks checks) {
    return new FileFinder(checks, Optional.empty());
  }

  @Override
  public Optional<SourceText> include(String name) {
    return folder.flatMap(beside -> read(beside, name));
  }

  @Override
  public Optional<SourceText> base(String name, String edition) {
    return checks.shipped(name).or(() -> include(name + ".rime"));
  }

  @Override
  public SourceFinder ofBase(String name, String edition) {
    return checks.shipped(name).isPresent() ? shipped(checks) : this;
  }

  private static Optional<SourceText> read(Path folder, String name) {
    try {
      Path file = folder.resolve(name);
      return text(file).map(text -> new SourceText(file.toString().replace('\\', '/'), text));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  /** The text of a file of at most the size that is taken, in UTF-8; nothing else is read. */
  static Optional<String> text(Path file) {
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    // A character takes at most four bytes.
    int most = 4 * Limits.DEFAULT.characters() + 1;
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(most);
      if (bytes.length == most) {
        return Optional.empty();
      }
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return Optional.of(text.startsWith(MARK) ? text.substring(1) : text);
    } catch (IOException e) {
      // Neither can a file be used that is no UTF-8 text.
      return Optional.empty();
    }
  }
}
