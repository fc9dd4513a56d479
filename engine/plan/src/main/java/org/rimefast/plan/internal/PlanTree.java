package org.rimefast.plan.internal;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Circuit;
import org.rimefast.plan.CorrugationProfile;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.FaceBuild.Foam;
import org.rimefast.plan.FaceBuild.Ribs;
import org.rimefast.plan.Foaming;
import org.rimefast.plan.InspectReading;
import org.rimefast.plan.Plan;
import org.rimefast.plan.Products;
import org.rimefast.plan.Room;
import org.rimefast.plan.Run;
import org.rimefast.plan.ShellSize;
import org.rimefast.plan.Site;
import org.rimefast.plan.StudSection;
import org.rimefast.plan.Tolerances;
import org.rimefast.plan.internal.json.Node.Sequence;
import org.rimefast.plan.internal.json.Node.Structure;
import org.rimefast.plan.internal.json.TreeMaker;
import org.rimefast.units.Rational;
import org.rimefast.units.Unit;

/** The JSON tree of a plan: what {@link Assembler} would have read it from. */
public final class PlanTree {
  private static final String DEFAULT_POINTER = "/faces/default";

  private final Plan plan;
  private final Unit unit;

  private PlanTree(Plan plan) {
    this.plan = plan;
    this.unit = plan.units();
  }

  /** The tree, its fields in the order of the format. */
  public static Structure of(Plan plan) {
    return new PlanTree(plan).root();
  }

  private Structure root() {
    Structure root = TreeMaker.root();
    TreeMaker.text(root, "format", Plan.FORMAT);
    TreeMaker.text(root, "id", plan.id());
    TreeMaker.text(root, "title", plan.title());
    TreeMaker.text(root, "units", unit.symbol());
    tolerances(root, plan.tolerances());
    room(root, plan.room());
    site(root, plan.site());
    shell(TreeMaker.structure(root, "shell"), plan.shell());
    faces(root);
    new ElementTrees(this, root).openings(plan.openings());
    new ElementTrees(this, root).parts(plan.parts());
    RunTrees runs = new RunTrees(this);
    for (Run run : plan.runs()) {
      runs.run(TreeMaker.item(TreeMaker.sequenceOf(root, "runs")), run);
    }
    for (Circuit circuit : plan.circuits()) {
      circuit(TreeMaker.item(TreeMaker.sequenceOf(root, "circuits")), circuit);
    }
    foaming(root, plan.foaming());
    for (InspectReading reading : plan.readings()) {
      reading(TreeMaker.item(TreeMaker.sequenceOf(root, "readings")), reading);
    }
    return root;
  }

  private void tolerances(Structure root, Tolerances tolerances) {
    if (!tolerances.equals(Tolerances.NONE)) {
      Structure node = TreeMaker.structure(root, "tolerances");
      length(node, "shell", tolerances.shell());
      length(node, "framing", tolerances.framing());
      length(node, "electrical", tolerances.electrical());
      length(node, "contact", tolerances.contact());
    }
  }

  private static void room(Structure root, Room room) {
    if (room.use() != null || room.temperature() != null || room.humidity() != null) {
      Structure node = TreeMaker.structure(root, "room");
      text(node, "use", room.use());
      quantity(node, "temperature", room.temperature());
      quantity(node, "humidity", room.humidity());
    }
  }

  private static void site(Structure root, Site site) {
    if (site.name() != null || site.outdoorDesignTemperature() != null) {
      Structure node = TreeMaker.structure(root, "site");
      text(node, "name", site.name());
      quantity(node, "outdoorDesignTemperature", site.outdoorDesignTemperature());
    }
  }

  private void shell(Structure node, ShellSize shell) {
    Optional<ShellSize> typical = Products.shell(shell.name());
    if (typical.isPresent()) {
      TreeMaker.text(node, "size", shell.name());
    }
    if (!typical.equals(Optional.of(shell))) {
      Structure inside = TreeMaker.structure(node, "inside");
      millimetres(inside, "length", shell.length());
      millimetres(inside, "width", shell.width());
      millimetres(inside, "height", shell.height());
    }
  }

  private void faces(Structure root) {
    Map<Face, FaceBuild> own = new EnumMap<>(Face.class);
    FaceBuild rest = null;
    for (Face face : Face.values()) {
      FaceBuild build = plan.face(face);
      if (build.pointer().equals(DEFAULT_POINTER)) {
        rest = build;
      } else {
        own.put(face, build);
      }
    }
    FaceBuild nothing =
        new FaceBuild(
            Face.LEFT, DEFAULT_POINTER, null, Ribs.UPRIGHT, null, null, null, null, null, null);
    if (rest != null && !same(rest, nothing)) {
      Structure node = TreeMaker.structure(TreeMaker.structureOf(root, "faces"), "default");
      face(node, rest, nothing);
    }
    FaceBuild shared = rest == null ? nothing : rest;
    own.forEach(
        (face, build) -> {
          Structure all = TreeMaker.structureOf(root, "faces");
          face(TreeMaker.structure(all, face.word()), build, shared);
        });
  }

  private static boolean same(FaceBuild a, FaceBuild b) {
    return new FaceBuild(
            b.face(),
            b.pointer(),
            a.profile(),
            a.ribs(),
            a.phase(),
            a.sheet(),
            a.standoff(),
            a.stud(),
            a.lining(),
            a.foam())
        .equals(b);
  }

