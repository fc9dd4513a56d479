package org.rimefast.plan;

/**
 * The cross-section of a corrugated sheet, in millimetres. One pitch is inward rib, web, outer bay,
 * web.
 *
 * @param name how plans call it, or how messages call one that a plan spells out
 * @param outer width of the flat of the outer bay
 * @param web horizontal projection of a web
 * @param inner width of the flat of the inward rib
 * @param depth how far the outer bay lies behind the inward rib; 0 for a flat sheet
 * @param steel false for a face that has no steel sheet, such as a floor of plywood: it is no steel
 *     to keep clear of
 */
public record CorrugationProfile(
    String name, double outer, double web, double inner, double depth, boolean steel) {
  /** A profile of steel sheet. */
  public CorrugationProfile(String name, double outer, double web, double inner, double depth) {
    this(name, outer, web, inner, depth, true);
  }

  /** The length after which the profile repeats. */
  public double pitch() {
    return outer + 2 * web + inner;
  }

  /** True for a sheet without ribs. */
  public boolean isFlat() {
    return depth == 0;
  }
}
