package org.rimefast.testkit.internal;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.testkit.internal.Wall.Box;
import org.rimefast.testkit.internal.Wiring.Circuit;

/** Takes runs from box to box: along studs through their service holes, up, around and over. */
final class Routes {
  private static final long MM = Length.MILLIMETRE;

  private final Chance chance;
  private final Wiring wiring;

  Routes(Chance chance, Wiring wiring) {
    this.chance = chance;
    this.wiring = wiring;
  }

  /** Along one wall. */
  void along(Circuit circuit, Wall wall, Box from, Box to) {
    long depth = wiring.depth(wall);
    long level = level(wall, from, to);
    Path path = out(wall, from, level, depth);
    String side = in(path, wall, to, level, depth);
    wiring.run(circuit, path, from.id(), "above", to.id(), side);
  }

  /** Around an inside corner, from the last box of a wall to the first of the one to its right. */
  void around(Circuit circuit, Wall wall, Wall next, Box from, Box to) {
    long depth = wiring.depth(wall);
    long level = Math.max(level(wall, from, from), level(next, to, to));
    Path path = out(wall, from, level, depth);
    long corner = chance.between(70 * MM, 160 * MM);
    path.to(wall.face(), wall.along() - corner, level, depth);
    path.to(next.face(), corner, level, depth);
    String side = in(path, next, to, level, depth);
    wiring.run(circuit, path, from.id(), "above", to.id(), side);
  }

  /** Up a wall, over the roof and down into a luminaire. */
  void over(
      Circuit circuit, Wall wall, Wall roof, Box from, String luminaire, long x, long across) {
    long depth = wiring.depth(wall);
    long above = chance.oneIn(8) ? wiring.depth(roof) : roof.build().stud() / 2;
    boolean left = wall.face().equals("left");
    long here = left ? from.along() : roof.along() - from.along();
    long edge = chance.between(70 * MM, 160 * MM);
    long start = left ? edge : roof.up() - edge;
    Path path = new Path().to(wall.face(), from.along(), from.top(), depth);
    path.to(wall.face(), from.along(), wall.up() - edge, depth);
    path.to(roof.face(), here, start, above).to(roof.face(), x, start, above);
    path.to(roof.face(), x, across, above);
    path.to(roof.face(), x, across, -roof.build().lining());
    wiring.run(circuit, path, from.id(), "above", luminaire, "back");
  }

  /** Straight out of a junction box into the panel before it. */
  void feed(Circuit circuit, Wall wall, Box junction, String panel) {
    Path path =
        new Path().to(wall.face(), junction.along(), junction.up(), wall.build().stud() / 2);
    path.to(wall.face(), junction.along(), junction.up(), -wall.build().lining());
    wiring.run(circuit, path, junction.id(), null, panel, "back");
  }

  /** A run that only crosses the room, as somebody else's does. */
  void stray(Circuit circuit, Wall wall, @Nullable Box near) {
    long from = near == null ? chance.between(0, wall.along() / 2) : near.along();
    long level = chance.between(300 * MM, wall.up() - 200 * MM);
    long depth = wiring.depth(wall);
    Path path = new Path().to(wall.face(), from, level, depth);
    long to = Math.min(wall.along(), from + chance.between(400 * MM, 2500 * MM));
    path.to(wall.face(), to, level + chance.between(0, 120 * MM), depth);
    wiring.run(circuit, path, null, null, null, null);
  }

  private long level(Wall wall, Box from, Box to) {
    long level = Framing.level(from.isSwitch() || to.isSwitch() ? 2 : 1);
    long low = Math.min(from.along(), to.along());
    long high = Math.max(from.along(), to.along());
    boolean blocked =
        wall.holes().stream()
            .anyMatch(
                hole ->
                    low < hole.to()
                        && high > hole.from()
                        && level < hole.head()
                        && level > hole.sill());
    return blocked ? wall.up() - chance.between(90 * MM, 200 * MM) : level;
  }

  private static Path out(Wall wall, Box from, long level, long depth) {
    return new Path()
        .to(wall.face(), from.along(), from.top(), depth)
        .to(wall.face(), from.along(), level, depth);
  }

  /** The last part of a way into a box, and the side by which it enters. */
  private String in(Path path, Wall wall, Box box, long level, long depth) {
    String face = wall.face();
    int how = chance.below(3);
    if (how == 0) {
      // Straight down: water runs in.
      path.to(face, box.along(), level, depth).to(face, box.along(), box.top(), depth);
      return "above";
    }
    long beside = box.along() + box.width() / 2 + chance.between(25 * MM, 70 * MM);
    long aside = Math.min(beside, wall.along());
    long low = box.bottom() - chance.between(30 * MM, 90 * MM);
    path.to(face, aside, level, depth).to(face, aside, low, depth);
    if (how == 1) {
      path.to(face, box.along(), low, depth).to(face, box.along(), box.bottom(), depth);
      return "below";
    }
    long over = box.top() + chance.between(25 * MM, 50 * MM);
    path.to(face, aside, over, depth).to(face, box.along(), over, depth);
    path.to(face, box.along(), box.top(), depth);
    return "above";
  }

  /** The boxes of a wall, one after the other, in circuits of a few. */
  void wire(Wall wall, List<String> panels, List<Circuit> used) {
    Circuit circuit = null;
    int left = 0;
    for (int i = 0; i + 1 < wall.boxes().size(); i++) {
      if (circuit == null || left == 0) {
        circuit = wiring.circuit(panels.isEmpty() ? null : panels.get(i % panels.size()));
        used.add(circuit);
        left = 4 + chance.below(10);
      }
      left--;
      if (!chance.oneIn(12)) {
        along(circuit, wall, wall.boxes().get(i), wall.boxes().get(i + 1));
      }
      if (chance.oneIn(25)) {
        stray(circuit, wall, wall.boxes().get(i));
      }
    }
  }
}
