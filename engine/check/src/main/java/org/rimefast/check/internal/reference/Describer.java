package org.rimefast.check.internal.reference;

import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Relation;

/** Says in words what an expression is about, with the elements' own names. */
final class Describer {
  private static final Pattern BE_SO_MANY =
      Pattern.compile("^be (?=(?:an?|some|no|another|each|every|at|exactly|all) )");

  private final Scope scope;

  Describer(Scope scope) {
    this.scope = scope;
  }

  /** {@code clearance of box R-3}. */
  String value(Value value) {
    if (value instanceof Value.Of of) {
      return filled(of.property().pattern(), of.arguments())
          + " of "
          + ElementFinder.label(of.owner(), scope);
    }
    if (value instanceof Value.Named named) {
      return named.constant().name();
    }
    if (value instanceof Value.Aggregate aggregate) {
      return aggregate(aggregate);
    }
    if (value instanceof Value.Lookup lookup) {
      return lookup.table().name() + " of " + ElementFinder.label(lookup.owner(), scope);
    }
    return quote(value.span());
  }

  /** The same where it stands in parentheses anyway. */
  String limit(Value value) {
    String said = value(value);
    return value instanceof Value.Conditional ? said.substring(1, said.length() - 1) : said;
  }

  /** With the element that it is counted per, or that is asked for its nearest one. */
  private String aggregate(Value.Aggregate aggregate) {
    if (aggregate.function() == Value.Aggregate.Function.NEAREST
        && aggregate.of().orElse(null) instanceof Value.Of of) {
      return of.property()
              .pattern()
              .replace("_", "the nearest " + AggregateWords.singular(aggregate))
          + " of "
          + ElementFinder.label(of.owner(), scope);
    }
    return AggregateWords.per(aggregate)
        .filter(same -> scope.source().textOf(same.span()).startsWith("per "))
        .map(same -> quote(aggregate.span()) + " for " + ElementFinder.label(same.right(), scope))
        .orElseGet(() -> quote(aggregate.span()));
  }

  /** {@code box R-3 sits in outer bay}, or {@code box R-3 does not sit in outer bay}. */
  String holds(Condition.Holds holds, boolean so) {
    Relation relation = holds.relation();
    String subject = ElementFinder.label(holds.subject(), scope);
    if (relation.form() == Relation.Form.BE) {
      return subject + (so ? " is " : " is not ") + filled(relation.pattern(), holds.arguments());
    }
    return so
        ? subject + " " + filled(relation.third(), holds.arguments())
        : subject + " does not " + filled(relation.pattern(), holds.arguments());
  }

  /** {@code face of box R-3 is that of panel P}, as a question. */
  String same(Condition.Same same) {
    return path(same.left()) + " is " + path(same.right());
  }

  /** {@code face of box R-3 is left wall}, or {@code face of box R-3 is left wall, not roof}. */
  String same(Condition.Same same, boolean so) {
    String left = ElementFinder.label(same.left(), scope);
    String right = ElementFinder.label(same.right(), scope);
    if (same.left() instanceof Reference.Bound) {
      return left + (so ? " is " : " is not ") + path(same.right());
    }
    String said = path(same.left()) + " is " + left;
    if (same.right() instanceof Reference.Bound) {
      return so ? said : said + ", not " + right;
    }
    return so
        ? said + ", as is " + path(same.right())
        : said + ", and " + path(same.right()) + " is " + right;
  }

  /** {@code face of box R-3}, or how an element is called that is no other's. */
  private String path(Reference reference) {
    return reference instanceof Reference.Linked linked
        ? linked.link().phrase() + " of " + ElementFinder.label(linked.owner(), scope)
        : ElementFinder.label(reference, scope);
  }

  /** {@code room is a wet room}, or {@code room is not a wet room}. */
  String isA(Condition.IsA isA, boolean so) {
    String kind = isA.singular();
    String article = "aeiou".indexOf(kind.charAt(0)) >= 0 ? "an " : "a ";
    return ElementFinder.label(isA.subject(), scope) + (so ? " is " : " is not ") + article + kind;
  }

  /** What the elements of a quantifier are called: a term where the sentence has one. */
  static String singular(Condition.Quantified quantified) {
    return term(quantified).map(Term::singular).orElse(quantified.variable().noun().singular());
  }

