package org.rimefast.check.internal.steel;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Explanation;
import org.rimefast.check.HandleList;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Truth;
import org.rimefast.plan.Part;
import org.rimefast.plan.Run;
import org.rimefast.plan.geometry.RunPaths;

/**
 * Which runs enter which parts. The plan says so in {@code from} and {@code to}; an end that it
 * does not name may enter any electrical part that it is not drawn apart from.
 */
final class Entries {
  private static final PlanFacts.Key<Entries> KEY =
      new PlanFacts.Key<>("entries of runs", Entries.class);
  private static final int[] NONE = {};

  private final int[][] partsOfRun; // by index of the run
  private final int[][] runsAtPart; // by handle of the part
  private final int[] firstConductor; // its place among all; by index of the run, and one more

  private Entries(PlanFacts facts) {
    int runs = facts.plan().runs().size();
    int parts = facts.plan().parts().size();
    HandleList unplaced = new HandleList();
    for (int part : facts.members(Nouns.ELECTRICAL_PART)) {
      if (facts.geometry().cuboid(part) == null) {
        unplaced.add(part);
      }
    }
    partsOfRun = new int[runs][];
    int[] entered = new int[parts];
    HandleList found = new HandleList();
    for (int index = 0; index < runs; index++) {
      found.clear();
      collect(facts, facts.handleOfRun(index), unplaced, found);
      partsOfRun[index] = Arrays.stream(found.toArray()).sorted().distinct().toArray();
      for (int part : partsOfRun[index]) {
        entered[part]++;
      }
    }
    runsAtPart = new int[parts][];
    for (int part = 0; part < parts; part++) {
      runsAtPart[part] = entered[part] == 0 ? NONE : new int[entered[part]];
    }
    for (int index = runs - 1; index >= 0; index--) {
      for (int part : partsOfRun[index]) {
        runsAtPart[part][--entered[part]] = facts.handleOfRun(index);
      }
    }
    firstConductor = firstConductors(facts, runs);
  }

  static Entries of(PlanFacts facts) {
    return facts.keep(KEY, Entries::new);
  }

  private static void collect(PlanFacts facts, int run, HandleList unplaced, HandleList found) {
    for (boolean last : new boolean[] {false, true}) {
      String id = end(facts.run(run), last);
      if (id != null) {
        int part = facts.handleOf(id);
        if (part >= 0 && facts.isPart(part)) {
          found.add(part);
        }
        continue;
      }
      facts
          .geometry()
          .paths()
          .partsAtEnd(
              facts.runIndex(run),
              last,
              part -> {
                if (facts.isMember(Nouns.ELECTRICAL_PART, part)) {
                  found.add(part);
                }
              });
      for (int i = 0; i < unplaced.size(); i++) {
        if (mayEnter(facts, run, last, unplaced.get(i))) {
          found.add(unplaced.get(i));
        }
      }
    }
  }

  private static int[] firstConductors(PlanFacts facts, int runs) {
    int[] conductors = facts.members(Nouns.CONDUCTOR);
    int[] first = new int[runs + 1];
    int next = 0;
    for (int index = 0; index < runs; index++) {
      first[index] = next;
      while (next < conductors.length
          && facts.runOfConductor(conductors[next]) == facts.handleOfRun(index)) {
        next++;
      }
    }
    first[runs] = next;
    return first;
  }

  /** What the plan says that an end enters; null if it does not say. */
  static @Nullable String end(Run run, boolean last) {
    return last ? run.to() : run.from();
  }

  /** Whether a run enters a part. */
  static Truth enters(PlanFacts facts, int run, int part) {
    return endEnters(facts, run, false, part).or(endEnters(facts, run, true, part));
  }

  /** Whether one end of a run enters a part. */
  static Truth endEnters(PlanFacts facts, int run, boolean last, int part) {
    String id = end(facts.run(run), last);
    if (id != null) {
      return Truth.of(id.equals(facts.part(part).id()));
    }
    return mayEnter(facts, run, last, part) ? Truth.UNKNOWN : Truth.FALSE;
  }

  private static boolean mayEnter(PlanFacts facts, int run, boolean last, int part) {
    if (!(facts.part(part) instanceof Part.Electrical)) {
      return false;
    }
    RunPaths paths = facts.geometry().paths();
    int index = facts.runIndex(run);
    if (facts.geometry().cuboid(part) != null) {
      return !paths.isEndApart(index, last, part);
    }
    return !Extents.apart(
        facts,
        part,
        paths.endAt(index, last, 0),
        paths.endAt(index, last, 1),
        paths.endAt(index, last, 2),
        paths.endReach(index, part));
  }

  /** Handles of the parts that a run enters or may enter. */
  int[] partsOf(PlanFacts facts, int run) {
    return partsOfRun[facts.runIndex(run)];
  }

  /** Handles of the runs that enter a part or may enter it. */
  int[] runsAt(int part) {
    return runsAtPart[part];
  }

  /** Adds the handles of a run's conductors. */
  void conductors(PlanFacts facts, int run, HandleList found) {
    int index = facts.runIndex(run);
    int[] all = facts.members(Nouns.CONDUCTOR);
    for (int i = firstConductor[index]; i < firstConductor[index + 1]; i++) {
      found.add(all[i]);
    }
  }

  /** Names the ends that may enter a part and that the plan does not name. */
  static void explain(PlanFacts facts, int run, int part, Explanation out) {
    if (endEnters(facts, run, false, part) == Truth.UNKNOWN) {
      out.missing(facts.missing(run, "from"));
    }
    if (endEnters(facts, run, true, part) == Truth.UNKNOWN) {
      out.missing(facts.missing(run, "to"));
    }
  }
}
