package org.rimefast.check.cases;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Where the plans that cases name come from. */
@FunctionalInterface
public interface PlanFiles {
  /**
   * The bytes of a plan.
   *
   * @param caseFile the name of the text that the case stands in
   * @param name the plan's name from the folder of that text on, with forward slashes; never
   *     absolute, and without {@code ..}
   * @throws NoSuchFileException if there is no such plan
   * @throws IOException if it cannot be read; its message is shown
   */
  byte[] read(String caseFile, String name) throws IOException;

  /** Plans on disk, for texts that are named by their paths. */
  static PlanFiles onDisk() {
    return (caseFile, name) -> Files.readAllBytes(Path.of(caseFile).resolveSibling(name));
  }
}
