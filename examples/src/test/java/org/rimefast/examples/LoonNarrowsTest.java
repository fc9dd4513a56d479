package org.rimefast.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.rimefast.check.CheckResult;
import org.rimefast.check.Finding;
import org.rimefast.check.MissingValue;
import org.rimefast.check.Verdict;

/** The three demo plans (invented) hold the mistakes they were drawn with, and no others. */
class LoonNarrowsTest {
  private static final PlannerWithChecks PLANNER = new PlannerWithChecks("cold-steel-modules");

  @Test
  void theWetLabAsFirstDrawnBreaksAtLeastTenDifferentRules() throws IOException {
    CheckResult result = check("wet-lab.json");
    Set<String> broken =
        result.findings().stream()
            .filter(finding -> finding.verdict() == Verdict.BROKEN)
            .map(finding -> finding.rule().id())
            .collect(Collectors.toSet());
    assertThat(broken)
        .contains(
            "box-in-outer-bay",
            "roof-box-clear-of-steel",
            "box-off-metal-bars",
            "box-is-held",
            "bar-not-behind-box",
            "bar-off-the-shell",
            "bracket-off-the-shell",
            "panel-on-the-lining",
            "luminaire-on-the-lining",
            "stud-off-the-shell",
            "cable-off-steel",
            "armour-off-the-shell",
            "run-behind-the-lining",
            "wall-foam-closed-cell",
            "roof-foam-thick-enough",
            "wall-has-thermal-barrier");
  }

  @Test
  void theReceptacleAtAnInwardRibIsFoundWithItsClearanceAndTheRib() throws IOException {
    Finding finding =
        check("wet-lab.json").findings().stream()
            .filter(f -> f.rule().id().equals("box-in-outer-bay"))
            .filter(f -> f.element().id().equals("R-2"))
            .findFirst()
            .orElseThrow();
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
  void theJunctionBoxWithoutDepthIsUndecidedWhereverItsDepthMatters() throws IOException {
    List<Finding> all =
        check("wet-lab.json").findings().stream()
            .filter(finding -> finding.element().id().equals("J2"))
            .toList();
    // Where it stands along the wall is known, and that alone breaks one rule.
    assertThat(all)
        .filteredOn(finding -> finding.verdict() == Verdict.BROKEN)
        .extracting(Finding::reason)
        .containsExactly("box J2 does not sit in outer bay");
    List<Finding> findings =
        all.stream().filter(finding -> finding.verdict() != Verdict.BROKEN).toList();
    assertThat(findings).extracting(Finding::verdict).containsOnly(Verdict.UNDECIDED);
    assertThat(findings).extracting(f -> f.rule().id()).contains("box-off-the-shell");
    assertThat(findings)
        .allSatisfy(
            finding ->
                assertThat(finding.missing())
                    .extracting(MissingValue::description)
                    .containsExactly("depth of box J2"));
  }

  @Test
  void theBunkRoomBreaksNothing() throws IOException {
    assertThat(check("bunk-room.json").findings())
        .filteredOn(finding -> finding.verdict() == Verdict.BROKEN)
        .isEmpty();
  }

  @Test
  void thePumpControlRoomWaitsForThePhaseOfItsRightWall() throws IOException {
    CheckResult result = check("pump-control-room.json");
    assertThat(result.findings())
        .filteredOn(finding -> finding.element().id().equals("R-right"))
        .allSatisfy(
            finding ->
                assertThat(finding.missing())
                    .extracting(MissingValue::pointer)
                    .contains("/faces/right/phase"))
        .isNotEmpty();
  }

  private static CheckResult check(String name) throws IOException {
    return PLANNER.check(Path.of("loon-narrows", name));
  }
}
