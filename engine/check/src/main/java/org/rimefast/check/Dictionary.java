package org.rimefast.check;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rimefast.check.internal.Words;
import org.rimefast.lang.vocabulary.Link;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.Stretch;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.lang.vocabulary.Vocabulary;

/**
 * The words that rules may use, each with what it does on a plan. Immutable and safe to share.
 *
 * <p>A planner adds words of its own:
 *
 * <pre>{@code
 * Dictionary own = SteelModules.dictionary().toBuilder()
 *     .number(new Property("price", "price", box, List.of(), money), (facts, element, arguments, out) -> out.exactly(12))
 *     .build();
 * }</pre>
 */
public final class Dictionary {
  private final Vocabulary vocabulary;
  private final Map<String, Word> words;
  private final Map<String, Members> nouns;

  private Dictionary(Builder builder) {
    vocabulary = builder.vocabulary.build();
    words = Map.copyOf(builder.words);
    nouns = Map.copyOf(builder.nouns);
  }

  /** Which elements of a plan a noun means. */
  @FunctionalInterface
  public interface Members {
    /** True if the element with this handle is one. */
    boolean contains(PlanFacts facts, int handle);
  }

  /** An empty builder for a vocabulary with these stages. */
  public static Builder builder(List<String> stages) {
    return new Builder(Vocabulary.builder().stages(stages));
  }

  /** A builder that starts with these words. */
  public Builder toBuilder() {
    Builder builder = new Builder(vocabulary.toBuilder());
    builder.words.putAll(words);
    builder.nouns.putAll(nouns);
    return builder;
  }

  /** The words and their types, for the compiler. */
  public Vocabulary vocabulary() {
    return vocabulary;
  }

  /** The noun with this id. */
  public Noun noun(String id) {
    return vocabulary.nouns().stream()
        .filter(noun -> noun.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no noun has the id " + id));
  }

  Members members(Noun noun) {
    return find(nouns, noun.id());
  }

  /** What words do, for standards that were compiled with this vocabulary. */
  Words.Lookup lookup() {
    Set<Object> declared = new HashSet<>(vocabulary.nouns());
    declared.addAll(vocabulary.properties());
    declared.addAll(vocabulary.links());
    declared.addAll(vocabulary.relations());
    declared.addAll(vocabulary.stretches());
    return new Words.Lookup() {
      @Override
      public <W extends Word> W find(Object word, String id, Class<W> kind) {
        requireDeclared(word);
        return kind.cast(Dictionary.find(words, id));
      }

      @Override
      public void require(Noun noun) {
        requireDeclared(noun);
      }

      private void requireDeclared(Object word) {
        if (!declared.contains(word)) {
          throw new IllegalArgumentException(
              "the standard was compiled with another vocabulary: \""
                  + word
                  + "\" is not in this one");
        }
      }
    };
  }

  private static <T> T find(Map<String, T> map, String id) {
    T found = map.get(id);
    if (found == null) {
      throw new IllegalArgumentException(
          "the standard was compiled with another vocabulary: nothing here has the id " + id);
    }
    return found;
  }

  /** Collects words with what they do. */
  public static final class Builder {
    private final Vocabulary.Builder vocabulary;
    private final Map<String, Word> words = new LinkedHashMap<>();
    private final Map<String, Members> nouns = new LinkedHashMap<>();

    private Builder(Vocabulary.Builder vocabulary) {
      this.vocabulary = vocabulary;
    }

    /** Adds a kind of element. */
    public Builder noun(Noun noun, Members members) {
      vocabulary.noun(noun);
      nouns.put(noun.id(), members);
      return this;
    }

    /** Adds a property that is a number. */
    public Builder number(
        Property property, Word.NumberFunction function, Word.Explainer explainer) {
      requireType(property, ValueType.Number.class);
      return property(property, new Word.NumberWord(function, explainer));
    }

    /** Adds a property that is one of a list of words. */
    public Builder choice(
        Property property, Word.ChoiceFunction function, Word.Explainer explainer) {
      requireType(property, ValueType.Choice.class);
      return property(property, new Word.ChoiceWord(function, explainer));
    }

    /** Adds a property that is free text. */
    public Builder text(Property property, Word.TextFunction function, Word.Explainer explainer) {
      requireType(property, ValueType.Text.class);
      return property(property, new Word.TextWord(function, explainer));
    }

    /** Adds an element that belongs to elements. */
    public Builder link(Link link, Word.LinkFunction function, Word.Explainer explainer) {
      vocabulary.link(link);
      words.put(link.id(), new Word.LinkWord(function, explainer));
      return this;
    }

    /** Adds a relation. */
    public Builder relation(
        Relation relation, Word.TruthFunction function, Word.Explainer explainer) {
      return relation(
          relation, new Word.RelationWord(function, Optional.empty(), Optional.empty(), explainer));
    }

    /** Adds a relation with a finder of candidates. */
    public Builder relation(
        Relation relation,
        Word.TruthFunction function,
        Word.CandidateFunction candidates,
        Word.Explainer explainer) {
      return relation(
          relation,
          new Word.RelationWord(function, Optional.of(candidates), Optional.empty(), explainer));
    }

    /**
     * Adds a relation with finders of candidates for both ends: for its first slot, and for the
     * subject if the element at its first slot is given.
     */
    public Builder relation(
        Relation relation,
        Word.TruthFunction function,
        Word.CandidateFunction candidates,
        Word.CandidateFunction subjects,
        Word.Explainer explainer) {
      return relation(
          relation,
          new Word.RelationWord(
              function, Optional.of(candidates), Optional.of(subjects), explainer));
    }

    /**
     * Adds a relation that follows chains: {@code reach _}, with one slot for the element that is
     * reached, or {@code reach _ without passing _}, with a second for the kind that is not passed.
     */
    public Builder chain(
        Relation relation, Word.NeighbourFunction function, Word.StepExplainer steps) {
      List<Slot> slots = relation.slots();
      boolean fits =
          !slots.isEmpty()
              && slots.get(0) instanceof Slot.Element
              && (slots.size() == 1 || (slots.size() == 2 && slots.get(1) instanceof Slot.Kind));
      if (!fits) {
        throw new IllegalArgumentException(
            relation.id() + " has other slots than an element and perhaps a kind");
      }
      vocabulary.relation(relation);
      words.put(relation.id(), new Word.ChainWord(function, steps));
      return this;
    }

    /** Adds a part of the path of elements. */
    public Builder stretch(
        Stretch stretch, Word.StretchFunction function, Word.Explainer explainer) {
      vocabulary.stretch(stretch);
      words.put(stretch.id(), new Word.StretchWord(function, explainer));
      return this;
    }

    /** The dictionary. */
    public Dictionary build() {
      return new Dictionary(this);
    }

    private Builder relation(Relation relation, Word word) {
      requireNoKind(relation.id(), relation.slots());
      vocabulary.relation(relation);
      words.put(relation.id(), word);
      return this;
    }

    private Builder property(Property property, Word word) {
      requireNoKind(property.id(), property.slots());
      vocabulary.property(property);
      words.put(property.id(), word);
      return this;
    }

    private static void requireNoKind(String id, List<Slot> slots) {
      if (slots.stream().anyMatch(Slot.Kind.class::isInstance)) {
        throw new IllegalArgumentException(
            id + " has a slot for a kind, which only a chain can have");
      }
    }

    private static void requireType(Property property, Class<? extends ValueType> type) {
      if (!type.isInstance(property.type())) {
        throw new IllegalArgumentException(
            property.id() + " is declared as " + property.type() + ", not as " + type.getName());
      }
    }
  }
}
