package org.rimefast.check.internal.steel;

import static org.rimefast.check.internal.steel.Kinds.property;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Dictionary;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Word;
import org.rimefast.lang.vocabulary.Link;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.plan.Amount;
import org.rimefast.plan.CorrugationProfile;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.Opening;

/** Words for faces, openings and the room. */
final class FaceWords {
  private FaceWords() {}

  static void addTo(Dictionary.Builder words) {
    faces(words);
    openings(words);
    room(words);
  }

  private static void faces(Dictionary.Builder words) {
    Noun face = Nouns.FACE;
    words.number(
        property(face, "standoff", Kinds.LENGTH),
        (facts, element, arguments, reading) ->
            Given.read(
                build(facts, element).standoff(), facts.plan().tolerances().shell(), reading),
        (facts, element, arguments, out) ->
            Given.explain(facts, element, build(facts, element).standoff(), "standoff", out));
    amount(words, face, "lining thickness", Kinds.LENGTH, "lining", (f, e) -> build(f, e).lining());
    amount(words, face, "sheet thickness", Kinds.LENGTH, "sheet", (f, e) -> build(f, e).sheet());
    amount(words, face, "foam thickness", Kinds.LENGTH, "foam/thickness", FaceWords::foamThickness);
    amount(
        words,
        face,
        "foam conductivity",
        Kinds.CONDUCTIVITY,
        "foam/conductivity",
        FaceWords::foamConductivity);
    profile(words, "corrugation depth", CorrugationProfile::depth);
    profile(words, "pitch", CorrugationProfile::pitch);
    words
        .choice(
            property(face, "foam kind", Kinds.FOAM_KIND),
            (facts, element, arguments) -> {
              FaceBuild.Foam.Kind kind = foamKind(facts, element);
              return kind == null ? -1 : kind.ordinal();
            },
            (facts, element, arguments, out) ->
                Given.explain(facts, element, foamKind(facts, element), "foam/kind", out))
        .link(
            new Link("face.room", "room", face, Nouns.ROOM),
            (facts, element) -> facts.room(),
            Word.Explainer.NONE);
  }

  private static void openings(Dictionary.Builder words) {
    opening(words, "width", Opening::width);
    opening(words, "height", Opening::height);
    opening(words, "sill", Opening::sill);
  }

  private static void opening(
      Dictionary.Builder words, String phrase, Function<Opening, Amount> value) {
    words.number(
        property(Nouns.OPENING, phrase, Kinds.LENGTH),
        (facts, element, arguments, reading) ->
            Given.read(value.apply(facts.opening(element)), reading),
        Word.Explainer.NONE);
  }

  private static void room(Dictionary.Builder words) {
    Noun room = Nouns.ROOM;
    amount(
        words,
        room,
        "temperature",
        Kinds.TEMPERATURE,
        "temperature",
        (f, e) -> f.plan().room().temperature());
    amount(words, room, "humidity", Kinds.SHARE, "humidity", (f, e) -> f.plan().room().humidity());
    words
        .number(
            property(room, "outdoor design temperature", Kinds.TEMPERATURE),
            (facts, element, arguments, reading) ->
                Given.read(facts.plan().site().outdoorDesignTemperature(), reading),
            (facts, element, arguments, out) -> {
              if (facts.plan().site().outdoorDesignTemperature() == null) {
                out.missing(
                    facts.missing(facts.plan().site().pointer() + "/outdoorDesignTemperature"));
              }
            })
        .text(
            property(room, "use", Kinds.TEXT),
            (facts, element, arguments) -> Optional.ofNullable(facts.plan().room().use()),
            (facts, element, arguments, out) ->
                Given.explain(facts, element, facts.plan().room().use(), "use", out));
  }

  private interface AmountOf {
    @Nullable Amount of(PlanFacts facts, int element);
  }

  private static void amount(
      Dictionary.Builder words,
      Noun owner,
      String phrase,
      ValueType type,
      String field,
      AmountOf amount) {
    words.number(
        property(owner, phrase, type),
        (facts, element, arguments, reading) -> Given.read(amount.of(facts, element), reading),
        (facts, element, arguments, out) ->
            Given.explain(facts, element, amount.of(facts, element), field, out));
  }

  private static void profile(
      Dictionary.Builder words, String phrase, ToDoubleFunction<CorrugationProfile> value) {
    words.number(
        property(Nouns.FACE, phrase, Kinds.LENGTH),
        (facts, element, arguments, reading) -> {
          CorrugationProfile profile = build(facts, element).profile();
          Given.read(profile == null ? Double.NaN : value.applyAsDouble(profile), reading);
        },
        (facts, element, arguments, out) ->
            Given.explain(facts, element, build(facts, element).profile(), "profile", out));
  }

  private static FaceBuild build(PlanFacts facts, int element) {
    return facts.plan().face(facts.face(element));
  }

  private static @Nullable Amount foamThickness(PlanFacts facts, int element) {
    FaceBuild.Foam foam = build(facts, element).foam();
    return foam == null ? null : foam.thickness();
  }

  private static @Nullable Amount foamConductivity(PlanFacts facts, int element) {
    FaceBuild.Foam foam = build(facts, element).foam();
    return foam == null ? null : foam.conductivity();
  }

  private static FaceBuild.Foam.@Nullable Kind foamKind(PlanFacts facts, int element) {
    FaceBuild.Foam foam = build(facts, element).foam();
    return foam == null ? null : foam.kind();
  }
}
