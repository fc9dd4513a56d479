package org.rimefast.cli;

import java.util.List;
import org.rimefast.check.CheckResult;
import org.rimefast.check.RuleResult;
import org.rimefast.check.Verdict;
import org.rimefast.lang.rule.Severity;

/** What the command tells the program that called it. */
final class ExitCode {
  /** Nothing was found at or above the severity asked for. */
  static final int SOUND = 0;

  /** A rule of that severity is broken or could not be worked out; or a file is not laid out. */
  static final int FINDINGS = 1;

  /** A plan or a standard cannot be used, or the report or a file cannot be written. */
  static final int UNUSABLE = 2;

  /** A rule of that severity is undecided, and that was asked to count. */
  static final int UNDECIDED = 3;

  /** The command line is wrong. */
  static final int USAGE = 64;

  /** The program itself is wrong. */
  static final int OUR_FAULT = 70;

  private ExitCode() {}

  /**
   * The code of a run in which everything could be used. What is waived does not count.
   *
   * @param least the least grave severity that counts
   * @param strict whether undecided counts
   */
  static int of(List<CheckResult> results, Severity least, boolean strict) {
    if (any(results, least, Verdict.BROKEN) || any(results, least, Verdict.ERROR)) {
      return FINDINGS;
    }
    return strict && any(results, least, Verdict.UNDECIDED) ? UNDECIDED : SOUND;
  }

  private static boolean any(List<CheckResult> results, Severity least, Verdict verdict) {
    for (CheckResult result : results) {
      for (RuleResult rule : result.rules()) {
        int waived = verdict == Verdict.BROKEN ? rule.waived() : 0;
        if (rule.rule().severity().compareTo(least) <= 0 && rule.count(verdict) > waived) {
          return true;
        }
      }
    }
    return false;
  }
}
