package org.rimefast.check.internal.steel;

import static org.rimefast.check.internal.steel.Kinds.property;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Dictionary;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Truth;
import org.rimefast.check.Word;
import org.rimefast.check.internal.Fields;
import org.rimefast.lang.vocabulary.Link;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Face;
import org.rimefast.plan.Material;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Part;

/** Words for what a plan says of a part: sizes, mount, material, what holds what. */
final class PartWords {
  private PartWords() {}

  static void addTo(Dictionary.Builder words) {
    size(words, "width", Part::width);
    size(words, "height", Part::height);
    size(words, "depth", Part::depth);
    words
        .choice(
            property(Nouns.ELECTRICAL_PART, "mount", Kinds.MOUNT),
            (facts, element, arguments) -> place(mount(facts, element)),
            (facts, element, arguments, out) ->
                Given.explain(facts, element, mount(facts, element), "mount", out))
        .choice(
            property(Nouns.PART, "material", Kinds.MATERIAL),
            (facts, element, arguments) -> place(facts.part(element).material()),
            (facts, element, arguments, out) ->
                Given.explain(facts, element, facts.part(element).material(), "material", out))
        .choice(
            property(Nouns.BOX, "kind", Kinds.BOX_KIND),
            (facts, element, arguments) -> ((Part.Box) facts.part(element)).kind().ordinal(),
            Word.Explainer.NONE)
        .link(
            new Link("part.face", "face", Nouns.PART, Nouns.FACE),
            (facts, element) -> facts.handleOf(facts.part(element).face()),
            Word.Explainer.NONE)
        .link(
            new Link("item.room", "room", Nouns.ITEM, Nouns.ROOM),
            (facts, element) -> facts.room(),
            Word.Explainer.NONE);
    relations(words);
    faces(words);
  }

  private static void relations(Dictionary.Builder words) {
    words
        .relation(
            Kinds.being(Nouns.ELECTRICAL_PART, "recessed"),
            (facts, element, arguments) -> {
              Mount mount = mount(facts, element);
              return mount == null ? Truth.UNKNOWN : Truth.of(mount != Mount.SURFACE);
            },
            (facts, element, arguments, out) ->
                Given.explain(facts, element, mount(facts, element), "mount", out))
        .relation(
            Kinds.being(Nouns.ELECTRICAL_PART, "mounted on the lining"),
            (facts, element, arguments) -> {
              Mount mount = mount(facts, element);
              return mount == null ? Truth.UNKNOWN : Truth.of(mount == Mount.SURFACE);
            },
            (facts, element, arguments, out) ->
                Given.explain(facts, element, mount(facts, element), "mount", out))
        .relation(
            Kinds.being(Nouns.ITEM, "metal"),
            (facts, element, arguments) -> {
              if (facts.isRun(element)) {
                return Truth.of(facts.run(element).kind().isMetal());
              }
              Material material = facts.part(element).material();
              return material == null ? Truth.UNKNOWN : Truth.of(material.isMetal());
            },
            (facts, element, arguments, out) -> {
              if (facts.isPart(element)) {
                Given.explain(facts, element, facts.part(element).material(), "material", out);
              }
            })
        .relation(
            Kinds.being(Nouns.PART, "on a wall"),
            (facts, element, arguments) -> Truth.of(facts.part(element).face().isWall()),
            Word.Explainer.NONE)
        .relation(
            Kinds.verb(Nouns.BRACKET, "hold _", "holds _", Kinds.element(Nouns.PART)),
            (facts, element, arguments) -> {
              String held = ((Part.Bracket) facts.part(element)).holds();
              return held == null
                  ? Truth.UNKNOWN
                  : Truth.of(held.equals(facts.part(arguments.element(0)).id()));
            },
            (facts, element, arguments, found) -> BracketsOfParts.held(facts, element, found),
            (facts, element, arguments, found) -> BracketsOfParts.of(facts).holding(element, found),
            (facts, element, arguments, out) ->
                Given.explain(
                    facts, element, ((Part.Bracket) facts.part(element)).holds(), "holds", out));
  }

  private static void faces(Dictionary.Builder words) {
    for (Face face : Face.values()) {
      words.relation(
          Kinds.being(Nouns.PART, "on the " + Fields.faceName(face)),
          (facts, element, arguments) -> Truth.of(facts.part(element).face() == face),
          Word.Explainer.NONE);
    }
  }

  private static void size(
      Dictionary.Builder words, String name, Function<Part, @Nullable Amount> size) {
    words.number(
        property(Nouns.PART, name, Kinds.LENGTH),
        (facts, element, arguments, reading) -> {
          Part part = facts.part(element);
          Amount given = size.apply(part);
          if (given == null && StudWords.isSizeOfSection(part, name)) {
            Given.read(StudWords.size(facts, element, name), reading);
          } else {
            Given.read(given, reading);
          }
        },
        (facts, element, arguments, out) -> {
          if (StudWords.isSizeOfSection(facts.part(element), name)) {
            StudWords.explainSize(facts, element, size, name, out);
          } else {
            Given.explain(facts, element, size.apply(facts.part(element)), name, out);
          }
        });
  }

  private static int place(@Nullable Enum<?> value) {
    return value == null ? -1 : value.ordinal();
  }

  /** How an electrical part is mounted; null where the plan does not say. */
  private static @Nullable Mount mount(PlanFacts facts, int element) {
    return ((Part.Electrical) facts.part(element)).mount();
  }
}
