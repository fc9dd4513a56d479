package org.rimefast.languageserver.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.rimefast.lang.Paraphrase;
import org.rimefast.lang.rule.Change;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Meaning;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.rule.Withdrawal;
import org.rimefast.lang.tooling.Analysis;
import org.rimefast.lang.vocabulary.Link;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.Stretch;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.lang.vocabulary.Vocabulary;
import org.rimefast.units.Unit;
import org.rimefast.units.Units;

/**
 * Says what a word means, as Markdown: a first line in bold, then what the vocabulary or the
 * standard says.
 */
final class MeaningText implements Meaning.Visitor<String> {
  private final Vocabulary vocabulary;
  private final Analysis analysis;

  MeaningText(Vocabulary vocabulary, Analysis analysis) {
    this.vocabulary = vocabulary;
    this.analysis = analysis;
  }

  @Override
  public String visitNoun(Meaning.OfNoun meaning) {
    Noun noun = meaning.noun();
    StringBuilder said =
        new StringBuilder(head(noun.singular(), "noun, several: " + noun.plural()));
    if (!noun.broader().isEmpty()) {
      said.append("Every ").append(noun).append(" is also: ").append(names(noun.broader()));
      said.append(".\n\n");
    }
    List<String> properties =
        vocabulary.properties().stream()
            .filter(property -> noun.isA(property.owner()))
            .map(Property::pattern)
            .toList();
    said.append(listed("Has ", properties));
    List<String> links =
        vocabulary.links().stream()
            .filter(link -> noun.isA(link.owner()))
            .map(Link::phrase)
            .toList();
    said.append(listed("Leads to ", links));
    List<String> relations =
        vocabulary.relations().stream()
            .filter(relation -> noun.isA(relation.subject()))
            .map(Relation::toString)
            .toList();
    return said.append(listed("Of it can be said ", relations)).toString();
  }

  @Override
  public String visitProperty(Meaning.OfProperty meaning) {
    Property property = meaning.property();
    return head(property.pattern(), "property of " + article(property.owner()))
        + type(property.type())
        + ".\n\n"
        + slots(property.slots());
  }

  @Override
  public String visitLink(Meaning.OfLink meaning) {
    Link link = meaning.link();
    return head(link.phrase(), "link of " + article(link.owner()))
        + "Leads to "
        + article(link.target())
        + ".\n\n";
  }

  @Override
  public String visitRelation(Meaning.OfRelation meaning) {
    Relation relation = meaning.relation();
    boolean verb = relation.form() == Relation.Form.VERB;
    String forms =
        verb
            ? "After must: " + relation.pattern() + "; after it: " + relation.third() + ".\n\n"
            : "Stands after be and is.\n\n";
    return head(relation.toString(), "said of " + article(relation.subject()))
        + forms
        + slots(relation.slots());
  }

  @Override
  public String visitStretch(Meaning.OfStretch meaning) {
    Stretch stretch = meaning.stretch();
    return head(stretch.pattern(), "stretch of " + article(stretch.path()))
        + slots(stretch.slots());
  }

  @Override
  public String visitChoice(Meaning.OfChoice meaning) {
    return head(meaning.word(), "one of a list of words: " + meaning.list().name())
        + String.join(", ", meaning.list().words())
        + "\n\n";
  }

  @Override
  public String visitConstant(Meaning.OfConstant meaning) {
    Constant constant = meaning.constant();
    return head(constant.name(), "constant")
        + constant.value().quantity().text()
        + "\n\n"
        + reason(constant.because(), constant.source());
  }

  @Override
  public String visitTerm(Meaning.OfTerm meaning) {
    Term term = meaning.term();
    String written = analysis.source().textOf(term.condition().span());
    return head(term.singular(), "term, several: " + term.plural())
        + article(term.noun())
        + " where "
        + written.replaceAll("--[^\r\n]*", "").replaceAll("\\s+", " ").strip()
        + "\n\n"
        + reason(term.because(), term.source());
  }

