package org.rimefast.plan.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.Foaming;
import org.rimefast.plan.Plan;
import org.rimefast.plan.PlanLimits;
import org.rimefast.plan.PlanSource;
import org.rimefast.plan.Products;
import org.rimefast.plan.Room;
import org.rimefast.plan.ShellSize;
import org.rimefast.plan.Site;
import org.rimefast.plan.Tolerances;
import org.rimefast.plan.internal.json.Node;
import org.rimefast.units.Dimension;
import org.rimefast.units.Unit;

/** Makes a plan of a JSON tree. */
public final class Assembler {
  static final List<String> PLAN_FIELDS = planFields();
  static final List<String> TOLERANCE_FIELDS = List.of("shell", "framing", "electrical", "contact");
  static final List<String> ROOM_FIELDS = List.of("use", "temperature", "humidity");
  static final List<String> SITE_FIELDS = List.of("name", "outdoorDesignTemperature");
  static final List<String> SHELL_FIELDS = List.of("size", "inside");
  static final List<String> INSIDE_FIELDS = List.of("length", "width", "height");
  static final List<String> FOAMING_FIELDS = List.of("nozzle", "reach");

  private static final String TEMPERATURE_EXAMPLE = "\"22 degC\"";

  private final Context context;
  private final boolean complete;

  private Assembler(Context context, boolean complete) {
    this.context = context;
    this.complete = complete;
  }

  private static List<String> planFields() {
    List<String> fields = new ArrayList<>(List.of("format", "id", "title", "units"));
    fields.addAll(List.of("tolerances", "room", "site", "shell", "faces", "openings"));
    for (PartsReader.PartList list : PartsReader.PartList.values()) {
      fields.add(list.field());
    }
    fields.addAll(List.of("runs", "circuits", "foaming", "readings"));
    return List.copyOf(fields);
  }

  /**
   * Reads a tree.
   *
   * @param complete false if the text broke off; what may still have come is then not missed
   * @return the plan, with an empty source; empty if {@code faults} is not
   */
  public static Optional<Plan> assemble(
      Node root, boolean complete, PlanLimits limits, Faults faults) {
    return new Assembler(new Context(faults, limits), complete).plan(root);
  }

  private Optional<Plan> plan(Node root) {
    Fields fields = Fields.of(context, root, "plan", PLAN_FIELDS);
    if (fields == null) {
      return Optional.empty();
    }
    checkFormat(fields);
    String id = fields.requiredText("id", "Add \"id\": a short name without spaces.");
    String title = fields.requiredText("title", "Add \"title\": one line for people.");
    Unit unit = fields.requiredWord("units", Names.UNITS);
    if (unit != null) {
      context.setUnit(unit);
    }
    Tolerances tolerances = tolerances(fields.get("tolerances"));
    Room room = room(fields.get("room"));
    Site site = site(fields.get("site"));
    ShellSize shell = shell(fields);
    Ids ids = new Ids(context);
    FacesReader facesReader = new FacesReader(context);
    Map<Face, FaceBuild> faces = facesReader.read(fields.get("faces"));
    OpeningsReader openings = new OpeningsReader(context, ids);
    openings.read(fields);
    PartsReader parts = new PartsReader(context, ids, facesReader, faces);
    for (PartsReader.PartList list : PartsReader.PartList.values()) {
      parts.read(list, fields);
    }
    RunsReader runs = new RunsReader(context, ids);
    runs.read(fields);
    CircuitsReader circuits = new CircuitsReader(context, ids);
    circuits.read(fields);
    Foaming foaming = foaming(fields.get("foaming"));
    ReadingsReader readings = new ReadingsReader(context, ids);
    readings.read(fields);
    if (complete) {
      ids.checkReferences();
    }
    if (shell != null && unit != null) {
      checkPlaces(new OutsideCheck(context, shell, unit), openings, parts, runs);
    }
    if (!complete || !context.faults.isEmpty()) {
      return Optional.empty();
    }
    if (id == null || title == null || unit == null || shell == null) {
      throw new IllegalStateException("a plan without " + fields.owner() + "'s basics passed");
    }
    return Optional.of(
        new Plan(
            id,
            title,
            unit,
            tolerances,
            room,
            site,
            shell,
            faces,
            openings.openings(),
            parts.parts(),
            runs.runs(),
            circuits.circuits(),
            foaming,
            readings.readings(),
            new PlanSource("", "", Map.of())));
  }

