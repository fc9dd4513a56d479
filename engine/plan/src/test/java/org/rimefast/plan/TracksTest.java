package org.rimefast.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.rimefast.units.Units;

/** Tracks as plans give them. */
class TracksTest {
  private static final String PLAN =
      """
      {
        "format": "rimefast-plan-1", "id": "small", "title": "Small (invented)", "units": "mm",
        "shell": {"size": "45G1"},
        "studs": [{"id": "S", "face": "left", "along": 400}],
        "tracks": [
          {"id": "T", "face": "left", "along": 1500, "up": 16, "width": "3 m", "height": "1-1/4 in",
           "material": "steel", "repeat": {"count": 2, "spacing": 3000}},
          {"id": "U", "face": "roof", "up": 30, "depth": 43, "front": -1}
        ],
        "boxes": [{"id": "B", "kind": "device", "face": "left"}]
      }
      """;

  private static Plan read(String text) {
    return new PlanReader().read("t", text.getBytes(StandardCharsets.UTF_8)).plan().orElseThrow();
  }

  private static double millimetres(@Nullable Amount amount) {
    return Objects.requireNonNull(amount).millimetres();
  }

  @Test
  void tracksStandAfterTheStudsAndRepeatLikeOtherParts() {
    List<Part> parts = read(PLAN).parts();
    assertThat(parts).extracting(Part::id).containsExactly("S", "T-1", "T-2", "U", "B");
    assertThat(parts.get(2)).isInstanceOf(Part.Track.class);
    assertThat(millimetres(parts.get(2).along())).isEqualTo(4500);
    assertThat(parts.get(2).depth()).isNull();
    assertThat(parts.get(2).front()).isNull();
    assertThat(millimetres(parts.get(3).front())).isEqualTo(-1);
  }

  @Test
  void whatIsBuiltIsWhatIsReadAndWritten() {
    PlanReading built =
        Plan.builder("small", "Small (invented)", Units.MILLIMETRE)
            .shell("45G1")
            .stud("S", Face.LEFT, s -> s.along(400))
            .track(
                "T",
                Face.LEFT,
                t ->
                    t.along(1500)
                        .up(16)
                        .width("3 m")
                        .height("1-1/4 in")
                        .material(Material.STEEL)
                        .repeat(2, 3000))
            .track("U", Face.ROOF, t -> t.up(30).depth(43).front(-1))
            .box("B", Part.Box.Kind.DEVICE, Face.LEFT, b -> {})
            .build();
    Plan read = read(PLAN);
    assertThat(built.faults()).isEmpty();
    assertThat(built.plan().orElseThrow().sameContent(read)).isTrue();
    String written = new String(PlanWriter.write(read), StandardCharsets.UTF_8);
    assertThat(written).contains("\"tracks\"").contains("\"repeat\"");
    assertThat(read(written).sameContent(read)).isTrue();
  }

  @Test
  void aTrackIsEditedRemovedAndTakenOutOfItsRow() {
    PlanEdit.Value width = new PlanEdit.Value(PlanEdit.Value.Kind.TEXT, "2.5 m");
    PlanEdits.Edited edited =
        PlanEdits.apply(
            PLAN.getBytes(StandardCharsets.UTF_8),
            List.of(
                new PlanEdit.Set(new PlanEdit.Target(Optional.of("width"), "T-2"), width),
                new PlanEdit.Remove(new PlanEdit.Target(Optional.of("depth"), "U"))));
    assertThat(edited.faults()).isEmpty();
    Plan plan = read(new String(edited.plan().orElseThrow(), StandardCharsets.UTF_8));
    assertThat(millimetres(plan.parts().get(1).width())).isEqualTo(3000);
    assertThat(millimetres(plan.parts().get(2).width())).isEqualTo(2500);
    assertThat(plan.parts().get(3).depth()).isNull();
  }
}
