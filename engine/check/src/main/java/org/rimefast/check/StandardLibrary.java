package org.rimefast.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Enumeration;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.rimefast.lang.source.SourceText;

/**
 * The standards that are shipped in jars on the class or module path.
 *
 * <p>A jar ships standards as {@code META-INF/rimefast/NAME.rime}, and lists their names, one a
 * line, in {@code META-INF/rimefast/standards.index}. Its cases may stand beside it, as {@code
 * META-INF/rimefast/NAME.cases.rime}, and the plans that they name in folders there.
 */
public final class StandardLibrary {
  private static final String FOLDER = "META-INF/rimefast/";

  private StandardLibrary() {}

  /** The names of the shipped standards, in alphabetical order. */
  public static List<String> names() {
    TreeSet<String> names = new TreeSet<>();
    try {
      Enumeration<URL> indexes = loader().getResources(FOLDER + "standards.index");
      while (indexes.hasMoreElements()) {
        try (InputStream in = indexes.nextElement().openStream()) {
          text(in).lines().map(String::strip).filter(line -> !line.isEmpty()).forEach(names::add);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the list of shipped standards cannot be read", e);
    }
    return List.copyOf(names);
  }

  /** The text of a shipped standard. */
  public static Optional<SourceText> find(String name) {
    if (!names().contains(name)) {
      return Optional.empty();
    }
    try (InputStream in = loader().getResourceAsStream(FOLDER + name + ".rime")) {
      if (in == null) {
        throw new IllegalStateException(
            "the index of shipped standards names " + name + ", but its text is not there");
      }
      return Optional.of(new SourceText("standard " + name, text(in)));
    } catch (IOException e) {
      throw new UncheckedIOException("the shipped standard " + name + " cannot be read", e);
    }
  }

  /** The text of the cases that are shipped beside a standard. */
  public static Optional<SourceText> cases(String name) {
    return names().contains(name)
        ? file(name + ".cases.rime")
            .map(
                bytes ->
                    new SourceText(
                        "cases of standard " + name, new String(bytes, StandardCharsets.UTF_8)))
        : Optional.empty();
  }

  /**
   * A file that is shipped beside the standards: a plan of their cases.
   *
   * @param name from the folder of the standards on, with forward slashes
   */
  public static Optional<byte[]> file(String name) {
    try (InputStream in = loader().getResourceAsStream(FOLDER + name)) {
      return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException("the shipped file " + name + " cannot be read", e);
    }
  }

  private static String text(InputStream in) throws IOException {
    return new String(in.readAllBytes(), StandardCharsets.UTF_8);
  }

  private static ClassLoader loader() {
    ClassLoader loader = StandardLibrary.class.getClassLoader();
    return loader == null ? ClassLoader.getSystemClassLoader() : loader;
  }
}
