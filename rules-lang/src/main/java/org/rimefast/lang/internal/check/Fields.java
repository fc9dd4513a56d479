package org.rimefast.lang.internal.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;

/** The named parts of a statement. */
final class Fields {
  private final Map<String, Statement.Field> byKey = new LinkedHashMap<>();
  private final List<Diagnostic> diagnostics;

  Fields(List<Statement.Field> fields, List<Diagnostic> diagnostics) {
    this.diagnostics = diagnostics;
    for (Statement.Field field : fields) {
      Statement.Field first = byKey.putIfAbsent(field.key().text(), field);
      if (first != null) {
        diagnostics.add(
            Problems.related(
                DiagnosticCode.REPEATED_PART,
                field.key().span(),
                "There are two parts called " + English.quoted(field.key().text()) + ".",
                "Keep one of them.",
                List.of(new Diagnostic.Related(first.key().span(), "the first one is here"))));
      }
    }
  }

  Optional<Word> word(String key) {
    return Optional.ofNullable(byKey.get(key)).map(Statement.Field::value);
  }

  Optional<String> text(String key) {
    return word(key).map(Word::text);
  }

  /** Reports parts that this kind of statement does not have. */
  void refuse(List<String> keys, String kind) {
    for (String key : keys) {
      Statement.Field field = byKey.get(key);
      if (field != null) {
        diagnostics.add(
            Problems.error(
                DiagnosticCode.MISPLACED_PART,
                field.key().span(),
                kind + " has no " + English.quoted(key) + ".",
                "Take it out, or put it in a rule."));
      }
    }
  }
}
