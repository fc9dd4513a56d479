package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimefast.plan.geometry.SamplePlan.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.rimefast.plan.CorrugationProfile;
import org.rimefast.plan.Face;
import org.rimefast.plan.Foaming;
import org.rimefast.plan.Material;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Part;
import org.rimefast.plan.Placement;
import org.rimefast.plan.RunBuild.Side;
import org.rimefast.plan.ShellSize;
import org.rimefast.plan.StudSection;
import org.rimefast.plan.Tolerances;

class FoamAccessTest {
  private static final int LENGTH = 240;
  private static final int HEIGHT = 120;
  private static final int WARM = 60; // how far the studs' warm face lies inside the ribs
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** A small profile whose corners lie at whole millimetres: 20 flat, 10 slanted, 30 flat. */
  private static final CorrugationProfile SMALL = new CorrugationProfile("small", 30, 10, 20, 20);

  /** A cuboid on the left wall in whole millimetres; depths from the ribs, inward is negative. */
  private record Bar(int along, int up, int out, int alongEnd, int upEnd, int outEnd) {
    boolean overlapsIn(Bar other) {
      return out < other.outEnd && other.out < outEnd;
    }

    Geometry rectangle() {
      return FACTORY.toGeometry(new Envelope(along, alongEnd, up, upEnd));
    }
  }

  private static SamplePlan empty() {
    SamplePlan plan = new SamplePlan();
    plan.shell = new ShellSize("small", LENGTH, 200, HEIGHT);
    plan.face(Face.LEFT, SMALL, mm(0), mm(WARM - 41.3));
    return plan;
  }

  private static List<Bar> randomBars(Random random) {
    List<Bar> bars = new ArrayList<>();
    int count = 1 + random.nextInt(6);
    for (int i = 0; i < count; i++) {
      int along = random.nextInt(LENGTH - 2);
      int up = random.nextInt(HEIGHT - 2);
      int out = -WARM + random.nextInt(WARM - 2);
      bars.add(
          new Bar(
              along,
              up,
              out,
              along + 1 + random.nextInt(Math.min(70, LENGTH - along - 1)),
              up + 1 + random.nextInt(Math.min(50, HEIGHT - up - 1)),
              out + 1 + random.nextInt(-out)));
    }
    return bars;
  }

  private static void add(SamplePlan plan, Bar bar) {
    plan.bar(
        Face.LEFT,
        (bar.along + bar.alongEnd) / 2.0,
        (bar.up + bar.upEnd) / 2.0,
        bar.alongEnd - bar.along,
        bar.upEnd - bar.up,
        bar.outEnd - bar.out,
        bar.out + WARM,
        Material.WOOD);
  }

  @Test
  void theGapsBesideAPartAreThoseOfCountedCellsAndOfTheOverlayLibrary() {
    Random random = new Random(42);
    for (int round = 0; round < 2_000; round++) {
      List<Bar> bars = randomBars(random);
      SamplePlan plan = empty();
      bars.forEach(bar -> add(plan, bar));
      FoamAccess access = FoamAccess.of(plan.geometry());
      for (int i = 0; i < bars.size(); i++) {
        double widest = 0;
        for (Side side : List.of(Side.LEFT, Side.RIGHT, Side.BELOW, Side.ABOVE)) {
          int counted = countedGap(bars, i, side);
          assertThat(access.gapBeside(i, side)).isCloseTo(counted, within(1e-6));
          assertThat(overlayGap(bars, i, side)).isCloseTo(counted, within(1e-6));
          widest = Math.max(widest, counted);
        }
        assertThat(access.beside(i).least()).isCloseTo(widest, within(1e-6));
        assertThat(access.beside(i).most()).isCloseTo(widest, within(1e-6));
        assertThat(access.gapBeside(i, access.widestSide(i))).isCloseTo(widest, within(1e-6));
      }
    }
  }

  /** Walks out from a side in slices of a millimetre until one of them is not free. */
  private static int countedGap(List<Bar> bars, int index, Side side) {
    Bar bar = bars.get(index);
    for (int gap = 0; ; gap++) {
      int along = side == Side.LEFT ? bar.along - gap - 1 : bar.alongEnd + gap;
      int up = side == Side.BELOW ? bar.up - gap - 1 : bar.upEnd + gap;
      boolean level = side == Side.LEFT || side == Side.RIGHT;
      if (level ? along < 0 || along >= LENGTH : up < 0 || up >= HEIGHT) {
        return gap;
      }
      for (int other = 0; other < bars.size(); other++) {
        Bar b = bars.get(other);
        boolean inSlice =
            level
                ? b.along <= along && along < b.alongEnd && b.up < bar.upEnd && bar.up < b.upEnd
                : b.up <= up && up < b.upEnd && b.along < bar.alongEnd && bar.along < b.alongEnd;
        if (other != index && inSlice && b.overlapsIn(bar)) {
          return gap;
        }
      }
    }
  }

