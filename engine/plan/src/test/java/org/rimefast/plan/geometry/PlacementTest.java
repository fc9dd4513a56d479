package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimefast.plan.geometry.SamplePlan.SIDE;
import static org.rimefast.plan.geometry.SamplePlan.STUD;
import static org.rimefast.plan.geometry.SamplePlan.at;
import static org.rimefast.plan.geometry.SamplePlan.mm;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.rimefast.plan.CorrugationProfile;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild.Ribs;
import org.rimefast.plan.Material;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Placement;
import org.rimefast.plan.Run;
import org.rimefast.plan.StudSection;

/** Where parts and runs are, and what is named if that cannot be known. */
class PlacementTest {
  private static final double WARM_FACE = 41.3 + 25; // of the sample's left wall

  @Test
  void mountsDecideWhereTheRoomSideIs() {
    SamplePlan plan = SamplePlan.whole();
    int flush = mounted(plan, Mount.FLUSH);
    int covered = mounted(plan, Mount.COVERED);
    int surface = mounted(plan, Mount.SURFACE);
    ModuleGeometry geometry = plan.geometry();
    assertExtentY(geometry, flush, WARM_FACE + 12.7 - 50, WARM_FACE + 12.7);
    assertExtentY(geometry, covered, WARM_FACE - 50, WARM_FACE);
    assertExtentY(geometry, surface, WARM_FACE + 12.7, WARM_FACE + 12.7 + 50);
  }

  private static int mounted(SamplePlan plan, Mount mount) {
    return plan.box(Face.LEFT, mm(500), mm(1000), mm(100), mm(80), mm(50), mount, null);
  }

  @Test
  void aGivenFrontComesBeforeTheMount() {
    SamplePlan plan = SamplePlan.whole();
    int box = plan.box(Face.LEFT, mm(1), mm(1), mm(1), mm(1), mm(50), Mount.FLUSH, mm(10));
    assertExtentY(plan.geometry(), box, WARM_FACE - 60, WARM_FACE - 10);
  }

  private static void assertExtentY(ModuleGeometry geometry, int part, double min, double max) {
    Cuboid box = Objects.requireNonNull(geometry.cuboid(part));
    assertThat(box.minY()).isCloseTo(min, within(1e-9));
    assertThat(box.maxY()).isCloseTo(max, within(1e-9));
  }

  @Test
  void aStudStopsShortOfRoofAndSteelFloorByTheStandoffOfTheFramingThere() {
    SamplePlan plan = SamplePlan.whole();
    int stud = plan.stud(Face.RIGHT, 1000, null);
    Cuboid box = Objects.requireNonNull(plan.geometry().cuboid(stud));
    assertThat(box.minX()).isCloseTo(12032 - 1000 - 15.9, within(1e-9));
    assertThat(box.maxX()).isCloseTo(12032 - 1000 + 15.9, within(1e-9));
    assertThat(box.minY()).isCloseTo(2350 - WARM_FACE, within(1e-9));
    assertThat(box.maxY()).isCloseTo(2350 - 25, within(1e-9));
    assertThat(box.minZ()).isEqualTo(25);
    assertThat(box.maxZ()).isEqualTo(2693 - 25);
  }

  @Test
  void aStudStandsOnAPlywoodFloorWithoutTouchingSteelThere() {
    SamplePlan plan = SamplePlan.whole();
    plan.face(Face.FLOOR, new CorrugationProfile("plywood", 0, 0, 0, 0, false), null, null);
    int stud = plan.stud(Face.RIGHT, 1000, null);
    assertThat(Objects.requireNonNull(plan.geometry().cuboid(stud)).minZ()).isEqualTo(0);
    assertThat(plan.geometry().clearance(stud)).isGreaterThanOrEqualTo(25);
    assertThat(plan.geometry().missingForClearance(stud)).isEmpty();
  }

  @Test
  void aStudOfItsOwnSectionKeepsTheWarmFaceOfTheOthers() {
    SamplePlan plan = SamplePlan.whole();
    int stud = plan.stud(Face.LEFT, 1000, new StudSection("deep", 60, 40, 1));
    assertExtentY(plan.geometry(), stud, WARM_FACE - 60, WARM_FACE);
  }

  @Test
  void aRoofStudRunsAcrossTheModule() {
    SamplePlan plan = SamplePlan.whole();
    int stud = plan.stud(Face.ROOF, 1000, null);
    Cuboid box = Objects.requireNonNull(plan.geometry().cuboid(stud));
    assertThat(box.minY()).isEqualTo(25);
    assertThat(box.maxY()).isEqualTo(2350 - 25);
    assertThat(box.maxZ()).isCloseTo(2693 - 25, within(1e-9));
  }

