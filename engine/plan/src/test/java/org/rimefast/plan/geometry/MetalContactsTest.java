package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimefast.plan.geometry.SamplePlan.at;
import static org.rimefast.plan.geometry.SamplePlan.mm;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Face;
import org.rimefast.plan.Material;
import org.rimefast.plan.Part;
import org.rimefast.plan.Placement;
import org.rimefast.plan.Run;
import org.rimefast.plan.RunBuild;
import org.rimefast.plan.RunBuild.Connector;
import org.rimefast.plan.RunBuild.End;
import org.rimefast.plan.Tolerances;

class MetalContactsTest {
  private static final Face[] FACES = Face.values();
  private static final @Nullable Material[] MATERIALS = {
    Material.STEEL, Material.STEEL, Material.ALUMINIUM, Material.WOOD, Material.PLASTIC, null
  };

  private static SamplePlan random(Random random) {
    SamplePlan plan = SamplePlan.whole();
    if (random.nextBoolean()) {
      plan.tolerances = new Tolerances(mm(2), mm(3), mm(4), null);
    }
    if (random.nextInt(4) == 0) {
      plan.face(Face.LEFT, SamplePlan.SIDE, null, mm(25));
    }
    int parts = 1 + random.nextInt(9);
    for (int i = 0; i < parts; i++) {
      plan.parts.add(
          new Part.Bar(
              "bar-" + i,
              "/bars/" + i,
              new Placement(
                  random.nextInt(5) == 0 ? Face.ROOF : Face.LEFT,
                  random.nextInt(14) == 0 ? null : mm(200 + random.nextInt(200)),
                  mm(random.nextInt(3) == 0 ? 2500 : 1000 + random.nextInt(100)),
                  mm(10 + random.nextInt(90)),
                  mm(10 + random.nextInt(60)),
                  mm(5 + random.nextInt(70)),
                  mm(random.nextInt(40)),
                  MATERIALS[random.nextInt(MATERIALS.length)])));
    }
    for (int i = random.nextInt(4); i > 0; i--) {
      int index = plan.runs.size();
      plan.runs.add(
          new Run(
              "run-" + index,
              "/runs/" + index,
              random.nextInt(4) == 0 ? Run.Kind.NONMETALLIC_CABLE : Run.Kind.EMT,
              random.nextInt(12) == 0 ? null : mm(15),
              List.of(point(random), point(random), point(random)),
              random.nextBoolean() ? null : "bar-" + random.nextInt(parts),
              random.nextBoolean() ? null : "bar-" + random.nextInt(parts),
              new RunBuild(null, null, null, null, null, null, end(random), end(random), null)));
    }
    return plan;
  }

  private static Run.PathPoint point(Random random) {
    return at(Face.LEFT, 200 + random.nextInt(200), 1000 + random.nextInt(100), random.nextInt(60));
  }

  private static End end(Random random) {
    @Nullable Connector[] connectors = {Connector.METAL, Connector.INSULATING, null};
    return new End(null, connectors[random.nextInt(3)], null);
  }

  /** Sets of joined items, and what each of them is joined to, by all pairs. */
  private static final class Sets {
    final int[] above;

    Sets(int count) {
      above = new int[count];
      for (int i = 0; i < count; i++) {
        above[i] = i;
      }
    }

    int find(int i) {
      return above[i] == i ? i : find(above[i]);
    }

    void join(int a, int b) {
      above[find(a)] = find(b);
    }
  }

