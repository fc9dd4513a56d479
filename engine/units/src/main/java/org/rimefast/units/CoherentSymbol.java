package org.rimefast.units;

import java.util.ArrayList;
import java.util.List;

/** Symbols of units that have no name of their own, made of base units. */
final class CoherentSymbol {
  private CoherentSymbol() {}

  static String of(Dimension dimension) {
    List<String> above = new ArrayList<>();
    List<String> below = new ArrayList<>();
    add("kg", dimension.mass(), above, below);
    add("m", dimension.length(), above, below);
    add("s", dimension.time(), above, below);
    add("A", dimension.current(), above, below);
    add("K", dimension.temperature(), above, below);
    add("deg", dimension.angle(), above, below);
    add("money", dimension.money(), above, below);
    String numerator = above.isEmpty() && !below.isEmpty() ? "1" : String.join(" ", above);
    return switch (below.size()) {
      case 0 -> numerator;
      case 1 -> numerator + "/" + below.get(0);
      default -> numerator + "/(" + String.join(" ", below) + ")";
    };
  }

  private static void add(String symbol, int exponent, List<String> above, List<String> below) {
    if (exponent == 0) {
      return;
    }
    int size = Math.abs(exponent);
    (exponent > 0 ? above : below).add(size == 1 ? symbol : symbol + size);
  }
}
