package org.rimefast.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.rimefast.check.cases.CaseProblem;
import org.rimefast.check.cases.CaseResult;
import org.rimefast.check.cases.CaseResults;
import org.rimefast.check.cases.Mismatch;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.cases.CaseEdit;
import org.rimefast.lang.cases.CasePlan;
import org.rimefast.lang.cases.Expectation;
import org.rimefast.lang.rule.Change;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Question;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.rule.Withdrawal;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;
import org.rimefast.report.internal.VisibleText;
import org.rimefast.units.Quantity;

/** Texts that would become something else than text, if they were let. */
class HostilePageTest {
  private static final Span NOWHERE = new Span(0, 0);
  private static final String ATTACK =
      "\"'><script>alert(1)</script><!-- ]]> &lt; &#x202e; ${7*7} javascript:x\u202e\u2066\u0000\u0007"
          + "\u2028\uD800 \uDB40\uDC41 onload=\"x\" end";

  private final List<String> planted = new ArrayList<>();

  @Test
  void everyTextStaysText() {
    String page = StandardPage.write(hostile(), SamplePages.vocabulary());
    PageStructure structure = PageStructure.of(page);
    assertThat(structure.elementNames())
        .isSubsetOf(
            PageStructure.of(StandardPage.write(SamplePages.cases(), SamplePages.vocabulary()))
                .elementNames());
    String text = structure.text();
    List<String> attributes = structure.attributes("aria-label");
    assertThat(planted).hasSizeGreaterThan(40);
    for (String plant : planted) {
      assertThat(text).contains(VisibleText.of(plant));
    }
    assertThat(attributes).anyMatch(label -> label.contains("<script>alert(1)</script>"));
    assertThat(structure.attributes("onload")).isEmpty();
    assertThat(page.codePoints().filter(c -> c != '\n' && isHidden(c))).isEmpty();
    assertThat(page).doesNotContain("<script").doesNotContain("<!--");
  }

  @Test
  void linksToHostileNamesLeadThere() {
    PageStructure structure =
        PageStructure.of(StandardPage.write(hostile(), SamplePages.vocabulary()));
    List<String> ids = structure.attributes("id");
    assertThat(ids).doesNotHaveDuplicates().allMatch(id -> id.matches("[A-Za-z0-9._-]+"));
    assertThat(structure.attributes("href"))
        .allSatisfy(link -> assertThat(ids).contains(link.substring(1)));
  }

  /** The platform's own classes of characters; a tag character is of the class of formats. */
  private static boolean isHidden(int character) {
    int type = Character.getType(character);
    return type == Character.CONTROL || type == Character.FORMAT || type == Character.SURROGATE;
  }

  private String plant() {
    String plant = ATTACK + " " + planted.size();
    planted.add(plant);
    return plant;
  }

  private CaseResults hostile() {
    Standard house = SamplePages.house();
    List<Rule> rules = new ArrayList<>();
    for (Rule rule : house.rules()) {
      rules.add(rule(rule));
    }
    List<Withdrawal> withdrawn = new ArrayList<>();
    for (Withdrawal one : house.withdrawn()) {
      withdrawn.add(new Withdrawal(withoutChanges(one.rule()), change(one.change(), false)));
    }
    Standard standard =
        new Standard(
            plant(),
            plant(),
            plant(),
            plant(),
            house.constants().stream().map(this::constant).toList(),
            house.terms().stream().map(this::term).toList(),
            house.tables().stream().map(this::table).toList(),
            rules,
            List.of(),
            new SourceText("x", ATTACK),
            Optional.of(base()),
            withdrawn);
    return new CaseResults(standard, List.of(otherwise(rules.get(0)), notRun()));
  }

  private Standard base() {
    return new Standard(
        plant(), plant(), "", "", List.of(), List.of(), new SourceText("y", "standard"));
  }

  private Constant constant(Constant constant) {
    Value.Literal literal = constant.value();
    Quantity quantity = literal.quantity();
    return new Constant(
        plant(),
        new Value.Literal(
            new Quantity(quantity.number(), quantity.unit(), plant()), literal.type(), NOWHERE),
        Optional.of(plant()),
        Optional.of(plant()),
        NOWHERE);
  }

  /** Its name is part of its canonical sentence, which is shown only if it reads back. */
  private Term term(Term term) {
    return new Term(
        plant(),
        term.plural(),
        term.element(),
        term.condition(),
        Optional.of(plant()),
        Optional.of(plant()),
        NOWHERE);
  }

  private Table table(Table table) {
    return new Table(
        plant(),
        table.element(),
        table.inputs(),
        table.rows(),
        table.otherwise(),
        table.type(),
        Optional.of(plant()),
        Optional.of(plant()),
        NOWHERE);
  }

  private Rule rule(Rule rule) {
    List<Change> changes = new ArrayList<>();
    for (Change change : rule.changes()) {
      changes.add(change(change, change.kind() != Change.Kind.ADDED));
    }
    return new Rule(
        plant(),
        plant(),
        rule.subject(),
        rule.where(),
        rule.onlyIf(),
        rule.requirement(),
        rule.severity(),
        plant(),
        plant(),
        plant(),
        plant(),
        NOWHERE,
        rule.question()
            .map(question -> new Question(question.inspect(), plant(), true, question.limit())),
        NOWHERE,
        changes);
  }

  private Rule withoutChanges(Rule rule) {
    return new Rule(
        plant(),
        plant(),
        rule.subject(),
        rule.where(),
        rule.onlyIf(),
        rule.requirement(),
        rule.severity(),
        rule.stage(),
        rule.because(),
        rule.source(),
        plant(),
        NOWHERE,
        NOWHERE);
  }

  private Change change(Change change, boolean values) {
    return new Change(
        change.kind(),
        plant(),
        plant(),
        values ? plant() : change.text(),
        values ? plant() : change.before(),
        values ? plant() : change.after(),
        plant(),
        Optional.of(plant()),
        change.effect(),
        NOWHERE);
  }

  private CaseResult otherwise(Rule rule) {
    return new CaseResult(
        example(Optional.of(rule.id())),
        List.of(new Mismatch(Optional.of(rule), plant(), plant())),
        List.of());
  }

  private CaseResult notRun() {
    return new CaseResult(
        example(Optional.empty()), List.of(), List.of(new CaseProblem(plant(), plant())));
  }

  private Case example(Optional<String> rule) {
    return new Case(
        plant(),
        rule,
        new CasePlan.File(plant(), NOWHERE),
        List.of(
            new CaseEdit.Remove(new CaseEdit.Target(Optional.empty(), "R-1"), plant(), NOWHERE)),
        List.of(
            new Expectation(
                Optional.empty(),
                Expectation.Outcome.MET,
                List.of(),
                Optional.empty(),
                plant(),
                NOWHERE)),
        "x.rime",
        1,
        NOWHERE);
  }
}
