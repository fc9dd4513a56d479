package org.rimefast.check.internal.steel;

import static org.rimefast.check.internal.steel.Kinds.property;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.check.internal.Fields;
import org.rimefast.plan.Amount;
import org.rimefast.plan.CorrugationProfile;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.Products;
import org.rimefast.plan.Run;
import org.rimefast.plan.geometry.ModuleGeometry;
import org.rimefast.plan.geometry.ShellNearest;

/** Words for how near a part or run comes to the steel of the shell. */
final class ShellWords {
  private ShellWords() {}

  static void addTo(Dictionary.Builder words) {
    words
        .number(
            property(Nouns.ITEM, "clearance", Kinds.LENGTH),
            ShellWords::clearance,
            ShellWords::explainClearance)
        .number(
            property(Nouns.ITEM, "foam cover", Kinds.LENGTH),
            ShellWords::foamCover,
            ShellWords::explainFoamCover)
        .relation(
            Kinds.verb(Nouns.ITEM, "touch the shell", "touches the shell"),
            ShellWords::touches,
            ShellWords::explainClearance);
  }

  /** The exact least distance to the corrugated steel, in millimetres; NaN if data is missing. */
  static double millimetres(PlanFacts facts, int element) {
    ModuleGeometry geometry = facts.geometry();
    return facts.isPart(element)
        ? geometry.clearance(element)
        : geometry.runClearance(facts.runIndex(element));
  }

  private static double tolerance(PlanFacts facts, int element) {
    ModuleGeometry geometry = facts.geometry();
    return facts.isPart(element)
        ? geometry.positionTolerance(element)
        : geometry.runPositionTolerance(facts.runIndex(element));
  }

  private static void clearance(
      PlanFacts facts, int element, Arguments arguments, Reading reading) {
    double nominal = millimetres(facts, element);
    double tolerance = tolerance(facts, element);
    reading.between(Math.max(0, nominal - tolerance) / 1000, (nominal + tolerance) / 1000);
  }

  /**
   * The least foam between an item and the steel: no more than its clearance, and no more than the
   * foam's thickness over the inward ribs of each face that it is on. In an outer bay there may be
   * more.
   */
  private static void foamCover(
      PlanFacts facts, int element, Arguments arguments, Reading reading) {
    clearance(facts, element, arguments, reading);
    if (facts.isPart(element)) {
      cover(facts, facts.part(element).face(), reading);
      return;
    }
    List<Run.PathPoint> path = facts.run(element).path();
    for (int i = 0; i < path.size(); i++) {
      cover(facts, path.get(i).face(), reading);
    }
  }

  /** Lowers a number to the thickness of a face's foam. */
  private static void cover(PlanFacts facts, Face face, Reading reading) {
    Amount thickness = foamThickness(facts, face);
    if (!reading.isPresent() || thickness == null) {
      reading.missing();
      return;
    }
    double least = reading.least();
    double most = reading.most();
    Given.read(thickness, reading);
    reading.between(Math.min(least, reading.least()), Math.min(most, reading.most()));
  }

  private static @Nullable Amount foamThickness(PlanFacts facts, Face face) {
    FaceBuild.Foam foam = facts.plan().face(face).foam();
    return foam == null ? null : foam.thickness();
  }

  private static Truth touches(PlanFacts facts, int element, Arguments arguments) {
    return Touch.decide(
        millimetres(facts, element),
        tolerance(facts, element),
        facts.geometry().contactTolerance());
  }

  private static void explainFoamCover(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    explainClearance(facts, element, arguments, out);
    if (facts.isPart(element)) {
      explainFoam(facts, facts.part(element).face(), out);
    } else {
      facts.run(element).path().forEach(point -> explainFoam(facts, point.face(), out));
    }
  }

  private static void explainFoam(PlanFacts facts, Face face, Explanation out) {
    if (foamThickness(facts, face) == null) {
      out.missing(facts.missing(facts.plan().face(face).pointer() + "/foam/thickness"));
    }
  }

  /** A profile taken by name is a typical one: every shell differs, and it must be measured. */
  static void explainProfile(PlanFacts facts, Face face, Explanation out) {
    CorrugationProfile profile = facts.plan().face(face).profile();
    if (profile != null && !profile.isFlat() && Products.profile(profile.name()).isPresent()) {
      out.fact("profile", profile.name() + ", typical, from memory: measure it on the shell");
    }
  }

  /** Why it is not certain whether an item touches the steel of one face. */
  static void explainSheet(PlanFacts facts, int element, Face face, Explanation out) {
    ModuleGeometry geometry = facts.geometry();
    (facts.isPart(element)
            ? geometry.missing(element)
            : geometry.runMissing(facts.runIndex(element)))
        .forEach(pointer -> out.missing(facts.missing(pointer)));
    FaceBuild build = facts.plan().face(face);
    if (geometry.sheet(face) == null) {
      out.missing(
          facts.missing(build.pointer() + (build.profile() == null ? "/profile" : "/phase")));
    }
    double nominal = millimetres(facts, element);
    if (!Double.isNaN(nominal)) {
      out.fact("gap to the steel as drawn", Places.length(facts, nominal));
      out.fact("may differ by", Places.length(facts, tolerance(facts, element)));
    }
  }

  static void explainClearance(PlanFacts facts, int element, Arguments arguments, Explanation out) {
    ModuleGeometry geometry = facts.geometry();
    ShellNearest nearest =
        facts.isPart(element)
            ? geometry.nearestShell(element)
            : geometry.runNearestShell(facts.runIndex(element));
    if (nearest == null) {
      (facts.isPart(element)
              ? geometry.missingForClearance(element)
              : geometry.runMissingForClearance(facts.runIndex(element)))
          .forEach(pointer -> out.missing(facts.missing(pointer)));
      return;
    }
    if (tolerance(facts, element) > 0) {
      out.fact("as drawn", Places.length(facts, nearest.nearest().distance()));
    }
    Facing.explain(facts, element, out);
    explainProfile(facts, nearest.face(), out);
    out.fact(
        "nearest steel",
        Fields.faceName(nearest.face())
            + ", at "
            + Places.point(facts, nearest.face(), nearest.nearest().onOther()));
    out.fact(
        "nearest point of the " + facts.name(element).noun(),
        Places.point(facts, nearest.face(), nearest.nearest().onElement()));
  }
}
