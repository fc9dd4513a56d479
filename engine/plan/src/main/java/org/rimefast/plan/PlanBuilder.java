package org.rimefast.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.rimefast.plan.internal.Assembler;
import org.rimefast.plan.internal.Digest;
import org.rimefast.plan.internal.Faults;
import org.rimefast.plan.internal.json.Node;
import org.rimefast.plan.internal.json.Node.Structure;
import org.rimefast.plan.internal.json.TreeMaker;
import org.rimefast.units.Unit;

/**
 * Makes a plan from Java: the same one that reading the file of {@link PlanWriter} makes, with the
 * same faults for the same mistakes.
 *
 * <pre>{@code
 * PlanReading built =
 *     Plan.builder("wet-lab", "Wet lab (invented)", Units.MILLIMETRE)
 *         .shell("45G1")
 *         .face(Face.LEFT, f -> f.profile("side wall").phase(40).standoff(25).stud("162S125-33"))
 *         .box("R", Part.Box.Kind.DEVICE, Face.LEFT,
 *             b -> b.size("3 x 2 x 2-1/2 in").along(400).up(450).repeat(10, "44 in"))
 *         .build();
 * }</pre>
 *
 * <p>Lengths are plain numbers in the plan's unit, or text with a unit and, if wanted, a tolerance:
 * {@code "1200 mm +- 3 mm"}. What is given twice is a fault, not the last one's. Not for use by
 * several threads.
 */
public final class PlanBuilder {
  private final Structure root = TreeMaker.root();
  private PlanLimits limits = PlanLimits.DEFAULT;

  PlanBuilder(String id, String title, Unit units) {
    TreeMaker.text(root, "format", Plan.FORMAT);
    TreeMaker.text(root, "id", id);
    TreeMaker.text(root, "title", title);
    TreeMaker.text(root, "units", units.symbol());
  }

  /** Takes on more or less than usual. */
  public PlanBuilder limits(PlanLimits other) {
    limits = other;
    return this;
  }

  /** Phase, pitch and standoff of the sheet. */
  public PlanBuilder shellTolerance(String length) {
    return text("tolerances", "shell", length);
  }

  /** Position of studs, tracks, bars and brackets. */
  public PlanBuilder framingTolerance(String length) {
    return text("tolerances", "framing", length);
  }

  /** Position of boxes, panels, luminaires and runs. */
  public PlanBuilder electricalTolerance(String length) {
    return text("tolerances", "electrical", length);
  }

  /** Parts closer than this touch. */
  public PlanBuilder contactTolerance(String length) {
    return text("tolerances", "contact", length);
  }

  /** What the room is for. */
  public PlanBuilder roomUse(String use) {
    return text("room", "use", use);
  }

  /** Air temperature in use: {@code 22 degC}. */
  public PlanBuilder roomTemperature(String temperature) {
    return text("room", "temperature", temperature);
  }

  /** Relative humidity in use: {@code 60 %}. */
  public PlanBuilder roomHumidity(String humidity) {
    return text("room", "humidity", humidity);
  }

  /** The place where the module stands. */
  public PlanBuilder siteName(String name) {
    return text("site", "name", name);
  }

  /** The winter design temperature: {@code -38 degC}. */
  public PlanBuilder outdoorDesignTemperature(String temperature) {
    return text("site", "outdoorDesignTemperature", temperature);
  }

  /** The shell by its ISO 6346 size code, with the typical inside of {@link Products#shell}. */
  public PlanBuilder shell(String size) {
    return text("shell", "size", size);
  }

  /** The shell's inside as measured, between the crests of the inward ribs. */
  public PlanBuilder shellInside(double length, double width, double height) {
    Structure inside = inside();
    BuilderValues.length(inside, "length", length);
    BuilderValues.length(inside, "width", width);
    BuilderValues.length(inside, "height", height);
    return this;
  }

  /** The shell's inside as measured, between the crests of the inward ribs. */
  public PlanBuilder shellInside(String length, String width, String height) {
    Structure inside = inside();
    TreeMaker.text(inside, "length", length);
    TreeMaker.text(inside, "width", width);
    TreeMaker.text(inside, "height", height);
    return this;
  }

  /** How one face is built up. */
  public PlanBuilder face(Face face, Consumer<FaceBuilder> build) {
    return face(face.word(), build);
  }

  /** How a face is built up as far as its own entry does not say. */
  public PlanBuilder everyFace(Consumer<FaceBuilder> build) {
    return face("default", build);
  }

  private PlanBuilder face(String name, Consumer<FaceBuilder> build) {
    Structure faces = TreeMaker.structureOf(root, "faces");
    build.accept(new FaceBuilder(TreeMaker.structure(faces, name)));
    return this;
  }

  /** A hole in the shell: its left-hand edge along the face, its lower edge, and its size. */
  public PlanBuilder opening(
      String id, Face face, double from, double sill, double width, double height) {
    Structure item = item("openings", id, face);
    BuilderValues.length(item, "from", from);
    BuilderValues.length(item, "sill", sill);
    BuilderValues.length(item, "width", width);
    BuilderValues.length(item, "height", height);
    return this;
  }

  /** A hole in the shell: its left-hand edge along the face, its lower edge, and its size. */
  public PlanBuilder opening(
      String id, Face face, String from, String sill, String width, String height) {
    Structure item = item("openings", id, face);
    TreeMaker.text(item, "from", from);
    TreeMaker.text(item, "sill", sill);
    TreeMaker.text(item, "width", width);
    TreeMaker.text(item, "height", height);
    return this;
  }

