package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimefast.plan.geometry.SamplePlan.mm;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild.Ribs;
import org.rimefast.plan.Material;
import org.rimefast.plan.Part;
import org.rimefast.plan.Placement;
import org.rimefast.plan.RunBuild.Side;
import org.rimefast.plan.StudSection;
import org.rimefast.plan.Tolerances;

/**
 * Tracks, and studs that stand in them. Studs are 41.3 mm deep, 31.8 mm wide, and stand 25 mm off
 * the ribs and off the sheets of floor and roof.
 */
class StudsInTracksTest {
  private static final Face[] FACES = Face.values();

  @Test
  void aTrackIsAsDeepAsItsFacesStudsAndLevelWithTheirWarmFace() {
    SamplePlan plan = SamplePlan.whole();
    int plain = plan.track(Face.LEFT, 1000, 41, 600, 32);
    int given = plan.track(Face.LEFT, mm(1000), mm(41), mm(600), mm(32), mm(20), mm(5));
    ModuleGeometry geometry = plan.geometry();
    assertThat(geometry.missing(plain)).isEmpty();
    assertThat(geometry.cuboid(plain)).isEqualTo(new Cuboid(700, 25, 25, 1300, 66.3, 57));
    assertThat(geometry.clearance(plain)).isCloseTo(25, within(1e-9));
    assertThat(geometry.parts().proud(plain)).isZero();
    Cuboid box = Objects.requireNonNull(geometry.cuboid(given));
    assertThat(box.minY()).isCloseTo(66.3 - 5 - 20, within(1e-9));
    assertThat(box.maxY()).isCloseTo(66.3 - 5, within(1e-9));
  }

  @Test
  void aTrackMissesItsPlaceItsExtentAndTheFacesStud() {
    SamplePlan plan = SamplePlan.whole();
    plan.face(Face.LEFT, SamplePlan.SIDE, mm(0), mm(25), Ribs.UPRIGHT, null, mm(12.7));
    int bare = plan.track(Face.LEFT, null, null, null, null, null, null);
    int deep = plan.track(Face.LEFT, mm(1000), mm(41), mm(600), mm(32), mm(41.3), mm(0));
    ModuleGeometry geometry = plan.geometry();
    assertThat(geometry.missing(bare))
        .containsExactly(
            "/tracks/0/along",
            "/tracks/0/up",
            "/tracks/0/width",
            "/tracks/0/height",
            "/faces/left/stud");
    assertThat(geometry.missing(deep)).containsExactly("/faces/left/stud");
    assertThat(geometry.clearance(bare)).isNaN();
  }

  /** Foot, head, flush with the track's back, at mid-height, too deep, past its end, off it. */
  @Test
  void aStudOverlapsATrackUnlessItsEndIsInIt() {
    assertThat(overlaps(41, null, null)).isEqualTo(Certainty.NO);
    assertThat(overlaps(2652, null, null)).isEqualTo(Certainty.NO);
    assertThat(overlaps(1300, null, null)).isEqualTo(Certainty.YES);
    StudSection deeper = new StudSection("362S162-43", 92.1, 41.3, 1.15);
    assertThat(overlaps(41, deeper, null)).isEqualTo(Certainty.YES);
    StudSection shallower = new StudSection("test", 30, 31.8, 1);
    assertThat(overlaps(41, shallower, null)).isEqualTo(Certainty.NO);
    assertThat(overlaps(1300, shallower, null)).isEqualTo(Certainty.YES);
    assertThat(overlaps(3000, null, null)).isEqualTo(Certainty.NO); // apart
  }

  @Test
  void aToleranceLeavesOpenOnlyWhatIsDrawnToReachOut() {
    Tolerances framing = new Tolerances(null, mm(3), null, null);
    assertThat(overlaps(41, null, framing)).isEqualTo(Certainty.NO);
    assertThat(overlaps(41.4, null, framing)).isEqualTo(Certainty.NO); // within the contact
    assertThat(overlaps(43, null, framing)).isEqualTo(Certainty.POSSIBLE); // 2 mm past its back
    assertThat(overlaps(43, null, null)).isEqualTo(Certainty.YES);
    assertThat(overlaps(60, null, framing)).isEqualTo(Certainty.YES);
  }

  private static Certainty overlaps(
      double up, @Nullable StudSection section, @Nullable Tolerances tolerances) {
    SamplePlan plan = SamplePlan.whole();
    plan.tolerances = tolerances == null ? Tolerances.NONE : tolerances;
    int stud = plan.stud(Face.LEFT, 1000, section);
    int track = plan.track(Face.LEFT, 1200, up, 600, 32);
    RunsInSpace bodies = plan.geometry().runs();
    assertThat(bodies.partsOverlap(track, stud)).isEqualTo(bodies.partsOverlap(stud, track));
    return bodies.partsOverlap(stud, track);
  }

