package org.rimefast.plan;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What a box holds. Null means not given.
 *
 * @param volume its volume: as marked on it, else that of its product size
 * @param devices the devices on straps (yokes) in it; empty if there are none
 * @param clamps true if cable clamps inside it take room
 * @param fixtureStuds luminaire studs and hickeys in it
 * @param wireConnectors capped connectors (wire connectors) in it
 */
public record BoxFittings(
    @Nullable Amount volume,
    @Nullable List<Device> devices,
    @Nullable Boolean clamps,
    @Nullable Integer fixtureStuds,
    @Nullable Integer wireConnectors) {
  /** Nothing is given. */
  public static final BoxFittings UNKNOWN = new BoxFittings(null, null, null, null, null);

  /** Copies the list. */
  public BoxFittings {
    devices = devices == null ? null : List.copyOf(devices);
  }

  /**
   * Equal devices, each on a strap of its own.
   *
   * @param pointer where they stand in the plan file
   * @param count how many
   * @param behind how far they reach behind their strap; null if not given
   */
  public record Device(String pointer, Kind kind, int count, @Nullable Amount behind) {
    /** Kinds of device. */
    public enum Kind {
      RECEPTACLE,
      SWITCH,
      OTHER;

      /** The word that plans use. */
      public String word() {
        return name().toLowerCase(Locale.ROOT);
      }
    }
  }
}
