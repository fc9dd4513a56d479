package org.rimefast.check.internal.hot;

import java.util.Optional;
import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.check.internal.Arithmetics;

/**
 * Nodes that take one of two values. Where the condition is unknown both are looked at: two numbers
 * make an interval, and two words that are the same one. A condition that could not be worked out
 * leaves no value.
 */
final class Choices {
  private Choices() {}

  record Numbers(Nodes.Test condition, Nodes.Read then, Nodes.Read otherwise, int slot)
      implements Nodes.Read {
    @Override
    public void read(Frame frame, Reading into) {
      boolean failedBefore = frame.failed;
      frame.failed = false;
      Truth truth = condition.test(frame);
      boolean failed = frame.failed;
      frame.failed = failedBefore;
      if (truth == Truth.TRUE) {
        then.read(frame, into);
      } else if (truth == Truth.FALSE) {
        otherwise.read(frame, into);
      } else if (failed) {
        into.failed();
      } else {
        Reading other = frame.readings[slot];
        then.read(frame, into);
        otherwise.read(frame, other);
        Arithmetics.hull(into, other);
      }
    }
  }

  record Words(Nodes.Test condition, Nodes.Choose then, Nodes.Choose otherwise)
      implements Nodes.Choose {
    @Override
    public int choose(Frame frame) {
      boolean failedBefore = frame.failed;
      frame.failed = false;
      Truth truth = condition.test(frame);
      if (truth == Truth.UNKNOWN && frame.failed) {
        return -1;
      }
      frame.failed = failedBefore;
      if (truth != Truth.UNKNOWN) {
        return truth == Truth.TRUE ? then.choose(frame) : otherwise.choose(frame);
      }
      int a = then.choose(frame);
      int b = otherwise.choose(frame);
      return a == b ? a : -1;
    }
  }

  record Telling(Nodes.Test condition, Texts.Tell then, Texts.Tell otherwise)
      implements Texts.Tell {
    @Override
    public Optional<String> tell(Frame frame) {
      boolean failedBefore = frame.failed;
      frame.failed = false;
      Truth truth = condition.test(frame);
      if (truth == Truth.UNKNOWN && frame.failed) {
        return Optional.empty();
      }
      frame.failed = failedBefore;
      if (truth != Truth.UNKNOWN) {
        return truth == Truth.TRUE ? then.tell(frame) : otherwise.tell(frame);
      }
      Optional<String> a = then.tell(frame);
      Optional<String> b = otherwise.tell(frame);
      return a.equals(b) ? a : Optional.empty();
    }
  }
}
