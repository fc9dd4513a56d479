package org.rimefast.check;

import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceText;
import org.rimefast.plan.Plan;
import org.rimefast.plan.PlanReader;
import org.rimefast.plan.PlanReading;

/** Makes plans and standards from text, as their authors would. */
final class Given {
  static final Dictionary DICTIONARY = SteelModules.dictionary();

  private Given() {}

  /** Reads a plan; single quotes stand for double ones. */
  static Plan plan(String json) {
    PlanReading reading =
        new PlanReader()
            .read("plan.json", json.replace('\'', '"').getBytes(StandardCharsets.UTF_8));
    return reading
        .plan()
        .orElseThrow(() -> new AssertionError("the plan has faults: " + reading.faults()));
  }

  /**
   * A 40 ft high-cube module in millimetres, side profile with the first rib at {@code phase},
   * studs 41.3 mm deep, 12.7 mm lining.
   *
   * @param more further members of the plan, each with a comma before it
   */
  static Plan module(double phase, double standoff, String more) {
    return plan(json(phase, standoff, more));
  }

  /** The same as text. */
  static String json(double phase, double standoff, String more) {
    return """
        {'format': 'rimefast-plan-1', 'id': 'test', 'title': 'Test (invented)', 'units': 'mm',
         'room': {'use': 'bunk room', 'temperature': '21 degC', 'humidity': '35 %%'},
         'site': {'outdoorDesignTemperature': '-38 degC'},
         'shell': {'size': '45G1'},
         'faces': {
           'default': {'profile': 'side wall', 'phase': %s, 'sheet': 1.6, 'standoff': %s,
             'stud': {'depth': 41.3, 'flange': 31.75, 'thickness': 0.84}, 'lining': 12.7,
             'foam': {'kind': 'closed-cell', 'thickness': '3 in', 'conductivity': '0.025 W/(m K)'}},
           'floor': {'profile': 'plywood'}, 'roof': {'profile': 'roof'}}%s}
        """
        .formatted(phase, standoff, more);
  }

  /** A box on the left wall, 54 mm wide and 47.6 mm deep, flush with the lining. */
  static String box(String id, double along) {
    return "{'id': '%s', 'kind': 'device', 'face': 'left', 'along': %s, 'up': 1200, 'width': 54, 'height': 76, 'depth': 47.6, 'mount': 'flush', 'material': 'steel'}"
        .formatted(id, along);
  }

  /** A standard of one rule with this sentence. */
  static Standard rule(String sentence) {
    return rule("", sentence);
  }

  /** A standard of these definitions and one rule with this sentence. */
  static Standard rule(String definitions, String sentence) {
    return standard(
        definitions
            + """
        rule r "A rule"
          %s
          severity hold
          stage layout
          because "a reason"
          source "common practice, no source"
        """
                .formatted(sentence));
  }

  /** A standard of these statements. */
  static Standard standard(String statements) {
    Compilation compilation = compile(statements);
    return compilation
        .standard()
        .orElseThrow(
            () ->
                new AssertionError(
                    compilation.diagnostics().stream()
                        .map(Diagnostic::headline)
                        .collect(Collectors.joining("\n", "not compiled:\n", "\n" + statements))));
  }

  static Compilation compile(String statements) {
    return new RuleCompiler(DICTIONARY.vocabulary())
        .compile(new SourceText("test.rime", "standard test edition 1\n\n" + statements));
  }

  /** What one sentence says of a plan; both evaluators are asked of every element. */
  static RuleResult check(String sentence, Plan plan) {
    Checker checker = new Checker(DICTIONARY, rule(sentence));
    PlanFacts facts = new PlanFacts(plan, DICTIONARY);
    for (int handle : facts.members(checker.standard().rules().get(0).subject().noun())) {
      checker.explain("r", handle, facts);
    }
    return checker.check(facts, CheckOptions.DEFAULT).rules().get(0);
  }

  /** What one sentence says of one element, whatever the verdict. */
  static Finding explain(String sentence, Plan plan, String element) {
    return new Checker(DICTIONARY, rule(sentence))
        .explain("r", element, new PlanFacts(plan, DICTIONARY));
  }
}
