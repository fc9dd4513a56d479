package org.rimefast.plan;

import org.rimefast.plan.internal.json.Node.Structure;
import org.rimefast.plan.internal.json.TreeMaker;

/** A branch circuit, while a plan is built. What is not given stays unknown. */
public final class CircuitBuilder {
  private final Structure item;

  CircuitBuilder(Structure item) {
    this.item = item;
  }

  /** The id of the panel that feeds it. */
  public CircuitBuilder panel(String id) {
    TreeMaker.text(item, "panel", id);
    return this;
  }

  /** Rating of its breaker: {@code 20 A}. */
  public CircuitBuilder breaker(String current) {
    TreeMaker.text(item, "breaker", current);
    return this;
  }

  /** Its voltage: {@code 120 V}. */
  public CircuitBuilder voltage(String voltage) {
    TreeMaker.text(item, "voltage", voltage);
    return this;
  }

  /** The current that it is laid out for: {@code 16 A}. */
  public CircuitBuilder load(String current) {
    TreeMaker.text(item, "load", current);
    return this;
  }

  /** The temperature that its terminals are marked for: {@code 75 degC}. */
  public CircuitBuilder terminals(String temperature) {
    TreeMaker.text(item, "terminals", temperature);
    return this;
  }
}
