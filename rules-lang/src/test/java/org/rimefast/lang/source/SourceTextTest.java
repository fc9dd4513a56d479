package org.rimefast.lang.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rimefast.lang.source.SourceText.Part;
import org.rimefast.lang.source.SourceText.Place;

final class SourceTextTest {
  private static final SourceText BOTH =
      SourceText.of(List.of(new Part("a.rime", "one\ntwo"), new Part("b.rime", "three\n\nfour\n")));

  @Test
  void placesAreToldByFile() {
    assertThat(BOTH.place(0)).isEqualTo(new Place("a.rime", 1, 1));
    assertThat(BOTH.place(BOTH.text().indexOf("wo"))).isEqualTo(new Place("a.rime", 2, 2));
    assertThat(BOTH.place(BOTH.text().indexOf("three"))).isEqualTo(new Place("b.rime", 1, 1));
    assertThat(BOTH.place(BOTH.text().indexOf("four"))).isEqualTo(new Place("b.rime", 3, 1));
    assertThat(BOTH.place(BOTH.text().length())).isEqualTo(new Place("b.rime", 4, 1));
  }

  @Test
  void theEndOfAFileBelongsToIt() {
    assertThat(BOTH.place(7)).isEqualTo(new Place("a.rime", 2, 4));
    assertThat(BOTH.partAt(7)).isZero();
    assertThat(BOTH.partAt(8)).isOne();
    assertThat(BOTH.textOf(BOTH.spanOf(1))).isEqualTo("three\n\nfour\n");
  }

  @Test
  void oneMoreFileMovesNoPlace() {
    SourceText more = BOTH.with(new Part("c.rime", "five"));
    assertThat(more.text()).startsWith(BOTH.text());
    assertThat(more.place(8)).isEqualTo(BOTH.place(8));
    assertThat(more.textOf(more.spanOf(2))).isEqualTo("five");
    assertThat(more.name()).isEqualTo("a.rime");
  }

  @Test
  void oneFileIsItsOwnText() {
    SourceText one = new SourceText("x", "text\r\nmore");
    assertThat(one.text()).isEqualTo("text\r\nmore");
    assertThat(one.positionOf(6)).isEqualTo(new SourceText.Position(2, 1));
    assertThat(one.line(1)).isEqualTo("text");
    assertThat(one).isEqualTo(SourceText.of(List.of(new Part("x", "text\r\nmore"))));
    assertThat(one).isNotEqualTo(BOTH);
  }

  @Test
  void thereIsNoTextOfNoFile() {
    assertThatThrownBy(() -> SourceText.of(List.of())).isInstanceOf(IllegalArgumentException.class);
  }
}
