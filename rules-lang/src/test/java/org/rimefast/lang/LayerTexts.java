package org.rimefast.lang;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.rimefast.lang.source.SourceFinder;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;

/** Texts that other texts include and build on. */
final class LayerTexts {
  /** Finds what lies in the folder {@code layers}. */
  static final SourceFinder FINDER =
      new SourceFinder() {
        @Override
        public Optional<SourceText> include(String name) {
          return file(name);
        }

        @Override
        public Optional<SourceText> base(String name, String edition) {
          return file(name + ".rime");
        }
      };

  private LayerTexts() {}

  /** Finds texts by name: included files, and bases with {@code .rime} behind their name. */
  static SourceFinder of(Map<String, String> texts) {
    return new SourceFinder() {
      @Override
      public Optional<SourceText> include(String name) {
        return Optional.ofNullable(texts.get(name)).map(text -> new SourceText(name, text));
      }

      @Override
      public Optional<SourceText> base(String name, String edition) {
        return include(name + ".rime");
      }
    };
  }

  private static Optional<SourceText> file(String name) {
    Path file = Path.of("src", "test", "resources", "layers").resolve(name);
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    try {
      return Optional.of(new SourceText(name, Files.readString(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The first file with a stretch of it replaced. */
  static SourceText fixed(SourceText source, Span span, String replacement) {
    assertThat(source.partAt(span.start())).isZero();
    StringBuilder fixed = new StringBuilder(source.parts().get(0).text());
    fixed.replace(span.start(), span.end(), replacement);
    return new SourceText(source.name(), fixed.toString());
  }
}
