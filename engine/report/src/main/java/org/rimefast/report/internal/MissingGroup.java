package org.rimefast.report.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rimefast.check.ElementName;
import org.rimefast.check.Finding;
import org.rimefast.check.MissingValue;
import org.rimefast.lang.rule.Rule;

/**
 * One place of the plan that gives no value, and the rules that wait for it. Items of a row share
 * one place, so one value may decide many findings.
 *
 * @param value the first missing value with this pointer
 * @param descriptions what is missing there, each once
 * @param waiting the rules that wait, gravest first, each with its elements
 */
record MissingGroup(MissingValue value, Set<String> descriptions, List<Waiting> waiting) {

  /**
   * A rule that waits.
   *
   * @param rule the rule
   * @param elements the elements of which it says nothing yet, by their keys
   * @param others what some of these findings also wait for, each once
   */
  record Waiting(Rule rule, Map<String, ElementName> elements, Set<String> others) {}

  /** How JSON pointers name the item behind the last one of a list (RFC 6901). */
  private static final String TO_BE_ADDED = "/-";

  static List<MissingGroup> of(List<Finding> findings) {
    Map<String, MissingGroup> groups = new LinkedHashMap<>();
    for (Finding finding : findings) {
      if (ElementGroup.waits(finding)) {
        for (MissingValue missing : finding.missing()) {
          groups
              .computeIfAbsent(
                  key(missing, finding),
                  pointer -> new MissingGroup(missing, new LinkedHashSet<>(), new ArrayList<>()))
              .add(missing, finding);
        }
      }
    }
    List<MissingGroup> found = new ArrayList<>(groups.values());
    for (MissingGroup group : found) {
      group.waiting.sort(Comparator.comparing(waiting -> waiting.rule().severity()));
    }
    found.sort(
        Comparator.<MissingGroup>comparingInt(
                group -> group.waiting.get(0).rule().severity().ordinal())
            .thenComparing(Comparator.comparingInt(MissingGroup::findings).reversed())
            .thenComparing(group -> group.value.pointer(), NaturalOrder::compare));
    return found;
  }

  /** What would be added to one list is told by rule: it is not one value for all. */
  private static String key(MissingValue missing, Finding finding) {
    boolean added = missing.pointer().endsWith(TO_BE_ADDED);
    return added ? missing.pointer() + '\n' + finding.rule().id() : missing.pointer();
  }

  /** True for items that are still to be added to a list of the plan. */
  boolean isToBeAdded() {
    return value.pointer().endsWith(TO_BE_ADDED);
  }

  /** How many findings wait. */
  int findings() {
    return waiting.stream().mapToInt(one -> one.elements().size()).sum();
  }

  private void add(MissingValue missing, Finding finding) {
    descriptions.add(missing.description());
    Waiting entry = entryOf(finding.rule());
    entry.elements().putIfAbsent(ElementGroup.key(finding.element()), finding.element());
    for (MissingValue other : finding.missing()) {
      if (!other.pointer().equals(missing.pointer())) {
        entry.others().add(other.description());
      }
    }
  }

  private Waiting entryOf(Rule rule) {
    for (Waiting one : waiting) {
      if (one.rule().id().equals(rule.id())) {
        return one;
      }
    }
    Waiting entry = new Waiting(rule, new LinkedHashMap<>(), new LinkedHashSet<>());
    waiting.add(entry);
    return entry;
  }
}
