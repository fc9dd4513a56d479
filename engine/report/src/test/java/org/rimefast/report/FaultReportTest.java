package org.rimefast.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;
import org.rimefast.plan.PlanFault;
import org.rimefast.plan.PlanSource;

class FaultReportTest {
  @Test
  void eachFaultOfAPlanHasPlaceMessageAndRemedy() throws IOException {
    List<PlanFault> faults =
        List.of(
            new PlanFault(
                "unknown-field",
                "/boxes/2/detph",
                new PlanSource.Place(48, 7),
                "A box has no field \"detph\".",
                "Write \"depth\", or leave the field out if the depth is not known yet; a rule that"
                    + " needs it then says so."),
            new PlanFault(
                "missing-field", "", new PlanSource.Place(1, 1), "The plan has no \"units\".", ""),
            new PlanFault(
                "negative-size",
                "/boxes/3/depth",
                null,
                "The depth of box \u202eJ-1 is -4 mm.",
                "Give a depth greater than 0."));
    Golden.check("plan-faults.txt", PlanFaultReport.write("bunk.json", faults, TextOptions.PLAIN));
  }

  @Test
  void eachFaultOfAStandardIsShownInItsLine() throws IOException {
    SourceText text = new SourceText("house.rime", "standard house edition 1\nbosk must sit\n");
    Diagnostic error =
        new Diagnostic(
            DiagnosticCode.UNKNOWN_WORD,
            Diagnostic.Level.ERROR,
            new Span(25, 29),
            "\"bosk\" is no word that rules know.",
            "Did you mean box?",
            List.of(),
            List.of());
    Diagnostic warning =
        new Diagnostic(
            DiagnosticCode.UNKNOWN_WORD,
            Diagnostic.Level.WARNING,
            new Span(9, 14),
            "A name that is often used.",
            "",
            List.of(),
            List.of());
    Compilation compilation = new Compilation(text, Optional.empty(), List.of(warning, error));
    Golden.check("standard-faults.txt", StandardFaultReport.write(compilation, TextOptions.PLAIN));
    assertThat(UnusableInput.standard(compilation).faults())
        .singleElement()
        .satisfies(fault -> assertThat(fault.place()).contains(new PlanSource.Place(2, 1)));
  }

  @Test
  void aSoundStandardHasNothingToTell() {
    SourceText text = new SourceText("house.rime", "");
    Compilation compilation =
        new Compilation(text, Optional.of(SampleResults.standard()), List.of());
    assertThat(StandardFaultReport.write(compilation, TextOptions.PLAIN)).isEmpty();
  }
}
