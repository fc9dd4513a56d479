package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimefast.plan.geometry.SamplePlan.at;
import static org.rimefast.plan.geometry.SamplePlan.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.rimefast.plan.Door;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild.Ribs;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Opening;
import org.rimefast.plan.Part;
import org.rimefast.plan.Placement;
import org.rimefast.plan.Run;
import org.rimefast.plan.ShellSize;
import org.rimefast.plan.StudSection;
import org.rimefast.plan.Tolerances;

class RoomSpaceTest {
  private static final int LENGTH = 150;
  private static final int WIDTH = 100;
  private static final int HEIGHT = 90;
  private static final int INSET = 5; // lining's room side inside the ribs
  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final List<Face> WALLS = List.of(Face.LEFT, Face.RIGHT, Face.FRONT, Face.REAR);

  private static SamplePlan room() {
    SamplePlan plan = new SamplePlan();
    plan.shell = new ShellSize("small", LENGTH, WIDTH, HEIGHT);
    StudSection stud = new StudSection("test", 3, 2, 1);
    for (Face face : Face.values()) {
      plan.face(face, SamplePlan.FLAT, null, mm(1), Ribs.UPRIGHT, stud, mm(1));
    }
    return plan;
  }

  private static int surfacePart(SamplePlan plan, Random random, Face face, double shift) {
    FaceFrame frame = FaceFrame.of(face, plan.shell);
    int width = 1 + random.nextInt(20);
    int height = 1 + random.nextInt(20);
    int along = INSET + random.nextInt((int) frame.alongExtent() - 2 * INSET - width);
    int up = random.nextInt((int) frame.upExtent() - height);
    return plan.box(
        face,
        mm(along + width / 2.0 + shift * random.nextDouble()),
        mm(up + height / 2.0),
        mm(width),
        mm(height),
        mm(1 + random.nextInt(25)),
        Mount.SURFACE,
        null);
  }

  @Test
  void theSpaceBeforeAPartIsFreeWhereTryingEveryPlaceAndTheOverlayLibraryFindOne() {
    Random random = new Random(61);
    int free = 0;
    for (int round = 0; round < 2_000; round++) {
      SamplePlan plan = room();
      int part = surfacePart(plan, random, WALLS.get(random.nextInt(4)), 0);
      for (int i = random.nextInt(7); i > 0; i--) {
        surfacePart(plan, random, Face.values()[random.nextInt(5)], 0);
      }
      ModuleGeometry geometry = plan.geometry();
      RoomSpace space = RoomSpace.of(geometry);
      int width = 5 + random.nextInt(50);
      int depth = 5 + random.nextInt(80);
      int height = 5 + random.nextInt(85);
      boolean tried = isFree(plan, geometry, part, width, depth, height, false);
      boolean overlaid = isFree(plan, geometry, part, width, depth, height, true);
      assertThat(overlaid).isEqualTo(tried);
      assertThat(space.isCertainlyFreeBefore(part, width, depth, height))
          .as("%d: part %s, %d x %d x %d", round, geometry.cuboid(part), width, depth, height)
          .isEqualTo(tried);
      assertThat(space.mayBeFreeBefore(part, width, depth, height)).isEqualTo(tried);
      free += tried ? 1 : 0;
    }
    assertThat(free).isBetween(300, 1_700);
  }

  /** Tries every place a whole millimetre from the part's end; all places are whole here. */
  private static boolean isFree(
      SamplePlan plan,
      ModuleGeometry geometry,
      int part,
      int width,
      int depth,
      int height,
      boolean overlaid) {
    Face face = plan.parts.get(part).face();
    FaceFrame frame = geometry.frame(face);
    Cuboid own = Objects.requireNonNull(geometry.cuboid(part));
    double a = frame.along(own.minX(), own.minY());
    double b = frame.along(own.maxX(), own.maxY());
    double from = Math.min(a, b);
    double to = Math.max(a, b);
    double wide = Math.max(width, to - from);
    double out =
        Math.min(
            frame.out(own.minX(), own.minY(), own.minZ()),
            frame.out(own.maxX(), own.maxY(), own.maxZ()));
    if (height > HEIGHT - INSET) {
      return false;
    }
    for (double p = to - wide; p <= from; p++) {
      Cuboid space = frame.toModule(p, 0, out - depth, p + wide, height, out);
      boolean inside =
          space.minX() >= INSET
              && space.minY() >= INSET
              && space.maxX() <= LENGTH - INSET
              && space.maxY() <= WIDTH - INSET;
      if (inside
          && (overlaid
              ? isFreeInPlan(geometry, plan, part, space)
              : isFree(geometry, plan, part, space))) {
        return true;
      }
    }
    return false;
  }

