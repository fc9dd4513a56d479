package org.rimefast.rulesets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rimefast.plan.CorrugationProfile;
import org.rimefast.plan.Plan;
import org.rimefast.plan.PlanReader;
import org.rimefast.plan.PlanReading;
import org.rimefast.plan.Products;
import org.rimefast.plan.ShellSize;
import org.rimefast.plan.StudSection;
import org.rimefast.units.Quantity;
import org.rimefast.units.QuantityParser;

/** What the guide to writing a plan shows can be read, and its tables are those of the format. */
class PlanGuideTest {
  private static final Guide GUIDE = Guide.read("writing-a-plan.md");

  /** The members of a plan around a fragment, but for those that the fragment has itself. */
  private static final Map<String, String> AROUND = around();

  /** Where the schema describes the object whose fields stand under a heading. */
  private static final Map<String, String> OBJECTS = objects();

  /** Kinds of part: their tables go on from that of every part. */
  private static final Map<String, String> PARTS = parts();

  static Plan completeExample() {
    return plan(GUIDE.texts("json").get(0));
  }

  static List<String> wholePlans() {
    return GUIDE.texts("json");
  }

  static List<String> fragments() {
    return GUIDE.texts("json-fragment");
  }

  static Set<String> describedObjects() {
    return OBJECTS.keySet();
  }

  static Set<String> kindsOfPart() {
    return PARTS.keySet();
  }

