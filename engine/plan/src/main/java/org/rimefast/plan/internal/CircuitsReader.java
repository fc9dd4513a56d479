package org.rimefast.plan.internal;

import java.util.ArrayList;
import java.util.List;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Circuit;
import org.rimefast.plan.internal.json.Node;
import org.rimefast.units.Dimension;

/** Reads the branch circuits. */
final class CircuitsReader {
  static final List<String> FIELDS =
      List.of("id", "panel", "breaker", "voltage", "load", "terminals");

  private final Context context;
  private final Ids ids;
  private final List<Circuit> circuits = new ArrayList<>();

  CircuitsReader(Context context, Ids ids) {
    this.context = context;
    this.ids = ids;
  }

  List<Circuit> circuits() {
    return circuits;
  }

  void read(Fields plan) {
    for (Node item : plan.items("circuits")) {
      Fields fields = Fields.of(context, item, "circuit", FIELDS);
      if (fields != null && context.count(1, fields)) {
        readCircuit(fields);
      }
    }
  }

  private void readCircuit(Fields fields) {
    String id = fields.requiredText("id", "Add \"id\": a name that no other element has.");
    if (fields.node().isClosed()) {
      ids.take(id, fields);
    }
    String panel = fields.text("panel");
    ids.refer(fields, "panel", panel, Ids.To.PANEL);
    Amount breaker =
        fields.quantity("breaker", Dimension.CURRENT, "\"20 A\"", Amounts.Range.POSITIVE);
    Amount voltage =
        fields.quantity("voltage", Dimension.VOLTAGE, "\"120 V\"", Amounts.Range.POSITIVE);
    Amount load =
        fields.quantity("load", Dimension.CURRENT, "\"16 A\"", Amounts.Range.NOT_NEGATIVE);
    Amount terminals = fields.quantity("terminals", Dimension.TEMPERATURE, "\"75 degC\"");
    if (id != null) {
      circuits.add(
          new Circuit(id, fields.node().pointer(), panel, breaker, voltage, load, terminals));
    }
  }
}
