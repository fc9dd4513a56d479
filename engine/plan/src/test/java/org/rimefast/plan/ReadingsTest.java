package org.rimefast.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.rimefast.units.Units;

/** What was found on site comes through reading, building and writing as it was given. */
class ReadingsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 20);

  private static final String PLAN =
      """
      {"format": "rimefast-plan-1", "id": "p", "title": "Small plan (invented)", "units": "mm",
       "shell": {"size": "45G1"},
       "boxes": [{"id": "R", "kind": "device", "face": "left", "along": 400,
                  "repeat": {"count": 2, "spacing": 400}}],
       "readings": [
         {"inspect": "covers", "of": "R-2", "answer": "yes", "who": "the foreman",
          "when": "2026-11-20", "note": "cover scratched"},
         {"inspect": "steel", "of": "left", "answer": "no", "value": "7 degC +- 1 K",
          "who": "the sprayer", "when": "2026-11-20"},
         {"inspect": "air", "answer": "yes", "value": "40 %", "who": "the sprayer",
          "when": "2026-11-20"}
       ]}
      """;

  private static Plan read(String json) {
    PlanReading reading = new PlanReader().read("plan.json", json.getBytes(StandardCharsets.UTF_8));
    assertThat(reading.faults()).isEmpty();
    return reading.plan().orElseThrow();
  }

  @Test
  void theyAreReadAsTheyStand() {
    List<InspectReading> readings = read(PLAN).readings();
    assertThat(readings)
        .extracting(
            InspectReading::pointer,
            InspectReading::inspect,
            InspectReading::of,
            InspectReading::answer,
            reading -> String.valueOf(reading.value()),
            InspectReading::who,
            InspectReading::when,
            InspectReading::note)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(
                "/readings/0",
                "covers",
                "R-2",
                true,
                "null",
                "the foreman",
                DAY,
                "cover scratched"),
            org.assertj.core.groups.Tuple.tuple(
                "/readings/1", "steel", "left", false, "7 degC +- 1 K", "the sprayer", DAY, null),
            org.assertj.core.groups.Tuple.tuple(
                "/readings/2", "air", null, true, "40 %", "the sprayer", DAY, null));
  }

  @Test
  void theBuilderMakesTheSame() {
    PlanReading built =
        Plan.builder("p", "Small plan (invented)", Units.MILLIMETRE)
            .shell("45G1")
            .box("R", Part.Box.Kind.DEVICE, Face.LEFT, b -> b.along(400).repeat(2, 400))
            .reading("covers", true, "the foreman", DAY, r -> r.of("R-2").note("cover scratched"))
            .reading(
                "steel", false, "the sprayer", DAY, r -> r.of(Face.LEFT).value("7 degC +- 1 K"))
            .reading("air", true, "the sprayer", DAY, r -> r.value("40 %"))
            .build();
    assertThat(built.faults()).isEmpty();
    assertThat(built.plan().orElseThrow().readings()).isEqualTo(read(PLAN).readings());
  }

  @Test
  void whatIsWrittenReadsAsBefore() {
    Plan plan = read(PLAN);
    String written = new String(PlanWriter.write(plan), StandardCharsets.UTF_8);
    assertThat(read(written).sameContent(plan)).isTrue();
    assertThat(PlanSchemaTest.complaints(written)).isEmpty();
    assertThat(plan.sameContent(read(PLAN.replace("scratched", "dented")))).isFalse();
  }

  @Test
  void theBuilderTellsTheSameFaults() {
    PlanReading built =
        Plan.builder("p", "Small plan (invented)", Units.MILLIMETRE)
            .shell("45G1")
            .reading("covers", true, "the foreman", DAY, r -> r.of("R-2").value("7"))
            .build();
    assertThat(built.faults())
        .extracting(PlanFault::code)
        .containsExactlyInAnyOrder("dangling-reference", "missing-unit");
  }
}
