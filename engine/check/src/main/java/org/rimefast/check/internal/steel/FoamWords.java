package org.rimefast.check.internal.steel;

import static org.rimefast.check.internal.steel.Kinds.property;

import java.util.Comparator;
import java.util.List;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.plan.Face;
import org.rimefast.plan.RunBuild.Side;
import org.rimefast.plan.geometry.Bounds;
import org.rimefast.plan.geometry.FoamAccess;
import org.rimefast.plan.geometry.FoamAccess.BareArea;
import org.rimefast.plan.geometry.SheetQuantities;
import org.rimefast.units.QuantityFormat;
import org.rimefast.units.Units;

/** Words for where foam gets, what steel it leaves bare, and how much of both there is. */
final class FoamWords {
  private static final PlanFacts.Key<FoamAccess> ACCESS =
      new PlanFacts.Key<>("foam access", FoamAccess.class);
  private static final PlanFacts.Key<SheetQuantities> QUANTITIES =
      new PlanFacts.Key<>("quantities of sheets", SheetQuantities.class);
  private static final double SQUARE = 1e-6;
  private static final double CUBIC = 1e-9;
  private static final int MOST_NAMED = 5;

  private FoamWords() {}

  static void addTo(Dictionary.Builder words) {
    words
        .number(
            property(Nouns.PART, "foam access beside", Kinds.LENGTH),
            (facts, element, arguments, reading) ->
                read(access(facts).beside(element), 1e-3, reading),
            FoamWords::explainBeside)
        .number(
            property(Nouns.PART, "foam access behind", Kinds.LENGTH),
            (facts, element, arguments, reading) ->
                read(access(facts).behind(element), 1e-3, reading),
            FoamWords::explainBehind)
        .number(
            property(Nouns.PART, "bare steel behind", Kinds.FACE_AREA),
            (facts, element, arguments, reading) ->
                read(access(facts).bareBehind(element), SQUARE, reading),
            FoamWords::explainBareBehind)
        .number(
            property(Nouns.FACE, "bare steel", Kinds.FACE_AREA),
            (facts, element, arguments, reading) ->
                read(access(facts).bare(facts.face(element)), SQUARE, reading),
            FoamWords::explainBare)
        .number(
            property(Nouns.FACE, "foam area", Kinds.FACE_AREA),
            (facts, element, arguments, reading) ->
                read(quantities(facts).foamArea(facts.face(element)), SQUARE, reading),
            (facts, element, arguments, out) ->
                name(facts, quantities(facts).missingForFoamArea(facts.face(element)), out))
        .number(
            property(Nouns.FACE, "steel area", Kinds.FACE_AREA),
            (facts, element, arguments, reading) ->
                read(quantities(facts).steelArea(facts.face(element)), SQUARE, reading),
            (facts, element, arguments, out) -> {
              name(facts, quantities(facts).missingForSteelArea(facts.face(element)), out);
              ShellWords.explainProfile(facts, facts.face(element), out);
            })
        .number(
            property(Nouns.FACE, "foam volume", Kinds.FOAM_VOLUME),
            (facts, element, arguments, reading) ->
                read(quantities(facts).foamVolume(facts.face(element)), CUBIC, reading),
            (facts, element, arguments, out) -> {
              name(facts, quantities(facts).missingForFoamVolume(facts.face(element)), out);
              ShellWords.explainProfile(facts, facts.face(element), out);
            });
  }

  private static FoamAccess access(PlanFacts facts) {
    return facts.keep(ACCESS, each -> FoamAccess.of(each.geometry()));
  }

  private static SheetQuantities quantities(PlanFacts facts) {
    return facts.keep(QUANTITIES, each -> SheetQuantities.of(each.geometry()));
  }

  private static void read(Bounds bounds, double unit, Reading reading) {
    reading.between(bounds.least() * unit, bounds.most() * unit);
  }

  private static void name(PlanFacts facts, List<String> missing, Explanation out) {
    missing.forEach(pointer -> out.missing(facts.missing(pointer)));
  }

  private static void explainBeside(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    FoamAccess access = access(facts);
    name(facts, access.missingForBeside(element), out);
    if (!access.beside(element).isKnown()) {
      return;
    }
    Side widest = access.widestSide(element);
    out.fact("widest", words(widest) + ", " + gap(facts, element, widest));
    for (Side side : List.of(Side.LEFT, Side.RIGHT, Side.ABOVE, Side.BELOW)) {
      if (side != widest) {
        out.fact(words(side), gap(facts, element, side));
      }
    }
  }

  private static String words(Side side) {
    return switch (side) {
      case LEFT -> "to the left";
      case RIGHT -> "to the right";
      default -> side.word();
    };
  }

  private static String gap(PlanFacts facts, int element, Side side) {
    FoamAccess access = access(facts);
    int next = access.nextBeside(element, side);
    return Places.length(facts, access.gapBeside(element, side))
        + " to "
        + (next < 0 ? "the end of the face" : facts.name(next).label());
  }

  private static void explainBehind(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    FoamAccess access = access(facts);
    name(facts, access.missingForBehind(element), out);
    if (access.behind(element).isKnown()) {
      int next = access.nextBehind(element);
      out.fact(
          "straight back",
          Places.length(facts, access.gapBehind(element))
              + " to "
              + (next < 0 ? "the sheet" : facts.name(next).label()));
      ShellWords.explainProfile(facts, facts.part(element).face(), out);
    }
  }

  private static void explainBareBehind(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    FoamAccess access = access(facts);
    name(facts, access.missingForBareBehind(element), out);
    access
        .bareAreaBehind(element)
        .ifPresent(area -> out.fact("bare as drawn", rectangle(facts, area)));
    if (access.behind(element).isKnown()) {
      explainBehind(facts, element, arguments, out);
      Side widest = access.widestSide(element);
      out.fact("widest gap beside it", words(widest) + ", " + gap(facts, element, widest));
    }
  }

  private static void explainBare(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    FoamAccess access = access(facts);
    Face face = facts.face(element);
    name(facts, access.missingForBare(face), out);
    List<BareArea> areas =
        access.bareAreas(face).stream()
            .sorted(
                Comparator.comparingDouble((BareArea area) -> -area.area())
                    .thenComparing(BareArea::part))
            .toList();
    for (BareArea area : areas.subList(0, Math.min(MOST_NAMED, areas.size()))) {
      out.fact(
          (area.beside() ? "beside " : "behind ") + facts.name(area.part()).label(),
          rectangle(facts, area));
    }
    if (areas.size() > MOST_NAMED) {
      out.fact("and at", areas.size() - MOST_NAMED + " more places");
    }
  }

  /** {@code 0.0043 m2: along 1200 mm to 1254 mm, up 1162 mm to 1238 mm}. */
  private static String rectangle(PlanFacts facts, BareArea area) {
    Face face = facts.part(area.part()).face();
    return QuantityFormat.format(area.area() * SQUARE, Units.SQUARE_METRE)
        + ": along "
        + Places.length(facts, area.alongMin())
        + " to "
        + Places.length(facts, area.alongMax())
        + (face.isWall() ? ", up " : ", across ")
        + Places.length(facts, area.upMin())
        + " to "
        + Places.length(facts, area.upMax());
  }
}
