package org.rimefast.plan.geometry;

import java.util.List;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Face;
import org.rimefast.plan.Material;
import org.rimefast.plan.Plan;

/**
 * Where everything in a plan is, how far it is from the steel of the shell and from each other, and
 * how far off that may be. Parts and runs are named by their index in the plan's lists; lengths are
 * in millimetres. Immutable, for any number of threads.
 *
 * <p>What cannot be known because the plan lacks a value is NaN or null, never a guess; for each
 * there is a method that names the missing values by their JSON pointers. Distances are exact least
 * distances between surfaces, 0 where bodies meet, however deep one lies in the other. The shell is
 * the room side of its sheets with the openings cut out; parts are cuboids, runs are round bars
 * along their middle lines with half a ball at each end and bend.
 *
 * <p>Distances and margins allocate nothing.
 *
 * <pre>{@code
 * ModuleGeometry geometry = ModuleGeometry.of(plan);
 * double clearance = geometry.clearance(0);
 * if (Double.isNaN(clearance)) {
 *   report(geometry.missingForClearance(0)); // for instance /faces/left/phase
 * }
 * }</pre>
 */
public final class ModuleGeometry {
  /** Bodies closer than this touch, if the plan does not say: common practice, no source. */
  private static final double CONTACT = 0.5;

  private final Plan plan;
  private final ShellSheets shell;
  private final PartGeometry parts;
  private final RunGeometry runs;
  private final RunPaths paths;
  private final RunsInSpace space;
  private final StudsInTracks tracks;
  private final double contactTolerance;

  private ModuleGeometry(Plan plan) {
    this.plan = plan;
    this.shell = new ShellSheets(plan);
    ToleranceBounds bounds = new ToleranceBounds(plan, shell);
    this.parts = new PartGeometry(plan, shell, bounds);
    this.runs = new RunGeometry(plan, shell, bounds, parts);
    double contact = Lengths.millimetres(plan.tolerances().contact());
    this.contactTolerance = Double.isNaN(contact) ? CONTACT : contact;
    this.paths = new RunPaths(plan, runs, parts, contactTolerance);
    this.tracks = new StudsInTracks(plan, parts, contactTolerance);
    this.space = new RunsInSpace(plan, shell, bounds, runs, parts, tracks, contactTolerance);
  }

  /** The geometry of a plan. */
  public static ModuleGeometry of(Plan plan) {
    return new ModuleGeometry(plan);
  }

  /** The plan that this is the geometry of. */
  public Plan plan() {
    return plan;
  }

  StudsInTracks studsInTracks() {
    return tracks;
  }

  PlacedPart placed(int part) {
    return parts.part(part);
  }

  PlacedRun placedRun(int run) {
    return runs.run(run);
  }

  PartGeometry parts() {
    return parts;
  }

  ShellSheets shell() {
    return shell;
  }

  /** The coordinates of a face. */
  public FaceFrame frame(Face face) {
    return shell.area(face).frame();
  }

  /** The sheet of a face; null if its profile, or the phase of a corrugated one, is not given. */
  public @Nullable CorrugatedSheet sheet(Face face) {
    return shell.sheet(face);
  }

  /** Bodies whose gap is not more than this touch: what the plan says, else 0.5 mm. */
  public double contactTolerance() {
    return contactTolerance;
  }

  /**
   * True if two extents that overlap so much, or less than 0 so little, are drawn edge to edge:
   * what is drawn so is fitted so on site, whatever the plan's other tolerances.
   */
  boolean isFitted(double overlap) {
    return Math.abs(overlap) <= contactTolerance;
  }

  /** Where a part is; null if a value that it needs is missing. */
  public @Nullable Cuboid cuboid(int part) {
    return parts.cuboid(part);
  }

  /** JSON pointers of the values that are missing for a part's cuboid; empty if none is. */
  public List<String> missing(int part) {
    return parts.part(part).missing();
  }

  /**
   * The least distance from a part to the steel of the shell, all six faces; 0 if it touches or
   * passes through it. NaN if its cuboid is not known, or if a face without profile or phase could
   * be nearer than the steel that is known; a face that lies farther does no harm. Infinite if the
   * openings take up every face.
   */
  public double clearance(int part) {
    return parts.clearance(part);
  }

  /**
   * JSON pointers of the values that are missing for a part's clearance: of the part, or the
   * profile or phase of each face that could be nearest. Empty if the clearance is known.
   */
  public List<String> missingForClearance(int part) {
    return parts.missingForClearance(part);
  }

