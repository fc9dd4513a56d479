package org.rimefast.check.internal.steel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rimefast.check.PlanFacts;

/** Runs whose circuit the plan does not give, in groups that hang together. */
final class Loose {
  private final Map<Integer, Integer> groupOfPart = new HashMap<>();
  private final Map<Integer, Set<Integer>> groupsOfPanel = new HashMap<>();
  private final Map<Integer, List<Integer>> runs = new LinkedHashMap<>(); // by group

  private Loose() {}

  /** Groups them: two are in one group if a chain of parts that are no panels joins them. */
  Loose(PlanFacts facts, List<Integer> without) {
    int[] leader = new int[without.size()];
    Arrays.setAll(leader, i -> i);
    Map<Integer, Integer> firstAt = new HashMap<>();
    for (int i = 0; i < leader.length; i++) {
      for (int part : Entries.of(facts).partsOf(facts, without.get(i))) {
        if (!facts.isMember(Nouns.PANEL, part)) {
          Integer other = firstAt.putIfAbsent(part, i);
          if (other != null) {
            leader[find(leader, i)] = find(leader, other);
          }
        }
      }
    }
    for (int i = 0; i < leader.length; i++) {
      int group = find(leader, i);
      runs.computeIfAbsent(group, g -> new ArrayList<>()).add(without.get(i));
      for (int part : Entries.of(facts).partsOf(facts, without.get(i))) {
        if (facts.isMember(Nouns.PANEL, part)) {
          groupsOfPanel.computeIfAbsent(part, p -> new LinkedHashSet<>()).add(group);
        } else {
          groupOfPart.put(part, group);
        }
      }
    }
  }

  static Loose none() {
    return new Loose();
  }

  private static int find(int[] leader, int i) {
    int at = i;
    while (leader[at] != at) {
      leader[at] = leader[leader[at]];
      at = leader[at];
    }
    return at;
  }

  /** Groups with a run at a part; none at a panel, through which nothing hangs together. */
  List<Integer> groupsAt(int part, PlanFacts facts) {
    Integer group = facts.isMember(Nouns.PANEL, part) ? null : groupOfPart.get(part);
    return group == null ? List.of() : List.of(group);
  }

  /** Groups with a run at a panel. */
  Set<Integer> groupsAtPanel(int panel) {
    return groupsOfPanel.getOrDefault(panel, Set.of());
  }

  /** Every group. */
  Set<Integer> all() {
    return runs.keySet();
  }

  /** The runs of a group. */
  List<Integer> runs(int group) {
    return runs.getOrDefault(group, List.of());
  }
}
