package org.rimefast.report.internal;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.rimefast.check.CheckResult;
import org.rimefast.check.UnaskedReading;
import org.rimefast.check.WaiverUse;
import org.rimefast.lang.rule.Waiver;
import org.rimefast.lang.source.SourceText;
import org.rimefast.plan.InspectReading;

/** Writes what came of waivers, and the readings that nobody asked for. */
final class JsonSite {
  private final JsonGenerator json;

  JsonSite(JsonGenerator json) {
    this.json = json;
  }

  void write(CheckResult result) throws IOException {
    json.writeArrayFieldStart("waivers");
    for (WaiverUse use : result.waivers()) {
      waiver(use);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("unaskedReadings");
    for (UnaskedReading unasked : result.unaskedReadings()) {
      unasked(unasked, result);
    }
    json.writeEndArray();
  }

  private void waiver(WaiverUse use) throws IOException {
    Waiver waiver = use.waiver();
    json.writeStartObject();
    text("rule", waiver.rule());
    text("target", waiver.target());
    textOrNull("plan", waiver.plan());
    text("because", waiver.because());
    text("approvedBy", waiver.approvedBy());
    text("from", waiver.from().toString());
    text("until", waiver.until().toString());
    textOrNull("bound", waiver.bound().map(Waiver.Bound::words));
    SourceText.Position at = waiver.source().positionOf(waiver.span().start());
    text("file", waiver.source().name());
    json.writeNumberField("line", at.line());
    json.writeNumberField("column", at.column());
    text("state", state(use.state()));
    json.writeNumberField("findings", use.findings());
    texts("beyond", use.beyond());
    texts("unsure", use.unsure());
    texts("unknown", use.unknown());
    json.writeEndObject();
  }

  private static String state(WaiverUse.State state) {
    return switch (state) {
      case USED -> "used";
      case NO_LONGER_NEEDED -> "noLongerNeeded";
      case UNUSED -> "unused";
      case NOT_YET -> "notYet";
      case EXPIRED -> "expired";
      case NOT_DUE -> "notDue";
      case OTHER_PLAN -> "otherPlan";
    };
  }

  private void unasked(UnaskedReading unasked, CheckResult result) throws IOException {
    InspectReading reading = unasked.reading();
    json.writeStartObject();
    text("inspect", reading.inspect());
    text("of", unasked.of());
    text("when", reading.when().toString());
    text("why", unasked.why());
    text("pointer", reading.pointer());
    JsonFindings.place(
        json, Optional.ofNullable(result.plan().source().placeOf(reading.pointer())));
    json.writeEndObject();
  }

  private void texts(String member, List<String> values) throws IOException {
    json.writeArrayFieldStart(member);
    for (String value : values) {
      json.writeString(WellFormed.of(value));
    }
    json.writeEndArray();
  }

  private void text(String member, String value) throws IOException {
    json.writeStringField(member, WellFormed.of(value));
  }

  private void textOrNull(String member, Optional<String> value) throws IOException {
    if (value.isPresent()) {
      text(member, value.get());
    } else {
      json.writeNullField(member);
    }
  }
}
