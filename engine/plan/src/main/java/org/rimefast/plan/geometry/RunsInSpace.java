package org.rimefast.plan.geometry;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Plan;
import org.rimefast.plan.RunBuild.Side;

/**
 * Where runs go: which studs they pass and how, what they cross and lie in, and how they come to
 * what is at their ends. Runs, parts and lengths as in {@link ModuleGeometry}. What must be looked
 * for among all elements is worked out once, when first asked; after that no question allocates but
 * those that give a list or a place.
 *
 * <p>An end is named by {@code last}: false for the first point of the path, true for the last.
 *
 * <pre>{@code
 * RunsInSpace runs = geometry.runs();
 * if (runs.passes(run, stud) == Certainty.YES && runs.passesHole(run, stud) == Certainty.NO) {
 *   report("it cuts the web of the stud");
 * }
 * }</pre>
 */
public final class RunsInSpace {
  private final Plan plan;
  private final RunGeometry runs;
  private final PartGeometry parts;
  private final RunEnds ends;
  private final RunZones zones;
  private final StretchClearance stretches;
  private final Overlaps overlaps;
  private final StudsInTracks tracks;
  private final double contact;
  private volatile @Nullable StudPasses passes; // built when first needed, as are the next ones
  private volatile @Nullable RunCrossings crossings;
  private volatile @Nullable NearRuns near;
  private volatile double @Nullable [] spreads; // least, then most of each run

  RunsInSpace(
      Plan plan,
      ShellSheets shell,
      ToleranceBounds bounds,
      RunGeometry runs,
      PartGeometry parts,
      StudsInTracks tracks,
      double contact) {
    this.plan = plan;
    this.runs = runs;
    this.parts = parts;
    this.ends = new RunEnds(runs, parts, contact);
    this.zones = new RunZones(plan, shell, bounds, runs);
    this.stretches = new StretchClearance(shell, runs);
    this.tracks = tracks;
    this.overlaps = new Overlaps(runs, parts, tracks, contact);
    this.contact = contact;
  }

  private StudPasses studs() {
    StudPasses built = passes;
    if (built == null) {
      built = new StudPasses(plan, runs, parts);
      passes = built;
    }
    return built;
  }

  private RunCrossings crossings() {
    RunCrossings built = crossings;
    if (built == null) {
      built = new RunCrossings(plan, runs);
      crossings = built;
    }
    return built;
  }

  private NearRuns near() {
    NearRuns built = near;
    if (built == null) {
      built = new NearRuns(runs, parts, plan.parts().size(), contact);
      near = built;
    }
    return built;
  }

  /** The length of a run's middle line; NaN if a value is missing. */
  public double length(int run) {
    return StretchClearance.length(runs.run(run).line());
  }

  /** The point of a run's path that is {@code steps} points from an end; NaN where not known. */
  public Point point(int run, boolean last, int steps) {
    double[] line = runs.run(run).line();
    int i = last ? line.length - 3 - 3 * steps : 3 * steps;
    return new Point(line[i], line[i + 1], line[i + 2]);
  }

  /** JSON pointers of the values that are missing for a run's middle line. */
  public List<String> missingForLine(int run) {
    return runs.run(run).missing();
  }

  /**
   * Whether a run's middle line goes through the web of a stud: the plane at the middle of its
   * width, within its height and depth. A run that only reaches the plane does not.
   */
  public Certainty passes(int run, int stud) {
    return studs().passes(run, stud);
  }

  /**
   * Whether it goes through the web and, wherever it does, its outside lies wholly within one
   * service hole. Holes are rectangles in the middle of the web's depth.
   */
  public Certainty passesHole(int run, int stud) {
    return studs().passesHole(run, stud);
  }

  /**
   * Every place where a run passes through a stud that has a place, or may, ordered by stud and
   * then along the run. Empty if a value is missing for the run.
   */
  public List<StudPass> passes(int run) {
    return List.copyOf(Arrays.asList(studs().of(run)));
  }

  /** How many places {@link #passes(int)} has at a stud. */
  public int passCount(int run, int stud) {
    StudPass[] all = studs().of(run);
    int first = studs().first(run, stud);
    int end = first;
    while (end < all.length && all[end].stud() == stud) {
      end++;
    }
    return end - first;
  }

