package org.rimefast.check.internal.hot;

import java.util.ArrayList;
import java.util.List;

/** Counts what a rule's nodes need of a frame, while they are made. */
final class Layout {
  int variables = 1;
  int readings;
  int lists;
  int tallies;
  int searches;
  final List<Integer> slots = new ArrayList<>();

  int reading() {
    return readings++;
  }

  int tally() {
    return tallies++;
  }

  int search() {
    return searches++;
  }

  int list() {
    return lists++;
  }

  int slots(int count) {
    slots.add(count);
    return slots.size() - 1;
  }

  void variable(int index) {
    variables = Math.max(variables, index + 1);
  }
}