  /** Writes what a face has and {@code shared} has not or has otherwise. */
  private void face(Structure node, FaceBuild build, FaceBuild shared) {
    CorrugationProfile profile = build.profile();
    if (profile != null && !profile.equals(shared.profile())) {
      profile(node, profile);
    }
    if (build.ribs() != shared.ribs()) {
      TreeMaker.text(node, "ribs", build.ribs().word());
    }
    length(node, "phase", changed(build.phase(), shared.phase()));
    length(node, "sheet", changed(build.sheet(), shared.sheet()));
    length(node, "standoff", changed(build.standoff(), shared.standoff()));
    StudSection stud = build.stud();
    if (stud != null && !stud.equals(shared.stud())) {
      stud(node, "stud", stud);
    }
    length(node, "lining", changed(build.lining(), shared.lining()));
    Foam foam = build.foam();
    if (foam != null && !foam.equals(shared.foam())) {
      Structure made = TreeMaker.structure(node, "foam");
      Foam.Kind kind = foam.kind();
      text(made, "kind", kind == null ? null : kind.word());
      length(made, "thickness", foam.thickness());
      quantity(made, "conductivity", foam.conductivity());
    }
  }

  private static @Nullable Amount changed(@Nullable Amount own, @Nullable Amount shared) {
    return Objects.equals(own, shared) ? null : own;
  }

  private void profile(Structure node, CorrugationProfile profile) {
    if (Products.profile(profile.name()).equals(Optional.of(profile))) {
      TreeMaker.text(node, "profile", profile.name());
      return;
    }
    Structure made = TreeMaker.structure(node, "profile");
    millimetres(made, "outer", profile.outer());
    millimetres(made, "web", profile.web());
    millimetres(made, "inner", profile.inner());
    millimetres(made, "depth", profile.depth());
  }

  void stud(Structure node, String name, StudSection stud) {
    if (Products.stud(stud.name()).equals(Optional.of(stud))) {
      TreeMaker.text(node, name, stud.name());
      return;
    }
    Structure made = TreeMaker.structure(node, name);
    millimetres(made, "depth", stud.depth());
    millimetres(made, "flange", stud.flange());
    millimetres(made, "thickness", stud.thickness());
  }

  /** The stud section of a face. */
  @Nullable StudSection studOf(Face face) {
    return plan.face(face).stud();
  }

  private static void circuit(Structure node, Circuit circuit) {
    TreeMaker.text(node, "id", circuit.id());
    text(node, "panel", circuit.panel());
    quantity(node, "breaker", circuit.breaker());
    quantity(node, "voltage", circuit.voltage());
    quantity(node, "load", circuit.load());
    quantity(node, "terminals", circuit.terminals());
  }

  private void foaming(Structure root, Foaming foaming) {
    if (!foaming.equals(Foaming.UNKNOWN)) {
      Structure node = TreeMaker.structure(root, "foaming");
      length(node, "nozzle", foaming.nozzle());
      length(node, "reach", foaming.reach());
    }
  }

  private static void reading(Structure node, InspectReading reading) {
    TreeMaker.text(node, "inspect", reading.inspect());
    text(node, "of", reading.of());
    TreeMaker.text(node, "answer", reading.answer() ? "yes" : "no");
    quantity(node, "value", reading.value());
    TreeMaker.text(node, "who", reading.who());
    TreeMaker.text(node, "when", reading.when().toString());
    text(node, "note", reading.note());
  }

  static void text(Structure node, String name, @Nullable String value) {
    if (value != null) {
      TreeMaker.text(node, name, value);
    }
  }

  static void quantity(Structure node, String name, @Nullable Amount amount) {
    if (amount != null) {
      TreeMaker.text(node, name, spelled(amount));
    }
  }

  private static String spelled(Amount amount) {
    return amount.plusMinus() == null
        ? amount.value().text()
        : amount.value().text() + " +- " + amount.plusMinus().text();
  }

  /** A length as its author wrote it; one in the plan's own unit becomes a plain number. */
  void length(Structure node, String name, @Nullable Amount amount) {
    if (amount == null) {
      return;
    }
    String number = plain(amount);
    if (number == null) {
      TreeMaker.text(node, name, spelled(amount));
    } else {
      TreeMaker.number(node, name, number);
    }
  }

  /** A length as an item of a list. */
  void length(Sequence list, Amount amount) {
    String number = plain(amount);
    if (number == null) {
      TreeMaker.text(list, spelled(amount));
    } else {
      TreeMaker.number(list, number);
    }
  }

  /** A length as a plain number in the plan's unit; null if it is not spelled as one. */
  private @Nullable String plain(Amount amount) {
    String tail = " " + unit.symbol();
    String text = amount.value().text();
    if (amount.plusMinus() == null && text.endsWith(tail)) {
      String number = text.substring(0, text.length() - tail.length());
      // Only a spelling that reads back as the same text.
      if (number.matches("-?(0|[1-9][0-9]*)(\\.[0-9]+)?")
          && new BigDecimal(number).toPlainString().equals(number)) {
        return number;
      }
    }
    return null;
  }

  /** A length that the model keeps in millimetres. */
  private void millimetres(Structure node, String name, double millimetres) {
    metres(node, name, Rational.of(BigDecimal.valueOf(millimetres)).dividedBy(Rational.of(1000)));
  }

  void metres(Structure node, String name, Rational metres) {
    length(node, name, new Amount(Lengths.shortest(metres, unit), null));
  }

  /** Writes how many equal items a row has. */
  void repeat(Structure item, Repeat repeat) {
    Structure made = TreeMaker.structure(item, "repeat");
    TreeMaker.number(made, "count", Integer.toString(repeat.count()));
    metres(made, "spacing", repeat.spacing());
    if (repeat.up()) {
      TreeMaker.text(made, "direction", "up");
    }
  }
}