  /** One of the places that {@link #passes(int)} has at a stud, counted from 0 along the run. */
  public StudPass pass(int run, int stud, int number) {
    return studs().of(run)[studs().first(run, stud) + number];
  }

  /** JSON pointers of the values that are missing to tell whether a run passes a stud. */
  public List<String> missingForPass(int run, int stud) {
    Set<String> pointers = new LinkedHashSet<>(runs.run(run).missing());
    pointers.addAll(parts.part(stud).missing());
    return List.copyOf(pointers);
  }

  /** Reports every stud that a run passes or may pass, each once, in no certain order. */
  public void studsPassed(int run, IntConsumer found) {
    if (runs.run(run).missing().isEmpty()) {
      int before = -1;
      for (StudPass pass : studs().of(run)) {
        if (pass.stud() != before) {
          found.accept(pass.stud());
        }
        before = pass.stud();
      }
      report(studs().unplaced(), found);
    } else {
      report(studs().all(), found);
    }
  }

  private static void report(int[] indexes, IntConsumer found) {
    report(indexes, 0, found);
  }

  private static void report(int[] indexes, int first, IntConsumer found) {
    for (int index : indexes) {
      found.accept(first + index);
    }
  }

  /**
   * The greatest difference of level between the service holes nearest to where a run passes studs,
   * each face by itself; 0 if it passes fewer than two that have holes.
   *
   * @param most true for the most that it can be, false for the least; NaN if not known
   */
  public double holeSpread(int run, boolean most) {
    double[] known = spreads;
    if (known == null) {
      known = new double[2 * runs.count()];
      for (int i = 0; i < runs.count(); i++) {
        known[2 * i] = studs().spread(i, false);
        known[2 * i + 1] = studs().spread(i, true);
      }
      spreads = known;
    }
    return known[2 * run + (most ? 1 : 0)];
  }

  /** JSON pointers of the values that are missing for {@link #holeSpread}. */
  public List<String> missingForHoleSpread(int run) {
    Set<String> pointers = new LinkedHashSet<>(runs.run(run).missing());
    for (int stud : studs().unplaced()) {
      if (runs.run(run).missing().isEmpty() && studs().passes(run, stud) != Certainty.NO) {
        pointers.addAll(parts.part(stud).missing());
      }
    }
    return List.copyOf(pointers);
  }

  /**
   * The least difference of level between a service hole of one stud and one of another.
   *
   * @param most true for the most that it can be, false for the least; NaN if one has no hole
   */
  public double holeOffset(int studA, int studB, boolean most) {
    HolesOfStuds holes = studs().holes();
    return most ? holes.mostDifference(studA, studB) : holes.leastDifference(studA, studB);
  }

  /** Whether two runs cross, seen from the room: neither lengthwise nor at an end of either. */
  public Certainty cross(int runA, int runB) {
    return crossings().cross(runA, runB);
  }

  /**
   * Reports every run that a run crosses or may cross, each once, in no certain order.
   *
   * @param first the number under which run 0 is reported
   */
  public void runsCrossed(int run, int first, IntConsumer found) {
    if (crossings().isPlaced(run)) {
      report(crossings().of(run), first, found);
      report(crossings().unplaced(), first, found);
    } else {
      for (int other = 0; other < runs.count(); other++) {
        found.accept(first + other);
      }
    }
  }

  /** Where two runs cross, as drawn; null if nowhere, or if not known. */
  public @Nullable Crossing crossing(int runA, int runB) {
    return crossings().first(runA, runB);
  }

  /** JSON pointers of the values that are missing to see where a run lies on its faces. */
  public List<String> missingForCrossing(int run) {
    return crossings().missing(run);
  }

  /** Whether all of a run stands before a zone of the sheet of the face that it is on. */
  public Certainty liesIn(int run, Zone zone) {
    return zones.liesIn(run, zone);
  }

  /** Whether some of a run stands before a zone of the sheet of the face that it is on. */
  public Certainty faces(int run, Zone zone) {
    return zones.faces(run, zone);
  }

  /** JSON pointers of the values that are missing to tell what zones a run stands before. */
  public List<String> missingForFacing(int run) {
    return zones.missing(run);
  }

