package org.rimefast.rulesets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rimefast.check.Checker;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Finding;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.StandardLibrary;
import org.rimefast.check.SteelModules;
import org.rimefast.check.Verdict;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Rule;
import org.rimefast.plan.Plan;
import org.rimefast.plan.PlanReader;
import org.rimefast.plan.PlanReading;

/**
 * Plans with the mistakes that people make (invented), and what is said of them: the faults of the
 * file, or the verdicts of the rules that speak of the mistake. A missing {@code .expected} is
 * written, and the test fails all the same: read it and run again.
 */
class BadPlansTest {
  private static final Path FOLDER = Path.of("src", "test", "resources", "bad-plans");
  private static final Dictionary DICTIONARY = SteelModules.dictionary();
  private static final List<Checker> CHECKERS = new ArrayList<>();

  /** The rules that speak of each mistake, of whichever standards have them. */
  private static final String RULES =
      """
      bends-where-nothing-turns: armour-bends, armoured-cable-bends
      box-in-the-air: box-is-held, box-in-outer-bay
      box-that-cannot-take-its-conductors: box-fill, box-fill-other-sizes, run-ends-in-boxes
      bracket-that-holds-a-run: bracket-holds, bracket-on-framing
      cable-through-a-stud-without-a-hole: cable-through-holes, passed-stud-has-a-hole, run-in-studs-is-guarded
      circuit-of-which-nothing-is-known: circuit-starts-at-its-panel, breaker-guards-the-conductor, breaker-fits-conductor, load-fits-breaker, voltage-drop
      circuit-with-loose-runs-only: outlets-on-a-circuit
      circuit-without-a-breaker: breaker-guards-the-conductor, breaker-fits-conductor, breaker-carries-the-load, load-fits-breaker
      circuit-without-a-panel: circuit-starts-at-its-panel, voltage-drop
      circuit-without-a-run: circuit-starts-at-its-panel, thinnest-conductor, voltage-drop
      conduit-without-a-bore: conduit-fill, conduit-straps
      door-that-swings-into-a-panel: doors-swing-free
      empty-lists: wall-foam-closed-cell
      everything-missing-that-may-be-missing: box-is-held, stud-steel, conduit-fill, voltage-drop, panel-working-space, bar-on-two-studs
      hole-higher-than-its-wall: hole-places
      hole-outside-its-stud: hole-places
      hole-wider-than-its-stud: hole-size, narrow-web-hole
      holes-in-one-another: hole-places
      level-ribs: box-in-outer-bay, cable-off-steel, one-thing-in-one-place
      module-without-anything: wall-foam-closed-cell, wall-has-thermal-barrier
      module-without-faces: box-in-outer-bay, box-is-held, panel-clear-of-steel, stud-off-the-shell, cable-off-steel
      module-without-studs: box-is-held
      nonmetallic-cable-through-a-stud-without-a-hole: cable-through-holes, insert-in-stud, cable-set-back, nonmetallic-is-bushed
      overfull-conduit: conduit-fill
      panel-partly-over-a-door: doors-swing-free
      parts-on-roof-and-floor: roof-box-clear-of-steel, box-is-held, panel-working-space, working-space, panel-door, bar-on-two-studs, bracket-holds, luminaire-under-foam
      run-from-a-box-far-away: run-ends-in-boxes
      run-from-and-to-the-same-box: run-ends-in-boxes, run-joins-two-parts
      run-of-no-length: cable-off-steel, run-ends-in-boxes
      run-of-no-length-in-space: run-behind-the-lining, run-ends-in-boxes, run-is-supported
      run-that-ends-in-nothing: run-ends-in-boxes, run-joins-two-parts
      run-that-turns-back: armour-bends, armoured-cable-bends
      run-through-a-box-it-does-not-enter: one-thing-in-one-place, box-is-wired
      runs-only-on-the-floor: run-behind-the-lining, armoured-cable-first-strap, run-is-held-at-boxes
      shell-of-1-mm: wall-foam-closed-cell
      shell-of-1-mm-with-a-stud: stud-standoff
      stud-drawn-twice: one-thing-in-one-place
      studs-without-a-section: stud-steel, stud-flange, passed-stud-has-a-hole, cable-off-steel, box-is-held
      supports-beyond-the-run: run-is-supported, armoured-cable-straps
      tolerances-larger-than-the-module: box-in-outer-bay, cable-off-steel, stud-spacing, panel-working-space, doors-swing-free, run-in-studs-is-guarded, voltage-drop
      tolerances-larger-than-values: box-in-outer-bay, hole-size, panel-working-space, panel-door, load-fits-breaker, voltage-drop, armoured-cable-straps
      two-boxes-in-one-place: one-thing-in-one-place, boxes-apart
      very-long-names: run-ends-in-boxes
      """;

  /** What is odd in these does no harm, and no rule need say anything. */
  private static final Set<String> HARMLESS = Set.of("bends-where-nothing-turns");

