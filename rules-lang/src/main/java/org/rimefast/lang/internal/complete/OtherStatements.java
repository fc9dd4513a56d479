package org.rimefast.lang.internal.complete;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rimefast.lang.internal.syntax.Piece;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.RuleUses;
import org.rimefast.lang.rule.Severity;
import org.rimefast.units.Dimension;
import org.rimefast.units.Unit;
import org.rimefast.units.Units;

/** Finds what can stand in amendments, inspect items, cases and waivers. */
final class OtherStatements {
  private static final List<String> STEPS = List.of("plan", "set", "remove", "add to", "expect");

  /** Words within steps, in their turn. */
  private static final List<String> STEP_WORDS =
      List.of("of", "to", "by", "for want of", "within tolerance");

  private static final List<String> OUTCOMES =
      List.of("met", "broken by", "undecided by", "error by", "nothing", "not applicable");

  private static final List<String> BOUNDS =
      List.of("at least", "at most", "more than", "less than", ">=", "<=", ">", "<");

  /** Words of a rule's sentence that its description of elements does not have. */
  private static final Set<String> OF_RULES =
      Set.of("must", "must not", "if", "unless", ",", "be", "have");

  private final Completer completer;
  private final Setting setting;
  private final Cursor cursor;
  private final Map<String, Candidate> good = new LinkedHashMap<>();

  OtherStatements(Completer completer, Setting setting, Cursor cursor) {
    this.completer = completer;
    this.setting = setting;
    this.cursor = cursor;
  }

  /** The candidates; empty if the statement is none of these. */
  Optional<List<Candidate>> candidates() {
    switch (cursor.firstPiece()) {
      case "in" -> inRule();
      case "withdraw" -> withdraw();
      case "inspect" -> inspect();
      case "case" -> ofCase();
      case "waive" -> waive();
      case "cases", "waivers" -> file();
      case "include" -> good.clear();
      default -> {
        return Optional.empty();
      }
    }
    return Optional.of(List.copyOf(good.values()));
  }

  private void inRule() {
    List<String> ids = setting.base().stream().map(Rule::id).toList();
    switch (cursor.pieces().size()) {
      case 1 -> add(List.of("rule"), Candidate.Kind.PART);
      case 2 -> add(ids, Candidate.Kind.RULE);
      case 3 -> add(List.of(","), Candidate.Kind.SIGN);
      default -> change(word(2));
    }
  }

  private void change(String id) {
    RuleUses uses = setting.ofBase(id).map(RuleUses::ofSentence).orElse(null);
    String last = cursor.lastPiece();
    boolean part = word(4).equals("severity") || word(4).equals("stage");
    if (cursor.pieces().size() == 4) {
      add(List.of("severity is", "stage is", "except where", "the limit"), Candidate.Kind.KEYWORD);
      if (uses != null) {
        add(uses.constants().keySet(), Candidate.Kind.NAME);
      }
    } else if (part && cursor.pieces().size() <= 6) {
      if (last.equals("is")) {
        value(word(4));
      } else if (cursor.pieces().size() == 5) {
        add(List.of("is"), Candidate.Kind.KEYWORD);
      }
    } else if (word(4).equals("except") && !hasPart()) {
      setting
          .ofBase(id)
          .ifPresent(rule -> sentence("rule x \"x\" each " + rule.subject().noun() + " ", 5));
    } else if (uses != null && Completer.isBareNumber(last)) {
      Set<Dimension> dimensions = new LinkedHashSet<>();
      uses.constants().values().stream()
          .filter(constant -> nameSoFar().startsWith(constant.name()))
          .forEach(constant -> dimensions.add(constant.value().quantity().dimension()));
      if (nameSoFar().startsWith("the limit")) {
        uses.literals().forEach(literal -> dimensions.add(literal.quantity().dimension()));
      }
      units(dimensions);
    } else if (!last.equals("is")) {
      judged(List.of("is"), Candidate.Kind.KEYWORD);
    }
    parts(List.of("because", "source"));
  }

  /** The words behind the comma, up to the place. */
  private String nameSoFar() {
    return String.join(
        " ",
        cursor.pieces().subList(4, cursor.pieces().size()).stream().map(cursor::textOf).toList());
  }

  private void withdraw() {
    if (cursor.pieces().size() == 1) {
      add(setting.base().stream().map(Rule::id).toList(), Candidate.Kind.RULE);
    } else {
      parts(List.of("because", "source"));
    }
  }

  private void inspect() {
    switch (cursor.lastPiece()) {
      case "answer" -> add(List.of("yes", "no"), Candidate.Kind.PART_VALUE);
      case "reading" -> add(BOUNDS, Candidate.Kind.KEYWORD);
      case "severity", "stage" -> value(cursor.lastPiece());
      default -> {
        boolean described =
            cursor.pieces().stream().anyMatch(piece -> cursor.textOf(piece).equals("for"));
        if (described && !hasPart()) {
          sentence("rule ", 1);
        } else if (cursor.pieces().size() >= 3 && !described) {
          add(List.of("for each"), Candidate.Kind.KEYWORD);
        }
        if (partBefore().equals("reading") && Completer.isBareNumber(cursor.lastPiece())) {
          units(Units.all().stream().map(Unit::dimension).toList());
        }
        parts(List.of("ask", "answer", "reading", "severity", "stage", "because", "source"));
      }
    }
  }

