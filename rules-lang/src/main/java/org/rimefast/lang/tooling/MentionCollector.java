package org.rimefast.lang.tooling;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.check.Known;
import org.rimefast.lang.internal.resolve.ReadingObserver;
import org.rimefast.lang.internal.resolve.Scope;
import org.rimefast.lang.internal.syntax.CaseStep;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Meaning;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.ValueType;

/** Collects what readers find. */
final class MentionCollector implements ReadingObserver {
  private final Set<Mention> plain = new LinkedHashSet<>();
  private final Set<Mention> patterns = new LinkedHashSet<>();

  @Override
  public boolean asksAbout(Span item) {
    return false;
  }

  @Override
  public void expected(Collection<String> words) {}

  @Override
  public void value(Scope scope, @Nullable ValueType wanted) {}

  @Override
  public void found(Span span, Meaning meaning) {
    boolean pattern =
        meaning instanceof Meaning.OfProperty
            || meaning instanceof Meaning.OfRelation
            || meaning instanceof Meaning.OfStretch;
    (pattern ? patterns : plain).add(new Mention(span, meaning, false));
  }

  /** What was found and is not part of a longer name, and the names that statements give. */
  List<Mention> mentions(List<Statement> statements, Known known) {
    List<Mention> all = new ArrayList<>(patterns);
    all.addAll(longest());
    for (Statement statement : statements) {
      if (statement instanceof Statement.Let let) {
        Span name = span(let.name());
        known.constants().values().stream()
            .filter(constant -> constant.span().equals(let.span()))
            .forEach(constant -> declare(name, new Meaning.OfConstant(constant), all));
      } else if (statement instanceof Statement.Term term) {
        Span name = span(term.name());
        for (Term defined : known.terms()) {
          if (defined.span().equals(term.span())) {
            declare(name, new Meaning.OfTerm(defined), all);
          }
        }
      } else if (statement instanceof Statement.Rule rule) {
        declare(rule.id().span(), new Meaning.OfRule(rule.id().text()), all);
      } else if (statement instanceof Statement.Inspect inspect) {
        declare(inspect.id().span(), new Meaning.OfRule(inspect.id().text()), all);
        inspect.limit().ifPresent(limit -> constant(limit.name(), known, all));
      } else if (statement instanceof Statement.Amendment amendment) {
        rule(amendment.rule(), all);
        if (amendment.change() instanceof Statement.Change.OfLimit limit) {
          constant(limit.words(), known, all);
        }
      } else if (statement instanceof Statement.Waive waive) {
        rule(waive.rule(), all);
      } else if (statement instanceof Statement.Case example) {
        example.rule().ifPresent(id -> rule(id, all));
        for (CaseStep step : example.steps()) {
          if (step instanceof CaseStep.Expect expect) {
            expect.rule().ifPresent(id -> rule(id, all));
          }
        }
      }
    }
    all.sort(
        Comparator.comparingInt((Mention m) -> m.span().start())
            .thenComparingInt(m -> -m.span().end()));
    return List.copyOf(all);
  }

  /** The ids of the rules and inspect items among the statements. */
  static List<String> ruleIds(List<Statement> statements) {
    Set<String> ids = new LinkedHashSet<>();
    for (Statement statement : statements) {
      if (statement instanceof Statement.Rule rule) {
        ids.add(rule.id().text());
      } else if (statement instanceof Statement.Inspect inspect) {
        ids.add(inspect.id().text());
      } else if (statement instanceof Statement.Amendment amendment
          && amendment.change() instanceof Statement.Change.Withdrawn) {
        ids.remove(amendment.rule().text());
      }
    }
    return List.copyOf(ids);
  }

  private static void rule(Word id, List<Mention> all) {
    all.add(new Mention(id.span(), new Meaning.OfRule(id.text()), false));
  }

  /** A constant that a statement names outside a sentence. */
  private static void constant(List<Word> words, Known known, List<Mention> all) {
    String name = String.join(" ", words.stream().map(Word::text).toList());
    Constant constant = known.constants().get(name);
    if (constant != null && !words.isEmpty()) {
      all.add(new Mention(span(words), new Meaning.OfConstant(constant), false));
    }
  }

  private static void declare(Span name, Meaning meaning, List<Mention> all) {
    all.add(new Mention(name, meaning, true));
  }

  /** In {@code wet room} nobody means a constant called {@code wet}. */
  private List<Mention> longest() {
    List<Mention> sorted = new ArrayList<>(plain);
    sorted.sort(
        Comparator.comparingInt((Mention m) -> m.span().start())
            .thenComparingInt(m -> -m.span().end()));
    List<Mention> kept = new ArrayList<>();
    for (Mention mention : sorted) {
      Span last = kept.isEmpty() ? null : kept.get(kept.size() - 1).span();
      boolean within =
          last != null && mention.span().end() <= last.end() && !mention.span().equals(last);
      if (!within) {
        kept.add(mention);
      }
    }
    return kept;
  }

  private static Span span(List<Word> words) {
    return words.get(0).span().to(words.get(words.size() - 1).span());
  }
}
