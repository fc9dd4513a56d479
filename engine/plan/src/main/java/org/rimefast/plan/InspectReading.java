package org.rimefast.plan;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What somebody found on site when asked an inspect item of a standard. Where an item was answered
 * more than once for the same element, the latest day counts, and of one day the last in the list.
 *
 * @param pointer where it stands in the plan: {@code /readings/2}
 * @param inspect the id of the inspect item
 * @param of the id of the element, else the name of a face; null or {@code room} for the room
 * @param answer true for {@code yes}
 * @param value what was read; null if nothing was
 * @param who who looked
 * @param when the day
 * @param note what else was seen; null if nothing
 */
public record InspectReading(
    String pointer,
    String inspect,
    @Nullable String of,
    boolean answer,
    @Nullable Amount value,
    String who,
    LocalDate when,
    @Nullable String note) {
  /** How a plan names the room. */
  public static final String ROOM = "room";
}
