package org.rimefast.report.internal;

import org.rimefast.lang.rule.Change;

/** Says in words what a standard made of a rule. */
public final class ChangeText {
  private ChangeText() {}

  /** {@code foam behind a box: 60 mm, was 2 in (stricter)}. */
  public static String what(Change change) {
    String said =
        switch (change.kind()) {
          case ADDED -> "rule added";
          case CONSTANT -> change.after() + ", was " + value(change.before());
          case LIMIT -> "limit " + change.after() + ", was " + change.before();
          case SEVERITY -> "severity " + change.after() + ", was " + change.before();
          case STAGE -> "stage " + change.after() + ", was " + change.before();
          case EXCEPTION -> change.after();
          case WITHDRAWN -> "withdrawn";
        };
    return said + " (" + effect(change.effect()) + ")";
  }

  /** {@code tamarack-house edition 2026-11}. */
  public static String by(Change change) {
    return change.standard() + " edition " + change.edition();
  }

  /** What a change does, in a few words. */
  public static String effect(Change.Effect effect) {
    return switch (effect) {
      case STRICTER -> "stricter";
      case LOOSER -> "looser";
      case UNCHANGED -> "asks the same";
      case NEITHER -> "asks something else, neither stricter nor looser";
      case UNPROVED -> "whether stricter or looser is not told by the rule alone";
    };
  }

  /** A constant's value without its name. */
  private static String value(String named) {
    return named.substring(named.lastIndexOf(": ") + 2);
  }
}
