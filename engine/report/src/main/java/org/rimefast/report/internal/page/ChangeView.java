package org.rimefast.report.internal.page;

import java.util.Optional;
import org.rimefast.lang.rule.Change;
import org.rimefast.report.internal.ChangeText;

/**
 * What a standard made of a rule.
 *
 * @param by {@code tamarack-house edition 2026-11}
 * @param text the amendment as it is written
 * @param what what it changes and what that does to the rule
 */
public record ChangeView(
    String by, String text, String what, String because, Optional<String> source) {
  static ChangeView of(Change change) {
    return new ChangeView(
        ChangeText.by(change),
        change.text(),
        ChangeText.what(change),
        change.because(),
        change.source());
  }
}
