package org.rimefast.plan.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Products;
import org.rimefast.plan.Run;
import org.rimefast.plan.RunBuild;
import org.rimefast.plan.RunBuild.Conductors;
import org.rimefast.plan.internal.json.Node;
import org.rimefast.units.Dimension;

/** Reads what a run is made of and how it is fixed. */
final class RunBuildReader {
  static final List<String> FIELDS =
      List.of(
          "armour",
          "bore",
          "size",
          "bendRadius",
          "circuit",
          "fromSide",
          "toSide",
          "fromConnector",
          "toConnector",
          "conductors",
          "supports",
          "slack");
  static final List<String> CONDUCTOR_FIELDS = List.of("size", "count", "use", "rating");
  static final List<String> SLACK_FIELDS = List.of("from", "to", "corners");
  static final int MOST_CONDUCTORS = 100;

  private final Context context;
  private final Ids ids;

  RunBuildReader(Context context, Ids ids) {
    this.context = context;
    this.ids = ids;
  }

  /** The trade size of a run of electrical metallic tubing; null if it has none. */
  Products.@Nullable EmtSize size(Fields run, Run.@Nullable Kind kind) {
    String size = run.text("size");
    Node node = run.get("size");
    if (size == null || node == null || kind == null) {
      return null;
    }
    if (kind != Run.Kind.EMT) {
      run.refuse("size", kind.word(), "Give \"diameter\" and, for a conduit, \"bore\".");
      return null;
    }
    Products.EmtSize found = Products.emt(size).orElse(null);
    if (found == null) {
      FacesReader.unknownProduct(context, node, size, "tubing size", Products.emtNames());
    }
    return found;
  }

  /**
   * What the run is made of.
   *
   * @param size its trade size, which gives the bore if it gives none
   */
  RunBuild read(Fields run, Run.@Nullable Kind kind, Products.@Nullable EmtSize size) {
    if (kind != null && !kind.isArmoured()) {
      run.refuse("armour", kind.word(), "Only armoured-cable and metal-clad-cable have an armour.");
    }
    if (kind != null && kind.isCable()) {
      run.refuse("bore", kind.word(), "Only conduits have a bore.");
    }
    String circuit = run.text("circuit");
    ids.refer(run, "circuit", circuit, Ids.To.CIRCUIT);
    Amount bore = run.length("bore", Amounts.Range.POSITIVE);
    Node slackNode = run.get("slack");
    Fields slack =
        slackNode == null
            ? null
            : Fields.of(context, slackNode, "slack of " + run.owner(), SLACK_FIELDS);
    return new RunBuild(
        run.word("armour", Names.ARMOURS),
        bore == null && size != null ? new Amount(size.bore(), null) : bore,
        run.length("bendRadius", Amounts.Range.NOT_NEGATIVE),
        conductors(run),
        circuit,
        supports(run),
        end(run, "from", slack),
        end(run, "to", slack),
        slack == null ? null : slack.length("corners", Amounts.Range.NOT_NEGATIVE));
  }

  /** A conduit is wider outside than inside, wherever its sizes are within their tolerances. */
  void checkBore(
      Fields run, Run.@Nullable Kind kind, @Nullable Amount bore, @Nullable Amount diameter) {
    Node node = run.get(run.has("bore") ? "bore" : "diameter");
    if (kind == null || kind.isCable() || bore == null || diameter == null || node == null) {
      return;
    }
    double wall = diameter.si() - bore.si();
    if (wall <= -diameter.siTolerance() - bore.siTolerance()) {
      context.faults.add(
          "bore-too-wide",
          node,
          "The bore of "
              + run.owner()
              + " is "
              + bore.value().text()
              + ", and its diameter is only "
              + diameter.value().text()
              + ".",
          "Give the inside as \"bore\" and the outside as \"diameter\".");
    }
  }

  private static RunBuild.End end(Fields run, String name, @Nullable Fields slack) {
    return new RunBuild.End(
        run.word(name + "Side", Names.SIDES),
        run.word(name + "Connector", Names.CONNECTORS),
        slack == null ? null : slack.length(name, Amounts.Range.NOT_NEGATIVE));
  }

  private @Nullable List<Conductors> conductors(Fields run) {
    if (!run.has("conductors")) {
      return null;
    }
    List<Conductors> groups = new ArrayList<>();
    for (Node item : run.items("conductors")) {
      Fields fields =
          Fields.of(context, item, "group of conductors of " + run.owner(), CONDUCTOR_FIELDS);
      Conductors group = fields == null ? null : group(fields);
      // Every conductor is an element of its own when a plan is checked.
      if (group != null && context.count(group.count(), run)) {
        groups.add(group);
      }
    }
    return groups;
  }

  private @Nullable Conductors group(Fields fields) {
    String size =
        fields.requiredText("size", "Add \"size\": the size of each, such as \"12 AWG\".");
    Node node = fields.get("size");
    OptionalInt gauge = size == null ? OptionalInt.empty() : Products.gauge(size);
    if (size != null && node != null && gauge.isEmpty()) {
      context.faults.add(
          "unknown-product",
          node,
          "There is no conductor size " + Wording.quoted(size) + " among the known ones.",
          "Write a whole number from 18 to 1 and AWG, such as \"12 AWG\".");
    }
    Integer count = fields.count("count", 1, MOST_CONDUCTORS);
    Conductors.Use use = fields.word("use", Names.USES);
    Amount rating = fields.quantity("rating", Dimension.TEMPERATURE, "\"90 degC\"");
    return gauge.isEmpty()
        ? null
        : new Conductors(
            fields.node().pointer(),
            gauge.getAsInt(),
            count == null ? 1 : count,
            use == null ? Conductors.Use.CURRENT_CARRYING : use,
            rating);
  }

  private @Nullable List<Amount> supports(Fields run) {
    if (!run.has("supports")) {
      return null;
    }
    List<Amount> supports = new ArrayList<>();
    int number = 0;
    for (Node item : run.items("supports")) {
      int of = ++number;
      Amount place =
          Amounts.length(
              context,
              item,
              () -> "Support " + of + " of " + run.owner(),
              Amounts.Range.NOT_NEGATIVE);
      if (place == null) {
        continue;
      }
      Amount before = supports.isEmpty() ? null : supports.get(supports.size() - 1);
      if (before != null && place.value().si().compareTo(before.value().si()) <= 0) {
        context.faults.add(
            "unsorted-supports",
            item,
            "Support "
                + of
                + " of "
                + run.owner()
                + " is at "
                + place.value().text()
                + ", not farther along than the one before it, at "
                + before.value().text()
                + ".",
            "List the supports from its first end to its last, each place once.");
      }
      supports.add(place);
    }
    return supports;
  }
}
