package org.rimefast.lang;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceText;

/** What is true of every text and what it is laid out as. */
final class FormattingLaws {
  static final RuleCompiler COMPILER = new RuleCompiler(Words.vocabulary());

  /** Texts and comments whole; else anything but white space, one by one. */
  private static final Pattern INK =
      Pattern.compile("\"\"\"(?s:.*?)\"\"\"|\"[^\"\r\n]*\"?|--[^\r\n]*|[^ \t\r\n]");

  private FormattingLaws() {}

  static void hold(String text) {
    String once = RuleFormatter.format(new SourceText("x", text));
    assertThat(RuleFormatter.format(new SourceText("x", once))).as(text).isEqualTo(once);
    assertThat(ink(once)).as(text).isEqualTo(ink(text));
    assertThat(once).as(text).doesNotStartWith("\n");
    assertThat(once.isEmpty() || once.endsWith("\n")).as(text).isTrue();
    Compilation before = COMPILER.compile(new SourceText("x", text), LayerTexts.FINDER);
    Compilation after = COMPILER.compile(new SourceText("x", once), LayerTexts.FINDER);
    assertThat(after.standard().map(FormattingLaws::dump))
        .as(text)
        .isEqualTo(before.standard().map(FormattingLaws::dump));
    if (before.standard().isPresent()) {
      assertThat(once).as(text).doesNotContain("\r", "\n\n\n", " \n");
      String words = once.replaceAll("\"[^\"\n]*\"|--[^\n]*", "");
      assertThat(words).as(text).doesNotContain("\t");
    }
  }

  /** Whatever is no white space, apart from the spaces at the end of comments. */
  private static List<String> ink(String text) {
    List<String> ink = new ArrayList<>();
    Matcher matcher = INK.matcher(text);
    while (matcher.find()) {
      String found = matcher.group();
      ink.add(found.startsWith("--") ? found.replaceAll("[ \t]+$", "") : found);
    }
    return ink;
  }

  /** The typed rules without spans: what stands in angle brackets is the text of a span. */
  static String dump(Standard standard) {
    StringBuilder dump = new StringBuilder(RuleDump.of(standard).replaceAll("(?m)   <.*>$", ""));
    dump.append(standard.title()).append('\n').append(standard.caution()).append('\n');
    for (Rule rule : standard.rules()) {
      dump.append(String.join("\n", rule.title(), rule.because(), rule.source(), "\n"));
    }
    return dump.toString();
  }
}
