package org.rimefast.rulesets;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Checker;
import org.rimefast.check.Dictionary;
import org.rimefast.check.StandardFiles;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Pin;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.RuleUses;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.SourceText;
import org.rimefast.units.Quantity;
import org.rimefast.units.Rational;
import org.rimefast.units.Units;

/** House standards that build on a standard and give rules another number, grown or shrunk. */
final class AmendedStandards {
  private final Dictionary dictionary;
  private final Standard base;
  private final Random random;

  AmendedStandards(Dictionary dictionary, Standard base, Random random) {
    this.dictionary = dictionary;
    this.base = base;
    this.random = random;
  }

  /**
   * A number of a rule that was changed.
   *
   * @param grown true if it is larger now
   * @param plainLimit true if it is what something must at least be, and nothing else
   */
  record Amendment(boolean grown, boolean plainLimit) {}

  /**
   * A house standard.
   *
   * @param amendments by the id of the rule
   */
  record Amended(Checker checker, Map<String, Amendment> amendments) {}

  /** Each rule that has a number gets one of its numbers changed. */
  Amended next() {
    StringBuilder text = new StringBuilder();
    text.append("standard amended edition 2026-12\n  builds on ").append(base.name());
    text.append(" edition ").append(base.edition()).append('\n');
    Map<String, Amendment> amendments = new LinkedHashMap<>();
    for (Rule rule : base.rules()) {
      amend(rule, text, amendments);
    }
    return new Amended(new Checker(dictionary, compile(text.toString())), amendments);
  }

  private void amend(Rule rule, StringBuilder text, Map<String, Amendment> amendments) {
    RuleUses uses = RuleUses.ofSentence(rule);
    List<Constant> constants = List.copyOf(uses.constants().values());
    List<Value.Literal> literals = uses.literals();
    int which = constants.size() + (literals.size() == 1 ? 1 : 0);
    if (which == 0 || rule.question().isPresent()) {
      return;
    }
    int chosen = random.nextInt(which);
    Constant constant = chosen < constants.size() ? constants.get(chosen) : null;
    Quantity old = (constant == null ? literals.get(0) : constant.value()).quantity();
    boolean grown = random.nextBoolean();
    String number = changed(old, grown);
    if (number == null) {
      return;
    }
    text.append("\nin rule ").append(rule.id()).append(", ");
    text.append(constant == null ? "the limit" : constant.name()).append(" is ").append(number);
    text.append("\n  because \"trial (invented)\"\n");
    amendments.put(rule.id(), new Amendment(grown, isPlainLimit(rule, constant)));
  }

  /** Another number of the same unit; null where that is not plainly more or less. */
  private @Nullable String changed(Quantity old, boolean grown) {
    if (old.unit().equals(Units.ONE)) {
      Rational next = old.number().plus(Rational.of(grown ? 1 : -1));
      return next.signum() <= 0 || !next.isWhole() ? null : next.numerator().toString();
    }
    Rational factor = Rational.of((grown ? 105 : 35) + random.nextInt(60), 100);
    if (old.number().signum() <= 0) {
      return null;
    }
    return old.number().times(factor).toDecimal(12).toPlainString() + " " + old.unit().symbol();
  }

  private static boolean isPlainLimit(Rule rule, @Nullable Constant constant) {
    List<Condition> elsewhere = new ArrayList<>();
    rule.where().ifPresent(elsewhere::add);
    rule.onlyIf().ifPresent(elsewhere::add);
    boolean usedElsewhere =
        elsewhere.stream()
            .map(part -> rule.withConditions(Optional.empty(), Optional.empty(), part))
            .map(RuleUses::ofSentence)
            .anyMatch(
                uses ->
                    constant == null
                        ? !uses.literals().isEmpty()
                        : uses.constants().containsKey(constant.name()));
    return !usedElsewhere && isPlainLimit(rule.requirement(), constant);
  }

  /** True if the number stands once, to the right of an at-least that nothing turns round. */
  private static boolean isPlainLimit(Condition condition, @Nullable Constant constant) {
    if (condition instanceof Condition.And and) {
      return and.parts().stream().filter(part -> isPlainLimit(part, constant)).count() == 1
          && and.parts().stream().allMatch(part -> isSimple(part));
    }
    return condition instanceof Condition.Compare compare
        && compare.comparison() == Comparison.AT_LEAST
        && isSimple(compare)
        && (constant == null
            ? compare.right() instanceof Value.Literal
            : compare.right() instanceof Value.Named named && named.constant().equals(constant));
  }

  private static boolean isSimple(Condition condition) {
    return condition instanceof Condition.Holds
        || (condition instanceof Condition.Compare compare
            && compare.left() instanceof Value.Of of
            && of.arguments().isEmpty());
  }

  private Standard compile(String text) {
    RuleCompiler compiler = new RuleCompiler(dictionary.vocabulary());
    StandardFiles files = StandardFiles.beside(Path.of("amended.rime"));
    Compilation first = compiler.compile(new SourceText("amended.rime", text), files);
    StringBuilder pinned = new StringBuilder(text);
    first.pins().stream()
        .sorted(Comparator.comparingInt((Pin pin) -> pin.place().start()).reversed())
        .forEach(pin -> pinned.replace(pin.place().start(), pin.place().end(), pin.line()));
    Compilation second = compiler.compile(new SourceText("amended.rime", pinned.toString()), files);
    return second
        .standard()
        .orElseThrow(() -> new AssertionError(second.diagnostics() + "\n" + pinned));
  }
}
