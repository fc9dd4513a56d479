package org.rimefast.lang.source;

import java.util.Optional;

/**
 * Finds the texts that a text names: files that it includes, and the standard that it builds on.
 * The compiler reads no files; its host does.
 */
public interface SourceFinder {
  /** Finds nothing. */
  SourceFinder NOTHING =
      new SourceFinder() {
        @Override
        public Optional<SourceText> include(String name) {
          return Optional.empty();
        }

        @Override
        public Optional<SourceText> base(String name, String edition) {
          return Optional.empty();
        }
      };

  /**
   * An included file.
   *
   * @param name relative to the folder of the standard's first file, with forward slashes and
   *     without {@code ..}: {@code parts/doors.rime}
   * @return the file; empty if there is none, or none that can be read as UTF-8 text
   */
  Optional<SourceText> include(String name);

  /**
   * A standard that is built on.
   *
   * @param name its name: {@code cold-steel-modules}
   * @param edition the edition asked for; another one may be given back, and the compiler tells of
   *     it
   * @return its text; empty if there is none
   */
  Optional<SourceText> base(String name, String edition);

  /** Finds what the standard that {@link #base} gives back includes and builds on. */
  default SourceFinder ofBase(String name, String edition) {
    return this;
  }
}
