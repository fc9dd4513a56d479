package org.rimefast.report.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rimefast.check.ElementName;
import org.rimefast.check.Finding;
import org.rimefast.check.Verdict;

/**
 * What was found at one element, gravest first.
 *
 * @param element the element
 * @param findings broken, in error, and undecided for want of certainty; not those that wait for a
 *     missing value
 * @param waiting findings that wait for a missing value
 */
record ElementGroup(ElementName element, List<Finding> findings, List<Finding> waiting) {

  private static final Comparator<Finding> GRAVEST =
      Comparator.<Finding, Boolean>comparing(finding -> finding.waiver().isPresent())
          .thenComparingInt(finding -> finding.rule().severity().ordinal())
          .thenComparingInt(finding -> rank(finding.verdict()));

  /** Groups the findings of a result; elements that only wait for values are left out. */
  static List<ElementGroup> of(List<Finding> findings) {
    Map<String, ElementGroup> groups = new LinkedHashMap<>();
    for (Finding finding : findings) {
      ElementGroup group =
          groups.computeIfAbsent(
              key(finding.element()),
              key -> new ElementGroup(finding.element(), new ArrayList<>(), new ArrayList<>()));
      (waits(finding) ? group.waiting : group.findings).add(finding);
    }
    List<ElementGroup> found = new ArrayList<>();
    for (ElementGroup group : groups.values()) {
      if (!group.findings.isEmpty()) {
        group.findings.sort(GRAVEST);
        found.add(group);
      }
    }
    found.sort(
        Comparator.<ElementGroup, Finding>comparing(group -> group.findings.get(0), GRAVEST)
            .thenComparing(ElementGroup::element, ElementGroup::inPlanOrder));
    return found;
  }

  /** True for a finding that a value of the plan would decide. */
  static boolean waits(Finding finding) {
    return finding.verdict() == Verdict.UNDECIDED && !finding.missing().isEmpty();
  }

  static int inPlanOrder(ElementName left, ElementName right) {
    if (left.place().isPresent() && right.place().isPresent()) {
      int line = Integer.compare(left.place().get().line(), right.place().get().line());
      int column = Integer.compare(left.place().get().column(), right.place().get().column());
      if (line != 0 || column != 0) {
        return line != 0 ? line : column;
      }
    }
    int pointer = NaturalOrder.compare(left.pointer(), right.pointer());
    int id = pointer != 0 ? pointer : NaturalOrder.compare(left.id(), right.id());
    return id != 0 ? id : left.noun().compareTo(right.noun());
  }

  private static int rank(Verdict verdict) {
    return switch (verdict) {
      case BROKEN -> 0;
      case ERROR -> 1;
      case UNDECIDED -> 2;
      case MET, NOT_APPLICABLE ->
          throw new IllegalStateException("no finding has the verdict " + verdict);
    };
  }

  /** A text, because equality of records is slow at a cold start. */
  static String key(ElementName element) {
    return element.pointer() + '\n' + element.noun() + '\n' + element.id();
  }
}