  @BeforeAll
  static void compile() {
    for (String name : StandardLibrary.names()) {
      CHECKERS.add(
          new Checker(
              DICTIONARY,
              new RuleCompiler(DICTIONARY.vocabulary())
                  .compile(StandardLibrary.find(name).orElseThrow())
                  .standard()
                  .orElseThrow()));
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void aBadPlanIsToldWhatIsBad(String name) throws IOException {
    PlanReading reading = read(name);
    String said =
        reading.plan().map(plan -> verdicts(name, plan)).orElseGet(() -> faults(reading)).strip()
            + "\n";
    Path golden = FOLDER.resolve(name + ".expected");
    if (!Files.exists(golden)) {
      Files.writeString(golden, said);
      assertThat(golden).as("it was missing and has been written: read it").doesNotExist();
    }
    assertThat(said).isEqualTo(Files.readString(golden));
  }

  /** Both evaluators are asked of every rule and element, and must agree. */
  @ParameterizedTest
  @MethodSource("plans")
  void noRuleFailsOnItAndNoneIsUndecidedWithoutAReason(String name) throws IOException {
    Plan plan = read(name).plan().orElse(null);
    if (plan == null) {
      return;
    }
    PlanFacts facts = new PlanFacts(plan, DICTIONARY);
    for (Checker checker : CHECKERS) {
      for (Rule rule : checker.standard().rules()) {
        for (int element : facts.members(rule.subject().noun())) {
          Finding finding = checker.explain(rule.id(), element, facts);
          String place = rule.id() + " of " + finding.element().label();
          assertThat(finding.verdict()).as(place).isNotEqualTo(Verdict.ERROR);
          assertThat(finding.reason()).as(place).isNotBlank().doesNotContain("plan does not say");
        }
      }
    }
  }

  @Test
  void everyPlanHasItsRulesAndEveryGoldenFileItsPlan() throws IOException {
    assertThat(names(".expected")).isEqualTo(names(".json"));
    assertThat(names(".json")).containsAll(rules().keySet());
    List<String> known =
        CHECKERS.stream()
            .flatMap(checker -> checker.standard().rules().stream())
            .map(Rule::id)
            .toList();
    rules().forEach((plan, ids) -> assertThat(known).as(plan).containsAll(ids));
  }

  private static String faults(PlanReading reading) {
    StringBuilder said = new StringBuilder();
    reading
        .faults()
        .forEach(
            fault -> {
              assertThat(fault.place()).as(fault.message()).isNotNull();
              said.append(
                  "%s at %s: %s %s\n"
                      .formatted(
                          fault.code(),
                          fault.place().line() + ":" + fault.place().column(),
                          fault.message(),
                          fault.remedy()));
            });
    assertThat(said).isNotEmpty();
    return said.toString();
  }

  private static String verdicts(String name, Plan plan) {
    PlanFacts facts = new PlanFacts(plan, DICTIONARY);
    List<String> rules = rules().get(name);
    assertThat(rules).as("rules that speak of " + name).isNotNull();
    StringBuilder said = new StringBuilder();
    Set<Verdict> seen = new TreeSet<>();
    for (Checker checker : CHECKERS) {
      for (Rule rule : checker.standard().rules()) {
        for (int element : facts.members(rule.subject().noun())) {
          if (rules.contains(rule.id())) {
            Finding finding = checker.explain(rule.id(), element, facts);
            seen.add(finding.verdict());
            said.append(line(checker.standard().name(), finding));
          }
        }
      }
    }
    if (!HARMLESS.contains(name)) {
      assertThat(seen).as(said.toString()).containsAnyOf(Verdict.BROKEN, Verdict.UNDECIDED);
    }
    return said.toString();
  }

  private static String line(String standard, Finding finding) {
    StringBuilder line = new StringBuilder();
    line.append(standard + " " + finding.rule().id() + "\n");
    line.append(
        "  %s: %s\n    %s\n"
            .formatted(
                finding.element().label(), finding.verdict().words(), finding.reason().strip()));
    finding.missing().forEach(value -> line.append("    missing: " + value.pointer() + "\n"));
    return line.toString();
  }

  private static PlanReading read(String name) throws IOException {
    Path file = FOLDER.resolve(name + ".json");
    return new PlanReader().read(name + ".json", Files.readAllBytes(file));
  }

  private static Map<String, List<String>> rules() {
    Map<String, List<String>> rules = new TreeMap<>();
    for (String line : RULES.lines().toList()) {
      String[] parts = line.split(": ", 2);
      rules.put(parts[0], List.of(parts[1].split(", ")));
    }
    return rules;
  }

  static Set<String> plans() throws IOException {
    return names(".json");
  }

  private static Set<String> names(String ending) throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      Set<String> names = new TreeSet<>();
      files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(file -> file.endsWith(ending))
          .forEach(file -> names.add(file.substring(0, file.length() - ending.length())));
      return names;
    }
  }
}