  @Test
  void chainsLeadWhereSetsOfAllTouchingPairsDo() {
    Random random = new Random(81);
    int certainChains = 0;
    int possibleChains = 0;
    for (int round = 0; round < 2_000; round++) {
      SamplePlan plan = random(random);
      ModuleGeometry geometry = plan.geometry();
      MetalContacts contacts = MetalContacts.of(geometry);
      int count = plan.parts.size() + plan.runs.size();
      Sets certain = new Sets(count + FACES.length);
      Sets possible = new Sets(count);
      int[][] joined = new int[count][count];
      for (int a = 0; a < count; a++) {
        for (int b = 0; b < count; b++) {
          joined[a][b] = a == b ? 0 : joined(plan, geometry, a, b);
          if (joined[a][b] == 2) {
            certain.join(a, b);
          }
          if (joined[a][b] > 0) {
            possible.join(a, b);
          }
        }
      }
      for (int from = 0; from < count; from++) {
        boolean[] sure = reached(contacts, count, from, false);
        boolean[] perhaps = reached(contacts, count, from, true);
        for (int to = 0; to < count; to++) {
          assertThat(sure[to]).isEqualTo(certain.find(from) == certain.find(to));
          assertThat(perhaps[to])
              .as("round %d, %d to %d", round, from, to)
              .isEqualTo(possible.find(from) == possible.find(to));
          certainChains += from != to && sure[to] ? 1 : 0;
          possibleChains += perhaps[to] && !sure[to] ? 1 : 0;
        }
        assertSteel(plan, geometry, contacts, from);
      }
    }
    assertThat(certainChains).isGreaterThan(500);
    assertThat(possibleChains).isGreaterThan(500);
  }

  private static boolean[] reached(MetalContacts contacts, int count, int from, boolean perhaps) {
    boolean[] seen = new boolean[count];
    ArrayDeque<Integer> next = new ArrayDeque<>(List.of(from));
    seen[from] = true;
    while (!next.isEmpty()) {
      int item = next.remove();
      IntConsumer found =
          other -> {
            if (!seen[other]) {
              seen[other] = true;
              next.add(other);
            }
          };
      contacts.certain(item, found);
      if (perhaps) {
        contacts.possible(item, found);
      }
    }
    return seen;
  }

  private static int metal(SamplePlan plan, int item) {
    if (item >= plan.parts.size()) {
      return plan.runs.get(item - plan.parts.size()).kind() == Run.Kind.EMT ? 2 : 0;
    }
    Material material = plan.parts.get(item).material();
    return material == null
        ? 1
        : material == Material.STEEL || material == Material.ALUMINIUM ? 2 : 0;
  }

  /** 0 not joined, 1 perhaps, 2 certainly. */
  private static int joined(SamplePlan plan, ModuleGeometry geometry, int a, int b) {
    int parts = plan.parts.size();
    int metal = Math.min(metal(plan, a), metal(plan, b));
    if (a >= parts && b < parts) {
      return joined(plan, geometry, b, a);
    }
    double gap;
    double tolerance;
    if (b < parts) {
      gap = geometry.gap(a, b);
      tolerance = geometry.gapTolerance(a, b);
    } else if (a < parts) {
      Run run = plan.runs.get(b - parts);
      String id = plan.parts.get(a).id();
      int best = -1;
      if (id.equals(run.from())) {
        best = Math.max(best, connected(run.build().first()));
      }
      if (id.equals(run.to())) {
        best = Math.max(best, connected(run.build().last()));
      }
      if (best >= 0) {
        return Math.min(metal, best);
      }
      gap = geometry.runGap(b - parts, a);
      tolerance = geometry.runGapTolerance(b - parts, a);
    } else {
      gap = geometry.gapBetweenRuns(a - parts, b - parts);
      tolerance = geometry.gapToleranceBetweenRuns(a - parts, b - parts);
    }
    int touching = gap <= 0.5 ? 2 : gap - tolerance > 0.5 || apart(plan, a, b) ? 0 : 1;
    return Math.min(metal, touching);
  }

  private static int connected(End end) {
    return end.connector() == null ? 1 : end.connector() == Connector.METAL ? 2 : 0;
  }

  /** True if no two boxes around everywhere that two items can be come near each other. */
  private static boolean apart(SamplePlan plan, int a, int b) {
    for (double[] one : boxes(plan, a)) {
      for (double[] other : boxes(plan, b)) {
        double sum = 0;
        for (int axis = 0; axis < 6; axis += 2) {
          double gap =
              Math.max(0, Math.max(one[axis] - other[axis + 1], other[axis] - one[axis + 1]));
          sum += gap * gap;
        }
        if (Math.sqrt(sum) <= 0.5 + 1e-6) {
          return false;
        }
      }
    }
    return true;
  }

