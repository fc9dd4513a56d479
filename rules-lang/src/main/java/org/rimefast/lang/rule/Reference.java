package org.rimefast.lang.rule;

import org.rimefast.lang.vocabulary.Link;
import org.rimefast.lang.vocabulary.Noun;

/** How an expression names an element. */
public sealed interface Reference extends Argument {
  /** The kind of element it names. */
  Noun noun();

  /** The element a variable stands for: {@code it}, {@code the box}. */
  record Bound(Variable variable) implements Reference {
    @Override
    public Noun noun() {
      return variable.noun();
    }
  }

  /** The element that belongs to another: {@code its room}. */
  record Linked(Link link, Reference owner) implements Reference {
    /** Refuses a link that the owner does not have. */
    public Linked {
      Types.require(owner.noun().isA(link.owner()), "a " + owner.noun() + " has no " + link);
    }

    @Override
    public Noun noun() {
      return link.target();
    }
  }
}