  @Test
  void aStudInATrackIsAsFreeAtItsSidesAndBehindItAsWithoutIt() {
    SamplePlan without = SamplePlan.whole();
    without.tolerances = new Tolerances(null, mm(3), null, null);
    without.stud(Face.LEFT, 1000, null);
    without.stud(Face.LEFT, 1406.4, null);
    SamplePlan with = SamplePlan.whole();
    with.tolerances = without.tolerances;
    with.parts.addAll(without.parts);
    int foot = with.track(Face.LEFT, 1203, 41, 600, 32);
    int head = with.track(Face.LEFT, 1203, 2652, 600, 32);
    FoamAccess bare = FoamAccess.of(without.geometry());
    FoamAccess fitted = FoamAccess.of(with.geometry());
    for (int stud = 0; stud < 2; stud++) {
      assertThat(fitted.beside(stud)).isEqualTo(bare.beside(stud));
      assertThat(fitted.behind(stud)).isEqualTo(bare.behind(stud));
    }
    assertThat(fitted.gapBeside(0, Side.RIGHT)).isCloseTo(406.4 - 31.8, within(1e-9));
    assertThat(fitted.nextBeside(foot, Side.ABOVE)).isEqualTo(head);
    assertThat(fitted.gapBeside(foot, Side.ABOVE)).isCloseTo(2652 - 41 - 32, within(1e-9));
  }

  @Test
  void aTrackThatEndsBesideAStudIsInItsWay() {
    SamplePlan plan = SamplePlan.whole();
    int stud = plan.stud(Face.LEFT, 1000, null);
    int track = plan.track(Face.LEFT, 1400, 41, 600, 32);
    FoamAccess access = FoamAccess.of(plan.geometry());
    assertThat(access.nextBeside(stud, Side.RIGHT)).isEqualTo(track);
    assertThat(access.gapBeside(stud, Side.RIGHT)).isCloseTo(100 - 15.9, within(1e-9));
  }

  /** Counted millimetre by millimetre: what is left of the stud beside the track, and where. */
  @Test
  void randomStudsAndTracksOverlapAsTheirMillimetresDo() {
    Random random = new Random(20261125);
    int[] seen = new int[3];
    for (int i = 0; i < 3_000; i++) {
      Face face = FACES[random.nextInt(FACES.length)];
      int[] stud = extents(random, 60);
      int[] track = extents(random, 25);
      SamplePlan plan = SamplePlan.whole();
      plan.parts.add(new Part.Stud("s", "/studs/0", placement(face, stud), null, List.of()));
      plan.parts.add(new Part.Track("t", "/tracks/0", placement(face, track)));
      boolean meet = true;
      for (int axis = 0; axis < 3; axis++) {
        Set<Integer> common = cells(stud, axis);
        common.retainAll(cells(track, axis));
        meet &= !common.isEmpty();
      }
      Set<Integer> low = cells(stud, 1);
      low.removeIf(cell -> cell >= track[1]);
      Set<Integer> high = cells(stud, 1);
      high.removeIf(cell -> cell < track[4]);
      Set<Integer> deep = cells(stud, 2);
      deep.removeAll(cells(track, 2));
      boolean fits = (low.isEmpty() || high.isEmpty()) && deep.isEmpty();
      seen[!meet ? 0 : fits ? 1 : 2]++;
      ModuleGeometry geometry = plan.geometry();
      assertThat(geometry.runs().partsOverlap(0, 1))
          .isEqualTo(meet && !fits ? Certainty.YES : Certainty.NO);
      assertThat(geometry.studsInTracks().standsIn(1, 0))
          .isEqualTo(meet && fits ? Certainty.YES : Certainty.NO);
    }
    assertThat(IntStream.of(seen).min().orElseThrow()).isGreaterThan(150);
  }

  /** Least, then greatest along, up and depth. */
  private static int[] extents(Random random, int longest) {
    int[] ends = new int[6];
    for (int axis = 0; axis < 3; axis++) {
      int length = axis == 1 ? 1 + random.nextInt(longest) : 2 + random.nextInt(12);
      ends[axis] = random.nextInt(axis == 1 ? 20 : 8);
      ends[axis + 3] = ends[axis] + length;
    }
    return ends;
  }

  private static Set<Integer> cells(int[] extents, int axis) {
    return new HashSet<>(IntStream.range(extents[axis], extents[axis + 3]).boxed().toList());
  }

  private static Placement placement(Face face, int[] ends) {
    return new Placement(
        face,
        mm(500 + (ends[0] + ends[3]) / 2.0),
        mm(500 + (ends[1] + ends[4]) / 2.0),
        mm(ends[3] - ends[0]),
        mm(ends[4] - ends[1]),
        mm(ends[5] - ends[2]),
        mm(ends[2]),
        Material.STEEL);
  }
}
