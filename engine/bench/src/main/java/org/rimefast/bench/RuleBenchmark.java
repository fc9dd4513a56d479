package org.rimefast.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.rimefast.check.Checker;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Verdict;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.plan.Part;

/** One rule on every element it speaks of, in a plan of 2,000 parts that is read already. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class RuleBenchmark {
  /** The rules by id, in the order of the expressions of {@link WithCel}. */
  static final List<String> RULES = List.of("box", "depth", "stud", "touch", "cover");

  /** Which rule. */
  @Param({"box", "depth", "stud", "touch", "cover"})
  public String rule = "box";

  private final Checker checker = FiveRules.checker();
  private final PlanFacts facts = new PlanFacts(LargePlan.of(2_000, 1), FiveRules.DICTIONARY);
  private final Neighbours neighbours = new Neighbours(facts);
  private final WithCel cel = new WithCel(facts, neighbours);
  private int place;
  private int[] elements = {};

  /** Finds the rule's elements. */
  @Setup
  public void prepare() {
    place = RULES.indexOf(rule);
    elements = facts.members(subject());
  }

  private Noun subject() {
    return checker.standard().rules().get(place).subject().noun();
  }

  /** The compiled rule. */
  @Benchmark
  public Verdict[] ruleOfTheLanguage() {
    return checker.verdicts(rule, facts);
  }

  /** The same by hand. */
  @Benchmark
  public Verdict[] writtenByHand() {
    Verdict[] verdicts = new Verdict[elements.length];
    for (int i = 0; i < elements.length; i++) {
      verdicts[i] = byHand(elements[i]);
    }
    return verdicts;
  }

  /** The same by a general expression engine, without missing values and tolerances. */
  @Benchmark
  public boolean[] expressionEngine() {
    boolean[] holds = new boolean[elements.length];
    for (int i = 0; i < elements.length; i++) {
      holds[i] = cel.holds(place, elements[i]);
    }
    return holds;
  }

  private Verdict byHand(int element) {
    Part part = facts.part(element);
    return switch (place) {
      case 0 -> ByHand.box(facts.geometry(), part, element);
      case 1 -> ByHand.depth((Part.Box) part);
      case 2 -> ByHand.stud(facts.geometry(), part, element);
      case 3 -> ByHand.touch(facts, element, neighbours);
      default -> ByHand.cover(facts.geometry(), part, element);
    };
  }
}
