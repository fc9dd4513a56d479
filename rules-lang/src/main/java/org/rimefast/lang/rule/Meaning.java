package org.rimefast.lang.rule;

import org.rimefast.lang.vocabulary.Link;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Stretch;
import org.rimefast.lang.vocabulary.ValueType;

/** What a word or phrase of rule text stands for. */
public sealed interface Meaning {
  /** Does {@code visitor}'s part for this kind of meaning. */
  <R> R accept(Visitor<R> visitor);

  /** A kind of element. */
  record OfNoun(Noun noun) implements Meaning {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitNoun(this);
    }
  }

  /** A property, with what stands at its slots. */
  record OfProperty(Property property) implements Meaning {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitProperty(this);
    }
  }

  /** A link. */
  record OfLink(Link link) implements Meaning {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitLink(this);
    }
  }

  /** A relation, with what stands at its slots. */
  record OfRelation(Relation relation) implements Meaning {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitRelation(this);
    }
  }

  /** A stretch of a path, with what stands at its slots. */
  record OfStretch(Stretch stretch) implements Meaning {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitStretch(this);
    }
  }

  /** A word of a closed list. */
  record OfChoice(String word, ValueType.Choice list) implements Meaning {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitChoice(this);
    }
  }

  /** A constant of the standard. */
  record OfConstant(Constant constant) implements Meaning {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitConstant(this);
    }
  }

  /** A term of the standard. */
  record OfTerm(Term term) implements Meaning {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitTerm(this);
    }
  }

  /** A rule of the standard, by its id. */
  record OfRule(String id) implements Meaning {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitRule(this);
    }
  }

  /** One method for each kind of meaning. */
  interface Visitor<R> {
    R visitNoun(OfNoun noun);

    R visitProperty(OfProperty property);

    R visitLink(OfLink link);

    R visitRelation(OfRelation relation);

    R visitStretch(OfStretch stretch);

    R visitChoice(OfChoice choice);

    R visitConstant(OfConstant constant);

    R visitTerm(OfTerm term);

    R visitRule(OfRule rule);
  }
}