  private static boolean isFree(ModuleGeometry geometry, SamplePlan plan, int part, Cuboid space) {
    for (int other = 0; other < plan.parts.size(); other++) {
      Cuboid box = Objects.requireNonNull(geometry.cuboid(other));
      if (other != part
          && box.minX() < space.maxX()
          && space.minX() < box.maxX()
          && box.minY() < space.maxY()
          && space.minY() < box.maxY()
          && box.minZ() < space.maxZ()
          && space.minZ() < box.maxZ()) {
        return false;
      }
    }
    return true;
  }

  private static boolean isFreeInPlan(
      ModuleGeometry geometry, SamplePlan plan, int part, Cuboid space) {
    Geometry floor =
        FACTORY.toGeometry(new Envelope(space.minX(), space.maxX(), space.minY(), space.maxY()));
    for (int other = 0; other < plan.parts.size(); other++) {
      Cuboid box = Objects.requireNonNull(geometry.cuboid(other));
      if (other != part && box.minZ() < space.maxZ() && box.maxZ() > space.minZ()) {
        Geometry below =
            FACTORY.toGeometry(new Envelope(box.minX(), box.maxX(), box.minY(), box.maxY()));
        if (floor.intersection(below).getArea() > 1e-9) {
          return false;
        }
      }
    }
    return true;
  }

  /** What is said of a drawing with tolerances holds of whatever is built within them. */
  @Test
  void whatIsCertainHoldsOfWhateverIsBuilt() {
    Random random = new Random(62);
    int certain = 0;
    int never = 0;
    for (int round = 0; round < 2_000; round++) {
      SamplePlan drawn = room();
      drawn.tolerances = new Tolerances(mm(0.5), null, mm(1), null);
      SamplePlan built = room();
      int seed = random.nextInt();
      Random first = new Random(seed);
      int part = surfacePart(drawn, first, WALLS.get(first.nextInt(4)), 0);
      for (int i = first.nextInt(5); i > 0; i--) {
        surfacePart(drawn, first, Face.values()[first.nextInt(5)], 0);
      }
      Random second = new Random(seed);
      builtPart(built, second, WALLS.get(second.nextInt(4)), random);
      for (int i = second.nextInt(5); i > 0; i--) {
        builtPart(built, second, Face.values()[second.nextInt(5)], random);
      }
      RoomSpace said = RoomSpace.of(drawn.geometry());
      RoomSpace real = RoomSpace.of(built.geometry());
      int width = 5 + random.nextInt(30);
      int depth = 5 + random.nextInt(60);
      if (said.isCertainlyFreeBefore(part, width, depth, 60)) {
        certain++;
        assertThat(real.isCertainlyFreeBefore(part, width, depth, 60)).isTrue();
      } else if (!said.mayBeFreeBefore(part, width, depth, 60)) {
        never++;
        assertThat(real.mayBeFreeBefore(part, width, depth, 60)).isFalse();
      }
      if (said.certainlyOpens(part)) {
        assertThat(real.certainlyOpens(part)).isTrue();
      } else if (!said.mayOpen(part)) {
        assertThat(real.mayOpen(part)).isFalse();
      }
    }
    assertThat(certain).isGreaterThan(40);
    assertThat(never).isGreaterThan(40);
  }

  private static void builtPart(SamplePlan plan, Random same, Face face, Random off) {
    surfacePart(plan, same, face, 0);
    int last = plan.parts.size() - 1;
    Part.Box box = (Part.Box) plan.parts.get(last);
    Placement place = box.placement();
    plan.parts.set(
        last,
        new Part.Box(
            box.id(),
            box.pointer(),
            box.kind(),
            null,
            place.at(
                mm(Objects.requireNonNull(place.along()).millimetres() + shift(off)),
                mm(Objects.requireNonNull(place.up()).millimetres() + shift(off))),
            box.mount()));
  }

  private static double shift(Random random) {
    return Math.round(2000 * random.nextDouble() - 1000) / 1000.0;
  }

