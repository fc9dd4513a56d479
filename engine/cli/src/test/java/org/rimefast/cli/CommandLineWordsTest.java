package org.rimefast.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class CommandLineWordsTest {
  @Property(tries = 2000, seed = "20261125")
  void whatIsPlainlyRightIsTakenApartAsTheLibraryDoes(@ForAll("words") List<String> words)
      throws UsageProblem {
    Optional<CommandLineWords> plain =
        CommandLineWords.plain("rimefast check", Option.CHECK, words);
    if (plain.isPresent()) {
      assertThat(Commands.parse(Commands.check(), words)).isEqualTo(plain.get());
    }
  }

  @Example
  void theUsualFormsArePlain() {
    List<String> words =
        List.of("a.json", "--standard", "house.rime", "--strict", "--stage=foam", "-", "b.json");
    CommandLineWords plain =
        CommandLineWords.plain("rimefast check", Option.CHECK, words).orElseThrow();
    assertThat(plain.parameters()).containsExactly("a.json", "-", "b.json");
    assertThat(plain.value("--standard")).contains("house.rime");
    assertThat(plain.value("--stage")).contains("foam");
    assertThat(plain.has("--strict")).isTrue();
    assertThat(plain.has("--debug")).isFalse();
  }

  @Provide
  Arbitrary<List<String>> words() {
    return Arbitraries.of(
            "a.json",
            "-",
            "--",
            "@a",
            "a=b",
            "",
            " ",
            "'a'",
            "\"a b\"",
            "${user.home}",
            "--standard",
            "--standard=house.rime",
            "--standard=",
            "--standard==",
            "--standard=--x",
            "--stage",
            "--as-of=1=2",
            "--strict",
            "--strict=true",
            "--format",
            "--threads",
            "-x",
            "--nothing",
            "--debug")
        .list()
        .ofMaxSize(7);
  }
}
