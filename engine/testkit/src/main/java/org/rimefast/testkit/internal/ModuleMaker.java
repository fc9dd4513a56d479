package org.rimefast.testkit.internal;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.testkit.internal.Wall.Box;
import org.rimefast.testkit.internal.Wiring.Circuit;

/** Makes one module of a seed. */
public final class ModuleMaker {
  private static final long MM = Length.MILLIMETRE;

  private final Chance chance;
  private final ShellMaker shell;
  private final String size;
  private final Framing framing;
  private final Boxes boxes;
  private final Wiring wiring;
  private final Routes routes;
  private final List<Tree> panels = new ArrayList<>();
  private final List<String> panelIds = new ArrayList<>();
  private final List<Tree> luminaires = new ArrayList<>();

  private int elements;

  /**
   * What was made.
   *
   * @param text the plan
   * @param elements how many openings, parts and runs it holds
   */
  public record Made(String text, int elements) {}

  private ModuleMaker(long seed, int feet, long millimetres) {
    chance = new Chance(seed);
    boolean small = (feet == 0 && chance.oneIn(3)) || feet == 20;
    boolean high = chance.oneIn(2);
    size = small ? (high ? "25G1" : "22G1") : high ? "45G1" : "42G1";
    long length = millimetres > 0 ? millimetres : small ? 5898 : 12032;
    shell = new ShellMaker(chance, length * MM, (high ? 2693 : 2393) * MM);
    framing = new Framing(chance);
    boxes = new Boxes(chance);
    wiring = new Wiring(chance);
    routes = new Routes(chance, wiring);
  }

  /** True if plans can be written in {@code unit}. */
  public static boolean isUnit(String unit) {
    return Length.isUnit(unit);
  }

  /**
   * A module.
   *
   * @param feet 20, 40, or 0 for either
   * @param millimetres inside length of the shell; 0 for that of its size
   * @param unit the plan's unit of length
   */
  public static Made make(long seed, int feet, long millimetres, String unit) {
    ModuleMaker maker = new ModuleMaker(seed, feet, millimetres);
    String text = maker.tree(seed, unit).print(unit);
    return new Made(text, maker.elements);
  }

  private Tree tree(long seed, String unit) {
    Tree plan =
        Tree.of("format", "rimefast-plan-1")
            .with("id", "random-module-" + seed)
            .with("title", "Random module " + seed + " (invented)")
            .with("units", unit);
    if (chance.oneIn(3)) {
      plan.with("tolerances", tolerances());
    }
    Tree room = Tree.of("use", chance.pick(List.of("wet lab", "bunk room", "pump-control room")));
    chance.maybe(room, "temperature", chance.pick(List.of("22 degC", "21 degC", "12 degC +- 1 K")));
    chance.maybe(room, "humidity", chance.pick(List.of("60 %", "35 %", "45 %")));
    plan.with("room", room);
    Tree site = Tree.of("name", "Loon Narrows (invented)");
    plan.with("site", chance.maybe(site, "outdoorDesignTemperature", "-38 degC"));
    List<Wall> walls = new ArrayList<>();
    walls.add(shell.wall("left", "L"));
    walls.add(shell.wall("front", "F"));
    walls.add(shell.wall("right", "R"));
    walls.add(shell.wall("rear", "E"));
    Wall roof = shell.wall("roof", "T");
    shell.faces().with("floor", Tree.of("profile", "plywood"));
    fitOut(walls, roof);
    count(walls, roof);
    plan.with("shell", shell.shell(size)).with("faces", shell.faces());
    plan.with("openings", shell.openings()).with("studs", framing.studs());
    plan.with("boxes", boxes.boxes()).with("bars", boxes.bars());
    plan.with("brackets", boxes.brackets()).with("panels", panels);
    plan.with("luminaires", luminaires).with("runs", wiring.runs());
    plan.with("circuits", wiring.circuits());
    Tree foaming = new Tree();
    chance.maybe(foaming, "nozzle", chance.pick(List.of(40L, 50L, 60L)) * MM + Length.GRID);
    chance.maybe(foaming, "reach", chance.pick(List.of(300L, 400L, 500L)) * MM + Length.GRID);
    return plan.with("foaming", foaming);
  }

  private void count(List<Wall> walls, Wall roof) {
    elements = shell.openings().size() + roof.studs().size();
    walls.forEach(wall -> elements += wall.studs().size());
    elements += boxes.boxes().size() + boxes.bars().size() + boxes.brackets().size();
    elements += panels.size() + luminaires.size() + wiring.runs().size();
  }

  private Tree tolerances() {
    Tree tolerances = new Tree();
    chance.maybe(tolerances, "shell", 16 * Length.GRID);
    chance.maybe(tolerances, "framing", chance.oneIn(2) ? 16 * Length.GRID : 24 * Length.GRID);
    chance.maybe(tolerances, "electrical", 30 * Length.GRID);
    return tolerances;
  }

