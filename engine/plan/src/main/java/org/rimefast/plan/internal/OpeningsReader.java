package org.rimefast.plan.internal;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Door;
import org.rimefast.plan.Face;
import org.rimefast.plan.Opening;
import org.rimefast.plan.internal.json.Node;

/** Reads the openings. */
final class OpeningsReader {
  static final List<String> FIELDS =
      List.of("id", "face", "from", "sill", "width", "height", "door", "repeat");
  static final List<String> DOOR_FIELDS = List.of("hinge", "opens");

  private final Context context;
  private final Ids ids;
  private final List<Opening> openings = new ArrayList<>();
  private final List<Node> nodes = new ArrayList<>();

  OpeningsReader(Context context, Ids ids) {
    this.context = context;
    this.ids = ids;
  }

  List<Opening> openings() {
    return openings;
  }

  /** The value that each opening was read from. */
  List<Node> nodes() {
    return nodes;
  }

  void read(Fields plan) {
    for (Node item : plan.items("openings")) {
      Fields fields = Fields.of(context, item, "opening", FIELDS);
      if (fields != null) {
        readOpening(fields);
      }
    }
  }

  private void readOpening(Fields fields) {
    String id = fields.requiredText("id", "Add \"id\": a name that no other element has.");
    Face face = fields.requiredWord("face", Names.FACES);
    Amount from = fields.requiredLength("from", Amounts.Range.ANY);
    Amount sill = fields.requiredLength("sill", Amounts.Range.ANY);
    Amount width = fields.requiredLength("width", Amounts.Range.POSITIVE);
    Amount height = fields.requiredLength("height", Amounts.Range.POSITIVE);
    Door door = door(fields);
    Node repeatNode = fields.get("repeat");
    Repeat repeat = repeatNode == null ? null : Repeat.read(context, fields, repeatNode);
    int count = repeat == null ? 1 : repeat.count();
    if (!context.count(count, fields) || !fields.node().isClosed()) {
      return;
    }
    ids.take(id, repeat, fields);
    if (id == null || face == null || from == null || sill == null) {
      return;
    }
    if (width == null || height == null || (repeatNode != null && repeat == null)) {
      return;
    }
    Opening first = new Opening(id, fields.node().pointer(), face, from, sill, width, height, door);
    for (int i = 0; i < count; i++) {
      openings.add(repeat == null ? first : inRow(first, repeat, i));
      nodes.add(fields.node());
    }
  }

  private @Nullable Door door(Fields opening) {
    Node node = opening.get("door");
    Fields fields =
        node == null ? null : Fields.of(context, node, "door of " + opening.owner(), DOOR_FIELDS);
    if (fields == null) {
      return null;
    }
    Door.Hinge hinge = fields.requiredWord("hinge", Names.HINGES);
    Door.Swing opens = fields.requiredWord("opens", Names.SWINGS);
    return hinge == null || opens == null ? null : new Door(hinge, opens);
  }

  /** The item of a row, counted from 0, whose first one is {@code first}. */
  static Opening inRow(Opening first, Repeat repeat, int steps) {
    return moved(first, Repeat.id(first.id(), steps + 1), repeat, steps);
  }

  static Opening moved(Opening first, String id, Repeat repeat, int steps) {
    Amount start = repeat.up() ? first.sill() : first.from();
    Amount moved = Lengths.moved(start, repeat.spacing(), steps);
    return new Opening(
        id,
        first.pointer(),
        first.face(),
        repeat.up() ? first.from() : moved,
        repeat.up() ? moved : first.sill(),
        first.width(),
        first.height(),
        first.door());
  }
}
