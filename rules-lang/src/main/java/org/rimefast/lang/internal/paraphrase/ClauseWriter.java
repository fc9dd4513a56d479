package org.rimefast.lang.internal.paraphrase;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.resolve.Ordinals;
import org.rimefast.lang.internal.resolve.Scope;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Condition.Quantified;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Slot;

/**
 * Writes one clause from left to right, keeping account of what has been spoken of, as its reader
 * will. Quantified nouns are named where their element is first mentioned.
 */
final class ClauseWriter {
  static final Span NOWHERE = new Span(0, 0);

  private final ConditionWriter conditions;
  private final Deque<Quantified> pending = new ArrayDeque<>();
  private final List<Quantified> behindNot;
  private final ValueWriter values;
  private boolean inProperty;
  private Scope scope;
  private boolean failed;
  private int named;
  private boolean counted;
  private boolean plural;
  private @Nullable Obstacle obstacle;

  /** A writer of a clause in which these nouns are named, the first outermost. */
  ClauseWriter(ConditionWriter conditions, Scope scope, Chain chain) {
    this(conditions, scope, chain.outer(), chain.inner());
  }

  /** A writer of a clause in which one noun is named. */
  ClauseWriter(ConditionWriter conditions, Scope scope, Quantified only) {
    this(conditions, scope, List.of(only), List.of());
  }

  private ClauseWriter(
      ConditionWriter conditions, Scope scope, List<Quantified> outer, List<Quantified> inner) {
    this.conditions = conditions;
    this.scope = scope;
    this.pending.addAll(outer);
    this.behindNot = inner;
    this.values = new ValueWriter(this);
  }

  Scope scope() {
    return scope;
  }

  void bare(Reference owner) {
    scope = scope.withBare(owner);
  }

  /** From here on, what is named stands behind the {@code not}. */
  void deny() {
    if (!pending.isEmpty()) {
      fail();
    }
    pending.addAll(behindNot);
  }

  boolean hasNamedAll() {
    return pending.isEmpty();
  }

  /** How many nouns have been named. */
  int named() {
    return named;
  }

  /** True if a noun has been named with words of a bound, such as {@code at least 2}. */
  boolean hasCounted() {
    return counted;
  }

  /** True if the noun named last stands in the plural. */
  boolean isPlural() {
    return plural;
  }

  /** Gives the attempt up: the nouns cannot be named in this order in one clause. */
  void fail() {
    failed = true;
  }

  boolean hasFailed() {
    return failed || !pending.isEmpty();
  }

  void hinder(Obstacle.Kind kind, String why) {
    if (obstacle == null) {
      obstacle = new Obstacle(kind, why);
    }
  }

  Said said(String words) {
    return new Said(words, obstacle);
  }

  ValueWriter values() {
    return values;
  }

  /** Names an element; a quantified one by its noun. */
  String element(Reference reference) {
    Quantified next = pending.peekFirst();
    if (next != null && reference.equals(new Reference.Bound(next.variable()))) {
      pending.removeFirst();
      return opened(next);
    }
    plural = false;
    return reference(reference);
  }

  /** Names an element where a noun with an article would be read as a kind. */
  String spokenOf(Reference reference) {
    int before = named;
    String words = element(reference);
    if (named > before) {
      fail();
    }
    return words;
  }

  /** Names an element that has been spoken of, or one that belongs to it. */
  String reference(Reference reference) {
    if (reference instanceof Reference.Linked linked) {
      String link = linked.link().phrase();
      if (linked.owner().equals(scope.it())) {
        return "its " + link;
      }
      // In "distance to the room of the box", the box could be whose distance it is.
      String the = inProperty || isNounOfSpoken(link) ? "" : "the ";
      return the + link + " of " + reference(linked.owner());
    }
    if (reference.equals(scope.it())) {
      return "it";
    }
    return spoken(((Reference.Bound) reference).variable());
  }

  private boolean isNounOfSpoken(String link) {
    return scope.spoken().stream()
        .anyMatch(
            s ->
                s.variable().noun().singular().equals(link)
                    || s.variable().noun().broader().stream()
                        .anyMatch(noun -> noun.singular().equals(link)));
  }

