package org.rimefast.testkit.internal;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.testkit.internal.Wall.Box;

/** Hangs boxes on walls, with what holds them, what is in them and what somebody put behind. */
final class Boxes {
  private static final long MM = Length.MILLIMETRE;
  private static final long INCH = Length.INCH;

  /** What a box is bought as, and its outside. */
  private record Size(String kind, String name, long width, long height, long depth) {}

  private static final List<Size> SIZES =
      List.of(
          new Size("handy", "handy 4 x 2-1/8 x 1-7/8 in", 17 * INCH / 8, 4 * INCH, 15 * INCH / 8),
          new Size("device", "3 x 2 x 2-1/2 in", 2 * INCH, 3 * INCH, 5 * INCH / 2),
          new Size("device", "3 x 2 x 2 in", 2 * INCH, 3 * INCH, 2 * INCH),
          new Size("square", "4 x 4 x 1-1/2 in", 4 * INCH, 4 * INCH, 3 * INCH / 2),
          new Size("square", "4 x 4 x 2-1/8 in", 4 * INCH, 4 * INCH, 17 * INCH / 8));

  private final Chance chance;
  private final List<Tree> boxes = new ArrayList<>();
  private final List<Tree> brackets = new ArrayList<>();
  private final List<Tree> bars = new ArrayList<>();
  private int number;

  Boxes(Chance chance) {
    this.chance = chance;
  }

  List<Tree> boxes() {
    return boxes;
  }

  List<Tree> brackets() {
    return brackets;
  }

  List<Tree> bars() {
    return bars;
  }

  /** Receptacles as the customer asks for them, a switch above some, backing here and there. */
  void hang(Wall wall) {
    Chance style = chance.of("boxes of " + wall.face());
    long spacing = style.pick(List.of(48 * INCH, 44 * INCH, 1112 * MM, 72 * INCH));
    long height = style.pick(List.of(18 * INCH, 12 * INCH, Chance.snap(450 * MM)));
    Size size = style.pick(SIZES);
    String mount = style.oneIn(9) ? "surface" : style.oneIn(8) ? "covered" : "flush";
    long place = chance.between(200 * MM, spacing);
    for (; place < wall.along(); place += spacing) {
      hang(wall, place, height + chance.between(0, 9 * Length.GRID), size, mount, false);
      if (chance.oneIn(3)) {
        long level = 48 * INCH + chance.between(0, 9 * Length.GRID);
        hang(wall, place + 260 * MM, level, chance.pick(SIZES), mount, true);
      }
      if (chance.oneIn(6)) {
        backing(wall, place);
      }
    }
  }

  private void hang(Wall wall, long asked, long up, Size size, String mount, boolean isSwitch) {
    int how = chance.below(10);
    boolean besideStud = how < 5;
    boolean inBay = how >= 5 && how < 8;
    long stud = wall.studBefore(asked);
    long beside = stud + (wall.build().flange() + size.width()) / 2;
    long along = besideStud && stud < asked ? beside : inBay ? wall.bay(asked) : Chance.snap(asked);
    long half = size.width() / 2;
    if (!wall.isFree(
        along - half, along + half, up - size.height() / 2, up + size.height() / 2, 60 * MM)) {
      return;
    }
    String id = (isSwitch ? "SW" : "R") + wall.mark() + ++number;
    Tree box = Tree.of("id", id).with("kind", size.kind());
    if (chance.oneIn(4)) {
      box.with("width", size.width()).with("height", size.height());
      chance.maybe(box, "depth", size.depth());
      chance.maybe(box, "volume", chance.pick(List.of("18 in3", "300 cm3", "14.5 in3")));
    } else {
      box.with("size", size.name());
    }
    box.with("face", wall.face());
    chance.maybe(box, "along", chance.place(along));
    box.with("up", chance.place(up));
    chance.maybe(box, "mount", mount);
    chance.maybe(box, "material", chance.oneIn(6) ? "plastic" : "steel");
    fittings(box, isSwitch);
    boxes.add(box);
    wall.boxes().add(new Box(id, along, up, size.width(), size.height(), isSwitch));
    if (!besideStud && !chance.oneIn(9) && !mount.equals("surface")) {
      bracket(wall, id, along + half, up);
    }
    if (chance.oneIn(12)) {
      metalBar(wall, along, up);
    }
  }

