package org.rimefast.testkit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Part;
import org.rimefast.plan.Plan;
import org.rimefast.plan.PlanReader;
import org.rimefast.plan.PlanReading;
import org.rimefast.plan.PlanWriter;
import org.rimefast.plan.Run;

class RandomModulesTest {
  private static final int MODULES = 300;

  @Test
  void everyModuleReadsWithoutAFaultAndIsKeptByTheWriter() {
    for (long seed = 1; seed <= MODULES; seed++) {
      Plan plan = RandomModules.of(seed).plan();
      PlanReading again = new PlanReader().read("again.json", PlanWriter.write(plan));
      assertThat(again.faults()).as("seed %d", seed).isEmpty();
      assertThat(again.plan().orElseThrow().sameContent(plan)).as("seed %d", seed).isTrue();
    }
  }

  @Test
  void theSameSeedGivesTheSameBytesWhateverTheLocale() {
    Locale before = Locale.getDefault();
    String inEnglish = RandomModules.of(5).json();
    try {
      for (Locale locale : List.of(Locale.GERMANY, Locale.forLanguageTag("ar-EG-u-nu-arab"))) {
        Locale.setDefault(locale);
        assertThat(RandomModules.of(5).json()).isEqualTo(inEnglish);
      }
    } finally {
      Locale.setDefault(before);
    }
    assertThat(RandomModules.of(6).json()).isNotEqualTo(inEnglish);
  }

  @Test
  void titlesSayThatItIsInvented() {
    assertThat(RandomModules.of(9).plan().title()).endsWith("(invented)");
  }

  @Test
  void aModuleIsAsLongAsAsked() {
    assertThat(RandomModules.of(3).feet(20).plan().shell().length()).isBetween(5890.0, 5910.0);
    assertThat(RandomModules.of(3).feet(40).plan().shell().length()).isBetween(12020.0, 12040.0);
    assertThatThrownBy(() -> RandomModules.of(3).feet(30)).hasMessageContaining("not 30");
  }

  @ParameterizedTest
  @ValueSource(ints = {500, 5_000, 100_000})
  void aLongShellHoldsAboutAsManyElementsAsAskedAtTheSameDensity(int count) {
    Plan plan = RandomModules.of(2).elements(count).plan();
    int held = plan.openings().size() + plan.parts().size() + plan.runs().size();
    assertThat(held).isBetween(count * 95 / 100, count * 105 / 100);
    assertThat(plan.shell().length() / held).isBetween(40.0, 95.0);
  }

  @Test
  void whatShopsGetWrongIsInSomeModulesAndWhatTheyGetRightInMost() {
    Set<Run.Kind> kinds = EnumSet.noneOf(Run.Kind.class);
    Set<Mount> panelMounts = new HashSet<>();
    int overCorners = 0;
    int missing = 0;
    int tolerances = 0;
    for (Plan plan : modules()) {
      for (Run run : plan.runs()) {
        kinds.add(run.kind());
        overCorners += run.path().stream().map(Run.PathPoint::face).distinct().count() > 1 ? 1 : 0;
      }
      for (Part part : plan.parts()) {
        if (part instanceof Part.Panel panel && panel.mount() != null) {
          panelMounts.add(panel.mount());
        }
        missing += part.material() == null ? 1 : 0;
      }
      tolerances += plan.tolerances().electrical() == null ? 0 : 1;
    }
    assertThat(kinds).containsExactlyInAnyOrder(Run.Kind.values());
    assertThat(panelMounts).contains(Mount.FLUSH, Mount.SURFACE);
    assertThat(overCorners).isGreaterThan(100);
    assertThat(missing).isGreaterThan(50);
    assertThat(tolerances).isBetween(10, 70);
  }

  @Test
  void aModuleInAnotherUnitIsTheSameModule() {
    for (String unit : List.of("cm", "m", "in", "ft")) {
      Plan plan = RandomModules.of(8).plan();
      Plan other = RandomModules.of(8).units(unit).plan();
      assertThat(other.units().symbol()).isEqualTo(unit);
      assertThat(other.shell()).isEqualTo(plan.shell());
      assertThat(other.parts()).hasSameSizeAs(plan.parts());
      for (int i = 0; i < plan.parts().size(); i++) {
        var here = plan.parts().get(i).along();
        var there = other.parts().get(i).along();
        if (here == null || there == null) {
          assertThat(there).isEqualTo(here);
        } else {
          assertThat(there.value().si()).isEqualTo(here.value().si());
        }
      }
    }
    assertThatThrownBy(() -> RandomModules.of(8).units("yd")).hasMessageContaining("no unit yd");
  }

  private static List<Plan> modules() {
    return LongStream.rangeClosed(1, 100).mapToObj(seed -> RandomModules.of(seed).plan()).toList();
  }
}
