package org.rimefast.check.internal.reference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.rimefast.check.Evidence;
import org.rimefast.check.Explanation;
import org.rimefast.check.HandleList;
import org.rimefast.check.Neighbours;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Truth;
import org.rimefast.check.Word;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;

/**
 * Follows chains of elements and says which way they go. Distances are found by going over all
 * elements until none gets nearer, so that it shares no method with the fast pass.
 */
final class ChainExplainer {
  private static final int FAR = Integer.MAX_VALUE;
  private static final int MOST_NAMED = 5;

  private final Scope scope;
  private final PlanFacts facts;
  private final Word.ChainWord word;
  private final Condition.Holds holds;
  private final Describer describer;
  private final Evidence[] barred;

  ChainExplainer(Scope scope, Word.ChainWord word, Condition.Holds holds) {
    this.scope = scope;
    this.facts = scope.facts();
    this.word = word;
    this.holds = holds;
    describer = new Describer(scope);
    barred = new Evidence[facts.size()];
  }

  /** Over which steps, and past which elements, a chain may go. */
  private enum Way {
    CERTAIN,
    POSSIBLE,
    ANY
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
      seen.add(new Evidence.Fact("leads on to", named(reached(from))));
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

  /** The shortest chain, both ends included; of several, the one first in the plan's order. */
  private List<Integer> shortest(int from, int to, Way way) {
    int[] distance = distances(from, way);
    if (distance[to] == FAR) {
      return List.of();
    }
    List<Integer> chain = new ArrayList<>(List.of(to));
    int last = to;
    while (last != from) {
      last = before(last, distance, from, way);
      chain.add(0, last);
    }
    return chain;
  }

  private int before(int element, int[] distance, int from, Way way) {
    for (int handle = 0; handle < distance.length; handle++) {
      if (distance[handle] == distance[element] - 1
          && (handle == from || isPassable(handle, way))
          && leads(handle, element, way)) {
        return handle;
      }
    }
    throw new IllegalStateException("a chain without its last step but one");
  }

  private int[] distances(int from, Way way) {
    int[] distance = new int[facts.size()];
    Arrays.fill(distance, FAR);
    distance[from] = 0;
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int handle = 0; handle < distance.length; handle++) {
        if (distance[handle] != FAR && (handle == from || isPassable(handle, way))) {
          Neighbours next = neighbours(handle);
          changed |= nearer(distance, next.certain(), distance[handle] + 1);
          if (way != Way.CERTAIN) {
            changed |= nearer(distance, next.possible(), distance[handle] + 1);
          }
        }
      }
    }
    return distance;
  }

  private static boolean nearer(int[] distance, HandleList found, int steps) {
    boolean changed = false;
    for (int i = 0; i < found.size(); i++) {
      if (steps < distance[found.get(i)]) {
        distance[found.get(i)] = steps;
        changed = true;
      }
    }
    return changed;
  }

  private boolean leads(int from, int to, Way way) {
    Neighbours next = neighbours(from);
    return contains(next.certain(), to) || (way != Way.CERTAIN && contains(next.possible(), to));
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
    Evidence known = barred[element];
    if (known == null) {
      known = newStops(element);
      barred[element] = known;
    }
    return known;
  }

  private Evidence newStops(int element) {
    if (holds.arguments().size() < 2) {
      return Reasons.turned(Reasons.ALWAYS);
    }
    Argument.Those those = (Argument.Those) holds.arguments().get(1);
    if (!facts.isMember(those.variable().noun(), element)) {
      return Reasons.turned(Reasons.ALWAYS);
    }
    Scope inner = scope.with(those.variable(), element);
    return those
        .where()
        .map(where -> new ConditionExplainer(inner, true).explain(where))
        .orElse(Reasons.ALWAYS);
  }

  /** The elements at which every chain to the target ends. */
  private List<Integer> stops(int from, int to) {
    int[] distance = distances(from, Way.POSSIBLE);
    List<Integer> found = new ArrayList<>();
    for (int handle = 0; handle < distance.length; handle++) {
      if (distance[handle] != FAR
          && handle != from
          && isBarred(handle)
          && !shortest(handle, to, Way.ANY).isEmpty()) {
        found.add(handle);
      }
    }
    return found;
  }

  private List<Integer> reached(int from) {
    int[] distance = distances(from, Way.ANY);
    TreeSet<Integer> found = new TreeSet<>();
    for (int handle = 0; handle < distance.length; handle++) {
      if (distance[handle] != FAR && handle != from) {
        found.add(handle);
      }
    }
    return List.copyOf(found);
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
