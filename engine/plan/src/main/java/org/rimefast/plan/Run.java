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
 * @param build what it is made of and how it is fixed
 */
public record Run(
    String id,
    String pointer,
    Kind kind,
    @Nullable Amount diameter,
    List<PathPoint> path,
    @Nullable String from,
    @Nullable String to,
    RunBuild build)
    implements Element {
  /** Copies the list. */
  public Run {
    path = List.copyOf(path);
  }

  /** A run of which no more is known than where it is. */
  public Run(
      String id,
      String pointer,
      Kind kind,
      @Nullable Amount diameter,
      List<PathPoint> path,
      @Nullable String from,
      @Nullable String to) {
    this(id, pointer, kind, diameter, path, from, to, RunBuild.UNKNOWN);
  }

  /**
   * A point of the path, in the coordinates of a face. Null means not given.
   *
   * @param bend radius of the bend at this point, to its inner edge; null if the run's counts
   */
  public record PathPoint(
      String pointer,
      Face face,
      @Nullable Amount along,
      @Nullable Amount up,
      @Nullable Amount depth,
      @Nullable Amount bend) {
    /** A point with no bend of its own. */
    public PathPoint(
        String pointer,
        Face face,
        @Nullable Amount along,
        @Nullable Amount up,
        @Nullable Amount depth) {
      this(pointer, face, along, up, depth, null);
    }
  }

  /** What a run is made of. */
  public enum Kind {
    /** Cable in an armour of interlocked steel with a bonding strip. */
    ARMOURED_CABLE,
    /** Cable in a metal sheath of one of the forms of {@link RunBuild.Armour}. */
    METAL_CLAD_CABLE,
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

    /** True for both kinds of cable with metal around them. */
    public boolean isArmoured() {
      return this == ARMOURED_CABLE || this == METAL_CLAD_CABLE;
    }

    /** True for cables, false for conduit. */
    public boolean isCable() {
      return isArmoured() || this == NONMETALLIC_CABLE;
    }
  }
}
