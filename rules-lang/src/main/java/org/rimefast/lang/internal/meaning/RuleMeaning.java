package org.rimefast.lang.internal.meaning;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.rimefast.lang.internal.message.Readings;
import org.rimefast.lang.internal.message.TableText;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.RuleUses;

/**
 * A rule's identity: two rules that mean the same have the same, however they are laid out and
 * whatever their reasons; two that do not have not.
 */
public final class RuleMeaning {
  /** How many digits of the hash rule text holds. */
  private static final int DIGITS = 12;

  private RuleMeaning() {}

  /** The first twelve hex digits of the SHA-256 of all that the rule means. */
  public static String hash(Rule rule) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(exact(rule).getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(hash).substring(0, DIGITS);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** All that the rule means, with the ids of the vocabulary; for machines. */
  static String exact(Rule rule) {
    RuleUses uses = RuleUses.ofAll(rule);
    List<String> lines = new ArrayList<>();
    lines.add("subject " + rule.subject().noun().id());
    rule.where().ifPresent(where -> lines.add("where " + Readings.exact(where)));
    rule.onlyIf().ifPresent(onlyIf -> lines.add("only if " + Readings.exact(onlyIf)));
    lines.add("must " + Readings.exact(rule.requirement()));
    lines.add("severity " + rule.severity().word());
    lines.add("stage " + rule.stage());
    uses.constants()
        .values()
        .forEach(
            constant ->
                lines.add("let " + constant.name() + " be " + Readings.exact(constant.value())));
    uses.terms()
        .values()
        .forEach(
            term ->
                lines.add(
                    "let "
                        + term.singular()
                        + " be "
                        + term.noun().id()
                        + " where "
                        + Readings.exact(term.condition())));
    uses.tables()
        .values()
        .forEach(
            table -> {
              lines.add("table " + table.name() + " of " + table.noun().id());
              table.inputs().forEach(input -> lines.add("by " + Readings.exact(input)));
              lines.addAll(TableText.rows(table));
            });
    return String.join("\n", lines);
  }

  /**
   * The rule in words, with the values of its constants, what its terms mean, its severity and its
   * stage; for people, in one line and without double quotes.
   */
  public static String words(Rule rule) {
    RuleUses uses = RuleUses.ofAll(rule);
    List<String> notes = new ArrayList<>();
    uses.constants()
        .values()
        .forEach(
            constant -> notes.add(constant.name() + ": " + constant.value().quantity().text()));
    uses.terms()
        .values()
        .forEach(
            term ->
                notes.add(
                    term.singular()
                        + ": a "
                        + term.noun()
                        + " where "
                        + Readings.of(term.condition())));
    uses.tables()
        .values()
        .forEach(
            table -> notes.add(table.name() + ": " + String.join(", ", TableText.rows(table))));
    notes.add(rule.severity().word());
    notes.add(rule.stage());
    return (rule.sentence() + " (" + String.join("; ", notes) + ")").replace('"', '\'');
  }
}
