package org.rimefast.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimefast.plan.PlanEdit.Value.Kind;

class PlanEditsTest {
  private static final String PLAN =
      """
      {
        "format": "rimefast-plan-1", "id": "small", "title": "Small (invented)", "units": "mm",
        "room": {"humidity": "60 %"},
        "shell": {"size": "45G1"},
        "faces": {"default": {"standoff": 25}, "left": {"foam": {"thickness": 50}}},
        "studs": [
          {"id": "S", "face": "left", "along": "16 in", "repeat": {"count": 3, "spacing": "16 in"}}
        ],
        "boxes": [
          {"id": "R-1", "kind": "device", "face": "left", "along": 1720, "depth": 47.6},
          {"id": "R-2", "kind": "device", "face": "left", "along": 1326}
        ]
      }
      """;

  @Test
  void aPlanWithoutEditsReadsAsBefore() {
    assertThat(plan(List.of()).parts()).isEqualTo(read(PLAN).parts());
  }

  @Test
  void aFieldOfAnElementIsSetOrMade() {
    Plan plan =
        plan(
            List.of(
                set("along", "R-1", Kind.TEXT, "50 in"),
                set("depth", "R-2", Kind.NUMBER, "38.5"),
                set("depth", "R-1", Kind.NUMBER, "1-7/8 in")));
    assertThat(si(part(plan, "R-1").along())).isEqualTo(1.27);
    assertThat(si(part(plan, "R-2").depth())).isEqualTo(0.0385);
    assertThat(si(part(plan, "R-1").depth())).isEqualTo(0.047625);
  }

  @Test
  void aFieldWithinAFieldIsNamedInWords() {
    Plan plan =
        plan(
            List.of(
                set("foam thickness", "left wall", Kind.TEXT, "3 in"),
                set("foam kind", "right wall", Kind.TEXT, "fibrous"),
                set("lining", "roof", Kind.NUMBER, "12.7"),
                set("humidity", "room", Kind.TEXT, "35 %")));
    assertThat(si(foam(plan, Face.LEFT).thickness())).isEqualTo(0.0762);
    assertThat(foam(plan, Face.RIGHT).kind()).isEqualTo(FaceBuild.Foam.Kind.FIBROUS);
    assertThat(si(plan.face(Face.ROOF).lining())).isEqualTo(0.0127);
    assertThat(si(plan.face(Face.ROOF).standoff())).isEqualTo(0.025);
    assertThat(si(plan.room().humidity())).isEqualTo(0.35);
  }

  private static final String WIRED =
      """
      {
        "format": "rimefast-plan-1", "id": "wired", "title": "Wired (invented)", "units": "mm",
        "shell": {"size": "45G1"},
        "boxes": [{"id": "B", "kind": "device", "face": "left",
                   "devices": [{"kind": "switch"}], "repeat": {"count": 2, "spacing": 400}, "along": 500}],
        "openings": [{"id": "D", "face": "right", "from": 900, "sill": 0, "width": 900, "height": 2000}],
        "runs": [{"id": "C1", "kind": "metal-clad-cable", "conductors": [{"size": "14 AWG"}],
                  "path": [{"face": "left", "along": 1, "up": 1}, {"face": "left", "along": 1, "up": 9}]}],
        "circuits": [{"id": "L1", "breaker": "15 A"}]
      }
      """;

  private static Plan wired(PlanEdit... edits) {
    PlanEdits.Edited edited = PlanEdits.apply(utf8(WIRED), List.of(edits));
    assertThat(edited.faults()).isEmpty();
    return read(new String(edited.plan().orElseThrow(), StandardCharsets.UTF_8));
  }

  @Test
  void whatRunsCircuitsAndDoorsAreMadeOfIsSetInWords() {
    Plan plan =
        wired(
            set("breaker", "L1", Kind.TEXT, "20 A"),
            set("circuit", "C1", Kind.TEXT, "L1"),
            set("bend radius", "C1", Kind.TEXT, "4 in"),
            set("slack from", "C1", Kind.NUMBER, "300"),
            set("slack corners", "C1", Kind.TEXT, "2 in"),
            set("/runs/0/slack/to", Kind.NUMBER, "150"),
            set("/runs/0/path/1/bend", Kind.NUMBER, "40"),
            set("supports", "C1", Kind.JSON, "[100, 200]"),
            set("door", "D", Kind.JSON, "{\"hinge\": \"left\", \"opens\": \"inward\"}"),
            set("door opens", "D", Kind.TEXT, "outward"),
            set("/foaming/nozzle", Kind.NUMBER, "50"));
    assertThat(si(plan.circuits().get(0).breaker())).isEqualTo(20);
    RunBuild build = plan.runs().get(0).build();
    assertThat(build.circuit()).isEqualTo("L1");
    assertThat(si(build.bendRadius())).isEqualTo(0.1016);
    assertThat(si(build.first().slack())).isEqualTo(0.3);
    assertThat(si(build.last().slack())).isEqualTo(0.15);
    assertThat(si(build.cornerSlack())).isEqualTo(0.0508);
    assertThat(build.supports()).hasSize(2);
    assertThat(si(plan.runs().get(0).path().get(1).bend())).isEqualTo(0.04);
    assertThat(plan.openings().get(0).door())
        .isEqualTo(new Door(Door.Hinge.LEFT, Door.Swing.OUTWARD));
    assertThat(si(plan.foaming().nozzle())).isEqualTo(0.05);
  }

