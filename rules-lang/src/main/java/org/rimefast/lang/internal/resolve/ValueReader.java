package org.rimefast.lang.internal.resolve;

import static org.rimefast.lang.internal.resolve.PhraseReader.quoted;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Meaning;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Link;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.units.Dimension;

/** Reads values. */
final class ValueReader {
  private final PhraseReader phrase;
  private final AggregateReader aggregates;
  private final NearestReader nearest;

  ValueReader(PhraseReader phrase) {
    this.phrase = phrase;
    this.aggregates = new AggregateReader(phrase);
    this.nearest = new NearestReader(phrase);
  }

  List<Reading<Value>> values(int place, Scope scope, @Nullable ValueType wanted) {
    phrase.misses().at(place, () -> expected(scope, wanted));
    Phrase.Item item = phrase.item(place);
    if (item != null && phrase.observer().asksAbout(item.span())) {
      phrase.observer().value(scope, wanted);
    }
    if (item instanceof Phrase.QuantityItem quantity) {
      return quantity(quantity, place, scope);
    }
    if (item instanceof Phrase.TextItem text) {
      return single(new Value.Text(text.text(), new ValueType.Text(), text.span()), place, scope);
    }
    if (item instanceof Phrase.GroupItem group) {
      phrase.misses().endedAt(place + 1);
      return phrase.nested().group(group, scope, wanted).stream()
          .map(reading -> reading.endingAt(place + 1))
          .toList();
    }
    if (item instanceof Phrase.ConditionalItem choice) {
      phrase.misses().endedAt(place + 1);
      return phrase.nested().choice(choice, scope, wanted).stream()
          .map(reading -> reading.endingAt(place + 1))
          .toList();
    }
    if (!(item instanceof Phrase.WordItem)) {
      return List.of();
    }
    List<Reading<Value>> readings = new ArrayList<>();
    words(place, scope, wanted, readings);
    for (PhraseReader.Found<Constant> constant : phrase.find(phrase.constants().table(), place)) {
      Span span = phrase.span(place, constant.end());
      readings.add(Reading.ok(constant.end(), new Value.Named(constant.word(), span), scope));
    }
    aggregates.read(place, scope, readings);
    nearest.read(place, scope, readings);
    new TableReader(phrase).read(place, scope, readings);
    properties(place, scope, readings);
    return readings;
  }

  /** A number with its unit; or {@code 80 % of} another value. */
  private List<Reading<Value>> quantity(Phrase.QuantityItem item, int place, Scope scope) {
    Value literal = new Value.Literal(item.quantity(), Typing.typeOf(item.quantity()), item.span());
    List<Reading<Value>> readings = new ArrayList<>(single(literal, place, scope));
    if (item.quantity().dimension().equals(Dimension.PERCENT)
        && phrase.word(place + 1).equals("of")) {
      for (Reading<Value> whole : phrase.values(place + 2, scope, null)) {
        Span span = phrase.span(place, whole.end());
        readings.add(whole.map(value -> Typing.shareOf(literal, value, span)));
      }
    }
    return readings;
  }

  private List<Reading<Value>> single(Value value, int place, Scope scope) {
    phrase.misses().endedAt(place + 1);
    return List.of(Reading.ok(place + 1, value, scope));
  }

  private Set<String> expected(Scope scope, @Nullable ValueType wanted) {
    Set<String> words = new LinkedHashSet<>();
    if (wanted instanceof ValueType.Choice choice) {
      words.addAll(choice.words());
    }
    Noun owner = scope.bare().noun();
    for (Property property : phrase.dictionary().vocabulary().properties()) {
      if (owner.isA(property.owner())
          && (wanted == null || Typing.comparable(property.type(), wanted))) {
        words.add(RelationWords.beforeSlot(property.pattern()));
      }
    }
    words.addAll(phrase.constants().names());
    phrase.tables().all().stream()
        .filter(table -> owner.isA(table.noun()))
        .forEach(table -> words.add(table.name()));
    return words;
  }

  private void words(
      int place, Scope scope, @Nullable ValueType wanted, List<Reading<Value>> readings) {
    if (!(wanted instanceof ValueType.Choice choice)) {
      return;
    }
    for (String word : choice.words()) {
      int end = phrase.matchEnd(List.of(word.split(" ")), place);
      if (end >= 0) {
        Span span = phrase.span(place, end);
        readings.add(Reading.ok(end, new Value.Word(word, choice, span), scope));
        phrase.observer().found(span, new Meaning.OfChoice(word, choice));
      }
    }
  }

