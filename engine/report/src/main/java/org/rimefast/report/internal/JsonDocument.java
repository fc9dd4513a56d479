package org.rimefast.report.internal;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.rimefast.check.CheckResult;
import org.rimefast.check.RuleResult;
import org.rimefast.check.Verdict;
import org.rimefast.lang.rule.Question;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Severity;
import org.rimefast.report.UnusableInput;

/** Writes results in the format {@code rimefast-check-1}; see its schema for every member. */
public final class JsonDocument {
  /** The format's name and version. */
  public static final String FORMAT = "rimefast-check-1";

  private final JsonGenerator json;

  private JsonDocument(JsonGenerator json) {
    this.json = json;
  }

  /** Writes the whole document and a line feed. */
  public static void write(
      List<CheckResult> results, List<UnusableInput> unusable, OutputStream out)
      throws IOException {
    // Double.toString differs between Java versions; Jackson's own writer does not.
    JsonFactory factory =
        new JsonFactoryBuilder()
            .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
            .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
            .characterEscapes(new HiddenCharacterEscapes())
            .build();
    try (JsonGenerator json = factory.createGenerator(out, JsonEncoding.UTF8)) {
      json.setPrettyPrinter(printer());
      new JsonDocument(json).document(results, unusable);
    }
    out.write('\n');
  }

  private static DefaultPrettyPrinter printer() {
    Separators separators =
        Separators.createDefaultInstance()
            .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
            .withObjectEmptySeparator("")
            .withArrayEmptySeparator("");
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter(separators);
    printer.indentObjectsWith(indenter);
    printer.indentArraysWith(indenter);
    return printer;
  }

  private void document(List<CheckResult> results, List<UnusableInput> unusable)
      throws IOException {
    json.writeStartObject();
    text("format", FORMAT);
    json.writeArrayFieldStart("results");
    for (CheckResult result : results) {
      result(result);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("unusable");
    for (UnusableInput input : unusable) {
      unusable(input);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void result(CheckResult result) throws IOException {
    json.writeStartObject();
    text("engine", result.engine());
    json.writeObjectFieldStart("standard");
    text("name", result.standard().name());
    text("edition", result.standard().edition());
    text("title", result.standard().title());
    text("hash", result.standardHash());
    new JsonLayers(json).ofStandard(result.standard());
    json.writeEndObject();
    json.writeObjectFieldStart("plan");
    text("id", result.plan().id());
    text("title", result.plan().title());
    text("file", result.plan().source().name());
    text("hash", result.plan().source().hash());
    json.writeEndObject();
    json.writeObjectFieldStart("options");
    textOrNull("stage", result.options().stage());
    textOrNull("asOf", result.options().asOf().map(Object::toString));
    json.writeEndObject();
    text("caution", Caution.of(result.standard()));
    json.writeArrayFieldStart("rules");
    for (RuleResult rule : result.rules()) {
      rule(rule);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("notDue");
    for (String id : result.notDue()) {
      json.writeString(WellFormed.of(id));
    }
    json.writeEndArray();
    new JsonFindings(json, result.waivers()).write(result.findings());
    new JsonSite(json).write(result);
    summary(result);
    json.writeEndObject();
  }

  private void rule(RuleResult result) throws IOException {
    Rule rule = result.rule();
    json.writeStartObject();
    text("id", rule.id());
    text("title", rule.title());
    text("severity", rule.severity().word());
    text("stage", rule.stage());
    text("sentence", rule.sentence());
    text("because", rule.because());
    text("source", rule.source());
    new JsonLayers(json).ofRule(rule);
    json.writeObjectFieldStart("counts");
    for (Verdict verdict : Verdict.values()) {
      json.writeNumberField(JsonFindings.member(verdict), result.count(verdict));
    }
    json.writeNumberField("waived", result.waived());
    json.writeEndObject();
    textOrNull("appliedToNothing", result.appliedToNothing());
    if (rule.question().isPresent()) {
      Question question = rule.question().get();
      json.writeObjectFieldStart("question");
      text("ask", question.ask());
      text("answer", question.answerWord());
      json.writeBooleanField("reading", question.limit().isPresent());
      json.writeEndObject();
    } else {
      json.writeNullField("question");
    }
    json.writeEndObject();
  }

  private void summary(CheckResult result) throws IOException {
    json.writeObjectFieldStart("summary");
    text("outcome", Outcome.of(result).sentence());
    for (Severity severity : Severity.values()) {
      json.writeObjectFieldStart(severity.word());
      for (Verdict verdict : Verdict.values()) {
        json.writeNumberField(
            JsonFindings.member(verdict), SummaryText.count(result, severity, verdict));
      }
      json.writeNumberField("waived", SummaryText.waived(result, severity));
      json.writeEndObject();
    }
    json.writeObjectFieldStart("all");
    for (Verdict verdict : Verdict.values()) {
      json.writeNumberField(JsonFindings.member(verdict), result.count(verdict));
    }
    json.writeNumberField("waived", result.waived());
    json.writeEndObject();
    json.writeEndObject();
  }

  private void unusable(UnusableInput input) throws IOException {
    json.writeStartObject();
    text("kind", input.kind().name().toLowerCase(Locale.ROOT));
    text("name", input.name());
    json.writeArrayFieldStart("faults");
    for (UnusableInput.Fault fault : input.faults()) {
      json.writeStartObject();
      text("code", fault.code());
      textOrNull("pointer", fault.pointer());
      textOrNull("file", fault.file());
      JsonFindings.place(json, fault.place());
      text("message", fault.message());
      text("remedy", fault.remedy());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
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