  private static double overlayGap(List<Bar> bars, int index, Side side) {
    Bar bar = bars.get(index);
    Envelope corridor =
        switch (side) {
          case LEFT -> new Envelope(0, bar.along, bar.up, bar.upEnd);
          case RIGHT -> new Envelope(bar.alongEnd, LENGTH, bar.up, bar.upEnd);
          case BELOW -> new Envelope(bar.along, bar.alongEnd, 0, bar.up);
          default -> new Envelope(bar.along, bar.alongEnd, bar.upEnd, HEIGHT);
        };
    Geometry way = FACTORY.toGeometry(corridor);
    boolean level = side == Side.LEFT || side == Side.RIGHT;
    double best = level ? corridor.getWidth() : corridor.getHeight();
    for (int other = 0; other < bars.size(); other++) {
      if (other != index && bars.get(other).overlapsIn(bar)) {
        Geometry common = way.intersection(bars.get(other).rectangle());
        if (common.getArea() > 0) {
          best = Math.min(best, common.distance(bar.rectangle()));
        }
      }
    }
    return best;
  }

  @Test
  void theGapBehindAPartIsTheLeastOfManyStraightLines() {
    Random random = new Random(43);
    for (int round = 0; round < 2_000; round++) {
      List<Bar> bars = randomBars(random);
      SamplePlan plan = empty();
      bars.forEach(bar -> add(plan, bar));
      FoamAccess access = FoamAccess.of(plan.geometry());
      for (int i = 0; i < bars.size(); i++) {
        double sampled = sampledBehind(bars, i);
        assertThat(access.gapBehind(i)).isCloseTo(sampled, within(1e-6));
        assertThat(access.behind(i).least()).isCloseTo(sampled, within(1e-6));
        assertThat(access.behind(i).most()).isCloseTo(sampled, within(1e-6));
      }
    }
  }

  /** The profile's corners lie at whole millimetres, so lines a millimetre apart meet the least. */
  private static double sampledBehind(List<Bar> bars, int index) {
    Bar bar = bars.get(index);
    double best = Double.POSITIVE_INFINITY;
    for (int at = bar.along; at <= bar.alongEnd; at++) {
      best = Math.min(best, sheet(at) - bar.outEnd);
    }
    for (int other = 0; other < bars.size(); other++) {
      Bar b = bars.get(other);
      if (other != index
          && b.outEnd > bar.outEnd
          && bar.rectangle().intersection(b.rectangle()).getArea() > 0) {
        best = Math.min(best, b.out - bar.outEnd);
      }
    }
    return Math.max(0, best);
  }

  private static double sheet(int at) {
    int place = at % 70;
    if (place <= 20) {
      return 0;
    }
    return place < 30 ? (place - 20) * 2 : place <= 60 ? 20 : (70 - place) * 2;
  }

  @Test
  void theBareSteelOfAFaceIsThatOfCountedCellsAndOfTheOverlayLibrary() {
    Random random = new Random(44);
    int bareLayouts = 0;
    for (int round = 0; round < 2_000; round++) {
      SamplePlan plan = empty();
      List<Bar> bars = randomBars(random);
      bars.forEach(bar -> add(plan, bar));
      // Studs as wide as they are deep fill what stands between ribs and warm face, less 10 mm.
      int studs = random.nextInt(3);
      for (int i = 0; i < studs; i++) {
        int width = 10 + random.nextInt(10);
        int along = random.nextInt(LENGTH - width);
        plan.parts.add(stud(i, along + width / 2.0, width));
        bars.add(new Bar(along, 0, -WARM, along + width, HEIGHT, -10));
      }
      int nozzle = 1 + random.nextInt(30);
      int reach = random.nextInt(60);
      plan.foaming = new Foaming(mm(nozzle), mm(reach));
      @Nullable Bar hole = null;
      if (random.nextBoolean()) {
        hole = new Bar(random.nextInt(200), random.nextInt(60), 0, 0, 0, 0);
        hole = new Bar(hole.along, hole.up, 0, hole.along + 35, hole.up + 50, 0);
        plan.opening(Face.LEFT, hole.along, hole.up, 35, 50);
      }
      FoamAccess access = FoamAccess.of(plan.geometry());
      int counted = countedBare(bars, bars.size() - studs, nozzle, reach, hole);
      bareLayouts += counted > 0 ? 1 : 0;
      assertThat(access.bare(Face.LEFT).least()).isCloseTo(counted, within(1e-3));
      assertThat(access.bare(Face.LEFT).most()).isCloseTo(counted, within(1e-3));
      assertThat(overlayBare(bars, bars.size() - studs, nozzle, reach, hole))
          .isCloseTo(counted, within(1e-3));
    }
    assertThat(bareLayouts).isBetween(200, 2_000);
  }

