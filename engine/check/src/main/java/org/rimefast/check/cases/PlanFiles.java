package org.rimefast.check.cases;

import java.io.IOException;
import java.util.Optional;

/** Where the plans that cases name come from: disk, memory, or wherever the host keeps them. */
@FunctionalInterface
public interface PlanFiles {
  /**
   * The bytes of a plan; empty if there is none of this name.
   *
   * @param caseFile the name of the text that the case stands in
   * @param name the plan's name from the folder of that text on, with forward slashes; never
   *     absolute, and without {@code ..}
   * @throws IOException if it cannot be read; its message is shown
   */
  Optional<byte[]> read(String caseFile, String name) throws IOException;
}
