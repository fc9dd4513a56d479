package org.rimefast.check.internal.hot;

import org.rimefast.check.HandleList;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;

/** All that changes while a rule's nodes run. One for each thread. */
public final class Frame {
  final PlanFacts facts;
  final int[] elements;
  final Reading[] readings;
  final SlotValues[] slots;
  final HandleList[] lists;
  final Chains.Search[] searches;
  final org.rimefast.check.internal.Arithmetics.Tally[] tallies;

  /**
   * True if an unknown that came back could not be worked out, rather than being for want of a
   * value. Nodes that decide in spite of it put it back.
   */
  boolean failed;

  Frame(PlanFacts facts, Layout layout) {
    this.facts = facts;
    elements = new int[layout.variables];
    readings = new Reading[layout.readings];
    for (int i = 0; i < readings.length; i++) {
      readings[i] = new Reading();
    }
    slots = new SlotValues[layout.slots.size()];
    for (int i = 0; i < slots.length; i++) {
      slots[i] = new SlotValues(layout.slots.get(i));
    }
    tallies = new org.rimefast.check.internal.Arithmetics.Tally[layout.tallies];
    for (int i = 0; i < tallies.length; i++) {
      tallies[i] = new org.rimefast.check.internal.Arithmetics.Tally();
    }
    lists = new HandleList[layout.lists];
    for (int i = 0; i < lists.length; i++) {
      lists[i] = new HandleList();
    }
    searches = new Chains.Search[layout.searches];
    for (int i = 0; i < searches.length; i++) {
      searches[i] = new Chains.Search(facts);
    }
  }
}