  @ParameterizedTest
  @MethodSource("wholePlans")
  void aPlanIsReadWithoutFault(String json) {
    assertThat(plan(json).parts()).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("fragments")
  void aFragmentMakesAPlanThatIsReadWithoutFault(String fragment) {
    String others =
        AROUND.entrySet().stream()
            .filter(member -> !fragment.startsWith("\"" + member.getKey() + "\""))
            .map(member -> "\"" + member.getKey() + "\": " + member.getValue())
            .collect(Collectors.joining(",\n"));
    assertThat(plan("{" + others + ",\n" + fragment + "}").title()).isEqualTo("Around");
  }

  @Test
  void noBlockOfJsonIsLeftUntested() {
    assertThat(GUIDE.blocks())
        .extracting(Guide.Block::kind)
        .containsOnly("", "json", "json-fragment");
    assertThat(GUIDE.blocks())
        .filteredOn(block -> block.kind().isEmpty())
        .noneMatch(block -> block.text().contains("{"));
  }

  @Test
  void theCompleteExampleHasEveryListOfThePlan() {
    Set<String> lists = new LinkedHashSet<>();
    fields(SchemaTree.at("")).forEach((name, schema) -> lists.add("\"" + name + "\":"));
    assertThat(GUIDE.texts("json").get(0)).contains(lists);
  }

  @ParameterizedTest
  @MethodSource("describedObjects")
  void aTableHasTheFieldsOfTheFormat(String heading) {
    assertFields(
        GUIDE.table(heading).rows(), SchemaTree.at(OBJECTS.getOrDefault(heading, "no such place")));
  }

  @ParameterizedTest
  @MethodSource("kindsOfPart")
  void thePartsTablesTogetherHaveTheFieldsOfTheFormat(String heading) {
    List<List<String>> rows = new ArrayList<>(GUIDE.table("Every part").rows());
    rows.addAll(GUIDE.table(heading).rows());
    assertFields(rows, SchemaTree.at(PARTS.getOrDefault(heading, "no such place")));
  }

  @Test
  void everyObjectOfTheFormatHasItsTable() {
    Set<String> described = new LinkedHashSet<>(OBJECTS.values());
    described.addAll(PARTS.values());
    assertThat(SchemaTree.objects()).containsExactlyInAnyOrderElementsOf(described);
  }

  @Test
  void theShellsAreThose() {
    List<List<String>> expected = new ArrayList<>();
    for (String name : Products.shellNames()) {
      ShellSize shell = Products.shell(name).orElseThrow();
      expected.add(row(name, shell.length(), shell.width(), shell.height()));
    }
    assertThat(GUIDE.table("Shells").rows()).containsExactlyElementsOf(expected);
  }

  @Test
  void theProfilesAreThose() {
    List<List<String>> expected = new ArrayList<>();
    for (String name : Products.profileNames()) {
      CorrugationProfile p = Products.profile(name).orElseThrow();
      expected.add(row(name, p.outer(), p.web(), p.inner(), p.depth(), p.pitch()));
    }
    assertThat(GUIDE.table("Profiles").rows()).containsExactlyElementsOf(expected);
  }

  @Test
  void theStudDesignationsAreAllCombinationsOfTheThreeTables() {
    List<Guide.Table> tables = GUIDE.tables("Stud sections");
    List<String> combinations = new ArrayList<>();
    for (List<String> web : tables.get(0).rows()) {
      for (List<String> flange : tables.get(1).rows()) {
        for (List<String> mil : tables.get(2).rows()) {
          String name = name(web) + "S" + name(flange) + "-" + name(mil);
          StudSection stud = Products.stud(name).orElseThrow();
          assertThat(stud.depth()).isCloseTo(millimetres(web), within(1e-6));
          assertThat(stud.flange()).isCloseTo(millimetres(flange), within(1e-6));
          assertThat(stud.thickness()).isCloseTo(millimetres(mil), within(1e-6));
          combinations.add(name);
        }
      }
    }
    assertThat(combinations).containsExactlyInAnyOrderElementsOf(Products.studNames());
  }

  @Test
  void theBoxSizesAreThose() {
    List<List<String>> expected = new ArrayList<>();
    for (String name : Products.boxNames()) {
      Products.BoxSize box = Products.box(name).orElseThrow();
      expected.add(
          List.of(
              "`" + name + "`",
              box.width().text(),
              box.height().text(),
              box.depth().text(),
              box.volume().text()));
    }
    assertThat(GUIDE.table("Box sizes").rows()).containsExactlyElementsOf(expected);
  }

  @Test
  void theTubingSizesAreThose() {
    List<List<String>> expected = new ArrayList<>();
    for (String name : Products.emtNames()) {
      Products.EmtSize size = Products.emt(name).orElseThrow();
      expected.add(List.of("`" + name + "`", size.bore().text(), size.diameter().text()));
    }
    assertThat(GUIDE.table("Tubing sizes").rows()).containsExactlyElementsOf(expected);
  }

  private static void assertFields(List<List<String>> rows, Map<String, Object> object) {
    Map<String, Map<String, Object>> fields = fields(object);
    assertThat(rows)
        .extracting(row -> row.get(0))
        .containsExactlyInAnyOrderElementsOf(
            fields.keySet().stream().map(field -> "`" + field + "`").toList());
    List<Object> required = SchemaTree.list(object.get("required"));
    for (List<String> row : rows) {
      String field = name(row);
      assertThat(row.get(1).equals("yes")).as(field).isEqualTo(required.contains(field));
      assertThat(row.get(2)).as(field).isNotBlank();
      if (!row.get(2).contains("(#named-products)")) {
        assertThat(Guide.code(row.get(2)))
            .as("the words of " + field)
            .containsAll(SchemaTree.words(fields.getOrDefault(field, Map.of())));
      }
    }
  }

  private static Map<String, Map<String, Object>> fields(Map<String, Object> object) {
    Map<String, Map<String, Object>> fields = new LinkedHashMap<>();
    SchemaTree.map(object.get("properties"))
        .forEach((name, schema) -> fields.put(name, SchemaTree.map(schema)));
    assertThat(fields).isNotEmpty();
    return fields;
  }

  private static Plan plan(String json) {
    PlanReading reading =
        new PlanReader().read("guide.json", json.getBytes(StandardCharsets.UTF_8));
    assertThat(reading.faults()).isEmpty();
    return reading.plan().orElseThrow();
  }

  private static List<String> row(String name, double... numbers) {
    List<String> row = new ArrayList<>(List.of("`" + name + "`"));
    for (double number : numbers) {
      boolean whole = number == Math.rint(number);
      row.add(whole ? Long.toString((long) number) : Double.toString(number));
    }
    return row;
  }

  private static String name(List<String> row) {
    return Guide.code(row.get(0)).get(0);
  }

  private static double millimetres(List<String> row) {
    Quantity quantity = ((QuantityParser.Parsed.Ok) QuantityParser.parse(row.get(1))).quantity();
    return quantity.siDouble() * 1000;
  }

  private static Map<String, String> around() {
    Map<String, String> members = new LinkedHashMap<>();
    members.put("format", "\"rimefast-plan-1\"");
    members.put("id", "\"around\"");
    members.put("title", "\"Around\"");
    members.put("units", "\"mm\"");
    members.put("shell", "{\"size\": \"45G1\"}");
    return members;
  }

  private static Map<String, String> objects() {
    Map<String, String> objects = new LinkedHashMap<>();
    objects.put("The plan", "");
    Stream.of("tolerances", "room", "site", "shell", "faces")
        .forEach(name -> objects.put("`" + name + "`", "/properties/" + name));
    objects.put("`inside`", "/properties/shell/properties/inside");
    objects.put("One face", "/$defs/faceBuild");
    objects.put("`foam`", "/$defs/faceBuild/properties/foam");
    objects.put("A profile as measured", "/$defs/profile");
    objects.put("A stud section as measured", "/$defs/studSection/anyOf/1");
    objects.put("`openings`", "/$defs/opening");
    objects.put("`door`", "/$defs/door");
    objects.put("`devices`", "/$defs/device");
    objects.put("`holes`", "/$defs/serviceHole");
    objects.put("`runs`", "/$defs/run");
    objects.put("`path`", "/$defs/pathPoint");
    objects.put("`conductors`", "/$defs/conductors");
    objects.put("`slack`", "/$defs/run/properties/slack");
    objects.put("`circuits`", "/$defs/circuit");
    objects.put("`foaming`", "/properties/foaming");
    objects.put("`readings`", "/$defs/reading");
    objects.put("`repeat`", "/$defs/repeat");
    return objects;
  }

  private static Map<String, String> parts() {
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put("`studs`", "/$defs/stud");
    parts.put("`tracks`", "/$defs/track");
    parts.put("`boxes`", "/$defs/box");
    parts.put("`bars`", "/$defs/bar");
    parts.put("`brackets`", "/$defs/bracket");
    parts.put("`panels`", "/$defs/panel");
    parts.put("`luminaires`", "/$defs/luminaire");
    return parts;
  }
}
