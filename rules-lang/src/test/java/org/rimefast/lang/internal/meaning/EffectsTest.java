package org.rimefast.lang.internal.meaning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.rimefast.lang.internal.meaning.SmallWorld.Said;
import org.rimefast.lang.rule.Change.Effect;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Severity;
import org.rimefast.lang.rule.Value;
import org.rimefast.units.Rational;

/** What is said of a change is held against what the change does in worlds made at random. */
final class EffectsTest {
  private static final int RULES = 20_000;
  private static final int WORLDS = 12;

  @Test
  void whatWasBrokenStaysBrokenUnderAStricterLimitAndNothingElseBreaksUnderALooserOne() {
    Random random = new Random(20261125);
    Map<Effect, Integer> seen = new EnumMap<>(Effect.class);
    Map<Effect, Integer> moved = new EnumMap<>(Effect.class);
    for (int i = 0; i < RULES; i++) {
      int before = random.nextInt(7) - 3;
      int after = random.nextInt(7) - 3;
      Rule rule = new RandomRule(random, before).rule();
      Rational was = RandomRule.length(before).quantity().si();
      Rational is = RandomRule.length(after).quantity().si();
      Effect effect = Effects.ofNumber(rule, EffectsTest::isChanged, was, is);
      seen.merge(effect, 1, Integer::sum);
      for (int world = 0; world < WORLDS; world++) {
        long seed = random.nextLong();
        Said old = SmallWorld.of(seed, was).ask(rule);
        Said fresh = SmallWorld.of(seed, is).ask(rule);
        boolean freed = old == Said.BROKEN && fresh != Said.BROKEN;
        boolean broken = old != Said.BROKEN && fresh == Said.BROKEN;
        moved.merge(effect, freed || broken ? 1 : 0, Integer::sum);
        String what = effect + " " + before + " to " + after + ": " + rule;
        switch (effect) {
          case STRICTER -> assertThat(freed).as(what).isFalse();
          case LOOSER -> assertThat(broken).as(what).isFalse();
          case UNCHANGED -> assertThat(fresh).as(what).isEqualTo(old);
          case NEITHER, UNPROVED -> {}
        }
      }
    }
    // Said of many, and not only where nothing moves.
    assertThat(seen.get(Effect.STRICTER)).isGreaterThan(500);
    assertThat(seen.get(Effect.LOOSER)).isGreaterThan(500);
    assertThat(seen.get(Effect.NEITHER)).isGreaterThan(50);
    assertThat(moved.get(Effect.STRICTER)).isGreaterThan(500);
    assertThat(moved.get(Effect.LOOSER)).isGreaterThan(500);
  }

  @Test
  void aGraverSeverityAndAnEarlierStageAreStricter() {
    List<String> stages = List.of("layout", "framing", "foam");
    assertThat(Effects.ofSeverity(Severity.FIX, Severity.HOLD)).isEqualTo(Effect.STRICTER);
    assertThat(Effects.ofSeverity(Severity.FIX, Severity.ADVISE)).isEqualTo(Effect.LOOSER);
    assertThat(Effects.ofSeverity(Severity.FIX, Severity.FIX)).isEqualTo(Effect.UNCHANGED);
    assertThat(Effects.ofStage(stages, "framing", "layout")).isEqualTo(Effect.STRICTER);
    assertThat(Effects.ofStage(stages, "framing", "foam")).isEqualTo(Effect.LOOSER);
    assertThat(Effects.ofStage(stages, "foam", "foam")).isEqualTo(Effect.UNCHANGED);
  }

  private static boolean isChanged(Value value) {
    return value instanceof Value.Named named && named.constant().name().equals(RandomRule.CHANGED);
  }
}
