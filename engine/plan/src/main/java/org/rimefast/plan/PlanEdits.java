package org.rimefast.plan;

import java.util.List;
import java.util.Optional;
import org.rimefast.plan.internal.edit.Editor;

/**
 * Changes the text of a plan, one edit after the other, without asking whether it is a sound plan:
 * that is for the {@link PlanReader}.
 *
 * <p>Use:
 *
 * <pre>{@code
 * PlanEdit moved =
 *     new PlanEdit.Set(
 *         new PlanEdit.Target(Optional.of("along"), "R-1"),
 *         new PlanEdit.Value(PlanEdit.Value.Kind.TEXT, "1720 mm"));
 * PlanEdits.Edited edited = PlanEdits.apply(utf8, List.of(moved));
 * }</pre>
 */
public final class PlanEdits {
  private PlanEdits() {}

  /**
   * A changed plan.
   *
   * @param plan the text in UTF-8; empty if there is any fault
   * @param faults every edit that could not be made, in their order
   */
  public record Edited(Optional<byte[]> plan, List<Fault> faults) {
    /** Copies the list. */
    public Edited {
      faults = List.copyOf(faults);
    }
  }

  /**
   * Why an edit could not be made.
   *
   * @param edit its place in the list of edits, from 0; -1 if the plan cannot be edited at all
   * @param message one sentence that says what is wrong
   * @param remedy one sentence that says what to do
   */
  public record Fault(int edit, String message, String remedy) {}

  /**
   * Makes the edits. An edit that cannot be made keeps none of the others from being tried.
   *
   * @param plan the plan's JSON in UTF-8; not changed
   */
  public static Edited apply(byte[] plan, List<PlanEdit> edits) {
    return Editor.apply(plan, edits);
  }
}
