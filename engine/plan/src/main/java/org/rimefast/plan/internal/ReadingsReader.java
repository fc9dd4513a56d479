package org.rimefast.plan.internal;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.InspectReading;
import org.rimefast.plan.internal.json.Node;

/** Reads what was found on site. */
final class ReadingsReader {
  static final List<String> FIELDS =
      List.of("inspect", "of", "answer", "value", "who", "when", "note");
  private static final Map<String, Boolean> ANSWERS = answers();

  private final Context context;
  private final Ids ids;
  private final List<InspectReading> readings = new ArrayList<>();

  ReadingsReader(Context context, Ids ids) {
    this.context = context;
    this.ids = ids;
  }

  private static Map<String, Boolean> answers() {
    Map<String, Boolean> answers = new LinkedHashMap<>();
    answers.put("yes", true);
    answers.put("no", false);
    return answers;
  }

  List<InspectReading> readings() {
    return readings;
  }

  void read(Fields plan) {
    for (Node item : plan.items("readings")) {
      Fields fields = Fields.of(context, item, "reading", FIELDS);
      if (fields != null) {
        readReading(fields);
      }
    }
  }

  private void readReading(Fields fields) {
    String inspect =
        fields.requiredText("inspect", "Add \"inspect\": the id of the standard's inspect item.");
    String of = fields.text("of");
    if (of != null && !of.equals(InspectReading.ROOM) && !Names.FACES.containsKey(of)) {
      ids.refer(fields, "of", of, Ids.To.ANY);
    }
    Boolean answer = fields.requiredWord("answer", ANSWERS);
    Node written = fields.get("value");
    Amount value =
        written == null
            ? null
            : Amounts.anyQuantity(context, written, () -> fields.label("value"), "\"7 degC\"");
    String who = fields.requiredText("who", "Add \"who\": the one who looked.");
    LocalDate when = date(fields);
    String note = fields.text("note");
    boolean whole = fields.node().isClosed() && (written == null || value != null);
    if (whole && inspect != null && answer != null && who != null && when != null) {
      readings.add(
          new InspectReading(fields.node().pointer(), inspect, of, answer, value, who, when, note));
    }
  }

  private @Nullable LocalDate date(Fields fields) {
    String text = fields.requiredText("when", "Add \"when\": the day, such as \"2026-11-20\".");
    Node node = fields.get("when");
    if (text == null || node == null) {
      return null;
    }
    if (text.matches("[0-9]{4}-[0-9]{2}-[0-9]{2}")) {
      try {
        return LocalDate.of(
            Integer.parseInt(text, 0, 4, 10),
            Integer.parseInt(text, 5, 7, 10),
            Integer.parseInt(text, 8, 10, 10));
      } catch (DateTimeException e) {
        context.faults.add(
            "bad-date",
            node,
            Fields.capital(fields.label("when")) + " is " + text + ", and there is no such day.",
            "Look it up in a calendar.");
        return null;
      }
    }
    context.faults.add(
        "bad-date",
        node,
        Fields.capital(fields.label("when")) + " is " + Wording.quoted(text) + ".",
        "Write year, month and day, such as \"2026-11-20\".");
    return null;
  }
}