  /** Points along the bars are tried one by one; near misses are left to the corners of a bar. */
  @Test
  void runsThatCrossTheSpaceAreInItsWay() {
    Random random = new Random(63);
    int free = 0;
    int blocked = 0;
    for (int round = 0; round < 2_000; round++) {
      SamplePlan plan = room();
      int part = surfacePart(plan, random, Face.LEFT, 0);
      double radius = 1 + random.nextInt(3);
      double[] ends = new double[6];
      for (int i = 0; i < 6; i += 3) {
        ends[i] = 10 + random.nextInt(LENGTH - 20);
        ends[i + 1] = 5 + random.nextInt(HEIGHT - 10);
        ends[i + 2] = -random.nextInt(70) - 10;
      }
      plan.run(
          Run.Kind.EMT,
          mm(2 * radius),
          at(Face.LEFT, ends[0], ends[1], ends[2]),
          at(Face.LEFT, ends[3], ends[4], ends[5]));
      ModuleGeometry geometry = plan.geometry();
      Cuboid own = Objects.requireNonNull(geometry.cuboid(part));
      double wide = Math.max(30, own.maxX() - own.minX());
      boolean anyFree = false;
      boolean anyRoomy = false;
      for (double p = Math.max(INSET, own.maxX() - wide);
          p <= Math.min(own.minX(), LENGTH - INSET - wide);
          p += 0.25) {
        double gap = gap(ends, p, p + wide, own.maxY(), own.maxY() + 40);
        anyFree |= gap >= radius + 0.05;
        // The corners that a bar is given reach this far past it.
        anyRoomy |= gap >= radius * Math.sqrt(3) + 0.3;
      }
      RoomSpace space = RoomSpace.of(geometry);
      if (space.isCertainlyFreeBefore(part, 30, 40, 70)) {
        free++;
        assertThat(anyFreeWithin(ends, own, wide, radius)).isTrue();
      }
      if (!space.mayBeFreeBefore(part, 30, 40, 70)) {
        blocked++;
        assertThat(anyFree).isFalse();
      }
      if (anyRoomy) {
        assertThat(space.isCertainlyFreeBefore(part, 30, 40, 70)).as("round %d", round).isTrue();
      }
    }
    assertThat(free).isGreaterThan(200);
    assertThat(blocked).isGreaterThan(50);
  }

  private static boolean anyFreeWithin(double[] ends, Cuboid own, double wide, double radius) {
    for (double p = own.maxX() - wide; p <= own.minX() + 1e-9; p += 0.125) {
      if (gap(ends, p, p + wide, own.maxY(), own.maxY() + 40) >= radius - 0.2) {
        return true;
      }
    }
    return false;
  }

