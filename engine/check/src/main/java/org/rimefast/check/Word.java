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
   * @param candidates finds the elements for which the relation can hold at its first slot for an
   *     element, so that not all need be asked; empty if all must be
   * @param subjects finds the elements of which the relation can hold with a given element at that
   *     slot; empty if all must be asked
   */
  record RelationWord(
      TruthFunction function,
      Optional<CandidateFunction> candidates,
      Optional<CandidateFunction> subjects,
      Explainer explainer)
      implements Word {}

  /**
   * A part of an element's path.
   *
   * @param function finds where it is
   */
  record StretchWord(StretchFunction function, Explainer explainer) implements Word {}

  /**
   * A relation that holds if a chain of elements, each leading to the next, goes from one element
   * to another: {@code reach _ without passing _}. Nothing reaches itself. The engine follows the
   * chain; what it passes are the elements in between.
   *
   * @param function finds where a chain leads from one element
   * @param steps why one step of a chain is not certain
   */
  record ChainWord(NeighbourFunction function, StepExplainer steps) implements Word {
    @Override
    public Explainer explainer() {
      return Explainer.NONE;
    }
  }

  /** Finds the stretches of an element's path. */
  @FunctionalInterface
  interface StretchFunction {
    void find(PlanFacts facts, int element, Arguments arguments, Stretches found);
  }

  /** Finds the elements that a chain leads to from one element, each once, in any order. */
  @FunctionalInterface
  interface NeighbourFunction {
    void find(PlanFacts facts, int element, Neighbours found);
  }

  /** Explains why it is not certain that a chain leads from one element to the next. */
  @FunctionalInterface
  interface StepExplainer {
    /** Explains nothing. */
    StepExplainer NONE = (facts, from, to, explanation) -> {};

    void explain(PlanFacts facts, int from, int to, Explanation explanation);
  }

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
     * Adds candidates for the first slot at which an element stands, or for the subject if {@code
     * element} is what stands at that slot; an element that it leaves out is one for which the
     * relation certainly does not hold. {@code arguments} is to be asked for the other slots only.
     */
    void find(PlanFacts facts, int element, Arguments arguments, HandleList candidates);
  }
}
