package org.rimefast.lang.internal.layer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.grammar.StatementReader;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceFinder;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;

/** Reads a standard with all that it includes and builds on. */
public final class LayerReader {
  /** How much is taken on. */
  public record Bounds(int characters, int nesting, int errors, int files, int layers) {}

  /**
   * What was read.
   *
   * @param source all texts as one; the standard's own comes first
   * @param layers the standards, the one at the bottom first
   * @param complete false if a text that is named could not be had, so that nothing can be said of
   *     words that may stand in it
   * @param diagnostics what is wrong with the texts as such
   */
  public record Read(
      SourceText source, List<Layer> layers, boolean complete, List<Diagnostic> diagnostics) {
    /** Copies the lists. */
    public Read {
      layers = List.copyOf(layers);
      diagnostics = List.copyOf(diagnostics);
    }
  }

  /** One standard while it is read: where its files are, and which were read. */
  private static final class Reading {
    final SourceFinder finder;
    final int first;
    final List<String> files = new ArrayList<>();
    final List<String> open = new ArrayList<>();
    final List<Statement> statements = new ArrayList<>();
    boolean isWhole = true;

    Reading(SourceFinder finder, int first) {
      this.finder = finder;
      this.first = first;
    }
  }

  private final Bounds bounds;
  private SourceText source;
  private final List<Layer> layers = new ArrayList<>();
  private final List<Diagnostic> diagnostics = new ArrayList<>();
  private final List<String> standards = new ArrayList<>();
  private boolean complete = true;

  private LayerReader(SourceText source, Bounds bounds) {
    this.source = source;
    this.bounds = bounds;
  }

  /** Reads a text and what it names. */
  public static Read read(SourceText source, SourceFinder finder, Bounds bounds) {
    LayerReader reader = new LayerReader(source, bounds);
    reader.layer(finder, 0, source.parts().size());
    return new Read(reader.source, reader.layers, reader.complete, reader.diagnostics);
  }

  /** A standard whose own files are there already. */
  private void layer(SourceFinder finder, int first, int end) {
    Reading reading = new Reading(finder, first);
    for (int part = first; part < end; part++) {
      file(reading, part, "");
    }
    Layer layer = new Layer(reading.statements, source.spanOf(first).start(), reading.isWhole);
    for (Statement statement : reading.statements) {
      if (statement instanceof Statement.Header header && !header.builds().isEmpty()) {
        base(finder, header, header.builds().get(0));
        break;
      }
    }
    layers.add(layer);
  }

  /** Reads one file and, where it includes others, those. */
  private void file(Reading reading, int part, String name) {
    if (!isFit(part)) {
      reading.isWhole = false;
      complete = false;
      return;
    }
    StatementReader.Statements read =
        StatementReader.read(source, part, bounds.nesting(), bounds.errors());
    diagnostics.addAll(read.diagnostics());
    reading.isWhole &= read.diagnostics().isEmpty();
    boolean own = name.isEmpty();
    boolean headed = !own;
    for (Statement statement : read.statements()) {
      headed |= statement instanceof Statement.Header;
      if (statement instanceof Statement.Header header && !own) {
        diagnostics.add(notInIncluded(header));
      } else if (statement instanceof Statement.Include include) {
        include(reading, include, name, headed || part > reading.first);
      } else {
        reading.statements.add(statement);
      }
    }
  }

  private static Diagnostic notInIncluded(Statement.Header header) {
    return Problems.error(
        DiagnosticCode.MISPLACED_STANDARD,
        header.name().span(),
        "An included file has no \"standard\" statement; it belongs to the standard that includes"
            + " it.",
        "Take the statement out; to stand on another standard, write in the first statement: builds"
            + " on "
            + header.name().text()
            + " edition "
            + header.edition().text());
  }

  private boolean isFit(int part) {
    Span place = source.spanOf(part);
    Optional<Diagnostic> unfit =
        UnfitText.problem(source.parts().get(part).text(), bounds.characters());
    unfit.ifPresent(
        problem ->
            diagnostics.add(
                Problems.error(
                    problem.code(),
                    new Span(
                        place.start() + problem.span().start(),
                        place.start() + problem.span().end()),
                    problem.headline(),
                    problem.help())));
    return unfit.isEmpty();
  }