  @Override
  public String visitRule(Meaning.OfRule meaning) {
    for (Rule rule : analysis.rules()) {
      if (rule.id().equals(meaning.id())) {
        return rule(rule, rule.question().isPresent() ? "inspect item" : "rule");
      }
    }
    for (Withdrawal withdrawal : analysis.withdrawn()) {
      if (withdrawal.rule().id().equals(meaning.id())) {
        return rule(withdrawal.rule(), "rule, withdrawn");
      }
    }
    return head(meaning.id(), "rule") + "It has a fault.\n\n";
  }

  private String rule(Rule rule, String what) {
    return head(rule.id(), what)
        + rule.title()
        + "\n\n"
        + rule.sentence()
        + "\n\n"
        + readAs(rule)
        + "severity "
        + rule.severity().word()
        + ", from stage "
        + rule.stage()
        + " on\n\n"
        + reason(Optional.of(rule.because()), Optional.of(rule.source()))
        + rule.changes().stream().map(MeaningText::change).collect(Collectors.joining());
  }

  /** The sentence as the compiler understands it, which has one form for each meaning. */
  private String readAs(Rule rule) {
    return new Paraphrase(vocabulary)
        .of(rule)
        .text()
        .map(text -> "read as: " + text + "\n\n")
        .orElse("");
  }

  /** Who changed it, to what, and what that does. */
  private static String change(Change change) {
    String by = "by " + change.standard() + " edition " + change.edition();
    if (change.kind() == Change.Kind.ADDED) {
      return "added " + by + "\n\n";
    }
    String values =
        change.kind() == Change.Kind.WITHDRAWN || change.after().isEmpty()
            ? ""
            : " ("
                + (change.before().isEmpty() ? "" : change.before() + " -> ")
                + change.after()
                + ")";
    return (change.kind() == Change.Kind.WITHDRAWN ? "withdrawn " : "amended ")
        + by
        + ": "
        + change.text()
        + values
        + ", "
        + effect(change.effect())
        + "; because: "
        + change.because()
        + "\n\n";
  }

  private static String effect(Change.Effect effect) {
    return switch (effect) {
      case STRICTER -> "stricter";
      case LOOSER -> "looser";
      case UNCHANGED -> "asks the same";
      case NEITHER -> "asks something else";
      case UNPROVED -> "stricter or looser is not proved";
    };
  }

  private static String head(String words, String what) {
    return "**" + words + "**: " + what + "\n\n";
  }

  private static String reason(Optional<String> because, Optional<String> source) {
    return because.map(text -> "because: " + text + "\n\n").orElse("")
        + source.map(text -> "source: " + text + "\n\n").orElse("");
  }

  private static String listed(String begin, List<String> words) {
    return words.isEmpty() ? "" : begin + String.join(", ", words) + ".\n\n";
  }

  private static String slots(List<Slot> slots) {
    List<String> said = new ArrayList<>();
    for (Slot slot : slots) {
      said.add(slot(slot));
    }
    return said.isEmpty() ? "" : "At each \\_ in turn: " + String.join("; ", said) + ".\n\n";
  }

  private static String slot(Slot slot) {
    if (slot instanceof Slot.Element element) {
      return article(element.noun());
    }
    if (slot instanceof Slot.Along along) {
      return "a stretch of " + article(along.path());
    }
    return slot instanceof Slot.Kind kind ? "any " + kind.noun() : type(((Slot.Of) slot).type());
  }

  /** What kind of value it is: {@code a number in mm, cm, m, in or ft}. */
  static String type(ValueType type) {
    if (type instanceof ValueType.Choice choice) {
      return "one of: " + String.join(", ", choice.words());
    }
    if (!(type instanceof ValueType.Number number)) {
      return "a text";
    }
    List<String> units =
        Units.all().stream()
            .filter(unit -> unit.dimension().equals(number.dimension()))
            .map(Unit::symbol)
            .filter(symbol -> !symbol.isEmpty())
            .toList();
    return units.isEmpty() ? "a plain number" : "a number in " + String.join(", ", units);
  }

  private static String names(List<Noun> nouns) {
    return nouns.stream().map(Noun::singular).collect(Collectors.joining(", "));
  }

  private static String article(Noun noun) {
    return ("aeiou".indexOf(noun.singular().charAt(0)) >= 0 ? "an " : "a ") + noun.singular();
  }
}
