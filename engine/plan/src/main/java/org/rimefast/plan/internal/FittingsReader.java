package org.rimefast.plan.internal;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.BoxFittings;
import org.rimefast.plan.BoxFittings.Device;
import org.rimefast.plan.internal.json.Node;
import org.rimefast.units.Dimension;

/** Reads what a box holds. */
final class FittingsReader {
  static final List<String> FIELDS =
      List.of("volume", "devices", "clamps", "fixtureStuds", "wireConnectors");
  static final List<String> DEVICE_FIELDS = List.of("kind", "count", "behind");

  /** More than any box holds of one kind of thing. */
  private static final int MOST = 100;

  private final Context context;

  FittingsReader(Context context) {
    this.context = context;
  }

  /**
   * What the box holds.
   *
   * @param listed the volume of its product size, which counts if it gives none; null if it has no
   *     such size
   */
  BoxFittings read(Fields box, @Nullable Amount listed) {
    Amount marked = box.quantity("volume", Dimension.VOLUME, "\"18 in3\"", Amounts.Range.POSITIVE);
    return new BoxFittings(
        marked == null ? listed : marked,
        devices(box),
        box.word("clamps", Names.CLAMPS),
        box.count("fixtureStuds", 0, MOST),
        box.count("wireConnectors", 0, MOST));
  }

  private @Nullable List<Device> devices(Fields box) {
    if (!box.has("devices")) {
      return null;
    }
    List<Device> devices = new ArrayList<>();
    for (Node item : box.items("devices")) {
      Fields fields = Fields.of(context, item, "device of " + box.owner(), DEVICE_FIELDS);
      if (fields != null) {
        Device.Kind kind = fields.requiredWord("kind", Names.DEVICE_KINDS);
        Integer count = fields.count("count", 1, MOST);
        Amount behind = fields.length("behind", Amounts.Range.NOT_NEGATIVE);
        if (kind != null) {
          devices.add(new Device(item.pointer(), kind, count == null ? 1 : count, behind));
        }
      }
    }
    return devices;
  }
}
