package org.rimefast.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.rimefast.check.StandardFiles;
import org.rimefast.check.SteelModules;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Change;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceText;
import org.rimefast.plan.Plan;
import org.rimefast.plan.PlanReader;
import org.rimefast.testkit.RuleCases;

/** The house standard of the demo (invented) says what its text says it does. */
class HouseStandardTest {
  private static final Path FOLDER = Path.of("tamarack-house");
  private static final Path STANDARD = FOLDER.resolve("tamarack-house.rime");

  @TestFactory
  Stream<DynamicTest> everyCaseComesOut() {
    return RuleCases.of(STANDARD);
  }

  @Test
  void everyRuleThatItAddedOrAmendedIsExpectedToBeBrokenByACase() {
    assertThat(RuleCases.neverBroken(STANDARD)).isEmpty();
  }

  @Test
  void everyRuleThatItAddedOrAmendedHasACaseInWhichItIsMetAndOneInWhichItIsUndecided()
      throws IOException {
    List<String> own =
        standard().rules().stream()
            .filter(rule -> !rule.changes().isEmpty())
            .map(Rule::id)
            .toList();
    assertThat(own).hasSize(16);
    String cases = Files.readString(FOLDER.resolve("tamarack-house.cases.rime"));
    for (String outcome : List.of("met", "undecided")) {
      TreeSet<String> seen = new TreeSet<>();
      Pattern one = Pattern.compile("\" of ([a-z-]+)\\n(?:  .*\\n)*?  expect " + outcome + " by");
      one.matcher(cases).results().forEach(found -> seen.add(found.group(1)));
      assertThat(seen).as(outcome).containsAll(own);
    }
  }

  @Test
  void itCompilesWithoutAWarning() throws IOException {
    assertThat(compilation().diagnostics()).isEmpty();
  }

  @Test
  void itsHeadingsSayWhichAmendmentsAskForMoreAndWhichForLess() throws IOException {
    List<Change> changes = new ArrayList<>();
    for (Rule rule : standard().rules()) {
      changes.addAll(rule.changes());
    }
    standard().withdrawn().forEach(withdrawal -> changes.add(withdrawal.change()));
    assertThat(effects(changes, "What we ask more of", "What we ask less of"))
        .containsOnly(
            Map.entry(Change.Kind.CONSTANT, Change.Effect.STRICTER),
            Map.entry(Change.Kind.LIMIT, Change.Effect.STRICTER),
            Map.entry(Change.Kind.SEVERITY, Change.Effect.STRICTER),
            Map.entry(Change.Kind.STAGE, Change.Effect.STRICTER));
    assertThat(effects(changes, "What we ask less of", "What we ask besides"))
        .containsOnly(
            Map.entry(Change.Kind.EXCEPTION, Change.Effect.LOOSER),
            Map.entry(Change.Kind.WITHDRAWN, Change.Effect.LOOSER));
    assertThat(changes)
        .filteredOn(change -> change.kind() == Change.Kind.ADDED)
        .hasSize(11)
        .allSatisfy(change -> assertThat(change.effect()).isEqualTo(Change.Effect.STRICTER));
  }

  /** What the amendments between two headings do. */
  private static Map<Change.Kind, Change.Effect> effects(
      List<Change> changes, String from, String to) throws IOException {
    String text = Files.readString(STANDARD);
    int start = text.indexOf("-- " + from);
    int end = text.indexOf("-- " + to);
    assertThat(start).isPositive();
    assertThat(end).isGreaterThan(start);
    return changes.stream()
        .filter(change -> change.kind() != Change.Kind.ADDED)
        .filter(change -> isBetween(text, change, start, end))
        .collect(Collectors.toMap(Change::kind, Change::effect));
  }

  private static boolean isBetween(String text, Change change, int start, int end) {
    int at = text.indexOf(change.text());
    assertThat(at).as(change.text()).isPositive();
    return at > start && at < end;
  }

  @Test
  void theStandoffItAsksForFollowsFromTheSizesItNames() {
    // Box 47.6 deep, flush with 12.7 lining on 41.3 studs: in an outer bay 36 deep there is this
    // much behind it, and the standoff.
    double behind = 41.3 + 12.7 - 47.6 + 36;
    assertThat(60 - behind).isBetween(17.59, 17.61).isLessThan(18);
  }

  @Test
  void theAsFoundBunkRoomIsTheDrawnOneButForReadingsAndSmallerTolerances() throws IOException {
    Plan drawn = plan(Path.of("loon-narrows", "bunk-room.json"));
    Plan found = plan(FOLDER.resolve("plans/bunk-room-as-found.json"));
    assertThat(found.title()).contains("as found", "(invented)");
    assertThat(found.parts()).isEqualTo(drawn.parts());
    assertThat(found.runs()).isEqualTo(drawn.runs());
    assertThat(found.openings()).isEqualTo(drawn.openings());
    assertThat(drawn.readings()).isEmpty();
    assertThat(found.readings())
        .isNotEmpty()
        .allSatisfy(
            reading -> assertThat(reading.when()).isBeforeOrEqualTo(LocalDate.of(2026, 12, 1)));
  }

  private static Plan plan(Path file) throws IOException {
    return new PlanReader().read(file).plan().orElseThrow();
  }

  private static Standard standard() throws IOException {
    return compilation().standard().orElseThrow();
  }

  private static Compilation compilation() throws IOException {
    return new RuleCompiler(SteelModules.dictionary().vocabulary())
        .compile(
            new SourceText(STANDARD.toString(), Files.readString(STANDARD)),
            StandardFiles.beside(STANDARD));
  }
}