  /** The distance of points along a middle line from a box on the floor, 70 high. */
  private static double gap(double[] ends, double minX, double maxX, double minY, double maxY) {
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= 400; i++) {
      double t = i / 400.0;
      double x = ends[0] + t * (ends[3] - ends[0]);
      double z = ends[1] + t * (ends[4] - ends[1]);
      double y = 4 - (ends[2] + t * (ends[5] - ends[2]));
      double dx = Math.max(0, Math.max(minX - x, x - maxX));
      double dy = Math.max(0, Math.max(minY - y, y - maxY));
      double dz = Math.max(0, z - 70);
      best = Math.min(best, Math.sqrt(dx * dx + dy * dy + dz * dz));
    }
    return best;
  }

  @Test
  void aLeafSweepsAQuarterDiscAsTheOverlayLibraryDrawsIt() {
    Random random = new Random(64);
    int free = 0;
    int blocked = 0;
    for (int round = 0; round < 2_000; round++) {
      SamplePlan plan = room();
      Face face = WALLS.get(random.nextInt(4));
      FaceFrame frame = FaceFrame.of(face, plan.shell);
      int width = 20 + random.nextInt(30);
      int from = 10 + random.nextInt((int) frame.alongExtent() - 20 - width);
      int height = 30 + random.nextInt(40);
      Door.Hinge hinge = Door.Hinge.values()[random.nextInt(2)];
      Opening opening =
          new Opening(
              "D",
              "/openings/0",
              face,
              mm(from),
              mm(0),
              mm(width),
              mm(height),
              new Door(hinge, Door.Swing.INWARD));
      plan.openings.add(opening);
      for (int i = 1 + random.nextInt(3); i > 0; i--) {
        surfacePart(plan, random, Face.values()[random.nextInt(5)], 0);
      }
      ModuleGeometry geometry = plan.geometry();
      Geometry disc = disc(frame, hinge == Door.Hinge.LEFT ? from : from + width, width, hinge);
      double most = 0;
      for (int part = 0; part < plan.parts.size(); part++) {
        Cuboid box = Objects.requireNonNull(geometry.cuboid(part));
        if (box.minZ() < height) {
          most =
              Math.max(
                  most,
                  disc.intersection(
                          FACTORY.toGeometry(
                              new Envelope(box.minX(), box.maxX(), box.minY(), box.maxY())))
                      .getArea());
        }
      }
      RoomSpace space = RoomSpace.of(geometry);
      boolean said = space.isSwingCertainlyFree(opening);
      assertThat(space.maySwingBeFree(opening)).isEqualTo(said);
      if (most > 1e-9) {
        blocked++;
        assertThat(said).as("round %d", round).isFalse();
        assertThat(space.beforeOpening(opening)).isNotEmpty();
      } else if (most == 0) {
        // The library's disc has corners; what only the arc between two of them reaches is left
        // out.
        free += said ? 1 : 0;
        assertThat(said || nearlyReached(geometry, plan, disc, height)).isTrue();
      }
    }
    assertThat(free).isGreaterThan(200);
    assertThat(blocked).isGreaterThan(200);
  }

  private static boolean nearlyReached(
      ModuleGeometry geometry, SamplePlan plan, Geometry disc, int height) {
    for (int part = 0; part < plan.parts.size(); part++) {
      Cuboid box = Objects.requireNonNull(geometry.cuboid(part));
      Geometry below =
          FACTORY.toGeometry(new Envelope(box.minX(), box.maxX(), box.minY(), box.maxY()));
      if (box.minZ() < height && disc.distance(below) < 0.01) {
        return true;
      }
    }
    return false;
  }

  private static Geometry disc(FaceFrame frame, int hinge, int radius, Door.Hinge side) {
    List<Coordinate> corners = new ArrayList<>();
    Point centre = frame.toModule(hinge, 0, -INSET);
    corners.add(new Coordinate(centre.x(), centre.y()));
    for (int i = 0; i <= 200; i++) {
      double angle = Math.PI / 2 * i / 200;
      double along = hinge + (side == Door.Hinge.LEFT ? 1 : -1) * radius * Math.cos(angle);
      Point at = frame.toModule(along, 0, -INSET - radius * Math.sin(angle));
      corners.add(new Coordinate(at.x(), at.y()));
    }
    corners.add(corners.get(0));
    return FACTORY.createPolygon(corners.toArray(new Coordinate[0]));
  }

  @Test
  void anOpeningWithoutADoorIsUndecidedOnlyWhereItReachesTheFloor() {
    SamplePlan plan = room();
    plan.opening(Face.LEFT, 20, 0, 30, 60);
    plan.shell = new ShellSize("high", LENGTH, WIDTH, 2000);
    plan.opening(Face.RIGHT, 20, 900, 30, 60);
    RoomSpace space = RoomSpace.of(plan.geometry());
    Opening door = plan.openings.get(0);
    Opening window = plan.openings.get(1);
    assertThat(space.isSwingCertainlyFree(door)).isFalse();
    assertThat(space.maySwingBeFree(door)).isTrue();
    assertThat(space.missingForSwing(door)).containsExactly("/openings/0/door");
    assertThat(space.isSwingCertainlyFree(window)).isTrue();
    assertThat(space.missingForSwing(window)).isEmpty();
  }

  @Test
  void whatStandsInTheWallHindersNothing() {
    SamplePlan plan = SamplePlan.whole();
    plan.tolerances = new Tolerances(null, null, mm(5), null);
    int panel =
        plan.box(Face.LEFT, mm(3000), mm(1500), mm(360), mm(600), mm(95), Mount.SURFACE, null);
    plan.box(Face.LEFT, 3100, 400);
    plan.run(Run.Kind.EMT, mm(20), at(Face.LEFT, 2000, 500, 15), at(Face.LEFT, 4000, 500, 15));
    RoomSpace space = RoomSpace.of(plan.geometry());
    assertThat(space.isCertainlyFreeBefore(panel, 762, 914.4, 1981.2)).isTrue();
    int heater =
        plan.box(Face.LEFT, mm(3100), mm(400), mm(200), mm(300), mm(200), Mount.SURFACE, null);
    space = RoomSpace.of(plan.geometry());
    assertThat(space.mayBeFreeBefore(panel, 762, 914.4, 1981.2)).isFalse();
    assertThat(space.before(panel, 762, 914.4, 1981.2)).containsExactly(heater);
  }
}
