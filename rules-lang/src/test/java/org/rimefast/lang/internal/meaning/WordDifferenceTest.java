package org.rimefast.lang.internal.meaning;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class WordDifferenceTest {
  @Test
  void wordsThatDifferStandInBrackets() {
    assertThat(WordDifference.show("must be at least 2 in (hold)", "must be more than 3 in (hold)"))
        .isEqualTo("must be [was: at least 2] [now: more than 3] in (hold)");
  }

  @Test
  void wordsThatCameOrWentStandAlone() {
    assertThat(WordDifference.show("a b", "a b c")).isEqualTo("a b [now: c]");
    assertThat(WordDifference.show("a b c", "b c")).isEqualTo("[was: a] b c");
    assertThat(WordDifference.show("a b", "a b")).isEqualTo("a b");
  }

  @Test
  void longTextsAreNotAligned() {
    String text = "a ".repeat(2_001);
    assertThat(WordDifference.show(text, "a")).startsWith("[was: a a").endsWith("[now: a]");
  }
}