  private void ofCase() {
    int size = cursor.pieces().size();
    boolean ofEvery = word(3).equals("every");
    if (size == 2) {
      add(List.of("of"), Candidate.Kind.KEYWORD);
    } else if (size == 3) {
      add(setting.rules(), Candidate.Kind.RULE);
      add(List.of("every rule"), Candidate.Kind.KEYWORD);
    } else if (size == 4 && ofEvery) {
      add(List.of("rule"), Candidate.Kind.KEYWORD);
    } else if (size > 3) {
      boolean named = word(size - 2).equals("expect") && setting.rules().contains(word(size - 1));
      if (cursor.lastPiece().equals("expect") || named) {
        add(OUTCOMES, Candidate.Kind.KEYWORD);
      }
      if (cursor.lastPiece().equals("expect") && ofEvery) {
        add(setting.rules(), Candidate.Kind.RULE);
      }
      judged(STEP_WORDS, Candidate.Kind.KEYWORD);
      judged(STEPS, Candidate.Kind.PART);
    }
  }

  private void waive() {
    switch (cursor.pieces().size()) {
      case 1 -> add(setting.rules(), Candidate.Kind.RULE);
      case 2 -> add(List.of("for"), Candidate.Kind.KEYWORD);
      default -> {
        boolean described = cursor.pieces().stream().noneMatch(p -> p.kind() == Piece.Kind.TEXT);
        if (described && !hasPart()) {
          sentence("rule x \"x\" ", 2);
        }
        parts(List.of("in plan", "because", "approved by", "from", "until", "down to", "up to"));
      }
    }
  }

  private void file() {
    if (cursor.pieces().size() == 1) {
      add(List.of("for"), Candidate.Kind.KEYWORD);
    } else if (cursor.pieces().size() == 2 && !setting.standard().isEmpty()) {
      add(List.of(setting.standard()), Candidate.Kind.NAME);
    } else if (cursor.firstPiece().equals("waivers")) {
      parts(List.of("title"));
    }
  }

  /** What can stand where elements are described, as in a rule that begins so. */
  private void sentence(String beginning, int from) {
    int start = from < cursor.pieces().size() ? cursor.pieces().get(from).span().start() : -1;
    String rest = start < 0 ? "" : cursor.stem().substring(start);
    Judge judge = completer.judge(cursor, beginning + rest);
    completer
        .sentence(judge, cursor)
        .forEach(
            (word, candidate) -> {
              if (!OF_RULES.contains(word)) {
                good.putIfAbsent(word, candidate);
              }
            });
  }

  private void value(String part) {
    if (part.equals("stage")) {
      add(completer.stages(), Candidate.Kind.PART_VALUE);
    } else {
      for (Severity severity : Severity.values()) {
        add(List.of(severity.word()), Candidate.Kind.PART_VALUE);
      }
    }
  }

  private void units(Collection<Dimension> dimensions) {
    Units.all().stream()
        .filter(unit -> dimensions.contains(unit.dimension()) && !unit.symbol().isEmpty())
        .forEach(unit -> add(List.of(unit.symbol()), Candidate.Kind.UNIT));
  }

  /** Parts that the statement can have here and has not yet. */
  private void parts(List<String> names) {
    judged(
        names.stream().filter(name -> !completer.isGiven(name, cursor)).toList(),
        Candidate.Kind.PART);
  }

  /** Those of the words that the grammar takes here. */
  private void judged(List<String> words, Candidate.Kind kind) {
    Judge judge = completer.judge(cursor, cursor.stem());
    for (String word : words) {
      // Before anything but a date, this is a word like any other.
      String tried = word.equals("from") ? "from 2026-11-01" : word;
      Completer.offer(word, kind, judge.leads(tried), good);
    }
  }

  private void add(Collection<String> words, Candidate.Kind kind) {
    words.forEach(word -> Completer.offer(word, kind, true, good));
  }

  /** The piece of this number, from 0; empty if there are not so many. */
  private String word(int piece) {
    return piece >= 0 && piece < cursor.pieces().size()
        ? cursor.textOf(cursor.pieces().get(piece))
        : "";
  }

  private boolean hasPart() {
    return cursor.pieces().stream().anyMatch(piece -> piece.kind() == Piece.Kind.PART);
  }

  /** The part that was begun last. */
  private String partBefore() {
    List<Piece> parts = new ArrayList<>(cursor.pieces());
    parts.removeIf(piece -> piece.kind() != Piece.Kind.PART);
    return parts.isEmpty() ? "" : cursor.textOf(parts.get(parts.size() - 1));
  }
}
