package org.rimefast.plan.internal;

import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Face;
import org.rimefast.plan.Opening;
import org.rimefast.plan.Part;
import org.rimefast.plan.Run;
import org.rimefast.plan.ShellSize;
import org.rimefast.plan.internal.json.Node;
import org.rimefast.units.QuantityFormat;
import org.rimefast.units.Unit;

/** Finds what lies outside its face. */
final class OutsideCheck {
  /** Rounding of a length in millimetres never comes near this. */
  private static final double ROUNDING = 1e-6;

  private final Context context;
  private final ShellSize shell;
  private final Unit unit;

  OutsideCheck(Context context, ShellSize shell, Unit unit) {
    this.context = context;
    this.shell = shell;
    this.unit = unit;
  }

  void checkOpenings(List<Opening> openings, List<Node> nodes) {
    int i = 0;
    while (i < openings.size()) {
      Node node = nodes.get(i);
      String first = null;
      int more = -1;
      for (; i < openings.size() && nodes.get(i) == node; i++) {
        String outside = outside(openings.get(i));
        if (outside != null) {
          first = first == null ? outside : first;
          more++;
        }
      }
      if (first != null) {
        report(node, first, more);
      }
    }
  }

  private @Nullable String outside(Opening opening) {
    double from = opening.from().millimetres();
    double sill = opening.sill().millimetres();
    return outside(
        () -> "opening " + Wording.quoted(opening.id()),
        opening.face(),
        from,
        from + opening.width().millimetres(),
        sill,
        sill + opening.height().millimetres());
  }

  void checkParts(List<Part> parts, List<PartsReader.Row> rows) {
    for (PartsReader.Row row : rows) {
      String first = null;
      int more = -1;
      for (Part part : parts.subList(row.first(), row.first() + row.count())) {
        String outside = outside(part, row.what());
        if (outside != null) {
          first = first == null ? outside : first;
          more++;
        }
      }
      if (first != null) {
        report(row.node(), first, more);
      }
    }
  }

  private @Nullable String outside(Part part, String what) {
    double along = millimetres(part.along());
    double up = millimetres(part.up());
    double halfWidth = half(part.width());
    double halfHeight = half(part.height());
    return outside(
        () -> what + " " + Wording.quoted(part.id()),
        part.face(),
        along - halfWidth,
        along + halfWidth,
        up - halfHeight,
        up + halfHeight);
  }

  void checkRuns(List<Run> runs, List<List<Node>> points) {
    for (int i = 0; i < runs.size(); i++) {
      List<Run.PathPoint> path = runs.get(i).path();
      for (int k = 0; k < path.size(); k++) {
        Run.PathPoint point = path.get(k);
        double along = millimetres(point.along());
        double up = millimetres(point.up());
        String id = runs.get(i).id();
        int number = k + 1;
        String outside =
            outside(
                () -> "point " + number + " of run " + Wording.quoted(id),
                point.face(),
                along,
                along,
                up,
                up);
        if (outside != null) {
          report(points.get(i).get(k), outside, 0);
        }
      }
    }
  }

  private void report(Node node, String message, int more) {
    String others = more <= 0 ? "" : more == 1 ? " So does one more of its row." : more(more);
    context.faults.add(
        "outside-face",
        node,
        message + others,
        "Move it onto the face, or check its size and the shell's.");
  }

  private static String more(int more) {
    return " So do " + more + " more of its row.";
  }

  /** What reaches past the face, in a sentence; null if nothing does. NaN means not given. */
  private @Nullable String outside(
      Supplier<String> subject, Face face, double from, double to, double low, double high) {
    FaceExtents extents = FaceExtents.of(face, shell);
    boolean roofOrFloor = !face.isWall();
    if (from < -ROUNDING || to > extents.along() + ROUNDING) {
      return sentence(subject.get(), face, "along", from, to, extents.along());
    }
    if (low < -ROUNDING || high > extents.up() + ROUNDING) {
      return sentence(subject.get(), face, roofOrFloor ? "across" : "up", low, high, extents.up());
    }
    return null;
  }

  private String sentence(
      String subject, Face face, String direction, double from, double to, double limit) {
    String where =
        from == to ? "lies at " + text(from) : "reaches from " + text(from) + " to " + text(to);
    return Fields.capital(subject)
        + " lies outside the "
        + face.word()
        + " face: "
        + direction
        + " the face it "
        + where
        + ", and the face ends at 0 and "
        + text(limit)
        + ".";
  }

  private String text(double millimetres) {
    return QuantityFormat.format(millimetres / 1000, unit);
  }

  private static double millimetres(@Nullable Amount amount) {
    return amount == null ? Double.NaN : amount.millimetres();
  }

  private static double half(@Nullable Amount amount) {
    return amount == null ? 0 : amount.millimetres() / 2;
  }
}
