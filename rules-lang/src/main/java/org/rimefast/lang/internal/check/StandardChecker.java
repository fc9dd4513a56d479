package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.internal.layer.Layer;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.resolve.Constants;
import org.rimefast.lang.internal.resolve.Dictionary;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.ReadingObserver;
import org.rimefast.lang.internal.resolve.Tables;
import org.rimefast.lang.internal.resolve.Terms;
import org.rimefast.lang.internal.resolve.Typing;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Pin;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;

/** Checks the statements of a standard, those that it builds on first. */
public final class StandardChecker {
  private final Dictionary dictionary;
  private final List<Diagnostic> diagnostics = new ArrayList<>();
  private final Map<String, Constant> constants = new LinkedHashMap<>();
  private final Constants index = new Constants(Map.of());
  private final Terms terms = new Terms();
  private final Tables named = new Tables();
  private final List<Table> tables = new ArrayList<>();
  private final Map<String, Span> places = new HashMap<>();
  private final OperandReader operands;
  private final TermChecker definitions;
  private final TableChecker lookups;
  private final SourceText source;
  private final RuleChecker ruleChecker;
  private final InspectChecker inspections;
  private final AmendmentChecker amendments;
  private Optional<Standard> below = Optional.empty();
  private Statement.@Nullable Header header;

  /** A checker for one text, with all that it includes and builds on. */
  public StandardChecker(Dictionary dictionary, SourceText source) {
    this(dictionary, source, ReadingObserver.NONE);
  }

  /** A checker for one text, which tells the observer what it finds. */
  public StandardChecker(Dictionary dictionary, SourceText source, ReadingObserver observer) {
    this.dictionary = dictionary;
    this.operands = new OperandReader(dictionary, index, terms, named, source, observer);
    IdentityHashMap<Object, Integer> sizes = new IdentityHashMap<>();
    this.definitions = new TermChecker(dictionary, constants, terms, operands, sizes, diagnostics);
    this.lookups =
        new TableChecker(dictionary, constants, terms, named, operands, sizes, diagnostics);
    this.source = source;
    this.ruleChecker = new RuleChecker(dictionary, diagnostics);
    this.inspections = new InspectChecker(dictionary, constants, operands, diagnostics);
    this.amendments =
        new AmendmentChecker(
            new RuleWriter(dictionary, constants, terms, named, source), operands, diagnostics);
  }

  /** What the statements have defined. */
  public Known known() {
    return new Known(dictionary, constants, terms.defined(), named.defined());
  }

  /** What is wrong with the statements. */
  public List<Diagnostic> diagnostics() {
    return diagnostics;
  }

  /** The text, with the amended rules as they read now behind it. */
  public SourceText source() {
    return amendments.source();
  }

  /** What the amendments of the uppermost standard say of their rules. */
  public List<Pin> pins() {
    return amendments.pins();
  }

  /**
   * The typed standard, as far as it makes sense; only whole if there are no errors. Of a standard
   * whose base is wrong, nothing is said: what it could mean is not known.
   *
   * @param layers the one at the bottom first
   */
  public Optional<Standard> check(List<Layer> layers) {
    for (int i = 0; i < layers.size(); i++) {
      if (i > 0 && (below.isEmpty() || hasErrors() || !layers.get(i - 1).isWhole())) {
        return Optional.empty();
      }
      below = check(layers.get(i));
    }
    return below;
  }

  /**
   * The same for those who only ask what stands where: what is wrong with a standard does not keep
   * the one that builds on it from being read, but then it is read as if it built on none.
   *
   * @param layers the one at the bottom first
   */
  public Optional<Standard> checkAll(List<Layer> layers) {
    for (int i = 0; i < layers.size(); i++) {
      if (i > 0 && (hasErrors() || !layers.get(i - 1).isWhole())) {
        below = Optional.empty();
      }
      below = check(layers.get(i));
    }
    return below;
  }

  private boolean hasErrors() {
    return diagnostics.stream().anyMatch(d -> d.level() == Diagnostic.Level.ERROR);
  }

  private Optional<Standard> check(Layer layer) {
    header = null;
    headers(layer);
    for (Statement statement : layer.statements()) {
      if (statement instanceof Statement.Let let) {
        constant(let);
      }
    }
    define(layer.statements());
    amendments.begin(below, Optional.ofNullable(header));
    for (Statement statement : layer.statements()) {
      if (statement instanceof Statement.Rule rule) {
        takeId(rule.id());
        ruleChecker.check(rule, operands).ifPresent(amendments::add);
      } else if (statement instanceof Statement.Inspect inspect) {
        takeId(inspect.id());
        inspections.check(inspect).ifPresent(amendments::add);
      } else if (isOfWaivers(statement)) {
        diagnostics.add(misplaced(statement));
      }
    }
    for (Statement statement : layer.statements()) {
      if (statement instanceof Statement.Amendment amendment) {
        amendments.amend(amendment);
      }
    }
    amendments.end();
    CaseChecker examples =
        new CaseChecker(
            source, layer.isWhole() ? Optional.of(standing()) : Optional.empty(), diagnostics);
    List<Case> cases = examples.check(layer.statements());
    examples.refuseHeader(layer.statements());
    // A table that is wrong is told of where it stands, and not where it is used as well.
    diagnostics.removeIf(
        d -> d.code() == DiagnosticCode.EARLY_TABLE && named.isUseOfBroken(d.span()));
    return Optional.ofNullable(header).map(found -> standard(found, cases));
  }

