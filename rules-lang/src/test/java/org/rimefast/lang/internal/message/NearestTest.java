package org.rimefast.lang.internal.message;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

final class NearestTest {
  @Test
  void editsAreCounted() {
    assertThat(Nearest.distance("kitten", "sitting")).isEqualTo(3);
    assertThat(Nearest.distance("", "abc")).isEqualTo(3);
    assertThat(Nearest.distance("stud", "stdu")).isEqualTo(1);
    assertThat(Nearest.distance("same", "same")).isZero();
  }

  @Test
  void theNearestComesFirstAndFarOnesNotAtAll() {
    assertThat(Nearest.to("stub", List.of("room", "stubs", "stud", "box")))
        .containsExactly("stubs", "stud");
    assertThat(Nearest.to("receptacle", List.of("room", "box"))).isEmpty();
    assertThat(Nearest.to("at", List.of("it", "an"))).isEmpty();
  }

  @Test
  void aWordOfAMillionLettersIsNotCompared() {
    assertThat(Nearest.to("x".repeat(1_000_000), List.of("x"))).isEmpty();
  }
}
