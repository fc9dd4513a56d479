package org.rimefast.lang.internal.layer;

import java.util.List;
import java.util.Optional;

/** The names by which files include each other. */
final class FileNames {
  private FileNames() {}

  /** Why a name cannot be used, as the middle of a sentence; empty if it can. */
  static Optional<String> problem(String name) {
    if (name.isBlank() || !name.equals(name.strip())) {
      return Optional.of("is empty or has a space at its edge");
    }
    if (name.indexOf('\\') >= 0) {
      return Optional.of("has a backslash");
    }
    if (name.startsWith("/") || name.indexOf(':') >= 0) {
      return Optional.of("begins at a root or a drive");
    }
    if (name.chars().anyMatch(Character::isISOControl)) {
      return Optional.of("has a character that cannot be seen");
    }
    List<String> steps = List.of(name.split("/", -1));
    if (steps.contains("..") || steps.contains(".")) {
      return Optional.of("has a step \"..\" or \".\"");
    }
    return steps.contains("") ? Optional.of("has an empty step") : Optional.empty();
  }

  /** A name that one file calls another, relative to the first file's folder. */
  static String resolved(String folder, String name) {
    return folder.isEmpty() ? name : folder + "/" + name;
  }

  /** The folder of a file; empty for that of the first file. */
  static String folderOf(String name) {
    int slash = name.lastIndexOf('/');
    return slash < 0 ? "" : name.substring(0, slash);
  }

  /** A name without its folders. */
  static String last(String name) {
    return name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
  }
}
