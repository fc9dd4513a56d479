package org.rimefast.check.internal.steel;

import java.util.HashMap;
import java.util.Map;
import org.rimefast.check.HandleList;
import org.rimefast.check.PlanFacts;
import org.rimefast.plan.Part;

/** Which brackets hold which parts, by what the plan says; one that does not say may hold any. */
final class BracketsOfParts {
  private static final PlanFacts.Key<BracketsOfParts> KEY =
      new PlanFacts.Key<>("brackets of parts", BracketsOfParts.class);

  private final Map<Integer, HandleList> brackets = new HashMap<>(); // by part
  private final HandleList unsaid = new HandleList();

  private BracketsOfParts(PlanFacts facts) {
    for (int bracket : facts.members(Nouns.BRACKET)) {
      String held = ((Part.Bracket) facts.part(bracket)).holds();
      if (held == null) {
        unsaid.add(bracket);
      } else {
        brackets.computeIfAbsent(facts.handleOf(held), part -> new HandleList()).add(bracket);
      }
    }
  }

  static BracketsOfParts of(PlanFacts facts) {
    return facts.keep(KEY, BracketsOfParts::new);
  }

  /** Adds the brackets that hold a part or may hold it. */
  void holding(int part, HandleList found) {
    HandleList known = brackets.get(part);
    for (int i = 0; known != null && i < known.size(); i++) {
      found.add(known.get(i));
    }
    for (int i = 0; i < unsaid.size(); i++) {
      found.add(unsaid.get(i));
    }
  }

  /** Adds the part that a bracket holds, or every one if the plan does not say which. */
  static void held(PlanFacts facts, int bracket, HandleList found) {
    String held = ((Part.Bracket) facts.part(bracket)).holds();
    if (held == null) {
      GapWords.addAll(facts.members(Nouns.PART), found);
      return;
    }
    int part = facts.handleOf(held);
    if (part >= 0 && facts.isPart(part)) {
      found.add(part);
    }
  }
}
