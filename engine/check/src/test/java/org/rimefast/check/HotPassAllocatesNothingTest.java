package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimefast.check.internal.Words;
import org.rimefast.check.internal.hot.Frame;
import org.rimefast.check.internal.hot.RuleProgram;
import org.rimefast.lang.rule.Rule;

class HotPassAllocatesNothingTest {
  private static final int WARM_UP = 3_000;
  private static final int PASSES = 100;

  private static final String TERMS =
      """
      let close box be a box where it is within 6 in of another box
      let busy stud be a stud where it touches a close box or number of close boxes >= 2
      table cover needed of a part by its material, its clearance, number of boxes per face
      | steel or aluminium | < 2 in | any  | 2 in  |
      | steel or aluminium | 2 in   | any  | 1 in  |
      | wood               | any    | <= 3 | 10 mm |
      otherwise 20 mm
      table fit material of a part by its depth
      | < 1 in  | steel |
      | >= 1 in | wood  |
      """;

  private static final PlanFacts FACTS =
      new PlanFacts(new RandomPlans(new Random(7), 12).plan(), Given.DICTIONARY);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "box must sit in outer bay with clearance >= 50 mm",
        "each electrical part where its mount is flush must have foam cover >= 2 in",
        "part must not touch another part",
        "each bar where it is metal must not pass behind a box",
        "for each stud, at most 2 boxes must touch it",
        "each cable must have clearance >= its diameter + 1 in",
        "part must have smallest clearance of boxes (where its mount is flush) >= 10 mm",
        "each close box must touch at least 2 busy studs",
        "each part where it is a box or its face is not a wall must not touch a busy stud",
        "for each wall, its foam kind must be closed-cell",
        "each electrical part where its material is (if clearance > 1 in then steel otherwise wood) must have"
            + " clearance >= (if its mount is flush then 2 in otherwise if clearance < 1 in then 80 %"
            + " of its depth otherwise 1 in)",
        "for each bracket, all but 2 boxes (where its face is face of the bracket) must touch it",
        "part must have number of boxes per face <= 3 and have total width of boxes per room <= 9 m",
        "each part where its material is its fit material must have clearance >= its cover needed",
        "part must have distance to the nearest part (where clearance > 10 mm) >= 1 in",
        "for each run, (for each stud (where the run passes through it), the run passes through a"
            + " service hole of it and set-back at it of the run >= 1 in) must hold",
        "run must not cross another run",
        "run must have service hole spread <= 3 mm",
        "run must lie in outer bay",
        "run must clear the shell by 25 mm along its whole length",
        "for each run, (for each part (where the run comes to it from above), drip loop below it of"
            + " the run >= 25 mm) must hold",
        "run must not enter a part from side",
        "item must not overlap a part",
        "item must not touch a run",
        "part must not be within 6 in of another part",
        "part must not be covered by another part",
        "part must have foam access beside >= 75 mm and have foam access behind >= 75 mm",
        "each face must have bare steel <= 1 m2 and have foam volume <= 2 m3",
        "each electrical part must keep free a space of 30 in by 36 in by 78 in",
        "each electrical part must open its door freely",
        "each opening must keep its swing free",
        "each electrical part must not lead over metal to a face without passing a bracket",
        "each wall must have way along the floor line to a receptacle below 5 ft in wall spaces from 2 ft"
            + " <= 6 ft",
        "run must have length <= 9 m and have bend in all <= 360 deg",
        "run must not be alongside another run within 2 in over 1 ft",
        "run must enter at most 2 boxes",
        "each run where it bends must have conductor count <= 3",
        "for each box, total cross-section of conductors (where the box takes it) must be at most 9"
            + " mm2"
      })
  void aWarmPassOverAllElementsNeedsNoNewMemory(String sentence) {
    needsNoNewMemory(Given.rule(TERMS, sentence).rules().get(0), FACTS);
  }

  @Test
  void askingForReadingsNeedsNoNewMemory() {
    Rule rule =
        Given.standard(
                """
                inspect steel "The steel is warm"
                  for each wall ask "Is it dry?" answer yes reading at least 5 degC
                  severity hold stage pre-foam because "b" source "s"
                """)
            .rules()
            .get(0);
    String json =
        Given.json(
            40,
            25,
            ", 'readings': [{'inspect': 'steel', 'of': 'left', 'answer': 'yes', 'value': '7 degC',"
                + " 'who': 'x', 'when': '2026-11-20'}]");
    needsNoNewMemory(rule, new PlanFacts(Given.plan(json), Given.DICTIONARY));
  }

  private static void needsNoNewMemory(Rule rule, PlanFacts facts) {
    RuleProgram program = new RuleProgram(rule, new Words(Given.DICTIONARY.lookup()));
    Frame frame = program.frame(facts);
    int[] elements = facts.members(rule.subject().noun());
    assertThat(elements).isNotEmpty();
    int[] seen = new int[Verdict.values().length];
    run(program, frame, elements, seen, WARM_UP);
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();
    run(program, frame, elements, seen, PASSES);
    long bytes = threads.getCurrentThreadAllocatedBytes() - before;
    // What is asked of one element would cost at least 16 bytes; the measurement itself costs some.
    assertThat(bytes).isLessThan(PASSES * (long) elements.length);
  }

  private static void run(
      RuleProgram program, Frame frame, int[] elements, int[] seen, int passes) {
    for (int pass = 0; pass < passes; pass++) {
      for (int element : elements) {
        seen[program.verdict(frame, element).ordinal()]++;
      }
    }
  }
}