  private void checkPlaces(
      OutsideCheck outside, OpeningsReader openings, PartsReader parts, RunsReader runs) {
    outside.checkOpenings(openings.openings(), openings.nodes());
    outside.checkParts(parts.parts(), parts.rows());
    outside.checkRuns(runs.runs(), runs.points());
    new OpeningCheck(context)
        .check(openings.openings(), openings.nodes(), parts.parts(), parts.rows());
  }

  private void checkFormat(Fields fields) {
    String format =
        fields.requiredText(
            "format", "Add \"format\": \"" + Plan.FORMAT + "\" as the first field.");
    Node node = fields.get("format");
    if (format != null && node != null && !format.equals(Plan.FORMAT)) {
      context.faults.add(
          "wrong-format",
          node,
          "The plan's format is " + Wording.quoted(format) + ".",
          "This reader knows \"" + Plan.FORMAT + "\" only.");
    }
  }

  private Tolerances tolerances(@Nullable Node node) {
    Fields fields =
        node == null ? null : Fields.of(context, node, "set of tolerances", TOLERANCE_FIELDS);
    return fields == null
        ? Tolerances.NONE
        : new Tolerances(
            fields.length("shell", Amounts.Range.NOT_NEGATIVE),
            fields.length("framing", Amounts.Range.NOT_NEGATIVE),
            fields.length("electrical", Amounts.Range.NOT_NEGATIVE),
            fields.length("contact", Amounts.Range.NOT_NEGATIVE));
  }

  private Room room(@Nullable Node node) {
    Fields fields = node == null ? null : Fields.of(context, node, "room", ROOM_FIELDS);
    return fields == null
        ? new Room("/room", null, null, null)
        : new Room(
            "/room",
            fields.text("use"),
            fields.quantity("temperature", Dimension.TEMPERATURE, TEMPERATURE_EXAMPLE),
            fields.quantity("humidity", Dimension.PERCENT, "\"60 %\""));
  }

  private Foaming foaming(@Nullable Node node) {
    Fields fields =
        node == null ? null : Fields.of(context, node, "set of foaming values", FOAMING_FIELDS);
    return fields == null
        ? Foaming.UNKNOWN
        : new Foaming(
            fields.length("nozzle", Amounts.Range.POSITIVE),
            fields.length("reach", Amounts.Range.POSITIVE));
  }

  private Site site(@Nullable Node node) {
    Fields fields = node == null ? null : Fields.of(context, node, "site", SITE_FIELDS);
    return fields == null
        ? new Site("/site", null, null)
        : new Site(
            "/site",
            fields.text("name"),
            fields.quantity("outdoorDesignTemperature", Dimension.TEMPERATURE, "\"-38 degC\""));
  }

  /** The shell; where both a size code and inside lengths are given, the lengths count. */
  private @Nullable ShellSize shell(Fields plan) {
    Node node =
        plan.required("shell", "Add \"shell\": { \"size\": \"45G1\" } or its inside lengths.");
    Fields fields = node == null ? null : Fields.of(context, node, "shell", SHELL_FIELDS);
    if (fields == null) {
      return null;
    }
    Node inside = fields.get("inside");
    Node sizeNode = fields.get("size");
    String size = fields.text("size");
    Optional<ShellSize> typical = size == null ? Optional.empty() : Products.shell(size);
    if (size != null && sizeNode != null && typical.isEmpty()) {
      FacesReader.unknownProduct(context, sizeNode, size, "shell size", Products.shellNames());
    }
    if (inside == null && sizeNode == null) {
      fields.required("size", "Add \"size\", such as \"45G1\", or \"inside\" with its lengths.");
    }
    return inside == null
        ? typical.orElse(null)
        : inside(inside, typical.map(ShellSize::name).orElse(FacesReader.AS_GIVEN));
  }

  private @Nullable ShellSize inside(Node node, String name) {
    Fields fields = Fields.of(context, node, "shell's inside", INSIDE_FIELDS);
    if (fields == null) {
      return null;
    }
    Amount length = fields.requiredLength("length", Amounts.Range.POSITIVE);
    Amount width = fields.requiredLength("width", Amounts.Range.POSITIVE);
    Amount height = fields.requiredLength("height", Amounts.Range.POSITIVE);
    return length == null || width == null || height == null
        ? null
        : new ShellSize(name, length.millimetres(), width.millimetres(), height.millimetres());
  }
}
