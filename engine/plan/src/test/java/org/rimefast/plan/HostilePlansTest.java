package org.rimefast.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * Files that nobody would write by hand: each gives a clear fault, soon. The limit leaves room for
 * a busy machine; what it guards against would take hours.
 */
@Timeout(120)
class HostilePlansTest {
  private static final int HUNDRED_MEGABYTES = 100 << 20;
  private static final String HEAD =
      "{\"format\": \"rimefast-plan-1\", \"id\": \"p\", \"title\": \"t\", \"units\": \"mm\","
          + " \"shell\": {\"size\": \"45G1\"}";

  private static List<PlanFault> faults(byte[] text) {
    PlanReading reading = new PlanReader().read("t", text);
    assertThat(reading.plan()).isEmpty();
    return reading.faults();
  }

  private static List<PlanFault> faults(String text) {
    return faults(text.getBytes(StandardCharsets.UTF_8));
  }

  private static byte[] filled(String start, char fill, int length) {
    byte[] text = new byte[length];
    byte[] head = start.getBytes(StandardCharsets.UTF_8);
    Arrays.fill(text, (byte) fill);
    System.arraycopy(head, 0, text, 0, head.length);
    return text;
  }

  private static void isOnly(List<PlanFault> faults, String code) {
    assertThat(faults).hasSize(1);
    assertThat(faults.get(0).code()).isEqualTo(code);
    assertThat(faults.get(0).message()).hasSizeLessThan(300);
  }

  @Test
  void aHundredMegabytesOfBracketsAreTooDeep() {
    isOnly(faults(filled("", '[', HUNDRED_MEGABYTES)), "too-deep");
  }

  @Test
  void aHundredMegabytesOfBracketsInAFieldAreTooDeep() {
    isOnly(faults(filled(HEAD + ", \"boxes\": ", '[', HUNDRED_MEGABYTES)), "too-deep");
  }

  @Test
  void aTextOfAHundredMegabytesIsTooLarge() {
    isOnly(faults(filled("{\"id\": \"", 'x', HUNDRED_MEGABYTES)), "too-large");
  }

  @Test
  void aNameOfAHundredMegabytesIsTooLarge() {
    isOnly(faults(filled("{\"", 'x', HUNDRED_MEGABYTES)), "too-large");
  }

  @Test
  void aNumberOfAHundredMegabytesIsTooLarge() {
    List<PlanFault> faults = faults(filled("{\"id\": \"p\", \"x\": ", '7', HUNDRED_MEGABYTES));
    isOnly(faults, "too-large");
    assertThat(faults.get(0).message()).startsWith("A number");
    assertThat(faults.get(0).place()).isEqualTo(new PlanSource.Place(1, 18));
  }

  @Test
  void aHundredMegabytesOfBlanksHoldNoPlan() {
    isOnly(faults(filled("", ' ', HUNDRED_MEGABYTES)), "not-json");
  }

  @Test
  void aHundredMegabytesOfZerosAreNotUtf8() {
    isOnly(faults(new byte[HUNDRED_MEGABYTES]), "not-utf8");
  }

  @Test
  void aFileBeyondTheLimitIsNotLookedAt() {
    PlanReader reader = new PlanReader(new PlanLimits(1000, 32, 100, 100, 100));
    isOnly(reader.read("t", new byte[1001]).faults(), "too-large");
  }

  @Test
  void aNumberOfTenThousandDigitsIsOneFault() {
    String digits = "9".repeat(9_990);
    isOnly(
        faults(
            HEAD + ", \"bars\": [{\"id\": \"B\", \"face\": \"left\", \"along\": " + digits + "}]}"),
        "bad-number");
    isOnly(
        faults(
            HEAD
                + ", \"bars\": [{\"id\": \"B\", \"face\": \"left\", \"along\": \""
                + digits
                + " mm\"}]}"),
        "bad-number");
  }

  @Test
  void hugeExponentsAreOneFault() {
    for (String number :
        List.of("1e999999999", "1e-999999999", "1e99999999999999999999", "-1E+2147483648")) {
      isOnly(
          faults(
              HEAD
                  + ", \"bars\": [{\"id\": \"B\", \"face\": \"left\", \"along\": "
                  + number
                  + "}]}"),
          "bad-number");
    }
  }

  @Test
  void aHugeExponentInACountIsOneFault() {
    isOnly(
        faults(
            HEAD
                + ", \"bars\": [{\"id\": \"B\", \"face\": \"left\", \"along\": 1,"
                + " \"repeat\": {\"count\": 1e999999999, \"spacing\": 1}}]}"),
        "bad-number");
  }

