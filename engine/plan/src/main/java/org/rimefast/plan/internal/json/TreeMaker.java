package org.rimefast.plan.internal.json;

import org.rimefast.plan.internal.json.Node.Position;
import org.rimefast.plan.internal.json.Node.Sequence;
import org.rimefast.plan.internal.json.Node.Step;
import org.rimefast.plan.internal.json.Node.Structure;

/** Makes JSON trees that were not read from a text. */
public final class TreeMaker {
  private TreeMaker() {}

  /** An outermost object. */
  public static Structure root() {
    return new Structure(Step.root(Position.NONE));
  }

  /** Adds a text. */
  public static void text(Structure parent, String name, String value) {
    parent.add(new Node.Text(member(parent, name), value));
  }

  /** Adds a number by its spelling. */
  public static void number(Structure parent, String name, String spelling) {
    parent.add(new Node.Numeral(member(parent, name), spelling));
  }

  /** Adds an empty object. */
  public static Structure structure(Structure parent, String name) {
    Structure made = new Structure(member(parent, name));
    parent.add(made);
    return made;
  }

  /** The object of that name, added if there is none. */
  public static Structure structureOf(Structure parent, String name) {
    return parent.member(name) instanceof Structure found ? found : structure(parent, name);
  }

  /** The list of that name, added if there is none. */
  public static Sequence sequenceOf(Structure parent, String name) {
    if (parent.member(name) instanceof Sequence found) {
      return found;
    }
    Sequence made = new Sequence(member(parent, name));
    parent.add(made);
    return made;
  }

  /** Adds an empty object to a list. */
  public static Structure item(Sequence parent) {
    Structure made = new Structure(Step.item(parent, Position.NONE));
    parent.add(made);
    return made;
  }

  /** Adds a text to a list. */
  public static void text(Sequence parent, String value) {
    parent.add(new Node.Text(Step.item(parent, Position.NONE), value));
  }

  /** Adds a number to a list by its spelling. */
  public static void number(Sequence parent, String spelling) {
    parent.add(new Node.Numeral(Step.item(parent, Position.NONE), spelling));
  }

  private static Step member(Structure parent, String name) {
    return Step.member(parent, name, Position.NONE);
  }
}