  /** Terms and tables can use each other, those that stand before them. */
  private void define(List<Statement> statements) {
    definitions.announce(statements);
    lookups.announce(statements);
    for (Statement statement : statements) {
      if (statement instanceof Statement.Term term) {
        definitions.define(term);
      } else if (statement instanceof Statement.Table table) {
        lookups.define(table).ifPresent(tables::add);
      }
    }
  }

  /** The ids of all rules that were not taken out, whether or not they make sense. */
  private Set<String> standing() {
    Set<String> ids = new HashSet<>(places.keySet());
    amendments.withdrawn().forEach(withdrawal -> ids.remove(withdrawal.rule().id()));
    return ids;
  }

  private static boolean isOfWaivers(Statement statement) {
    return statement instanceof Statement.Waivers || statement instanceof Statement.Waive;
  }

  private Diagnostic misplaced(Statement statement) {
    return Problems.error(
        DiagnosticCode.MISPLACED_STATEMENT,
        statement.span(),
        "Waivers do not stand in a standard.",
        "Put them in a file of their own, which begins with: waivers for "
            + Optional.ofNullable(header)
                .map(known -> known.name().text())
                .orElse("cold-steel-modules"));
  }

  private void takeId(Word id) {
    Span first = places.putIfAbsent(id.text(), id.span());
    if (first != null) {
      diagnostics.add(
          amendments.isOfBase(id.text())
              ? ofBase(id, first)
              : repeated("rule", id.text(), id.span(), first));
    }
  }

  private static Diagnostic ofBase(Word named, Span first) {
    String id = named.text();
    return Problems.related(
        DiagnosticCode.REPEATED_NAME,
        named.span(),
        "The standard that this one builds on already has a rule called " + id + ".",
        "To change it, write for example: in rule "
            + id
            + ", severity is hold; to replace it: withdraw "
            + id
            + "; then give the new rule another name.",
        List.of(new Diagnostic.Related(first, "that rule is here")));
  }

  private Standard standard(Statement.Header found, List<Case> cases) {
    Fields fields = new Fields(found.fields(), new ArrayList<>());
    return new Standard(
        found.name().text(),
        found.edition().text(),
        fields.text("title").orElse(""),
        caution(fields.text("caution").orElse("")),
        List.copyOf(constants.values()),
        terms.defined(),
        tables,
        amendments.rules(),
        cases,
        source(),
        below,
        amendments.withdrawn());
  }

  /** What the base says of care goes on holding. */
  private String caution(String own) {
    String under = below.map(Standard::caution).orElse("");
    return under.isEmpty() || own.contains(under) ? own : own.isEmpty() ? under : own + " " + under;
  }

  private void headers(Layer layer) {
    List<Statement> statements = layer.statements();
    for (int i = 0; i < statements.size(); i++) {
      if (statements.get(i) instanceof Statement.Header found) {
        Statement.Header first = header;
        if (first != null) {
          diagnostics.add(
              Problems.related(
                  DiagnosticCode.MISPLACED_STANDARD,
                  found.name().span(),
                  "A text holds one standard, and this is the second.",
                  "Put it in a file of its own.",
                  List.of(new Diagnostic.Related(first.name().span(), "the first one is here"))));
        } else {
          header = found;
          new Fields(found.fields(), diagnostics);
          oneBase(found);
          if (i > 0) {
            diagnostics.add(
                Problems.error(
                    DiagnosticCode.MISPLACED_STANDARD,
                    found.name().span(),
                    "The standard is named before its constants and rules.",
                    "Move this statement to the top of the text."));
          }
        }
      }
    }
    boolean isCases = statements.stream().anyMatch(Statement.CaseFile.class::isInstance);
    if (header == null && layer.isWhole() && !isCases) {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.MISSING_STANDARD,
              new Span(layer.start(), layer.start()),
              "The text does not say which standard it is.",
              "Begin with: standard cold-steel-modules edition 2026-11"));
    }
  }

  private void oneBase(Statement.Header found) {
    if (found.builds().size() > 1) {
      diagnostics.add(
          Problems.related(
              DiagnosticCode.REPEATED_PART,
              found.builds().get(1).span(),
              "A standard builds on one other, and this is the second.",
              "Name here the one nearest to it; that one can build on others itself.",
              List.of(
                  new Diagnostic.Related(found.builds().get(0).span(), "the first one is here"))));
    }
  }

  private void constant(Statement.Let let) {
    Fields fields = new Fields(let.fields(), diagnostics);
    fields.refuse(List.of("severity", "stage"), "A constant");
    List<String> words = let.name().stream().map(Word::text).toList();
    String name = String.join(" ", words);
    Span span = let.name().get(0).span().to(let.name().get(words.size() - 1).span());
    Constant other = constants.get(name);
    if (other != null) {
      diagnostics.add(repeated("constant", name, span, other.span()));
      return;
    }
    if (dictionary.hasPhrase(name)) {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.NAME_TAKEN,
              span,
              "The vocabulary already has the word " + English.quoted(name) + ".",
              "Choose another name, such as " + English.quoted("least " + name) + "."));
      return;
    }
    Value.Literal literal =
        new Value.Literal(let.quantity(), Typing.typeOf(let.quantity()), let.quantitySpan());
    Constant constant =
        new Constant(name, literal, fields.text("because"), fields.text("source"), let.span());
    constants.put(name, constant);
    index.add(constant);
  }

  static Diagnostic repeated(String kind, String name, Span span, Span first) {
    return Problems.related(
        DiagnosticCode.REPEATED_NAME,
        span,
        "There already is a " + kind + " called " + English.quoted(name) + ".",
        "Give one of them another name.",
        List.of(new Diagnostic.Related(first, "the first one is here")));
  }
}
