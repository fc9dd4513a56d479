package org.rimefast.plan.internal.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimefast.plan.internal.json.Node.Position;
import org.rimefast.plan.internal.json.Node.Sequence;
import org.rimefast.plan.internal.json.Node.Step;
import org.rimefast.plan.internal.json.Node.Structure;

/**
 * JSON that can be changed: an object is a {@code Map} in order, a list is a {@code List}, and all
 * else is a {@link Node}.
 */
public final class LooseTree {
  private LooseTree() {}

  /** Objects that can be changed, from a tree; of members of one name, the last. */
  public static Object of(Node node) {
    if (node instanceof Structure structure) {
      Map<String, Object> members = new LinkedHashMap<>();
      structure.members().forEach(member -> members.put(String.valueOf(member.name()), of(member)));
      return members;
    }
    if (node instanceof Sequence sequence) {
      List<Object> items = new ArrayList<>();
      sequence.items().forEach(item -> items.add(of(item)));
      return items;
    }
    return node;
  }

  /** The pointer of an object that has two members of one name; empty if there is none. */
  public static Optional<String> repeatedName(Node node) {
    if (node instanceof Structure structure) {
      long names = structure.members().stream().map(Node::name).distinct().count();
      if (names < structure.members().size()) {
        return Optional.of(structure.pointer());
      }
    }
    if (node instanceof Node.Container container) {
      return container.children.stream().flatMap(child -> repeatedName(child).stream()).findFirst();
    }
    return Optional.empty();
  }

  /** The same values in objects and lists of their own. */
  public static Object copy(Object value) {
    if (value instanceof Map<?, ?> members) {
      Map<String, Object> copy = new LinkedHashMap<>();
      members.forEach((name, member) -> copy.put(String.valueOf(name), copy(member)));
      return copy;
    }
    if (value instanceof List<?> items) {
      List<Object> copy = new ArrayList<>();
      items.forEach(item -> copy.add(copy(item)));
      return copy;
    }
    return value;
  }

  /** A text. */
  public static Object text(String value) {
    return new Node.Text(Step.root(Position.NONE), value);
  }

  /** A number by its spelling. */
  public static Object number(String spelling) {
    return new Node.Numeral(Step.root(Position.NONE), spelling);
  }

  /** The value as JSON in UTF-8. */
  public static byte[] print(Object value) {
    return JsonText.print(node(value, Step.root(Position.NONE)));
  }

  private static Node node(Object value, Step step) {
    if (value instanceof Map<?, ?> members) {
      Structure made = new Structure(step);
      members.forEach(
          (name, member) -> {
            String key = String.valueOf(name);
            made.add(node(member, Step.member(made, key, Position.NONE)));
          });
      return made;
    }
    if (value instanceof List<?> items) {
      Sequence made = new Sequence(step);
      items.forEach(item -> made.add(node(item, Step.item(made, Position.NONE))));
      return made;
    }
    if (value instanceof Node.Text text) {
      return new Node.Text(step, text.value());
    }
    if (value instanceof Node.Numeral number) {
      return new Node.Numeral(step, number.spelling());
    }
    return new Node.Literal(step, ((Node.Literal) value).word());
  }
}
