package org.rimefast.rulesets;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.rimefast.check.Checker;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Verdict;
import org.rimefast.lang.rule.Rule;
import org.rimefast.plan.Face;

/** What each rule of a standard says of each element of a plan, by a name that motions keep. */
final class ElementVerdicts {
  private final Checker checker;
  private final PlanFacts facts;
  private final Map<String, Integer> handles = new HashMap<>();
  private final Map<String, Map<String, Verdict>> verdicts = new LinkedHashMap<>();

  /**
   * Of all rules.
   *
   * @param faceWas the face that one was before the module was moved
   */
  ElementVerdicts(Checker checker, PlanFacts facts, UnaryOperator<Face> faceWas) {
    this.checker = checker;
    this.facts = facts;
    Map<Integer, String> names = new HashMap<>();
    Map<String, Integer> conductors = new HashMap<>();
    for (int handle = 0; handle < facts.size(); handle++) {
      String name = name(handle, faceWas, conductors);
      names.put(handle, name);
      handles.put(name, handle);
    }
    for (Rule rule : checker.standard().rules()) {
      Map<String, Verdict> ofRule = new LinkedHashMap<>();
      int[] members = facts.members(rule.subject().noun());
      Verdict[] found = checker.verdicts(rule.id(), facts);
      for (int i = 0; i < members.length; i++) {
        ofRule.put(names.get(members[i]), found[i]);
      }
      verdicts.put(rule.id(), ofRule);
    }
  }

  private String name(int handle, UnaryOperator<Face> faceWas, Map<String, Integer> conductors) {
    if (facts.isPart(handle)) {
      return facts.part(handle).id();
    }
    if (facts.isRun(handle)) {
      return facts.run(handle).id();
    }
    if (facts.isOpening(handle)) {
      return facts.opening(handle).id();
    }
    if (facts.isCircuit(handle)) {
      return facts.circuit(handle).id();
    }
    if (facts.isConductor(handle)) {
      String run = facts.run(facts.runOfConductor(handle)).id();
      return "conductor " + conductors.merge(run, 1, Integer::sum) + " of " + run;
    }
    return facts.isRoom(handle) ? "room" : faceWas.apply(facts.face(handle)).word() + " face";
  }

  /** By rule, then by element. */
  Map<String, Map<String, Verdict>> all() {
    return verdicts;
  }

  Map<String, Verdict> of(Rule rule) {
    return verdicts.get(rule.id());
  }

  /** The finding in words. */
  String explain(Rule rule, String element) {
    Integer handle = handles.get(element);
    return handle == null
        ? "is not there"
        : of(rule).get(element) + ": " + checker.explain(rule.id(), handle, facts).reason();
  }
}
