package org.rimefast.check.internal.hot;

import org.rimefast.check.Truth;

/** And, or and not. */
final class Logic {
  private Logic() {}

  record All(Nodes.Test[] parts) implements Nodes.Test {
    @Override
    public Truth test(Frame frame) {
      boolean failedBefore = frame.failed;
      Truth result = Truth.TRUE;
      for (Nodes.Test part : parts) {
        result = result.and(part.test(frame));
        if (result == Truth.FALSE) {
          frame.failed = failedBefore;
          return result;
        }
      }
      return result;
    }
  }

  record Any(Nodes.Test[] parts) implements Nodes.Test {
    @Override
    public Truth test(Frame frame) {
      boolean failedBefore = frame.failed;
      Truth result = Truth.FALSE;
      for (Nodes.Test part : parts) {
        result = result.or(part.test(frame));
        if (result == Truth.TRUE) {
          frame.failed = failedBefore;
          return result;
        }
      }
      return result;
    }
  }

  record Not(Nodes.Test part) implements Nodes.Test {
    @Override
    public Truth test(Frame frame) {
      return part.test(frame).not();
    }
  }
}
