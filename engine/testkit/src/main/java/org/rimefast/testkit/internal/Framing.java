package org.rimefast.testkit.internal;

import java.util.ArrayList;
import java.util.List;
import org.rimefast.testkit.internal.Wall.Hole;

/** Frames faces: studs at 16 in, their service holes, and what stands beside openings. */
final class Framing {
  private static final long MM = Length.MILLIMETRE;
  private static final long SPACING = 16 * Length.INCH;

  private final Chance chance;
  private final List<Tree> studs = new ArrayList<>();

  Framing(Chance chance) {
    this.chance = chance;
  }

  List<Tree> studs() {
    return studs;
  }

  void frame(Wall wall) {
    boolean asDelivered = wall.holes().isEmpty() && !chance.oneIn(3);
    long first = chance.between(40 * MM, SPACING);
    long last = wall.along() - 30 * MM;
    if (asDelivered) {
      int count = (int) ((last - first) / SPACING) + 1;
      studs.add(
          stud(wall, "S" + wall.mark(), first, 0)
              .with("repeat", Tree.of("count", count).with("spacing", Length.of(SPACING))));
      for (int i = 0; i < count; i++) {
        wall.studs().add(first + i * SPACING);
      }
      return;
    }
    boolean cutAnew = chance.oneIn(2);
    int number = 0;
    for (long place : places(wall, first, last)) {
      boolean miscut = cutAnew && chance.oneIn(5);
      long off = miscut ? chance.between(4 * MM, 60 * MM) : 0;
      number++;
      studs.add(stud(wall, "S" + wall.mark() + "-" + number, place, off));
      wall.studs().add(place);
    }
  }

  private List<Long> places(Wall wall, long first, long last) {
    List<Long> places = new ArrayList<>();
    long flange = wall.build().flange();
    for (Hole hole : wall.holes()) {
      places.add(Chance.snap(hole.from() - flange));
      places.add(Chance.snap(hole.to() + flange) + Length.GRID);
    }
    List<Long> beside = List.copyOf(places);
    long place = first;
    while (place <= last) {
      long here = place;
      boolean free =
          wall.isFree(here, here, 0, wall.up(), flange)
              && beside.stream().allMatch(other -> Math.abs(other - here) > 2 * flange);
      if (free) {
        places.add(here);
      }
      // Now and then somebody reads the tape wrong.
      place += SPACING + (chance.oneIn(25) ? chance.between(MM, 200 * MM) : 0);
    }
    places.removeIf(one -> one < flange || one > wall.along() - flange);
    return places.stream().sorted().toList();
  }

  private Tree stud(Wall wall, String id, long along, long off) {
    Tree stud = Tree.of("id", id).with("face", wall.face());
    stud.with("along", chance.place(along));
    chance.maybe(stud, "material", "steel");
    if (chance.oneIn(30)) {
      chance.maybe(stud, "section", "162S125-18");
    }
    List<Tree> holes = holes(wall, off);
    return holes.isEmpty() ? stud : stud.with("holes", holes);
  }

  private List<Tree> holes(Wall wall, long off) {
    List<Tree> holes = new ArrayList<>();
    for (long level = level(0);
        level + off < wall.up() - 10 * Length.INCH;
        level += 24 * Length.INCH) {
      Tree hole =
          Tree.of("up", Length.of(level + off))
              .with("width", Length.of(3 * Length.INCH / 4))
              .with("height", new Length(4 * Length.INCH, null, "in"));
      if (chance.oneIn(3)) {
        chance.maybe(hole, "insert", chance.oneIn(4) ? "none" : "bushing");
      }
      if (chance.oneIn(6)) {
        chance.maybe(hole, "plate", chance.oneIn(3) ? 0L : Length.INCH / 16);
      }
      holes.add(hole);
    }
    return holes;
  }

  /** The level of a row of service holes, counted from 0. */
  static long level(int row) {
    return 24 * Length.INCH * (1 + row);
  }
}
