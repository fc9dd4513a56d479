package org.rimefast.cli;

import java.util.LinkedHashMap;
import java.util.Map;

/** What the exit codes of each command mean, as its help says it. */
final class ExitCodeWords {
  private ExitCodeWords() {}

  static Map<String, String> check() {
    Map<String, String> codes = new LinkedHashMap<>();
    codes.put(
        " " + ExitCode.SOUND, "nothing at or above --fail-on is broken, but for what is waived");
    codes.put(
        " " + ExitCode.FINDINGS,
        "a rule at or above --fail-on is broken and not waived, or could not be worked out");
    codes.put(
        " " + ExitCode.UNUSABLE,
        "whatever else was found: a plan, the standard or a file of waivers cannot be used (beside a"
            + " plan that cannot, the others are still checked and reported), or the report cannot be"
            + " written");
    codes.put(
        " " + ExitCode.UNDECIDED, "with --strict: nothing is broken, but a rule is undecided");
    putCommon(codes);
    return codes;
  }

  static Map<String, String> format() {
    Map<String, String> codes = new LinkedHashMap<>();
    codes.put(
        " " + ExitCode.SOUND, "all that can be read is laid out; with --check: it was already");
    codes.put(" " + ExitCode.FINDINGS, "with --check: a file would change");
    codes.put(
        " " + ExitCode.UNUSABLE,
        "a file cannot be read or written (the other files are still seen to), or what was done"
            + " cannot be told");
    putCommon(codes);
    return codes;
  }

  static Map<String, String> cases() {
    Map<String, String> codes = new LinkedHashMap<>();
    codes.put(" " + ExitCode.SOUND, "every case came out as expected");
    codes.put(" " + ExitCode.FINDINGS, "a case did not, or could not be run");
    codes.put(
        " " + ExitCode.UNUSABLE,
        "a file cannot be read, does not compile or has no case (the others are still seen to), or"
            + " a report cannot be written");
    putCommon(codes);
    return codes;
  }

  static Map<String, String> pin() {
    Map<String, String> codes = new LinkedHashMap<>();
    codes.put(" " + ExitCode.SOUND, "all is accepted; with --check: it was already");
    codes.put(" " + ExitCode.FINDINGS, "with --check: something is to be accepted");
    codes.put(
        " " + ExitCode.UNUSABLE,
        "a file cannot be read or written or has other faults (the other files are still seen"
            + " to), or what was done cannot be told");
    putCommon(codes);
    return codes;
  }

  static Map<String, String> document() {
    Map<String, String> codes = new LinkedHashMap<>();
    codes.put(" " + ExitCode.SOUND, "the page is written, whatever came of the cases");
    codes.put(
        " " + ExitCode.UNUSABLE,
        "the standard or its cases cannot be used, or the page cannot be written");
    putCommon(codes);
    return codes;
  }

  static Map<String, String> explain() {
    Map<String, String> codes = new LinkedHashMap<>();
    codes.put(" " + ExitCode.SOUND, "the rule is told");
    codes.put(" " + ExitCode.UNUSABLE, "the standard cannot be used, or the rule cannot be told");
    putCommon(codes);
    return codes;
  }

  static Map<String, String> languageServer() {
    Map<String, String> codes = new LinkedHashMap<>();
    codes.put(" " + ExitCode.SOUND, "the editor ended it as the protocol says");
    codes.put(" " + ExitCode.FINDINGS, "it ended without being shut down first");
    putCommon(codes);
    return codes;
  }

  static Map<String, String> standards() {
    Map<String, String> codes = new LinkedHashMap<>();
    codes.put(" " + ExitCode.SOUND, "the list is written");
    codes.put(" " + ExitCode.UNUSABLE, "the list cannot be written");
    putCommon(codes);
    return codes;
  }

  static Map<String, String> cost() {
    Map<String, String> codes = new LinkedHashMap<>();
    codes.put(" " + ExitCode.SOUND, "the list is written");
    codes.put(
        " " + ExitCode.UNUSABLE, "the standard cannot be used, or the list cannot be written");
    putCommon(codes);
    return codes;
  }

  private static void putCommon(Map<String, String> codes) {
    codes.put(" " + ExitCode.USAGE, "the command line is wrong");
    codes.put(" " + ExitCode.OUR_FAULT, "a fault of rimefast itself");
  }
}
