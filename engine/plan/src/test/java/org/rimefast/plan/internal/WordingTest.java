package org.rimefast.plan.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordingTest {
  private static final List<String> KNOWN = List.of("along", "up", "width", "height", "left");

  @ParameterizedTest
  @CsvSource({
    "alogn, along",
    "Along, along",
    "widht, width",
    "lft, left",
    "heigth, height",
    "zone,",
    "u,",
    "xx,"
  })
  void theNearestWordIsGuessedIfItIsNear(String word, String guess) {
    assertThat(Wording.nearest(word, KNOWN).orElse(null)).isEqualTo(guess);
  }

  // By hand: one swap; one insertion; kitten -> sitten -> sittin -> sitting.
  @ParameterizedTest
  @CsvSource({"ab, ba, 1", "abc, abxc, 1", "kitten, sitting, 3", "ABC, abc, 0", "'', abc, 3"})
  void editsAndSwapsAreCounted(String a, String b, int distance) {
    assertThat(Wording.distance(a, b)).isEqualTo(distance);
    assertThat(Wording.distance(b, a)).isEqualTo(distance);
  }

  @Test
  void longAndOddTextIsShortenedWhenQuoted() {
    assertThat(Wording.quoted("x".repeat(1000))).hasSize(65).endsWith("...\"");
    assertThat(Wording.quoted("a\u0007\nb")).isEqualTo("\"a  b\"");
  }

  @Test
  void wordsAreListedAsInASentence() {
    assertThat(Wording.either(List.of("a"))).isEqualTo("a");
    assertThat(Wording.either(List.of("a", "b"))).isEqualTo("a or b");
    assertThat(Wording.either(List.of("a", "b", "c"))).isEqualTo("a, b or c");
  }
}
