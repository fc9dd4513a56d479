package org.rimefast.plan;

import org.jspecify.annotations.Nullable;

/**
 * How one face is built up, from the sheet inward. Null means not given.
 *
 * @param face which face
 * @param pointer where it stands in the plan: {@code /faces/left}, or {@code /faces/default} if the
 *     face has no entry of its own
 * @param profile the sheet's cross-section
 * @param ribs which way the ribs run
 * @param phase where the first inward rib's flat starts: along the face for upright ribs, up it for
 *     level ones
 * @param sheet thickness of the sheet
 * @param standoff gap between the inward ribs and the studs
 * @param stud section of the studs
 * @param lining thickness of the lining on the studs' warm face
 * @param foam what insulates the face
 */
public record FaceBuild(
    Face face,
    String pointer,
    @Nullable CorrugationProfile profile,
    Ribs ribs,
    @Nullable Amount phase,
    @Nullable Amount sheet,
    @Nullable Amount standoff,
    @Nullable StudSection stud,
    @Nullable Amount lining,
    @Nullable Foam foam) {

  /** Which way ribs run. */
  public enum Ribs {
    /** Upright on walls, across the module on roof and floor: the profile varies along the face. */
    UPRIGHT,
    /** Level, as on many doors: the profile varies up the face. */
    LEVEL;

    /** The word that plans use. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /**
   * The insulation of a face.
   *
   * @param kind what it is
   * @param thickness thickness over the inward ribs
   * @param conductivity design conductivity
   */
  public record Foam(
      @Nullable Kind kind, @Nullable Amount thickness, @Nullable Amount conductivity) {
    /** Kinds of insulation. */
    public enum Kind {
      CLOSED_CELL,
      OPEN_CELL,
      FIBROUS;

      /** The word that plans and rules use: {@code closed-cell}. */
      public String word() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
      }
    }
  }
}
