package org.rimefast.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.rimefast.check.cases.CaseResults;
import org.rimefast.lang.rule.Rule;
import org.w3c.dom.Element;

class StandardPageTest {
  private static final String PAGE =
      StandardPage.write(SamplePages.cases(), SamplePages.vocabulary());
  private static final PageStructure STRUCTURE = PageStructure.of(PAGE);

  @Test
  void aStandardIsShownWhole() throws IOException {
    Golden.check(
        "standard.html",
        PAGE.replaceAll("(?s)<style>.*</style>", "<style></style>")
            .replaceAll("sha256-[^&]*&", "sha256-HASH&"));
  }

  @Test
  void theStyleIsAllowedByItsHashAndNothingElseIs() throws Exception {
    Matcher style = Pattern.compile("(?s)<style>(.*)</style>").matcher(PAGE);
    assertThat(style.find()).isTrue();
    byte[] hash =
        MessageDigest.getInstance("SHA-256")
            .digest(style.group(1).getBytes(StandardCharsets.UTF_8));
    assertThat(STRUCTURE.attributes("content"))
        .contains(
            "default-src 'none'; style-src 'sha256-"
                + Base64.getEncoder().encodeToString(hash)
                + "'; base-uri 'none'; form-action 'none'");
    assertThat(STRUCTURE.elementNames())
        .doesNotContain("script", "img", "link", "iframe", "object", "form");
    assertThat(STRUCTURE.attributes("style")).isEmpty();
    assertThat(PAGE).doesNotContain("url(").doesNotContain("@import");
  }

  @Test
  void everyLinkLeadsToAPlaceOfThePage() {
    List<String> ids = STRUCTURE.attributes("id");
    assertThat(ids).doesNotHaveDuplicates().contains("box-in-outer-bay", "steel-warm");
    assertThat(STRUCTURE.attributes("href"))
        .isNotEmpty()
        .allSatisfy(link -> assertThat(ids).contains(link.substring(1)))
        .allMatch(link -> link.startsWith("#"));
    assertThat(ids).containsAll(STRUCTURE.attributes("aria-labelledby"));
    assertThat(STRUCTURE.attributes("src")).isEmpty();
  }

  @Test
  void headingsGoDownOneLevelAtATime() {
    List<Integer> levels = STRUCTURE.headings();
    assertThat(levels.get(0)).isEqualTo(1);
    assertThat(levels.stream().filter(level -> level == 1)).hasSize(1);
    for (int i = 1; i < levels.size(); i++) {
      assertThat(levels.get(i)).isLessThanOrEqualTo(levels.get(i - 1) + 1);
    }
  }

  @Test
  void everyTableHasHeadersAndFullRows() {
    assertThat(STRUCTURE.all("table")).hasSizeGreaterThan(6);
    for (Element table : STRUCTURE.all("table")) {
      int columns = PageStructure.cells(table).get(0);
      assertThat(columns).isGreaterThan(2);
      assertThat(PageStructure.cells(table)).hasSizeGreaterThan(1).containsOnly(columns);
      assertThat(((Element) table.getElementsByTagName("tr").item(0)).getElementsByTagName("th"))
          .satisfies(heads -> assertThat(heads.getLength()).isEqualTo(columns));
    }
    assertThat(STRUCTURE.all("th"))
        .allSatisfy(head -> assertThat(head.getAttribute("scope")).isIn("col", "row"));
    assertThat(STRUCTURE.all("html").get(0).getAttribute("lang")).isEqualTo("en");
  }

  @Test
  void aRuleShowsItsOwnValueOfAConstantThatIsAnotherElsewhere() {
    assertThat(STRUCTURE.textOf("box-in-outer-bay"))
        .contains("60 mm foam behind a box (elsewhere 2 in)")
        .contains("foam behind a box: 60 mm, was 2 in (stricter)")
        .contains("severity fix, was hold (looser)")
        .contains("shop edition 2026-10")
        .contains("No case looks at this rule alone.");
    assertThat(STRUCTURE.textOf("damp-depth"))
        .contains("2 in foam behind a box one lift")
        .contains("50 % in a term that it uses");
  }

  @Test
  void severityIsAWordWhereverItIsMarked() {
    for (Element mark : STRUCTURE.all("span")) {
      if (mark.getAttribute("class").startsWith("severity ")) {
        assertThat(mark.getAttribute("class")).isEqualTo("severity " + mark.getTextContent());
      }
    }
  }

  /** Web Content Accessibility Guidelines 2.2, success criterion 1.4.3: 4.5 to 1 for any text. */
  @Test
  void everyTextColourStandsOutFromEveryBackground() throws IOException {
    String css =
        Files.readString(Path.of("src/main/resources/org/rimefast/report/standard-page.css"));
    List<String> colours = colours(css, "(?<![-a-z])color: (#[0-9a-f]{6});");
    List<String> backgrounds = colours(css, "background: (#[0-9a-f]{6});");
    assertThat(colours).hasSizeGreaterThan(4);
    assertThat(backgrounds).hasSizeGreaterThan(3).contains("#ffffff");
    for (String colour : colours) {
      for (String background : backgrounds) {
        assertThat(contrast(colour, background)).as(colour + background).isGreaterThan(4.5);
      }
    }
    assertThat(css.replaceAll("#[0-9a-f]{6}", "")).doesNotContain("#").doesNotContain("rgb");
  }

  @Test
  void blackOnWhiteHasTheContrastThatTheGuidelinesGiveForIt() {
    assertThat(contrast("#000000", "#ffffff")).isEqualTo(21);
    // The guidelines' own example of grey that just passes.
    assertThat(contrast("#767676", "#ffffff")).isBetween(4.5, 4.6);
  }

  @Test
  void casesThatWereNotRunAndCasesThatAreNotThereAreTold() {
    assertThat(StandardPage.write(SamplePages.house(), SamplePages.vocabulary()))
        .contains("The cases of this standard were not run for this page.")
        .doesNotContain("No case looks at this rule alone.");
    assertThat(
            StandardPage.write(
                new CaseResults(SamplePages.house(), List.of()), SamplePages.vocabulary()))
        .contains("This standard has no cases: nothing shows");
  }

  @Test
  void theDefaultLocaleDoesNotMatter() {
    Locale before = Locale.getDefault();
    try {
      for (String tag : List.of("tr", "ar-EG", "th-TH-u-ca-buddhist-nu-thai")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(StandardPage.write(SamplePages.cases(), SamplePages.vocabulary()))
            .isEqualTo(PAGE);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void everyRuleIsReadBack() {
    assertThat(PAGE).doesNotContain("There is no other sentence for it.");
    assertThat(SamplePages.house().rules()).extracting(Rule::id).hasSize(4);
  }

  private static List<String> colours(String css, String pattern) {
    return Pattern.compile(pattern)
        .matcher(css)
        .results()
        .map(found -> found.group(1))
        .distinct()
        .toList();
  }

  private static double contrast(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  /** Relative luminance, as the guidelines define it. */
  private static double luminance(String colour) {
    return 0.2126 * channel(colour, 1) + 0.7152 * channel(colour, 3) + 0.0722 * channel(colour, 5);
  }

  private static double channel(String colour, int at) {
    double value = Integer.parseInt(colour.substring(at, at + 2), 16) / 255.0;
    return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
  }
}
