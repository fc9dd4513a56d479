package org.rimefast.plan.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Face;
import org.rimefast.plan.Opening;
import org.rimefast.plan.Part;
import org.rimefast.plan.internal.json.Node;

/**
 * Finds openings that overlap and parts whose middle lies in one.
 *
 * <p>A line sweeps along each face and holds the openings it crosses, ordered by their sills. As
 * long as those do not overlap, only neighbours in that order can, so the work grows as n log n
 * however many openings a plan has. An opening that overlaps another is reported and then left out.
 */
final class OpeningCheck {
  private static final double ROUNDING = 1e-6;

  private final Context context;

  OpeningCheck(Context context) {
    this.context = context;
  }

  /** An opening in millimetres, with its place in the plan. */
  private record Hole(
      Opening opening, Node node, int index, double from, double to, double sill, double head) {}

  /** A part's middle in millimetres. */
  private record Middle(Part part, PartsReader.Row row, double along, double up) {}

  /**
   * One stop of the line. At one place openings end first, then begin, then parts are looked at.
   */
  private record Stop(double along, int order, @Nullable Hole hole, @Nullable Middle middle) {}

  void check(
      List<Opening> openings, List<Node> nodes, List<Part> parts, List<PartsReader.Row> rows) {
    if (openings.isEmpty()) {
      return;
    }
    Map<Face, List<Stop>> stops = new EnumMap<>(Face.class);
    for (int i = 0; i < openings.size(); i++) {
      Opening opening = openings.get(i);
      double from = opening.from().millimetres();
      double sill = opening.sill().millimetres();
      double to = from + opening.width().millimetres();
      double head = sill + opening.height().millimetres();
      Hole hole = new Hole(opening, nodes.get(i), i, from, to, sill, head);
      List<Stop> face = stops.computeIfAbsent(opening.face(), f -> new ArrayList<>());
      face.add(new Stop(from, 1, hole, null));
      face.add(new Stop(to - ROUNDING, 0, hole, null));
    }
    for (PartsReader.Row row : rows) {
      for (Part part : parts.subList(row.first(), row.first() + row.count())) {
        List<Stop> face = stops.get(part.face());
        if (face != null && part.along() != null && part.up() != null) {
          double along = part.along().millimetres();
          Middle middle = new Middle(part, row, along, part.up().millimetres());
          face.add(new Stop(along, 2, null, middle));
        }
      }
    }
    stops.values().forEach(this::sweep);
  }

  private void sweep(List<Stop> stops) {
    stops.sort(Comparator.comparingDouble(Stop::along).thenComparingInt(Stop::order));
    NavigableMap<Double, Hole> crossed = new TreeMap<>();
    Set<Node> reported = new HashSet<>();
    for (Stop stop : stops) {
      Hole hole = stop.hole();
      Middle middle = stop.middle();
      if (middle != null) {
        look(middle, crossed, reported);
      } else if (hole != null && stop.order() == 0) {
        crossed.remove(hole.sill(), hole);
      } else if (hole != null) {
        begin(hole, crossed, reported);
      }
    }
  }

  private void begin(Hole hole, NavigableMap<Double, Hole> crossed, Set<Node> reported) {
    Map.Entry<Double, Hole> below = crossed.floorEntry(hole.sill());
    Map.Entry<Double, Hole> above = crossed.ceilingEntry(hole.sill());
    Hole other = null;
    if (below != null && below.getValue().head() > hole.sill() + ROUNDING) {
      other = below.getValue();
    } else if (above != null && above.getKey() < hole.head() - ROUNDING) {
      other = above.getValue();
    }
    if (other == null) {
      crossed.put(hole.sill(), hole);
      return;
    }
    boolean otherIsLater = other.index() > hole.index();
    Hole later = otherIsLater ? other : hole;
    Hole earlier = otherIsLater ? hole : other;
    if (reported.add(later.node())) {
      context.faults.add(
          "overlapping-openings",
          later.node(),
          "Opening "
              + Wording.quoted(later.opening().id())
              + " overlaps opening "
              + Wording.quoted(earlier.opening().id())
              + " on the "
              + hole.opening().face().word()
              + " face.",
          "Move one of them, or make one opening of both.");
    }
  }

  private void look(Middle middle, NavigableMap<Double, Hole> crossed, Set<Node> reported) {
    Map.Entry<Double, Hole> below = crossed.lowerEntry(middle.up() - ROUNDING);
    if (below == null) {
      return;
    }
    Hole hole = below.getValue();
    boolean inside =
        middle.up() < hole.head() - ROUNDING && middle.along() > hole.from() + ROUNDING;
    if (inside && reported.add(middle.row().node())) {
      context.faults.add(
          "in-opening",
          middle.row().node(),
          "The middle of "
              + middle.row().what()
              + " "
              + Wording.quoted(middle.part().id())
              + " lies in opening "
              + Wording.quoted(hole.opening().id())
              + ".",
          "Move it off the opening, or move the opening.");
    }
  }
}
