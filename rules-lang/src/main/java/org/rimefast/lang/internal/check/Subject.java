package org.rimefast.lang.internal.check;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.resolve.Opening;
import org.rimefast.lang.internal.resolve.Scope;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Value;

/** What a clause speaks of: an element or a value. */
sealed interface Subject {
  /** The quantified nouns in it, which enclose what is said. */
  List<Opening> openings();

  /** The scope for what is said of it. */
  Scope scope();

  /** True for {@code at least 2 brackets}. */
  boolean isPlural();

  /** An element. */
  record Element(Reference reference, List<Opening> openings, Scope scope) implements Subject {
    @Override
    public boolean isPlural() {
      Optional<Opening> own =
          openings.stream()
              .filter(o -> reference.equals(new Reference.Bound(o.variable())))
              .findFirst();
      return own.isPresent() && own.get().plural();
    }
  }

  /** A value. */
  record Quantity(Value value, List<Opening> openings, Scope scope) implements Subject {
    @Override
    public boolean isPlural() {
      return false;
    }
  }
}
