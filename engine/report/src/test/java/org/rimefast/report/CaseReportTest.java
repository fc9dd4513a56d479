package org.rimefast.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;

class CaseReportTest {
  @Test
  void everythingIsTold() throws IOException {
    Golden.check("cases.txt", CaseReport.write(SampleCases.everything(), TextOptions.PLAIN));
  }

  @Test
  void casesThatComeOutAreCounted() throws IOException {
    Golden.check("cases-sound.txt", CaseReport.write(SampleCases.sound(), TextOptions.PLAIN));
  }

  @Test
  void oneCaseIsToldAsInTheWholeReport() {
    String whole = CaseReport.write(SampleCases.everything(), TextOptions.PLAIN);
    String one =
        CaseReport.one(
            SampleCases.everything().results().get(1), SampleCases.everything(), TextOptions.PLAIN);
    assertThat(one).contains("expected", "instead");
    assertThat(whole).startsWith(one);
  }
}
