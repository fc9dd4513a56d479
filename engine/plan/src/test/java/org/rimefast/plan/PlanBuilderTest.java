package org.rimefast.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.rimefast.units.Unit;
import org.rimefast.units.Units;

class PlanBuilderTest {
  private static PlanBuilder small() {
    return Plan.builder("p", "Small plan (invented)", Units.MILLIMETRE).shell("45G1");
  }

  private static Plan built(PlanBuilder builder) {
    PlanReading reading = builder.build();
    assertThat(reading.faults()).isEmpty();
    return reading.plan().orElseThrow();
  }

  private static List<String> codes(PlanBuilder builder) {
    PlanReading reading = builder.build();
    assertThat(reading.plan()).isEmpty();
    assertThat(reading.faults()).allMatch(fault -> fault.place() == null);
    return reading.faults().stream().map(PlanFault::code).toList();
  }

  /** The plan of {@code examples/wet-lab.json}, built. */
  private static PlanBuilder wetLab() {
    return Plan.builder("loon-narrows-wet-lab", "Wet lab (invented)", Units.MILLIMETRE)
        .shellTolerance("2 mm")
        .framingTolerance("3 mm")
        .electricalTolerance("5 mm")
        .contactTolerance("0.5 mm")
        .roomUse("wet lab")
        .roomTemperature("22 degC +- 1 K")
        .roomHumidity("60 %")
        .siteName("Loon Narrows (invented)")
        .outdoorDesignTemperature("-38 degC")
        .shell("45G1")
        .everyFace(
            f ->
                f.sheet(1.6)
                    .standoff(25)
                    .stud("162S125-33")
                    .lining(12.7)
                    .foam(FaceBuild.Foam.Kind.CLOSED_CELL, "3 in", "0.025 W/(m K)"))
        .face(Face.LEFT, f -> f.profile("side wall").ribs(FaceBuild.Ribs.UPRIGHT).phase(40))
        .face(Face.RIGHT, f -> f.profile(71.5, 68, 70.5, 36).phase("55 mm +- 4 mm"))
        .face(Face.FRONT, f -> f.profile("front wall").phase("1-3/8 in").sheet("2.0 mm"))
        .face(Face.ROOF, f -> f.profile("roof").phase(0).sheet(2).stud(92.075, 41.275, 0.87884))
        .face(Face.FLOOR, f -> f.profile("flat").standoff(0))
        .opening("D1", Face.RIGHT, 4000, 0, 900, 2050)
        .stud(
            "SL",
            Face.LEFT,
            s -> s.along("16 in").repeat(28, "16 in").hole("24 in", "3/4 in", "4 in"))
        .stud(
            "SR",
            Face.RIGHT,
            s ->
                s.along(400)
                    .up(1310)
                    .height("8 ft 6-1/2 in")
                    .section("362S162-43")
                    .material(Material.STEEL))
        .box(
            "R",
            Part.Box.Kind.DEVICE,
            Face.LEFT,
            b ->
                b.size("3 x 2 x 2-1/2 in")
                    .along(400)
                    .up(450)
                    .mount(Mount.FLUSH)
                    .material(Material.STEEL)
                    .repeat(10, "44 in"))
        .box(
            "J1",
            Part.Box.Kind.JUNCTION,
            Face.RIGHT,
            b ->
                b.size("4 x 4 x 2-1/8 in")
                    .depth("60 mm")
                    .along(1000)
                    .up(1500)
                    .mount(Mount.COVERED)
                    .material(Material.PLASTIC))
        .box("X", Part.Box.Kind.OCTAGON, Face.ROOF, b -> {})
        .bar(
            "B1",
            Face.LEFT,
            b ->
                b.along(400)
                    .up(450)
                    .width("16 in")
                    .height(30)
                    .depth(1.5)
                    .front(41.3)
                    .material(Material.STEEL))
        .bracket(
            "K1",
            Face.LEFT,
            b ->
                b.along(430)
                    .up(450)
                    .width(20)
                    .height(40)
                    .depth(30)
                    .front(0)
                    .material(Material.WOOD)
                    .holds("R-3"))
        .panel(
            "P1",
            Face.RIGHT,
            b ->
                b.along(1000)
                    .up(1500)
                    .width(365)
                    .height(500)
                    .depth(95)
                    .mount(Mount.SURFACE)
                    .material(Material.STEEL))
        .luminaire(
            "L",
            Face.ROOF,
            b ->
                b.along(1500)
                    .up(1175)
                    .width(1200)
                    .height(100)
                    .depth(80)
                    .mount(Mount.SURFACE)
                    .material(Material.ALUMINIUM)
                    .repeatUp(2, 300))
        .run(
            "C1",
            Run.Kind.ARMOURED_CABLE,
            r ->
                r.diameter(12)
                    .from("P1")
                    .to("R-1")
                    .point(Face.LEFT, 400, 600, 10)
                    .point(Face.LEFT, "400 mm +- 2 mm", "500 mm", "10 mm"));
  }

  @Test
  void theBuiltPlanIsTheOneThatIsRead() throws IOException {
    Plan built = built(wetLab());
    Plan read = PlanReaderTest.wetLab();
    // The row of windows is the one thing that the builder has no call for.
    assertThat(built.openings()).isEqualTo(read.openings().subList(0, 1));
    Plan same =
        new Plan(
            read.id(),
            read.title(),
            read.units(),
            read.tolerances(),
            read.room(),
            read.site(),
            read.shell(),
            read.faces(),
            built.openings(),
            read.parts(),
            read.runs(),
            built.source());
    assertThat(built).isEqualTo(same);
  }

