package org.rimefast.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanWriterTest {
  private static String written(Plan plan) {
    return new String(PlanWriter.write(plan), StandardCharsets.UTF_8);
  }

  private static List<Plan> examples() throws IOException {
    try (Stream<Path> files = Files.list(PlanReaderTest.EXAMPLES)) {
      List<Plan> plans = new ArrayList<>();
      for (Path file : files.sorted().toList()) {
        plans.add(new PlanReader().read(file).plan().orElseThrow());
      }
      return plans;
    }
  }

  @Test
  void everyExampleReadsBackTheSame() throws IOException {
    for (Plan plan : examples()) {
      Plan back = PlanReaderTest.read(written(plan));
      assertThat(back.withSource(plan.source())).isEqualTo(plan);
      assertThat(back.sameContent(plan)).isTrue();
    }
  }

  @Test
  void writingWhatWasWrittenChangesNoByte() throws IOException {
    for (Plan plan : examples()) {
      String once = written(plan);
      assertThat(written(PlanReaderTest.read(once))).isEqualTo(once);
    }
  }

  @Test
  void valuesKeepTheirAuthorsSpelling() throws IOException {
    assertThat(written(PlanReaderTest.wetLab()))
        .contains("\"along\": \"16 in\"")
        .contains("\"spacing\": \"44 in\"")
        .contains("\"width\": \"3/4 in\"")
        .contains("\"height\": \"8 ft 6-1/2 in\"")
        .contains("\"phase\": \"55 mm +- 4 mm\"")
        .contains("\"temperature\": \"22 degC +- 1 K\"")
        .contains("\"size\": \"3 x 2 x 2-1/2 in\"")
        .contains("\"section\": \"362S162-43\"")
        .contains("\"sheet\": 1.6,");
  }

  @Test
  void aSmallPlanIsWrittenLikeThis() {
    Plan plan =
        PlanReaderTest.read(
            """
            {"format":"rimefast-plan-1","id":"p","title":"Small \\u00b1 plan (invented)","units":"mm",
             "shell":{"size":"22G1"},"faces":{"left":{"phase":40.50,"stud":"162S125-33"},"default":{"lining":"12.7 mm"}},
             "bars":[{"id":"B","face":"left","along":1e2,"repeat":{"count":2,"spacing":"16 in","direction":"along"}}]}
            """);
    assertThat(written(plan))
        .isEqualTo(
            """
            {
              "format": "rimefast-plan-1",
              "id": "p",
              "title": "Small \u00b1 plan (invented)",
              "units": "mm",
              "shell": {
                "size": "22G1"
              },
              "faces": {
                "default": {
                  "lining": 12.7
                },
                "left": {
                  "phase": 40.50,
                  "stud": "162S125-33"
                }
              },
              "bars": [
                {
                  "id": "B",
                  "face": "left",
                  "along": 100,
                  "repeat": {
                    "count": 2,
                    "spacing": "16 in"
                  }
                }
              ]
            }
            """);
  }

  @Test
  void aRowOfWhichOneItemWasMovedIsWrittenItemByItem() throws IOException {
    Plan plan = PlanReaderTest.wetLab();
    List<Part> parts = new ArrayList<>(plan.parts());
    for (int i = 0; i < parts.size(); i++) {
      if (parts.get(i) instanceof Part.Box box && box.id().equals("R-4")) {
        parts.set(
            i,
            new Part.Box(
                box.id(),
                box.pointer(),
                box.kind(),
                box.size(),
                box.placement().at(box.along(), parts.get(0).along()),
                box.mount()));
      }
    }
    Plan moved =
        new Plan(
            plan.id(),
            plan.title(),
            plan.units(),
            plan.tolerances(),
            plan.room(),
            plan.site(),
            plan.shell(),
            plan.faces(),
            plan.openings(),
            parts,
            plan.runs(),
            plan.source());
    Plan back = PlanReaderTest.read(written(moved));
    assertThat(back.parts()).hasSameSizeAs(parts);
    for (int i = 0; i < parts.size(); i++) {
      Part part = back.parts().get(i);
      assertThat(part.id()).isEqualTo(parts.get(i).id());
      assertThat(si(part.along())).isEqualTo(si(parts.get(i).along()));
      assertThat(si(part.up())).isEqualTo(si(parts.get(i).up()));
    }
    assertThat(written(back)).isEqualTo(written(moved));
  }

  private static String si(@org.jspecify.annotations.Nullable Amount amount) {
    return amount == null ? "not given" : amount.value().si().toString();
  }

  @Test
  void theBytesDoNotDependOnTheLocale() throws IOException {
    Locale before = Locale.getDefault();
    String usual = written(PlanReaderTest.wetLab());
    try {
      for (String tag : List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(written(PlanReaderTest.wetLab())).isEqualTo(usual);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void aFileIsReplacedWholeAndNothingIsLeftBeside(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("plan.json");
    Files.writeString(file, "old");
    PlanWriter.write(PlanReaderTest.wetLab(), file);
    assertThat(Files.readAllBytes(file)).isEqualTo(PlanWriter.write(PlanReaderTest.wetLab()));
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).containsExactly(file);
    }
  }

  @Test
  void aFileThatCannotBeReplacedStaysAsItWas(@TempDir Path folder) throws IOException {
    Path occupied = folder.resolve("plan.json");
    Files.createDirectory(occupied);
    Files.writeString(occupied.resolve("inside"), "kept");
    Plan plan = PlanReaderTest.wetLab();
    assertThatThrownBy(() -> PlanWriter.write(plan, occupied)).isInstanceOf(IOException.class);
    assertThat(occupied.resolve("inside")).hasContent("kept");
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).containsExactly(occupied);
    }
  }
}
