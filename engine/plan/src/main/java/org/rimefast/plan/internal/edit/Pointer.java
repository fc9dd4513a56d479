package org.rimefast.plan.internal.edit;

import java.util.List;
import java.util.Map;
import org.rimefast.plan.internal.Wording;

/** A place in a plan by its JSON pointer (RFC 6901). */
final class Pointer {
  private final Map<String, Object> root;
  private final String pointer;
  private final String[] steps;

  Pointer(Map<String, Object> root, String pointer) {
    this.root = root;
    this.pointer = pointer;
    this.steps = pointer.substring(1).split("/", -1);
    for (int i = 0; i < steps.length; i++) {
      steps[i] = steps[i].replace("~1", "/").replace("~0", "~");
    }
  }

  /** Puts a value there; {@code -} behind a list puts it at its end. */
  void set(Object value) throws Refused {
    Object owner = owner(true);
    String last = steps[steps.length - 1];
    if (owner instanceof Map<?, ?> members) {
      Editor.typed(members).put(last, value);
      return;
    }
    List<Object> items = list(owner);
    if (last.equals("-")) {
      items.add(value);
    } else {
      items.set(index(items, last), value);
    }
  }

  /** Takes away what is there. */
  void remove() throws Refused {
    Object owner = owner(false);
    String last = steps[steps.length - 1];
    if (owner instanceof Map<?, ?> members) {
      if (!members.containsKey(last)) {
        throw nothingAt(pointer);
      }
      members.remove(last);
      return;
    }
    List<Object> items = list(owner);
    items.remove(index(items, last));
  }

  /** What holds the value. Objects on the way to a new value are made; lists are not. */
  private Object owner(boolean make) throws Refused {
    Object at = root;
    StringBuilder way = new StringBuilder();
    for (int i = 0; i < steps.length - 1; i++) {
      way.append('/').append(steps[i]);
      if (at instanceof Map<?, ?> members) {
        Object next = members.get(steps[i]);
        if (next == null && make) {
          next = Editor.structure();
          Editor.typed(members).put(steps[i], next);
        }
        if (next == null) {
          throw nothingAt(way.toString());
        }
        at = next;
      } else {
        List<Object> items = list(at);
        at = items.get(index(items, steps[i]));
      }
    }
    return at;
  }

  private List<Object> list(Object value) throws Refused {
    if (value instanceof List<?> items) {
      return Editor.typed(items);
    }
    throw nothingAt(pointer);
  }

  private int index(List<Object> items, String step) throws Refused {
    if (step.matches("0|[1-9][0-9]{0,8}") && Integer.parseInt(step) < items.size()) {
      return Integer.parseInt(step);
    }
    throw nothingAt(pointer);
  }

  private static Refused nothingAt(String pointer) {
    return new Refused(
        "The plan has nothing at " + Wording.quoted(pointer) + ".",
        "Write the names on the way to it, each with a slash before it; items of a list count from"
            + " 0.");
  }
}