  private void properties(int place, Scope scope, List<Reading<Value>> readings) {
    boolean its = phrase.word(place).equals("its");
    int first = its || phrase.word(place).equals("the") ? place + 1 : place;
    if (its) {
      phrase.misses().at(first, () -> ofOwner(scope.it().noun()));
    }
    List<Dictionary.Entry<Property>> entries =
        new ArrayList<>(phrase.dictionary().properties().startingWith(phrase.word(first)));
    entries.addAll(phrase.dictionary().properties().startingWith("_"));
    List<Reading<Value>> found = new ArrayList<>();
    for (Dictionary.Entry<Property> entry : entries) {
      for (Reading<List<Argument>> filled :
          PatternReader.read(phrase, entry.parts(), entry.word().slots(), first, scope)) {
        found.add(of(place, filled.end(), filled, entry.word(), its ? scope.it() : scope.bare()));
        phrase
            .observer()
            .found(phrase.span(first, filled.end()), new Meaning.OfProperty(entry.word()));
        if (!its) {
          ofNamedOwner(place, filled, entry.word(), found);
        }
      }
    }
    readings.addAll(
        found.stream()
            .filter(broad -> found.stream().noneMatch(narrow -> hides(narrow, broad)))
            .toList());
  }

  private List<String> ofOwner(Noun owner) {
    List<String> words = new ArrayList<>();
    phrase.dictionary().vocabulary().properties().stream()
        .filter(property -> owner.isA(property.owner()))
        .forEach(property -> words.add(RelationWords.beforeSlot(property.pattern())));
    return words;
  }

  private void ofNamedOwner(
      int place, Reading<List<Argument>> filled, Property property, List<Reading<Value>> readings) {
    if (!phrase.word(filled.end()).equals("of")) {
      return;
    }
    phrase.misses().endedAt(filled.end() + 1);
    for (Reading<Reference> owner : phrase.elements(filled.end() + 1, filled.scope())) {
      Reading<List<Argument>> whole =
          new Reading<>(
              owner.end(),
              filled.result(),
              join(filled.openings(), owner.openings()),
              owner.scope());
      readings.add(
          owner.isOk()
              ? of(place, owner.end(), whole, property, owner.get())
              : new Reading<>(
                  owner.end(), Result.bad(owner.result().problems()), List.of(), owner.scope()));
    }
  }

  private static List<Opening> join(List<Opening> first, List<Opening> second) {
    List<Opening> all = new ArrayList<>(first);
    all.addAll(second);
    return all;
  }

  private Reading<Value> of(
      int place, int end, Reading<List<Argument>> filled, Property property, Reference owner) {
    Span span = phrase.span(place, end);
    return filled.endingAt(end).map(arguments -> owned(property, owner, arguments, span));
  }

  private Result<Value> owned(
      Property property, Reference owner, List<Argument> arguments, Span span) {
    if (owner.noun().isA(property.owner())) {
      return Result.ok(new Value.Of(property, owner, arguments, span));
    }
    return Result.bad(wrongOwner(phrase, property, owner, span));
  }

  static Diagnostic wrongOwner(PhraseReader phrase, Property property, Reference owner, Span span) {
    return Problems.error(
        DiagnosticCode.WRONG_OWNER,
        span,
        English.sentence(English.withArticle(owner.noun().singular()))
            + " has no "
            + RelationWords.beforeSlot(property.pattern())
            + ".",
        ownerHelp(phrase, property, owner));
  }

  private static String ownerHelp(PhraseReader phrase, Property property, Reference owner) {
    for (Link link : phrase.dictionary().vocabulary().links()) {
      if (owner.noun().isA(link.owner()) && link.target().isA(property.owner())) {
        return "Write " + quoted(property + " of its " + link) + ".";
      }
    }
    return English.sentence(English.withArticle(property.owner().singular()))
        + " has one: write whose it is, as in "
        + quoted(property + " of the " + property.owner())
        + ".";
  }

  private static boolean hides(Reading<Value> narrow, Reading<Value> broad) {
    return narrow.end() == broad.end()
        && narrow.result().node() instanceof Value.Of a
        && broad.result().node() instanceof Value.Of b
        && a.owner().equals(b.owner())
        && a.property().pattern().equals(b.property().pattern())
        && !a.property().owner().id().equals(b.property().owner().id())
        && a.property().owner().isA(b.property().owner());
  }
}
