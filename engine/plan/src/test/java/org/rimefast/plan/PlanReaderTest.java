package org.rimefast.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.NullUnmarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimefast.plan.PlanSource.Place;
import org.rimefast.units.Rational;
import org.rimefast.units.Units;

/** A value that is null where a test expects one fails the test. */
@NullUnmarked
class PlanReaderTest {
  static final Path EXAMPLES = Path.of("src/test/resources/org/rimefast/plan/examples");

  static Plan read(String text) {
    PlanReading reading = new PlanReader().read("t", text.getBytes(StandardCharsets.UTF_8));
    assertThat(reading.faults()).isEmpty();
    return reading.plan().orElseThrow();
  }

  static Plan wetLab() throws IOException {
    PlanReading reading = new PlanReader().read(EXAMPLES.resolve("wet-lab.json"));
    assertThat(reading.faults()).isEmpty();
    return reading.plan().orElseThrow();
  }

  private static Part part(Plan plan, String id) {
    return plan.parts().stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
  }

  private static double mm(Amount amount) {
    return amount.millimetres();
  }

  @Test
  void aPlanIsReadWhole() throws IOException {
    Plan plan = wetLab();
    assertThat(plan.id()).isEqualTo("loon-narrows-wet-lab");
    assertThat(plan.title()).isEqualTo("Wet lab (invented)");
    assertThat(plan.units()).isEqualTo(Units.MILLIMETRE);
    assertThat(plan.shell()).isEqualTo(new ShellSize("45G1", 12032, 2350, 2693));
    assertThat(plan.openings()).hasSize(3);
    assertThat(plan.parts()).hasSize(29 + 12 + 1 + 1 + 1 + 2);
    assertThat(plan.runs()).hasSize(1);
    assertThat(mm(plan.tolerances().framing())).isEqualTo(3);
    assertThat(plan.room().temperature().value().text()).isEqualTo("22 degC");
    assertThat(plan.room().temperature().plusMinus().text()).isEqualTo("1 K");
    assertThat(plan.room().humidity().si()).isEqualTo(0.6);
    assertThat(plan.site().outdoorDesignTemperature().si()).isCloseTo(235.15, within(1e-9));
  }

  @Test
  void plainNumbersAreInThePlansUnit() {
    String text =
        """
        {"format": "rimefast-plan-1", "id": "p", "title": "t", "units": "ft",
         "shell": {"inside": {"length": 20, "width": "7 ft 6-1/2 in", "height": 8.5}},
         "bars": [{"id": "B", "face": "left", "along": 4, "up": 1.5, "width": 3e-1}]}
        """;
    Plan plan = read(text);
    assertThat(plan.shell()).isEqualTo(new ShellSize("as given", 6096, 2298.7, 2590.8));
    Part bar = plan.parts().get(0);
    assertThat(bar.along().value().si()).isEqualTo(Rational.of("1.2192"));
    assertThat(bar.along().value().text()).isEqualTo("4 ft");
    assertThat(bar.up().value().text()).isEqualTo("1.5 ft");
    assertThat(bar.width().value().text()).isEqualTo("0.3 ft");
  }

  @Test
  void aLengthMayHaveItsOwnTolerance() throws IOException {
    Amount phase = wetLab().face(Face.RIGHT).phase();
    assertThat(mm(phase)).isEqualTo(55);
    assertThat(phase.plusMinus().text()).isEqualTo("4 mm");
    Amount point = wetLab().runs().get(0).path().get(1).along();
    assertThat(point.value().text()).isEqualTo("400 mm");
    assertThat(point.plusMinus().text()).isEqualTo("2 mm");
  }

