package org.rimefast.plan.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.BoxFittings.Device;
import org.rimefast.plan.Face;
import org.rimefast.plan.Opening;
import org.rimefast.plan.Part;
import org.rimefast.plan.Plan;
import org.rimefast.plan.ShellSize;

/**
 * The line along which floor and walls meet, once around the inside of the shell between the crests
 * of the inward ribs, broken by the openings that reach the floor. What lies between two breaks is
 * a wall space, which may go round corners. Lengths in millimetres. Immutable; the questions
 * allocate nothing.
 *
 * <p>Seen from inside the line runs from left to right: along the left wall, the front, the right
 * wall and the rear.
 */
public final class FloorLine {
  /**
   * An opening whose sill is no higher than this is one that people walk through: common practice,
   * no source.
   */
  public static final double HIGHEST_THRESHOLD = 100;

  private static final Face[] ROUND = {Face.LEFT, Face.FRONT, Face.RIGHT, Face.REAR};
  private static final double ROUNDING = 1e-6;

  private final double round;
  private final double[] starts = new double[4]; // where each wall of ROUND starts
  private final double[] extents = new double[4];
  private final double[] spaces; // from and to of each; to may lie past the end of the round
  private final boolean unbroken;
  private final double breakTolerance;
  private final Box[] boxes;
  private final double boxTolerance;

  /**
   * A box on a wall in which a receptacle is, or may be.
   *
   * @param part its index
   * @param at where it stands on the line; an end of its wall if its place is not known
   * @param wall the wall of ROUND on which it may stand anywhere; -1 if its place is known
   * @param certain true if there is a receptacle in it and its place is known
   */
  private record Box(
      int part, double at, int wall, double up, double upTolerance, boolean certain) {}

  private FloorLine(ModuleGeometry geometry) {
    Plan plan = geometry.plan();
    ShellSize shell = plan.shell();
    double at = 0;
    for (int i = 0; i < ROUND.length; i++) {
      starts[i] = at;
      extents[i] = FaceFrame.of(ROUND[i], shell).alongExtent();
      at += extents[i];
    }
    round = at;
    List<double[]> breaks = new ArrayList<>();
    double off = 0;
    for (Opening opening : plan.openings()) {
      if (opening.face().isWall() && reachesFloor(opening)) {
        int wall = place(opening.face());
        double from = opening.from().millimetres();
        double to = from + opening.width().millimetres();
        breaks.add(
            new double[] {
              starts[wall] + Math.max(0, from), starts[wall] + Math.min(extents[wall], to)
            });
        off =
            Math.max(
                off, Lengths.ownTolerance(opening.from()) + Lengths.ownTolerance(opening.width()));
      }
    }
    breakTolerance = off;
    unbroken = breaks.isEmpty();
    spaces = spaces(breaks);
    List<Box> found = new ArrayList<>();
    double greatest = 0;
    for (int part = 0; part < plan.parts().size(); part++) {
      if (addBox(geometry, part, found)) {
        greatest = Math.max(greatest, geometry.placed(part).alongTolerance());
      }
    }
    found.sort(Comparator.comparingDouble(Box::at));
    boxes = found.toArray(new Box[0]);
    boxTolerance = greatest;
  }

  /** The floor line of a module. */
  public static FloorLine of(ModuleGeometry geometry) {
    return new FloorLine(geometry);
  }

  /** True if an opening breaks the floor line: its sill is no higher than a threshold. */
  public static boolean reachesFloor(Opening opening) {
    return opening.sill().millimetres() <= HIGHEST_THRESHOLD + ROUNDING;
  }

  /**
   * Adds a box, if it may hold a receptacle. One that may stand anywhere on its wall is no nearer
   * to a point of another wall than from an end of its own.
   */
  private boolean addBox(ModuleGeometry geometry, int part, List<Box> found) {
    if (!(geometry.plan().parts().get(part) instanceof Part.Box box) || !box.face().isWall()) {
      return false;
    }
    List<Device> devices = box.fittings().devices();
    boolean certain =
        devices != null
            && devices.stream().anyMatch(device -> device.kind() == Device.Kind.RECEPTACLE);
    if (devices != null && !certain) {
      return false;
    }
    int wall = place(box.face());
    double up = Lengths.millimetres(box.up());
    double upTolerance = Lengths.tolerance(box.up(), geometry.plan().tolerances().electrical());
    if (box.along() == null) {
      found.add(new Box(part, starts[wall], wall, up, upTolerance, false));
      found.add(new Box(part, starts[wall] + extents[wall], wall, up, upTolerance, false));
    } else {
      double at = starts[wall] + box.along().millimetres();
      found.add(new Box(part, at, -1, up, upTolerance, certain));
    }
    return true;
  }