  private String spoken(Variable variable) {
    List<Variable> same = new ArrayList<>();
    for (Scope.Spoken spoken : scope.spoken()) {
      if (spoken.variable().noun().id().equals(variable.noun().id())) {
        same.add(spoken.variable());
      }
    }
    int place = same.indexOf(variable);
    if (place < 0) {
      if (Stream.concat(pending.stream(), behindNot.stream())
          .anyMatch(q -> q.variable().equals(variable))) {
        fail();
      } else {
        hinder(
            Obstacle.Kind.UNNAMED_ELEMENT,
            "A " + variable.noun() + " is meant that nothing around the place names.");
      }
      return "";
    }
    boolean counts = inProperty && conditions.style() == Style.CAREFUL;
    if (same.size() == 1 && !counts) {
      return "the " + variable.noun();
    }
    if (place >= Ordinals.most()) {
      hinder(
          Obstacle.Kind.TOO_MANY_OF_ONE_NOUN,
          "More than "
              + Ordinals.most()
              + " "
              + variable.noun().plural()
              + " are spoken of at once.");
      return "";
    }
    return "the " + Ordinals.word(place + 1) + " " + variable.noun();
  }

  private String opened(Quantified quantified) {
    Variable variable = quantified.variable();
    KindWords kind = KindWords.of(variable, quantified.where());
    String words = kind.counted(quantified) + where(variable, kind);
    scope = scope.with(variable, kind.singular(), NOWHERE);
    plural = kind.isPlural(quantified);
    named++;
    counted |= KindWords.isCounted(quantified);
    return words;
  }

  /** The rest of a noun's condition, in parentheses. */
  String where(Variable variable, KindWords kind) {
    if (kind.rest().isEmpty()) {
      return "";
    }
    Scope inside = scope.inside(variable, kind.singular(), NOWHERE);
    Said condition = conditions.write(kind.rest().get(), inside);
    note(condition);
    return " (where " + condition.words() + ")";
  }

  void note(Said said) {
    Obstacle found = said.obstacle();
    if (found != null) {
      hinder(found.kind(), found.why());
    }
  }

  /** A condition within a value. */
  String condition(Condition condition) {
    Said said = conditions.write(condition, scope);
    note(said);
    return said.words();
  }

  /** A property's words with its slots filled. */
  String property(Value.Of of) {
    boolean outer = inProperty;
    inProperty = true;
    String words = filled(of.property().pattern(), of.property().slots(), of.arguments());
    inProperty = outer;
    return words;
  }

  /** A property of the nearest element of a kind: the words of that kind stand at its slot. */
  String nearest(Value.Of of, KindWords kind, Variable variable) {
    boolean outer = inProperty;
    inProperty = true;
    String words =
        of.property()
            .pattern()
            .replace("_", "the nearest " + kind.singular() + where(variable, kind));
    inProperty = outer;
    return words;
  }

  /** Gives up if a variable would be numbered otherwise, because others are named after it. */
  void number(Variable variable) {
    if (variable.index() != scope.spoken().size() && !pending.isEmpty()) {
      fail();
    }
  }

  /** A pattern with its slots filled. */
  String filled(String pattern, List<Slot> slots, List<Argument> arguments) {
    StringBuilder words = new StringBuilder();
    int next = 0;
    for (String part : KindWords.parts(pattern)) {
      words.append(words.isEmpty() ? "" : " ");
      if (part.equals("_")) {
        words.append(argument(arguments.get(next), slots.get(next)));
        next++;
      } else {
        words.append(part);
      }
    }
    return words.toString();
  }

  private String argument(Argument argument, Slot slot) {
    if (argument instanceof Value value) {
      return values.inSlot(value, ((Slot.Of) slot).type());
    }
    if (argument instanceof Argument.Along along) {
      return filled(along.stretch().pattern(), along.stretch().slots(), along.arguments());
    }
    if (argument instanceof Argument.Those those) {
      number(those.variable());
      KindWords kind = KindWords.of(those.variable(), those.where());
      return "any " + kind.singular() + where(those.variable(), kind);
    }
    return element((Reference) argument);
  }
}