  @Test
  void aRowIsWrittenOutWithNumberedIds() throws IOException {
    Plan plan = wetLab();
    Part first = part(plan, "R-1");
    Part third = part(plan, "R-3");
    assertThat(mm(first.along())).isEqualTo(400);
    // 400 mm and two times 44 in of 25.4 mm
    assertThat(third.along().value().si()).isEqualTo(Rational.of("2.6352"));
    assertThat(third.along().value().text()).isEqualTo("2635.2 mm");
    assertThat(third.pointer()).isEqualTo(first.pointer()).isEqualTo("/boxes/0");
    assertThat(part(plan, "SL-28").along().value().text()).isEqualTo("448 in");
    assertThat(plan.openings().get(2).from().value().text()).isEqualTo("23 ft");
    assertThat(plan.openings().get(2).id()).isEqualTo("W-2");
  }

  @Test
  void aRowMayGoUpTheFace() throws IOException {
    Part second = part(wetLab(), "L-2");
    assertThat(mm(second.up())).isEqualTo(1475);
    assertThat(mm(second.along())).isEqualTo(1500);
  }

  @Test
  void aRowOfStudsUpTheFaceTakesItsHolesAlong() {
    Plan plan =
        read(
            """
            {"format": "rimefast-plan-1", "id": "p", "title": "t", "units": "mm",
             "shell": {"size": "22G1"},
             "studs": [{"id": "S", "face": "left", "along": 100, "up": 500, "height": 800,
               "holes": [{"up": 300, "width": 19, "height": 100}],
               "repeat": {"count": 2, "spacing": 900, "direction": "up"}}]}
            """);
    Part.Stud second = (Part.Stud) plan.parts().get(1);
    assertThat(mm(second.up())).isEqualTo(1400);
    assertThat(mm(second.holes().get(0).up())).isEqualTo(1200);
  }

  @Test
  void theSizeOfABoxGivesWhatIsNotGiven() throws IOException {
    Part receptacle = part(wetLab(), "R-1");
    assertThat(receptacle.width().value().text()).isEqualTo("2 in");
    assertThat(receptacle.height().value().text()).isEqualTo("3 in");
    assertThat(mm(receptacle.depth())).isCloseTo(63.5, within(1e-9));
    Part junction = part(wetLab(), "J1");
    assertThat(junction.width().value().text()).isEqualTo("4 in");
    assertThat(junction.depth().value().text()).isEqualTo("60 mm");
  }

  @Test
  void whatIsNotGivenStaysUnknown() throws IOException {
    Part.Box box = (Part.Box) part(wetLab(), "X");
    assertThat(box.size()).isNull();
    assertThat(box.width()).isNull();
    assertThat(box.depth()).isNull();
    assertThat(box.along()).isNull();
    assertThat(box.mount()).isNull();
    assertThat(box.material()).isNull();
    FaceBuild rear = wetLab().face(Face.REAR);
    assertThat(rear.profile()).isNull();
    assertThat(rear.phase()).isNull();
  }

  @Test
  void aPlanOfBareBasicsHasNoOtherValues() {
    Plan plan =
        read(
            """
            {"format": "rimefast-plan-1", "id": "p", "title": "t", "units": "mm",
             "shell": {"size": "22G1"}}
            """);
    assertThat(plan.tolerances()).isEqualTo(Tolerances.NONE);
    assertThat(plan.room()).isEqualTo(new Room("/room", null, null, null));
    assertThat(plan.site()).isEqualTo(new Site("/site", null, null));
    for (Face face : Face.values()) {
      assertThat(plan.face(face))
          .isEqualTo(
              new FaceBuild(
                  face,
                  "/faces/default",
                  null,
                  FaceBuild.Ribs.UPRIGHT,
                  null,
                  null,
                  null,
                  null,
                  null,
                  null));
    }
  }

  @Test
  void aFaceTakesFromTheDefaultWhatItsEntryLacks() throws IOException {
    Plan plan = wetLab();
    assertThat(plan.face(Face.LEFT).pointer()).isEqualTo("/faces/left");
    assertThat(plan.face(Face.REAR).pointer()).isEqualTo("/faces/default");
    assertThat(mm(plan.face(Face.LEFT).standoff())).isEqualTo(25);
    assertThat(mm(plan.face(Face.FLOOR).standoff())).isEqualTo(0);
    assertThat(plan.face(Face.LEFT).foam().kind()).isEqualTo(FaceBuild.Foam.Kind.CLOSED_CELL);
    assertThat(plan.face(Face.ROOF).stud().name()).isEqualTo("as given");
    assertThat(plan.face(Face.ROOF).stud().depth()).isCloseTo(92.075, within(1e-9));
  }

