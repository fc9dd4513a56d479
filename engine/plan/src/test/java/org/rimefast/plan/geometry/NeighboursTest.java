package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimefast.plan.geometry.SamplePlan.at;
import static org.rimefast.plan.geometry.SamplePlan.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.rimefast.plan.Face;
import org.rimefast.plan.Material;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Run;
import org.rimefast.plan.geometry.Contact.Body;

class NeighboursTest {
  private static final List<Face> FACES = List.of(Face.values());
  private static final List<Mount> MOUNTS = List.of(Mount.values());

  /** Parts of all sizes on all faces, some without a place, and bent runs. */
  private static SamplePlan randomLayout(Random random, int parts, int runs) {
    SamplePlan plan = SamplePlan.whole();
    for (int i = 0; i < parts; i++) {
      Face face = FACES.get(random.nextInt(6));
      FaceFrame frame = FaceFrame.of(face, plan.shell);
      plan.box(
          face,
          i % 17 == 3 ? null : mm(random.nextDouble() * frame.alongExtent()),
          mm(random.nextDouble() * frame.upExtent()),
          mm(i % 13 == 0 ? 3000 * random.nextDouble() : 100 * random.nextDouble()),
          mm(i % 11 == 0 ? 2000 * random.nextDouble() : 100 * random.nextDouble()),
          mm(60 * random.nextDouble()),
          MOUNTS.get(random.nextInt(3)),
          null);
    }
    for (int i = 0; i < runs; i++) {
      Run.PathPoint[] path = new Run.PathPoint[2 + random.nextInt(4)];
      for (int p = 0; p < path.length; p++) {
        path[p] =
            at(
                FACES.get(random.nextInt(4)),
                2000 * random.nextDouble(),
                2000 * random.nextDouble(),
                60 * random.nextDouble());
      }
      plan.run(Run.Kind.EMT, i % 9 == 5 ? null : mm(10 + 20 * random.nextDouble()), path);
    }
    return plan;
  }

  @Test
  void partsWithinAreThoseThatAreNear() {
    Random random = new Random(5);
    int found = 0;
    for (int size : new int[] {0, 1, 2, 8, 9, 65, 300, 700}) {
      ModuleGeometry geometry = randomLayout(random, size, 0).geometry();
      for (int part = 0; part < size; part++) {
        double distance = random.nextInt(4) == 0 ? 0 : 600 * random.nextDouble();
        List<Integer> expected = new ArrayList<>();
        for (int other = 0; other < size; other++) {
          if (other != part && geometry.gap(part, other) <= distance) {
            expected.add(other);
          }
        }
        List<Integer> actual = new ArrayList<>();
        geometry.partsWithin(part, distance, actual::add);
        assertThat(actual).isEqualTo(expected);
        found += expected.size();
      }
    }
    assertThat(found).isGreaterThan(3000);
  }

  @Test
  void partsNearARunAreThoseThatAreNear() {
    Random random = new Random(6);
    ModuleGeometry geometry = randomLayout(random, 300, 60).geometry();
    int found = 0;
    for (int run = 0; run < 60; run++) {
      List<Integer> expected = new ArrayList<>();
      for (int part = 0; part < 300; part++) {
        if (geometry.runGap(run, part) <= 100) {
          expected.add(part);
        }
      }
      List<Integer> actual = new ArrayList<>();
      geometry.partsNearRun(run, 100, actual::add);
      assertThat(actual).isEqualTo(expected);
      found += expected.size();
    }
    assertThat(found).isGreaterThan(60);
  }

  @Test
  void contactsAreAllPairsThatAreNear() {
    ModuleGeometry geometry = randomLayout(new Random(7), 150, 40).geometry();
    List<String> expected = new ArrayList<>();
    double distance = 30;
    for (int part = 0; part < 150; part++) {
      if (geometry.clearance(part) <= distance) {
        expected.add("SHELL 0 PART " + part);
      }
    }
    for (int run = 0; run < 40; run++) {
      if (geometry.runClearance(run) <= distance) {
        expected.add("SHELL 0 RUN " + run);
      }
    }
    for (int part = 0; part < 150; part++) {
      for (int other = part + 1; other < 150; other++) {
        if (geometry.gap(part, other) <= distance) {
          expected.add("PART " + part + " PART " + other);
        }
      }
      for (int run = 0; run < 40; run++) {
        if (geometry.runGap(run, part) <= distance) {
          expected.add("PART " + part + " RUN " + run);
        }
      }
    }
    for (int run = 0; run < 40; run++) {
      for (int other = run + 1; other < 40; other++) {
        if (geometry.gapBetweenRuns(run, other) <= distance) {
          expected.add("RUN " + run + " RUN " + other);
        }
      }
    }
    List<Contact> contacts = geometry.contacts(distance);
    assertThat(contacts)
        .extracting(
            c -> "%s %d %s %d".formatted(c.a().kind(), c.a().index(), c.b().kind(), c.b().index()))
        .isEqualTo(expected);
    assertThat(contacts).extracting(c -> c.a().kind()).contains(Contact.Kind.values());
    assertThat(contacts).allMatch(c -> c.gap() <= distance);
  }

