package org.rimefast.plan.internal;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.internal.json.Node;
import org.rimefast.plan.internal.json.Node.Sequence;
import org.rimefast.plan.internal.json.Node.Structure;
import org.rimefast.plan.internal.json.Node.Text;
import org.rimefast.units.Dimension;
import org.rimefast.units.Rational;

/** The members of one object of a plan, of which only known ones may occur, each once. */
final class Fields {
  private final Context context;
  private final Structure node;
  private final String what;

  private Fields(Context context, Structure node, String what) {
    this.context = context;
    this.node = node;
    this.what = what;
  }

  /**
   * The members of {@code node}; null, with a fault, if it is no object.
   *
   * @param what what it is, in words: {@code box}
   */
  static @Nullable Fields of(Context context, Node node, String what, List<String> known) {
    if (!(node instanceof Structure structure)) {
      if (brokenOff(node)) {
        return null;
      }
      context.faults.add(
          "wrong-type",
          node,
          "A " + what + " must be an object; here stands " + node.kind() + ".",
          "Write it in braces: { \"" + known.get(0) + "\": ... }.");
      return null;
    }
    Fields fields = new Fields(context, structure, what);
    fields.checkNames(known);
    return fields;
  }

  private void checkNames(List<String> known) {
    long seen = 0; // one bit for each known name
    for (Node member : node.members()) {
      String name = String.valueOf(member.name());
      int index = known.indexOf(name);
      if (index < 0) {
        if (context.faults.isFull()) {
          context.faults.count();
          continue;
        }
        Optional<String> near = Wording.nearest(name, known);
        context.faults.addAtName(
            "unknown-field",
            member,
            "A " + what + " has no field " + Wording.quoted(name) + ".",
            near.map(found -> "Did you mean \"" + found + "\"? ").orElse("")
                + "Its fields are "
                + String.join(", ", known)
                + ".");
      } else if ((seen & (1L << index)) != 0) {
        context.faults.addAtName(
            "duplicate-key",
            member,
            capital(owner()) + " has the field \"" + name + "\" more than once.",
            "Keep one of them.");
      } else {
        seen |= 1L << index;
      }
    }
  }

  /** What the object is, in words: {@code box "R"}. */
  String owner() {
    return node.member("id") instanceof Text id && !what.equals("plan")
        ? what + " " + Wording.quoted(id.value())
        : "the " + what;
  }

  Structure node() {
    return node;
  }

  @Nullable Node get(String name) {
    return node.member(name);
  }

  boolean has(String name) {
    return node.member(name) != null;
  }

  /** The member, with a fault if it is absent from an object that was read to its end. */
  @Nullable Node required(String name, String remedy) {
    Node member = node.member(name);
    if (member == null && node.isClosed()) {
      context.faults.add(
          "missing-field", node, capital(owner()) + " has no \"" + name + "\".", remedy);
    }
    return member;
  }

  /** A text that is not blank; null, with a fault if it is something else. */
  @Nullable String text(String name) {
    Node member = get(name);
    return member == null ? null : text(member, name);
  }

  @Nullable String requiredText(String name, String remedy) {
    Node member = required(name, remedy);
    return member == null ? null : text(member, name);
  }

  private @Nullable String text(Node member, String name) {
    if (!(member instanceof Text text)) {
      wrongType(member, name, "text in quotes");
      return null;
    }
    String wrong = Wording.unprintable(text.value());
    if (text.value().isBlank() || wrong != null) {
      context.faults.add(
          "bad-text",
          member,
          label(name) + (wrong == null ? " is empty." : " holds " + wrong + "."),
          "Write one line of text.");
      return null;
    }
    return text.value();
  }

  /** One of a few words; null, with a fault if it is something else. */
  <T> @Nullable T word(String name, Map<String, T> words) {
    Node member = get(name);
    return member == null ? null : word(member, name, words);
  }

  <T> @Nullable T requiredWord(String name, Map<String, T> words) {
    Node member = required(name, "Add \"" + name + "\": " + Wording.either(words.keySet()) + ".");
    return member == null ? null : word(member, name, words);
  }