  private void fitOut(List<Wall> walls, Wall roof) {
    for (Wall wall : walls) {
      framing.frame(wall);
      if (!wall.face().equals("rear") || chance.oneIn(6)) {
        boxes.hang(wall);
      }
    }
    framing.frame(roof);
    List<Circuit> circuits = new ArrayList<>();
    for (Wall wall : walls) {
      panels(wall);
    }
    for (Wall wall : walls) {
      routes.wire(wall, panelIds, circuits);
    }
    if (circuits.isEmpty()) {
      circuits.add(wiring.circuit(panelIds.isEmpty() ? null : panelIds.get(0)));
    }
    for (int i = 0; i < 2; i++) {
      corner(walls.get(i), walls.get(i + 1), chance.pick(circuits));
    }
    luminaires(roof, walls.get(0), walls.get(2), circuits);
  }

  private void corner(Wall wall, Wall next, Circuit circuit) {
    Box last = wall.boxes().isEmpty() ? null : wall.boxes().get(wall.boxes().size() - 1);
    Box first = next.boxes().isEmpty() ? null : next.boxes().get(0);
    if (last != null && first != null && !chance.oneIn(4)) {
      routes.around(circuit, wall, next, last, first);
    }
  }

  /** One panel for each 12 m of module, on the left wall, with the junction box it is fed from. */
  private void panels(Wall wall) {
    if (!wall.face().equals("left")) {
      return;
    }
    long bay = 12_000 * MM;
    for (long from = 0; from < wall.along(); from += bay) {
      long along = from + chance.between(1500 * MM, Math.min(bay, wall.along()) - 700 * MM);
      long up = chance.between(1400 * MM, 1550 * MM);
      if (wall.isFree(along - 250 * MM, along + 250 * MM, up - 400 * MM, up + 400 * MM, 30 * MM)) {
        panel(wall, along, up);
      }
    }
  }

  private void panel(Wall wall, long along, long up) {
    String id = "LP" + (panels.size() + 1);
    Tree panel = Tree.of("id", id).with("face", wall.face()).with("along", chance.place(along));
    panel.with("up", up).with("width", 360 * MM).with("height", 600 * MM).with("depth", 95 * MM);
    // One in seven is recessed, as panels are in houses.
    chance.maybe(panel, "mount", chance.oneIn(7) ? "flush" : "surface");
    panels.add(chance.maybe(panel, "material", "steel"));
    panelIds.add(id);
    Box junction = boxes.junction(wall, along, up);
    Circuit feeder = wiring.circuit(id);
    routes.feed(feeder, wall, junction, id);
    Box nearest = nearest(wall, along);
    if (nearest != null) {
      routes.along(feeder, wall, junction, nearest);
    }
  }

  private static @Nullable Box nearest(Wall wall, long along) {
    Box nearest = null;
    for (Box box : wall.boxes()) {
      if (nearest == null || Math.abs(box.along() - along) < Math.abs(nearest.along() - along)) {
        nearest = box;
      }
    }
    return nearest;
  }

  private void luminaires(Wall roof, Wall left, Wall right, List<Circuit> circuits) {
    long spacing = chance.of("luminaires").pick(List.of(1800L, 2400L, 3000L)) * MM;
    int switches = 0;
    for (long x = chance.between(900 * MM, spacing); x < roof.along() - 800 * MM; x += spacing) {
      long at = Chance.snap(x);
      long across = roof.up() / 2 + chance.between(0, 40 * MM);
      String id = "LU" + (luminaires.size() + 1);
      Tree luminaire = Tree.of("id", id).with("face", "roof").with("along", chance.place(at));
      luminaire.with("up", Chance.snap(across));
      luminaire.with("width", 1200 * MM).with("height", 150 * MM);
      chance.maybe(luminaire, "depth", 70 * MM);
      chance.maybe(luminaire, "mount", chance.oneIn(9) ? "flush" : "surface");
      luminaires.add(chance.maybe(luminaire, "material", chance.oneIn(5) ? "plastic" : "steel"));
      if (chance.oneIn(3)) {
        long beside = chance.oneIn(2) ? roof.bay(at + 700 * MM) : at + 700 * MM;
        boxes.overhead(roof, beside, Chance.snap(across));
      }
      boolean toTheLeft = chance.oneIn(2);
      Wall wall = toTheLeft ? left : right;
      if (!wall.boxes().isEmpty()) {
        // The box across from it, or thereabouts.
        double share = (double) x / roof.along();
        double place = toTheLeft ? share : 1 - share;
        int box = Math.min(wall.boxes().size() - 1, (int) (place * wall.boxes().size()));
        Circuit circuit = circuits.get(switches++ % circuits.size());
        routes.over(circuit, wall, roof, wall.boxes().get(box), id, at, Chance.snap(across));
      }
    }
  }
}
