package org.rimefast.lang.internal.resolve;

import static org.rimefast.lang.internal.resolve.PhraseReader.quoted;

import java.util.ArrayList;
import java.util.List;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Link;
import org.rimefast.lang.vocabulary.Noun;

/** Reads what names an element that has been spoken of, or one that belongs to it. */
final class ReferenceReader {
  private final PhraseReader phrase;

  ReferenceReader(PhraseReader phrase) {
    this.phrase = phrase;
  }

  List<Reading<Reference>> references(int place, Scope scope) {
    List<Reading<Reference>> readings = new ArrayList<>();
    switch (phrase.word(place)) {
      case "it" -> {
        phrase.misses().endedAt(place + 1);
        readings.add(Reading.ok(place + 1, scope.it(), scope));
      }
      case "its" -> {
        phrase.misses().at(place + 1, () -> linkWords(scope.it().noun()));
        for (PhraseReader.Found<Link> link : phrase.find(phrase.dictionary().links(), place + 1)) {
          readings.add(linked(place, link.end(), link.word(), scope.it(), scope));
        }
      }
      case "the" -> {
        spokenOf(place, scope, readings);
        linkOf(place, place + 1, scope, readings);
      }
      default -> linkOf(place, place, scope, readings);
    }
    return narrowed(readings);
  }

  private List<String> linkWords(Noun owner) {
    return phrase.dictionary().vocabulary().links().stream()
        .filter(link -> owner.isA(link.owner()))
        .map(Link::phrase)
        .toList();
  }

  private void spokenOf(int place, Scope scope, List<Reading<Reference>> readings) {
    phrase.misses().at(place + 1, () -> scope.spoken().stream().map(Scope.Spoken::called).toList());
    boolean spoken = false;
    int ordinal = Ordinals.number(phrase.word(place + 1));
    if (ordinal > 0) {
      for (PhraseReader.Found<Kind> found : phrase.findKinds(place + 2, false)) {
        readings.add(theNth(place, ordinal, found, scope));
      }
    }
    for (PhraseReader.Found<Kind> found : phrase.findKinds(place + 1, false)) {
      List<Scope.Spoken> named = scope.named(found.word());
      spoken |= !named.isEmpty();
      readings.add(theOne(place, found, named, scope));
    }
    if (!spoken) {
      for (PhraseReader.Found<Link> link : phrase.find(phrase.dictionary().links(), place + 1)) {
        if (scope.it().noun().isA(link.word().owner())) {
          readings.add(linked(place, link.end(), link.word(), scope.it(), scope));
        }
      }
    }
  }

  /** Of those of one noun that have been spoken of, the first, the second and so on. */
  private Reading<Reference> theNth(
      int place, int ordinal, PhraseReader.Found<Kind> found, Scope scope) {
    Kind noun = found.word();
    List<Scope.Spoken> named = scope.named(noun);
    if (named.size() >= ordinal) {
      Variable variable = named.get(ordinal - 1).variable();
      return Reading.ok(found.end(), new Reference.Bound(variable), scope);
    }
    String many = named.isEmpty() ? "No" : "Only " + named.size();
    return Reading.bad(
        found.end(),
        Problems.error(
            DiagnosticCode.UNKNOWN_REFERENCE,
            phrase.span(place, found.end()),
            many
                + " "
                + (named.size() > 1 ? noun.plural() + " have" : noun + " has")
                + " been spoken of, so \"the "
                + Ordinals.word(ordinal)
                + " "
                + noun
                + "\" says nothing.",
            named.size() == 1
                ? "Write " + quoted("the " + noun) + "."
                : "Count those that are named before, in the order in which they are named."),
        scope);
  }

  private Reading<Reference> theOne(
      int place, PhraseReader.Found<Kind> found, List<Scope.Spoken> named, Scope scope) {
    Kind noun = found.word();
    Span span = phrase.span(place, found.end());
    if (named.size() == 1) {
      return Reading.ok(found.end(), new Reference.Bound(named.get(0).variable()), scope);
    }
    if (named.isEmpty()) {
      return Reading.bad(
          found.end(),
          Problems.error(
              DiagnosticCode.UNKNOWN_REFERENCE,
              span,
              "No " + noun + " has been spoken of, so \"the " + noun + "\" says nothing.",
              "Write "
                  + quoted(English.withArticle(noun.singular()))
                  + " or "
                  + quoted("each " + noun)
                  + "."),
          scope);
    }
    return Reading.bad(
        found.end(),
        Problems.related(
            DiagnosticCode.UNCLEAR_REFERENCE,
            span,
            "\"the " + noun + "\" can mean two of those spoken of.",
            "Write "
                + quoted("the first " + noun)
                + " or "
                + quoted("the second " + noun)
                + ", in the order in which they are named.",
            named.stream()
                .map(s -> new Diagnostic.Related(s.span(), "one " + noun + " is named here"))
                .toList()),
        scope);
  }

  private void linkOf(int place, int first, Scope scope, List<Reading<Reference>> readings) {
    for (PhraseReader.Found<Link> link : phrase.find(phrase.dictionary().links(), first)) {
      phrase.misses().at(link.end(), () -> List.of("of"));
      if (phrase.word(link.end()).equals("of")) {
        for (Reading<Reference> owner : phrase.references(link.end() + 1, scope)) {
          readings.add(
              owner.isOk() ? linked(place, owner.end(), link.word(), owner.get(), scope) : owner);
        }
      }
    }
  }

  private Reading<Reference> linked(int place, int end, Link link, Reference owner, Scope scope) {
    phrase.misses().endedAt(end);
    if (owner.noun().isA(link.owner())) {
      return Reading.ok(end, new Reference.Linked(link, owner), scope);
    }
    return Reading.bad(
        end,
        Problems.error(
            DiagnosticCode.WRONG_OWNER,
            phrase.span(place, end),
            English.sentence(English.withArticle(owner.noun().singular()))
                + " has no "
                + link
                + ".",
            English.sentence(English.withArticle(link.owner().singular())) + " has one."),
        scope);
  }

  /** Of links with one phrase, those of a broader owner give way to those of a narrower one. */
  private static List<Reading<Reference>> narrowed(List<Reading<Reference>> readings) {
    return readings.stream()
        .filter(broad -> readings.stream().noneMatch(narrow -> hides(narrow, broad)))
        .toList();
  }

  private static boolean hides(Reading<Reference> narrow, Reading<Reference> broad) {
    return narrow.end() == broad.end()
        && narrow.result().node() instanceof Reference.Linked a
        && broad.result().node() instanceof Reference.Linked b
        && a.owner().equals(b.owner())
        && a.link().phrase().equals(b.link().phrase())
        && !a.link().owner().id().equals(b.link().owner().id())
        && a.link().owner().isA(b.link().owner());
  }
}