  private static Part.Stud stud(int index, double along, double width) {
    return new Part.Stud(
        "stud-" + index,
        "/studs/" + index,
        new Placement(
            Face.LEFT,
            mm(along),
            mm(HEIGHT / 2.0),
            mm(width),
            mm(HEIGHT),
            mm(WARM - 10),
            null,
            Material.STEEL),
        new StudSection("test", WARM - 10, width, 1),
        List.of());
  }

  private static int countedBare(
      List<Bar> bars, int firstStud, int nozzle, int reach, @Nullable Bar hole) {
    int count = 0;
    boolean[][] open = new boolean[bars.size()][4];
    boolean[] behind = new boolean[bars.size()];
    for (int i = 0; i < bars.size(); i++) {
      open[i][0] = countedGap(bars, i, Side.LEFT) >= nozzle;
      open[i][1] = countedGap(bars, i, Side.RIGHT) >= nozzle;
      open[i][2] = countedGap(bars, i, Side.BELOW) >= nozzle;
      open[i][3] = countedGap(bars, i, Side.ABOVE) >= nozzle;
      behind[i] = sampledBehind(bars, i) >= nozzle;
    }
    for (int x = 0; x < LENGTH; x++) {
      for (int y = 0; y < HEIGHT; y++) {
        count +=
            isBare(bars, firstStud, nozzle, reach, hole, open, behind, x + 0.5, y + 0.5) ? 1 : 0;
      }
    }
    return count;
  }

