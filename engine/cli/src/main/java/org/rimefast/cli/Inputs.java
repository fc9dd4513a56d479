package org.rimefast.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.Limits;
import org.rimefast.lang.source.SourceText;
import org.rimefast.plan.PlanReading;
import org.rimefast.report.UnusableInput;
import org.rimefast.report.UnusableInput.Kind;

/** Finds and reads what the command line names. */
final class Inputs {
  static final String STANDARD_INPUT = "(standard input)";

  private static final String BYTE_ORDER_MARK = "\uFEFF";

  // In UTF-8 a character of a Java text takes three bytes at most; the mark at the start takes
  // three.
  private static final int MOST_BYTES_OF_RULES = 3 * Limits.DEFAULT.characters() + 3;

  private final Checks checks;
  private final InputStream in;

  Inputs(Checks checks, InputStream in) {
    this.checks = checks;
    this.in = in;
  }

  /** Something read, or why it could not be: one of the two is there. */
  record Read<T>(Optional<T> value, Optional<UnusableInput> unusable) {
    static <T> Read<T> of(T value) {
      return new Read<>(Optional.of(value), Optional.empty());
    }

    static <T> Read<T> unreadable(
        Kind kind, String name, String code, String message, String remedy) {
      return new Read<>(
          Optional.empty(),
          Optional.of(UnusableInput.unreadable(kind, name, code, message, remedy)));
    }
  }

  /**
   * A file of rules that was read.
   *
   * @param path where it is
   * @param mark the byte order mark that it begins with, which is no part of its text; may be empty
   * @param source its text
   */
  record RuleFile(Path path, String mark, SourceText source) {}

  /** How messages name a plan. */
  static String nameOf(String plan) {
    return plan.equals("-") ? STANDARD_INPUT : plan;
  }

  Read<PlanReading> plan(String plan) {
    try {
      if (plan.equals("-")) {
        int most = Math.toIntExact(checks.longestPlan() + 1);
        return Read.of(checks.read(STANDARD_INPUT, in.readNBytes(most)));
      }
      Path file = Path.of(plan);
      return Files.isDirectory(file)
          ? directory(Kind.PLAN, plan, "Name the plan files in it.")
          : Read.of(checks.read(file));
    } catch (IOException | InvalidPathException e) {
      return unreadable(Kind.PLAN, nameOf(plan), e);
    }
  }

  /** A shipped standard, or else a file, compiled. */
  Read<Compilation> standard(String name) {
    Optional<SourceText> shipped = checks.shipped(name);
    if (shipped.isPresent()) {
      return Read.of(checks.compile(shipped.get(), FileFinder.shipped(checks)));
    }
    try {
      if (!Files.exists(Path.of(name)) && !looksLikeFile(name)) {
        return unknownStandard(name);
      }
    } catch (InvalidPathException e) {
      return unreadable(Kind.STANDARD, name, e);
    }
    Read<RuleFile> read = rules(name);
    return new Read<>(read.value().map(this::compiled), read.unusable());
  }

  /** A file of rules with all that it includes and builds on. */
  Compilation compiled(RuleFile file) {
    return checks.compile(file.source(), FileFinder.beside(checks, file.path()));
  }

  /** A file of rules. */
  Read<RuleFile> rules(String name) {
    return rules(name, Kind.STANDARD);
  }

  /** A file of rules, or of waivers. */
  Read<RuleFile> rules(String name, Kind kind) {
    try {
      Path file = Path.of(name);
      if (Files.isDirectory(file)) {
        String what = kind == Kind.WAIVERS ? "waivers" : "rules";
        return directory(kind, name, "Name the file of " + what + " in it.");
      }
      byte[] bytes = read(file);
      if (bytes.length > MOST_BYTES_OF_RULES) {
        return Read.unreadable(
            kind,
            name,
            "too-large",
            "This file has more than the "
                + Limits.DEFAULT.characters()
                + " characters that are read of a file of rules.",
            "Check that it is a file of rules; divide it into several standards.");
      }
      String text = text(bytes);
      // Some editors put a byte order mark first.
      String mark = text.startsWith(BYTE_ORDER_MARK) ? BYTE_ORDER_MARK : "";
      return Read.of(new RuleFile(file, mark, new SourceText(name, text.substring(mark.length()))));
    } catch (CharacterCodingException e) {
      return Read.unreadable(
          kind,
          name,
          "not-utf8",
          "This file is not UTF-8 text.",
          "Save it as UTF-8 in your editor.");
    } catch (IOException | InvalidPathException e) {
      return unreadable(kind, name, e);
    }
  }

  /** No more than tells whether the file is too large, whatever its size is said to be. */
  private static byte[] read(Path file) throws IOException {
    try (InputStream stream = Files.newInputStream(file)) {
      return stream.readNBytes(MOST_BYTES_OF_RULES + 1);
    }
  }

  private Read<Compilation> unknownStandard(String name) {
    List<String> known = checks.shippedNames();
    return Read.unreadable(
        Kind.STANDARD,
        name,
        "unknown-standard",
        "There is no shipped standard and no file of this name" + NearestNames.ending(name, known),
        known.isEmpty()
            ? "No standard is shipped with this program; name a file of rules."
            : "The command \"rimefast standards\" lists the shipped ones; a file of rules ends in"
                + " .rime.");
  }

  private static boolean looksLikeFile(String name) {
    return name.endsWith(".rime") || name.indexOf('/') >= 0 || name.indexOf('\\') >= 0;
  }

  private static String text(byte[] bytes) throws CharacterCodingException {
    return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
  }

  private static <T> Read<T> directory(Kind kind, String name, String remedy) {
    return Read.unreadable(kind, name, "is-a-folder", "This is a folder, not a file.", remedy);
  }

  /** A file of rules that was read but cannot be replaced. */
  static UnusableInput unwritable(String name, IOException e) {
    return e instanceof AccessDeniedException
        ? UnusableInput.unreadable(
            Kind.STANDARD,
            name,
            "not-allowed",
            "You are not allowed to write this file, or a file beside it.",
            "Ask for the right to write in its folder; the file is as it was.")
        : UnusableInput.unreadable(
            Kind.STANDARD,
            name,
            "cannot-write",
            "This file cannot be written: " + e.getMessage() + ".",
            "The file is as it was.");
  }

  private static <T> Read<T> unreadable(Kind kind, String name, Exception e) {
    if (e instanceof NoSuchFileException || e instanceof NotDirectoryException) {
      return Read.unreadable(
          kind, name, "no-such-file", "There is no such file.", "Check its name and folder.");
    }
    if (e instanceof AccessDeniedException) {
      return Read.unreadable(
          kind,
          name,
          "not-allowed",
          "This file must not be read by you.",
          "Ask for the right to read it.");
    }
    if (e instanceof InvalidPathException) {
      return Read.unreadable(
          kind, name, "no-such-file", "This cannot be the name of a file.", "Check the name.");
    }
    return Read.unreadable(
        kind, name, "cannot-read", "This file cannot be read: " + e.getMessage() + ".", "");
  }
}