  @Test
  void conductorsAndCircuitsAreTakenAway() {
    Plan plan = wired(remove("conductors", "C1"), remove("L1"));
    assertThat(plan.runs().get(0).build().conductors()).isNull();
    assertThat(plan.circuits()).isEmpty();
  }

  @Test
  void oneBoxOfARowHoldsOtherThings() {
    Plan plan =
        wired(
            set("devices", "B-2", Kind.JSON, "[]"),
            set("wire connectors", "B-2", Kind.NUMBER, "3"));
    BoxFittings first = ((Part.Box) part(plan, "B-1")).fittings();
    BoxFittings second = ((Part.Box) part(plan, "B-2")).fittings();
    assertThat(first.devices()).hasSize(1);
    assertThat(first.wireConnectors()).isNull();
    assertThat(second.devices()).isEmpty();
    assertThat(second.wireConnectors()).isEqualTo(3);
  }

  @Test
  void aPlaceIsNamedByItsPointerAndObjectsOnTheWayAreMade() {
    Plan plan =
        plan(
            List.of(
                set("/site/outdoorDesignTemperature", Kind.TEXT, "-38 degC"),
                set("/boxes/1/along", Kind.NUMBER, "900"),
                set(
                    "/boxes/-",
                    Kind.JSON,
                    "{\"id\": \"R-3\", \"kind\": \"device\", \"face\": \"left\"}")));
    assertThat(si(plan.site().outdoorDesignTemperature())).isEqualTo(273.15 - 38, within());
    assertThat(si(part(plan, "R-2").along())).isEqualTo(0.9);
    assertThat(part(plan, "R-3").along()).isNull();
  }

  @Test
  void whatIsTakenAwayIsGone() {
    Plan plan =
        plan(
            List.of(
                remove("depth", "R-1"),
                remove("R-2"),
                remove("/faces/left/foam"),
                remove("/room")));
    assertThat(part(plan, "R-1").depth()).isNull();
    assertThat(plan.parts()).extracting(Part::id).doesNotContain("R-2");
    assertThat(plan.face(Face.LEFT).foam()).isNull();
    assertThat(plan.room().humidity()).isNull();
  }

  @Test
  void entriesAreAddedToAListThatMayNotBeThere() {
    Plan plan =
        plan(
            List.of(
                new PlanEdit.Add(
                    "boxes", "{\"id\": \"R-9\", \"kind\": \"device\", \"face\": \"left\"}"),
                new PlanEdit.Add(
                    "panels",
                    "[{\"id\": \"P\", \"face\": \"left\"}, {\"id\": \"Q\", \"face\": \"left\"}]")));
    assertThat(plan.parts()).extracting(Part::id).contains("R-1", "R-2", "R-9", "P", "Q");
  }

