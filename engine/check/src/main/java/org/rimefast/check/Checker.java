package org.rimefast.check;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.internal.Hashes;
import org.rimefast.check.internal.Parallel;
import org.rimefast.check.internal.Words;
import org.rimefast.check.internal.hot.Frame;
import org.rimefast.check.internal.hot.RuleProgram;
import org.rimefast.check.internal.reference.ReferenceEvaluator;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Waiver;
import org.rimefast.plan.Plan;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Checks plans against one standard. Immutable and safe to share between threads.
 *
 * <p>Verdicts come from a fast pass; every element that is not plainly met or not applicable is
 * then worked out again by a slow evaluator that records why. The two must agree: if they do not,
 * that is our own bug and an {@link IllegalStateException} says so. When a plan is checked, both
 * ask only the elements that the indexes of words do not rule out; {@link #explain} asks every one.
 */
public final class Checker {
  /** Name and version of the engine, as results name it. */
  public static final String ENGINE = "rimefast 0.1.0";

  private static final Logger LOG = LoggerFactory.getLogger(Checker.class);

  private final Dictionary dictionary;
  private final Standard standard;
  private final String standardHash;
  private final Words words;
  private final List<RuleProgram> programs;

  /**
   * A checker for a standard that was compiled with the dictionary's vocabulary.
   *
   * @throws IllegalArgumentException if the standard has a word that the dictionary lacks
   */
  public Checker(Dictionary dictionary, Standard standard) {
    this.dictionary = dictionary;
    this.standard = standard;
    standardHash = hash(standard);
    words = new Words(dictionary.lookup());
    standard.rules().forEach(rule -> place(rule.stage()));
    programs = standard.rules().stream().map(rule -> new RuleProgram(rule, words)).toList();
  }

  /** SHA-256 of a standard's text with all that it includes and builds on, in hex. */
  public static String hash(Standard standard) {
    return Hashes.sha256(standard.source().text().getBytes(StandardCharsets.UTF_8));
  }

  /** The standard. */
  public Standard standard() {
    return standard;
  }

  /** Checks a plan. */
  public CheckResult check(Plan plan, CheckOptions options) {
    return check(new PlanFacts(plan, dictionary, options.asOf()), options);
  }

  /**
   * Checks a plan whose facts were made before with the same dictionary.
   *
   * @throws IllegalArgumentException if the options name a stage that the vocabulary does not have
   */
  public CheckResult check(PlanFacts facts, CheckOptions options) {
    return check(facts, options, List.of());
  }

  /**
   * Checks a plan, of which some findings are waived.
   *
   * @param waivers compiled for this checker's standard; where two cover one finding, the first
   *     counts
   * @throws IllegalArgumentException if there are waivers and the options name no date that counts
   *     as today, or a waiver is for a rule that the standard does not have
   */
  public CheckResult check(Plan plan, CheckOptions options, List<Waiver> waivers) {
    return check(new PlanFacts(plan, dictionary, options.asOf()), options, waivers);
  }

  /**
   * Checks a plan whose facts were made before with the same dictionary, and of which some findings
   * are waived.
   *
   * @throws IllegalArgumentException as the other methods
   */
  public CheckResult check(PlanFacts facts, CheckOptions options, List<Waiver> waivers) {
    List<RuleProgram> due = new ArrayList<>();
    List<String> notDue = new ArrayList<>();
    int last = options.stage().map(this::place).orElse(Integer.MAX_VALUE);
    for (RuleProgram program : programs) {
      if (place(program.rule().stage()) <= last) {
        due.add(program);
      } else {
        notDue.add(program.rule().id());
      }
    }
    List<ActiveWaiver> active = active(waivers, due, facts, options);
    List<RuleResult> results =
        Parallel.map(due, options.threads(), program -> result(program, facts, active));
    LOG.debug("{}: {} rules on {} elements", facts.plan().id(), due.size(), facts.size());
    return new CheckResult(
        ENGINE,
        standard,
        standardHash,
        facts.plan(),
        options,
        results,
        notDue,
        active.stream().map(ActiveWaiver::use).toList(),
        new UnaskedReadings(facts, this::find).find());
  }

  private List<ActiveWaiver> active(
      List<Waiver> waivers, List<RuleProgram> due, PlanFacts facts, CheckOptions options) {
    List<ActiveWaiver> active = new ArrayList<>();
    for (Waiver waiver : waivers) {
      LocalDate asOf =
          options
              .asOf()
              .orElseThrow(
                  () -> new IllegalArgumentException("waivers need a date that counts as today"));
      RuleProgram program = program(waiver.rule());
      active.add(
          new ActiveWaiver(waiver, program.rule(), due.contains(program), facts, asOf, words));
    }
    return active;
  }

  /** The verdicts of one rule, by the fast pass alone, for the subject's elements in order. */
  public Verdict[] verdicts(String ruleId, PlanFacts facts) {
    RuleProgram program = program(ruleId);
    Frame frame = program.frame(facts);
    int[] elements = facts.members(program.rule().subject().noun());
    Verdict[] verdicts = new Verdict[elements.length];
    for (int i = 0; i < elements.length; i++) {
      verdicts[i] = program.verdict(frame, elements[i]);
    }
    return verdicts;
  }

  /**
   * What one rule says of one element, explained, whatever the verdict.
   *
   * @throws IllegalArgumentException if there is no such rule or element
   */
  public Finding explain(String ruleId, String elementId, PlanFacts facts) {
    int handle = facts.handleOf(elementId);
    if (handle < 0) {
      throw new IllegalArgumentException("the plan has no element " + elementId);
    }
    return explain(ruleId, handle, facts);
  }

  /**
   * The same for an element by its handle, such as a face or the room, which have no id.
   *
   * @throws IllegalArgumentException if there is no such rule, or it does not speak of this element
   */
  public Finding explain(String ruleId, int handle, PlanFacts facts) {
    RuleProgram program = program(ruleId);
    Rule rule = program.rule();
    if (handle < 0 || handle >= facts.size() || !facts.isMember(rule.subject().noun(), handle)) {
      throw new IllegalArgumentException(
          "rule "
              + ruleId
              + " speaks of "
              + rule.subject().noun().plural()
              + ", and this is none: "
              + (handle < 0 || handle >= facts.size()
                  ? "handle " + handle
                  : facts.name(handle).label()));
    }
    Verdict verdict = verdict(program, program.frame(facts), handle, facts);
    return explained(rule, handle, verdict, evaluator(facts));
  }

  /**
   * Works one rule out for every element that it speaks of, and tells each condition as it comes
   * out, those within others first. Conditions that cannot change the verdict may be told or not.
   *
   * @param watcher gets the condition of the typed rule, itself and no copy, and why it came out so
   * @throws IllegalArgumentException if there is no such rule
   */
  public void watch(String ruleId, PlanFacts facts, BiConsumer<Condition, Evidence> watcher) {
    Rule rule = program(ruleId).rule();
    ReferenceEvaluator evaluator = new ReferenceEvaluator(facts, words, standard.source(), watcher);
    for (int element : facts.members(rule.subject().noun())) {
      evaluator.explain(rule, element);
    }
  }

  private RuleProgram program(String ruleId) {
    return find(ruleId)
        .orElseThrow(() -> new IllegalArgumentException("the standard has no rule " + ruleId));
  }

  private Optional<RuleProgram> find(String ruleId) {
    return programs.stream().filter(program -> program.rule().id().equals(ruleId)).findFirst();
  }

  private int place(String stage) {
    int place = dictionary.vocabulary().stages().indexOf(stage);
    if (place < 0) {
      throw new IllegalArgumentException(
          "there is no stage "
              + stage
              + "; the stages are "
              + String.join(", ", dictionary.vocabulary().stages()));
    }
    return place;
  }

  private ReferenceEvaluator evaluator(PlanFacts facts) {
    return new ReferenceEvaluator(facts, words, standard.source());
  }

  private RuleResult result(RuleProgram program, PlanFacts facts, List<ActiveWaiver> active) {
    Rule rule = program.rule();
    // A waiver is for one rule, so no other thread has it.
    List<ActiveWaiver> waivers = active.stream().filter(waiver -> waiver.isFor(rule)).toList();
    Frame frame = program.frame(facts);
    ReferenceEvaluator evaluator = ReferenceEvaluator.sparing(facts, words, standard.source());
    Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
    for (Verdict verdict : Verdict.values()) {
      counts.put(verdict, 0);
    }
    List<Finding> findings = new ArrayList<>();
    int[] elements = facts.members(rule.subject().noun());
    for (int element : elements) {
      Verdict verdict = verdict(program, frame, element, facts);
      counts.merge(verdict, 1, Integer::sum);
      if (verdict != Verdict.MET && verdict != Verdict.NOT_APPLICABLE) {
        findings.add(explained(rule, element, verdict, evaluator));
      }
      Waiver permission = permission(waivers, element, verdict);
      if (permission != null) {
        int last = findings.size() - 1;
        findings.set(last, findings.get(last).waivedBy(permission));
      }
    }
    return new RuleResult(
        rule, counts, findings, appliedToNothing(rule, elements, counts, evaluator));
  }

  /** The first waiver that covers an element; null if none does. Every one takes note of it. */
  private static @Nullable Waiver permission(
      List<ActiveWaiver> waivers, int element, Verdict verdict) {
    Waiver first = null;
    for (ActiveWaiver waiver : waivers) {
      if (waiver.covers(element, verdict) && first == null) {
        first = waiver.waiver();
      }
    }
    return first;
  }

  private static Verdict verdict(RuleProgram program, Frame frame, int element, PlanFacts facts) {
    try {
      return program.verdict(frame, element);
    } catch (RuntimeException e) {
      throw new IllegalStateException(
          "rule "
              + program.rule().id()
              + " on "
              + facts.name(element).label()
              + ": a word of the vocabulary failed",
          e);
    }
  }

  private static Finding explained(
      Rule rule, int element, Verdict verdict, ReferenceEvaluator evaluator) {
    Finding finding = evaluator.explain(rule, element);
    if (finding.verdict() != verdict) {
      throw new IllegalStateException(
          "rule "
              + rule.id()
              + " on "
              + finding.element().label()
              + ": the fast pass says "
              + verdict
              + ", the reference says "
              + finding.verdict());
    }
    return finding;
  }

  private static Optional<String> appliedToNothing(
      Rule rule, int[] elements, Map<Verdict, Integer> counts, ReferenceEvaluator evaluator) {
    if (elements.length == 0) {
      return Optional.of("the plan has no " + rule.subject().noun().plural());
    }
    if (counts.getOrDefault(Verdict.NOT_APPLICABLE, 0) < elements.length) {
      return Optional.empty();
    }
    String first = evaluator.explain(rule, elements[0]).reason();
    return Optional.of(
        elements.length == 1
            ? first
            : "it spoke of none of the "
                + elements.length
                + " "
                + rule.subject().noun().plural()
                + "; for the first, "
                + first);
  }
}
