package org.rimefast.lang.internal.resolve;

import java.util.Collection;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.rule.Meaning;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.ValueType;

/** Is told what readers look for and find, for those who help an author while the text is typed. */
public interface ReadingObserver {
  /** Asks nothing and keeps nothing. */
  ReadingObserver NONE =
      new ReadingObserver() {
        @Override
        public boolean asksAbout(Span item) {
          return false;
        }

        @Override
        public void expected(Collection<String> words) {}

        @Override
        public void value(Scope scope, @Nullable ValueType wanted) {}

        @Override
        public void found(Span span, Meaning meaning) {}
      };

  /** Whether it wants to know what else could stand at an item. */
  boolean asksAbout(Span item);

  /** Words that could stand at the item asked about. */
  void expected(Collection<String> words);

  /**
   * A value could stand at the item asked about.
   *
   * @param wanted what it will be compared with; null if that is not known
   */
  void value(Scope scope, @Nullable ValueType wanted);

  /** A phrase that could be read so; not every one is part of what the sentence means. */
  void found(Span span, Meaning meaning);
}
