package org.rimefast.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.rimefast.check.CheckResult;
import org.rimefast.check.Finding;
import org.rimefast.check.MissingValue;
import org.rimefast.check.StandardLibrary;
import org.rimefast.check.Verdict;
import org.rimefast.plan.Opening;
import org.rimefast.plan.Plan;
import org.rimefast.plan.PlanReader;

/** The four demo plans (invented) hold the mistakes they were drawn with, and no others. */
class LoonNarrowsTest {
  private static final Path FOLDER = Path.of("loon-narrows");
  private static final Path EXPECTED = Path.of("src/test/resources/loon-narrows");
  private static final List<String> PLANS =
      List.of("bunk-room", "pump-control-room", "wet-lab", "wet-lab-corrected");
  private static final Map<String, PlannerWithChecks> PLANNERS = new ConcurrentHashMap<>();

  /** One line for each finding; inspect items that wait for a reading are only counted. */
  @TestFactory
  Stream<DynamicTest> everyPlanHasTheFindingsThatAreExpected() {
    return PLANS.stream()
        .flatMap(
            plan ->
                StandardLibrary.names().stream()
                    .map(
                        standard ->
                            DynamicTest.dynamicTest(
                                plan + " by " + standard, () -> comesOut(plan, standard))));
  }

  private static void comesOut(String plan, String standard) throws IOException {
    String found = lines(check(plan, standard));
    Path file = EXPECTED.resolve(plan + "." + standard + ".expected");
    if (!Files.exists(file)) {
      Files.createDirectories(EXPECTED);
      Files.writeString(file, found);
      fail(file + " was not there; what came out is written to it: read it and run again");
    }
    assertThat(found).isEqualTo(Files.readString(file));
  }

  private static String lines(CheckResult result) {
    List<String> lines =
        result.findings().stream()
            .filter(finding -> !waitsForAReading(finding))
            .map(
                finding ->
                    "%s %s: %s"
                        .formatted(
                            finding.verdict().words(),
                            finding.rule().id(),
                            finding.element().label()))
            .sorted()
            .collect(Collectors.toCollection(ArrayList::new));
    long waiting = result.findings().stream().filter(LoonNarrowsTest::waitsForAReading).count();
    lines.add("inspect items that wait for a reading: " + waiting);
    return String.join("\n", lines) + "\n";
  }

  private static boolean waitsForAReading(Finding finding) {
    return finding.rule().question().isPresent() && finding.verdict() == Verdict.UNDECIDED;
  }

  @Test
  void noExpectedFileIsLeftOver() throws IOException {
    Set<String> wanted =
        PLANS.stream()
            .flatMap(
                plan ->
                    StandardLibrary.names().stream()
                        .map(standard -> plan + "." + standard + ".expected"))
            .collect(Collectors.toSet());
    try (Stream<Path> files = Files.list(EXPECTED)) {
      assertThat(files.map(file -> file.getFileName().toString())).hasSameElementsAs(wanted);
    }
    try (Stream<Path> files = Files.list(FOLDER)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .hasSameElementsAs(PLANS.stream().map(plan -> plan + ".json").toList());
    }
  }

