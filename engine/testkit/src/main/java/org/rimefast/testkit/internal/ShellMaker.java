package org.rimefast.testkit.internal;

import java.util.ArrayList;
import java.util.List;
import org.rimefast.testkit.internal.Wall.Build;
import org.rimefast.testkit.internal.Wall.Hole;
import org.rimefast.testkit.internal.Wall.Sheet;

/** Makes the shell, how its faces are built up, and what is cut in it. */
final class ShellMaker {
  private static final long MM = Length.MILLIMETRE;

  /** Off the grid, so that no rib begins exactly where a part does. */
  private static final long ODD = 254;

  // Outer, web, inner, depth in mm: typical profiles (common practice, no source).
  private static final Sheet SIDE = sheet(720_000, 680_000, 700_000, 360_000);
  private static final Sheet END = sheet(1_100_000, 180_000, 1_040_000, 456_000);
  private static final Sheet ROOF = sheet(910_000, 135_000, 910_000, 200_000);
  private static final Sheet FLAT = sheet(0, 0, 0, 0);

  private final Chance chance;
  private final long length;
  private final long width;
  private final long height;
  private final Tree faces = new Tree();
  private final List<Tree> openings = new ArrayList<>();
  private final Build build;

  /** Typical insides, in mm; as measured, each is up to 5 mm off. */
  ShellMaker(Chance chance, long typicalLength, long typicalHeight) {
    this.chance = chance;
    length = measured(typicalLength);
    width = measured(2352 * MM);
    height = measured(typicalHeight);
    boolean deep = chance.oneIn(12);
    build =
        new Build(
            chance.oneIn(8)
                ? chance.pick(List.of(0L, chance.between(MM, 8 * MM)))
                : chance.between(12 * MM, 46 * MM),
            deep ? 5 * Length.INCH / 2 : 13 * Length.INCH / 8,
            5 * Length.INCH / 4,
            chance.pick(List.of(4, 4, 4, 5, 3)) * Length.INCH / 8);
    Tree common = new Tree();
    chance.maybe(common, "sheet", chance.pick(List.of(16_000L, 20_000L)));
    chance.maybe(common, "standoff", chance.place(build.standoff()));
    chance.maybe(
        common, "stud", deep ? "250S125-33" : chance.pick(List.of("162S125-33", "162S125-27")));
    chance.maybe(common, "lining", build.lining());
    chance.maybe(common, "foam", foam(2));
    faces.with("default", common);
  }

  private static Sheet sheet(long outer, long web, long inner, long depth) {
    return new Sheet(outer, web, inner, depth, 0);
  }

  private long measured(long typical) {
    return chance.between(typical - 5 * MM, typical + 5 * MM);
  }

  long length() {
    return length;
  }

  long width() {
    return width;
  }

  Tree shell(String size) {
    return Tree.of("size", size)
        .with(
            "inside",
            new Tree().with("length", length).with("width", width).with("height", height));
  }

  Tree faces() {
    return faces;
  }

  List<Tree> openings() {
    return openings;
  }

  private Tree foam(int least) {
    Tree foam = new Tree();
    chance.maybe(foam, "kind", chance.oneIn(14) ? "fibrous" : "closed-cell");
    long thickness =
        chance.oneIn(8) ? 38 * MM + Length.GRID : (least * 2L + chance.below(3)) * Length.INCH / 2;
    chance.maybe(foam, "thickness", thickness);
    return chance.maybe(foam, "conductivity", "0.025 W/(m K)");
  }

  /** A face of the shell, its entry in the plan and the openings in it. */
  Wall wall(String face, String mark) {
    boolean side = face.equals("left") || face.equals("right");
    boolean roof = face.equals("roof");
    boolean doors = face.equals("rear");
    Tree entry = new Tree();
    Sheet typical = side ? SIDE : roof ? ROOF : doors && chance.oneIn(2) ? FLAT : END;
    Sheet sheet = profile(entry, typical, side ? "side wall" : roof ? "roof" : "front wall");
    // Level ribs begin up the face.
    boolean level = doors && sheet.depth() > 0 && chance.oneIn(2);
    if (level) {
      entry.with("ribs", "level");
    }
    if (sheet.depth() > 0) {
      chance.maybe(entry, "phase", chance.place(sheet.phase()));
    }
    if (roof) {
      chance.maybe(entry, "foam", foam(3));
    }
    faces.with(face, entry);
    boolean lengthwise = side || roof;
    Wall wall =
        new Wall(
            face,
            mark,
            lengthwise ? length : width,
            roof ? width : height,
            level ? FLAT : sheet,
            build);
    if (!roof) {
      cut(wall);
    }
    return wall;
  }

  private Sheet profile(Tree entry, Sheet typical, String name) {
    if (typical.depth() == 0) {
      chance.maybe(entry, "profile", "flat");
      return typical;
    }
    Sheet sheet = typical;
    if (chance.oneIn(4)) {
      // As measured: a little off the typical one.
      sheet =
          sheet(
              Chance.snap(typical.outer()) + chance.below(3) * 4L * Length.GRID,
              Chance.snap(typical.web()),
              Chance.snap(typical.inner()) + chance.below(3) * 4L * Length.GRID,
              Chance.snap(typical.depth()) + chance.below(3) * Length.GRID);
      Tree own =
          new Tree()
              .with("outer", sheet.outer())
              .with("web", sheet.web())
              .with("inner", sheet.inner())
              .with("depth", sheet.depth());
      entry.with("profile", own);
    } else {
      chance.maybe(entry, "profile", name);
    }
    long phase = chance.between(0, sheet.pitch() - MM) + ODD;
    return new Sheet(sheet.outer(), sheet.web(), sheet.inner(), sheet.depth(), phase);
  }

  private void cut(Wall wall) {
    long reach = wall.along();
    if (wall.face().equals("rear") || (wall.face().equals("front") && chance.oneIn(2))) {
      return;
    }
    // One place for an opening in each 3 m, so that none overlaps another.
    long bay = Math.min(reach, 3000 * MM);
    for (long from = 0; from + bay <= reach; from += bay) {
      int what = chance.below(8);
      if (what < 2) {
        long start = from + chance.between(300 * MM, bay - 1300 * MM);
        boolean door = what == 0;
        long wide = chance.between(700 * MM, 950 * MM);
        long sill = door ? 0L : chance.between(850 * MM, 1100 * MM);
        long high = door ? 80 * Length.INCH : chance.between(600 * MM, 900 * MM);
        Tree opening =
            Tree.of("id", (door ? "D" : "W") + wall.mark() + openings.size())
                .with("face", wall.face())
                .with("from", chance.place(start))
                .with("sill", sill)
                .with("width", wide)
                .with("height", high);
        if (door) {
          chance.maybe(
              opening,
              "door",
              Tree.of("hinge", chance.pick(List.of("left", "right")))
                  .with("opens", chance.pick(List.of("inward", "outward"))));
        }
        openings.add(opening);
        wall.holes().add(new Hole(start, start + wide, sill, sill + high));
      }
    }
  }
}
