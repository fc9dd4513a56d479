package org.rimefast.check.internal.steel;

import static org.rimefast.check.internal.steel.Kinds.property;

import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Dictionary;
import org.rimefast.check.PlanFacts;
import org.rimefast.lang.vocabulary.Link;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.plan.Amount;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.Opening;

/** Words for faces, openings and the room. */
final class FaceWords {
  private FaceWords() {}

  static void addTo(Dictionary.Builder words) {
    amount(words, Nouns.FACE, "standoff", "standoff", (f, e) -> build(f, e).standoff());
    amount(words, Nouns.FACE, "lining thickness", "lining", (f, e) -> build(f, e).lining());
    amount(words, Nouns.FACE, "sheet thickness", "sheet", (f, e) -> build(f, e).sheet());
    amount(
        words,
        Nouns.FACE,
        "foam thickness",
        "foam/thickness",
        (f, e) -> foam(f, e).map(FaceBuild.Foam::thickness).orElse(null));
    words.number(
        property(Nouns.FACE, "foam conductivity", Kinds.CONDUCTIVITY),
        (facts, element, arguments, reading) ->
            Given.read(
                foam(facts, element).map(FaceBuild.Foam::conductivity).orElse(null), reading),
        (facts, element, arguments, out) ->
            Given.explain(
                facts,
                element,
                foam(facts, element).map(FaceBuild.Foam::conductivity).orElse(null),
                "foam/conductivity",
                out));
    words.choice(
        property(Nouns.FACE, "foam kind", Kinds.FOAM_KIND),
        (facts, element, arguments) ->
            foam(facts, element).map(FaceBuild.Foam::kind).map(Enum::ordinal).orElse(-1),
        (facts, element, arguments, out) ->
            Given.explain(
                facts,
                element,
                foam(facts, element).map(FaceBuild.Foam::kind).orElse(null),
                "foam/kind",
                out));
    profile(words, "corrugation depth", face -> face.depth());
    profile(words, "pitch", face -> face.pitch());
    words.link(
        new Link("face.room", "room", Nouns.FACE, Nouns.ROOM),
        (facts, element) -> facts.room(),
        (facts, element, arguments, out) -> {});
    opening(words, "width", Opening::width);
    opening(words, "height", Opening::height);
    opening(words, "sill", Opening::sill);
    room(words);
  }

  private static void room(Dictionary.Builder words) {
    words
        .number(
            property(Nouns.ROOM, "temperature", Kinds.TEMPERATURE),
            (facts, element, arguments, reading) ->
                Given.read(facts.plan().room().temperature(), reading),
            (facts, element, arguments, out) ->
                Given.explain(
                    facts, element, facts.plan().room().temperature(), "temperature", out))
        .number(
            property(Nouns.ROOM, "humidity", Kinds.SHARE),
            (facts, element, arguments, reading) ->
                Given.read(facts.plan().room().humidity(), reading),
            (facts, element, arguments, out) ->
                Given.explain(facts, element, facts.plan().room().humidity(), "humidity", out))
        .number(
            property(Nouns.ROOM, "outdoor design temperature", Kinds.TEMPERATURE),
            (facts, element, arguments, reading) ->
                Given.read(facts.plan().site().outdoorDesignTemperature(), reading),
            (facts, element, arguments, out) -> {
              if (facts.plan().site().outdoorDesignTemperature() == null) {
                out.missing(
                    facts.missing(facts.plan().site().pointer() + "/outdoorDesignTemperature"));
              }
            })
        .text(
            property(Nouns.ROOM, "use", Kinds.TEXT),
            (facts, element, arguments) -> Optional.ofNullable(facts.plan().room().use()),
            (facts, element, arguments, out) ->
                Given.explain(facts, element, facts.plan().room().use(), "use", out));
  }

  private interface FaceAmount {
    @Nullable Amount of(PlanFacts facts, int element);
  }

  private static void amount(
      Dictionary.Builder words, Noun owner, String phrase, String field, FaceAmount amount) {
    words.number(
        property(owner, phrase, Kinds.LENGTH),
        (facts, element, arguments, reading) -> Given.read(amount.of(facts, element), reading),
        (facts, element, arguments, out) ->
            Given.explain(facts, element, amount.of(facts, element), field, out));
  }

  private static void profile(
      Dictionary.Builder words,
      String phrase,
      Function<org.rimefast.plan.CorrugationProfile, Double> value) {
    words.number(
        property(Nouns.FACE, phrase, Kinds.LENGTH),
        (facts, element, arguments, reading) -> {
          var profile = build(facts, element).profile();
          Given.read(profile == null ? Double.NaN : value.apply(profile), reading);
        },
        (facts, element, arguments, out) ->
            Given.explain(facts, element, build(facts, element).profile(), "profile", out));
  }

  private static void opening(
      Dictionary.Builder words, String phrase, Function<Opening, Amount> value) {
    words.number(
        property(Nouns.OPENING, phrase, Kinds.LENGTH),
        (facts, element, arguments, reading) ->
            Given.read(value.apply(facts.opening(element)), reading),
        (facts, element, arguments, out) -> {});
  }

  private static FaceBuild build(PlanFacts facts, int element) {
    return facts.plan().face(facts.face(element));
  }

  private static Optional<FaceBuild.Foam> foam(PlanFacts facts, int element) {
    return Optional.ofNullable(build(facts, element).foam());
  }
}
