package org.rimefast.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.check.CheckOptions;
import org.rimefast.check.CheckResult;
import org.rimefast.check.ElementName;
import org.rimefast.check.Evidence;
import org.rimefast.check.Finding;
import org.rimefast.check.Measurement;
import org.rimefast.check.MissingValue;
import org.rimefast.check.RuleResult;
import org.rimefast.check.Truth;
import org.rimefast.check.UnaskedReading;
import org.rimefast.check.Verdict;
import org.rimefast.check.WaiverUse;
import org.rimefast.lang.rule.Change;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Severity;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Waiver;
import org.rimefast.lang.rule.Withdrawal;
import org.rimefast.lang.source.SourceText;
import org.rimefast.plan.InspectReading;
import org.rimefast.plan.Plan;
import org.rimefast.plan.PlanSource;

/**
 * Results built by hand, in the invented scenario. The numbers of box R-3 are those of a box 47.6
 * mm deep, its front flush with 12.7 mm lining, on 41.3 mm studs that stand on the ribs: 47.6 -
 * 12.7 - 41.3 mm leaves 6.4 mm (0.252 in) at an inward rib, so 2 in are missed by 1.748 in.
 */
final class SampleResults {
  static final String FILE = "wet-lab.json";
  static final String HASH = "0123456789abcdef".repeat(4);
  static final String CAUTION =
      "Supports and does not replace local codes, the authority having jurisdiction, the product"
          + " data sheet and licensed trades. Foam needs its thermal barrier. Values marked 'from"
          + " memory' must be confirmed.";

  static final Rule CLEAR =
      SampleParts.rule(
          "box-clear-of-steel",
          "A box leaves room for foam behind it",
          Severity.HOLD,
          "pre-foam",
          "box must sit in outer bay with clearance >= foam behind a box",
          "foam needs room for one lift behind a box, and what it cannot reach stays bare steel");
  static final Rule BRACED =
      SampleParts.rule(
          "box-braced",
          "A box is held so that foam cannot twist it",
          Severity.FIX,
          "pre-foam",
          "for each box, some bracket must hold it",
          "foam pushes, and freezes a box crooked");
  static final Rule SPACING =
      SampleParts.rule(
          "box-spacing",
          "Boxes fall on the same part of the corrugation",
          Severity.ADVISE,
          "layout",
          "each box must have distance to the next box <= 44 in",
          "a spacing that fights the ribs costs a rebuild");
  static final Rule DRY =
      SampleParts.rule(
          "box-surface-dry",
          "The coldest surface of a box stays above the dew point",
          Severity.HOLD,
          "pre-foam",
          "each box must have surface temperature >= dew point of its room + 1 K",
          "water in a device is a hazard");
  static final Rule PANEL =
      SampleParts.rule(
          "panel-on-lining",
          "A panel stands on the finished wall",
          Severity.HOLD,
          "lining",
          "each panel must be mounted on lining",
          "a panel back against a rib frosts");

  private SampleResults() {}

  /** Broken, undecided for both reasons, an error, a rule that spoke of nothing, one not due. */
  static CheckResult everything() {
    List<Finding> clear = new ArrayList<>();
    clear.add(tooClose("R-10", 59));
    clear.add(tooClose("R-3", 48));
    clear.add(withinTolerance());
    List<Finding> dry = List.of(waitsForHumidity("R-3", 48), waitsForHumidityAndDepth("R-4", 48));
    List<Finding> braced = List.of(notBraced("R-3", 48), error());
    List<Finding> spacing = List.of(tooFar());
    return result(
        new CheckOptions(Optional.of("pre-foam"), Optional.of(LocalDate.of(2026, 11, 25)), 1),
        List.of(
            new RuleResult(CLEAR, SampleParts.counts(7, 2, 1, 0, 0), clear, Optional.empty()),
            new RuleResult(DRY, SampleParts.counts(8, 0, 2, 0, 0), dry, Optional.empty()),
            new RuleResult(BRACED, SampleParts.counts(8, 1, 0, 2, 1), braced, Optional.empty()),
            new RuleResult(SPACING, SampleParts.counts(9, 1, 0, 0, 0), spacing, Optional.empty()),
            new RuleResult(
                PANEL,
                SampleParts.counts(0, 0, 0, 0, 0),
                List.of(),
                Optional.of("the plan has no panel"))),
        List.of("lining-closes", "labels-in-place"));
  }

