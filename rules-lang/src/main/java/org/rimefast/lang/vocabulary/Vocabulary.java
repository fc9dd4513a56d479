package org.rimefast.lang.vocabulary;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A closed set of typed words, handed to the compiler.
 *
 * <p>Phrases are lower-case words one space apart, of letters, digits, inner hyphens and
 * apostrophes. They cannot hold the words that the language keeps for itself: and, or, not, must,
 * for, where, if, unless, then, otherwise, with, be, is, are, have, has (but for a verb that begins
 * with it), do, does, exactly, times, divided, between, severity, stage, because, source. The
 * compiler refuses such a vocabulary.
 *
 * <p>Use:
 *
 * <pre>{@code
 * Noun box = new Noun("box", "box", "boxes", List.of());
 * Vocabulary vocabulary = Vocabulary.builder()
 *     .stages(List.of("layout", "framing"))
 *     .noun(box)
 *     .property(new Property("box.depth", "depth", box, List.of(), length))
 *     .build();
 * }</pre>
 *
 * @param stages the stages of the work, in order
 * @param nouns kinds of element
 * @param properties values of elements
 * @param links elements that belong to elements
 * @param relations verbs and adjectives
 * @param stretches parts of paths
 */
public record Vocabulary(
    List<String> stages,
    List<Noun> nouns,
    List<Property> properties,
    List<Link> links,
    List<Relation> relations,
    List<Stretch> stretches) {

  /** Copies the lists. */
  public Vocabulary {
    stages = List.copyOf(stages);
    nouns = List.copyOf(nouns);
    properties = List.copyOf(properties);
    links = List.copyOf(links);
    relations = List.copyOf(relations);
    stretches = List.copyOf(stretches);
  }

  /** An empty builder. */
  public static Builder builder() {
    return new Builder();
  }

  /** A builder that starts with these words, so that a planner can add its own. */
  public Builder toBuilder() {
    Builder builder = new Builder().stages(stages);
    nouns.forEach(builder::noun);
    properties.forEach(builder::property);
    links.forEach(builder::link);
    relations.forEach(builder::relation);
    stretches.forEach(builder::stretch);
    return builder;
  }

  /** Collects words; ids must be unique. */
  public static final class Builder {
    private final List<String> stages = new ArrayList<>();
    private final List<Noun> nouns = new ArrayList<>();
    private final List<Property> properties = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();
    private final List<Relation> relations = new ArrayList<>();
    private final List<Stretch> stretches = new ArrayList<>();
    private final Set<String> ids = new HashSet<>();

    private Builder() {}

    /** Sets the stages of the work, in order. */
    public Builder stages(List<String> inOrder) {
      stages.clear();
      stages.addAll(inOrder);
      return this;
    }

    /** Adds a kind of element. */
    public Builder noun(Noun noun) {
      claim(noun.id());
      nouns.add(noun);
      return this;
    }

    /** Adds a value of elements. */
    public Builder property(Property property) {
      claim(property.id());
      requireSlots(property.pattern(), property.slots());
      properties.add(property);
      return this;
    }

    /** Adds an element that belongs to elements. */
    public Builder link(Link link) {
      claim(link.id());
      links.add(link);
      return this;
    }

    /** Adds a verb or adjective. */
    public Builder relation(Relation relation) {
      claim(relation.id());
      requireSlots(relation.pattern(), relation.slots());
      requireSlots(relation.third(), relation.slots());
      relations.add(relation);
      return this;
    }

    /** Adds a part of a path. */
    public Builder stretch(Stretch stretch) {
      claim(stretch.id());
      requireSlots(stretch.pattern(), stretch.slots());
      stretches.add(stretch);
      return this;
    }

    /** The vocabulary. */
    public Vocabulary build() {
      return new Vocabulary(stages, nouns, properties, links, relations, stretches);
    }

    private void claim(String id) {
      if (!ids.add(id)) {
        throw new IllegalArgumentException("two words of the vocabulary have the id " + id);
      }
    }

    private static void requireSlots(String pattern, List<Slot> slots) {
      long marks = List.of(pattern.split(" ")).stream().filter("_"::equals).count();
      if (marks != slots.size()) {
        throw new IllegalArgumentException(
            "the pattern \"" + pattern + "\" has " + marks + " slots, not " + slots.size());
      }
    }
  }
}
