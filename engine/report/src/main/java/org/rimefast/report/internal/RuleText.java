package org.rimefast.report.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.rule.Change;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.RuleUses;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Value;

/** Writes what one rule says, and what each standard made of it. */
public final class RuleText {
  private static final int LABEL = 12;

  private final Page page;
  private final Standard standard;
  private final Rule rule;
  private final boolean withdrawn;

  /**
   * For one rule.
   *
   * @param withdrawn true if the standard does not ask it any more
   */
  public RuleText(Page page, Standard standard, Rule rule, boolean withdrawn) {
    this.page = page;
    this.standard = standard;
    this.rule = rule;
    this.withdrawn = withdrawn;
  }

  /**
   * Writes it.
   *
   * @param readAs the rule in other words
   */
  public void write(Optional<String> readAs) {
    page.paragraph(0, FindingText.title(rule));
    if (withdrawn) {
      page.paragraph(0, "WITHDRAWN: the standard does not ask this any more.");
    }
    page.blank();
    field("rule", rule.sentence());
    readAs.ifPresent(words -> field("read as", words));
    field("severity", rule.severity().word());
    field("stage", rule.stage());
    field("because", rule.because());
    field("source", rule.source());
    limits();
    layers();
    page.blank();
    page.hang(2, "CAUTION:", 0, Ink.HEADING, Caution.of(standard));
  }

  private void field(String label, String value) {
    page.hang(2, label, LABEL, Ink.NONE, value);
  }

  private void limits() {
    RuleUses uses = RuleUses.ofAll(rule);
    if (uses.literals().isEmpty() && uses.constants().isEmpty()) {
      return;
    }
    page.blank();
    page.section("LIMITS");
    for (Constant constant : uses.constants().values()) {
      List<String> said = new ArrayList<>();
      said.add(constant.value().quantity().text());
      constant.because().ifPresent(because -> said.add("because " + because));
      constant.source().ifPresent(source -> said.add("source: " + source));
      page.hang(2, constant.name() + ":", 0, Ink.NONE, String.join("; ", said));
    }
    List<String> numbers =
        uses.literals().stream()
            .map(Value.Literal::quantity)
            .map(quantity -> quantity.text())
            .distinct()
            .toList();
    if (!numbers.isEmpty()) {
      page.hang(2, "in the sentence and its terms:", 0, Ink.NONE, String.join(", ", numbers));
    }
  }

  private void layers() {
    page.blank();
    page.section("STANDARDS, THE LOWEST FIRST");
    boolean written = false;
    for (Standard layer : LayerChain.of(standard)) {
      String name = layer.name() + " edition " + layer.edition();
      List<Change> changes = rule.changes().stream().filter(change -> isBy(change, layer)).toList();
      Optional<Rule> there = layer.rule(rule.id());
      if (!written && there.isEmpty()) {
        page.hang(2, name + ":", 0, Ink.NONE, "does not have it");
      } else if (!written) {
        written = true;
        page.hang(2, name + ":", 0, Ink.NONE, "wrote it: " + there.get().sentence());
      } else if (changes.isEmpty()) {
        page.hang(
            2, name + ":", 0, Ink.NONE, there.isEmpty() ? "it is withdrawn" : "leaves it as it is");
      } else {
        page.paragraph(2, name + ":");
        changes.forEach(this::change);
      }
    }
  }

  private static boolean isBy(Change change, Standard layer) {
    return change.standard().equals(layer.name())
        && change.edition().equals(layer.edition())
        && change.kind() != Change.Kind.ADDED;
  }

  private void change(Change change) {
    page.hang(4, "-", 2, Ink.NONE, change.text());
    page.paragraph(6, ChangeText.what(change));
    page.hang(6, "because", 10, Ink.NONE, change.because());
    change.source().ifPresent(source -> page.hang(6, "source", 10, Ink.NONE, source));
  }
}
