package org.rimefast.testkit.internal;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Wires a module: what runs are made of, how they are fixed, and the circuits they belong to. */
final class Wiring {
  private static final long MM = Length.MILLIMETRE;
  private static final long INCH = Length.INCH;

  /** A kind of run, its outside diameter, and the size or armour that goes with it. */
  private record Make(String kind, long diameter, @Nullable String size, @Nullable String armour) {}

  private static final List<Make> MAKES =
      List.of(
          new Make("armoured-cable", INCH / 2, null, null),
          new Make("armoured-cable", INCH / 2, null, null),
          new Make("metal-clad-cable", 48 * INCH / 100, null, "interlocked"),
          new Make("metal-clad-cable", 60 * INCH / 100, null, "smooth"),
          new Make("nonmetallic-cable", 42 * INCH / 100, null, null),
          new Make("emt", 706 * INCH / 1000, "1/2 in EMT", null),
          new Make("emt", 922 * INCH / 1000, "3/4 in EMT", null),
          new Make("flexible-conduit", 86 * INCH / 100, null, null));

  /** What wires a circuit. */
  record Circuit(@Nullable String id, String gauge, Make make) {}

  private final Chance chance;
  private final List<Tree> runs = new ArrayList<>();
  private final List<Tree> circuits = new ArrayList<>();

  Wiring(Chance chance) {
    this.chance = chance;
  }

  List<Tree> runs() {
    return runs;
  }

  List<Tree> circuits() {
    return circuits;
  }

  /** A circuit of its own, fed by a panel if there is one. */
  Circuit circuit(@Nullable String panel) {
    String id = "circuit-" + (circuits.size() + 1);
    boolean heavy = chance.oneIn(3);
    // One in eight is wired thinner than its breaker allows.
    String gauge = heavy != chance.oneIn(8) ? "12 AWG" : "14 AWG";
    Tree circuit = Tree.of("id", id);
    chance.maybe(circuit, "panel", panel);
    chance.maybe(circuit, "breaker", heavy ? "20 A" : "15 A");
    chance.maybe(circuit, "voltage", "120 V");
    chance.maybe(circuit, "load", chance.pick(List.of("8 A", "11.5 A", "12 A", "16.5 A")));
    chance.maybe(circuit, "terminals", chance.oneIn(2) ? "75 degC" : "60 degC");
    circuits.add(circuit);
    return new Circuit(chance.oneIn(20) ? null : id, gauge, chance.pick(MAKES));
  }

  /** How deep in the wall a run lies: through the middle of the studs, but for mistakes. */
  long depth(Wall wall) {
    int how = chance.below(20);
    long stud = wall.build().stud();
    if (how == 0) {
      return Chance.snap(stud + wall.build().standoff() - 7 * MM);
    }
    return how == 1 ? 3 * MM : how < 5 ? Chance.snap(stud / 2 + 5 * MM) : stud / 2;
  }

  /** Puts a run; the sides say by which side of its box an end enters, where that is one. */
  void run(
      Circuit circuit,
      Path path,
      @Nullable String from,
      @Nullable String fromSide,
      @Nullable String to,
      @Nullable String toSide) {
    if (!path.isDrawn()) {
      return;
    }
    Make make = circuit.make();
    Tree run = Tree.of("id", "C" + (runs.size() + 1)).with("kind", make.kind());
    boolean conduit = make.kind().equals("emt") || make.kind().equals("flexible-conduit");
    if (make.size() != null && chance.oneIn(2)) {
      run.with("size", make.size());
    } else {
      chance.maybe(run, "diameter", make.diameter());
    }
    chance.maybe(run, "armour", make.armour());
    if (conduit && make.size() == null) {
      chance.maybe(run, "bore", 63 * INCH / 100);
    }
    chance.maybe(run, "bendRadius", make.diameter() * chance.pick(List.of(4, 6, 8, 11)) + 2 * MM);
    chance.maybe(run, "circuit", circuit.id());
    end(run, "from", from, fromSide);
    end(run, "to", to, toSide);
    chance.maybe(run, "conductors", conductors(circuit, conduit));
    chance.maybe(run, "supports", supports(path));
    Tree slack = new Tree();
    chance.maybe(slack, "from", chance.between(100 * MM, 420 * MM));
    chance.maybe(slack, "to", chance.between(100 * MM, 420 * MM));
    chance.maybe(slack, "corners", chance.between(0, 90 * MM));
    run.with("slack", slack);
    runs.add(run.with("path", path.points(chance)));
  }

  private void end(Tree run, String field, @Nullable String part, @Nullable String side) {
    if (part == null) {
      return;
    }
    chance.maybe(run, field, part);
    if (side != null && chance.oneIn(2)) {
      chance.maybe(run, field + "Side", side);
    }
    chance.maybe(run, field + "Connector", chance.oneIn(4) ? "insulating" : "metal");
  }

  private List<Tree> conductors(Circuit circuit, boolean conduit) {
    List<Tree> conductors = new ArrayList<>();
    Tree live = Tree.of("size", circuit.gauge());
    live.with("count", conduit ? 2 + chance.below(4) : 2 + chance.below(2));
    chance.maybe(live, "rating", chance.oneIn(4) ? "75 degC" : "90 degC");
    conductors.add(live);
    if (chance.oneIn(10)) {
      conductors.add(Tree.of("size", circuit.gauge()).with("use", "not-carrying"));
    }
    if (!chance.oneIn(7)) {
      conductors.add(Tree.of("size", circuit.gauge()).with("use", "bonding"));
    }
    return conductors;
  }

  /** Straps near both ends and between, some too far apart. */
  private List<Length> supports(Path path) {
    List<Length> supports = new ArrayList<>();
    long step = chance.pick(List.of(36L, 48L, 54L, 60L, 80L)) * INCH;
    long place = chance.between(100 * MM, chance.oneIn(6) ? 800 * MM : 290 * MM);
    for (; place < path.length(); place += step + chance.between(0, 60 * MM)) {
      supports.add(Length.of(place));
    }
    return supports;
  }
}
