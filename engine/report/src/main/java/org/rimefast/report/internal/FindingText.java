package org.rimefast.report.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rimefast.check.Evidence;
import org.rimefast.check.Finding;
import org.rimefast.check.Measurement;
import org.rimefast.check.MissingValue;
import org.rimefast.check.Verdict;
import org.rimefast.lang.rule.Change;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Rule;
import org.rimefast.plan.PlanSource;

/** Writes one finding: what decided it, with numbers, and why the rule asks for it. */
final class FindingText {
  private static final int LEAST_LABEL = 10;
  private static final int GREATEST_LABEL = 16;

  private final Page page;
  private final String file;

  /** Where each rule was told in full, by id: what it asks need not be read again and again. */
  private final Map<String, String> told = new HashMap<>();

  /** Facts that the finding at hand has shown already. */
  private final Set<String> shown = new HashSet<>();

  FindingText(Page page, String file) {
    this.page = page;
    this.file = file;
  }

  void write(Finding finding) {
    Rule rule = finding.rule();
    Ink ink = finding.verdict() == Verdict.UNDECIDED ? Ink.UNDECIDED : Ink.of(rule.severity());
    ink = finding.waiver().isPresent() ? Ink.NONE : ink;
    page.hang(2, tag(finding) + ":", 0, ink, title(rule));
    page.paragraph(4, finding.reason());
    shown.clear();
    for (Evidence evidence : finding.evidence()) {
      evidence(evidence, finding.reason(), 4);
    }
    finding
        .waiver()
        .ifPresent(waiver -> page.hang(4, "waived:", 10, Ink.NONE, SiteText.allowed(waiver)));
    String before = told.putIfAbsent(rule.id(), finding.element().label());
    if (before == null) {
      why(rule, 4);
    } else {
      fields(4, List.of(new Field("rule", "what it asks and why is told at " + before)));
    }
  }

  /** The sentence, the reason and the source of a rule. */
  void why(Rule rule, int indent) {
    List<Field> fields = new ArrayList<>();
    fields.add(new Field("rule", rule.sentence()));
    fields.add(new Field("because", rule.because()));
    fields.add(new Field("source", rule.source()));
    for (Change change : rule.changes()) {
      if (change.kind() != Change.Kind.ADDED) {
        fields.add(
            new Field(
                "amended",
                "by "
                    + ChangeText.by(change)
                    + ": "
                    + ChangeText.what(change)
                    + ", because "
                    + change.because()));
      }
    }
    fields(indent, fields);
  }

  static String title(Rule rule) {
    return rule.title() + " [" + rule.id() + "]";
  }

  static String place(String file, Optional<PlanSource.Place> place) {
    return place.map(at -> file + ":" + at.line() + ":" + at.column()).orElse(file);
  }

  private static String tag(Finding finding) {
    return SummaryText.capitals(finding.rule().severity())
        + " "
        + finding.verdict().words()
        + (finding.waiver().isPresent() ? " but waived" : "");
  }

  private void evidence(Evidence evidence, String told, int indent) {
    boolean known = evidence.statement().equals(told);
    int inner = known ? indent : indent + 2;
    if (!known) {
      page.hang(indent, "-", 2, Ink.NONE, evidence.statement());
    }
    List<Field> fields = new ArrayList<>();
    evidence.measurement().ifPresent(measurement -> addMeasurement(measurement, fields));
    for (Evidence.Fact fact : evidence.facts()) {
      if (shown.add(fact.name() + "\n" + fact.value())) {
        fields.add(new Field(fact.name(), fact.value()));
      }
    }
    for (MissingValue missing : evidence.missing()) {
      fields.add(new Field("missing", missing(missing)));
    }
    fields(inner, fields);
    for (Evidence part : evidence.parts()) {
      evidence(part, evidence.statement(), inner);
    }
  }

  private String missing(MissingValue missing) {
    return missing.description()
        + ", to be given at "
        + missing.pointer()
        + missing.place().map(at -> " (" + place(file, Optional.of(at)) + ")").orElse("");
  }

  private static void addMeasurement(Measurement measurement, List<Field> fields) {
    fields.add(
        new Field(
            "measured",
            measurement.quantity()
                + ": "
                + measurement.measured()
                + measurement.measuredInPlanUnits().map(text -> " (" + text + ")").orElse("")));
    fields.add(
        new Field(
            "limit",
            words(measurement.comparison())
                + " "
                + measurement.limitText()
                + measurement.limitName().map(name -> " (" + name + ")").orElse("")));
    addMargin(measurement, fields);
  }

  private static void addMargin(Measurement measurement, List<Field> fields) {
    Comparison comparison = measurement.comparison();
    if (comparison == Comparison.EQUAL || comparison == Comparison.NOT_EQUAL) {
      return;
    }
    boolean floor = comparison == Comparison.AT_LEAST || comparison == Comparison.MORE_THAN;
    // Within tolerances the margin is that of the worst case.
    String upTo = measurement.least() < measurement.most() ? "up to " : "";
    if (measurement.margin() < 0) {
      fields.add(new Field(floor ? "short by" : "over by", upTo + measurement.marginText()));
    } else if (measurement.margin() > 0) {
      String atLeast = upTo.isEmpty() ? "" : "at least ";
      fields.add(new Field("to spare", atLeast + measurement.marginText()));
    } else {
      fields.add(new Field("to spare", "nothing, it lies on the limit"));
    }
  }

  private static String words(Comparison comparison) {
    return switch (comparison) {
      case AT_LEAST -> "at least";
      case MORE_THAN -> "more than";
      case AT_MOST -> "at most";
      case LESS_THAN -> "less than";
      case EQUAL -> "exactly";
      case NOT_EQUAL -> "other than";
    };
  }

  /** Labels in one column; one that is too long for it stands in its value's line. */
  private void fields(int indent, List<Field> fields) {
    int width = LEAST_LABEL;
    for (Field field : fields) {
      int length = length(field);
      width = length > GREATEST_LABEL ? width : Math.max(width, length + 2);
    }
    for (Field field : fields) {
      if (length(field) > GREATEST_LABEL) {
        page.hang(indent, field.label() + ":", 0, Ink.NONE, field.value());
      } else if (!field.value().isEmpty()) {
        page.hang(indent, field.label(), width, Ink.NONE, field.value());
      }
    }
  }

  private static int length(Field field) {
    return Page.length(VisibleText.of(field.label()));
  }

  private record Field(String label, String value) {}
}
