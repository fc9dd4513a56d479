package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rimefast.lang.internal.meaning.Effects;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.rule.Change;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Pin;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Withdrawal;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;

/** Keeps the rules of a standard from layer to layer, and amends them. */
final class AmendmentChecker {
  private final RuleWriter writer;
  private final List<Diagnostic> diagnostics;
  private final RuleChecker words;
  private final LimitAmender limits;
  private final ExceptionAmender exceptions;
  private final SeenChecker seen;

  private final Map<String, Rule> rules = new LinkedHashMap<>();
  private final Map<String, Map<String, Constant>> own = new HashMap<>();
  private final List<Withdrawal> withdrawn = new ArrayList<>();

  // Of the layer at hand.
  private Optional<Standard> base = Optional.empty();
  private Optional<Statement.Header> header = Optional.empty();
  private final Set<String> amended = new LinkedHashSet<>();
  private final Map<String, Span> places = new HashMap<>();
  private final List<Pin> pins = new ArrayList<>();

  AmendmentChecker(RuleWriter writer, OperandReader operands, List<Diagnostic> diagnostics) {
    this.writer = writer;
    this.diagnostics = diagnostics;
    this.words = new RuleChecker(writer.dictionary(), diagnostics);
    this.limits = new LimitAmender(writer, diagnostics);
    this.exceptions = new ExceptionAmender(writer, operands, diagnostics);
    this.seen = new SeenChecker(writer.source(), diagnostics);
  }

  SourceText source() {
    return writer.source();
  }

  List<Rule> rules() {
    return List.copyOf(rules.values());
  }

  List<Withdrawal> withdrawn() {
    return List.copyOf(withdrawn);
  }

  List<Pin> pins() {
    return pins;
  }

  /** True for a rule of the standard that is built on, even if it was taken out. */
  boolean isOfBase(String id) {
    return base.isPresent()
        && (base.get().rule(id).isPresent()
            || base.get().withdrawn().stream().anyMatch(w -> w.rule().id().equals(id)));
  }

  /** Begins a layer. */
  void begin(Optional<Standard> below, Optional<Statement.Header> own) {
    base = below;
    header = own;
    amended.clear();
    places.clear();
    pins.clear();
  }

  /** A rule that the layer itself has. */
  void add(Rule rule) {
    Rule known = rule;
    if (base.isPresent() && header.isPresent()) {
      known =
          rule.withChanges(
              List.of(
                  new Change(
                      Change.Kind.ADDED,
                      header.get().name().text(),
                      header.get().edition().text(),
                      "rule " + rule.id(),
                      "",
                      rule.sentence(),
                      rule.because(),
                      Optional.of(rule.source()),
                      Change.Effect.STRICTER,
                      rule.span())));
    }
    rules.putIfAbsent(rule.id(), known);
  }

  /** Ends a layer: the rules that it amended are written out in full. */
  void end() {
    String name = header.map(found -> found.name().text()).orElse("");
    for (String id : amended) {
      Rule rule = rules.get(id);
      if (rule != null) {
        rules.put(id, writer.kept(rule, own.getOrDefault(id, Map.of()), name));
      }
    }
  }

