package org.rimefast.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.rimefast.check.StandardFiles;
import org.rimefast.lang.source.SourceFinder;
import org.rimefast.lang.source.SourceText;

/** Finds included files beside a standard's file, and bases among the shipped ones or beside it. */
final class FileFinder implements SourceFinder {
  private final Checks checks;
  private final SourceFinder files;

  private FileFinder(Checks checks, SourceFinder files) {
    this.checks = checks;
    this.files = files;
  }

  /** For a standard in a file. */
  static FileFinder beside(Checks checks, Path file) {
    return new FileFinder(checks, StandardFiles.beside(file));
  }

  /** For a shipped standard, which has no files beside it. */
  static FileFinder shipped(Checks checks) {
    return new FileFinder(checks, SourceFinder.NOTHING);
  }

  @Override
  public Optional<SourceText> include(String name) {
    return files.include(name);
  }

  @Override
  public Optional<SourceText> base(String name, String edition) {
    return checks.shipped(name).or(() -> include(name + ".rime"));
  }

  @Override
  public SourceFinder ofBase(String name, String edition) {
    return checks.shipped(name).isPresent() ? shipped(checks) : this;
  }
}