  @Test
  void aStudHasItsOwnSectionOrItsFaces() throws IOException {
    assertThat(((Part.Stud) part(wetLab(), "SL-1")).section().name()).isEqualTo("162S125-33");
    assertThat(((Part.Stud) part(wetLab(), "SR")).section().name()).isEqualTo("362S162-43");
  }

  @Test
  void theInsideAsMeasuredCountsBeforeTheSizeCode() {
    Plan plan =
        read(
            """
            {"format": "rimefast-plan-1", "id": "p", "title": "t", "units": "mm",
             "shell": {"size": "45G1", "inside": {"length": 12020, "width": 2345, "height": 2690}}}
            """);
    assertThat(plan.shell()).isEqualTo(new ShellSize("45G1", 12020, 2345, 2690));
  }

  @Test
  void everyValueHasItsLineAndColumn() {
    // Counted by hand; the second title line holds signs of two, three and four bytes.
    String text =
        "{\n" // 1
            + "\t\"format\": \"rimefast-plan-1\", \"id\": \"p\",\n" // 2
            + "  \"title\": \"\u00b1 \u2264 \ud83d\ude00\", \"units\": \"mm\",\r\n" // 3
            + "  \"shell\": {\"size\":\r" // 4
            + "    \"22G1\"},\n" // 5
            + "  \"bars\": [ {\"id\": \"B\", \"face\": \"left\", \"along\": 400},\n" // 6
            + "    {\"id\": \"C\", \"face\": \"left\",\n" // 7
            + "     \"along\":\t-0.5e1 } ]\n" // 8: outside the face
            + "}\n";
    PlanReading reading = new PlanReader().read("t", text.getBytes(StandardCharsets.UTF_8));
    assertThat(reading.faults()).hasSize(1);
    assertThat(reading.faults().get(0).place()).isEqualTo(new Place(7, 5));
    assertThat(reading.faults().get(0).pointer()).isEqualTo("/bars/1");

    PlanSource source = read(text.replace("-0.5e1", "0.5e1 ")).source();
    assertThat(source.placeOf("")).isEqualTo(new Place(1, 1));
    assertThat(source.placeOf("/format")).isEqualTo(new Place(2, 12));
    assertThat(source.placeOf("/id")).isEqualTo(new Place(2, 37));
    assertThat(source.placeOf("/title")).isEqualTo(new Place(3, 12));
    assertThat(source.placeOf("/units")).isEqualTo(new Place(3, 30));
    assertThat(source.placeOf("/shell")).isEqualTo(new Place(4, 12));
    assertThat(source.placeOf("/shell/size")).isEqualTo(new Place(5, 5));
    assertThat(source.placeOf("/bars")).isEqualTo(new Place(6, 11));
    assertThat(source.placeOf("/bars/0")).isEqualTo(new Place(6, 13));
    assertThat(source.placeOf("/bars/0/along")).isEqualTo(new Place(6, 50));
    assertThat(source.placeOf("/bars/1/along")).isEqualTo(new Place(8, 15));
    assertThat(source.placeOf("/bars/1/depth")).isEqualTo(new Place(7, 5));
    assertThat(source.places()).hasSize(16);
  }

