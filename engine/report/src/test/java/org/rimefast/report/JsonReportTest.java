package org.rimefast.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.dialect.Dialects;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimefast.check.CheckResult;
import org.rimefast.check.Evidence;
import org.rimefast.check.Finding;
import org.rimefast.check.Measurement;
import org.rimefast.check.Truth;
import org.rimefast.check.Verdict;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.plan.PlanFault;
import org.rimefast.plan.PlanSource;

class JsonReportTest {
  private static final List<UnusableInput> UNUSABLE =
      List.of(
          UnusableInput.plan(
              "bunk.json",
              List.of(
                  new PlanFault(
                      "unknown-field",
                      "/boxes/2/detph",
                      new PlanSource.Place(48, 7),
                      "A box has no field \"detph\".",
                      "Write \"depth\"."))),
          UnusableInput.unreadable(
              UnusableInput.Kind.STANDARD,
              "house.rime",
              "no-such-file",
              "There is no such file.",
              ""));

  @Test
  void everythingIsTold() throws IOException {
    Golden.check("everything.json", json(SampleResults.everything()));
  }

  @Test
  void waiversAndUnaskedReadingsAreTold() throws IOException {
    String document = json(SampleResults.waived());
    Golden.check("waived.json", document);
    assertThat(faults(document)).isEmpty();
    assertThat(faults(document.replace("\"state\": \"used\"", "\"state\": \"in use\"")))
        .isNotEmpty();
  }

  @Test
  void itIsToldWhoAmendedWhat() throws IOException {
    Golden.check("amended.json", json(SampleResults.layered()));
    assertThat(faults(json(SampleResults.layered()))).isEmpty();
  }

  @Test
  void whatCannotBeUsedIsTold() throws IOException {
    Golden.check(
        "unusable.json", new String(JsonReport.write(List.of(), UNUSABLE), StandardCharsets.UTF_8));
  }

  @Test
  void everyDocumentIsValid() {
    assertThat(faults(json(SampleResults.everything()))).isEmpty();
    assertThat(faults(json(SampleResults.clean()))).isEmpty();
    assertThat(faults(json(SampleResults.nothingChecked()))).isEmpty();
    byte[] several =
        JsonReport.write(List.of(SampleResults.everything(), SampleResults.clean()), UNUSABLE);
    assertThat(faults(new String(several, StandardCharsets.UTF_8))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"format\": \"rimefast-check-1\"  ->  \"format\": \"rimefast-check-2\"",
        "\"verdict\": \"broken\"  ->  \"verdict\": \"met\"",
        "\"severity\": \"hold\"  ->  \"severity\": \"grave\"",
        "\"caution\":  ->  \"cautious\":",
        "\"line\": 48  ->  \"line\": 0",
        "\"line\": 48  ->  \"line\": 4.5",
        "\"hash\": \"0123  ->  \"hash\": \"O123",
        "\"asOf\": \"2026-11-25\"  ->  \"asOf\": \"25 November\"",
        "\"comparison\": \">=\"  ->  \"comparison\": \"at least\"",
        "\"truth\": \"false\"  ->  \"truth\": false",
        "\"met\": 7  ->  \"met\": -7",
        "\"pointer\": \"/boxes  ->  \"pointer\": \"boxes"
      })
  void theSchemaRefuses(String change) {
    String[] parts = change.split("  ->  ", -1);
    String good = json(SampleResults.everything());
    assertThat(good).contains(parts[0]);
    assertThat(faults(good.replace(parts[0], parts[1]))).isNotEmpty();
  }

  @Test
  void theSchemaIsItselfValid() {
    Schema meta =
        SchemaRegistry.withDialect(Dialects.getDraft202012())
            .getSchema(
                com.networknt.schema.SchemaLocation.of(
                    SpecificationVersion.DRAFT_2020_12.getDialectId()));
    assertThat(meta.validate(JsonReport.schema(), InputFormat.JSON)).isEmpty();
  }

  @Test
  void whatActsOnATerminalIsEscaped() {
    CheckResult result =
        SampleResults.titled(
            SampleResults.clean(), "\u001b[2J\u007f\u009b\u202e \u6e7f \uD83D\uDE00");
    assertThat(json(result))
        .contains("\"title\": \"\\u001B[2J\\u007F\\u009B\\u202E \u6e7f \\uD83D\\uDE00\"");
  }

  @Test
  void aLoneSurrogateBecomesTheReplacementCharacter() {
    assertThat(json(SampleResults.titled(SampleResults.clean(), "a\uDC00b\uD800")))
        .contains("\"title\": \"a\uFFFDb\uFFFD\"");
  }

  @Test
  void numbersAreTheShortestThatReadBack() {
    assertThat(number(0.0064)).isEqualTo("0.0064");
    assertThat(number(-0.0)).isEqualTo("0.0");
    // Double.toString writes 2.0E-3 as 0.002 everywhere, but 2e23 as 2.0000000000000003E23 before
    // Java 19 and as 2.0E23 since.
    assertThat(number(Double.parseDouble("2.0e23"))).isEqualTo("2.0E23");
    assertThat(number(2.0e-3)).isEqualTo("0.002");
    assertThat(number(Double.POSITIVE_INFINITY)).isEqualTo("null");
    assertThat(number(Double.NaN)).isEqualTo("null");
  }

  @Test
  void theDefaultLocaleDoesNotMatter() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.ROOT);
      String root = json(SampleResults.everything());
      for (String tag : List.of("tr", "de", "ar-EG", "th-TH-u-ca-buddhist-nu-thai")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(json(SampleResults.everything())).isEqualTo(root);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  private static String number(double least) {
    Measurement measurement =
        new Measurement(
            "clearance",
            least,
            1,
            "",
            Optional.empty(),
            Comparison.AT_LEAST,
            0,
            "",
            Optional.empty(),
            0,
            "");
    Evidence evidence =
        new Evidence("", Truth.FALSE, Optional.of(measurement), List.of(), List.of(), List.of());
    Finding finding =
        new Finding(
            SampleResults.CLEAR,
            Verdict.BROKEN,
            SampleParts.box("R-1", 1),
            "",
            List.of(evidence),
            List.of());
    String json = json(SampleResults.of(SampleResults.CLEAR, List.of(finding)));
    assertThat(faults(json)).isEmpty();
    return json.lines()
        .map(String::strip)
        .filter(line -> line.startsWith("\"least\": "))
        .map(line -> line.substring(9, line.length() - 1))
        .findFirst()
        .orElseThrow();
  }

  private static String json(CheckResult result) {
    return new String(JsonReport.write(List.of(result), List.of()), StandardCharsets.UTF_8);
  }

  private static List<Error> faults(String json) {
    Schema schema =
        SchemaRegistry.withDialect(Dialects.getDraft202012())
            .getSchema(JsonReport.schema(), InputFormat.JSON);
    return schema.validate(json, InputFormat.JSON);
  }
}