  @Test
  void manyRowsOfAMillionAreTooLarge() {
    StringBuilder text = new StringBuilder(HEAD).append(", \"bars\": [");
    for (int i = 0; i < 1000; i++) {
      text.append(i == 0 ? "" : ", ")
          .append("{\"id\": \"B")
          .append(i)
          .append("\", \"face\": \"left\", \"along\": 1,")
          .append(" \"repeat\": {\"count\": 1000000, \"spacing\": \"0.001 mm\"}}");
    }
    List<PlanFault> faults = faults(text.append("]}").toString());
    assertThat(faults).hasSize(999).extracting(PlanFault::code).containsOnly("too-large");
  }

  @Test
  void aMillionItemsInARowAreRead() {
    String text =
        HEAD
            + ", \"bars\": [{\"id\": \"B\", \"face\": \"left\", \"along\": 1,"
            + " \"repeat\": {\"count\": 1000000, \"spacing\": \"0.001 mm\"}}]}";
    PlanReading reading = new PlanReader().read("t", text.getBytes(StandardCharsets.UTF_8));
    assertThat(reading.faults()).isEmpty();
    assertThat(reading.plan().orElseThrow().parts()).hasSize(1_000_000);
  }

  @Test
  void aMillionUnknownFieldsAreListedUpToTheLimit() {
    StringBuilder text = new StringBuilder(HEAD);
    for (int i = 0; i < 1_000_000; i++) {
      text.append(",\"x").append(i).append("\":1");
    }
    List<PlanFault> faults = faults(text.append('}').toString());
    assertThat(faults).hasSize(1001);
    assertThat(faults.get(1000).message()).startsWith("999000 more faults");
  }

  @Test
  void thousandsOfOpeningsThatAllOverlapAreEachReportedOnce() {
    StringBuilder text = new StringBuilder(HEAD).append(", \"openings\": [");
    for (int i = 0; i < 20_000; i++) {
      text.append(i == 0 ? "" : ", ")
          .append("{\"id\": \"D")
          .append(i)
          .append("\", \"face\": \"left\", \"from\": 100, \"sill\": ")
          .append(i % 1000)
          .append(", \"width\": 900, \"height\": 900}");
    }
    List<PlanFault> faults = faults(text.append("]}").toString());
    assertThat(faults).hasSize(1001);
    assertThat(faults.get(0).code()).isEqualTo("overlapping-openings");
  }

  @Test
  void thousandsOfPartsAndOpeningsAreComparedSoon() {
    StringBuilder text = new StringBuilder(HEAD);
    text.append(", \"openings\": [{\"id\": \"D\", \"face\": \"left\", \"from\": 0, \"sill\": 10,")
        .append(" \"width\": 0.1, \"height\": 0.1,")
        .append(" \"repeat\": {\"count\": 60000, \"spacing\": 0.2}}]")
        .append(", \"bars\": [{\"id\": \"B\", \"face\": \"left\", \"along\": 0.15, \"up\": 10.05,")
        .append(" \"repeat\": {\"count\": 60000, \"spacing\": 0.2}}]}");
    PlanReading reading =
        new PlanReader().read("t", text.toString().getBytes(StandardCharsets.UTF_8));
    assertThat(reading.faults()).isEmpty();
  }

  @Test
  void noCutOrChangedByteMakesTheReaderThrow() throws java.io.IOException {
    byte[] whole =
        java.nio.file.Files.readAllBytes(PlanReaderTest.EXAMPLES.resolve("wet-lab.json"));
    PlanReader reader = new PlanReader();
    for (int length = 0; length < whole.length - 2; length++) {
      PlanReading reading = reader.read("t", Arrays.copyOf(whole, length));
      assertThat(reading.faults()).as("cut at %d", length).isNotEmpty();
      assertThat(reading.faults())
          .as("cut at %d", length)
          .allMatch(fault -> fault.code().equals("not-json") || fault.code().equals("not-utf8"));
    }
    Random random = new Random(7);
    String signs = "{}[]\",:\\0123456789eE+-. \n\t/abNnull\u0000\u00ff\u00e2";
    for (int i = 0; i < 3_000; i++) {
      byte[] changed = whole.clone();
      for (int k = 0; k <= random.nextInt(3); k++) {
        changed[random.nextInt(changed.length)] =
            (byte) signs.charAt(random.nextInt(signs.length()));
      }
      PlanReading reading = reader.read("t", changed);
      assertThat(reading.plan().isPresent()).isEqualTo(reading.faults().isEmpty());
    }
  }
}
