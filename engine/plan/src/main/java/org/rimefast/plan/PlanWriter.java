package org.rimefast.plan;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.rimefast.plan.internal.PlanTree;
import org.rimefast.plan.internal.json.JsonText;

/**
 * Writes plans. The same plan gives the same bytes everywhere.
 *
 * <p>Values are written as their authors wrote them; a length in the plan's own unit becomes a
 * plain number. A plan that was read or built reads back the same but for its source. Rows of equal
 * items become one item with a repeat.
 */
public final class PlanWriter {
  private PlanWriter() {}

  /** The plan as JSON in UTF-8, two spaces to a level, with a line feed at the end. */
  public static byte[] write(Plan plan) {
    return JsonText.print(PlanTree.of(plan));
  }

  /**
   * Writes a plan to a file, all of it or nothing: to a file beside it first, which then takes its
   * place.
   *
   * @throws IOException if the file cannot be written
   */
  public static void write(Plan plan, Path file) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null) {
      throw new IOException("There is no folder to write " + file + " in.");
    }
    Path whole = Files.createTempFile(folder, "plan-", ".part");
    try {
      Files.write(whole, write(plan));
      move(whole, file);
    } finally {
      Files.deleteIfExists(whole);
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
