package org.rimefast.check.internal.reference;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Evidence;
import org.rimefast.check.Explanation;
import org.rimefast.check.HandleList;
import org.rimefast.check.Neighbours;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Truth;
import org.rimefast.check.Word;
import org.rimefast.check.internal.ReachIndex;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;

/**
 * Follows chains of elements and says which way they go: what they reach from where they begin, and
 * how far that is from where they lead.
 */
final class ChainExplainer {
  private static final int UNREACHED = ReachIndex.UNREACHED;
  private static final Evidence PASSABLE = Reasons.turned(Reasons.ALWAYS);
  private static final int MOST_NAMED = 5;

  private final Scope scope;
  private final PlanFacts facts;
  private final Word.ChainWord word;
  private final Condition.Holds holds;
  private final Describer describer;
  private final Evidence @Nullable [] barred; // null if nothing bars the way

  ChainExplainer(Scope scope, Word.ChainWord word, Condition.Holds holds) {
    this.scope = scope;
    this.facts = scope.facts();
    this.word = word;
    this.holds = holds;
    describer = new Describer(scope);
    barred = holds.arguments().size() < 2 ? null : new Evidence[facts.size()];
  }

  /** Over which steps, and past which elements, a chain may go. */
  private enum Way {
    CERTAIN,
    POSSIBLE,
    ANY
  }

  /** What the index says, if nothing bars the way; empty if it does not say. */
  static Optional<Truth> indexed(
      Scope scope, Word.ChainWord word, Condition.Holds holds, int from, int to) {
    if (!scope.spares() || holds.arguments().size() > 1) {
      return Optional.empty();
    }
    return Optional.ofNullable(
            ReachIndex.of(scope.facts(), holds.relation(), word.function()).to(to))
        .map(distances -> from == to ? Truth.FALSE : distances.from(from));
  }

  Evidence explain(int from, String question) {
    Outcome<Integer> target = ElementFinder.find((Reference) holds.arguments().get(0), scope);
    if (target.value().isEmpty()) {
      return Reasons.unknown(question, Outcome.without(target));
    }
    int to = target.value().get();
    if (from == to) {
      return Reasons.plain(describer.holds(holds, false), Truth.FALSE, Outcome.nothing());
    }
    List<Integer> certain = shortest(from, to, Way.CERTAIN);
    if (!certain.isEmpty()) {
      return Reasons.plain(
          describer.holds(holds, true), Truth.TRUE, noted("chain", names(certain)));
    }
    List<Integer> possible = shortest(from, to, Way.POSSIBLE);
    return possible.isEmpty() ? blocked(from, to) : unsure(possible, question);
  }

  private Evidence blocked(int from, int to) {
    List<Evidence.Fact> seen = new ArrayList<>();
    List<Integer> open = shortest(from, to, Way.ANY);
    if (open.isEmpty()) {
      seen.add(new Evidence.Fact("leads on to", named(reached(from, Way.ANY))));
    } else {
      seen.add(new Evidence.Fact("blocked by", named(stops(from, to))));
      seen.add(new Evidence.Fact("but for that", names(open)));
    }
    return Reasons.plain(
        describer.holds(holds, false),
        Truth.FALSE,
        new Outcome<>(Optional.empty(), Optional.empty(), seen, List.of(), List.of()));
  }

  private Evidence unsure(List<Integer> chain, String question) {
    Explanation explanation = new Explanation();
    explanation.fact("possible chain", names(chain));
    List<Evidence> doubtful = new ArrayList<>();
    for (int i = 0; i + 1 < chain.size(); i++) {
      int next = chain.get(i + 1);
      if (!contains(neighbours(chain.get(i)).certain(), next)) {
        explanation.fact("not certain", names(List.of(chain.get(i), next)));
        word.steps().explain(facts, chain.get(i), next, explanation);
      }
      if (i > 0 && stops(chain.get(i)).truth() == Truth.UNKNOWN) {
        doubtful.add(stops(chain.get(i)));
      }
    }
    Reasons.missing(doubtful).forEach(explanation::missing);
    Optional<String> failure =
        doubtful.stream().flatMap(e -> Reasons.failure(e).stream()).findFirst();
    doubtful.forEach(e -> explanation.reason(e.statement()));
    Outcome<Void> outcome =
        new Outcome<>(
            Optional.empty(),
            failure,
            explanation.facts(),
            explanation.missing(),
            explanation.reasons());
    return outcome.missing().isEmpty() && outcome.notes().isEmpty() && failure.isEmpty()
        ? Reasons.plain(
            question + " is not certain within the plan's tolerance", Truth.UNKNOWN, outcome)
        : Reasons.unknown(question, outcome);
  }

  /**
   * The shortest chain, both ends included; of several, the one that is first in the plan's order
   * at the first step where they part.
   */
  private List<Integer> shortest(int from, int to, Way way) {
    int[] distance = distances(from, to, way);
    if (distance[from] == UNREACHED) {
      return List.of();
    }
    List<Integer> chain = new ArrayList<>(List.of(from));
    for (int at = from; at != to; at = chain.get(chain.size() - 1)) {
      int left = distance[at] - 1;
      chain.add(
          Arrays.stream(nexts(at, way))
              .filter(next -> distance[next] == left && (next == to || isPassable(next, way)))
              .min()
              .orElseThrow());
    }
    return chain;
  }

