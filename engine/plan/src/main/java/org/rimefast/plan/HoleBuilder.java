package org.rimefast.plan;

import org.rimefast.plan.internal.json.Node.Structure;
import org.rimefast.plan.internal.json.TreeMaker;

/** What is fitted to a service hole, while a plan is built. What is not given stays unknown. */
public final class HoleBuilder {
  private final Structure item;

  HoleBuilder(Structure item) {
    this.item = item;
  }

  /** Whether a bushing or grommet covers its edges. */
  public HoleBuilder bushing(boolean there) {
    TreeMaker.text(item, "insert", there ? "bushing" : "none");
    return this;
  }

  /** Thickness of the steel plate that guards what passes; 0 if there is none. */
  public HoleBuilder plate(double length) {
    BuilderValues.length(item, "plate", length);
    return this;
  }

  /** Thickness of the steel plate that guards what passes; 0 if there is none. */
  public HoleBuilder plate(String length) {
    TreeMaker.text(item, "plate", length);
    return this;
  }
}
