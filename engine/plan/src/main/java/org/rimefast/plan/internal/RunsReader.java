package org.rimefast.plan.internal;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Face;
import org.rimefast.plan.Products;
import org.rimefast.plan.Run;
import org.rimefast.plan.RunBuild;
import org.rimefast.plan.internal.json.Node;

/** Reads cables and conduits. */
final class RunsReader {
  static final List<String> FIELDS = fields();
  static final List<String> POINT_FIELDS = List.of("face", "along", "up", "depth", "bend");

  private final Context context;
  private final Ids ids;
  private final RunBuildReader builds;
  private final List<Run> runs = new ArrayList<>();
  private final List<List<Node>> points = new ArrayList<>();

  RunsReader(Context context, Ids ids) {
    this.context = context;
    this.ids = ids;
    this.builds = new RunBuildReader(context, ids);
  }

  private static List<String> fields() {
    List<String> fields = new ArrayList<>(List.of("id", "kind", "diameter", "path", "from", "to"));
    fields.addAll(RunBuildReader.FIELDS);
    return List.copyOf(fields);
  }

  List<Run> runs() {
    return runs;
  }

  /** The values that the points of each run were read from. */
  List<List<Node>> points() {
    return points;
  }

  void read(Fields plan) {
    for (Node item : plan.items("runs")) {
      Fields fields = Fields.of(context, item, "run", FIELDS);
      if (fields != null && context.count(1, fields)) {
        readRun(fields);
      }
    }
  }

  private void readRun(Fields fields) {
    String id = fields.requiredText("id", "Add \"id\": a name that no other element has.");
    if (fields.node().isClosed()) {
      ids.take(id, fields);
    }
    Run.Kind kind = fields.requiredWord("kind", Names.RUN_KINDS);
    Products.EmtSize size = builds.size(fields, kind);
    Amount own = fields.length("diameter", Amounts.Range.POSITIVE);
    Amount diameter = own == null && size != null ? new Amount(size.diameter(), null) : own;
    RunBuild build = builds.read(fields, kind, size);
    builds.checkBore(fields, kind, build.bore(), diameter);
    String from = fields.text("from");
    String to = fields.text("to");
    ids.refer(fields, "from", from, Ids.To.PLACED);
    ids.refer(fields, "to", to, Ids.To.PLACED);
    List<Node> items = pathItems(fields);
    List<Run.PathPoint> path = new ArrayList<>();
    for (Node item : items) {
      Run.PathPoint point = point(item, fields);
      if (point != null) {
        path.add(point);
      }
    }
    boolean readAll = path.size() == items.size() && path.size() >= 2 && fields.node().isClosed();
    if (readAll && hasLength(fields, path, items) && id != null && kind != null) {
      runs.add(new Run(id, fields.node().pointer(), kind, diameter, path, from, to, build));
      points.add(items);
    }
  }

  private List<Node> pathItems(Fields fields) {
    Node path =
        fields.required("path", "Add \"path\": a list of two or more points of its middle line.");
    List<Node> items = fields.items("path");
    if (path instanceof Node.Sequence sequence && sequence.isClosed() && items.size() < 2) {
      context.faults.add(
          "too-few-points",
          path,
          "The path of "
              + fields.owner()
              + " has "
              + (items.isEmpty() ? "no point." : "only one point."),
          "Give at least its two ends.");
    }
    return items;
  }

  private Run.@Nullable PathPoint point(Node item, Fields run) {
    Fields fields = Fields.of(context, item, "point of " + run.owner(), POINT_FIELDS);
    if (fields == null) {
      return null;
    }
    Face face = fields.requiredWord("face", Names.FACES);
    Amount along = fields.length("along", Amounts.Range.ANY);
    Amount up = fields.length("up", Amounts.Range.ANY);
    Amount depth = fields.length("depth", Amounts.Range.ANY);
    Amount bend = fields.length("bend", Amounts.Range.NOT_NEGATIVE);
    return face == null ? null : new Run.PathPoint(item.pointer(), face, along, up, depth, bend);
  }

  private boolean hasLength(Fields run, List<Run.PathPoint> path, List<Node> items) {
    boolean good = true;
    for (int i = 1; i < path.size(); i++) {
      if (samePlace(path.get(i - 1), path.get(i))) {
        context.faults.add(
            "zero-length-path",
            items.get(i),
            "Points " + i + " and " + (i + 1) + " of " + run.owner() + " are the same place.",
            path.size() == 2 ? "Give its two ends different places." : "Take one of the two out.");
        good = false;
      }
    }
    return good;
  }

  private static boolean samePlace(Run.PathPoint a, Run.PathPoint b) {
    return a.face() == b.face()
        && equal(a.along(), b.along())
        && equal(a.up(), b.up())
        && equal(a.depth(), b.depth());
  }

  /** Equal lengths, however they are spelt; two absent ones are not known to be equal. */
  private static boolean equal(@Nullable Amount a, @Nullable Amount b) {
    return a != null && b != null && a.value().si().equals(b.value().si());
  }
}