  /** The rules of each family, of whatever standard, that the wet lab breaks as first drawn. */
  private static final Map<String, List<String>> FAMILIES =
      Map.ofEntries(
          Map.entry(
              "boxes at ribs and on metal",
              List.of(
                  "box-in-outer-bay",
                  "roof-box-clear-of-steel",
                  "box-off-the-shell",
                  "box-off-metal-bars",
                  "box-is-held")),
          Map.entry(
              "metal that carries cold",
              List.of(
                  "bar-not-behind-box",
                  "bar-off-the-shell",
                  "bar-under-foam",
                  "bracket-off-the-shell",
                  "stud-off-the-shell",
                  "armour-off-the-shell",
                  "cable-off-steel")),
          Map.entry(
              "recessed panels and luminaires",
              List.of("panel-on-the-lining", "panel-clear-of-steel", "luminaire-on-the-lining")),
          Map.entry(
              "foam and lining",
              List.of(
                  "wall-foam-closed-cell",
                  "roof-foam-thick-enough",
                  "wall-has-thermal-barrier",
                  "foam-behind-the-studs",
                  "boxes-apart")),
          Map.entry(
              "what stands proud of the studs",
              List.of(
                  "run-behind-the-lining",
                  "bar-behind-the-lining",
                  "bracket-behind-the-lining",
                  "covered-box-behind-the-lining")),
          Map.entry(
              "studs and their holes",
              List.of(
                  "stud-spacing",
                  "stud-standoff",
                  "passed-stud-has-a-hole",
                  "hole-places",
                  "narrow-web-hole",
                  "hole-size",
                  "holes-line-up")),
          Map.entry(
              "bracing and fixing",
              List.of(
                  "box-stud-braced", "bar-on-two-studs", "bracket-holds", "bracket-on-framing")),
          Map.entry("things in one place", List.of("one-thing-in-one-place")),
          Map.entry(
              "runs through studs",
              List.of(
                  "cable-through-holes",
                  "conduit-through-holes",
                  "run-in-studs-is-guarded",
                  "nonmetallic-is-bushed",
                  "cable-set-back",
                  "insert-in-stud")),
          Map.entry("box fill", List.of("box-fill")),
          Map.entry("conduit fill", List.of("conduit-fill")),
          Map.entry("bends", List.of("conduit-turns", "armour-bends", "tubing-bends")),
          Map.entry("supports", List.of("run-is-supported", "run-is-held-at-boxes")),
          Map.entry("slack", List.of("free-conductor", "slack-at-corners")),
          Map.entry("metal paths", List.of("no-metal-path", "stud-no-metal-path")),
          Map.entry("drip loops", List.of("drip-loop")),
          Map.entry(
              "access for foam",
              List.of("box-foam-access", "no-bare-steel-behind", "no-bare-steel-behind-bars")),
          Map.entry(
              "feeds of panels",
              List.of("panel-has-junction-box", "panel-fed-from-junction-box", "panel-run-short")),
          Map.entry(
              "ends of runs",
              List.of("run-ends-in-boxes", "device-has-a-circuit", "circuit-starts-at-its-panel")),
          Map.entry(
              "space before panels and at doors",
              List.of(
                  "panel-working-space",
                  "working-space",
                  "panel-door",
                  "doors-swing-free",
                  "door-swing-free")),
          Map.entry("receptacle spacing", List.of("receptacle-spacing")),
          Map.entry(
              "circuits",
              List.of(
                  "breaker-guards-the-conductor",
                  "breaker-fits-conductor",
                  "outlets-on-a-circuit",
                  "load-fits-breaker",
                  "run-carries-the-load",
                  "nonmetallic-at-60",
                  "few-nonmetallic-together",
                  "little-voltage-drop",
                  "voltage-drop")));

  @TestFactory
  Stream<DynamicTest> theWetLabAsFirstDrawnIsBrokenInEveryFamilyOfRules() throws IOException {
    Set<String> broken = new TreeSet<>();
    for (String standard : StandardLibrary.names()) {
      for (Finding finding : check("wet-lab", standard).findings()) {
        if (finding.verdict() == Verdict.BROKEN) {
          broken.add(finding.rule().id());
        }
      }
    }
    return FAMILIES.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(
            family ->
                DynamicTest.dynamicTest(
                    family.getKey(), () -> assertThat(broken).containsAll(family.getValue())));
  }

  @TestFactory
  Stream<DynamicTest> theWetLabPutRightLeavesNothingOpenButWhatIsAskedOnSite() {
    return StandardLibrary.names().stream()
        .map(
            standard ->
                DynamicTest.dynamicTest(
                    standard,
                    () -> {
                      CheckResult result = check("wet-lab-corrected", standard);
                      assertThat(result.count(Verdict.MET)).isPositive();
                      assertThat(result.findings()).allMatch(LoonNarrowsTest::waitsForAReading);
                    }));
  }

