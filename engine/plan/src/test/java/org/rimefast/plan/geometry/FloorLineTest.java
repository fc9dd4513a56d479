package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimefast.plan.geometry.SamplePlan.mm;

import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.rimefast.plan.Amount;
import org.rimefast.plan.BoxFittings;
import org.rimefast.plan.BoxFittings.Device;
import org.rimefast.plan.Face;
import org.rimefast.plan.Material;
import org.rimefast.plan.Part;
import org.rimefast.plan.Placement;
import org.rimefast.plan.ShellSize;
import org.rimefast.plan.Tolerances;

class FloorLineTest {
  private static final int LENGTH = 60;
  private static final int WIDTH = 24;
  private static final int ROUND = 2 * (LENGTH + WIDTH);
  private static final List<Face> WALLS = List.of(Face.LEFT, Face.FRONT, Face.RIGHT, Face.REAR);
  private static final int[] STARTS = {0, LENGTH, LENGTH + WIDTH, 2 * LENGTH + WIDTH};

  private static void receptacle(SamplePlan plan, Face face, @Nullable Amount along, double up) {
    box(plan, face, along, up, List.of(new Device("", Device.Kind.RECEPTACLE, 1, null)));
  }

  private static void box(
      SamplePlan plan,
      Face face,
      @Nullable Amount along,
      double up,
      @Nullable List<Device> devices) {
    int index = plan.parts.size();
    plan.parts.add(
        new Part.Box(
            "box-" + index,
            "/boxes/" + index,
            Part.Box.Kind.DEVICE,
            null,
            new Placement(face, along, mm(up), mm(2), mm(3), mm(2), null, Material.STEEL),
            null,
            new BoxFittings(null, devices, null, null, null)));
  }

  private static SamplePlan plan() {
    SamplePlan plan = SamplePlan.whole();
    plan.shell = new ShellSize("small", LENGTH, WIDTH, 2000);
    return plan;
  }

  /** The reference marks half millimetres of the whole line and walks from each to both sides. */
  @Test
  void theGreatestWayIsThatOfWalkingFromEveryPoint() {
    Random random = new Random(71);
    for (int round = 0; round < 2_000; round++) {
      SamplePlan plan = plan();
      boolean[] broken = new boolean[4 * ROUND];
      boolean[] receptacle = new boolean[4 * ROUND];
      for (int i = random.nextInt(5); i > 0; i--) {
        int wall = random.nextInt(4);
        int extent = wall % 2 == 0 ? LENGTH : WIDTH;
        int from = random.nextInt(extent - 1);
        int width = 1 + random.nextInt(Math.min(20, extent - from));
        boolean low = random.nextInt(4) > 0;
        plan.opening(
            WALLS.get(wall),
            from,
            low ? random.nextInt(101) : 101 + random.nextInt(500),
            width,
            900);
        for (int at = 4 * (STARTS[wall] + from);
            low && at < 4 * (STARTS[wall] + from + width);
            at++) {
          broken[at] = true;
        }
      }
      for (int i = random.nextInt(6); i > 0; i--) {
        int wall = random.nextInt(4);
        int along = random.nextInt(wall % 2 == 0 ? LENGTH : WIDTH);
        boolean low = random.nextInt(4) > 0;
        receptacle(plan, WALLS.get(wall), mm(along + 0.125), low ? 400 : 1800);
        receptacle[4 * (STARTS[wall] + along)] |= low;
      }
      box(plan, Face.LEFT, mm(3), 400, List.of(new Device("", Device.Kind.SWITCH, 1, null)));
      int least = random.nextInt(12);
      FloorLine line = FloorLine.of(plan.geometry());
      for (int wall = 0; wall < 4; wall++) {
        double walked = walked(broken, receptacle, wall, least);
        double most = line.most(WALLS.get(wall), 1700, least);
        assertThat(most).as("round %d, wall %d", round, wall).isCloseTo(walked, within(0.26));
        assertThat(line.least(WALLS.get(wall), 1700, least)).isCloseTo(most, within(1e-9));
        FloorLine.Farthest farthest = line.farthest(WALLS.get(wall), 1700, least);
        assertThat(farthest == null).isEqualTo(walked == 0 && most == 0);
      }
    }
  }

  /** Quarter millimetres; a box stands in the middle of one. */
  private static double walked(boolean[] broken, boolean[] receptacle, int wall, int least) {
    int n = broken.length;
    double greatest = 0;
    int from = 4 * STARTS[wall];
    int to = from + 4 * (wall % 2 == 0 ? LENGTH : WIDTH);
    for (int at = from; at < to; at++) {
      if (broken[at]) {
        continue;
      }
      int up = 0;
      while (up < n && !broken[(at + up) % n]) {
        up++;
      }
      int down = 0;
      while (down < n && !broken[(at - down + n) % n]) {
        down++;
      }
      int space = up == n ? n : up + down - 1;
      if (space < 4 * least) {
        continue;
      }
      double best = ROUND;
      for (int step = 0; step < up; step++) {
        if (receptacle[(at + step) % n]) {
          best = Math.min(best, step / 4.0);
          break;
        }
      }
      for (int step = 0; step < down; step++) {
        if (receptacle[(at - step + n) % n]) {
          best = Math.min(best, step / 4.0);
          break;
        }
      }
      greatest = Math.max(greatest, best);
    }
    return greatest;
  }

  @Test
  void aBoxThatMayHoldAReceptacleLeavesTheWayOpen() {
    SamplePlan plan = plan();
    receptacle(plan, Face.LEFT, mm(10), 400);
    box(plan, Face.LEFT, mm(50), 400, null);
    FloorLine line = FloorLine.of(plan.geometry());
    assertThat(line.least(Face.LEFT, 1700, 1)).isEqualTo(20);
    assertThat(line.most(Face.LEFT, 1700, 1)).isEqualTo(50);
    assertThat(line.uncertain()).containsExactly(1);
  }

  @Test
  void aBoxWithoutAPlaceMayStandWhereverItHelps() {
    SamplePlan plan = plan();
    receptacle(plan, Face.LEFT, null, 400);
    FloorLine line = FloorLine.of(plan.geometry());
    assertThat(line.least(Face.LEFT, 1700, 1)).isZero();
    assertThat(line.most(Face.LEFT, 1700, 1)).isEqualTo(ROUND);
  }

  @Test
  void tolerancesMoveBoxesAndDoors() {
    SamplePlan plan = plan();
    plan.tolerances = new Tolerances(null, null, mm(2), null);
    plan.opening(Face.FRONT, mm(0), mm(0), mm(24, 1), mm(900));
    plan.opening(Face.REAR, mm(0), mm(0), mm(24, 1), mm(900));
    receptacle(plan, Face.LEFT, mm(20), 400);
    FloorLine line = FloorLine.of(plan.geometry());
    assertThat(line.least(Face.LEFT, 1700, 1)).isEqualTo(37);
    assertThat(line.most(Face.LEFT, 1700, 1)).isEqualTo(43);
  }
}