  @Test
  void everyMissingValueIsNamed() {
    SamplePlan plan = SamplePlan.whole();
    plan.face(Face.LEFT, null, null, null, Ribs.UPRIGHT, null, null);
    int box = plan.box(Face.LEFT, null, null, null, null, null, Mount.FLUSH, null);
    ModuleGeometry geometry = plan.geometry();
    assertThat(geometry.missing(box))
        .containsExactly(
            "/boxes/0/along",
            "/boxes/0/up",
            "/boxes/0/width",
            "/boxes/0/height",
            "/boxes/0/depth",
            "/faces/left/lining",
            "/faces/left/stud",
            "/faces/left/standoff");
    assertThat(geometry.missingForClearance(box))
        .startsWith("/boxes/0/along")
        .endsWith("/faces/left/profile");
    assertThat(geometry.missingForFacing(box))
        .containsExactly("/boxes/0/along", "/boxes/0/width", "/faces/left/profile");
    assertThat(geometry.cuboid(box)).isNull();
    assertThat(geometry.clearance(box)).isNaN();
    assertThat(geometry.nearestShell(box)).isNull();
    assertThat(geometry.gap(box, box)).isNaN();
    assertThat(geometry.touchesShell(box)).isFalse();
  }

  @Test
  void aBoxWithoutMountAndABarWithoutFrontMissThem() {
    SamplePlan plan = SamplePlan.whole();
    plan.box(Face.LEFT, mm(1), mm(1), mm(1), mm(1), mm(1), null, null);
    plan.bar(Face.LEFT, 1, 1, 1, 1, 1, Double.MIN_VALUE, Material.STEEL);
    plan.parts.set(
        1,
        new org.rimefast.plan.Part.Bar(
            "bar",
            "/bars/0",
            new Placement(Face.LEFT, mm(1), mm(1), mm(1), mm(1), mm(1), null, null)));
    ModuleGeometry geometry = plan.geometry();
    assertThat(geometry.missing(0)).containsExactly("/boxes/0/mount");
    assertThat(geometry.missing(1)).containsExactly("/bars/0/front");
  }

  @Test
  void aStudOfAFaceWithoutStudsMissesTheSectionOnce() {
    SamplePlan plan = SamplePlan.whole();
    plan.face(Face.LEFT, SIDE, mm(0), mm(25), Ribs.UPRIGHT, null, null);
    plan.stud(Face.LEFT, 1000, null);
    ModuleGeometry geometry = plan.geometry();
    assertThat(geometry.missing(0)).containsExactly("/faces/left/stud");
    assertThat(geometry.missingForFacing(0)).containsExactly("/faces/left/stud");
  }

  @Test
  void whatAPartFacesNeedsNoDepth() {
    SamplePlan plan = SamplePlan.whole();
    int box = plan.box(Face.LEFT, mm(174), null, mm(54), null, null, null, null);
    ModuleGeometry geometry = plan.geometry();
    assertThat(geometry.missingForFacing(box)).isEmpty();
    assertThat(geometry.facesFrom(box)).isEqualTo(147);
    assertThat(geometry.facesTo(box)).isEqualTo(201);
  }

  @Test
  void levelRibsAreFacedUpTheFace() {
    SamplePlan plan = SamplePlan.whole();
    plan.face(Face.REAR, SIDE, mm(0), mm(25), Ribs.LEVEL, STUD, mm(12.7));
    int box = plan.box(Face.REAR, 1000, 174);
    ModuleGeometry geometry = plan.geometry();
    assertThat(geometry.facesFrom(box)).isEqualTo(174 - 45);
    assertThat(geometry.facesTo(box)).isEqualTo(174 + 45);
    // 90 mm high before a bay of 72 mm: the corner is 104 - 45 mm from the web's end.
    double slanted = ((104 - 45) * 36 + 31.4 * 68) / Math.sqrt(68 * 68 + 36 * 36);
    assertThat(geometry.clearance(box)).isCloseTo(slanted, within(1e-9));
  }

  @Test
  void aFarFaceWithoutProfileDoesNotSpoilAClearance() {
    SamplePlan plan = new SamplePlan();
    plan.face(Face.LEFT, SIDE, mm(0), mm(25));
    plan.box(Face.LEFT, 5000, 1200);
    ModuleGeometry geometry = plan.geometry();
    assertThat(geometry.clearance(0)).isPositive();
    assertThat(geometry.missingForClearance(0)).isEmpty();
  }

  @Test
  void aNearFaceWithoutProfileOrPhaseSpoilsAClearance() {
    SamplePlan plan = new SamplePlan();
    plan.face(Face.LEFT, SIDE, mm(0), mm(25));
    plan.face(Face.FRONT, SIDE, null, null);
    plan.box(Face.LEFT, 12032 - 27 - 5, 20);
    ModuleGeometry geometry = plan.geometry();
    assertThat(geometry.clearance(0)).isNaN();
    assertThat(geometry.nearestShell(0)).isNull();
    assertThat(geometry.missingForClearance(0))
        .containsExactly("/faces/front/phase", "/faces/floor/profile");
  }

  @Test
  void aFaceWithoutProfileIsNoNearerThanItsOpeningsLeaveIt() {
    SamplePlan plan = new SamplePlan();
    plan.face(Face.LEFT, SIDE, mm(0), mm(25));
    plan.opening(Face.FRONT, 0, 0, 2350, 2693);
    plan.box(Face.LEFT, 12032 - 27 - 5, 1200);
    assertThat(plan.geometry().clearance(0)).isPositive();
  }

