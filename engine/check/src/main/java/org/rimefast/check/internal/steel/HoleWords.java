package org.rimefast.check.internal.steel;

import static org.rimefast.check.internal.steel.Kinds.property;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Part;
import org.rimefast.plan.Part.ServiceHole;
import org.rimefast.plan.geometry.Cuboid;

/** Words for where the service holes of a stud are in it, and how large. */
final class HoleWords {
  private HoleWords() {}

  static void addTo(Dictionary.Builder words) {
    words
        .number(
            property(Nouns.STUD, "hole edge distance", Kinds.LENGTH),
            HoleWords::edgeDistance,
            HoleWords::explainEdgeDistance)
        .number(
            property(Nouns.STUD, "hole spacing", Kinds.LENGTH),
            HoleWords::spacing,
            (facts, element, arguments, out) -> explainFew(facts, element, 2, out));
    largest(words, "widest hole", ServiceHole::width);
    largest(words, "tallest hole", ServiceHole::height);
  }

  private interface Size {
    Amount of(ServiceHole hole);
  }

  private static void largest(Dictionary.Builder words, String phrase, Size size) {
    words.number(
        property(Nouns.STUD, phrase, Kinds.LENGTH),
        (facts, element, arguments, reading) -> {
          double least = Double.NaN;
          double most = Double.NaN;
          for (ServiceHole hole : holes(facts, element)) {
            Amount amount = size.of(hole);
            least = larger(least, amount.si() - amount.siTolerance());
            most = larger(most, amount.si() + amount.siTolerance());
          }
          reading.between(least, most);
        },
        (facts, element, arguments, out) -> explainFew(facts, element, 1, out));
  }

  /** From an end of the stud to the nearest edge of a hole. */
  private static void edgeDistance(
      PlanFacts facts, int element, Arguments arguments, Reading reading) {
    Cuboid stud = facts.geometry().cuboid(element);
    if (stud == null) {
      reading.missing();
      return;
    }
    boolean wall = facts.part(element).face().isWall();
    double low = wall ? stud.minZ() : stud.minY();
    double high = wall ? stud.maxZ() : stud.maxY();
    double ends = endTolerance(facts, element);
    double least = Double.NaN;
    double most = Double.NaN;
    for (ServiceHole hole : holes(facts, element)) {
      double up = hole.up().millimetres();
      double half = hole.height().millimetres() / 2;
      double edge = Math.min(up - half - low, high - up - half);
      double tolerance = ends + 1000 * (hole.up().siTolerance() + hole.height().siTolerance() / 2);
      least = smaller(least, edge - tolerance);
      most = smaller(most, edge + tolerance);
    }
    reading.between(least / 1000, most / 1000);
  }

  /** How far an end of a stud may be off by the tolerances of its own height and place. */
  private static double endTolerance(PlanFacts facts, int element) {
    Part stud = facts.part(element);
    return 1000 * (tolerance(stud.up()) + tolerance(stud.height()) / 2);
  }

  private static double tolerance(@Nullable Amount amount) {
    return amount == null ? 0 : amount.siTolerance();
  }

  /** Between the middles of two holes, the least. */
  private static void spacing(PlanFacts facts, int element, Arguments arguments, Reading reading) {
    List<ServiceHole> holes = holes(facts, element);
    double least = Double.NaN;
    double most = Double.NaN;
    for (int i = 0; i < holes.size(); i++) {
      for (int j = 0; j < i; j++) {
        Amount a = holes.get(i).up();
        Amount b = holes.get(j).up();
        double between = Math.abs(a.si() - b.si());
        double tolerance = a.siTolerance() + b.siTolerance();
        least = smaller(least, Math.max(0, between - tolerance));
        most = smaller(most, between + tolerance);
      }
    }
    reading.between(least, most);
  }

  private static double smaller(double known, double next) {
    return Double.isNaN(known) ? next : Math.min(known, next);
  }

  private static double larger(double known, double next) {
    return Double.isNaN(known) ? next : Math.max(known, next);
  }

  private static List<ServiceHole> holes(PlanFacts facts, int element) {
    return ((Part.Stud) facts.part(element)).holes();
  }

  private static void explainEdgeDistance(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    facts.geometry().missing(element).forEach(pointer -> out.missing(facts.missing(pointer)));
    explainFew(facts, element, 1, out);
  }

  private static void explainFew(PlanFacts facts, int element, int needed, Explanation out) {
    List<ServiceHole> holes = holes(facts, element);
    if (holes.size() < needed) {
      out.reason(
          facts.name(element).label()
              + (holes.isEmpty() ? " has no service hole" : " has only one service hole"));
      return;
    }
    out.fact(
        "holes at",
        holes.stream()
            .map(hole -> "up " + Places.length(facts, hole.up().millimetres()))
            .collect(Collectors.joining(", ")));
  }
}
