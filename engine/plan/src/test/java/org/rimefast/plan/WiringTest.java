package org.rimefast.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import org.junit.jupiter.api.Test;
import org.rimefast.plan.BoxFittings.Device;
import org.rimefast.plan.RunBuild.Conductors;
import org.rimefast.units.Units;

/** What runs are made of, what boxes hold, circuits, doors and the foam gun. */
@NullUnmarked
class WiringTest {
  private static final double CUBIC_INCH = 0.0254 * 0.0254 * 0.0254;

  private static final String WIRED =
      """
      {"format": "rimefast-plan-1", "id": "p", "title": "Small plan (invented)", "units": "mm",
       "shell": {"size": "45G1"},
       "openings": [{"id": "D", "face": "right", "from": 900, "sill": 0, "width": 900, "height": 2000,
         "door": {"hinge": "left", "opens": "inward"}}],
       "studs": [{"id": "S", "face": "left", "along": 200, "holes": [
         {"up": 300, "width": 19, "height": 38, "insert": "bushing", "plate": "1/16 in"},
         {"up": 900, "width": 19, "height": 38, "insert": "none", "plate": 0}]}],
       "boxes": [
         {"id": "R", "kind": "device", "face": "left", "size": "3 x 2 x 2-1/2 in", "along": 500,
          "devices": [{"kind": "receptacle", "count": 2, "behind": "1 in"}, {"kind": "switch", "count": 1}],
          "clamps": "internal", "fixtureStuds": 1, "wireConnectors": 3,
          "repeat": {"count": 2, "spacing": 400}},
         {"id": "J", "kind": "junction", "face": "left", "size": "4 x 4 x 1-1/2 in", "volume": "300 cm3",
          "devices": [], "clamps": "none"}],
       "panels": [{"id": "LP1", "face": "left"}],
       "runs": [
         {"id": "C", "kind": "metal-clad-cable", "armour": "smooth", "bendRadius": 90, "circuit": "K",
          "from": "LP1", "fromSide": "below", "fromConnector": "metal",
          "to": "R-2", "toSide": "back", "toConnector": "insulating",
          "conductors": [{"size": "12 AWG", "count": 2, "use": "current-carrying", "rating": "90 degC"},
                         {"size": "14 AWG", "count": 1, "use": "bonding"}],
          "supports": [0, 250.5], "slack": {"from": 300, "to": 150, "corners": 50},
          "path": [{"face": "left", "along": 1, "up": 1, "depth": 1},
                   {"face": "left", "along": 1, "up": 900, "depth": 1, "bend": 40},
                   {"face": "left", "along": 400, "up": 900, "depth": 1}]},
         {"id": "E", "kind": "emt", "size": "3/4 in EMT", "conductors": [],
          "path": [{"face": "left", "along": 1, "up": 1, "depth": 1},
                   {"face": "left", "along": 9, "up": 1, "depth": 1}]}],
       "circuits": [{"id": "K", "panel": "LP1", "breaker": "20 A", "voltage": "120 V", "load": "16 A",
         "terminals": "75 degC"}],
       "foaming": {"nozzle": "50 mm", "reach": "400 mm"}}
      """;

  private static PlanBuilder wired() {
    return Plan.builder("p", "Small plan (invented)", Units.MILLIMETRE)
        .shell("45G1")
        .opening("D", Face.RIGHT, 900, 0, 900, 2000, new Door(Door.Hinge.LEFT, Door.Swing.INWARD))
        .stud(
            "S",
            Face.LEFT,
            s ->
                s.along(200)
                    .hole("300 mm", "19 mm", "38 mm", h -> h.bushing(true).plate("1/16 in"))
                    .hole(900, 19, 38, h -> h.bushing(false).plate(0)))
        .box(
            "R",
            Part.Box.Kind.DEVICE,
            Face.LEFT,
            b ->
                b.size("3 x 2 x 2-1/2 in")
                    .along(500)
                    .devices(Device.Kind.RECEPTACLE, 2, "1 in")
                    .devices(Device.Kind.SWITCH, 1)
                    .clamps(true)
                    .fixtureStuds(1)
                    .wireConnectors(3)
                    .repeat(2, 400.0))
        .box(
            "J",
            Part.Box.Kind.JUNCTION,
            Face.LEFT,
            b -> b.size("4 x 4 x 1-1/2 in").volume("300 cm3").noDevices().clamps(false))
        .panel("LP1", Face.LEFT, p -> {})
        .run(
            "C",
            Run.Kind.METAL_CLAD_CABLE,
            r ->
                r.armour(RunBuild.Armour.SMOOTH)
                    .bendRadius(90)
                    .circuit("K")
                    .from("LP1")
                    .fromSide(RunBuild.Side.BELOW)
                    .fromConnector(RunBuild.Connector.METAL)
                    .to("R-2")
                    .toSide(RunBuild.Side.BACK)
                    .toConnector(RunBuild.Connector.INSULATING)
                    .conductors("12 AWG", 2, Conductors.Use.CURRENT_CARRYING, "90 degC")
                    .conductors("14 AWG", 1, Conductors.Use.BONDING)
                    .supports(0, 250.5)
                    .fromSlack(300)
                    .toSlack(150)
                    .cornerSlack(50)
                    .point(Face.LEFT, 1, 1, 1)
                    .point(Face.LEFT, 1, 900, 1, 40)
                    .point(Face.LEFT, 400, 900, 1))
        .run(
            "E",
            Run.Kind.EMT,
            r ->
                r.size("3/4 in EMT")
                    .noConductors()
                    .point(Face.LEFT, 1, 1, 1)
                    .point(Face.LEFT, 9, 1, 1))
        .circuit(
            "K",
            c -> c.panel("LP1").breaker("20 A").voltage("120 V").load("16 A").terminals("75 degC"))
        .foamNozzle("50 mm")
        .foamReach("400 mm");
  }