  @Test
  void theWetLabPutRightIsTheSameRoom() throws IOException {
    Plan drawn = plan("wet-lab");
    Plan corrected = plan("wet-lab-corrected");
    assertThat(corrected.room()).isEqualTo(drawn.room());
    assertThat(corrected.shell()).isEqualTo(drawn.shell());
    assertThat(corrected.openings().stream().map(LoonNarrowsTest::hole))
        .isEqualTo(drawn.openings().stream().map(LoonNarrowsTest::hole).toList());
  }

  private static List<Object> hole(Opening opening) {
    return List.of(
        opening.id(),
        opening.face(),
        opening.from(),
        opening.sill(),
        opening.width(),
        opening.height());
  }

  @Test
  void everyPlanSaysThatItIsInvented() throws IOException {
    for (String plan : PLANS) {
      assertThat(plan(plan).title()).endsWith("(invented)");
    }
  }

  @Test
  void theReceptacleAtAnInwardRibIsFoundWithItsClearanceAndTheRib() throws IOException {
    Finding finding = finding("wet-lab", "cold-steel-modules", "box-in-outer-bay", "R-2");
    assertThat(finding.verdict()).isEqualTo(Verdict.BROKEN);
    assertThat(finding.reason())
        .isEqualTo(
            "box R-2 does not sit in outer bay; clearance of box R-2 is 1.234 in,"
                + " not at least 2 in (foam behind a box)");
    assertThat(finding.evidence().get(0).parts().get(0).facts().get(0).value())
        .contains("inward rib 7 (along 1708 mm to 1778 mm)");
    assertThat(finding.element().place().orElseThrow().line()).isPositive();
  }

  @Test
  void theJunctionBoxWithoutDepthIsUndecidedWhereItsDepthMatters() throws IOException {
    // Where it stands along the wall is known, and that alone breaks one rule.
    assertThat(finding("wet-lab", "cold-steel-modules", "box-in-outer-bay", "J2").reason())
        .isEqualTo("box J2 does not sit in outer bay");
    Finding finding = finding("wet-lab", "cold-steel-modules", "box-off-the-shell", "J2");
    assertThat(finding.verdict()).isEqualTo(Verdict.UNDECIDED);
    assertThat(finding.missing())
        .extracting(MissingValue::description)
        .containsExactly("depth of box J2");
  }

  @Test
  void aSpacingThatFitsTheRibsPutsTwoReceptaclesOfTheBunkRoomOnStuds() throws IOException {
    assertThat(check("bunk-room", "light-steel-framing").findings())
        .filteredOn(finding -> finding.rule().id().equals("one-thing-in-one-place"))
        .filteredOn(finding -> finding.verdict() == Verdict.BROKEN)
        .extracting(finding -> finding.element().id())
        .filteredOn(id -> id.startsWith("R-"))
        .containsExactlyInAnyOrder("R-4", "R-8");
  }

  @Test
  void aConduitOfThePumpControlRoomIsOverfull() throws IOException {
    Finding finding = finding("pump-control-room", "rough-in-nec", "conduit-fill", "E4");
    assertThat(finding.verdict()).isEqualTo(Verdict.BROKEN);
  }

  @Test
  void thePumpControlRoomWaitsForThePhaseOfItsRightWall() throws IOException {
    assertThat(finding("pump-control-room", "cold-steel-modules", "box-in-outer-bay", "R-right"))
        .satisfies(
            finding ->
                assertThat(finding.missing())
                    .extracting(MissingValue::pointer)
                    .contains("/faces/right/phase"));
  }

  private static Finding finding(String plan, String standard, String rule, String element)
      throws IOException {
    return check(plan, standard).findings().stream()
        .filter(f -> f.rule().id().equals(rule))
        .filter(f -> f.element().id().equals(element))
        .findFirst()
        .orElseThrow();
  }

  private static CheckResult check(String plan, String standard) throws IOException {
    return PLANNERS
        .computeIfAbsent(standard, PlannerWithChecks::new)
        .check(FOLDER.resolve(plan + ".json"));
  }

  private static Plan plan(String name) throws IOException {
    return new PlanReader().read(FOLDER.resolve(name + ".json")).plan().orElseThrow();
  }
}