  /** A hole in the shell with the leaf of a door in it. */
  public PlanBuilder opening(
      String id, Face face, double from, double sill, double width, double height, Door door) {
    opening(id, face, from, sill, width, height);
    return door(door);
  }

  /** A hole in the shell with the leaf of a door in it. */
  public PlanBuilder opening(
      String id, Face face, String from, String sill, String width, String height, Door door) {
    opening(id, face, from, sill, width, height);
    return door(door);
  }

  private PlanBuilder door(Door door) {
    List<Node> openings = TreeMaker.sequenceOf(root, "openings").items();
    Structure item = TreeMaker.structure((Structure) openings.get(openings.size() - 1), "door");
    TreeMaker.text(item, "hinge", door.hinge().word());
    TreeMaker.text(item, "opens", door.opens().word());
    return this;
  }

  /** A stud, or a row of them. */
  public PlanBuilder stud(String id, Face face, Consumer<PartBuilder> build) {
    return part("studs", id, face, build);
  }

  /** A track in which ends of studs stand, or a row of them. */
  public PlanBuilder track(String id, Face face, Consumer<PartBuilder> build) {
    return part("tracks", id, face, build);
  }

  /** A box, or a row of them. */
  public PlanBuilder box(String id, Part.Box.Kind kind, Face face, Consumer<PartBuilder> build) {
    Structure item = item("boxes", id, face);
    TreeMaker.text(item, "kind", kind.word());
    build.accept(new PartBuilder(item));
    return this;
  }

  /** A bar, or a row of them. */
  public PlanBuilder bar(String id, Face face, Consumer<PartBuilder> build) {
    return part("bars", id, face, build);
  }

  /** A bracket, or a row of them. */
  public PlanBuilder bracket(String id, Face face, Consumer<PartBuilder> build) {
    return part("brackets", id, face, build);
  }

  /** A panel, or a row of them. */
  public PlanBuilder panel(String id, Face face, Consumer<PartBuilder> build) {
    return part("panels", id, face, build);
  }

  /** A luminaire, or a row of them. */
  public PlanBuilder luminaire(String id, Face face, Consumer<PartBuilder> build) {
    return part("luminaires", id, face, build);
  }

  /** A cable or conduit. */
  public PlanBuilder run(String id, Run.Kind kind, Consumer<RunBuilder> build) {
    Structure item = TreeMaker.item(TreeMaker.sequenceOf(root, "runs"));
    TreeMaker.text(item, "id", id);
    TreeMaker.text(item, "kind", kind.word());
    build.accept(new RunBuilder(item));
    return this;
  }

  /** A branch circuit. */
  public PlanBuilder circuit(String id, Consumer<CircuitBuilder> build) {
    Structure item = TreeMaker.item(TreeMaker.sequenceOf(root, "circuits"));
    TreeMaker.text(item, "id", id);
    build.accept(new CircuitBuilder(item));
    return this;
  }

  /** The narrowest gap into which the foam gun's nozzle goes. */
  public PlanBuilder foamNozzle(String length) {
    return text("foaming", "nozzle", length);
  }

  /** How far foam is carried sideways from the nozzle. */
  public PlanBuilder foamReach(String length) {
    return text("foaming", "reach", length);
  }

  /**
   * What was found on site.
   *
   * @param inspect the id of the standard's inspect item
   * @param answer true for yes
   * @param who who looked
   * @param when the day
   */
  public PlanBuilder reading(
      String inspect, boolean answer, String who, LocalDate when, Consumer<ReadingBuilder> build) {
    Structure item = TreeMaker.item(TreeMaker.sequenceOf(root, "readings"));
    TreeMaker.text(item, "inspect", inspect);
    TreeMaker.text(item, "answer", answer ? "yes" : "no");
    TreeMaker.text(item, "who", who);
    TreeMaker.text(item, "when", when.toString());
    build.accept(new ReadingBuilder(item));
    return this;
  }

  /**
   * The plan, or everything that is wrong with it. Its source is named {@code (built)} and has the
   * hash of the bytes that {@link PlanWriter#write(Plan)} gives for it.
   */
  public PlanReading build() {
    Faults faults = new Faults(limits.faults());
    Optional<Plan> plan = Assembler.assemble(root, true, limits, faults);
    return new PlanReading(plan.map(PlanBuilder::withHash), faults.sorted());
  }

  private static Plan withHash(Plan plan) {
    return plan.withSource(
        new PlanSource("(built)", Digest.sha256(PlanWriter.write(plan)), Map.of()));
  }

  private Structure inside() {
    return TreeMaker.structure(TreeMaker.structureOf(root, "shell"), "inside");
  }

  private PlanBuilder part(String list, String id, Face face, Consumer<PartBuilder> build) {
    build.accept(new PartBuilder(item(list, id, face)));
    return this;
  }

  private Structure item(String list, String id, Face face) {
    Structure item = TreeMaker.item(TreeMaker.sequenceOf(root, list));
    TreeMaker.text(item, "id", id);
    TreeMaker.text(item, "face", face.word());
    return item;
  }

  private PlanBuilder text(String owner, String name, String value) {
    TreeMaker.text(TreeMaker.structureOf(root, owner), name, value);
    return this;
  }
}