  @Test
  void oneItemOfARowIsChangedAndTheOthersStay() {
    Plan plan = plan(List.of(set("along", "S-2", Kind.TEXT, "900 mm"), remove("S-3")));
    assertThat(plan.parts()).extracting(Part::id).containsExactly("S-1", "S-2", "R-1", "R-2");
    // 16 in = 406.4 mm
    assertThat(si(part(plan, "S-1").along())).isEqualTo(0.4064);
    assertThat(si(part(plan, "S-2").along())).isEqualTo(0.9);
    Plan split = plan(List.of(set("front", "S-1", Kind.NUMBER, "3")));
    assertThat(si(part(split, "S-3").along())).isEqualTo(3 * 0.4064, within());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          R-3        | along | The plan has no element "R-3".               | Did you mean "R-1"?
          nobody     | along | The plan has no element "nobody".            | Name an element by its id, or a face, or room.
          S-4        | along | The plan has no element "S-4".               | Did you mean "S-1"?
          R-2        | depth | "R-2" has no depth of its own to take away.  | Take this edit out, or name a field that it has.
          right wall | lining| "right wall" has no lining of its own to take away. | What stands for all faces is at "/faces/default".
          left wall  | foam kind| "left wall" has no foam kind of its own to take away. | What stands for all faces is at "/faces/default".
          """)
  void whatIsNotThereCannotBeTakenAway(String id, String field, String message, String remedy) {
    PlanEdits.Edited edited = PlanEdits.apply(utf8(PLAN), List.of(remove(field, id)));
    assertThat(edited.plan()).isEmpty();
    assertThat(edited.faults()).containsExactly(new PlanEdits.Fault(0, message, remedy));
  }

  @ParameterizedTest
  @CsvSource({
    "/boxes/2",
    "/boxes/01",
    "/boxes/x",
    "/nothing/at/all",
    "/id/x",
    "/boxes/0/nothing",
    "/room/use"
  })
  void aPointerThatLeadsNowhereIsAFault(String pointer) {
    assertThat(PlanEdits.apply(utf8(PLAN), List.of(remove(pointer))).faults())
        .singleElement()
        .satisfies(fault -> assertThat(fault.message()).startsWith("The plan has nothing at \"/"));
  }

  @Test
  void everyEditThatCannotBeMadeIsTold() {
    PlanEdits.Edited edited =
        PlanEdits.apply(
            utf8(PLAN),
            List.of(
                remove("nobody"),
                set("along", "R-1", Kind.NUMBER, "3"),
                new PlanEdit.Add("boxes", "{\"id\": "),
                new PlanEdit.Add("boxes", "3"),
                new PlanEdit.Add("shell", "{}"),
                new PlanEdit.Add("boxes", ""),
                new PlanEdit.Add("boxes", "{\"id\": \"a\", \"id\": \"b\"}"),
                set("R-1", Kind.NUMBER, "3"),
                remove("roof")));
    assertThat(edited.plan()).isEmpty();
    assertThat(edited.faults())
        .extracting(PlanEdits.Fault::edit)
        .containsExactly(0, 2, 3, 4, 5, 6, 7, 8);
    assertThat(edited.faults().get(1).message())
        .startsWith("What stands between the triple quotes is no JSON (line 1 of it): ");
    assertThat(edited.faults().get(3).message()).isEqualTo("\"shell\" is no list of the plan.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {"id": "a"   | The plan cannot be read (line 1):
          []           | The plan is no JSON object.
          {"a": {"b": 1, "b": 2}} | The plan has a name twice in one object, at /a.
          {"b": 1, "b": 2} | The plan has a name twice in one object.
          """)
  void aPlanThatCannotBeEditedIsOneFault(String plan, String message) {
    PlanEdits.Edited edited = PlanEdits.apply(utf8(plan), List.of(remove("R-1")));
    assertThat(edited.faults())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.edit()).isEqualTo(-1);
              assertThat(fault.message()).startsWith(message);
            });
  }

  @Test
  void aRowOfAFaultyPlanIsNotSplit() {
    String faulty = PLAN.replace("\"45G1\"", "\"no such shell\"");
    assertThat(PlanEdits.apply(utf8(faulty), List.of(remove("S-1"))).faults())
        .extracting(PlanEdits.Fault::message)
        .containsExactly("The row \"S\" cannot be split, because the plan has faults.");
  }

  private static double si(@Nullable Amount amount) {
    return Objects.requireNonNull(amount).si();
  }

  private static FaceBuild.Foam foam(Plan plan, Face face) {
    return Objects.requireNonNull(plan.face(face).foam());
  }

  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.data.Offset.offset(1e-12);
  }

  private static PlanEdit set(String field, String id, Kind kind, String text) {
    return new PlanEdit.Set(
        new PlanEdit.Target(Optional.of(field), id), new PlanEdit.Value(kind, text));
  }

  private static PlanEdit set(String pointer, Kind kind, String text) {
    return new PlanEdit.Set(
        new PlanEdit.Target(Optional.empty(), pointer), new PlanEdit.Value(kind, text));
  }

  private static PlanEdit remove(String field, String id) {
    return new PlanEdit.Remove(new PlanEdit.Target(Optional.of(field), id));
  }

  private static PlanEdit remove(String name) {
    return new PlanEdit.Remove(new PlanEdit.Target(Optional.empty(), name));
  }

  private static Part part(Plan plan, String id) {
    return plan.parts().stream().filter(part -> part.id().equals(id)).findFirst().orElseThrow();
  }

  private static Plan plan(List<PlanEdit> edits) {
    PlanEdits.Edited edited = PlanEdits.apply(utf8(PLAN), edits);
    assertThat(edited.faults()).isEmpty();
    return read(new String(edited.plan().orElseThrow(), StandardCharsets.UTF_8));
  }

  private static Plan read(String text) {
    PlanReading reading = new PlanReader().read("small.json", utf8(text));
    assertThat(reading.faults()).isEmpty();
    return reading.plan().orElseThrow();
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