  private <T> @Nullable T word(Node member, String name, Map<String, T> words) {
    if (!(member instanceof Text text)) {
      wrongType(member, name, "one of the words " + Wording.either(words.keySet()));
      return null;
    }
    T value = words.get(text.value());
    if (value == null) {
      context.faults.add(
          "unknown-word",
          member,
          "\"" + name + "\" of " + owner() + " is " + Wording.quoted(text.value()) + ".",
          Wording.nearest(text.value(), words.keySet())
                  .map(near -> "Did you mean \"" + near + "\"? ")
                  .orElse("")
              + "It is "
              + Wording.either(words.keySet())
              + ".");
    }
    return value;
  }

  /** The items of a list; empty, with a fault if it is something else. */
  List<Node> items(String name) {
    Node member = get(name);
    if (member == null) {
      return List.of();
    }
    if (!(member instanceof Sequence sequence)) {
      wrongType(member, name, "a list in brackets [ ]");
      return List.of();
    }
    return sequence.items();
  }

  /** A length; null if absent, or with a fault if it is none. */
  @Nullable Amount length(String name, Amounts.Range range) {
    Node member = get(name);
    return member == null ? null : Amounts.length(context, member, () -> label(name), range);
  }

  @Nullable Amount requiredLength(String name, Amounts.Range range) {
    Node member = required(name, "Add \"" + name + "\": a length, such as 400 or \"16 in\".");
    return member == null ? null : Amounts.length(context, member, () -> label(name), range);
  }

  /** Any other value with a unit; null if absent, or with a fault if it is none. */
  @Nullable Amount quantity(String name, Dimension dimension, String example) {
    Node member = get(name);
    return member == null
        ? null
        : Amounts.quantity(context, member, () -> label(name), dimension, example);
  }

  /** Any other value with a unit, not less than a range allows; null if absent or wrong. */
  @Nullable Amount quantity(String name, Dimension dimension, String example, Amounts.Range range) {
    Node member = get(name);
    Amount amount = quantity(name, dimension, example);
    return amount == null
            || member == null
            || !Amounts.isIn(context, member, () -> label(name), amount, range)
        ? null
        : amount;
  }

  /** How many there are; null if absent, or with a fault if it is no number of that range. */
  @Nullable Integer count(String name, int least, int most) {
    Node member = get(name);
    if (member == null) {
      return null;
    }
    if (!(member instanceof Node.Numeral number)) {
      wrongType(member, name, "a whole number");
      return null;
    }
    Rational value = Amounts.number(context, member, number.spelling(), () -> label(name));
    if (value == null) {
      return null;
    }
    if (!value.isWhole()
        || value.compareTo(Rational.of(least)) < 0
        || value.compareTo(Rational.of(most)) > 0) {
      context.faults.add(
          "bad-count",
          member,
          label(name) + " is " + Amounts.clipped(number.spelling()) + ".",
          "Write a whole number from " + least + " to " + most + ".");
      return null;
    }
    return value.numerator().intValueExact();
  }

  /** A fault of a field, if it is there, that its owner's kind does not have. */
  void refuse(String name, String kind, String remedy) {
    Node member = get(name);
    if (member != null) {
      context.faults.addAtName(
          "misplaced-field",
          member,
          capital(owner()) + " is of kind " + kind + " and has no \"" + name + "\".",
          remedy);
    }
  }

  String label(String name) {
    return "\"" + name + "\" of " + owner();
  }

  /** True for a list or object that the text broke off in: there is a fault for that already. */
  private static boolean brokenOff(Node node) {
    return node instanceof Node.Container container && !container.isClosed();
  }

  void wrongType(Node member, String name, String expected) {
    if (brokenOff(member)) {
      return;
    }
    context.faults.add(
        "wrong-type",
        member,
        "\""
            + name
            + "\" of "
            + owner()
            + " must be "
            + expected
            + "; here stands "
            + (member instanceof Node.Text text
                ? "text " + Wording.quoted(text.value())
                : member.kind())
            + ".",
        "Write "
            + expected
            + "."
            + (member.kind().equals("null") ? " What is not known is left out." : ""));
  }

  static String capital(String sentence) {
    return sentence.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + sentence.substring(1);
  }
}
