package org.rimefast.check.internal.hot;

import org.jspecify.annotations.Nullable;
import org.rimefast.check.HandleList;
import org.rimefast.check.Word;

/**
 * Finds the elements worth asking; all others certainly do not count.
 *
 * @param function the index
 * @param given finds the element that the index is asked with
 * @param sought the slot that is left open
 * @param fills what stands at the relation's slots
 * @param slots where the slots stand in a frame
 * @param list where the list of what is found stands in a frame
 */
record Candidates(
    Word.CandidateFunction function,
    Nodes.Find given,
    int sought,
    Nodes.Fill[] fills,
    int slots,
    int list) {
  /** The candidates, or null if the plan does not say enough to narrow down. */
  @Nullable HandleList find(Frame frame) {
    int element = given.find(frame);
    SlotValues values = frame.slots[slots];
    boolean failedBefore = frame.failed;
    if (element < 0 || !Elements.fillBut(frame, element, fills, values, sought)) {
      frame.failed = failedBefore;
      return null;
    }
    HandleList found = frame.lists[list];
    found.clear();
    function.find(frame.facts, element, values, found);
    return found;
  }
}
