package org.rimefast.lang.rule;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;

/**
 * A permission to leave a rule broken, for some elements and for a time. What is waived stays
 * broken and stays in the report.
 *
 * @param rule the id of the rule or inspect item
 * @param elements ids, names of faces, or {@code room}; empty if the elements are described
 * @param selection which elements, where they are described
 * @param target which elements, in the words it is written in
 * @param plan the id of the one plan that it is for; every plan if empty
 * @param because why it is allowed
 * @param approvedBy who allowed it
 * @param from the first day
 * @param until the last day
 * @param bound how far off the limit it reaches; any distance if empty
 * @param source the text it was read from
 * @param span where it stands there
 */
public record Waiver(
    String rule,
    List<String> elements,
    Optional<Selection> selection,
    String target,
    Optional<String> plan,
    String because,
    String approvedBy,
    LocalDate from,
    LocalDate until,
    Optional<Bound> bound,
    SourceText source,
    Span span) {

  /**
   * Elements by what is true of them.
   *
   * @param subject stands for each of them in turn
   * @param where what is true of them; all of the kind if empty
   */
  public record Selection(Variable subject, Optional<Condition> where) {}

  /**
   * How far off the rule's limit a waiver reaches, both ends counted in.
   *
   * @param comparison at least for {@code down to}, at most for {@code up to}
   * @param limit the number written
   * @param kept true of an element of the rule that is no worse than that
   */
  public record Bound(Comparison comparison, Value.Literal limit, Condition kept) {
    /** {@code down to 1-1/2 in}. */
    public String words() {
      return (comparison == Comparison.AT_LEAST ? "down to " : "up to ") + limit.quantity().text();
    }
  }

  /** Copies the list; refuses a period that ends before it begins. */
  public Waiver {
    elements = List.copyOf(elements);
    Types.require(elements.isEmpty() == selection.isPresent(), "named or described elements");
    Types.require(!until.isBefore(from), "a period that begins before it ends");
  }
}
