package org.rimefast.lang.internal.paraphrase;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.rule.Value;

/** Finds the constants, terms and tables that a rule or one of these stands on, each once. */
public final class Definitions implements Condition.Visitor<Boolean>, Value.Visitor<Boolean> {
  // Visitors have to answer something.
  private static final boolean NOTHING_MORE = true;

  private final Map<String, Constant> constants = new LinkedHashMap<>();
  private final List<Definition> all = new ArrayList<>();
  private final IdentityHashMap<Object, Boolean> begun = new IdentityHashMap<>();
  private final Set<String> names = new HashSet<>();

  /** A term or a table: one of the two is there. */
  public record Definition(@Nullable Term term, @Nullable Table table) {}

  private Definitions() {}

  /** What a rule stands on. */
  public static Definitions of(Rule rule) {
    Definitions definitions = new Definitions();
    definitions.visit(rule.where());
    definitions.visit(rule.onlyIf());
    rule.requirement().accept(definitions);
    return definitions;
  }

  /** What a term stands on, the term itself last. */
  public static Definitions of(Term term) {
    Definitions definitions = new Definitions();
    definitions.term(term);
    return definitions;
  }

  /** What a table stands on, the table itself last. */
  public static Definitions of(Table table) {
    Definitions definitions = new Definitions();
    definitions.table(table);
    return definitions;
  }

  /** Constants, in the order in which they are met. */
  public List<Constant> constants() {
    return List.copyOf(constants.values());
  }

  /** Terms and tables, each after those that it stands on. */
  public List<Definition> termsAndTables() {
    return List.copyOf(all);
  }

  private void term(Term term) {
    if (begun.put(term, true) == null) {
      term.condition().accept(this);
      if (names.add("term " + term.singular())) {
        all.add(new Definition(term, null));
      }
    }
  }

  private void table(Table table) {
    if (begun.put(table, true) == null) {
      table.inputs().forEach(input -> input.accept(this));
      if (names.add("table " + table.name())) {
        all.add(new Definition(null, table));
      }
    }
  }

  private void visit(Optional<Condition> condition) {
    condition.ifPresent(c -> c.accept(this));
  }

  private Boolean arguments(List<Argument> arguments) {
    for (Argument argument : arguments) {
      if (argument instanceof Value value) {
        value.accept(this);
      } else if (argument instanceof Argument.Along along) {
        arguments(along.arguments());
      } else if (argument instanceof Argument.Those those) {
        visit(those.where());
      }
    }
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitAnd(Condition.And and) {
    and.parts().forEach(part -> part.accept(this));
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitOr(Condition.Or or) {
    or.parts().forEach(part -> part.accept(this));
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitNot(Condition.Not not) {
    return not.part().accept(this);
  }

  @Override
  public Boolean visitCompare(Condition.Compare compare) {
    compare.left().accept(this);
    return compare.right().accept(this);
  }

  @Override
  public Boolean visitHolds(Condition.Holds holds) {
    return arguments(holds.arguments());
  }

  @Override
  public Boolean visitIsA(Condition.IsA isA) {
    isA.term().ifPresent(this::term);
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitAnswered(Condition.Answered answered) {
    answered.question().limit().ifPresent(limit -> limit.value().accept(this));
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitSame(Condition.Same same) {
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitQuantified(Condition.Quantified quantified) {
    visit(quantified.where());
    return quantified.body().accept(this);
  }

  @Override
  public Boolean visitLiteral(Value.Literal literal) {
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitWord(Value.Word word) {
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitText(Value.Text text) {
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitNamed(Value.Named named) {
    constants.putIfAbsent(named.constant().name(), named.constant());
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitOf(Value.Of of) {
    return arguments(of.arguments());
  }

  @Override
  public Boolean visitArithmetic(Value.Arithmetic arithmetic) {
    arithmetic.left().accept(this);
    return arithmetic.right().accept(this);
  }

  @Override
  public Boolean visitAggregate(Value.Aggregate aggregate) {
    visit(aggregate.where());
    aggregate.of().ifPresent(value -> value.accept(this));
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitLookup(Value.Lookup lookup) {
    table(lookup.table());
    return NOTHING_MORE;
  }

  @Override
  public Boolean visitConditional(Value.Conditional conditional) {
    conditional.condition().accept(this);
    conditional.then().accept(this);
    return conditional.otherwise().accept(this);
  }
}