  /** One finding waived and one not; every state of a waiver; readings that nobody asked for. */
  static CheckResult waived() {
    Waiver used = SampleParts.waiver(CLEAR.id(), "R-3", Optional.of("down to 1/8 in"));
    List<WaiverUse> uses = new ArrayList<>();
    for (WaiverUse.State state : WaiverUse.State.values()) {
      boolean isUsed = state == WaiverUse.State.USED;
      uses.add(
          new WaiverUse(
              isUsed
                  ? used
                  : SampleParts.waiver(
                      CLEAR.id(), state.words().replace(' ', '-'), Optional.empty()),
              state,
              isUsed ? 1 : 0,
              isUsed ? List.of("box R-4") : List.of(),
              isUsed ? List.of("box R-5") : List.of(),
              state == WaiverUse.State.UNUSED ? List.of("unused") : List.of()));
    }
    CheckResult open = of(CLEAR, List.of(tooClose("R-3", 48).waivedBy(used), tooClose("R-4", 49)));
    return new CheckResult(
        open.engine(),
        open.standard(),
        open.standardHash(),
        open.plan(),
        new CheckOptions(Optional.empty(), Optional.of(LocalDate.of(2026, 11, 25)), 1),
        open.rules(),
        open.notDue(),
        uses,
        List.of(
            new UnaskedReading(
                new InspectReading(
                    "/readings/0",
                    "covers",
                    "R-3",
                    true,
                    null,
                    "the foreman",
                    LocalDate.of(2026, 11, 20),
                    null),
                "box R-3",
                "the standard has no inspect item covers")));
  }

  static CheckResult clean() {
    return result(
        CheckOptions.DEFAULT,
        List.of(
            new RuleResult(CLEAR, SampleParts.counts(10, 0, 0, 0, 0), List.of(), Optional.empty())),
        List.of());
  }

  static CheckResult nothingChecked() {
    return result(
        CheckOptions.DEFAULT,
        List.of(
            new RuleResult(
                PANEL,
                SampleParts.counts(0, 0, 0, 0, 0),
                List.of(),
                Optional.of("the plan has no panel"))),
        List.of());
  }

  static CheckResult of(Rule rule, List<Finding> findings) {
    int broken = (int) findings.stream().filter(f -> f.verdict() == Verdict.BROKEN).count();
    int undecided = (int) findings.stream().filter(f -> f.verdict() == Verdict.UNDECIDED).count();
    int error = findings.size() - broken - undecided;
    return result(
        CheckOptions.DEFAULT,
        List.of(
            new RuleResult(
                rule,
                SampleParts.counts(0, broken, undecided, 0, error),
                findings,
                Optional.empty())),
        List.of());
  }

  static CheckResult result(CheckOptions options, List<RuleResult> rules, List<String> notDue) {
    return new CheckResult(
        "rimefast 0.1.0", standard(), HASH, plan("Wet lab (invented)"), options, rules, notDue);
  }

  static CheckResult withoutCaution() {
    CheckResult result = clean();
    Standard cautious = standard();
    Standard silent =
        new Standard(
            cautious.name(),
            cautious.edition(),
            cautious.title(),
            "",
            cautious.constants(),
            cautious.rules(),
            cautious.source());
    return new CheckResult(
        result.engine(),
        silent,
        result.standardHash(),
        result.plan(),
        result.options(),
        result.rules(),
        result.notDue());
  }

  static CheckResult readFrom(String file) {
    CheckResult result = clean();
    return new CheckResult(
        result.engine(),
        result.standard(),
        result.standardHash(),
        SampleParts.plan("Wet lab (invented)", file),
        result.options(),
        result.rules(),
        result.notDue());
  }

