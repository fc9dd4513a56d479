package org.rimefast.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestNamesTest {
  @Test
  void theNearestComesFirst() {
    assertThat(NearestNames.of("fram", List.of("frame", "framing", "lining", "foam")))
        .containsExactly("frame", "foam", "framing");
  }

  @Test
  void whatIsFarIsNotNamed() {
    assertThat(NearestNames.ending("zzzzzz", List.of("layout", "framing"))).isEqualTo(".");
    assertThat(NearestNames.ending("layuot", List.of("layout", "framing")))
        .isEqualTo("; did you mean layout?");
  }
}
