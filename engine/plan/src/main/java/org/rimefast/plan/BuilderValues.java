package org.rimefast.plan;

import java.math.BigDecimal;
import org.rimefast.plan.internal.json.Node.Sequence;
import org.rimefast.plan.internal.json.Node.Structure;
import org.rimefast.plan.internal.json.TreeMaker;

/** Values that builders put down. */
final class BuilderValues {
  private BuilderValues() {}

  /** A plain number; one that is not finite becomes a fault when the plan is built. */
  static void length(Structure owner, String name, double number) {
    TreeMaker.number(owner, name, spelling(number));
  }

  /** The same as an item of a list. */
  static void length(Sequence owner, double number) {
    TreeMaker.number(owner, spelling(number));
  }

  private static String spelling(double number) {
    boolean finite = !Double.isNaN(number) && !Double.isInfinite(number);
    return finite
        ? BigDecimal.valueOf(number).stripTrailingZeros().toPlainString()
        : Double.toString(number);
  }
}
