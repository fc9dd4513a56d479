package org.rimefast.plan;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A cable or conduit, as a line through space with a diameter.
 *
 * @param id its id
 * @param pointer its JSON pointer
 * @param kind its make-up
 * @param diameter outside diameter; null if not given
 * @param path at least two points of its middle line, in order
 * @param from the id of what its first end enters; null if not given
 * @param to the id of what its last end enters; null if not given
 */
public record Run(
    String id,
    String pointer,
    Kind kind,
    @Nullable Amount diameter,
    List<PathPoint> path,
    @Nullable String from,
    @Nullable String to)
    implements Element {
  /** Copies the list. */
  public Run {
    path = List.copyOf(path);
  }

  /** A point of the path, in the coordinates of a face. Null means not given. */
  public record PathPoint(
      String pointer,
      Face face,
      @Nullable Amount along,
      @Nullable Amount up,
      @Nullable Amount depth) {}

  /** What a run is made of. */
  public enum Kind {
    ARMOURED_CABLE,
    NONMETALLIC_CABLE,
    EMT,
    FLEXIBLE_CONDUIT;

    /** The word that plans and rules use: {@code armoured-cable}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** True if its outside is metal. */
    public boolean isMetal() {
      return this != NONMETALLIC_CABLE;
    }

    /** True for cables, false for conduit. */
    public boolean isCable() {
      return this == ARMOURED_CABLE || this == NONMETALLIC_CABLE;
    }
  }
}
