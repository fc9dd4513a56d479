package org.rimefast.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.WaiverCompilation;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceText;
import org.rimefast.plan.PlanFault;
import org.rimefast.plan.PlanSource;

/**
 * A plan, standard or file of waivers that cannot be used, and why.
 *
 * @param kind what it should have been
 * @param name the file, or the name that was asked for
 * @param faults everything that is wrong with it, in the order of the file
 */
public record UnusableInput(Kind kind, String name, List<Fault> faults) {

  /** What an input should have been. */
  public enum Kind {
    PLAN,
    STANDARD,
    WAIVERS
  }

  /**
   * One thing that is wrong.
   *
   * @param code stable name of the kind of fault: {@code unknown-field}
   * @param pointer the JSON pointer of the value; empty if the fault is not in a JSON value
   * @param place line and column; empty if the file could not be read at all
   * @param message what is wrong, one sentence
   * @param remedy what to do; may be empty
   * @param file the file it is in, where that is another than the input: one that a standard
   *     includes or builds on
   */
  public record Fault(
      String code,
      Optional<String> pointer,
      Optional<PlanSource.Place> place,
      String message,
      String remedy,
      Optional<String> file) {
    /** A fault of the input itself. */
    public Fault(
        String code,
        Optional<String> pointer,
        Optional<PlanSource.Place> place,
        String message,
        String remedy) {
      this(code, pointer, place, message, remedy, Optional.empty());
    }
  }

  /** Copies the list. */
  public UnusableInput {
    faults = List.copyOf(faults);
  }

  /** A plan that was read and has faults. */
  public static UnusableInput plan(String name, List<PlanFault> faults) {
    return new UnusableInput(
        Kind.PLAN,
        name,
        faults.stream()
            .map(
                fault ->
                    new Fault(
                        fault.code(),
                        Optional.of(fault.pointer()),
                        Optional.ofNullable(fault.place()),
                        fault.message(),
                        fault.remedy()))
            .toList());
  }

  /** A standard that does not compile; its warnings are left out. */
  public static UnusableInput standard(Compilation compilation) {
    return compiled(Kind.STANDARD, compilation.source(), compilation.diagnostics());
  }

  /** A file of waivers that does not compile; its warnings are left out. */
  public static UnusableInput waivers(WaiverCompilation compilation) {
    return compiled(Kind.WAIVERS, compilation.source(), compilation.diagnostics());
  }

  private static UnusableInput compiled(
      Kind kind, SourceText source, List<Diagnostic> diagnostics) {
    List<Fault> faults = new ArrayList<>();
    for (Diagnostic diagnostic : diagnostics) {
      if (diagnostic.level() == Diagnostic.Level.ERROR) {
        SourceText.Place at = source.place(diagnostic.span().start());
        boolean own = source.partAt(diagnostic.span().start()) == 0;
        faults.add(
            new Fault(
                diagnostic.code().id(),
                Optional.empty(),
                Optional.of(new PlanSource.Place(at.line(), at.column())),
                diagnostic.headline(),
                diagnostic.help(),
                own ? Optional.empty() : Optional.of(at.name())));
      }
    }
    return new UnusableInput(kind, source.name(), faults);
  }

  /** A plan or standard that could not even be read: there is no such file, for instance. */
  public static UnusableInput unreadable(
      Kind kind, String name, String code, String message, String remedy) {
    return new UnusableInput(
        kind, name, List.of(new Fault(code, Optional.empty(), Optional.empty(), message, remedy)));
  }
}