  private static int place(Face wall) {
    for (int i = 0; i < ROUND.length; i++) {
      if (ROUND[i] == wall) {
        return i;
      }
    }
    throw new IllegalArgumentException(wall + " is no wall");
  }

  private double[] spaces(List<double[]> breaks) {
    breaks.sort(Comparator.comparingDouble(each -> each[0]));
    List<double[]> merged = new ArrayList<>();
    for (double[] each : breaks) {
      double[] last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
      if (last != null && each[0] <= last[1]) {
        last[1] = Math.max(last[1], each[1]);
      } else {
        merged.add(each);
      }
    }
    double[] spaces = new double[2 * merged.size()];
    for (int i = 0; i < merged.size(); i++) {
      boolean last = i + 1 == merged.size();
      spaces[2 * i] = merged.get(i)[1];
      spaces[2 * i + 1] = last ? merged.get(0)[0] + round : merged.get(i + 1)[0];
    }
    return spaces;
  }

  /** The length of the whole line. */
  public double length() {
    return round;
  }

  /**
   * The least that the greatest way can be, within the plan's tolerances: boxes of which it is not
   * known whether they hold a receptacle hold one. Otherwise as {@link #greatestWay}.
   */
  public double least(Face wall, double below, double from) {
    int place = place(wall);
    for (Box box : boxes) {
      if (box.wall() == place && counts(box, below, false)) {
        return 0;
      }
    }
    double way = way(wall, below, from + 2 * breakTolerance, false);
    return way >= round ? round : Math.max(0, way - boxTolerance - breakTolerance);
  }

  /** The most that it can be: only boxes that certainly hold a receptacle count. */
  public double most(Face wall, double below, double from) {
    double way = way(wall, below, from - 2 * breakTolerance, true);
    return Math.min(round, way + boxTolerance + breakTolerance);
  }

  /**
   * The greatest distance of a point of a wall's part of the line from the nearest box with a
   * receptacle, walked along the line within its wall space. The length of the whole line if a wall
   * space has none; 0 if no wall space counts.
   *
   * @param below only boxes whose middle is lower than this count
   * @param from only wall spaces that are at least this long count
   * @param certain true if only boxes with a known place and a receptacle count
   */
  double way(Face wall, double below, double from, boolean certain) {
    int place = place(wall);
    double low = starts[place];
    double high = low + extents[place];
    if (unbroken) {
      // Going round, every box stands before and after every point.
      return round < from - ROUNDING
          ? 0
          : greatest(low, high, low - round, high + round, below, certain);
    }
    double greatest = 0;
    for (int i = 0; i < spaces.length; i += 2) {
      if (spaces[i + 1] - spaces[i] >= from - ROUNDING && spaces[i + 1] > spaces[i]) {
        // A space that goes past the end of the round stands at its beginning too.
        for (double turn = 0; turn <= round; turn += round) {
          double start = spaces[i] - turn;
          double end = spaces[i + 1] - turn;
          double first = Math.max(low, start);
          double last = Math.min(high, end);
          if (first < last) {
            greatest = Math.max(greatest, greatest(first, last, start, end, below, certain));
          }
        }
      }
    }
    return greatest;
  }

  /** The greatest way of a point from low to high to a box that stands from start to end. */
  private double greatest(
      double low, double high, double start, double end, double below, boolean certain) {
    double before = Double.NEGATIVE_INFINITY;
    double greatest = 0;
    for (double turn = -round; turn <= round; turn += round) {
      for (Box box : boxes) {
        double at = box.at() + turn;
        if (at >= start - ROUNDING && at <= end + ROUNDING && counts(box, below, certain)) {
          greatest = Math.max(greatest, between(low, high, before, at));
          before = at;
        }
      }
    }
    return before == Double.NEGATIVE_INFINITY
        ? round
        : Math.max(greatest, between(low, high, before, Double.POSITIVE_INFINITY));
  }