  private static Plan read() {
    return PlanReaderTest.read(WIRED);
  }

  private static Part.Box box(Plan plan, String id) {
    return (Part.Box)
        plan.parts().stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void theBuiltPlanIsTheOneThatIsRead() {
    PlanReading built = wired().build();
    assertThat(built.faults()).isEmpty();
    assertThat(built.plan().orElseThrow())
        .isEqualTo(read().withSource(built.plan().get().source()));
  }

  @Test
  void whatIsWrittenReadsBackTheSameAndIsValid() {
    String written = new String(PlanWriter.write(read()), StandardCharsets.UTF_8);
    assertThat(PlanReaderTest.read(written).sameContent(read())).isTrue();
    assertThat(PlanSchemaTest.complaints(written)).isEmpty();
    assertThat(PlanSchemaTest.complaints(WIRED)).isEmpty();
    assertThat(written)
        .contains("\"size\": \"3/4 in EMT\"")
        .doesNotContain("\"bore\"")
        .contains("\"volume\": \"300 cm3\"")
        .doesNotContain("12.5 in3")
        .contains("250.5");
  }

  @Test
  void aRunKnowsWhatItIsMadeOf() {
    Run run = read().runs().get(0);
    RunBuild build = run.build();
    assertThat(build.armour()).isEqualTo(RunBuild.Armour.SMOOTH);
    assertThat(build.circuit()).isEqualTo("K");
    assertThat(build.bendRadius().millimetres()).isEqualTo(90);
    assertThat(build.bore()).isNull();
    assertThat(run.path().get(0).bend()).isNull();
    assertThat(run.path().get(1).bend().millimetres()).isEqualTo(40);
    assertThat(build.first().side()).isEqualTo(RunBuild.Side.BELOW);
    assertThat(build.first().connector()).isEqualTo(RunBuild.Connector.METAL);
    assertThat(build.first().slack().millimetres()).isEqualTo(300);
    assertThat(build.last().side()).isEqualTo(RunBuild.Side.BACK);
    assertThat(build.last().connector()).isEqualTo(RunBuild.Connector.INSULATING);
    assertThat(build.last().slack().millimetres()).isEqualTo(150);
    assertThat(build.cornerSlack().millimetres()).isEqualTo(50);
    assertThat(build.supports()).extracting(Amount::millimetres).containsExactly(0.0, 250.5);
    Conductors first = build.conductors().get(0);
    assertThat(first.pointer()).isEqualTo("/runs/0/conductors/0");
    assertThat(first.gauge()).isEqualTo(12);
    assertThat(first.count()).isEqualTo(2);
    assertThat(first.use()).isEqualTo(Conductors.Use.CURRENT_CARRYING);
    assertThat(first.rating().si()).isCloseTo(363.15, within(1e-9));
    assertThat(build.conductors().get(1).use()).isEqualTo(Conductors.Use.BONDING);
  }

  @Test
  void theTradeSizeOfTubingGivesBoreAndDiameterUnlessTheyAreGiven() {
    Run tubing = read().runs().get(1);
    assertThat(tubing.build().bore().millimetres()).isCloseTo(0.824 * 25.4, within(1e-9));
    assertThat(tubing.diameter().millimetres()).isCloseTo(0.922 * 25.4, within(1e-9));
    assertThat(tubing.build().conductors()).isEmpty();
    Run own =
        PlanReaderTest.read(
                WIRED.replace(
                    "\"size\": \"3/4 in EMT\"",
                    "\"size\": \"3/4 in EMT\", \"bore\": 20, \"diameter\": 23"))
            .runs()
            .get(1);
    assertThat(own.build().bore().millimetres()).isEqualTo(20);
    assertThat(own.diameter().millimetres()).isEqualTo(23);
  }

  @Test
  void aBoxKnowsWhatItHoldsAndSoDoesEveryOneOfItsRow() {
    BoxFittings fittings = box(read(), "R-1").fittings();
    assertThat(fittings.volume().si()).isCloseTo(12.5 * CUBIC_INCH, within(1e-12));
    assertThat(fittings.devices())
        .extracting(Device::kind)
        .containsExactly(Device.Kind.RECEPTACLE, Device.Kind.SWITCH);
    assertThat(fittings.devices()).extracting(Device::count).containsExactly(2, 1);
    assertThat(fittings.devices().get(0).behind().millimetres()).isEqualTo(25.4);
    assertThat(fittings.clamps()).isTrue();
    assertThat(fittings.fixtureStuds()).isEqualTo(1);
    assertThat(fittings.wireConnectors()).isEqualTo(3);
    assertThat(box(read(), "R-2").fittings()).isEqualTo(fittings);
  }

  @Test
  void theMarkedVolumeCountsAndNoDevicesIsNotUnknown() {
    BoxFittings junction = box(read(), "J").fittings();
    assertThat(junction.volume().si()).isCloseTo(300e-6, within(1e-15));
    assertThat(junction.devices()).isEmpty();
    assertThat(junction.clamps()).isFalse();
    assertThat(junction.fixtureStuds()).isNull();
  }

  @Test
  void holesDoorsCircuitsAndTheFoamGunAreRead() {
    Plan plan = read();
    List<Part.ServiceHole> holes = ((Part.Stud) plan.parts().get(0)).holes();
    assertThat(holes).extracting(Part.ServiceHole::insert).containsExactly(true, false);
    assertThat(holes.get(0).plate().millimetres()).isEqualTo(1.5875);
    assertThat(holes.get(1).plate().millimetres()).isZero();
    assertThat(plan.openings().get(0).door())
        .isEqualTo(new Door(Door.Hinge.LEFT, Door.Swing.INWARD));
    Circuit circuit = plan.circuits().get(0);
    assertThat(circuit.pointer()).isEqualTo("/circuits/0");
    assertThat(circuit.panel()).isEqualTo("LP1");
    assertThat(circuit.breaker().si()).isEqualTo(20);
    assertThat(circuit.voltage().si()).isEqualTo(120);
    assertThat(circuit.load().si()).isEqualTo(16);
    assertThat(circuit.terminals().si()).isCloseTo(348.15, within(1e-9));
    assertThat(plan.foaming().nozzle().millimetres()).isEqualTo(50);
    assertThat(plan.foaming().reach().millimetres()).isEqualTo(400);
  }

  @Test
  void whatIsNotGivenStaysUnknown() {
    Plan plan =
        PlanReaderTest.read(
            """
            {"format": "rimefast-plan-1", "id": "p", "title": "t", "units": "mm",
             "shell": {"size": "22G1"}, "foaming": {},
             "openings": [{"id": "D", "face": "left", "from": 0, "sill": 0, "width": 9, "height": 9}],
             "boxes": [{"id": "B", "kind": "device", "face": "left"}],
             "runs": [{"id": "C", "kind": "emt", "slack": {}, "path": [{"face": "left"}, {"face": "left"}]}],
             "circuits": [{"id": "K"}]}
            """);
    assertThat(plan.foaming()).isEqualTo(Foaming.UNKNOWN);
    assertThat(plan.openings().get(0).door()).isNull();
    assertThat(box(plan, "B").fittings()).isEqualTo(BoxFittings.UNKNOWN);
    assertThat(plan.runs().get(0).build()).isEqualTo(RunBuild.UNKNOWN);
    assertThat(plan.circuits().get(0))
        .isEqualTo(new Circuit("K", "/circuits/0", null, null, null, null, null));
  }

  @Test
  void conductorsAndCircuitsCountAsElements() {
    PlanReading reading =
        new PlanReader(new PlanLimits(1 << 20, 50, 1 << 10, 100, 10))
            .read(
                "t",
                WIRED
                    .replace("\"count\": 2, \"use\"", "\"count\": 95, \"use\"")
                    .getBytes(StandardCharsets.UTF_8));
    assertThat(reading.faults()).extracting(PlanFault::code).contains("too-large");
    assertThat(reading.plan()).isEmpty();
  }
}
