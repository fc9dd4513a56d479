package org.rimefast.plan.geometry;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.CorrugationProfile;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.FaceBuild.Ribs;
import org.rimefast.plan.Foaming;
import org.rimefast.plan.Material;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Opening;
import org.rimefast.plan.Part;
import org.rimefast.plan.Placement;
import org.rimefast.plan.Plan;
import org.rimefast.plan.PlanSource;
import org.rimefast.plan.Room;
import org.rimefast.plan.Run;
import org.rimefast.plan.ShellSize;
import org.rimefast.plan.Site;
import org.rimefast.plan.StudSection;
import org.rimefast.plan.Tolerances;
import org.rimefast.units.Quantity;
import org.rimefast.units.Rational;
import org.rimefast.units.Units;

/** Plans for tests, made step by step. Invented. */
final class SamplePlan {
  /** Common practice, no source: a side wall. */
  static final CorrugationProfile SIDE = new CorrugationProfile("side", 72, 68, 70, 36);

  /** Common practice, no source: a front wall. */
  static final CorrugationProfile END = new CorrugationProfile("end", 110, 18, 104, 45.6);

  /** Common practice, no source: a roof. */
  static final CorrugationProfile ROOF = new CorrugationProfile("roof", 91, 13.5, 91, 20);

  static final CorrugationProfile FLAT = new CorrugationProfile("flat", 1, 0, 0, 0);

  /** Common practice, no source: 1-5/8 in studs. */
  static final StudSection STUD = new StudSection("162S125-33", 41.3, 31.8, 0.84);

  /** Typical inside of a 40 ft high-cube module. */
  static final ShellSize SHELL = new ShellSize("45G1", 12032, 2350, 2693);

  ShellSize shell = SHELL;
  Tolerances tolerances = Tolerances.NONE;
  Foaming foaming = Foaming.UNKNOWN;
  final Map<Face, FaceBuild> faces = new EnumMap<>(Face.class);
  final List<Opening> openings = new ArrayList<>();
  final List<Part> parts = new ArrayList<>();
  final List<Run> runs = new ArrayList<>();

  /** All six faces given: corrugated walls and roof, a flat floor. */
  static SamplePlan whole() {
    SamplePlan plan = new SamplePlan();
    plan.face(Face.LEFT, SIDE, mm(0), mm(25));
    plan.face(Face.RIGHT, SIDE, mm(0), mm(25));
    plan.face(Face.FRONT, END, mm(0), mm(25));
    plan.face(Face.REAR, FLAT, null, mm(25));
    plan.face(Face.ROOF, ROOF, mm(0), mm(25));
    plan.face(Face.FLOOR, FLAT, null, mm(25));
    return plan;
  }

  SamplePlan face(
      Face face,
      @Nullable CorrugationProfile profile,
      @Nullable Amount phase,
      @Nullable Amount standoff) {
    return face(face, profile, phase, standoff, Ribs.UPRIGHT, STUD, mm(12.7));
  }

  SamplePlan face(
      Face face,
      @Nullable CorrugationProfile profile,
      @Nullable Amount phase,
      @Nullable Amount standoff,
      Ribs ribs,
      @Nullable StudSection stud,
      @Nullable Amount lining) {
    faces.put(
        face,
        new FaceBuild(
            face,
            "/faces/" + face.word(),
            profile,
            ribs,
            phase,
            mm(2),
            standoff,
            stud,
            lining,
            null));
    return this;
  }

  SamplePlan opening(Face face, double from, double sill, double width, double height) {
    return opening(face, mm(from), mm(sill), mm(width), mm(height));
  }

  SamplePlan opening(Face face, Amount from, Amount sill, Amount width, Amount height) {
    int index = openings.size();
    openings.add(
        new Opening("opening-" + index, "/openings/" + index, face, from, sill, width, height));
    return this;
  }

  /** A steel device box 54 mm wide, 90 mm high and 47.6 mm deep, flush with the lining. */
  int box(Face face, double along, double up) {
    return box(face, mm(along), mm(up), mm(54), mm(90), mm(47.6), Mount.FLUSH, null);
  }

  int box(
      Face face,
      @Nullable Amount along,
      @Nullable Amount up,
      @Nullable Amount width,
      @Nullable Amount height,
      @Nullable Amount depth,
      @Nullable Mount mount,
      @Nullable Amount front) {
    int index = parts.size();
    parts.add(
        new Part.Box(
            "part-" + index,
            "/boxes/" + index,
            Part.Box.Kind.DEVICE,
            null,
            new Placement(face, along, up, width, height, depth, front, Material.STEEL),
            mount));
    return index;
  }

  /** A bar whose room side is at {@code front}. */
  int bar(
      Face face,
      double along,
      double up,
      double width,
      double height,
      double depth,
      double front,
      @Nullable Material material) {
    int index = parts.size();
    parts.add(
        new Part.Bar(
            "part-" + index,
            "/bars/" + index,
            new Placement(
                face, mm(along), mm(up), mm(width), mm(height), mm(depth), mm(front), material)));
    return index;
  }

  /** A steel track as deep as the face's studs, at their warm face. */
  int track(Face face, double along, double up, double width, double height) {
    return track(face, mm(along), mm(up), mm(width), mm(height), null, null);
  }

  int track(
      Face face,
      @Nullable Amount along,
      @Nullable Amount up,
      @Nullable Amount width,
      @Nullable Amount height,
      @Nullable Amount depth,
      @Nullable Amount front) {
    int index = parts.size();
    parts.add(
        new Part.Track(
            "part-" + index,
            "/tracks/" + index,
            new Placement(face, along, up, width, height, depth, front, Material.STEEL)));
    return index;
  }

  int stud(Face face, double along, @Nullable StudSection section) {
    int index = parts.size();
    parts.add(
        new Part.Stud(
            "part-" + index,
            "/studs/" + index,
            new Placement(face, mm(along), null, null, null, null, null, Material.STEEL),
            section,
            List.of()));
    return index;
  }

  int run(Run.Kind kind, @Nullable Amount diameter, Run.PathPoint... path) {
    int index = runs.size();
    runs.add(new Run("run-" + index, "/runs/" + index, kind, diameter, List.of(path), null, null));
    return index;
  }

  static Run.PathPoint at(Face face, double along, double up, double depth) {
    return at(face, mm(along), mm(up), mm(depth));
  }

  static Run.PathPoint at(
      Face face, @Nullable Amount along, @Nullable Amount up, @Nullable Amount depth) {
    return new Run.PathPoint("/runs/0/path/0", face, along, up, depth);
  }

  Plan plan() {
    for (Face face : Face.values()) {
      if (!faces.containsKey(face)) {
        face(face, null, null, null, Ribs.UPRIGHT, null, null);
      }
    }
    return new Plan(
        "sample",
        "Sample",
        Units.MILLIMETRE,
        tolerances,
        new Room("/room", null, null, null),
        new Site("/site", null, null),
        shell,
        faces,
        openings,
        parts,
        runs,
        List.of(),
        foaming,
        List.of(),
        new PlanSource("(built)", "", Map.of()));
  }

  ModuleGeometry geometry() {
    return ModuleGeometry.of(plan());
  }

  static Amount mm(double value) {
    return new Amount(quantity(value), null);
  }

  static Amount mm(double value, double plusMinus) {
    return new Amount(quantity(value), quantity(plusMinus));
  }

  private static Quantity quantity(double value) {
    return new Quantity(Rational.of(BigDecimal.valueOf(value)), Units.MILLIMETRE, value + " mm");
  }
}