  private static boolean counts(Box box, double below, boolean certain) {
    return certain
        ? box.certain() && box.up() + box.upTolerance() < below - ROUNDING
        : !(box.up() - box.upTolerance() >= below);
  }

  /** The greatest way to the nearer of two boxes of a point that lies between them. */
  private static double between(double low, double high, double before, double after) {
    double from = Math.max(low, before);
    double to = Math.min(high, after);
    if (from > to) {
      return 0;
    }
    double farthest = Math.min(Math.max((before + after) / 2, from), to);
    if (before == Double.NEGATIVE_INFINITY) {
      farthest = from;
    } else if (after == Double.POSITIVE_INFINITY) {
      farthest = to;
    }
    return Math.min(farthest - before, after - farthest);
  }

  /**
   * A point of a wall's part of the line that is farthest from a receptacle.
   *
   * @param along where it is along its wall
   * @param box the index of the nearest box with a receptacle; -1 if its wall space has none
   */
  public record Farthest(double along, int box) {}

  /** Where the way of {@link #most} is longest as drawn; null if no wall space counts. */
  public @Nullable Farthest farthest(Face wall, double below, double from) {
    int place = place(wall);
    double[] ends = spaces;
    if (unbroken) {
      ends = new double[] {-round, 2 * round};
    }
    Farthest found = null;
    double greatest = -1;
    for (int i = 0; i < ends.length; i += 2) {
      double length = unbroken ? round : ends[i + 1] - ends[i];
      if (length < from - ROUNDING || length <= 0) {
        continue;
      }
      for (double turn = 0; turn <= round; turn += round) {
        double start = ends[i] - turn;
        double end = ends[i + 1] - turn;
        double low = Math.max(starts[place], start);
        double high = Math.min(starts[place] + extents[place], end);
        for (double at : low < high ? points(low, high, below) : new double[0]) {
          int box = nearest(at, start, end, below);
          double way = box < 0 ? round : wayTo(at, boxes[box], start, end);
          if (way > greatest + ROUNDING) {
            greatest = way;
            found = new Farthest(at - starts[place], box < 0 ? -1 : boxes[box].part());
          }
        }
      }
    }
    return found;
  }

  /** Both ends, and the middles between neighbouring boxes: the way is longest at one of them. */
  private double[] points(double low, double high, double below) {
    List<Double> points = new ArrayList<>(List.of(low, high));
    double before = Double.NaN;
    for (double turn = -round; turn <= round; turn += round) {
      for (Box box : boxes) {
        if (counts(box, below, true)) {
          double middle = (before + box.at() + turn) / 2;
          if (middle > low && middle < high) {
            points.add(middle);
          }
          before = box.at() + turn;
        }
      }
    }
    return points.stream().mapToDouble(Double::doubleValue).sorted().toArray();
  }

  private int nearest(double at, double start, double end, double below) {
    int nearest = -1;
    for (int i = 0; i < boxes.length; i++) {
      if (counts(boxes[i], below, true)
          && wayTo(at, boxes[i], start, end)
              < (nearest < 0 ? Double.POSITIVE_INFINITY : wayTo(at, boxes[nearest], start, end))) {
        nearest = i;
      }
    }
    return nearest;
  }

  private double wayTo(double at, Box box, double start, double end) {
    double way = Double.POSITIVE_INFINITY;
    for (double turn = -round; turn <= round; turn += round) {
      double there = box.at() + turn;
      if (there >= start - ROUNDING && there <= end + ROUNDING) {
        way = Math.min(way, Math.abs(there - at));
      }
    }
    return way;
  }

  /** Indexes of the boxes of which it is not known whether or where they hold a receptacle. */
  public List<Integer> uncertain() {
    Set<Integer> found = new HashSet<>();
    for (Box box : boxes) {
      if (!box.certain() || Double.isNaN(box.up())) {
        found.add(box.part());
      }
    }
    return found.stream().sorted().toList();
  }
}
