package org.rimefast.report;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimefast.check.ElementName;
import org.rimefast.check.Verdict;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Severity;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.rule.Waiver;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.Plan;
import org.rimefast.plan.PlanSource;
import org.rimefast.plan.Room;
import org.rimefast.plan.ShellSize;
import org.rimefast.plan.Site;
import org.rimefast.plan.Tolerances;
import org.rimefast.units.Quantity;
import org.rimefast.units.Rational;
import org.rimefast.units.Units;

/** Rules, elements and a plan of the invented scenario, for results built by hand. */
final class SampleParts {
  private static final Noun BOX = new Noun("box", "box", "boxes", List.of());
  private static final Span SPAN = new Span(0, 1);

  private SampleParts() {}

  static Rule rule(
      String id, String title, Severity severity, String stage, String sentence, String because) {
    ValueType.Number length = new ValueType.Number(Units.INCH.dimension(), Units.INCH);
    Variable box = new Variable(0, BOX);
    Property clearance = new Property("box.clearance", "clearance", BOX, List.of(), length);
    Condition requirement =
        new Condition.Compare(
            new Value.Of(clearance, new Reference.Bound(box), List.of(), SPAN),
            Comparison.AT_LEAST,
            new Value.Literal(new Quantity(Rational.of(2), Units.INCH, "2 in"), length, SPAN),
            SPAN);
    return new Rule(
        id,
        title,
        box,
        Optional.empty(),
        Optional.empty(),
        requirement,
        severity,
        stage,
        because,
        "common practice, no source",
        sentence,
        SPAN,
        SPAN);
  }

  static Waiver waiver(String rule, String element, Optional<String> bound) {
    SourceText text = new SourceText("waivers.rime", "waivers for house\n\nwaive " + rule);
    ValueType.Number length = new ValueType.Number(Units.INCH.dimension(), Units.INCH);
    Rational eighth = Rational.of(1).dividedBy(Rational.of(8));
    return new Waiver(
        rule,
        List.of(element),
        Optional.empty(),
        "\"" + element + "\"",
        element.equals("other-plan") ? Optional.of("bunk-room") : Optional.empty(),
        "the bay is taken by a duct",
        "the engineer",
        LocalDate.of(2026, 11, 1),
        LocalDate.of(2027, 3, 31),
        bound.map(
            words ->
                new Waiver.Bound(
                    Comparison.AT_LEAST,
                    new Value.Literal(new Quantity(eighth, Units.INCH, "1/8 in"), length, SPAN),
                    new Condition.IsA(
                        new Reference.Bound(new Variable(0, BOX)), BOX, Optional.empty(), SPAN))),
        text,
        new Span(19, 24));
  }

  static ElementName box(String id, int line) {
    return new ElementName(
        "box",
        id,
        "left wall, along 2635 mm, up 450 mm",
        "/boxes/2",
        Optional.of(new PlanSource.Place(line, 5)));
  }

  static Map<Verdict, Integer> counts(
      int met, int broken, int undecided, int notApplicable, int error) {
    return Map.of(
        Verdict.MET, met,
        Verdict.BROKEN, broken,
        Verdict.UNDECIDED, undecided,
        Verdict.NOT_APPLICABLE, notApplicable,
        Verdict.ERROR, error);
  }

  static Plan plan(String title, String file) {
    Map<Face, FaceBuild> faces = new EnumMap<>(Face.class);
    for (Face face : Face.values()) {
      faces.put(
          face,
          new FaceBuild(
              face,
              "/faces/default",
              null,
              FaceBuild.Ribs.UPRIGHT,
              null,
              null,
              null,
              null,
              null,
              null));
    }
    return new Plan(
        "loon-narrows-wet-lab",
        title,
        Units.MILLIMETRE,
        Tolerances.NONE,
        new Room("/room", "wet lab", null, null),
        new Site("/site", "Loon Narrows (invented)", null),
        new ShellSize("45G1", 12032, 2352, 2698),
        faces,
        List.of(),
        List.of(),
        List.of(),
        new PlanSource(file, "fedcba9876543210".repeat(4), Map.of()));
  }
}
