package org.rimefast.rulesets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.rimefast.check.Checker;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Finding;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.StandardLibrary;
import org.rimefast.check.SteelModules;
import org.rimefast.check.Verdict;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Standard;
import org.rimefast.plan.Plan;
import org.rimefast.plan.PlanReader;
import org.rimefast.plan.PlanReading;

/**
 * Every rule of the standard for cold steel modules is met by one small plan, broken by another,
 * and undecided for want of a value in a third. On the left wall a bay's middle is at 1326 mm, a
 * rib's at 1187 mm; the studs' warm face is 66.3 mm from the ribs.
 */
class EveryRuleTest {
  private static final Dictionary DICTIONARY = SteelModules.dictionary();

  /** Rule, verdict, and the plan: entries of lists, of which the first is asked about, or faces. */
  private static final String CASES =
      """
      box-in-outer-bay | MET | boxes BOX 'along': 1326, 'depth': 47.6, 'mount': 'flush'
      box-in-outer-bay | BROKEN | boxes BOX 'along': 1187, 'depth': 47.6, 'mount': 'flush'
      box-in-outer-bay | UNDECIDED | boxes BOX 'along': 1326, 'mount': 'flush'
      roof-box-clear-of-steel | MET | boxes ROOFBOX 'depth': 15, 'mount': 'covered'
      roof-box-clear-of-steel | BROKEN | boxes ROOFBOX 'depth': 54, 'mount': 'covered'
      roof-box-clear-of-steel | UNDECIDED | boxes ROOFBOX 'mount': 'covered'
      box-off-the-shell | MET | boxes BOX 'along': 1187, 'depth': 60, 'mount': 'flush'
      box-off-the-shell | BROKEN | boxes BOX 'along': 1187, 'depth': 79, 'mount': 'flush'
      box-off-the-shell | UNDECIDED | boxes BOX 'along': 1187, 'mount': 'flush'
      box-off-metal-bars | MET | boxes BOX 'along': 1326, 'depth': 47.6, 'mount': 'flush' + bars BAR 'along': 1326, 'front': 40, 'material': 'steel'
      box-off-metal-bars | BROKEN | boxes BOX 'along': 1326, 'depth': 47.6, 'mount': 'flush' + bars BAR 'along': 1326, 'front': 34.9, 'material': 'steel'
      box-off-metal-bars | UNDECIDED | boxes BOX 'along': 1326, 'depth': 47.6, 'mount': 'flush' + bars BAR 'along': 1326, 'front': 34.9
      box-is-held | MET | boxes BOX 'along': 1326, 'depth': 47.6, 'mount': 'flush' + studs 'face': 'left', 'along': 1368.9
      box-is-held | BROKEN | boxes BOX 'along': 1326, 'depth': 47.6, 'mount': 'flush' + studs 'face': 'left', 'along': 1500
      box-is-held | UNDECIDED | boxes BOX 'along': 1326, 'depth': 47.6, 'mount': 'flush' + studs 'face': 'left'
      bar-not-behind-box | MET | bars BAR 'along': 1700, 'front': 40, 'material': 'steel' + boxes BOX 'along': 1326, 'depth': 47.6, 'mount': 'flush'
      bar-not-behind-box | BROKEN | bars BAR 'along': 1400, 'front': 40, 'material': 'steel' + boxes BOX 'along': 1326, 'depth': 47.6, 'mount': 'flush'
      bar-not-behind-box | UNDECIDED | bars BAR 'along': 1400, 'material': 'steel' + boxes BOX 'along': 1326, 'depth': 47.6, 'mount': 'flush'
      bar-off-the-shell | MET | bars BAR 'along': 1400, 'front': 60, 'material': 'steel'
      bar-off-the-shell | BROKEN | bars BAR 'along': 1400, 'front': 63.3, 'material': 'steel'
      bar-off-the-shell | UNDECIDED | bars BAR 'along': 1400, 'material': 'steel'
      bar-under-foam | MET | bars BAR 'along': 1400, 'front': 30, 'material': 'steel'
      bar-under-foam | BROKEN | bars BAR 'along': 1400, 'front': 40, 'material': 'steel'
      bar-under-foam | UNDECIDED | bars BAR 'along': 1400, 'front': 40
      bracket-off-the-shell | MET | brackets BAR 'along': 1187, 'front': 1, 'material': 'steel'
      bracket-off-the-shell | BROKEN | brackets BAR 'along': 1187, 'front': 64, 'material': 'steel'
      bracket-off-the-shell | UNDECIDED | brackets BAR 'along': 1187, 'material': 'steel'
      panel-on-the-lining | MET | panels PANEL 'mount': 'surface'
      panel-on-the-lining | BROKEN | panels PANEL 'mount': 'flush'
      panel-on-the-lining | UNDECIDED | panels PANEL 'material': 'steel'
      panel-clear-of-steel | MET | panels PANEL 'mount': 'surface'
      panel-clear-of-steel | BROKEN | panels PANEL 'mount': 'flush'
      panel-clear-of-steel | UNDECIDED | panels PANEL 'material': 'steel'
      luminaire-on-the-lining | MET | luminaires LUMINAIRE 'mount': 'surface'
      luminaire-on-the-lining | BROKEN | luminaires LUMINAIRE 'mount': 'flush'
      luminaire-on-the-lining | UNDECIDED | luminaires LUMINAIRE 'material': 'steel'
      luminaire-under-foam | MET | luminaires LUMINAIRE 'mount': 'surface'
      luminaire-under-foam | BROKEN | luminaires LUMINAIRE 'mount': 'flush'
      luminaire-under-foam | UNDECIDED | luminaires LUMINAIRE 'material': 'steel'
      stud-off-the-shell | MET | studs 'face': 'left', 'along': 1187
      stud-off-the-shell | BROKEN | studs 'face': 'left', 'along': 1187, 'front': 25
      stud-off-the-shell | UNDECIDED | studs 'face': 'left'
      stud-standoff | MET | studs 'face': 'left', 'along': 1187
      stud-standoff | BROKEN | studs 'face': 'left', 'along': 1187, 'front': 18
      stud-standoff | UNDECIDED | studs 'face': 'left'
      stud-spacing | MET | studs 'face': 'left', 'along': '16 in' + studs 'face': 'left', 'along': '32 in'
      stud-spacing | BROKEN | studs 'face': 'left', 'along': '16 in' + studs 'face': 'left', 'along': '40 in'
      stud-spacing | UNDECIDED | studs 'face': 'left', 'along': '16 in' + studs 'face': 'left'
      cable-off-steel | MET | runs CABLE 'diameter': 11, PATH 20
      cable-off-steel | BROKEN | runs CABLE 'diameter': 11, PATH 50
      cable-off-steel | UNDECIDED | runs CABLE PATH 20
      armour-off-the-shell | MET | runs CABLE 'diameter': 11, PATH 50
      armour-off-the-shell | BROKEN | runs CABLE 'diameter': 11, PATH 61
      armour-off-the-shell | UNDECIDED | runs CABLE PATH 61
      conduit-off-steel | MET | runs CONDUIT 'diameter': 18, PATH 20
      conduit-off-steel | BROKEN | runs CONDUIT 'diameter': 18, PATH 50
      conduit-off-steel | UNDECIDED | runs CONDUIT PATH 20
      run-behind-the-lining | MET | runs CABLE 'diameter': 11, PATH 6
      run-behind-the-lining | BROKEN | runs CABLE 'diameter': 11, PATH 5
      run-behind-the-lining | UNDECIDED | runs CABLE PATH 6
      wall-foam-closed-cell | MET | left 'foam': {'kind': 'closed-cell'}
      wall-foam-closed-cell | BROKEN | left 'foam': {'kind': 'fibrous'}
      wall-foam-closed-cell | UNDECIDED | left 'foam': {'thickness': '2 in'}
      roof-foam-closed-cell | MET | roof 'foam': {'kind': 'closed-cell'}
      roof-foam-closed-cell | BROKEN | roof 'foam': {'kind': 'open-cell'}
      roof-foam-closed-cell | UNDECIDED | roof 'foam': {'thickness': '2 in'}
      wall-foam-thick-enough | MET | left 'foam': {'thickness': '2 in'}
      wall-foam-thick-enough | BROKEN | left 'foam': {'thickness': '50 mm'}
      wall-foam-thick-enough | UNDECIDED | left 'foam': {'kind': 'closed-cell'}
      roof-foam-thick-enough | MET | roof 'foam': {'thickness': '2-1/2 in'}
      roof-foam-thick-enough | BROKEN | roof 'foam': {'thickness': '2 in'}
      roof-foam-thick-enough | UNDECIDED | roof 'foam': {'kind': 'closed-cell'}
      wall-has-thermal-barrier | MET | left 'lining': '1/2 in'
      wall-has-thermal-barrier | BROKEN | left 'lining': 12.5
      wall-has-thermal-barrier | UNDECIDED | floor 'profile': 'plywood'
      """;