  /** Where a part is nearest to the shell; null if its clearance is not known or infinite. */
  public @Nullable ShellNearest nearestShell(int part) {
    return parts.nearestShell(part);
  }

  /**
   * How much the distance from a part to the shell may differ from {@link #clearance}: the length
   * of the vector that adds up, axis by axis, how far the part's place, its size (half of it for
   * width and height, which are centred), the studs' standoff and the sheet's phase may be off. A
   * value's own tolerance comes first, then its trade's: framing for studs, tracks, bars and
   * brackets, electrical for the rest, shell for phase and standoff; sizes, lining and openings
   * have only their own. 0 if the plan states no tolerance.
   *
   * <p>Why it is a bound: no distance between two bodies changes by more than their points move.
   * Near an end of the face or a side of an opening, ribs that move past the cut also move its edge
   * outward, by at most the slope of the webs times the shift; there this is added.
   */
  public double positionTolerance(int part) {
    return parts.positionTolerance(part);
  }

  /** The distance between two parts; 0 if they meet, NaN if a cuboid is not known. */
  public double gap(int partA, int partB) {
    return parts.gap(partA, partB);
  }

  /** Where two parts are nearest; null if a cuboid is not known. */
  public @Nullable Nearest nearest(int partA, int partB) {
    Cuboid a = cuboid(partA);
    Cuboid b = cuboid(partB);
    return a == null || b == null ? null : Cuboids.nearest(a, b);
  }

  /**
   * How much the gap between two parts may differ from {@link #gap}. Where both stand on the same
   * face the standoff moves them together and does not count.
   */
  public double gapTolerance(int partA, int partB) {
    return parts.gapTolerance(partA, partB);
  }

  /** True if a part touches the shell; false if not, or if that is not known. */
  public boolean touchesShell(int part) {
    return clearance(part) <= contactTolerance;
  }

  /** True if two parts touch; false if not, or if that is not known. */
  public boolean touches(int partA, int partB) {
    return gap(partA, partB) <= contactTolerance;
  }

  /**
   * Where a part starts in the direction in which the profile of its face varies, for the questions
   * that {@link CorrugatedSheet} answers about zones; NaN if not known. It needs no depth.
   */
  public double facesFrom(int part) {
    return parts.facesFrom(part);
  }

  /** Where it ends; otherwise as {@link #facesFrom}. */
  public double facesTo(int part) {
    return parts.facesTo(part);
  }

  /** JSON pointers of the values that are missing to tell what zones a part faces. */
  public List<String> missingForFacing(int part) {
    return parts.missingForFacing(part);
  }

  /**
   * How far either end of a part may be off against the zones of its face: a bound on how much
   * {@link CorrugatedSheet#marginInside} and {@link CorrugatedSheet#gapTo} may differ, but where
   * the phase brings a stretch that it moves past an end of the face into it or out of it.
   */
  public double facesTolerance(int part) {
    return parts.facesTolerance(part);
  }

  /** Lengths, turns and ends of runs. */
  public RunPaths paths() {
    return paths;
  }

  /** JSON pointers of the values that are missing for a run's middle line. */
  public List<String> runMissingForPath(int run) {
    return runs.run(run).missing();
  }

  /** JSON pointers of the values that are missing for a run's middle line and diameter. */
  public List<String> runMissing(int run) {
    return runs.run(run).missingWithDiameter();
  }

  /** The least distance from a run's outside to the steel; otherwise as {@link #clearance}. */
  public double runClearance(int run) {
    return runs.clearance(run);
  }

  /** As {@link #missingForClearance}, for a run. */
  public List<String> runMissingForClearance(int run) {
    return runs.missingForClearance(run);
  }

  /** As {@link #nearestShell}, for a run. */
  public @Nullable ShellNearest runNearestShell(int run) {
    return runs.nearestShell(run);
  }

  /**
   * As {@link #positionTolerance}, for a run: its points may each be off by their own tolerances,
   * else the electrical one, and a point between two of them by no more than the greater; the
   * tolerance of the radius is added.
   */
  public double runPositionTolerance(int run) {
    return runs.positionTolerance(run);
  }

  /** The distance between a run's outside and a part; 0 if they meet, NaN if not known. */
  public double runGap(int run, int part) {
    return runs.gap(run, part);
  }