  /** The same for several. */
  static String plural(Condition.Quantified quantified) {
    return term(quantified).map(Term::plural).orElse(quantified.variable().noun().plural());
  }

  /** A quantified term is a noun with its test as the first condition. */
  private static Optional<Term> term(Condition.Quantified quantified) {
    return quantified
        .where()
        .map(where -> where instanceof Condition.And and ? and.parts().get(0) : where)
        .filter(
            first -> first instanceof Condition.IsA isA && isVariable(isA.subject(), quantified))
        .flatMap(first -> ((Condition.IsA) first).term());
  }

  /**
   * How many of the elements of a quantifier meet it: {@code box R-3 touches none of the 65 studs},
   * {@code box R-3 does not touch the one stud}, or {@code "some bracket holds it": none of the 12
   * brackets}.
   *
   * @param count {@code none}, {@code all}, a number, or {@code whether} for a question
   */
  String quantified(Condition.Quantified quantified, String count, int all) {
    boolean question = count.equals("whether");
    boolean notTheOne = all == 1 && count.equals("none");
    String many =
        all == 1 ? "the one " + singular(quantified) : "the " + all + " " + plural(quantified);
    if (quantified.body() instanceof Condition.Holds holds
        && holds.arguments().size() == 1
        && isVariable(holds.arguments().get(0), quantified)) {
      String object = all == 1 ? many : question ? "one of " + many : count + " of " + many;
      return (question ? "whether " : "")
          + ElementFinder.label(holds.subject(), scope)
          + said(holds.relation(), !notTheOne).replace("_", object);
    }
    String what = bare(quote(quantified.span()));
    if (question) {
      return "\"" + what + "\" for " + many;
    }
    String which = all > 1 ? count + " of " + many : notTheOne ? "not " + many : many;
    return "\"" + what + "\": " + which;
  }

  private static String said(Relation relation, boolean so) {
    if (relation.form() == Relation.Form.BE) {
      return (so ? " is " : " is not ") + relation.pattern();
    }
    return so ? " " + relation.third() : " does not " + relation.pattern();
  }

  /** Without parentheses around all of it, and without the "be" of "there must be a box". */
  private static String bare(String quoted) {
    boolean enclosed = quoted.startsWith("(") && closing(quoted) == quoted.length() - 1;
    String inner = enclosed ? quoted.substring(1, quoted.length() - 1) : quoted;
    return BE_SO_MANY.matcher(inner).replaceFirst("");
  }

  /** Where the parenthesis that the text begins with is closed. */
  private static int closing(String text) {
    int open = 0;
    for (int at = 0; at < text.length(); at++) {
      open += text.charAt(at) == '(' ? 1 : text.charAt(at) == ')' ? -1 : 0;
      if (open == 0) {
        return at;
      }
    }
    return -1;
  }

  private static boolean isVariable(Argument argument, Condition.Quantified quantified) {
    return argument instanceof Reference.Bound bound
        && bound.variable().index() == quantified.variable().index();
  }

  private String filled(String pattern, List<Argument> arguments) {
    StringBuilder text = new StringBuilder();
    Iterator<Argument> next = arguments.iterator();
    for (String word : pattern.split(" ", -1)) {
      text.append(text.isEmpty() ? "" : " ")
          .append(word.equals("_") ? argument(next.next()) : word);
    }
    return text.toString();
  }

  private String argument(Argument argument) {
    if (argument instanceof Argument.Along along) {
      return filled(along.stretch().pattern(), along.arguments());
    }
    if (argument instanceof Argument.Those those) {
      return quote(those.span());
    }
    return argument instanceof Reference reference
        ? ElementFinder.label(reference, scope)
        : value((Value) argument);
  }

  private String quote(Span span) {
    return scope.source().textOf(span).replaceAll("\\s+", " ");
  }

  /** {@code at least }, with a space to put the limit behind. */
  static String words(Comparison comparison) {
    return switch (comparison) {
      case AT_LEAST -> "at least ";
      case MORE_THAN -> "more than ";
      case AT_MOST -> "at most ";
      case LESS_THAN -> "less than ";
      case EQUAL -> "equal to ";
      case NOT_EQUAL -> "other than ";
    };
  }
}
