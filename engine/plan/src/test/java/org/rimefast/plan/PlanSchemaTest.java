package org.rimefast.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The schema, judged by an independent validator of JSON Schema (draft 2020-12). */
class PlanSchemaTest {
  private static final Path FAULTS = Path.of("src/test/resources/org/rimefast/plan/faults");
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(PlanSchema.text(), InputFormat.JSON);

  /** Faults that a schema can see; the others need more than one value, or no JSON at all. */
  private static final Set<String> SEEN_BY_A_SCHEMA =
      Set.of(
          "unknown-field",
          "missing-field",
          "wrong-type",
          "missing-unit",
          "wrong-unit",
          "unknown-word",
          "unknown-product",
          "negative-size",
          "bad-text",
          "wrong-format",
          "bad-count",
          "too-few-points");

  /** A sum of values, and half of a character: no schema can speak of them. */
  private static final Set<String> NOT_SEEN =
      Set.of("profile-without-pitch.json", "half-a-character.json");

  static List<String> complaints(String plan) {
    return SCHEMA.validate(plan, InputFormat.JSON).stream().map(Object::toString).toList();
  }

  @TestFactory
  Stream<DynamicTest> everyExampleIsValidForSchemaAndReader() throws IOException {
    try (Stream<Path> files = Files.list(PlanReaderTest.EXAMPLES)) {
      List<Path> examples = files.sorted().toList();
      assertThat(examples).hasSizeGreaterThanOrEqualTo(3);
      return examples.stream()
          .map(
              file ->
                  DynamicTest.dynamicTest(
                      String.valueOf(file.getFileName()),
                      () -> {
                        assertThat(complaints(Files.readString(file))).isEmpty();
                        assertThat(new PlanReader().read(file).faults()).isEmpty();
                      }));
    }
  }

  @Test
  void whatAPlanIsWrittenAsIsValidToo() throws IOException {
    String written = new String(PlanWriter.write(PlanReaderTest.wetLab()), StandardCharsets.UTF_8);
    assertThat(complaints(written)).isEmpty();
  }

  @TestFactory
  Stream<DynamicTest> whatTheReaderRefusesTheSchemaRefusesWhereItCan() throws IOException {
    Set<String> names = new TreeSet<>(GoldenFaultsTest.names(".json"));
    return names.stream()
        .map(
            name -> {
              Path file = FAULTS.resolve(name + ".json");
              return DynamicTest.dynamicTest(name, () -> compare(file));
            });
  }

  private static void compare(Path file) throws IOException {
    List<PlanFault> faults = new PlanReader().read(file).faults();
    List<String> codes = faults.stream().map(PlanFault::code).toList();
    if (codes.contains("not-json") || codes.contains("not-utf8")) {
      return;
    }
    List<String> complaints = complaints(Files.readString(file));
    if (codes.stream().anyMatch(SEEN_BY_A_SCHEMA::contains)
        && !NOT_SEEN.contains(String.valueOf(file.getFileName()))) {
      assertThat(complaints).as("%s", faults).isNotEmpty();
    }
  }

  @Test
  void theSchemaSeesMostFaultyPlans() throws IOException {
    int seen = 0;
    for (String name : GoldenFaultsTest.names(".json")) {
      List<PlanFault> faults = new PlanReader().read(FAULTS.resolve(name + ".json")).faults();
      if (faults.stream().anyMatch(fault -> SEEN_BY_A_SCHEMA.contains(fault.code()))
          && faults.stream().noneMatch(fault -> fault.code().startsWith("not-"))) {
        seen++;
      }
    }
    assertThat(seen).isGreaterThanOrEqualTo(35);
  }

  @Test
  void everyFieldOfTheSchemaIsDescribed() throws IOException {
    com.fasterxml.jackson.databind.JsonNode root =
        new com.fasterxml.jackson.databind.ObjectMapper().readTree(PlanSchema.text());
    checkDescribed("", root);
  }

  private static void checkDescribed(String at, com.fasterxml.jackson.databind.JsonNode node) {
    node.path("properties")
        .properties()
        .forEach(
            entry ->
                assertThat(entry.getValue().has("description") || entry.getValue().has("$ref"))
                    .as("%s/%s", at, entry.getKey())
                    .isTrue());
    if (node.path("type").asText().equals("object")) {
      assertThat(node.path("additionalProperties").isBoolean()).as(at).isTrue();
      assertThat(node.path("additionalProperties").asBoolean()).as(at).isFalse();
    }
    node.properties().forEach(entry -> checkDescribed(at + "/" + entry.getKey(), entry.getValue()));
    node.elements().forEachRemaining(item -> checkDescribed(at + "/*", item));
  }

  @Test
  void theSchemaListsTheNamedProducts() {
    for (String name : Products.emtNames()) {
      assertThat(PlanSchema.text()).contains("\"" + name + "\"");
    }
    for (String name : Products.boxNames()) {
      assertThat(PlanSchema.text()).contains("\"" + name + "\"");
    }
    String start =
        "{\"format\": \"rimefast-plan-1\", \"id\": \"p\", \"title\": \"t\", \"units\": \"mm\", ";
    for (String stud : Products.studNames()) {
      String faces = "\"faces\": {\"left\": {\"stud\": \"" + stud + "\"}}";
      assertThat(complaints(start + "\"shell\": {\"size\": \"45G1\"}, " + faces + "}")).isEmpty();
    }
    for (String shell : Products.shellNames()) {
      assertThat(complaints(start + "\"shell\": {\"size\": \"" + shell + "\"}}")).isEmpty();
    }
    for (String profile : Products.profileNames()) {
      String faces = "\"faces\": {\"left\": {\"profile\": \"" + profile + "\"}}";
      assertThat(complaints(start + "\"shell\": {\"size\": \"45G1\"}, " + faces + "}")).isEmpty();
    }
  }
}
