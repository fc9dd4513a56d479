package org.rimefast.plan.geometry;

/**
 * One place where a run's middle line goes through the web of a stud, or may go. Lengths in
 * millimetres; {@code up} and {@code out} as in {@link FaceFrame}, each as drawn, with the least
 * and the greatest that it can be within the tolerances of the plan.
 *
 * @param stud the stud's index in the plan's parts
 * @param passes whether it goes through at all
 * @param way how far along the run's middle line from its first end, as drawn
 * @param up where along the stud
 * @param out where across the web
 * @param hole the index of the service hole that is nearest along the stud; -1 if it has none
 * @param inHole whether the run's outside lies wholly within one service hole there
 * @param offset from the run's middle line to the middle of the nearest hole, along the stud; NaN
 *     if there is none
 * @param level where along the stud the middle of the nearest hole is; NaN if there is none
 * @param setBack how deep the run's outside lies behind the stud's warm face there; NaN if the
 *     run's diameter is not known
 */
public record StudPass(
    int stud,
    Certainty passes,
    double way,
    Range up,
    Range out,
    int hole,
    Certainty inHole,
    Range offset,
    Range level,
    Range setBack) {

  /** A length as drawn, and between which two it lies. */
  public record Range(double drawn, double least, double most) {
    /** Not known. */
    static final Range UNKNOWN = new Range(Double.NaN, Double.NaN, Double.NaN);
  }
}
