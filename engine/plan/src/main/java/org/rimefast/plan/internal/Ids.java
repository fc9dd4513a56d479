package org.rimefast.plan.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.internal.json.Node;

/** Every id of a plan, and what refers to one. */
final class Ids {
  private final Context context;
  private final Map<String, Node> owners = new HashMap<>();
  private final Map<String, Integer> rows = new HashMap<>();

  /** Ids of rows of which it is not known how many items they have. */
  private final Set<String> uncounted = new HashSet<>();

  private final List<Reference> references = new ArrayList<>();

  Ids(Context context) {
    this.context = context;
  }

  private record Reference(Node node, String label, String id, To to) {}

  /** What a reference may name. */
  enum To {
    ANY("element", ""),
    /** What has a place: a circuit has none. */
    PLACED("part, opening or run", ""),
    CIRCUIT("circuit", "circuits"),
    PANEL("panel", "panels");

    private final String what;
    private final String list;

    To(String what, String list) {
      this.what = what;
      this.list = list;
    }

    private boolean allows(Node owner) {
      String pointer = owner.pointer();
      return switch (this) {
        case ANY -> true;
        case PLACED -> !pointer.startsWith("/" + CIRCUIT.list + "/");
        case CIRCUIT, PANEL -> pointer.startsWith("/" + list + "/");
      };
    }
  }

  /**
   * Takes the id of an element that may be a row, or those of the row.
   *
   * @param id null if the element has none
   * @param repeat the row that it stands for; null if it is none, or cannot be read
   */
  void take(@Nullable String id, @Nullable Repeat repeat, Fields element) {
    Node place = element.get("id");
    if (id == null || place == null) {
      return;
    }
    if (repeat == null) {
      if (element.has("repeat")) {
        uncounted.add(id);
      } else {
        take(id, place);
      }
      return;
    }
    rows.put(id, repeat.count());
    for (int i = 1; i <= repeat.count(); i++) {
      if (!take(Repeat.id(id, i), place)) {
        return;
      }
    }
  }

  /** Takes the id of an element that is no row; null if it has none. */
  void take(@Nullable String id, Fields element) {
    Node place = element.get("id");
    if (id != null && place != null) {
      take(id, place);
    }
  }

  private boolean take(String id, Node place) {
    Node first = owners.putIfAbsent(id, place);
    if (first == null) {
      return true;
    }
    String line = first.place() == null ? "" : " (line " + first.place().line() + ")";
    context.faults.add(
        "duplicate-id",
        place,
        "The id " + Wording.quoted(id) + " is taken by " + parentPointer(first) + line + ".",
        "Give every element an id of its own; items of a repeat are named ID-1, ID-2 and so on.");
    return false;
  }

  private static String parentPointer(Node id) {
    String pointer = id.pointer();
    return pointer.substring(0, Math.max(0, pointer.lastIndexOf('/')));
  }

  /** Notes that an element names another; checked when all are known. */
  void refer(Fields element, String field, @Nullable String id, To to) {
    Node node = element.get(field);
    if (id != null && node != null) {
      references.add(new Reference(node, element.label(field), id, to));
    }
  }

  void checkReferences() {
    for (Reference reference : references) {
      String id = reference.id;
      Node owner = owners.get(id);
      if (owner != null && !reference.to.allows(owner)) {
        context.faults.add(
            "wrong-reference",
            reference.node,
            reference.label
                + " names "
                + Wording.quoted(id)
                + ", which is no "
                + reference.to.what
                + ".",
            reference.to == To.PLACED
                ? "Name what has a place in the module; a circuit has none."
                : "Name an entry of \"" + reference.to.list + "\".");
      }
      if (!owners.containsKey(id) && !uncounted.contains(id) && !uncounted.contains(row(id))) {
        context.faults.add(
            "dangling-reference",
            reference.node,
            reference.label
                + " names "
                + Wording.quoted(id)
                + ", and the plan has no element of that id.",
            remedy(id));
      }
    }
  }

  private String remedy(String id) {
    String row = rows.containsKey(id) ? id : row(id);
    Integer count = rows.get(row);
    if (count != null) {
      return Wording.quoted(row)
          + " is a row: name one of its items, "
          + Repeat.id(row, 1)
          + " to "
          + Repeat.id(row, count)
          + ".";
    }
    return (owners.size() > NEAR_AMONG ? Optional.<String>empty() : near(id))
        .map(found -> "Did you mean \"" + found + "\"?")
        .orElse("Name an element of the plan, or add it.");
  }

  /** The row that an id such as {@code R-3} would belong to. */
  private static String row(String id) {
    int dash = id.lastIndexOf('-');
    return dash < 0 ? id : id.substring(0, dash);
  }

  // Comparing a word with very many others would take longer than reading the plan.
  private static final int NEAR_AMONG = 1_000;

  private Optional<String> near(String id) {
    return Wording.nearest(id, owners.keySet().stream().sorted().toList());
  }
}
