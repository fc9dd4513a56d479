package org.rimefast.plan.internal.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Face;
import org.rimefast.plan.Opening;
import org.rimefast.plan.Part;
import org.rimefast.plan.Plan;
import org.rimefast.plan.PlanReader;
import org.rimefast.plan.internal.Wording;
import org.rimefast.plan.internal.json.LooseTree;
import org.rimefast.plan.internal.json.Node;

/** Finds the elements of a plan in its tree. */
final class Elements {
  private static final String ROOM = "room";

  private final Map<String, Object> root;

  Elements(Map<String, Object> root) {
    this.root = root;
  }

  /** Where an entry stands. */
  private record Entry(List<Object> list, int index, Map<String, Object> fields) {}

  /**
   * The object of an element.
   *
   * @param make whether one is made for a face or the room that has none of its own
   */
  Map<String, Object> find(String name, boolean make) throws Refused {
    Optional<Entry> entry = entry(name);
    if (entry.isPresent()) {
      return entry.get().fields();
    }
    String face = face(name);
    if (face == null && !name.equals(ROOM)) {
      throw unknown(name);
    }
    if (face == null) {
      return inner(root, ROOM, make);
    }
    return inner(inner(root, "faces", make), face, make);
  }

  /** Takes an element away. */
  void remove(String name) throws Refused {
    Optional<Entry> entry = entry(name);
    if (entry.isEmpty()) {
      throw isFace(name) || name.equals(ROOM)
          ? new Refused(
              "The " + name + " is no entry of a list, and cannot be taken away as a whole.",
              "Name its place in the plan: remove \"/faces/left\"")
          : unknown(name);
    }
    entry.get().list().remove(entry.get().index());
  }

  boolean isFace(String name) {
    return face(name) != null;
  }

  private static Map<String, Object> inner(Map<String, Object> owner, String name, boolean make) {
    if (owner.get(name) instanceof Map<?, ?> found) {
      return Editor.typed(found);
    }
    Map<String, Object> made = Editor.structure();
    if (make) {
      owner.put(name, made);
    }
    return made;
  }

  private static @Nullable String face(String name) {
    for (Face face : Face.values()) {
      boolean isWall = face.isWall() && name.equals(face.word() + " wall");
      if (isWall || name.equals(face.word())) {
        return face.word();
      }
    }
    return null;
  }

  private Optional<Entry> entry(String id) throws Refused {
    Optional<Entry> found = plain(id);
    if (found.isPresent()) {
      return found;
    }
    int dash = id.lastIndexOf('-');
    Optional<Entry> row = dash < 0 ? Optional.empty() : plain(id.substring(0, dash));
    if (row.isEmpty() || !row.get().fields().containsKey("repeat")) {
      return Optional.empty();
    }
    split(row.get(), id.substring(0, dash));
    return plain(id);
  }

  private Optional<Entry> plain(String id) {
    for (Object value : root.values()) {
      if (value instanceof List<?> list) {
        for (int i = 0; i < list.size(); i++) {
          if (list.get(i) instanceof Map<?, ?> fields && id.equals(text(fields.get("id")))) {
            return Optional.of(new Entry(Editor.typed(list), i, Editor.typed(fields)));
          }
        }
      }
    }
    return Optional.empty();
  }

  private static @Nullable String text(@Nullable Object value) {
    return value instanceof Node.Text text ? text.value() : null;
  }

  /** Puts the items of a row in its place, so that one can differ from the others. */
  private void split(Entry row, String id) throws Refused {
    Optional<Plan> plan = new PlanReader().read("row", LooseTree.print(root)).plan();
    if (plan.isEmpty()) {
      throw new Refused(
          "The row " + Wording.quoted(id) + " cannot be split, because the plan has faults.",
          "Put the plan right, or edit the row as a whole.");
    }
    boolean up =
        row.fields().get("repeat") instanceof Map<?, ?> repeat
            && "up".equals(text(repeat.get("direction")));
    List<Object> items = new ArrayList<>();
    for (Placed placed : placed(plan.get(), id, up)) {
      Map<String, Object> item = new LinkedHashMap<>(row.fields());
      item.remove("repeat");
      item.put("id", LooseTree.text(placed.id()));
      if (placed.place() != null) {
        item.put(placed.field(), LooseTree.text(spelled(placed.place())));
      }
      items.add(LooseTree.copy(item));
    }
    row.list().remove(row.index());
    row.list().addAll(row.index(), items);
  }

  /** An item of a row, and the one field in which it differs from the others. */
  private record Placed(String id, String field, @Nullable Amount place) {}

  private static List<Placed> placed(Plan plan, String row, boolean up) {
    List<Placed> placed = new ArrayList<>();
    for (Part part : plan.parts()) {
      if (isOf(row, part.id())) {
        placed.add(new Placed(part.id(), up ? "up" : "along", up ? part.up() : part.along()));
      }
    }
    for (Opening opening : plan.openings()) {
      if (isOf(row, opening.id())) {
        placed.add(
            new Placed(opening.id(), up ? "sill" : "from", up ? opening.sill() : opening.from()));
      }
    }
    return placed;
  }

  private static boolean isOf(String row, String id) {
    return id.startsWith(row + "-") && id.substring(row.length() + 1).matches("[1-9][0-9]*");
  }

  private static String spelled(Amount amount) {
    return amount.plusMinus() == null
        ? amount.value().text()
        : amount.value().text() + " +- " + amount.plusMinus().text();
  }

  private Refused unknown(String name) {
    List<String> known = new ArrayList<>();
    for (Object value : root.values()) {
      if (value instanceof List<?> list) {
        for (Object item : list) {
          String id = item instanceof Map<?, ?> fields ? text(fields.get("id")) : null;
          if (id != null) {
            known.add(id);
          }
        }
      }
    }
    return new Refused(
        "The plan has no element " + Wording.quoted(name) + ".",
        Wording.nearest(name, known)
            .map(near -> "Did you mean \"" + near + "\"?")
            .orElse("Name an element by its id, or a face, or room."));
  }
}
