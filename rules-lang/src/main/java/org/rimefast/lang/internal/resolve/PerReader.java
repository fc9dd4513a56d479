package org.rimefast.lang.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Link;
import org.rimefast.lang.vocabulary.Noun;

/**
 * Reads {@code per face} behind the noun of a count, total or the like. Only those count whose face
 * is the one that is spoken of: the face itself, or that of the element that is spoken of.
 */
final class PerReader {
  private final PhraseReader phrase;

  PerReader(PhraseReader phrase) {
    this.phrase = phrase;
  }

  /**
   * The condition on each element that counts, if {@code per} stands at an item.
   *
   * @param place of the word {@code per}
   * @param variable stands for each element that may count
   * @param scope what was spoken of around the count
   */
  Optional<Reading<Condition>> read(int place, Variable variable, Scope scope) {
    if (!phrase.word(place).equals("per")) {
      return Optional.empty();
    }
    Noun noun = variable.noun();
    phrase.misses().at(place + 1, () -> linkWords(noun));
    PhraseReader.@Nullable Found<Link> found = null;
    for (PhraseReader.Found<Link> link : phrase.find(phrase.dictionary().links(), place + 1)) {
      if (found == null || isBetter(link, found, noun)) {
        found = link;
      }
    }
    if (found == null) {
      return Optional.empty();
    }
    int end = found.end();
    Link link = found.word();
    Span span = phrase.span(place, end);
    if (!noun.isA(link.owner())) {
      return Optional.of(
          Reading.bad(
              end,
              Problems.error(
                  DiagnosticCode.WRONG_OWNER,
                  span,
                  English.sentence(English.withArticle(noun.singular())) + " has no " + link + ".",
                  English.sentence(English.withArticle(link.owner().singular())) + " has one."),
              scope));
    }
    Reference target = target(link, scope);
    if (target == null) {
      return Optional.of(
          Reading.bad(
              end,
              Problems.error(
                  DiagnosticCode.UNKNOWN_REFERENCE,
                  span,
                  "It is not said for which " + link + " they count.",
                  "Begin the sentence with \"for each "
                      + link.target()
                      + "\", or with an element that has a "
                      + link
                      + "."),
              scope));
    }
    Reference own = new Reference.Linked(link, new Reference.Bound(variable));
    return Optional.of(Reading.ok(end, new Condition.Same(own, target, span), scope));
  }

  /** More words win; then a link that the noun has; then one of a narrower owner. */
  private static boolean isBetter(
      PhraseReader.Found<Link> link, PhraseReader.Found<Link> than, Noun noun) {
    if (link.end() != than.end()) {
      return link.end() > than.end();
    }
    boolean has = noun.isA(link.word().owner());
    return has && (!noun.isA(than.word().owner()) || link.word().owner().isA(than.word().owner()));
  }

  private List<String> linkWords(Noun owner) {
    return phrase.dictionary().vocabulary().links().stream()
        .filter(link -> owner.isA(link.owner()))
        .map(Link::phrase)
        .toList();
  }

  /** The nearest element spoken of that the link can lead to; else where such an own link leads. */
  private @Nullable Reference target(Link link, Scope scope) {
    List<Reference> spoken = new ArrayList<>(List.of(scope.bare(), scope.it()));
    for (int i = scope.spoken().size() - 1; i >= 0; i--) {
      spoken.add(new Reference.Bound(scope.spoken().get(i).variable()));
    }
    for (Reference element : spoken) {
      if (element.noun().isA(link.target())
          || (element.noun().singular().equals(link.phrase())
              && phrase.dictionary().overlap(element.noun(), link.target()))) {
        return element;
      }
    }
    for (Reference element : spoken) {
      Link own = null;
      for (Link other : phrase.dictionary().vocabulary().links()) {
        if (other.phrase().equals(link.phrase())
            && element.noun().isA(other.owner())
            && phrase.dictionary().overlap(other.target(), link.target())
            && (own == null || other.owner().isA(own.owner()))) {
          own = other;
        }
      }
      if (own != null) {
        return new Reference.Linked(own, element);
      }
    }
    return null;
  }
}