  @Test
  void theBuiltPlanIsTheOneThatItsFileReadsAs() {
    Plan built = built(wetLab());
    byte[] file = PlanWriter.write(built);
    Plan read = new PlanReader().read("t", file).plan().orElseThrow();
    assertThat(read.sameContent(built)).isTrue();
    assertThat(built.source().name()).isEqualTo("(built)");
    assertThat(built.source().hash()).isEqualTo(read.source().hash());
    assertThat(built.source().places()).isEmpty();
  }

  @Test
  void theSameMistakesGiveTheSameFaults() {
    PlanBuilder builder =
        small()
            .opening("D1", Face.FRONT, 1600, 0, 900, 2050)
            .box("R", Part.Box.Kind.DEVICE, Face.LEFT, b -> b.along("400").up(-50).width(-1))
            .box("R", Part.Box.Kind.DEVICE, Face.LEFT, b -> b.size("3 x 2 in"))
            .bracket("K", Face.LEFT, b -> b.holds("Q"))
            .run("C", Run.Kind.EMT, r -> r.point(Face.LEFT, 1, 1, 1));
    String file =
        """
        {"format": "rimefast-plan-1", "id": "p", "title": "Small plan (invented)", "units": "mm",
         "shell": {"size": "45G1"},
         "openings": [{"id": "D1", "face": "front", "from": 1600, "sill": 0, "width": 900, "height": 2050}],
         "boxes": [{"id": "R", "kind": "device", "face": "left", "along": "400", "up": -50, "width": -1},
                   {"id": "R", "kind": "device", "face": "left", "size": "3 x 2 in"}],
         "brackets": [{"id": "K", "face": "left", "holds": "Q"}],
         "runs": [{"id": "C", "kind": "emt", "path": [{"face": "left", "along": 1, "up": 1, "depth": 1}]}]}
        """;
    PlanReading read = new PlanReader().read("t", file.getBytes(StandardCharsets.UTF_8));
    assertThat(builder.build().faults())
        .extracting(PlanFault::code, PlanFault::pointer, PlanFault::remedy)
        .containsExactlyInAnyOrderElementsOf(
            read.faults().stream()
                .map(f -> org.assertj.core.groups.Tuple.tuple(f.code(), f.pointer(), f.remedy()))
                .toList());
    assertThat(read.faults()).hasSize(8);
  }

  @Test
  void aValueThatIsNoNumberIsAFault() {
    for (double wrong : new double[] {Double.NaN, Double.POSITIVE_INFINITY, 1e300, 1e-300}) {
      Consumer<PartBuilder> bar = b -> b.along(wrong);
      assertThat(codes(small().bar("B", Face.LEFT, bar))).containsExactly("bad-number");
    }
  }

  @Test
  void aValueThatItsKindDoesNotHaveIsAFault() {
    assertThat(codes(small().bar("B", Face.LEFT, b -> b.mount(Mount.FLUSH))))
        .containsExactly("unknown-field");
  }

  @Test
  void aValueGivenTwiceIsAFault() {
    assertThat(codes(small().bar("B", Face.LEFT, b -> b.along(1).along(2))))
        .containsExactly("duplicate-key");
    assertThat(codes(small().shell("22G1"))).containsExactly("duplicate-key");
  }

  @Test
  void aPlanWithoutAShellIsAFault() {
    assertThat(codes(Plan.builder("p", "t", Units.MILLIMETRE))).containsExactly("missing-field");
    assertThat(codes(Plan.builder("", " ", Units.MILLIMETRE).shell("45G1")))
        .containsExactly("bad-text", "bad-text");
  }

  @Test
  void theUnitOfAPlanIsALength() {
    Unit kilogram = Units.find("kg").orElseThrow();
    assertThat(codes(Plan.builder("p", "t", kilogram).shell("45G1")))
        .containsExactly("unknown-word");
  }

  @Test
  void theLimitsOfABuilderCanBeSet() {
    assertThat(
            codes(
                small()
                    .limits(new PlanLimits(1, 1, 1, 2, 10))
                    .bar("B", Face.LEFT, b -> b.along(1).repeat(3, 5.0))))
        .containsExactly("too-large");
  }

  @Test
  void aBuilderCanBeBuiltAgain() {
    PlanBuilder builder = small().bar("B", Face.LEFT, b -> b.along(1));
    Plan first = built(builder);
    Plan second = built(builder.bar("C", Face.LEFT, b -> b.along(2)));
    assertThat(first.parts()).hasSize(1);
    assertThat(second.parts()).hasSize(2);
    assertThat(first.source().hash()).isNotEqualTo(second.source().hash());
  }

  @Test
  void shellAndLengthsMayBeTextOrNumbers() {
    Plan numbers = built(Plan.builder("p", "t", Units.METRE).shellInside(6, 2.35, 2.39));
    Plan texts = built(Plan.builder("p", "t", Units.METRE).shellInside("6 m", "2350 mm", "2.39 m"));
    assertThat(texts.sameContent(numbers)).isTrue();
    Plan door =
        built(
            Plan.builder("p", "t", Units.METRE)
                .shellInside(6, 2.35, 2.39)
                .opening("D", Face.LEFT, "1 ft", "0 m", "3 ft", "6 ft 8 in"));
    assertThat(door.openings().get(0).height().value().text()).isEqualTo("6 ft 8 in");
  }
}