  /** Where a run is nearest to a part, the run first; null if not known. */
  public @Nullable Nearest runNearest(int run, int part) {
    return runs.nearest(run, part);
  }

  /** As {@link #gapTolerance}, for a run and a part. */
  public double runGapTolerance(int run, int part) {
    return runs.gapTolerance(run, part);
  }

  /** The distance between the outsides of two runs; 0 if they meet, NaN if not known. */
  public double gapBetweenRuns(int runA, int runB) {
    return runs.gapBetween(runA, runB);
  }

  /** Where two runs are nearest; null if not known. */
  public @Nullable Nearest nearestBetweenRuns(int runA, int runB) {
    return runs.nearestBetween(runA, runB);
  }

  /** As {@link #gapTolerance}, for two runs. */
  public double gapToleranceBetweenRuns(int runA, int runB) {
    return runs.gapToleranceBetween(runA, runB);
  }

  /** True if a run touches the shell; false if not, or if that is not known. */
  public boolean runTouchesShell(int run) {
    return runClearance(run) <= contactTolerance;
  }

  /** True if a run touches a part; false if not, or if that is not known. */
  public boolean runTouches(int run, int part) {
    return runGap(run, part) <= contactTolerance;
  }

  /** True if two runs touch; false if not, or if that is not known. */
  public boolean runsTouch(int runA, int runB) {
    return gapBetweenRuns(runA, runB) <= contactTolerance;
  }

  /**
   * How far a run's outside comes past the studs' warm face toward the room, at the worst point of
   * its length; less than 0 if it stays behind, NaN if not known. Between points on two faces it
   * counts as behind the studs where it is behind those of either face. What lies behind a part on
   * the lining that it enters does not count.
   */
  public double proud(int run) {
    return runs.run(run).proud();
  }

  /** JSON pointers of the values that are missing for {@link #proud}. */
  public List<String> missingForProud(int run) {
    return runs.run(run).missingForProud();
  }

  /** How much {@link #proud} may differ. */
  public double proudTolerance(int run) {
    return runs.run(run).proudTolerance();
  }

  /** Where runs go. */
  public RunsInSpace runs() {
    return space;
  }

  /**
   * How far a part's room side stands past the studs' warm face toward the room; less than 0 if it
   * is behind it, NaN if not known.
   */
  public double partProud(int part) {
    return parts.proud(part);
  }

  /** JSON pointers of the values that are missing for {@link #partProud}. */
  public List<String> missingForPartProud(int part) {
    return parts.missingForProud(part);
  }

  /** How much {@link #partProud} may differ. */
  public double partProudTolerance(int part) {
    return parts.proudTolerance(part);
  }

  /**
   * Reports every other part whose gap to a part is at most {@code distance}, in the order of the
   * plan. Parts whose cuboids are not known are not found, and find none.
   */
  public void partsWithin(int part, double distance, IntConsumer found) {
    parts.within(part, distance, found);
  }

  /**
   * As {@link #partsWithin}, but in no certain order, the part itself among them, and without new
   * memory.
   */
  public void partsWithinInAnyOrder(int part, double distance, IntConsumer found) {
    parts.withinInAnyOrder(part, distance, found);
  }

  /** Reports every part whose gap to a run is at most {@code distance}, in the plan's order. */
  public void partsNearRun(int run, double distance, IntConsumer found) {
    runs.partsNear(run, distance, found);
  }

  /**
   * Every pair of bodies, of whatever material, whose gap is at most {@code distance}. The shell is
   * one body. Ordered by the first body, then the second. Bodies whose place is not known are not
   * in it, nor is the shell beside a body whose clearance is not known.
   */
  public List<Contact> contacts(double distance) {
    return new ContactFinder(this, runs, distance, body -> true).find();
  }

  /**
   * The pairs of metal bodies that touch: parts of steel or aluminium, runs with a metal outside,
   * and the shell. A part whose material is not given is not in it.
   */
  public List<Contact> metalContacts() {
    return new ContactFinder(this, runs, contactTolerance, this::isMetal).find();
  }

  private boolean isMetal(Contact.Body body) {
    return switch (body.kind()) {
      case SHELL -> true;
      case PART -> {
        Material material = plan.parts().get(body.index()).material();
        yield material != null && material.isMetal();
      }
      case RUN -> plan.runs().get(body.index()).kind().isMetal();
    };
  }
}
