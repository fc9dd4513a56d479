package org.rimefast.check;

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

/**
 * Finds what a standard on disk is made of: included files in its folder or below it, and the
 * standard that it builds on among the shipped ones, or else as {@code NAME.rime} in its folder.
 *
 * <pre>{@code
 * new RuleCompiler(vocabulary).compile(text, StandardFiles.beside(Path.of("house.rime")));
 * }</pre>
 */
public final class StandardFiles implements SourceFinder {
  private static final String MARK = "\uFEFF";
  private static final StandardFiles SHIPPED = new StandardFiles(Optional.empty());

  private final Optional<Path> folder;

  private StandardFiles(Optional<Path> folder) {
    this.folder = folder;
  }

  /** For the standard in this file. */
  public static StandardFiles beside(Path standard) {
    Path parent = standard.getParent();
    return new StandardFiles(Optional.of(parent == null ? Path.of("") : parent));
  }

  @Override
  public Optional<SourceText> include(String name) {
    return folder.flatMap(beside -> read(beside, name));
  }

  @Override
  public Optional<SourceText> base(String name, String edition) {
    return StandardLibrary.find(name).or(() -> include(name + ".rime"));
  }

  /** A shipped standard has no files beside it. */
  @Override
  public SourceFinder ofBase(String name, String edition) {
    return StandardLibrary.names().contains(name) ? SHIPPED : this;
  }

  private static Optional<SourceText> read(Path folder, String name) {
    try {
      Path file = folder.resolve(name);
      return isWithin(folder, file)
          ? text(file).map(text -> new SourceText(file.toString().replace('\\', '/'), text))
          : Optional.empty();
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  /** True for a file that is there and to which no link leads out of the folder. */
  private static boolean isWithin(Path folder, Path file) {
    try {
      return file.toRealPath().startsWith(folder.toRealPath());
    } catch (IOException e) {
      return false;
    }
  }

  /**
   * The text of a file of rules, without a mark for the order of bytes at its start.
   *
   * @return empty if it is no file, cannot be read, is no UTF-8 text or is longer than the compiler
   *     takes on
   */
  public static Optional<String> text(Path file) {
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
      return Optional.empty();
    }
  }
}
