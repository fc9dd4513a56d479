package org.rimefast.check;

import java.util.Optional;

/**
 * What a word of the vocabulary does on a plan. Functions must be pure, must neither allocate nor
 * throw (a number that cannot be worked out is {@link Reading#failed()}), and get elements as
 * handles of {@link PlanFacts}.
 */
public sealed interface Word {
  /** How the word explains its answer; asked only for findings. */
  Explainer explainer();

  /** Explains an answer: adds facts seen and values missing. */
  @FunctionalInterface
  interface Explainer {
    /** Explains nothing. */
    Explainer NONE = (facts, element, arguments, explanation) -> {};

    void explain(PlanFacts facts, int element, Arguments arguments, Explanation explanation);
  }

  /** A property that is a number, in SI units. */
  record NumberWord(NumberFunction function, Explainer explainer) implements Word {}

  /** A property that is one of a list of words. */
  record ChoiceWord(ChoiceFunction function, Explainer explainer) implements Word {}

  /** A property that is free text. */
  record TextWord(TextFunction function, Explainer explainer) implements Word {}

  /** The element that belongs to another. */
  record LinkWord(LinkFunction function, Explainer explainer) implements Word {}

  /**
   * A relation.
   *
   * @param candidates finds the elements for which the relation can hold at its first slot, so that
   *     not all need be asked; empty if all must be
   */
  record RelationWord(
      TruthFunction function, Optional<CandidateFunction> candidates, Explainer explainer)
      implements Word {}

  /** Measures a number. */
  @FunctionalInterface
  interface NumberFunction {
    void measure(PlanFacts facts, int element, Arguments arguments, Reading reading);
  }

  /** Tells which word of its list it is: its place in the list, or -1 if the plan does not say. */
  @FunctionalInterface
  interface ChoiceFunction {
    int choose(PlanFacts facts, int element, Arguments arguments);
  }

  /** Tells the text, or empty if the plan does not say. */
  @FunctionalInterface
  interface TextFunction {
    Optional<String> tell(PlanFacts facts, int element, Arguments arguments);
  }

  /** Finds the element: its handle, or -1 if the plan does not say. */
  @FunctionalInterface
  interface LinkFunction {
    int find(PlanFacts facts, int element);
  }

  /** Decides whether the relation holds. */
  @FunctionalInterface
  interface TruthFunction {
    Truth decide(PlanFacts facts, int element, Arguments arguments);
  }

  /** Finds the handles of all elements for which a relation may hold, each once, in any order. */
  @FunctionalInterface
  interface CandidateFunction {
    /**
     * Adds candidates for the first slot; an element that it leaves out is one for which the
     * relation certainly does not hold. {@code arguments} has the other slots only.
     */
    void find(PlanFacts facts, int element, Arguments arguments, HandleList candidates);
  }
}