  void amend(Statement.Amendment amendment) {
    Fields fields = new Fields(amendment.fields(), diagnostics);
    for (String key : List.of("severity", "stage")) {
      fields.word(key).ifPresent(word -> diagnostics.add(misplaced(amendment, key, word)));
    }
    Optional<String> because = fields.text("because");
    if (because.isEmpty()) {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.MISSING_PART,
              amendment.rule().span(),
              "The amendment of rule " + amendment.rule().text() + " has no \"because\".",
              "Add after it, for example: because \"our wet labs run at 70 % humidity\""));
    }
    Optional<Rule> target = new AmendedRule(base, rules.keySet(), diagnostics).of(amendment);
    if (target.isEmpty() || header.isEmpty()) {
      return;
    }
    String id = amendment.rule().text();
    pins.add(seen.check(amendment, target.get(), base.orElseThrow().edition()));
    Rule rule = rules.get(id);
    if (rule == null || (isWithdrawal(amendment) && amended.contains(id))) {
      diagnostics.add(withdrawnToo(amendment));
      return;
    }
    amending(amendment, rule, because, fields.text("source"))
        .ifPresent(made -> apply(amendment, made, because.orElse(""), fields.text("source")));
  }

  private Optional<Amending> amending(
      Statement.Amendment amendment, Rule rule, Optional<String> because, Optional<String> source) {
    Map<String, Constant> constants = own.getOrDefault(rule.id(), Map.of());
    Statement.Change change = amendment.change();
    if (rule.question().isPresent() && isOfSentence(change)) {
      diagnostics.add(ofInspectItem(amendment));
      return Optional.empty();
    }
    if (change instanceof Statement.Change.OfLimit limit) {
      return limits.amend(amendment, limit, rule, constants, because, source);
    }
    if (change instanceof Statement.Change.Except except) {
      return exceptions.amend(amendment, except, rule, constants);
    }
    if (change instanceof Statement.Change.OfPart part) {
      return part(part, rule, constants);
    }
    return Optional.of(
        new Amending(
            rule,
            constants,
            Change.Kind.WITHDRAWN,
            "rule",
            rule.sentence(),
            "",
            Change.Effect.LOOSER));
  }

  private Optional<Amending> part(
      Statement.Change.OfPart part, Rule rule, Map<String, Constant> constants) {
    if (part.key().text().equals("severity")) {
      return words
          .severity(part.value())
          .map(
              severity ->
                  new Amending(
                      rule.withSeverity(severity),
                      constants,
                      Change.Kind.SEVERITY,
                      "severity",
                      rule.severity().word(),
                      severity.word(),
                      Effects.ofSeverity(rule.severity(), severity)));
    }
    List<String> stages = writer.dictionary().vocabulary().stages();
    return words
        .stage(part.value())
        .map(
            stage ->
                new Amending(
                    rule.withStage(stage),
                    constants,
                    Change.Kind.STAGE,
                    "stage",
                    rule.stage(),
                    stage,
                    Effects.ofStage(stages, rule.stage(), stage)));
  }

  private void apply(
      Statement.Amendment amendment, Amending made, String because, Optional<String> source) {
    String id = amendment.rule().text();
    Span first = places.putIfAbsent(id + "\n" + made.what(), amendment.span());
    if (first != null) {
      diagnostics.add(
          Problems.related(
              DiagnosticCode.REPEATED_PART,
              amendment.rule().span(),
              "Another amendment of rule " + id + " changes the same.",
              "Keep one of them.",
              List.of(new Diagnostic.Related(first, "the first one is here"))));
      return;
    }
    if (made.effect() == Change.Effect.UNCHANGED) {
      diagnostics.add(idle(amendment, made));
    }
    Statement.Header by = header.orElseThrow();
    Change change =
        new Change(
            made.kind(),
            by.name().text(),
            by.edition().text(),
            amendment.text(),
            made.before(),
            made.after(),
            because,
            source,
            made.effect(),
            amendment.span());
    List<Change> changes = new ArrayList<>(made.rule().changes());
    changes.add(change);
    if (made.kind() == Change.Kind.WITHDRAWN) {
      rules.remove(id);
      withdrawn.add(new Withdrawal(made.rule().withChanges(changes), change));
      return;
    }
    rules.put(id, made.rule().withChanges(changes));
    own.put(id, made.own());
    amended.add(id);
  }

  private static boolean isOfSentence(Statement.Change change) {
    return change instanceof Statement.Change.OfLimit || change instanceof Statement.Change.Except;
  }

  private static Diagnostic ofInspectItem(Statement.Amendment amendment) {
    String id = amendment.rule().text();
    return Problems.error(
        DiagnosticCode.NOTHING_TO_AMEND,
        amendment.rule().span(),
        "Of the inspect item " + id + ", only severity and stage can be amended.",
        "To ask otherwise, write: withdraw " + id + "; and an inspect item of your own.");
  }

  private static boolean isWithdrawal(Statement.Amendment amendment) {
    return amendment.change() instanceof Statement.Change.Withdrawn;
  }

  private static Diagnostic misplaced(Statement.Amendment amendment, String key, Word value) {
    return Problems.error(
        DiagnosticCode.MISPLACED_PART,
        value.span(),
        "An amendment has no " + English.quoted(key) + " of its own.",
        "To change that of the rule, write: in rule "
            + amendment.rule().text()
            + ", "
            + key
            + " is "
            + value.text());
  }

  private static Diagnostic withdrawnToo(Statement.Amendment amendment) {
    return Problems.error(
        DiagnosticCode.REPEATED_PART,
        amendment.rule().span(),
        "The rule " + amendment.rule().text() + " is withdrawn here and amended as well.",
        "Keep one of the two.");
  }

  private static Diagnostic idle(Statement.Amendment amendment, Amending made) {
    String name = made.kind() == Change.Kind.CONSTANT ? made.what() + ": " : "";
    String before = made.before().substring(name.length());
    String after = made.after().substring(name.length());
    return new Diagnostic(
        DiagnosticCode.IDLE_AMENDMENT,
        Diagnostic.Level.WARNING,
        amendment.rule().span(),
        "This amendment changes nothing: "
            + (before.equals(after)
                ? "it is " + after + " already."
                : before + " and " + after + " are the same."),
        "Take it out.",
        List.of(),
        List.of());
  }
}