  private static final Map<String, String> SHORTHAND =
      Map.of(
          "ROOFBOX",
              "'kind': 'octagon', 'face': 'roof', 'along': 3000, 'up': 1175, 'width': 100, 'height': 100,",
          "BOX", "'kind': 'device', 'face': 'left', 'up': 1200, 'width': 54, 'height': 76,",
          "BAR", "'face': 'left', 'up': 1200, 'width': 400, 'height': 40, 'depth': 3,",
          "PANEL",
              "'face': 'left', 'along': 3000, 'up': 1500, 'width': 360, 'height': 600, 'depth': 95,",
          "LUMINAIRE",
              "'face': 'roof', 'along': 3000, 'up': 1175, 'width': 300, 'height': 150, 'depth': 70,",
          "CABLE", "'kind': 'armoured-cable',",
          "CONDUIT", "'kind': 'emt',");

  @Test
  void everyRuleIsMetBrokenAndUndecidedByTheCaseThatSaysSo() {
    Standard standard = standard();
    Checker checker = new Checker(DICTIONARY, standard);
    Map<String, Set<Verdict>> seen = new TreeMap<>();
    for (String line : CASES.split("\n", -1)) {
      if (line.isBlank()) {
        continue;
      }
      String[] cells = line.split(" \\| ", 3);
      Verdict expected = Verdict.valueOf(cells[1].strip());
      Finding finding = explain(checker, cells[0].strip(), cells[2].strip());
      assertThat(finding.verdict()).as(line + "\n" + finding.reason()).isEqualTo(expected);
      assertThat(finding.missing().isEmpty()).as(line).isEqualTo(expected != Verdict.UNDECIDED);
      seen.computeIfAbsent(cells[0].strip(), rule -> EnumSet.noneOf(Verdict.class)).add(expected);
    }
    Set<Verdict> all = EnumSet.of(Verdict.MET, Verdict.BROKEN, Verdict.UNDECIDED);
    assertThat(seen.keySet())
        .containsExactlyInAnyOrderElementsOf(
            standard.rules().stream().map(rule -> rule.id()).toList());
    assertThat(seen.values()).allMatch(all::equals);
  }

