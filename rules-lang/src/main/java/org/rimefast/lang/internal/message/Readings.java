package org.rimefast.lang.internal.message;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.vocabulary.Relation;

/**
 * Says a typed node in words that leave no second reading. Two nodes that mean the same have the
 * same words wherever they were written.
 */
public final class Readings implements Condition.Visitor<String>, Value.Visitor<String> {
  private final boolean ids;

  private Readings(boolean ids) {
    this.ids = ids;
  }

  /** The words of a condition. */
  public static String of(Condition condition) {
    return condition.accept(new Readings(false));
  }

  /** The words of a value. */
  public static String of(Value value) {
    return value.accept(new Readings(false));
  }

  /** As {@link #of(Condition)}, with the ids of the vocabulary, to tell nodes apart. */
  public static String exact(Condition condition) {
    return condition.accept(new Readings(true));
  }

  /** As {@link #of(Value)}, with the ids of the vocabulary, to tell nodes apart. */
  public static String exact(Value value) {
    return value.accept(new Readings(true));
  }

  private String named(String words, String id) {
    return ids ? words + " {" + id + "}" : words;
  }

  private String variable(Variable variable) {
    return "the " + (ids ? variable.noun().id() + " " + variable.index() : variable.noun());
  }

  private String argument(Argument argument) {
    if (argument instanceof Argument.Along along) {
      return named(filled(along.stretch().pattern(), along.arguments()), along.stretch().id());
    }
    if (argument instanceof Argument.Those those) {
      Variable each = those.variable();
      return "any "
          + (ids ? each.noun().id() + " " + each.index() : each.noun())
          + where(those.where());
    }
    return argument instanceof Value value ? value.accept(this) : reference((Reference) argument);
  }

  private String reference(Reference reference) {
    if (reference instanceof Reference.Linked linked) {
      return "the "
          + named(linked.link().phrase(), linked.link().id())
          + " of "
          + reference(linked.owner());
    }
    return variable(((Reference.Bound) reference).variable());
  }

  private String filled(String pattern, List<Argument> arguments) {
    StringBuilder words = new StringBuilder();
    int next = 0;
    for (String part : List.of(pattern.split(" "))) {
      words.append(words.isEmpty() ? "" : " ");
      words.append(part.equals("_") ? "(" + argument(arguments.get(next++)) + ")" : part);
    }
    return words.toString();
  }

  private String joined(List<Condition> parts, String word) {
    List<String> said = new ArrayList<>();
    parts.forEach(part -> said.add("(" + part.accept(this) + ")"));
    return String.join(" " + word + " ", said);
  }

  private String where(Optional<Condition> where) {
    return where.map(condition -> " (where " + condition.accept(this) + ")").orElse("");
  }

  @Override
  public String visitAnd(Condition.And and) {
    return joined(and.parts(), "and");
  }

  @Override
  public String visitOr(Condition.Or or) {
    return joined(or.parts(), "or");
  }

  @Override
  public String visitNot(Condition.Not not) {
    return "not (" + not.part().accept(this) + ")";
  }

  @Override
  public String visitCompare(Condition.Compare compare) {
    return compare.left().accept(this)
        + " "
        + compare.comparison().sign()
        + " "
        + compare.right().accept(this);
  }

  @Override
  public String visitHolds(Condition.Holds holds) {
    String said = filled(holds.relation().third(), holds.arguments());
    String be = holds.relation().form() == Relation.Form.BE ? "is " : "";
    return reference(holds.subject()) + " " + be + named(said, holds.relation().id());
  }

  @Override
  public String visitIsA(Condition.IsA isA) {
    String kind = English.withArticle(isA.singular());
    return reference(isA.subject()) + " is " + named(kind, isA.noun().id());
  }

  @Override
  public String visitSame(Condition.Same same) {
    return reference(same.left()) + " is " + reference(same.right());
  }

  @Override
  public String visitAnswered(Condition.Answered answered) {
    String limit =
        answered
            .question()
            .limit()
            .map(
                found ->
                    ", reading " + found.comparison().sign() + " " + found.value().accept(this))
            .orElse("");
    return reference(answered.subject())
        + " is answered "
        + answered.question().answerWord()
        + " at "
        + answered.question().inspect()
        + limit;
  }

  @Override
  public String visitQuantified(Condition.Quantified quantified) {
    String many =
        switch (quantified.quantifier()) {
          case EACH -> "each ";
          case SOME -> "some ";
          case NO -> "no ";
          case AT_LEAST -> "at least " + quantified.number() + " ";
          case AT_MOST -> "at most " + quantified.number() + " ";
          case EXACTLY -> "exactly " + quantified.number() + " ";
          case ALL_BUT -> "all but " + quantified.number() + " ";
        };
    Variable variable = quantified.variable();
    return "for "
        + many
        + (quantified.others() ? "other " : "")
        + (ids ? variable.noun().id() + " " + variable.index() : variable.noun())
        + where(quantified.where())
        + ", "
        + quantified.body().accept(this);
  }

  @Override
  public String visitLiteral(Value.Literal literal) {
    return ids ? literal.quantity().text() + literal.type().dimension() : literal.quantity().text();
  }

  @Override
  public String visitWord(Value.Word word) {
    return ids ? word.word() + " {" + word.type().name() + "}" : word.word();
  }

  @Override
  public String visitText(Value.Text text) {
    return "\"" + text.text() + "\"";
  }

  @Override
  public String visitNamed(Value.Named named) {
    return "the constant \"" + named.constant().name() + "\"";
  }

  @Override
  public String visitOf(Value.Of of) {
    return "the "
        + named(filled(of.property().pattern(), of.arguments()), of.property().id())
        + " of "
        + reference(of.owner());
  }

  @Override
  public String visitArithmetic(Value.Arithmetic arithmetic) {
    String sign =
        switch (arithmetic.operator()) {
          case PLUS -> " + ";
          case MINUS -> " - ";
          case TIMES -> " times ";
          case DIVIDED_BY -> " divided by ";
        };
    return "(" + arithmetic.left().accept(this) + sign + arithmetic.right().accept(this) + ")";
  }

  @Override
  public String visitLookup(Value.Lookup lookup) {
    return "the "
        + named(lookup.table().name(), "table of " + lookup.table().noun().id())
        + " of "
        + reference(lookup.owner());
  }

  @Override
  public String visitConditional(Value.Conditional conditional) {
    return "(if "
        + conditional.condition().accept(this)
        + " then "
        + conditional.then().accept(this)
        + " otherwise "
        + conditional.otherwise().accept(this)
        + ")";
  }

  @Override
  public String visitAggregate(Value.Aggregate aggregate) {
    String function =
        switch (aggregate.function()) {
          case COUNT -> "number of ";
          case TOTAL -> "total of ";
          case SMALLEST -> "smallest of ";
          case NEAREST -> "nearest by ";
          case LARGEST -> "largest of ";
          case AVERAGE -> "average of ";
        };
    Variable variable = aggregate.variable();
    return "the "
        + function
        + aggregate.of().map(value -> value.accept(this) + " over ").orElse("")
        + (ids ? variable.noun().id() + " " + variable.index() : variable.noun().plural())
        + where(aggregate.where());
  }
}
