package org.rimefast.check.internal;

import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.HandleList;
import org.rimefast.check.Neighbours;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Truth;
import org.rimefast.check.Word;
import org.rimefast.lang.vocabulary.Relation;

/**
 * Which elements of a plan chains lead from to a few others, where nothing may bar them: worked out
 * once, going back from each of those others. Safe to share between threads.
 */
public final class ReachIndex {
  /** No chain leads there. */
  public static final int UNREACHED = -1;

  private static final int MOST_TARGETS = 32;
  private static final int[] NONE = {};

  private final int[][] certainBack; // by element: those that certainly lead on to it
  private final int[][] anyBack; // those that lead or may lead on to it
  private final Map<Integer, Distances> known = new ConcurrentHashMap<>();

  /**
   * How many steps each element is from one that chains lead to; {@link #UNREACHED} where none
   * does.
   *
   * @param certain over certain steps
   * @param any over all steps
   */
  public record Distances(int[] certain, int[] any) {
    /** Whether a chain leads there from an element. */
    public Truth from(int element) {
      return certain[element] != UNREACHED
          ? Truth.TRUE
          : any[element] != UNREACHED ? Truth.UNKNOWN : Truth.FALSE;
    }
  }

  private ReachIndex(PlanFacts facts, Relation relation, Word.NeighbourFunction function) {
    HandleList[] certain = new HandleList[facts.size()];
    HandleList[] any = new HandleList[facts.size()];
    boolean[] seen = new boolean[facts.size()];
    HandleList open = new HandleList();
    for (int element : facts.members(relation.subject())) {
      seen[element] = true;
      open.add(element);
    }
    Neighbours next = new Neighbours();
    for (int i = 0; i < open.size(); i++) {
      int element = open.get(i);
      next.clear();
      function.find(facts, element, next);
      lead(element, next.certain(), certain, seen, open);
      lead(element, next.certain(), any, seen, open);
      lead(element, next.possible(), any, seen, open);
    }
    certainBack = arrays(certain);
    anyBack = arrays(any);
  }

  private static void lead(
      int from, HandleList found, HandleList[] back, boolean[] seen, HandleList open) {
    for (int i = 0; i < found.size(); i++) {
      int to = found.get(i);
      if (back[to] == null) {
        back[to] = new HandleList();
      }
      back[to].add(from);
      if (!seen[to]) {
        seen[to] = true;
        open.add(to);
      }
    }
  }

  private static int[][] arrays(HandleList[] lists) {
    int[][] arrays = new int[lists.length][];
    for (int i = 0; i < lists.length; i++) {
      arrays[i] = lists[i] == null ? NONE : lists[i].toArray();
    }
    return arrays;
  }

  /** The index of a relation of a plan. */
  public static ReachIndex of(PlanFacts facts, Relation relation, Word.NeighbourFunction function) {
    PlanFacts.Key<ReachIndex> key =
        new PlanFacts.Key<>("chains: " + relation.id(), ReachIndex.class);
    return facts.keep(key, each -> new ReachIndex(each, relation, function));
  }

  /** How far elements are from one; null if too many have been asked for to keep them all. */
  public @Nullable Distances to(int target) {
    Distances found = known.get(target);
    if (found == null && known.size() < MOST_TARGETS) {
      found = new Distances(back(target, certainBack), back(target, anyBack));
      known.putIfAbsent(target, found);
    }
    return found;
  }

  private static int[] back(int target, int[][] edges) {
    int[] distances = new int[edges.length];
    Arrays.fill(distances, UNREACHED);
    int[] queue = new int[edges.length];
    int end = 0;
    distances[target] = 0;
    queue[end++] = target;
    for (int begin = 0; begin < end; begin++) {
      int element = queue[begin];
      for (int before : edges[element]) {
        if (distances[before] == UNREACHED) {
          distances[before] = distances[element] + 1;
          queue[end++] = before;
        }
      }
    }
    return distances;
  }
}
