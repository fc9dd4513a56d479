package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.syntax.Operand;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.source.Span;

/**
 * An operand cut at the first {@code at least} or the like: {@code clearance of at least 50 mm}.
 *
 * @param left what stands before it; empty if it comes first
 * @param right what stands after it; empty if nothing does
 */
record BoundSplit(
    Optional<Operand> left, Comparison comparison, Span bound, Optional<Operand> right) {

  /** The split, if the operand has such words. */
  static Optional<BoundSplit> of(Operand operand) {
    if (operand instanceof Phrase phrase) {
      return ofPhrase(phrase);
    }
    return operand instanceof Operand.Chain chain ? ofChain(chain) : Optional.empty();
  }

  private static Optional<BoundSplit> ofPhrase(Phrase phrase) {
    List<Phrase.Item> items = phrase.items();
    for (int i = 0; i < items.size(); i++) {
      if (items.get(i) instanceof Phrase.BoundItem bound) {
        List<Phrase.Item> before = items.subList(0, i);
        if (!before.isEmpty() && isOf(before.get(before.size() - 1))) {
          before = before.subList(0, before.size() - 1);
        }
        return Optional.of(
            new BoundSplit(
                phrase(before),
                bound.bound().comparison(),
                bound.span(),
                phrase(items.subList(i + 1, items.size()))));
      }
    }
    return Optional.empty();
  }

  private static boolean isOf(Phrase.Item item) {
    return item instanceof Phrase.WordItem word && word.text().equals("of");
  }

  private static Optional<Operand> phrase(List<Phrase.Item> items) {
    if (items.isEmpty()) {
      return Optional.empty();
    }
    Span span = items.get(0).span().to(items.get(items.size() - 1).span());
    return Optional.of(new Phrase(items, span));
  }

  private static Optional<BoundSplit> ofChain(Operand.Chain chain) {
    List<Operand.Operator> operators = chain.operators();
    int last = chain.operands().size() - 1;
    for (int i = 0; i <= last; i++) {
      Optional<BoundSplit> inner = of(chain.operands().get(i));
      if (inner.isPresent()) {
        List<Operand> left = new ArrayList<>(chain.operands().subList(0, i));
        inner.get().left().ifPresent(left::add);
        List<Operand> right = new ArrayList<>();
        inner.get().right().ifPresent(right::add);
        // A sign right behind the words stands before no number that it could belong to.
        if (!right.isEmpty()) {
          right.addAll(chain.operands().subList(i + 1, last + 1));
        }
        boolean dangling = i > 0 && inner.get().left().isEmpty();
        return Optional.of(
            new BoundSplit(
                dangling
                    ? Optional.empty()
                    : chain(left, operators.subList(0, Math.max(0, left.size() - 1))),
                inner.get().comparison(),
                inner.get().bound(),
                chain(
                    right,
                    operators.subList(
                        operators.size() - Math.max(0, right.size() - 1), operators.size()))));
      }
    }
    return Optional.empty();
  }

  private static Optional<Operand> chain(List<Operand> operands, List<Operand.Operator> operators) {
    if (operands.size() <= 1) {
      return operands.stream().findFirst();
    }
    Span span = operands.get(0).span().to(operands.get(operands.size() - 1).span());
    return Optional.of(new Operand.Chain(operands, operators, span));
  }
}
