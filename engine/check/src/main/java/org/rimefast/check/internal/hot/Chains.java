package org.rimefast.check.internal.hot;

import org.jspecify.annotations.Nullable;
import org.rimefast.check.HandleList;
import org.rimefast.check.Neighbours;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Truth;
import org.rimefast.check.Word;
import org.rimefast.check.internal.ReachIndex;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Relation;

/** Relations that follow chains of elements. */
final class Chains {
  private Chains() {}

  /** What one search needs, used again for each element. */
  static final class Search {
    private final int[] queue;
    private final int[] seen;
    private final Neighbours next = new Neighbours();
    private int round;

    Search(PlanFacts facts) {
      queue = new int[facts.size()];
      seen = new int[facts.size()];
    }
  }

  /** The elements that a chain may not pass. */
  record Barred(Noun noun, int variable, Nodes.Test where) {
    Truth test(Frame frame, int handle) {
      if (!frame.facts.isMember(noun, handle)) {
        return Truth.FALSE;
      }
      frame.elements[variable] = handle;
      return where.test(frame);
    }
  }

  /**
   * Whether a chain leads from one element to another. It certainly does over certain steps past
   * elements that are certainly not barred; it certainly does not if none leads there over all
   * steps past elements that may not be barred.
   *
   * @param relation what is said of the element
   * @param barred what is not passed; null if anything may be
   * @param search which of the frame's searches is its own
   */
  record Reaches(
      Relation relation,
      Word.NeighbourFunction function,
      Nodes.Find subject,
      Nodes.Find target,
      @Nullable Barred barred,
      int search)
      implements Nodes.Test {
    @Override
    public Truth test(Frame frame) {
      int from = subject.find(frame);
      int to = target.find(frame);
      if (from < 0 || to < 0) {
        return Truth.UNKNOWN;
      }
      if (from == to) {
        return Truth.FALSE;
      }
      if (barred == null) {
        ReachIndex.Distances distances = ReachIndex.of(frame.facts, relation, function).to(to);
        if (distances != null) {
          return distances.from(from);
        }
      }
      boolean failedBefore = frame.failed;
      frame.failed = false;
      boolean certainly = isReached(frame, from, to, true);
      Truth result =
          certainly ? Truth.TRUE : isReached(frame, from, to, false) ? Truth.UNKNOWN : Truth.FALSE;
      frame.failed = failedBefore || (result == Truth.UNKNOWN && frame.failed);
      return result;
    }

    private boolean isReached(Frame frame, int from, int to, boolean certain) {
      Search own = frame.searches[search];
      int round = ++own.round;
      int begin = 0;
      int end = 0;
      own.queue[end++] = from;
      own.seen[from] = round;
      while (begin < end) {
        int element = own.queue[begin++];
        if (element != from && !isPassable(frame, element, certain)) {
          continue;
        }
        own.next.clear();
        function.find(frame.facts, element, own.next);
        end = enqueued(own, own.next.certain(), end);
        if (!certain) {
          end = enqueued(own, own.next.possible(), end);
        }
        if (own.seen[to] == round) {
          return true;
        }
      }
      return false;
    }

    private boolean isPassable(Frame frame, int element, boolean certain) {
      if (barred == null) {
        return true;
      }
      Truth stops = barred.test(frame, element);
      return certain ? stops == Truth.FALSE : stops != Truth.TRUE;
    }

    private static int enqueued(Search own, HandleList found, int end) {
      int last = end;
      for (int i = 0; i < found.size(); i++) {
        int handle = found.get(i);
        if (own.seen[handle] != own.round) {
          own.seen[handle] = own.round;
          own.queue[last++] = handle;
        }
      }
      return last;
    }
  }
}
