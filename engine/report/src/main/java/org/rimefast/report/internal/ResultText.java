package org.rimefast.report.internal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rimefast.check.CheckResult;
import org.rimefast.check.ElementName;
import org.rimefast.check.Finding;
import org.rimefast.lang.rule.Rule;

/** Writes what a standard says of a plan: head, findings by element, missing values, summary. */
public final class ResultText {
  private static final int LABEL = 10;

  /** More elements than this that wait for one value are counted, not named. */
  private static final int NAMED = 20;

  private final CheckResult result;
  private final Page page;
  private final String file;
  private final FindingText findingText;

  /** Writes onto a page. */
  public ResultText(CheckResult result, Page page) {
    this.result = result;
    this.page = page;
    this.file = result.plan().source().name();
    this.findingText = new FindingText(page, file);
  }

  /** Writes everything. */
  public void write() {
    List<Finding> findings = result.findings();
    head();
    elements(ElementGroup.of(findings));
    missing(MissingGroup.of(findings));
    page.blank();
    new SummaryText(page, result).write();
  }

  private void head() {
    page.ends(Ink.HEADING, result.plan().title(), file);
    page.hang(2, "plan", LABEL, Ink.NONE, result.plan().id());
    String title = result.standard().title();
    page.hang(
        2,
        "standard",
        LABEL,
        Ink.NONE,
        result.standard().name()
            + " edition "
            + result.standard().edition()
            + (title.isEmpty() ? "" : ": " + title));
    result
        .options()
        .stage()
        .ifPresent(stage -> page.hang(2, "stage", LABEL, Ink.NONE, "up to and including " + stage));
    result
        .options()
        .asOf()
        .ifPresent(date -> page.hang(2, "as of", LABEL, Ink.NONE, date.toString()));
    SummaryText.outcome(page, result);
  }

  private void elements(List<ElementGroup> groups) {
    if (groups.isEmpty()) {
      return;
    }
    page.blank();
    page.section("FINDINGS BY ELEMENT, GRAVEST FIRST");
    boolean first = true;
    for (ElementGroup group : groups) {
      if (!first) {
        page.blank();
      }
      first = false;
      ElementName element = group.element();
      page.ends(Ink.HEADING, element.label(), FindingText.place(file, element.place()));
      if (!element.where().isEmpty()) {
        page.paragraph(0, element.where());
      }
      for (Finding finding : group.findings()) {
        page.blank();
        findingText.write(finding);
      }
      if (!group.waiting().isEmpty()) {
        page.blank();
        List<String> ids = group.waiting().stream().map(one -> one.rule().id()).toList();
        page.paragraph(2, "Undecided for want of a value (see below): " + String.join(", ", ids));
      }
    }
  }

  private void missing(List<MissingGroup> groups) {
    if (groups.isEmpty()) {
      return;
    }
    page.blank();
    page.section("VALUES THAT THE PLAN DOES NOT GIVE");
    page.paragraph(
        0, "The rules below each value are undecided, neither met nor broken, until it is given.");
    Map<String, Rule> rules = new LinkedHashMap<>();
    for (MissingGroup group : groups) {
      page.blank();
      page.ends(
          Ink.HEADING,
          described(group.descriptions(), group.isToBeAdded()),
          FindingText.place(file, group.value().place()));
      int waiting = group.findings();
      page.paragraph(
          2,
          (group.isToBeAdded() ? "To be added at " : "To be given at ")
              + group.value().pointer()
              + "; "
              + (waiting == 1 ? "1 verdict waits" : waiting + " verdicts wait")
              + (group.isToBeAdded() && waiting > 1 ? " for them:" : " for it:"));
      for (MissingGroup.Waiting one : group.waiting()) {
        rules.putIfAbsent(one.rule().id(), one.rule());
        waiting(one);
      }
    }
    page.blank();
    page.paragraph(0, "What these rules ask:");
    for (Rule rule : rules.values()) {
      page.blank();
      page.paragraph(2, FindingText.title(rule));
      findingText.why(rule, 4);
    }
  }

  private void waiting(MissingGroup.Waiting one) {
    String tag = SummaryText.capitals(one.rule().severity());
    page.hang(4, tag + ":", 0, Ink.UNDECIDED, FindingText.title(one.rule()));
    page.paragraph(6, named(one.elements().values()));
    if (!one.others().isEmpty()) {
      page.hang(6, "also waits for:", 0, Ink.NONE, String.join("; ", one.others()));
    }
  }

  private static String described(Set<String> descriptions, boolean added) {
    int more = descriptions.size() - 1;
    String first = descriptions.iterator().next();
    return more == 0
        ? first
        : first + ", and " + more + " more" + (added ? "" : " of the same row");
  }

  private static String named(Collection<ElementName> elements) {
    List<String> labels = new ArrayList<>();
    String noun = "";
    for (ElementName element : elements) {
      if (labels.size() == NAMED && elements.size() > NAMED + 1) {
        labels.add("and " + (elements.size() - NAMED) + " more");
        break;
      }
      labels.add(
          element.noun().equals(noun) && !element.id().isEmpty() ? element.id() : element.label());
      noun = element.noun();
    }
    return String.join(", ", labels);
  }
}