  static CheckResult titled(CheckResult result, String title) {
    return new CheckResult(
        result.engine(),
        result.standard(),
        result.standardHash(),
        plan(title),
        result.options(),
        result.rules(),
        result.notDue());
  }

  static Finding tooClose(String id, int line) {
    return new Finding(
        CLEAR,
        Verdict.BROKEN,
        SampleParts.box(id, line),
        "box "
            + id
            + " faces inward rib 12, and clearance is 0.252 in where at least 2 in is asked",
        List.of(
            new Evidence(
                "box " + id + " sits in an inward rib, not in an outer bay",
                Truth.FALSE,
                Optional.empty(),
                List.of(new Evidence.Fact("faces", "inward rib 12 of the left wall")),
                List.of(),
                List.of()),
            new Evidence(
                "clearance of box " + id + " is 0.252 in, at least 2 in is asked",
                Truth.FALSE,
                Optional.of(
                    new Measurement(
                        "clearance of box " + id,
                        0.0064,
                        0.0064,
                        "0.252 in",
                        Optional.of("6.4 mm"),
                        Comparison.AT_LEAST,
                        0.0508,
                        "2 in",
                        Optional.of("foam behind a box"),
                        -0.0444,
                        "1.748 in")),
                List.of(
                    new Evidence.Fact("nearest point of the box", "along 2600 mm, up 450 mm"),
                    new Evidence.Fact("nearest point of the shell", "along 2600 mm, up 450 mm")),
                List.of(),
                List.of())),
        List.of());
  }

  private static Finding withinTolerance() {
    String statement =
        "clearance of box R-5 is 1.95 to 2.05 in, and at least 2 in is asked: within tolerance";
    return new Finding(
        CLEAR,
        Verdict.UNDECIDED,
        SampleParts.box("R-5", 48),
        statement,
        List.of(
            new Evidence(
                statement,
                Truth.UNKNOWN,
                Optional.of(
                    new Measurement(
                        "clearance of box R-5",
                        0.04953,
                        0.05207,
                        "1.95 to 2.05 in",
                        Optional.of("49.5 to 52.1 mm"),
                        Comparison.AT_LEAST,
                        0.0508,
                        "2 in",
                        Optional.of("foam behind a box"),
                        -0.00127,
                        "0.05 in")),
                List.of(),
                List.of(),
                List.of())),
        List.of());
  }

  private static Finding waitsForHumidity(String id, int line) {
    MissingValue humidity = humidity();
    return new Finding(
        DRY,
        Verdict.UNDECIDED,
        SampleParts.box(id, line),
        "the plan does not give humidity of room",
        List.of(missing(humidity)),
        List.of(humidity));
  }

  private static Finding waitsForHumidityAndDepth(String id, int line) {
    MissingValue depth =
        new MissingValue(
            "/boxes/2/depth", "depth of box " + id, Optional.of(new PlanSource.Place(line, 5)));
    return new Finding(
        DRY,
        Verdict.UNDECIDED,
        SampleParts.box(id, line),
        "the plan does not give humidity of room and depth of box " + id,
        List.of(missing(humidity()), missing(depth)),
        List.of(humidity(), depth));
  }

  private static MissingValue humidity() {
    return new MissingValue(
        "/room/humidity", "humidity of room", Optional.of(new PlanSource.Place(6, 11)));
  }

  private static Evidence missing(MissingValue value) {
    return new Evidence(
        "the plan does not give " + value.description(),
        Truth.UNKNOWN,
        Optional.empty(),
        List.of(),
        List.of(value),
        List.of());
  }

  private static Finding notBraced(String id, int line) {
    return new Finding(
        BRACED,
        Verdict.BROKEN,
        SampleParts.box(id, line),
        "no bracket holds box " + id,
        List.of(
            new Evidence(
                "none of 2 brackets holds box " + id,
                Truth.FALSE,
                Optional.empty(),
                List.of(new Evidence.Fact("looked at", "bracket B-1, bracket B-2")),
                List.of(),
                List.of(
                    new Evidence(
                        "bracket B-1 holds box R-1",
                        Truth.FALSE,
                        Optional.empty(),
                        List.of(),
                        List.of(),
                        List.of())))),
        List.of());
  }