  private static List<double[]> boxes(SamplePlan plan, int item) {
    int parts = plan.parts.size();
    if (item < parts) {
      return List.of(extents(plan, item));
    }
    double electrical =
        plan.tolerances.electrical() == null ? 0 : plan.tolerances.electrical().millimetres();
    double shell = plan.tolerances.shell() == null ? 0 : plan.tolerances.shell().millimetres();
    Run run = plan.runs.get(item - parts);
    double off = run.diameter() == null ? 1e6 : 7.5 + electrical;
    List<double[]> boxes = new ArrayList<>();
    for (int i = 0; i + 1 < run.path().size(); i++) {
      Run.PathPoint a = run.path().get(i);
      Run.PathPoint b = run.path().get(i + 1);
      boxes.add(
          new double[] {
            Math.min(along(a), along(b)) - off,
            Math.max(along(a), along(b)) + off,
            Math.min(up(a), up(b)) - off,
            Math.max(up(a), up(b)) + off,
            66.3 - Math.max(depth(a), depth(b)) - off - shell,
            66.3 - Math.min(depth(a), depth(b)) + off + shell
          });
    }
    return boxes;
  }

  private static double along(Run.PathPoint point) {
    return Objects.requireNonNull(point.along()).millimetres();
  }

  private static double up(Run.PathPoint point) {
    return Objects.requireNonNull(point.up()).millimetres();
  }

  private static double depth(Run.PathPoint point) {
    return Objects.requireNonNull(point.depth()).millimetres();
  }

  /** Along the module, above the floor and from the left wall's ribs, least and greatest each. */
  private static double[] extents(SamplePlan plan, int part) {
    Part bar = plan.parts.get(part);
    double framing =
        plan.tolerances.framing() == null ? 0 : plan.tolerances.framing().millimetres();
    double shell = plan.tolerances.shell() == null ? 0 : plan.tolerances.shell().millimetres();
    double wide = Objects.requireNonNull(bar.width()).millimetres() / 2 + framing;
    double high = Objects.requireNonNull(bar.height()).millimetres() / 2 + framing;
    double up = Objects.requireNonNull(bar.up()).millimetres();
    double front = Objects.requireNonNull(bar.front()).millimetres();
    double depth = Objects.requireNonNull(bar.depth()).millimetres();
    double out = framing + shell;
    Amount along = bar.along();
    double from = along == null ? -1e6 : along.millimetres() - wide;
    double to = along == null ? 1e6 : along.millimetres() + wide;
    // The studs' warm face is 66.3 mm inside the ribs on wall and roof.
    double roof = plan.shell.height() - 66.3;
    return bar.face() == Face.LEFT
        ? new double[] {
          from, to, up - high, up + high, 66.3 - front - depth - out, 66.3 - front + out
        }
        : new double[] {
          from, to, roof + front - out, roof + front + depth + out, up - high, up + high
        };
  }

  private static void assertSteel(
      SamplePlan plan, ModuleGeometry geometry, MetalContacts contacts, int item) {
    boolean sure = false;
    boolean perhaps = false;
    for (Face face : FACES) {
      sure |= contacts.certainlyTouches(item, face);
      perhaps |= contacts.mayTouch(item, face);
    }
    int parts = plan.parts.size();
    double clearance =
        item < parts ? geometry.clearance(item) : geometry.runClearance(item - parts);
    double tolerance =
        item < parts
            ? geometry.positionTolerance(item)
            : geometry.runPositionTolerance(item - parts);
    int metal = metal(plan, item);
    if (!Double.isNaN(clearance)) {
      assertThat(sure).isEqualTo(metal == 2 && clearance <= 0.5 + 1e-6);
      assertThat(perhaps).isEqualTo(metal > 0 && clearance - tolerance <= 0.5 + 1e-6);
    } else if (metal == 0) {
      assertThat(perhaps).isFalse();
    }
  }
}
