package org.rimefast.rulesets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Links between the guides, and to them, lead somewhere. */
class GuideLinksTest {
  private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]*)(?:#([^)]+))?\\)");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "writing-a-standard.md",
        "writing-a-plan.md",
        "language-server.md",
        "../README.md"
      })
  void everyLinkLeadsToAFileAndAHeading(String file) throws IOException {
    List<MatchResult> links = LINK.matcher(Files.readString(Path.of(file))).results().toList();
    assertThat(links).isNotEmpty();
    for (MatchResult link : links) {
      Path target =
          link.group(1).isEmpty() ? Path.of(file) : Path.of(file).resolveSibling(link.group(1));
      assertThat(target).exists();
      if (link.group(2) != null) {
        assertThat(Guide.read(target.toString()).headings())
            .extracting(GuideLinksTest::anchor)
            .contains(link.group(2));
      }
    }
  }

  @Test
  void theReadmeLeadsToEveryGuide() throws IOException {
    assertThat(Files.readString(Path.of("../README.md")))
        .contains(
            "(rulesets/writing-a-standard.md)",
            "(rulesets/writing-a-plan.md)",
            "(rulesets/language-server.md)",
            "(examples/tamarack-house/README.md)");
  }

  @ParameterizedTest
  @ValueSource(strings = {"writing-a-standard.md", "writing-a-plan.md"})
  void aGuideSaysWhatItDoesNotReplace(String file) throws IOException {
    assertThat(Files.readString(Path.of(file)).replaceAll("\\s+", " "))
        .contains(
            "support and do not replace local codes, the authority having jurisdiction, the product"
                + " data sheet and licensed trades",
            "thermal barrier",
            "isocyanates",
            "work on live parts is for the licensed");
  }

  private static String anchor(String heading) {
    return heading.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9 -]", "").replace(' ', '-');
  }
}
