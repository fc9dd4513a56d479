package org.rimefast.plan.geometry;

import java.util.List;
import java.util.TreeSet;
import org.rimefast.plan.Plan;

/** How far it is straight back from a part to the sheet, or to a part behind it. */
final class BackGaps {
  private static final double ROUNDING = 1e-6;

  private final ModuleGeometry geometry;
  private final OnFace onFace;
  private final double[] least;
  private final double[] most;
  private final double[] drawn;
  private final int[] nearest;

  BackGaps(ModuleGeometry geometry, OnFace onFace) {
    this.geometry = geometry;
    this.onFace = onFace;
    int count = geometry.plan().parts().size();
    this.least = new double[count];
    this.most = new double[count];
    this.drawn = new double[count];
    this.nearest = new int[count];
    for (int part = 0; part < count; part++) {
      workOut(part);
    }
  }

  double least(int part) {
    return least[part];
  }

  double most(int part) {
    return most[part];
  }

  double drawn(int part) {
    return drawn[part];
  }

  /** The part that is nearest behind as drawn; -1 if it is the sheet. */
  int nearest(int part) {
    return nearest[part];
  }

  private void workOut(int index) {
    PlacedPart part = geometry.placed(index);
    CorrugatedSheet sheet = geometry.sheet(part.frame().face());
    nearest[index] = -1;
    if (!part.isComplete() || sheet == null) {
      least[index] = Double.NaN;
      most[index] = Double.NaN;
      drawn[index] = Double.NaN;
      return;
    }
    double from = geometry.facesFrom(index);
    double to = geometry.facesTo(index);
    double shift = geometry.facesTolerance(index);
    double out = part.outTolerance() + part.standoffTolerance();
    drawn[index] = Math.max(0, sheet.leastOut(from, to) - part.outMax());
    least[index] = Math.max(0, sheet.leastOut(from - shift, to + shift) - part.outMax() - out);
    double outermost =
        to - from > 2 * shift
            ? sheet.leastOut(from + shift, to - shift)
            : sheet.isFlat() ? 0 : sheet.section().depth();
    most[index] = Math.max(0, outermost - part.outMax() + out);
    onFace.within(
        part.frame().face(),
        part.alongMin(),
        part.upMin(),
        part.outMin(),
        part.alongMax(),
        part.upMax(),
        OnFace.FAR,
        other -> {
          if (other != index) {
            consider(index, part, other);
          }
        });
  }

  private void consider(int index, PlacedPart part, int otherIndex) {
    Certainty fitted = geometry.studsInTracks().standsIn(index, otherIndex);
    if (fitted == Certainty.YES) {
      return;
    }
    PlacedPart other = geometry.placed(otherIndex);
    double along = part.alongTolerance() + other.alongTolerance();
    double up = part.upTolerance() + other.upTolerance();
    double out = part.outTolerance() + other.outTolerance();
    double overAlong =
        FreeSides.overlap(part.alongMin(), part.alongMax(), other.alongMin(), other.alongMax());
    double overUp = FreeSides.overlap(part.upMin(), part.upMax(), other.upMin(), other.upMax());
    double past = other.outMax() - part.outMax();
    double gap = other.outMin() - part.outMax();
    if (geometry.isFitted(overAlong)
        || geometry.isFitted(overUp)
        || overAlong < ROUNDING - along
        || overUp < ROUNDING - up
        || past < ROUNDING - out) {
      return;
    }
    least[index] = Math.min(least[index], Double.isNaN(gap) ? 0 : Math.max(0, gap - out));
    if (overAlong > ROUNDING && overUp > ROUNDING && past > ROUNDING && gap < drawn[index]) {
      drawn[index] = Math.max(0, gap);
      nearest[index] = otherIndex;
    }
    if (fitted == Certainty.NO
        && overAlong > along + ROUNDING
        && overUp > up + ROUNDING
        && past > out + ROUNDING) {
      most[index] = Double.isNaN(gap) ? most[index] : Math.min(most[index], Math.max(0, gap) + out);
    }
  }

  /** Pointers of what is missing of a part, its sheet, and parts that may stand behind it. */
  List<String> missing(int part) {
    PlacedPart own = geometry.placed(part);
    Plan plan = geometry.plan();
    TreeSet<String> pointers = new TreeSet<>(own.missing());
    if (geometry.sheet(own.frame().face()) == null) {
      pointers.addAll(geometry.shell().missing(plan.parts().get(part).face()));
    }
    if (pointers.isEmpty()) {
      for (int other : onFace.unplaced(own.frame().face())) {
        PlacedPart placed = geometry.placed(other);
        double along =
            FreeSides.overlap(own.alongMin(), own.alongMax(), placed.alongMin(), placed.alongMax());
        double up = FreeSides.overlap(own.upMin(), own.upMax(), placed.upMin(), placed.upMax());
        if (!(along < 0 || up < 0 || placed.outMax() < own.outMax())) {
          pointers.addAll(placed.missing());
        }
      }
    }
    return List.copyOf(pointers);
  }
}