  private void include(Reading reading, Statement.Include include, String from, boolean headed) {
    Span span = include.name().span();
    String written = include.name().text();
    if (!headed) {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.MISPLACED_STANDARD,
              span,
              "The standard is named before its files are.",
              "Move this statement below the one that begins with \"standard\"."));
    }
    Optional<Diagnostic> problem = nameProblem(reading, include, from);
    if (problem.isPresent()) {
      miss(problem.get());
      return;
    }
    String name = FileNames.resolved(FileNames.folderOf(from), written);
    reading.files.add(name);
    Optional<SourceText> found = reading.finder.include(name);
    if (found.isEmpty()) {
      miss(
          Problems.error(
              DiagnosticCode.MISSING_FILE,
              span,
              "There is no file " + English.quoted(English.shortened(name)) + " that can be read.",
              "The name is relative to the file that includes it; the file must be UTF-8 text."));
      return;
    }
    int part = source.parts().size();
    if (add(found.get(), span)) {
      int end = source.parts().size();
      reading.open.add(name);
      for (int i = part; i < end; i++) {
        file(reading, i, name);
      }
      reading.open.remove(name);
    }
  }

  private Optional<Diagnostic> nameProblem(
      Reading reading, Statement.Include include, String from) {
    Span span = include.name().span();
    String written = include.name().text();
    Optional<String> problem = FileNames.problem(written);
    if (problem.isPresent()) {
      return Optional.of(
          Problems.error(
              DiagnosticCode.BAD_FILE_NAME,
              span,
              "This name of a file " + problem.get() + ".",
              "Write it relative to this file, with forward slashes: include"
                  + " \"parts/doors.rime\""));
    }
    String name = FileNames.resolved(FileNames.folderOf(from), written);
    String first = FileNames.last(source.parts().get(reading.first).name());
    if (reading.open.contains(name) || name.equals(first)) {
      return Optional.of(
          Problems.error(
              DiagnosticCode.CIRCULAR_FILES,
              span,
              "The file " + English.quoted(English.shortened(name)) + " would include itself.",
              "Take this statement out."));
    }
    return reading.files.contains(name)
        ? Optional.of(
            Problems.error(
                DiagnosticCode.REPEATED_FILE,
                span,
                "The file " + English.quoted(English.shortened(name)) + " is already included.",
                "Take this statement out: a file is included once, and all that the standard says"
                    + " holds in all its files."))
        : Optional.empty();
  }

  private void base(SourceFinder finder, Statement.Header header, Statement.BuildsOn builds) {
    String name = builds.name().text();
    String edition = builds.edition().text();
    standards.add(header.name().text());
    if (standards.contains(name)) {
      miss(
          Problems.error(
              DiagnosticCode.CIRCULAR_FILES,
              builds.name().span(),
              "The standard " + name + " would build on itself.",
              "The way is: " + String.join(" builds on ", standards) + " builds on " + name + "."));
      return;
    }
    if (standards.size() >= bounds.layers()) {
      miss(
          Problems.error(
              DiagnosticCode.TOO_MANY_FILES,
              builds.span(),
              "More than " + bounds.layers() + " standards build on each other.",
              "Put some of them together."));
      return;
    }
    Optional<SourceText> found = finder.base(name, edition);
    if (found.isEmpty()) {
      miss(
          Problems.error(
              DiagnosticCode.MISSING_BASE,
              builds.name().span(),
              "The standard " + English.quoted(English.shortened(name)) + " is not there.",
              "It is a shipped standard, or a file "
                  + English.shortened(name)
                  + ".rime beside this one; the command \"rimefast standards\" lists the shipped"
                  + " ones."));
      return;
    }
    int first = source.parts().size();
    if (!add(found.get(), builds.span())) {
      return;
    }
    int end = source.parts().size();
    layer(finder.ofBase(name, edition), first, end);
    wrongEdition(builds, layers.get(layers.size() - 1)).ifPresent(this::miss);
  }

  /** The base says itself what it is. */
  private static Optional<Diagnostic> wrongEdition(Statement.BuildsOn builds, Layer base) {
    for (Statement statement : base.statements()) {
      if (statement instanceof Statement.Header header) {
        String found = header.name().text() + " edition " + header.edition().text();
        String wanted = builds.name().text() + " edition " + builds.edition().text();
        return found.equals(wanted)
            ? Optional.empty()
            : Optional.of(
                new Diagnostic(
                    DiagnosticCode.WRONG_EDITION,
                    Diagnostic.Level.ERROR,
                    builds.span(),
                    "This builds on " + wanted + ", and what is there is " + found + ".",
                    "Read what changed, then write: builds on " + found,
                    List.of(new Diagnostic.Related(header.edition().span(), "it says so here")),
                    List.of(new Diagnostic.Fix(builds.span(), "builds on " + found))));
      }
    }
    return Optional.empty();
  }

  /** Adds a text that was found; false if that would be too much. */
  private boolean add(SourceText found, Span where) {
    long characters = (long) source.text().length() + found.text().length();
    if (source.parts().size() + found.parts().size() > bounds.files()) {
      miss(
          Problems.error(
              DiagnosticCode.TOO_MANY_FILES,
              where,
              "The standard is made of more than " + bounds.files() + " files.",
              "Put some of them together."));
      return false;
    }
    if (characters > bounds.characters()) {
      miss(
          Problems.error(
              DiagnosticCode.TEXT_TOO_LONG,
              where,
              "With this, the standard has "
                  + characters
                  + " characters; at most "
                  + bounds.characters()
                  + " are taken.",
              "Divide it into several standards."));
      return false;
    }
    for (SourceText.Part part : found.parts()) {
      source = source.with(part);
    }
    return true;
  }

  private void miss(Diagnostic problem) {
    complete = false;
    diagnostics.add(problem);
  }
}