  /** How many steps each element on the way is from the target; {@link #UNREACHED} for others. */
  private int[] distances(int from, int to, Way way) {
    ReachIndex.Distances known =
        scope.spares() && barred == null
            ? ReachIndex.of(facts, holds.relation(), word.function()).to(to)
            : null;
    if (known != null) {
      return way == Way.CERTAIN ? known.certain() : known.any();
    }
    List<Integer> around = new ArrayList<>(reached(from, way));
    around.add(from);
    Map<Integer, List<Integer>> back = new HashMap<>();
    for (int handle : around) {
      if (handle == from || isPassable(handle, way)) {
        for (int next : nexts(handle, way)) {
          back.computeIfAbsent(next, n -> new ArrayList<>()).add(handle);
        }
      }
    }
    int[] distance = new int[facts.size()];
    Arrays.fill(distance, UNREACHED);
    distance[to] = 0;
    Deque<Integer> open = new ArrayDeque<>(List.of(to));
    while (!open.isEmpty()) {
      int handle = open.removeFirst();
      for (int before : back.getOrDefault(handle, List.of())) {
        if (distance[before] == UNREACHED) {
          distance[before] = distance[handle] + 1;
          open.addLast(before);
        }
      }
    }
    return distance;
  }

  /** Which elements chains reach from one, that one among them. */
  private boolean[] reachedFrom(int from, Way way) {
    boolean[] seen = new boolean[facts.size()];
    seen[from] = true;
    Deque<Integer> open = new ArrayDeque<>(List.of(from));
    while (!open.isEmpty()) {
      int handle = open.removeFirst();
      if (handle == from || isPassable(handle, way)) {
        for (int found : nexts(handle, way)) {
          if (!seen[found]) {
            seen[found] = true;
            open.addLast(found);
          }
        }
      }
    }
    return seen;
  }

  private int[] nexts(int element, Way way) {
    Neighbours next = neighbours(element);
    int[] certain = next.certain().toArray();
    return way == Way.CERTAIN
        ? certain
        : IntStream.concat(Arrays.stream(certain), Arrays.stream(next.possible().toArray()))
            .toArray();
  }

  private static boolean contains(HandleList list, int handle) {
    return Arrays.stream(list.toArray()).anyMatch(found -> found == handle);
  }

  private Neighbours neighbours(int element) {
    Neighbours found = new Neighbours();
    word.function().find(facts, element, found);
    return found;
  }

  private boolean isPassable(int element, Way way) {
    Truth stops = way == Way.ANY ? Truth.FALSE : stops(element).truth();
    return way == Way.CERTAIN ? stops == Truth.FALSE : stops != Truth.TRUE;
  }

  private boolean isBarred(int element) {
    return stops(element).truth() == Truth.TRUE;
  }

  /** Whether a chain cannot pass an element. */
  private Evidence stops(int element) {
    if (barred == null) {
      return PASSABLE;
    }
    Evidence known = barred[element];
    if (known == null) {
      known = newStops(element);
      barred[element] = known;
    }
    return known;
  }

  private Evidence newStops(int element) {
    Argument.Those those = (Argument.Those) holds.arguments().get(1);
    if (!facts.isMember(those.variable().noun(), element)) {
      return PASSABLE;
    }
    Scope inner = scope.with(those.variable(), element);
    return those
        .where()
        .map(where -> new ConditionExplainer(inner, true).explain(where))
        .orElse(Reasons.ALWAYS);
  }

  /** The elements at which every chain to the target ends. */
  private List<Integer> stops(int from, int to) {
    boolean[] leading = leadingTo(to, from);
    return reached(from, Way.POSSIBLE).stream()
        .filter(handle -> leading[handle] && isBarred(handle))
        .toList();
  }

  /** Which of the elements that any chain reaches lead on to another, going back from that one. */
  private boolean[] leadingTo(int to, int from) {
    Map<Integer, List<Integer>> back = new HashMap<>();
    List<Integer> any = new ArrayList<>(reached(from, Way.ANY));
    any.add(from);
    for (int handle : any) {
      for (int next : nexts(handle, Way.ANY)) {
        back.computeIfAbsent(next, n -> new ArrayList<>()).add(handle);
      }
    }
    boolean[] leading = new boolean[facts.size()];
    leading[to] = true;
    Deque<Integer> open = new ArrayDeque<>(List.of(to));
    while (!open.isEmpty()) {
      for (int handle : back.getOrDefault(open.removeFirst(), List.of())) {
        if (!leading[handle]) {
          leading[handle] = true;
          open.addLast(handle);
        }
      }
    }
    return leading;
  }

  /** What chains reach, but for where they begin, in the plan's order. */
  private List<Integer> reached(int from, Way way) {
    boolean[] seen = reachedFrom(from, way);
    return IntStream.range(0, seen.length)
        .filter(handle -> handle != from && seen[handle])
        .boxed()
        .toList();
  }

  private String names(List<Integer> chain) {
    return chain.stream().map(this::name).collect(Collectors.joining(" -> "));
  }

  private String named(List<Integer> elements) {
    if (elements.isEmpty()) {
      return "nothing";
    }
    String first =
        elements.stream().limit(MOST_NAMED).map(this::name).collect(Collectors.joining(", "));
    int more = elements.size() - MOST_NAMED;
    return more > 0 ? first + " and " + more + " more" : first;
  }

  private String name(int element) {
    return facts.name(element).label();
  }

  private static Outcome<Void> noted(String name, String value) {
    return new Outcome<>(
        Optional.empty(),
        Optional.empty(),
        List.of(new Evidence.Fact(name, value)),
        List.of(),
        List.of());
  }
}
