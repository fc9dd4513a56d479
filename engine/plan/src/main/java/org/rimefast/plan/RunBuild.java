package org.rimefast.plan;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What a run is made of and how it is fixed. Null means not given.
 *
 * @param armour the form of a metal-clad cable's armour
 * @param bore inside diameter of a conduit
 * @param bendRadius radius of its bends to their inner edge, where a point does not say
 * @param conductors the conductors in it, by groups of equal ones
 * @param circuit the id of the circuit that it belongs to
 * @param supports where straps hold it: lengths along its middle line from its first end
 * @param first how its first end is made
 * @param last how its last end is made
 * @param cornerSlack length to spare at each inside corner that it rounds
 */
public record RunBuild(
    @Nullable Armour armour,
    @Nullable Amount bore,
    @Nullable Amount bendRadius,
    @Nullable List<Conductors> conductors,
    @Nullable String circuit,
    @Nullable List<Amount> supports,
    End first,
    End last,
    @Nullable Amount cornerSlack) {
  /** Nothing is given. */
  public static final RunBuild UNKNOWN =
      new RunBuild(null, null, null, null, null, null, End.UNKNOWN, End.UNKNOWN, null);

  /** Copies the lists. */
  public RunBuild {
    conductors = conductors == null ? null : List.copyOf(conductors);
    supports = supports == null ? null : List.copyOf(supports);
  }

  /** Forms of the armour of metal-clad cable (NFPA 70, 330.24). */
  public enum Armour {
    INTERLOCKED,
    CORRUGATED,
    SMOOTH;

    /** The word that plans and rules use. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * Equal conductors of a run.
   *
   * @param pointer where they stand in the plan file
   * @param gauge their size in AWG, from 18 to 1
   * @param count how many
   * @param use what they are for
   * @param rating the temperature that their insulation is rated for
   */
  public record Conductors(String pointer, int gauge, int count, Use use, @Nullable Amount rating) {
    /** What conductors are for. */
    public enum Use {
      /** Insulated, counted for heat. */
      CURRENT_CARRYING,
      /** Insulated, but carries only what is out of balance, or nothing. */
      NOT_CARRYING,
      /** Bonds metal to earth. */
      BONDING;

      /** The word that plans and rules use: {@code current-carrying}. */
      public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
      }
    }
  }

  /**
   * One end of a run.
   *
   * @param side the side by which it enters; null if its place decides
   * @param connector what joins it to what it enters
   * @param slack length to spare, coiled inside what it enters
   */
  public record End(@Nullable Side side, @Nullable Connector connector, @Nullable Amount slack) {
    /** Nothing is given. */
    public static final End UNKNOWN = new End(null, null, null);
  }

  /** Sides of a part, as seen from the room. */
  public enum Side {
    ABOVE,
    BELOW,
    LEFT,
    RIGHT,
    BACK,
    FRONT;

    /** The word that plans and rules use. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** What joins a run to what it enters. */
  public enum Connector {
    METAL,
    INSULATING;

    /** The word that plans and rules use. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