  private static Finding explain(Checker checker, String rule, String cells) {
    boolean face =
        cells.startsWith("left ") || cells.startsWith("roof ") || cells.startsWith("floor ");
    PlanFacts facts = new PlanFacts(plan(cells, face), DICTIONARY);
    int handle =
        face
            ? facts.handleOf(
                cells.startsWith("roof ")
                    ? org.rimefast.plan.Face.ROOF
                    : org.rimefast.plan.Face.LEFT)
            : facts.handleOf("E0");
    return checker.explain(rule, handle, facts);
  }

  private static Plan plan(String cells, boolean face) {
    String faces =
        face
            ? faceEntry(cells, "left") + faceEntry(cells, "roof") + faceEntry(cells, "floor")
            : "'default': {'profile': 'side wall', 'phase': 40, 'standoff': 25,"
                + " 'stud': {'depth': 41.3, 'flange': 31.75, 'thickness': 0.84}, 'lining': 12.7,"
                + " 'foam': {'kind': 'closed-cell', 'thickness': '3 in'}},"
                + " 'roof': {'profile': 'roof', 'phase': 0}, 'floor': {'profile': 'plywood'},";
    String json =
        "{'format': 'rimefast-plan-1', 'id': 'case', 'title': 'Case (invented)', 'units': 'mm',"
            + " 'shell': {'size': '45G1'}, 'faces': {"
            + faces.substring(0, faces.length() - 1)
            + "}"
            + (face ? "" : lists(cells))
            + "}";
    PlanReading reading =
        new PlanReader()
            .read("case.json", json.replace('\'', '"').getBytes(StandardCharsets.UTF_8));
    return reading.plan().orElseThrow(() -> new AssertionError(cells + "\n" + reading.faults()));
  }

  private static String faceEntry(String cells, String name) {
    return cells.startsWith(name + " ")
        ? "'" + name + "': {" + cells.substring(name.length() + 1) + "},"
        : "";
  }

  /** The lists of a plan; entries get the ids E0, E1, ... */
  private static String lists(String cells) {
    Map<String, List<String>> lists = new TreeMap<>();
    int number = 0;
    for (String cell : cells.split(" \\+ ", -1)) {
      String name = cell.substring(0, cell.indexOf(' '));
      String fields = cell.substring(name.length() + 1);
      for (Map.Entry<String, String> word : SHORTHAND.entrySet()) {
        fields = fields.replaceAll("\\b" + word.getKey() + "\\b", word.getValue());
      }
      fields =
          fields.replaceAll(
              "PATH (\\d+)",
              "'path': [{'face': 'left', 'along': 1187, 'up': 600, 'depth': $1},"
                  + " {'face': 'left', 'along': 2187, 'up': 600, 'depth': $1}]");
      lists
          .computeIfAbsent(name, list -> new ArrayList<>())
          .add("{'id': 'E" + number++ + "', " + fields + "}");
    }
    StringBuilder json = new StringBuilder();
    lists.forEach(
        (name, entries) ->
            json.append(", '" + name + "': [").append(String.join(", ", entries)).append("]"));
    return json.toString();
  }

  private static Standard standard() {
    return new RuleCompiler(DICTIONARY.vocabulary())
        .compile(StandardLibrary.find("cold-steel-modules").orElseThrow())
        .standard()
        .orElseThrow();
  }
}
