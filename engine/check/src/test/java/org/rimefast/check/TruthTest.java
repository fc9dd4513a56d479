package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimefast.check.Truth.FALSE;
import static org.rimefast.check.Truth.TRUE;
import static org.rimefast.check.Truth.UNKNOWN;

import org.junit.jupiter.api.Test;

/**
 * The tables of Kleene's strong three-valued logic (Introduction to Metamathematics, 1952, par.
 * 64).
 */
class TruthTest {
  private static final Truth[] ORDER = {TRUE, UNKNOWN, FALSE};

  @Test
  void andFollowsTheTable() {
    Truth[][] table = {
      {TRUE, UNKNOWN, FALSE},
      {UNKNOWN, UNKNOWN, FALSE},
      {FALSE, FALSE, FALSE}
    };
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        assertThat(ORDER[i].and(ORDER[j])).isEqualTo(table[i][j]);
      }
    }
  }

  @Test
  void orFollowsTheTable() {
    Truth[][] table = {
      {TRUE, TRUE, TRUE},
      {TRUE, UNKNOWN, UNKNOWN},
      {TRUE, UNKNOWN, FALSE}
    };
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        assertThat(ORDER[i].or(ORDER[j])).isEqualTo(table[i][j]);
      }
    }
  }

  @Test
  void notFollowsTheTable() {
    assertThat(TRUE.not()).isEqualTo(FALSE);
    assertThat(UNKNOWN.not()).isEqualTo(UNKNOWN);
    assertThat(FALSE.not()).isEqualTo(TRUE);
  }
}
