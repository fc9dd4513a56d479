package org.rimefast.check.internal;

import org.rimefast.check.Word;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.vocabulary.Link;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Stretch;

/** Finds what words do, for both evaluators. */
public final class Words {
  private final Lookup lookup;

  /**
   * Finds a word by how the vocabulary declares it, as the kind of word it must be; refuses one
   * that is declared otherwise.
   */
  public interface Lookup {
    <W extends Word> W find(Object declared, String id, Class<W> kind);

    /** Refuses a noun that is declared otherwise. */
    void require(Noun noun);
  }

  /** Words that {@code lookup} finds. */
  public Words(Lookup lookup) {
    this.lookup = lookup;
  }

  /** The noun itself, if it is declared so. */
  public Noun noun(Noun noun) {
    lookup.require(noun);
    return noun;
  }

  public Word.NumberWord number(Property property) {
    return lookup.find(property, property.id(), Word.NumberWord.class);
  }

  public Word.ChoiceWord choice(Property property) {
    return lookup.find(property, property.id(), Word.ChoiceWord.class);
  }

  public Word.TextWord text(Property property) {
    return lookup.find(property, property.id(), Word.TextWord.class);
  }

  public Word.LinkWord link(Link link) {
    return lookup.find(link, link.id(), Word.LinkWord.class);
  }

  /** A relation: a {@link Word.RelationWord} or a {@link Word.ChainWord}. */
  public Word relation(Relation relation) {
    return lookup.find(relation, relation.id(), Word.class);
  }

  public Word.StretchWord stretch(Stretch stretch) {
    return lookup.find(stretch, stretch.id(), Word.StretchWord.class);
  }

  /**
   * The SI value of a literal; a literal in kelvin that stands for a temperature needs no change.
   */
  public static double si(Value.Literal literal) {
    return literal.quantity().siDouble();
  }

  /** Our own bug: a value of a type that the compiler does not let stand here. */
  public static IllegalStateException mistyped(Value value) {
    return new IllegalStateException("a value of type " + value.type() + " where none can stand");
  }

  /** A visitor for values that are words or texts: all that only numbers can be is refused. */
  public abstract static class OnlyWords<R> implements Value.Visitor<R> {
    @Override
    public R visitLiteral(Value.Literal literal) {
      throw mistyped(literal);
    }

    @Override
    public R visitNamed(Value.Named named) {
      throw mistyped(named);
    }

    @Override
    public R visitArithmetic(Value.Arithmetic arithmetic) {
      throw mistyped(arithmetic);
    }

    @Override
    public R visitAggregate(Value.Aggregate aggregate) {
      throw mistyped(aggregate);
    }

    @Override
    public R visitLookup(Value.Lookup lookup) {
      throw mistyped(lookup);
    }

    @Override
    public R visitConditional(Value.Conditional conditional) {
      throw mistyped(conditional);
    }

    @Override
    public R visitWord(Value.Word word) {
      throw mistyped(word);
    }

    @Override
    public R visitText(Value.Text text) {
      throw mistyped(text);
    }
  }
}
