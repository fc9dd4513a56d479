package org.rimefast.bench;

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
import org.rimefast.check.SteelModules;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceText;

/** A standard of many rules, from text to typed rules. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class CompileBenchmark {
  /** How many rules. */
  @Param({"1250", "2500", "5000"})
  public int rules = 1250;

  private final RuleCompiler compiler = new RuleCompiler(SteelModules.dictionary().vocabulary());
  private SourceText text = new SourceText("", "");

  /** Makes the text. */
  @Setup
  public void prepare() {
    text = ManyRules.of(rules, 1);
  }

  /** Compiles it. */
  @Benchmark
  public Standard compile() {
    return compiler.compile(text).standard().orElseThrow();
  }
}