  private static boolean isBare(
      List<Bar> bars,
      int firstStud,
      int nozzle,
      int reach,
      @Nullable Bar hole,
      boolean[][] open,
      boolean[] behind,
      double x,
      double y) {
    if (hole != null && x > hole.along && x < hole.alongEnd && y > hole.up && y < hole.upEnd) {
      return false;
    }
    for (int i = 0; i < bars.size(); i++) {
      Bar bar = bars.get(i);
      if (x > bar.along && x < bar.alongEnd && y > bar.up && y < bar.upEnd) {
        boolean reached =
            (open[i][0] && x - bar.along < reach)
                || (open[i][1] && bar.alongEnd - x < reach)
                || (open[i][2] && y - bar.up < reach)
                || (open[i][3] && bar.upEnd - y < reach);
        if (!(behind[i] && reached)) {
          return true;
        }
      }
      if (i >= firstStud) {
        if (x < bar.along && bar.along < nozzle) {
          return true;
        }
        if (x > bar.alongEnd && LENGTH - bar.alongEnd < nozzle) {
          return true;
        }
        for (int j = firstStud; j < bars.size(); j++) {
          Bar next = bars.get(j);
          if (x > bar.alongEnd && x < next.along && next.along - bar.alongEnd < nozzle) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static double overlayBare(
      List<Bar> bars, int firstStud, int nozzle, int reach, @Nullable Bar hole) {
    List<Geometry> bare = new ArrayList<>();
    for (int i = 0; i < bars.size(); i++) {
      Bar bar = bars.get(i);
      Geometry shadow = bar.rectangle();
      if (sampledBehind(bars, i) >= nozzle) {
        List<Envelope> strips = new ArrayList<>();
        if (overlayGap(bars, i, Side.LEFT) >= nozzle) {
          strips.add(new Envelope(bar.along, bar.along + reach, 0, HEIGHT));
        }
        if (overlayGap(bars, i, Side.RIGHT) >= nozzle) {
          strips.add(new Envelope(bar.alongEnd - reach, bar.alongEnd, 0, HEIGHT));
        }
        if (overlayGap(bars, i, Side.BELOW) >= nozzle) {
          strips.add(new Envelope(0, LENGTH, bar.up, bar.up + reach));
        }
        if (overlayGap(bars, i, Side.ABOVE) >= nozzle) {
          strips.add(new Envelope(0, LENGTH, bar.upEnd - reach, bar.upEnd));
        }
        for (Envelope strip : strips) {
          shadow = shadow.difference(FACTORY.toGeometry(strip));
        }
      }
      bare.add(shadow);
      for (int j = firstStud; i >= firstStud && j < bars.size(); j++) {
        double gap = bars.get(j).along - bar.alongEnd;
        if (gap > 0 && gap < nozzle) {
          bare.add(FACTORY.toGeometry(new Envelope(bar.alongEnd, bars.get(j).along, 0, HEIGHT)));
        }
      }
      if (i >= firstStud && bar.along < nozzle) {
        bare.add(FACTORY.toGeometry(new Envelope(0, bar.along, 0, HEIGHT)));
      }
      if (i >= firstStud && LENGTH - bar.alongEnd < nozzle) {
        bare.add(FACTORY.toGeometry(new Envelope(bar.alongEnd, LENGTH, 0, HEIGHT)));
      }
    }
    bare.removeIf(shape -> shape.getArea() == 0);
    Geometry union = UnaryUnionOp.union(bare, FACTORY);
    if (union == null || hole == null) {
      return union == null ? 0 : union.getArea();
    }
    return union
        .difference(
            FACTORY.toGeometry(new Envelope(hole.along, hole.alongEnd, hole.up, hole.upEnd)))
        .getArea();
  }

  /**
   * Whatever is built within the tolerances, what is measured on it lies between the bounds; but
   * what is drawn edge to edge is taken to be fitted so.
   */
  @Test
  void whatIsBuiltLiesWithinTheBoundsOfWhatIsDrawn() {
    Random random = new Random(45);
    for (int round = 0; round < 1_000; round++) {
      List<Bar> bars = randomBars(random);
      while (anyEdgeToEdge(bars)) {
        bars = randomBars(random);
      }
      SamplePlan drawn = empty();
      drawn.tolerances = new Tolerances(mm(2), mm(3), null, null);
      drawn.foaming = new Foaming(mm(20), mm(40));
      SamplePlan built = empty();
      built.foaming = drawn.foaming;
      built.face(Face.LEFT, SMALL, mm(shift(random, 2)), mm(WARM - 41.3 + shift(random, 2)));
      for (Bar bar : bars) {
        add(drawn, bar);
        built.bar(
            Face.LEFT,
            (bar.along + bar.alongEnd) / 2.0 + shift(random, 3),
            (bar.up + bar.upEnd) / 2.0 + shift(random, 3),
            bar.alongEnd - bar.along,
            bar.upEnd - bar.up,
            bar.outEnd - bar.out,
            bar.out + WARM + shift(random, 3),
            Material.WOOD);
      }
      FoamAccess bounds = FoamAccess.of(drawn.geometry());
      FoamAccess real = FoamAccess.of(built.geometry());
      for (int i = 0; i < bars.size(); i++) {
        holds(bounds.beside(i), real.beside(i));
        holds(bounds.behind(i), real.behind(i));
        holds(bounds.bareBehind(i), real.bareBehind(i));
      }
      holds(bounds.bare(Face.LEFT), real.bare(Face.LEFT));
    }
  }

  private static boolean anyEdgeToEdge(List<Bar> bars) {
    for (Bar a : bars) {
      for (Bar b : bars) {
        if (a != b && (a.along == b.alongEnd || a.up == b.upEnd || a.out == b.outEnd)) {
          return true;
        }
      }
    }
    return false;
  }

  private static double shift(Random random, double most) {
    return Math.round((2 * random.nextDouble() - 1) * most * 1000) / 1000.0;
  }

  private static void holds(Bounds bounds, Bounds real) {
    assertThat(real.least()).isGreaterThanOrEqualTo(bounds.least() - 1e-6);
    assertThat(real.most()).isLessThanOrEqualTo(bounds.most() + 1e-6);
  }

  @Test
  void aPartWithoutAPlaceMayStandAnywhereOnItsFace() {
    SamplePlan plan = SamplePlan.whole();
    int box = plan.box(Face.LEFT, 1000, 1200);
    int lost = plan.box(Face.LEFT, null, mm(1200), mm(54), mm(90), mm(47.6), Mount.FLUSH, null);
    FoamAccess access = FoamAccess.of(plan.geometry());
    // Above it is 2693 - 1245 = 1448 mm free, which the lost one at its level cannot take.
    assertThat(access.beside(box).least()).isEqualTo(1448);
    assertThat(access.beside(box).most()).isEqualTo(12032 - 1027);
    assertThat(access.missingForBeside(box)).containsExactly("/boxes/1/along");
    assertThat(access.beside(lost).isKnown()).isFalse();
    assertThat(access.bareBehind(box).isKnown()).isFalse();
    assertThat(access.missingForBareBehind(box))
        .contains("/foaming/nozzle", "/foaming/reach", "/boxes/1/along");
  }

  @Test
  void manyPartsInARowTakeNoTimeWorthSpeakingOf() {
    SamplePlan plan = SamplePlan.whole();
    plan.shell = new ShellSize("long", 4_000_000, 2350, 2693);
    plan.foaming = new Foaming(mm(20), mm(400));
    for (int i = 0; i < 20_000; i++) {
      plan.box(Face.LEFT, 100 + 150 * i, 1200);
    }
    ModuleGeometry geometry = plan.geometry();
    long start = System.nanoTime();
    FoamAccess access = FoamAccess.of(geometry);
    assertThat(access.gapBeside(7, Side.LEFT)).isCloseTo(96, within(1e-6));
    assertThat(System.nanoTime() - start).isLessThan(10_000_000_000L);
  }
}
