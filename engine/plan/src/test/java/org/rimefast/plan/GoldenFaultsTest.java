package org.rimefast.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * One small plan per fault, with what is said about it beside it. A missing {@code .faults} file is
 * written and its test fails, so that someone reads it.
 */
class GoldenFaultsTest {
  private static final Path FOLDER = Path.of("src/test/resources/org/rimefast/plan/faults");

  @TestFactory
  Stream<DynamicTest> everyFaultyPlanSaysWhatIsWrong() throws IOException {
    return names(".json").stream().map(name -> DynamicTest.dynamicTest(name, () -> check(name)));
  }

  private static void check(String name) throws IOException {
    PlanReading reading =
        new PlanReader().read(name + ".json", Files.readAllBytes(FOLDER.resolve(name + ".json")));
    String said = print(reading.faults());
    assertThat(reading.plan()).isEmpty();
    assertThat(said).isNotEmpty();
    Path golden = FOLDER.resolve(name + ".faults");
    if (!Files.exists(golden)) {
      Files.writeString(golden, said);
      fail(golden + " was missing and has been written: read it");
    }
    assertThat(said).isEqualTo(Files.readString(golden, StandardCharsets.UTF_8));
  }

  static String print(List<PlanFault> faults) {
    StringBuilder text = new StringBuilder();
    for (PlanFault fault : faults) {
      PlanSource.Place place = fault.place();
      text.append(
          String.format(
              Locale.ROOT,
              "%s %s at %s%n  %s%n  %s%n",
              place == null ? "-" : place.line() + ":" + place.column(),
              fault.code(),
              fault.pointer().isEmpty() ? "the plan" : fault.pointer(),
              fault.message(),
              fault.remedy()));
    }
    return text.toString().replace(System.lineSeparator(), "\n");
  }

  @Test
  void everyGoldenFileHasAPlan() throws IOException {
    assertThat(names(".faults")).isSubsetOf(names(".json"));
  }

  @Test
  void thereAreAtLeast45FaultyPlans() throws IOException {
    assertThat(names(".json")).hasSizeGreaterThanOrEqualTo(45);
  }

  @Test
  void messagesAndRemediesAreSentences() throws IOException {
    for (String name : names(".json")) {
      byte[] text = Files.readAllBytes(FOLDER.resolve(name + ".json"));
      for (PlanFault fault : new PlanReader().read(name, text).faults()) {
        assertThat(fault.message()).as(name).matches("(?s)[\\p{Lu}\"\\\\@+].*[.]");
        assertThat(fault.remedy()).as(name).matches("(?s)[\\p{Lu}\"\\\\].*[.?]");
      }
    }
  }

  static Set<String> names(String ending) throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      Set<String> names = new TreeSet<>();
      files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(name -> name.endsWith(ending))
          .forEach(name -> names.add(name.substring(0, name.length() - ending.length())));
      return names;
    }
  }
}
