package org.rimefast.testkit.internal;

import java.util.ArrayList;
import java.util.List;

/**
 * A face while it is being fitted out. Lengths in ten-thousandths of a millimetre.
 *
 * @param face its word
 * @param mark its letter in ids
 * @param along how far it extends along
 * @param up how far it extends up, or across
 * @param sheet its corrugation
 * @param build how it is framed and lined
 * @param holes what is cut in it
 * @param studs middles of its studs, in order
 * @param boxes its boxes, in order along it
 */
record Wall(
    String face,
    String mark,
    long along,
    long up,
    Sheet sheet,
    Build build,
    List<Hole> holes,
    List<Long> studs,
    List<Box> boxes) {

  /** A corrugation, one pitch of it from {@code phase} on. */
  record Sheet(long outer, long web, long inner, long depth, long phase) {
    long pitch() {
      return outer + 2 * web + inner;
    }
  }

  /** Standoff, depth and flange of the studs, and lining. */
  record Build(long standoff, long stud, long flange, long lining) {}

  /** An opening. */
  record Hole(long from, long to, long sill, long head) {}

  /** A box that runs enter. */
  record Box(String id, long along, long up, long width, long height, boolean isSwitch) {
    long top() {
      return up + height / 2;
    }

    long bottom() {
      return up - height / 2;
    }
  }

  Wall(String face, String mark, long along, long up, Sheet sheet, Build build) {
    this(
        face,
        mark,
        along,
        up,
        sheet,
        build,
        new ArrayList<>(),
        new ArrayList<>(),
        new ArrayList<>());
  }

  /**
   * True if nothing is cut out there, with {@code margin} to spare, and the face reaches so far.
   */
  boolean isFree(long from, long to, long low, long high, long margin) {
    if (from < margin || to > along - margin || low < 0 || high > up) {
      return false;
    }
    return holes.stream()
        .noneMatch(
            hole ->
                from < hole.to() + margin
                    && to > hole.from() - margin
                    && low < hole.head() + margin
                    && high > hole.sill() - margin);
  }

  /** The middle of the outer bay that is nearest to a place. */
  long bay(long near) {
    if (sheet.depth() == 0) {
      return near;
    }
    long first = sheet.phase() + sheet.inner() + sheet.web() + sheet.outer() / 2;
    return Chance.snap(first + Math.round((double) (near - first) / sheet.pitch()) * sheet.pitch());
  }

  /** The stud at or before a place; the place itself if there is none. */
  long studBefore(long place) {
    int low = 0;
    int high = studs.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (studs.get(middle) <= place) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low == 0 ? place : studs.get(low - 1);
  }
}
