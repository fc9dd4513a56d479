package org.rimefast.check.internal.steel;

import java.util.List;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Truth;
import org.rimefast.plan.geometry.ModuleGeometry;

/** Words for what stands past the studs' warm face toward the room. */
final class ProudWords {
  private ProudWords() {}

  static void addTo(Dictionary.Builder words) {
    words.relation(
        Kinds.verb(Nouns.ITEM, "stand proud of the studs", "stands proud of the studs"),
        (facts, element, arguments) -> standsProud(facts, element),
        (facts, element, arguments, out) -> {
          if (facts.isRun(element)) {
            explainRun(facts, element, out);
          } else {
            explain(
                facts,
                facts.geometry().partProud(element),
                facts.geometry().missingForPartProud(element),
                out);
          }
        });
  }

  private static Truth standsProud(PlanFacts facts, int element) {
    ModuleGeometry geometry = facts.geometry();
    if (facts.isPart(element)) {
      // A part that is not drawn proud is fitted so; a run moves until the foam holds it.
      double proud = geometry.partProud(element);
      return proud <= Touch.ROUNDING
          ? Truth.FALSE
          : decide(proud, geometry.partProudTolerance(element));
    }
    int run = facts.runIndex(element);
    return decide(geometry.proud(run), geometry.proudTolerance(run));
  }

  private static Truth decide(double proud, double tolerance) {
    return Double.isNaN(proud) ? Truth.UNKNOWN : Touch.more(proud, tolerance);
  }

  static void explainRun(PlanFacts facts, int element, Explanation out) {
    int run = facts.runIndex(element);
    explain(facts, facts.geometry().proud(run), facts.geometry().missingForProud(run), out);
  }

  private static void explain(
      PlanFacts facts, double proud, List<String> missing, Explanation out) {
    if (Double.isNaN(proud)) {
      missing.forEach(pointer -> out.missing(facts.missing(pointer)));
    } else {
      out.fact(
          proud > 0 ? "past the studs' warm face by" : "behind the studs' warm face by",
          Places.length(facts, Math.abs(proud)));
    }
  }
}
