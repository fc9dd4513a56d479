package org.rimefast.plan;

import org.jspecify.annotations.Nullable;

/**
 * How far what is built may lie from what is drawn, by trade; null means that nothing is stated,
 * which counts as none. A value's own tolerance comes first.
 *
 * @param shell phase, pitch and standoff of the sheet
 * @param framing position of studs, tracks, bars and brackets
 * @param electrical position of boxes, panels, luminaires and runs
 * @param contact parts closer than this touch; null means 0.5 mm
 */
public record Tolerances(
    @Nullable Amount shell,
    @Nullable Amount framing,
    @Nullable Amount electrical,
    @Nullable Amount contact) {
  /** Nothing stated. */
  public static final Tolerances NONE = new Tolerances(null, null, null, null);
}