  private static Finding error() {
    return new Finding(
        BRACED,
        Verdict.ERROR,
        new ElementName("box", "J-1", "", "/boxes/7", Optional.empty()),
        "the average of no numbers has no value",
        List.of(),
        List.of());
  }

  private static Finding tooFar() {
    return new Finding(
        SPACING,
        Verdict.BROKEN,
        SampleParts.box("R-2", 48),
        "distance to the next box of box R-2 is 48 in, at most 44 in is asked",
        List.of(
            new Evidence(
                "distance to the next box of box R-2 is 48 in, at most 44 in is asked",
                Truth.FALSE,
                Optional.of(
                    new Measurement(
                        "distance to the next box of box R-2",
                        1.2192,
                        1.2192,
                        "48 in",
                        Optional.empty(),
                        Comparison.AT_MOST,
                        1.1176,
                        "44 in",
                        Optional.empty(),
                        -0.1016,
                        "4 in")),
                List.of(),
                List.of(),
                List.of())),
        List.of());
  }

  static Standard standard() {
    return new Standard(
        "cold-steel-modules",
        "2026-11",
        "Cold-climate foam-insulated steel modules",
        CAUTION,
        List.of(),
        List.of(CLEAR, DRY, BRACED, SPACING, PANEL),
        new SourceText("standard cold-steel-modules", "standard cold-steel-modules"));
  }

  private static Change change(
      Change.Kind kind, String text, String before, String after, Change.Effect effect) {
    return new Change(
        kind,
        "tamarack-house",
        "2026-12",
        text,
        before,
        after,
        "our customers move in late (invented)",
        kind == Change.Kind.LIMIT ? Optional.of("trial of ours, invented") : Optional.empty(),
        effect,
        SPACING.span());
  }

  /** A house standard that amends one rule of another, takes one out and adds one. */
  static Standard house() {
    Change withdrawn =
        change(
            Change.Kind.WITHDRAWN,
            "withdraw " + PANEL.id(),
            PANEL.sentence(),
            "",
            Change.Effect.LOOSER);
    Change added =
        change(Change.Kind.ADDED, "rule " + DRY.id(), "", DRY.sentence(), Change.Effect.STRICTER);
    return new Standard(
        "tamarack-house",
        "2026-12",
        "House standard (invented)",
        CAUTION,
        List.of(),
        List.of(),
        List.of(),
        List.of(amended(), DRY.withChanges(List.of(added))),
        List.of(),
        new SourceText("house.rime", "standard tamarack-house"),
        Optional.of(
            new Standard(
                "cold-steel-modules",
                "2026-11",
                "",
                CAUTION,
                List.of(),
                List.of(SPACING, PANEL),
                new SourceText("house.rime", "standard tamarack-house"))),
        List.of(new Withdrawal(PANEL, withdrawn)));
  }

  private static Rule amended() {
    return SPACING.withChanges(
        List.of(
            change(
                Change.Kind.LIMIT,
                "in rule " + SPACING.id() + ", the limit 48 in is 44 in",
                "48 in",
                "44 in",
                Change.Effect.STRICTER),
            change(
                Change.Kind.CONSTANT,
                "in rule " + SPACING.id() + ", least room is 3 in",
                "least room: 2 in",
                "least room: 3 in",
                Change.Effect.UNPROVED)));
  }

  /** A result under that standard. */
  static CheckResult layered() {
    Finding far = tooFar();
    Rule rule = amended();
    Finding finding =
        new Finding(
            rule, far.verdict(), far.element(), far.reason(), far.evidence(), far.missing());
    return new CheckResult(
        "rimefast 0.1.0",
        house(),
        HASH,
        plan("Wet lab (invented)"),
        CheckOptions.DEFAULT,
        List.of(
            new RuleResult(
                rule, SampleParts.counts(0, 1, 0, 0, 0), List.of(finding), Optional.empty())),
        List.of());
  }

  private static Plan plan(String title) {
    return SampleParts.plan(title, FILE);
  }
}
