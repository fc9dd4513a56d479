package org.rimefast.lang.internal.grammar;

import static org.rimefast.lang.internal.grammar.LexicalProblems.span;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.Token;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.syntax.Clause;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;

/** Builds the rows of tables. */
final class CellBuilder {
  private final SourceText source;

  CellBuilder(SourceText source) {
    this.source = source;
  }

  List<Statement.Row> rows(List<RimeParser.RowContext> trees) {
    List<Statement.Row> rows = new ArrayList<>();
    for (RimeParser.RowContext tree : trees) {
      rows.add(
          new Statement.Row(
              tree.cell().stream().map(this::cell).toList(), ClauseBuilder.spanOf(tree)));
    }
    return rows;
  }

  Statement.Cell cell(RimeParser.CellContext tree) {
    List<Clause.Conjunction> conjunctions = new ArrayList<>();
    for (RimeParser.ConjunctionContext conjunction : tree.conjunction()) {
      conjunctions.add(
          new Clause.Conjunction(
              conjunction instanceof RimeParser.AndConjunctionContext,
              ClauseBuilder.spanOf(conjunction)));
    }
    return new Statement.Cell(
        tree.cellPart().stream().map(this::part).toList(),
        conjunctions,
        ClauseBuilder.spanOf(tree));
  }

  private Statement.CellPart part(RimeParser.CellPartContext tree) {
    Span span = ClauseBuilder.spanOf(tree);
    if (!(tree instanceof RimeParser.NumberCellContext number)) {
      List<String> words = new ArrayList<>();
      ((RimeParser.WordCellContext) tree).word().forEach(word -> words.add(word.getText()));
      return new Statement.CellPart.Words(String.join(" ", words), span);
    }
    String written = source.textOf(span(number.literal));
    return new Statement.CellPart.Number(
        comparison(number.sign, number.bound()),
        TreeBuilder.quantity(number.MINUS() == null ? written : "-" + written),
        span);
  }

  private static Optional<Comparison> comparison(
      @Nullable Token sign, RimeParser.@Nullable BoundContext bound) {
    if (sign != null) {
      return Optional.of(ClauseBuilder.comparison(sign));
    }
    return Optional.ofNullable(bound).map(words -> PhraseBuilder.bound(words).comparison());
  }
}