  /**
   * A steel bar behind a box reaches from the box's back to a rib: the only unbroken metal path. A
   * plastic bar, one of unknown material and a cable that is not metal outside touch as well.
   */
  @Test
  void metalContactsOfASmallLayout() {
    SamplePlan plan = SamplePlan.whole();
    int box = plan.box(Face.LEFT, 5560 + 35, 1200); // its back is 34.9 mm behind the warm face
    int bar = plan.bar(Face.LEFT, 5595, 1200, 40, 20, 31.4, 34.9, Material.STEEL);
    int plastic = plan.bar(Face.LEFT, 5595, 1170, 40, 20, 31.4, 34.9, Material.PLASTIC);
    int unknown = plan.bar(Face.LEFT, 5595, 1230, 40, 20, 31.4, 34.9, null);
    int far = plan.box(Face.LEFT, 8000, 1200);
    int conduit =
        plan.run(
            Run.Kind.EMT, mm(20), at(Face.LEFT, 5595, 1245, 10), at(Face.LEFT, 5595, 2000, 10));
    int cable =
        plan.run(
            Run.Kind.NONMETALLIC_CABLE,
            mm(10),
            at(Face.LEFT, 5595, 1155, 10),
            at(Face.LEFT, 5595, 600, 10));
    ModuleGeometry geometry = plan.geometry();
    assertThat(geometry.metalContacts())
        .extracting(Contact::a, Contact::b)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(Body.SHELL, Body.part(bar)),
            org.assertj.core.groups.Tuple.tuple(Body.part(box), Body.part(bar)),
            org.assertj.core.groups.Tuple.tuple(Body.part(box), Body.run(conduit)));
    Contact atShell = geometry.metalContacts().get(0);
    assertThat(atShell.gap()).isCloseTo(0, within(1e-9));
    assertThat(atShell.at().y()).isCloseTo(0, within(1e-9));
    assertThat(geometry.touchesShell(bar)).isTrue();
    assertThat(geometry.touchesShell(box)).isFalse();
    assertThat(geometry.touches(box, plastic)).isTrue();
    assertThat(geometry.touches(box, unknown)).isTrue();
    assertThat(geometry.touches(box, far)).isFalse();
    assertThat(geometry.runTouches(cable, box)).isTrue();
    assertThat(geometry.contacts(geometry.contactTolerance()))
        .extracting(Contact::b)
        .contains(Body.part(plastic), Body.part(unknown), Body.run(cable));
  }

  @Test
  void thePlanSaysHowCloseTouches() {
    SamplePlan plan = SamplePlan.whole();
    plan.box(Face.LEFT, 1000, 1200);
    plan.box(Face.LEFT, 1054 + 0.6, 1200);
    assertThat(plan.geometry().touches(0, 1)).isFalse();
    plan.tolerances = new org.rimefast.plan.Tolerances(null, null, null, mm(0.7));
    assertThat(plan.geometry().touches(0, 1)).isTrue();
  }

  @Test
  void nearestPointsOfPartsAndRunsAreAsFarApartAsTheGap() {
    ModuleGeometry geometry = randomLayout(new Random(8), 60, 20).geometry();
    int apart = 0;
    for (int run = 0; run < 20; run++) {
      for (int part = 0; part < 60; part++) {
        Nearest nearest = geometry.runNearest(run, part);
        if (nearest != null) {
          assertSame(nearest, geometry.runGap(run, part));
          apart++;
        }
      }
      for (int other = 0; other < 20; other++) {
        Nearest nearest = geometry.nearestBetweenRuns(run, other);
        if (nearest != null) {
          assertSame(nearest, geometry.gapBetweenRuns(run, other));
        }
      }
      ShellNearest shell = geometry.runNearestShell(run);
      if (shell != null) {
        assertSame(shell.nearest(), geometry.runClearance(run));
      }
    }
    assertThat(apart).isGreaterThan(500);
    for (int part = 0; part < 60; part++) {
      for (int other = 0; other < 60; other++) {
        Nearest nearest = geometry.nearest(part, other);
        if (nearest != null) {
          assertSame(nearest, geometry.gap(part, other));
        }
      }
      ShellNearest shell = geometry.nearestShell(part);
      if (shell != null) {
        assertSame(shell.nearest(), geometry.clearance(part));
        Cuboid box = Objects.requireNonNull(geometry.cuboid(part));
        assertThat(shell.nearest().onElement().x()).isBetween(box.minX() - 1e-9, box.maxX() + 1e-9);
      }
    }
  }

  private static void assertSame(Nearest nearest, double gap) {
    assertThat(nearest.distance()).isCloseTo(gap, within(1e-9));
    assertThat(nearest.onElement().distanceTo(nearest.onOther())).isCloseTo(gap, within(1e-9));
  }
}