  @Test
  void aRunIsALineOfItsFacesAndNeedsItsDiameter() {
    SamplePlan plan = SamplePlan.whole();
    plan.run(Run.Kind.EMT, mm(20), at(Face.LEFT, 2000, 1000, 10), at(Face.LEFT, 6000, 1000, 10));
    plan.run(Run.Kind.EMT, null, at(Face.LEFT, 35, 1000, 10), at(Face.LEFT, 6000, 1000, 10));
    plan.run(
        Run.Kind.EMT, null, at(Face.LEFT, null, mm(1), mm(10)), at(Face.LEFT, mm(2), mm(1), null));
    ModuleGeometry geometry = plan.geometry();
    // Middle 10 mm behind the warm face, 66.3 mm off the ribs, radius 10.
    assertThat(geometry.runClearance(0)).isCloseTo(66.3 - 10 - 10, within(1e-9));
    ShellNearest nearest = Objects.requireNonNull(geometry.runNearestShell(0));
    assertThat(nearest.face()).isEqualTo(Face.LEFT);
    assertThat(nearest.nearest().distance()).isCloseTo(46.3, within(1e-9));
    assertThat(nearest.nearest().onElement().y()).isCloseTo(46.3, within(1e-9));
    assertThat(nearest.nearest().onOther().y()).isCloseTo(0, within(1e-9));
    assertThat(geometry.runClearance(1)).isNaN();
    assertThat(geometry.runMissing(1)).containsExactly("/runs/1/diameter");
    assertThat(geometry.runMissingForClearance(2))
        .containsExactly("/runs/0/path/0/along", "/runs/0/path/0/depth", "/runs/2/diameter");
  }

  @Test
  void aRunThatDipsIntoABayIsMeasuredThere() {
    SamplePlan plan = SamplePlan.whole();
    // Along a rib's height in the middle of a bay, 10 mm outside the plane of the ribs.
    plan.run(
        Run.Kind.EMT,
        mm(20),
        at(Face.LEFT, 174, 600, WARM_FACE + 10),
        at(Face.LEFT, 174, 1400, WARM_FACE + 10));
    double toWeb = (104 * 36 - 10 * 68) / Math.sqrt(68 * 68 + 36 * 36);
    assertThat(toWeb).isGreaterThan(26); // so the bay, 26 mm behind the middle line, is nearest
    assertThat(plan.geometry().runClearance(0)).isCloseTo(26 - 10, within(1e-9));
  }

  @Test
  void aRunIsAsProudAsItsWorstPoint() {
    SamplePlan plan = SamplePlan.whole();
    plan.run(
        Run.Kind.EMT,
        mm(20),
        at(Face.LEFT, 100, 1000, 30),
        at(Face.LEFT, 500, 1000, 4),
        at(Face.LEFT, 900, 1000, 25));
    plan.run(Run.Kind.EMT, mm(20), at(Face.LEFT, 100, 1, 30), at(Face.LEFT, 500, 1, 15));
    ModuleGeometry geometry = plan.geometry();
    assertThat(geometry.proud(0)).isCloseTo(6, within(1e-9));
    assertThat(geometry.proud(1)).isCloseTo(-5, within(1e-9));
  }

  /**
   * From 20 mm behind the left wall's warm face to 20 mm behind the roof's. Near the corner the run
   * stays behind one of them; a run that cuts the corner wide stands out in the middle of its way,
   * where it is as far past the one as past the other.
   */
  @Test
  void aRunAroundACornerCountsAgainstTheNearerFace() {
    SamplePlan plan = SamplePlan.whole();
    plan.run(
        Run.Kind.EMT,
        mm(20),
        at(Face.LEFT, 1000, 2693 - WARM_FACE, 20),
        at(Face.ROOF, 1000, WARM_FACE, 20));
    plan.run(
        Run.Kind.EMT,
        mm(20),
        at(Face.LEFT, 1000, 2693 - WARM_FACE - 380, 20),
        at(Face.ROOF, 1000, WARM_FACE + 380, 20));
    ModuleGeometry geometry = plan.geometry();
    assertThat(geometry.proud(0)).isCloseTo(-10 + 10, within(1e-9));
    // Past the left wall from -20 to 380, past the roof from 380 to -20: equal at 180.
    assertThat(geometry.proud(1)).isCloseTo(180 + 10, within(1e-9));
  }

  @Test
  void whatProudNeedsIsNamed() {
    SamplePlan plan = SamplePlan.whole();
    plan.face(Face.ROOF, SIDE, mm(0), null);
    plan.run(
        Run.Kind.EMT, null, at(Face.LEFT, mm(1), null, mm(3)), at(Face.LEFT, null, null, mm(3)));
    plan.run(Run.Kind.EMT, mm(20), at(Face.LEFT, 1, 2, 3), at(Face.ROOF, 1, 2, 3));
    ModuleGeometry geometry = plan.geometry();
    assertThat(geometry.missingForProud(0)).containsExactly("/runs/0/diameter");
    assertThat(geometry.proud(0)).isNaN();
    assertThat(geometry.missingForProud(1)).containsExactly("/faces/roof/standoff");
    assertThat(geometry.proud(1)).isNaN();
  }
}
