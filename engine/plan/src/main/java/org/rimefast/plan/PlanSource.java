package org.rimefast.plan;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.internal.json.Places;

/**
 * Where a plan came from.
 *
 * @param name how messages name it: a file name, or {@code (built)}
 * @param hash SHA-256 of the bytes it was read from, or that the writer would write, in hex
 * @param places where each JSON pointer's value starts; empty for a plan that was built
 */
public record PlanSource(String name, String hash, Map<String, Place> places) {
  /** A line and column of the plan file, both counted from 1; columns count characters. */
  public record Place(int line, int column) {}

  /** Copies the map, unless it is one that cannot change and works its places out when asked. */
  public PlanSource {
    places = places instanceof Places ? places : Map.copyOf(places);
  }

  /** Where the value at {@code pointer} starts, or the nearest enclosing value that has a place. */
  public @Nullable Place placeOf(String pointer) {
    String at = pointer;
    while (true) {
      Place place = places.get(at);
      if (place != null || at.isEmpty()) {
        return place;
      }
      at = at.substring(0, Math.max(0, at.lastIndexOf('/')));
    }
  }
}