  private void fittings(Tree box, boolean isSwitch) {
    Tree device = Tree.of("kind", isSwitch ? "switch" : "receptacle");
    if (chance.oneIn(9)) {
      device.with("count", 2);
    }
    chance.maybe(
        device, "behind", new Length(chance.pick(List.of(8L, 9L, 12L)) * INCH / 8, null, "in"));
    chance.maybe(box, "devices", List.of(device));
    chance.maybe(box, "clamps", chance.oneIn(3) ? "internal" : "none");
    chance.maybe(box, "fixtureStuds", 0);
    chance.maybe(box, "wireConnectors", chance.below(4));
  }

  private void bracket(Wall wall, String held, long edge, long up) {
    boolean toTheSteel = chance.oneIn(10);
    long depth =
        toTheSteel ? wall.build().stud() + wall.build().standoff() - Length.GRID : 38 * MM - 90;
    Tree bracket = Tree.of("id", "B" + held);
    chance.maybe(bracket, "holds", held);
    bracket.with("face", wall.face()).with("along", edge + MM).with("up", up);
    bracket.with("width", 2 * MM).with("height", 60 * MM);
    chance.maybe(bracket, "depth", Chance.snap(depth));
    bracket.with("front", 8 * Length.GRID);
    brackets.add(chance.maybe(bracket, "material", "steel"));
  }

  /** Flat metal from stud to stud behind a box: it was quick, and it carries cold. */
  private void metalBar(Wall wall, long along, long up) {
    long low = Math.max(30 * MM, along - 8 * INCH);
    long high = Math.min(wall.along() - 30 * MM, along + 8 * INCH);
    boolean against = chance.oneIn(4);
    long front =
        against ? wall.build().stud() + wall.build().standoff() - 3 * MM : wall.build().stud();
    bar(wall, (low + high) / 2, up, high - low, 40 * MM, 3 * MM, Chance.snap(front), "steel");
  }

  private void backing(Wall wall, long place) {
    long from = wall.studBefore(place);
    long to = wall.studBefore(place + 16 * INCH);
    long up = chance.between(1400 * MM, 1800 * MM);
    if (to - from > 80 * MM && wall.isFree(from, to, up, up, 200 * MM)) {
      long width = to - from - wall.build().flange();
      bar(wall, (from + to) / 2, up, width, 300 * MM, 18 * MM, 0, chance.oneIn(5) ? null : "wood");
    }
  }

  private void bar(
      Wall wall,
      long along,
      long up,
      long width,
      long height,
      long depth,
      long front,
      @Nullable String material) {
    if (!wall.isFree(along, along, up - height / 2, up + height / 2, 0)) {
      return;
    }
    Tree bar = Tree.of("id", "bar" + wall.mark() + ++number).with("face", wall.face());
    bar.with("along", along).with("up", up).with("width", width).with("height", height);
    bar.with("depth", depth);
    chance.maybe(bar, "front", front);
    bars.add(chance.maybe(bar, "material", material));
  }

  /** A box in the roof that a luminaire is wired from. */
  void overhead(Wall roof, long along, long across) {
    Tree box = Tree.of("id", "O" + roof.mark() + ++number).with("kind", "octagon");
    box.with("size", chance.oneIn(2) ? "octagon 4 x 1-1/2 in" : "octagon 4 x 2-1/8 in");
    box.with("face", roof.face()).with("along", chance.place(along)).with("up", across);
    chance.maybe(box, "mount", chance.pick(List.of("flush", "covered", "surface")));
    chance.maybe(box, "material", "steel");
    chance.maybe(box, "devices", List.of());
    boxes.add(box);
    if (chance.oneIn(3)) {
      metalBar(roof, along, across);
    }
  }

  /** A deep box behind a panel, which the panel is fed from. */
  Box junction(Wall wall, long along, long up) {
    String id = "J" + wall.mark() + ++number;
    long side = 47 * INCH / 10;
    Tree box = Tree.of("id", id).with("kind", "junction").with("width", side).with("height", side);
    box.with("depth", 17 * INCH / 8).with("face", wall.face());
    box.with("along", along).with("up", up);
    chance.maybe(box, "mount", "covered");
    box.with("material", "steel").with("devices", List.of());
    chance.maybe(box, "volume", "42 in3");
    boxes.add(box);
    return new Box(id, along, up, side, side, false);
  }
}
