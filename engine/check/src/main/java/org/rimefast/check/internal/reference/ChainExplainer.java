package org.rimefast.check.internal.reference;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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
 * Follows chains of elements and says which way they go: ring by ring from where they begin, and
 * back from where they lead.
 */
final class ChainExplainer {
  private static final int UNREACHED = -1;
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

  /** The shortest chain, both ends included; of several, the one first in the plan's order. */
  private List<Integer> shortest(int from, int to, Way way) {
    int[] before = steps(from, way);
    if (before[to] == UNREACHED) {
      return List.of();
    }
    LinkedList<Integer> chain = new LinkedList<>();
    for (int at = to; at != from; at = before[at]) {
      chain.addFirst(at);
    }
    chain.addFirst(from);
    return chain;
  }

  /**
   * For each element the one before it on the shortest chain from another, of several the first in
   * the plan's order; {@link #UNREACHED} where none leads. Each ring of elements that are as many
   * steps away is followed whole before the next one.
   */
  private int[] steps(int from, Way way) {
    int[] before = new int[facts.size()];
    int[] distance = new int[facts.size()];
    Arrays.fill(before, UNREACHED);
    before[from] = from;
    List<Integer> ring = List.of(from);
    for (int steps = 1; !ring.isEmpty(); steps++) {
      List<Integer> next = new ArrayList<>();
      for (int handle : ring) {
        if (handle != from && !isPassable(handle, way)) {
          continue;
        }
        for (int found : nexts(handle, way)) {
          if (before[found] == UNREACHED) {
            before[found] = handle;
            distance[found] = steps;
            next.add(found);
          } else if (distance[found] == steps) {
            before[found] = Math.min(before[found], handle);
          }
        }
      }
      ring = next;
    }
    return before;
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
    int[] before = steps(from, way);
    return IntStream.range(0, before.length)
        .filter(handle -> handle != from && before[handle] != UNREACHED)
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