  /**
   * The least distance from a run's outside to the steel over a stretch of its middle line, given
   * by lengths from its first end. NaN if not known, infinite if there is no such stretch or no
   * steel; it may differ by {@link ModuleGeometry#runPositionTolerance}.
   */
  public double clearance(int run, double from, double to) {
    return stretches.clearance(run, from, to);
  }

  /** Whether some point of a run is higher than one of its ends. */
  public Certainty isHigherThan(int run, boolean last) {
    return ends.isHigherThan(run, last);
  }

  /** The highest point, in steps from an end. */
  public int highest(int run, boolean last) {
    return ends.highest(run, last);
  }

  /** How much the difference of height between two points of a run may differ. */
  public double heightTolerance(int run) {
    return ends.heightTolerance(run);
  }

  /**
   * How far a run, followed from an end, hangs below that end before it first climbs above it; 0 if
   * it climbs at once.
   *
   * @param most true for the most that it can be, false for the least; NaN if not known
   */
  public double dripLoop(int run, boolean last, boolean most) {
    return ends.dripLoop(run, last, most);
  }

  /** The lowest point before it climbs, as drawn, in steps from the end; 0 if it is the end. */
  public int lowest(int run, boolean last) {
    return ends.lowest(run, last);
  }

  /** The first point that is drawn higher than an end, in steps from it; -1 if none is. */
  public int climbs(int run, boolean last) {
    return ends.climbs(run, last);
  }

  /** The gap between an end of a run and a part; NaN if the place of one is not known. */
  public double endGap(int run, boolean last, int part) {
    return ends.gap(run, last, part);
  }

  /** Whether an end of a run is at a part: their gap is no more than the contact tolerance. */
  public Certainty isAt(int run, boolean last, int part) {
    return ends.isAt(run, last, part);
  }

  /**
   * The side of a part by which an end comes to it, {@link Side#ABOVE} being up the part's face.
   * Null if not known, if the end is apart from the part, or if within the tolerances it could be
   * another side.
   */
  public @Nullable Side side(int run, boolean last, int part) {
    return ends.side(run, last, part);
  }

  /**
   * Whether two parts are drawn into one another by more than the contact tolerance, and are not a
   * stud and a track in which an end of it stands.
   */
  public Certainty partsOverlap(int partA, int partB) {
    return overlaps.ofParts(partA, partB);
  }

  /**
   * How far the stud of a stud and a track that meet reaches out of the track: past it at both ends
   * of the stud, or past a leg. 0 or less if an end of it stands in the track; NaN if they are no
   * such pair or that is not known.
   */
  public double outOfTrack(int partA, int partB) {
    return tracks.out(partA, partB);
  }

  /** Whether a run's outside is drawn into a part by more than the contact tolerance. */
  public Certainty overlaps(int run, int part) {
    return overlaps.ofRun(run, part);
  }

  /** How far a part would have to move to be out of another; less than 0 if it is. */
  public double partOverlap(int partA, int partB) {
    return overlaps.depth(partA, partB);
  }

  /** How far a run's outside lies in a part; less than 0 if it does not, NaN if not known. */
  public double overlap(int run, int part) {
    return overlaps.depthOfRun(run, part);
  }

  /** Reports every part that a run may touch, each once; none if the run has no place. */
  public void partsAtRun(int run, IntConsumer found) {
    report(near().partsOfRun(run), found);
  }

  /**
   * Reports every other run that a run may touch, each once; none if the run has no place.
   *
   * @param first the number under which run 0 is reported
   */
  public void runsAtRun(int run, int first, IntConsumer found) {
    report(near().runsOfRun(run), first, found);
  }

  /**
   * Reports every run that a part may touch, each once; none if the part has no place.
   *
   * @param first the number under which run 0 is reported
   */
  public void runsAtPart(int part, int first, IntConsumer found) {
    report(near().runsOfPart(part), first, found);
  }

  /**
   * Reports every run of which it is not known where its outside is.
   *
   * @param first the number under which run 0 is reported
   */
  public void unplacedRuns(int first, IntConsumer found) {
    report(near().unplaced(), first, found);
  }
}
