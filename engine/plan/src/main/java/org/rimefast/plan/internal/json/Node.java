package org.rimefast.plan.internal.json;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.PlanSource.Place;

/**
 * A value of a JSON text, with its place. Pointers are made when asked for, because only a few of a
 * plan's many values ever need one.
 */
public abstract sealed class Node {
  private final @Nullable Node parent;
  private final @Nullable String name;
  private final int index;
  private final Position position;

  Node(Step step) {
    this.parent = step.parent;
    this.name = step.name;
    this.index = step.index;
    this.position = step.position;
  }

  /** Where a value stands in the text; lines count from 1, and 0 means that there is no text. */
  public record Position(int nameLine, int nameColumn, int line, int column) {
    /** Of a value that was not read from a text. */
    public static final Position NONE = new Position(0, 0, 0, 0);
  }

  /** The way from a parent to a value. */
  public record Step(@Nullable Node parent, @Nullable String name, int index, Position position) {
    /** To the outermost value. */
    public static Step root(Position position) {
      return new Step(null, null, 0, position);
    }

    /** To the member {@code name} of {@code parent}. */
    public static Step member(Structure parent, String name, Position position) {
      return new Step(parent, name, 0, position);
    }

    /** To the next item of {@code parent}. */
    public static Step item(Sequence parent, Position position) {
      return new Step(parent, null, parent.children.size(), position);
    }
  }

  /** The member's name; null for items and the outermost value. */
  public @Nullable String name() {
    return name;
  }

  /** The value's JSON pointer (RFC 6901). */
  public String pointer() {
    StringBuilder text = new StringBuilder();
    appendPointer(text);
    return text.toString();
  }

  private void appendPointer(StringBuilder text) {
    if (parent == null) {
      return;
    }
    // Nesting is limited when a text is read, so this does not run deep.
    parent.appendPointer(text);
    text.append('/');
    if (name == null) {
      text.append(index);
    } else {
      text.append(name.replace("~", "~0").replace("/", "~1"));
    }
  }

  /** Where the value starts; null if it was not read from a text. */
  public @Nullable Place place() {
    return position.line == 0 ? null : new Place(position.line, position.column);
  }

  /** Where the member's name starts, or the value if it has no name. */
  public @Nullable Place namePlace() {
    return position.nameLine == 0 ? place() : new Place(position.nameLine, position.nameColumn);
  }

  /** What kind of value it is, in words: {@code a list}. */
  public abstract String kind();

  /** A value that holds others. */
  public abstract static sealed class Container extends Node {
    final List<Node> children;
    private boolean closed = true;

    Container(Step step, int expected) {
      super(step);
      children = new ArrayList<>(expected);
    }

    final void add(Node child) {
      children.add(child);
    }

    /** False if the text broke off inside. */
    public boolean isClosed() {
      return closed;
    }

    void markOpen(boolean open) {
      closed = !open;
    }
  }

  /** A JSON object. Members keep their order; a second one of the same name is kept too. */
  public static final class Structure extends Container {
    public Structure(Step step) {
      super(step, 6);
    }

    /** The members, each with its name. */
    public List<Node> members() {
      return Collections.unmodifiableList(children);
    }

    /** The first member of that name. */
    public @Nullable Node member(String name) {
      for (Node member : children) {
        if (name.equals(member.name())) {
          return member;
        }
      }
      return null;
    }

    @Override
    public String kind() {
      return "an object";
    }
  }

  /** A JSON array. */
  public static final class Sequence extends Container {
    public Sequence(Step step) {
      super(step, 4);
    }

    /** The items. */
    public List<Node> items() {
      return Collections.unmodifiableList(children);
    }

    @Override
    public String kind() {
      return "a list";
    }
  }

  /** A JSON string. */
  public static final class Text extends Node {
    private final String value;

    public Text(Step step, String value) {
      super(step);
      this.value = value;
    }

    /** The text. */
    public String value() {
      return value;
    }

    @Override
    public String kind() {
      return "text";
    }
  }

  /** A JSON number, as it is spelt. */
  public static final class Numeral extends Node {
    private final String spelling;

    public Numeral(Step step, String spelling) {
      super(step);
      this.spelling = spelling;
    }

    /** The number as written. */
    public String spelling() {
      return spelling;
    }

    @Override
    public String kind() {
      return "a number";
    }
  }

  /** True, false or null. */
  public static final class Literal extends Node {
    private final String word;

    public Literal(Step step, String word) {
      super(step);
      this.word = word;
    }

    /** The word as written. */
    public String word() {
      return word;
    }

    @Override
    public String kind() {
      return word;
    }
  }
}