  /** The parser's own character positions and pointers, taken from a text instead of bytes. */
  @Test
  void everyPlaceIsWhereAnotherParserFindsIt() throws IOException {
    String text = Files.readString(EXAMPLES.resolve("wet-lab.json"));
    Map<String, Place> expected = new HashMap<>();
    try (JsonParser parser = new JsonFactory().createParser(text)) {
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        if (token != JsonToken.FIELD_NAME && !token.isStructEnd()) {
          JsonLocation at = parser.currentTokenLocation();
          JsonStreamContext context = parser.getParsingContext();
          expected.put(
              pointer(token.isStructStart() ? context.getParent() : context),
              new Place(at.getLineNr(), at.getColumnNr()));
        }
      }
    }
    assertThat(wetLab().source().places()).isEqualTo(expected).hasSizeGreaterThan(150);
  }

  private static String pointer(JsonStreamContext context) {
    return context.pathAsPointer().toString();
  }

  @Test
  void aByteOrderMarkIsPassedOver() {
    String text =
        "\ufeff{\"format\": \"rimefast-plan-1\", \"id\": \"p\", \"title\": \"t\","
            + " \"units\": \"mm\", \"shell\": {\"size\": \"22G1\"}}";
    assertThat(read(text).source().placeOf("/format")).isEqualTo(new Place(1, 12));
    PlanReading broken =
        new PlanReader().read("t", "\ufeff{\"format\": nul}".getBytes(StandardCharsets.UTF_8));
    assertThat(broken.faults().get(0).place()).isEqualTo(new Place(1, 12));
  }

  @Test
  void theSourceHasTheHashOfTheBytes() throws IOException, NoSuchAlgorithmException {
    byte[] bytes = Files.readAllBytes(EXAMPLES.resolve("wet-lab.json"));
    PlanSource source = new PlanReader().read("wet-lab.json", bytes).plan().orElseThrow().source();
    assertThat(source.name()).isEqualTo("wet-lab.json");
    assertThat(source.hash())
        .isEqualTo(HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)))
        .hasSize(64);
  }

  @Test
  void bytesChangedAfterReadingDoNotMovePlaces() throws IOException {
    byte[] bytes = Files.readAllBytes(EXAMPLES.resolve("wet-lab.json"));
    PlanSource source = new PlanReader().read("t", bytes).plan().orElseThrow().source();
    java.util.Arrays.fill(bytes, (byte) ' ');
    assertThat(source.placeOf("/id")).isEqualTo(new Place(3, 9));
  }

  @Test
  void sameContentDoesNotLookAtTheSource() throws IOException {
    Plan plan = wetLab();
    Plan renamed = plan.withSource(new PlanSource("other", "", Map.of()));
    assertThat(plan.sameContent(renamed)).isTrue();
    assertThat(plan).isNotEqualTo(renamed);
    Plan other =
        new Plan(
            plan.id(),
            "Another title",
            plan.units(),
            plan.tolerances(),
            plan.room(),
            plan.site(),
            plan.shell(),
            plan.faces(),
            plan.openings(),
            plan.parts(),
            plan.runs(),
            plan.source());
    assertThat(plan.sameContent(other)).isFalse();
  }

  @Test
  void twoReadingsOfTheSameBytesAreEqual() throws IOException {
    assertThat(wetLab()).isEqualTo(wetLab()).hasSameHashCodeAs(wetLab());
  }

  @Test
  void moreFaultsThanTheLimitAreCounted() {
    StringBuilder text = new StringBuilder("{\"format\": \"rimefast-plan-1\"");
    for (int i = 0; i < 50; i++) {
      text.append(", \"x").append(i).append("\": 1");
    }
    PlanLimits limits = new PlanLimits(1_000_000, 32, 100, 100, 10);
    PlanReading reading =
        new PlanReader(limits)
            .read("t", text.append("}").toString().getBytes(StandardCharsets.UTF_8));
    List<PlanFault> faults = reading.faults();
    assertThat(faults).hasSize(11);
    assertThat(faults.get(10).code()).isEqualTo("more-faults");
    // 50 unknown fields and 4 missing ones, of which 10 are listed
    assertThat(faults.get(10).message()).startsWith("44 more faults");
  }

  @Test
  void aFileIsReadByItsPath(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("plan.json");
    Files.writeString(file, "{}");
    PlanReading reading = new PlanReader().read(file);
    assertThat(reading.faults()).extracting(PlanFault::code).containsOnly("missing-field");
    assertThat(new PlanReader(new PlanLimits(1, 1, 1, 1, 1)).read(file).faults())
        .extracting(PlanFault::code)
        .containsExactly("too-large");
  }
}
