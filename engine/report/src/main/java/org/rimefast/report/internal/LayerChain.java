package org.rimefast.report.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.rule.Standard;

/** A standard and those that it builds on. */
public final class LayerChain {
  private LayerChain() {}

  /** All of them, the lowest first and the standard itself last. */
  public static List<Standard> of(Standard standard) {
    List<Standard> chain = new ArrayList<>(List.of(standard));
    Optional<Standard> base = standard.base();
    while (base.isPresent()) {
      chain.add(0, base.get());
      base = base.get().base();
    }
    return List.copyOf(chain);
  }
}
