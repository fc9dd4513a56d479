package org.rimefast.report.internal;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.rimefast.check.ElementName;
import org.rimefast.check.Evidence;
import org.rimefast.check.Finding;
import org.rimefast.check.Measurement;
import org.rimefast.check.MissingValue;
import org.rimefast.check.Verdict;
import org.rimefast.check.WaiverUse;
import org.rimefast.lang.rule.Waiver;
import org.rimefast.plan.PlanSource;

/** Writes findings with their evidence. */
final class JsonFindings {
  private final JsonGenerator json;
  private final List<WaiverUse> waivers;

  /**
   * A writer.
   *
   * @param waivers those of the result, in its order
   */
  JsonFindings(JsonGenerator json, List<WaiverUse> waivers) {
    this.json = json;
    this.waivers = waivers;
  }

  void write(List<Finding> findings) throws IOException {
    json.writeArrayFieldStart("findings");
    for (Finding finding : findings) {
      finding(finding);
    }
    json.writeEndArray();
  }

  /** The member that counts a verdict, and its value in a finding: {@code notApplicable}. */
  static String member(Verdict verdict) {
    return switch (verdict) {
      case MET -> "met";
      case BROKEN -> "broken";
      case UNDECIDED -> "undecided";
      case NOT_APPLICABLE -> "notApplicable";
      case ERROR -> "error";
    };
  }

  static void place(JsonGenerator json, Optional<PlanSource.Place> place) throws IOException {
    if (place.isPresent()) {
      json.writeNumberField("line", place.get().line());
      json.writeNumberField("column", place.get().column());
    } else {
      json.writeNullField("line");
      json.writeNullField("column");
    }
  }

  private void finding(Finding finding) throws IOException {
    json.writeStartObject();
    text("rule", finding.rule().id());
    text("verdict", member(finding.verdict()));
    text("severity", finding.rule().severity().word());
    ElementName element = finding.element();
    json.writeObjectFieldStart("element");
    text("noun", element.noun());
    text("id", element.id());
    text("where", element.where());
    text("pointer", element.pointer());
    place(json, element.place());
    json.writeEndObject();
    text("reason", finding.reason());
    json.writeArrayFieldStart("evidence");
    for (Evidence evidence : finding.evidence()) {
      evidence(evidence);
    }
    json.writeEndArray();
    missing(finding.missing());
    waiver(finding);
    json.writeEndObject();
  }

  /** The waiver's place in the result's list. */
  private void waiver(Finding finding) throws IOException {
    if (finding.waiver().isEmpty()) {
      json.writeNullField("waiver");
      return;
    }
    List<Waiver> all = waivers.stream().map(WaiverUse::waiver).toList();
    json.writeNumberField("waiver", all.indexOf(finding.waiver().get()));
  }

  private void evidence(Evidence evidence) throws IOException {
    json.writeStartObject();
    text("statement", evidence.statement());
    text("truth", evidence.truth().name().toLowerCase(Locale.ROOT));
    if (evidence.measurement().isPresent()) {
      measurement(evidence.measurement().get());
    } else {
      json.writeNullField("measurement");
    }
    json.writeArrayFieldStart("facts");
    for (Evidence.Fact fact : evidence.facts()) {
      json.writeStartObject();
      text("name", fact.name());
      text("value", fact.value());
      json.writeEndObject();
    }
    json.writeEndArray();
    missing(evidence.missing());
    json.writeArrayFieldStart("parts");
    for (Evidence part : evidence.parts()) {
      evidence(part);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void measurement(Measurement measurement) throws IOException {
    json.writeObjectFieldStart("measurement");
    text("quantity", measurement.quantity());
    number("least", measurement.least());
    number("most", measurement.most());
    text("measured", measurement.measured());
    textOrNull("measuredInPlanUnits", measurement.measuredInPlanUnits());
    text("comparison", measurement.comparison().sign());
    number("limit", measurement.limit());
    text("limitText", measurement.limitText());
    textOrNull("limitName", measurement.limitName());
    number("margin", measurement.margin());
    text("marginText", measurement.marginText());
    json.writeEndObject();
  }

  private void missing(List<MissingValue> missing) throws IOException {
    json.writeArrayFieldStart("missing");
    for (MissingValue value : missing) {
      json.writeStartObject();
      text("pointer", value.pointer());
      text("description", value.description());
      place(json, value.place());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** JSON has no word for what is not finite, so that is null. */
  private void number(String member, double value) throws IOException {
    if (Double.isFinite(value)) {
      json.writeNumberField(member, value == 0 ? 0.0 : value);
    } else {
      json.writeNullField(member);
    }
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
