package org.rimefast.plan.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.PlanFault;
import org.rimefast.plan.PlanSource.Place;
import org.rimefast.plan.internal.json.Node;

/** Collects faults, up to a limit. */
public final class Faults {
  private static final Comparator<PlanFault> BY_PLACE =
      Comparator.comparing(
          PlanFault::place,
          Comparator.nullsFirst(
              Comparator.comparingInt(Place::line).thenComparingInt(Place::column)));

  private final List<PlanFault> faults = new ArrayList<>();
  private final int limit;
  private long more;

  /** Reports at most {@code limit} faults, at least one, and counts the others. */
  public Faults(int limit) {
    this.limit = Math.max(1, limit);
  }

  /** A fault of a value. */
  void add(String code, Node at, String message, String remedy) {
    if (isFull()) {
      more++;
    } else {
      faults.add(new PlanFault(code, at.pointer(), at.place(), message, remedy));
    }
  }

  /** A fault of a member's name. */
  void addAtName(String code, Node at, String message, String remedy) {
    if (isFull()) {
      more++;
    } else {
      faults.add(new PlanFault(code, at.pointer(), at.namePlace(), message, remedy));
    }
  }

  /** A fault of the text as a whole. */
  public void add(
      String code, String pointer, @Nullable Place place, String message, String remedy) {
    faults.add(new PlanFault(code, pointer, place, message, remedy));
  }

  /** True if further faults are only counted: their words need not be found. */
  boolean isFull() {
    return faults.size() >= limit;
  }

  /** Counts a fault when {@link #isFull}. */
  void count() {
    more++;
  }

  /** True if nothing was found. */
  public boolean isEmpty() {
    return faults.isEmpty();
  }

  /** The faults in the order of the file; those of one place in the order they were found. */
  public List<PlanFault> sorted() {
    List<PlanFault> sorted = new ArrayList<>(faults);
    sorted.sort(BY_PLACE);
    if (more > 0) {
      sorted.add(
          new PlanFault(
              "more-faults",
              "",
              sorted.get(sorted.size() - 1).place(),
              more + " more faults were found and are not listed.",
              "Put the listed ones right and read the plan again."));
    }
    return sorted;
  }
}
