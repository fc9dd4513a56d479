package org.rimefast.report.internal;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.rimefast.lang.rule.Change;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Withdrawal;

/** Writes what standards made of each other. */
final class JsonLayers {
  private final JsonGenerator json;

  JsonLayers(JsonGenerator json) {
    this.json = json;
  }

  /** The standards that one builds on, the nearest first, and the rules that were taken out. */
  void ofStandard(Standard standard) throws IOException {
    json.writeArrayFieldStart("buildsOn");
    Optional<Standard> base = standard.base();
    while (base.isPresent()) {
      json.writeStartObject();
      text("name", base.get().name());
      text("edition", base.get().edition());
      json.writeEndObject();
      base = base.get().base();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("withdrawn");
    for (Withdrawal withdrawal : standard.withdrawn()) {
      json.writeStartObject();
      text("rule", withdrawal.rule().id());
      changes(List.of(withdrawal.change()));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** What was made of a rule. */
  void ofRule(Rule rule) throws IOException {
    changes(rule.changes());
  }

  private void changes(List<Change> changes) throws IOException {
    json.writeArrayFieldStart("changes");
    for (Change change : changes) {
      json.writeStartObject();
      text("kind", change.kind().name().toLowerCase(Locale.ROOT));
      text("standard", change.standard());
      text("edition", change.edition());
      text("text", change.text());
      text("before", change.before());
      text("after", change.after());
      text("effect", change.effect().name().toLowerCase(Locale.ROOT));
      text("because", change.because());
      if (change.source().isPresent()) {
        text("source", change.source().get());
      } else {
        json.writeNullField("source");
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void text(String member, String value) throws IOException {
    json.writeStringField(member, WellFormed.of(value));
  }
}
