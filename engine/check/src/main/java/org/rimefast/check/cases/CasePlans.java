package org.rimefast.check.cases;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.check.Dictionary;
import org.rimefast.check.PlanFacts;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.cases.CaseEdit;
import org.rimefast.lang.cases.CasePlan;
import org.rimefast.plan.PlanEdit;
import org.rimefast.plan.PlanEdits;
import org.rimefast.plan.PlanFault;
import org.rimefast.plan.PlanReader;
import org.rimefast.plan.PlanReading;

/** Finds, changes and reads the plan of a case. */
final class CasePlans {
  private static final String INLINE = "the plan in the case";

  private final Dictionary dictionary;
  private final PlanFiles files;
  private final Case example;
  private final List<CaseProblem> problems = new ArrayList<>();

  private CasePlans(Dictionary dictionary, PlanFiles files, Case example) {
    this.dictionary = dictionary;
    this.files = files;
    this.example = example;
  }

  static PreparedCase prepare(Dictionary dictionary, PlanFiles files, Case example) {
    CasePlans plans = new CasePlans(dictionary, files, example);
    Optional<PlanFacts> facts = plans.text().flatMap(plans::edited).flatMap(plans::read);
    return facts
        .map(ready -> new PreparedCase(example, ready))
        .orElseGet(() -> new PreparedCase(example, plans.problems));
  }

  private Optional<byte[]> text() {
    return example
        .plan()
        .accept(
            new CasePlan.Visitor<Optional<byte[]>>() {
              @Override
              public Optional<byte[]> file(CasePlan.File file) {
                return CasePlans.this.file(file.name());
              }

              @Override
              public Optional<byte[]> inline(CasePlan.Inline inline) {
                return Optional.of(inline.json().getBytes(StandardCharsets.UTF_8));
              }
            });
  }

  private String name() {
    return example
        .plan()
        .accept(
            new CasePlan.Visitor<String>() {
              @Override
              public String file(CasePlan.File file) {
                return file.name();
              }

              @Override
              public String inline(CasePlan.Inline inline) {
                return INLINE;
              }
            });
  }

  private Optional<byte[]> file(String name) {
    try {
      Optional<byte[]> found = files.read(example.file(), name);
      if (found.isEmpty()) {
        problems.add(
            new CaseProblem(
                "There is no plan \"" + name + "\" beside " + example.file() + ".",
                "Check its name; it counts from the folder of the cases."));
      }
      return found;
    } catch (IOException e) {
      problems.add(
          new CaseProblem("The plan \"" + name + "\" cannot be read: " + e.getMessage() + ".", ""));
      return Optional.empty();
    }
  }

  private Optional<byte[]> edited(byte[] plan) {
    if (example.edits().isEmpty()) {
      return Optional.of(plan);
    }
    PlanEdits.Edited edited =
        PlanEdits.apply(plan, example.edits().stream().map(CasePlans::edit).toList());
    for (PlanEdits.Fault fault : edited.faults()) {
      String before = fault.edit() < 0 ? "" : example.edits().get(fault.edit()).written() + ": ";
      problems.add(new CaseProblem(before + fault.message(), fault.remedy()));
    }
    return edited.plan();
  }

  private Optional<PlanFacts> read(byte[] utf8) {
    PlanReading reading = new PlanReader().read(name(), utf8);
    for (PlanFault fault : reading.faults()) {
      problems.add(new CaseProblem(place(fault) + ": " + fault.message(), fault.remedy()));
    }
    return reading.plan().map(plan -> new PlanFacts(plan, dictionary));
  }

  /** A line of a changed plan would be one that nobody has seen. */
  private String place(PlanFault fault) {
    String at = fault.pointer().isEmpty() ? "" : ", at " + fault.pointer();
    if (!example.edits().isEmpty()) {
      return name() + " after the changes" + at;
    }
    return name() + (fault.place() == null ? "" : ", line " + fault.place().line()) + at;
  }

  private static PlanEdit edit(CaseEdit edit) {
    return edit.accept(
        new CaseEdit.Visitor<PlanEdit>() {
          @Override
          public PlanEdit set(CaseEdit.Set set) {
            PlanEdit.Value.Kind kind =
                switch (set.value().kind()) {
                  case TEXT -> PlanEdit.Value.Kind.TEXT;
                  case NUMBER -> PlanEdit.Value.Kind.NUMBER;
                  case JSON -> PlanEdit.Value.Kind.JSON;
                };
            return new PlanEdit.Set(
                target(set.target()), new PlanEdit.Value(kind, set.value().text()));
          }

          @Override
          public PlanEdit remove(CaseEdit.Remove remove) {
            return new PlanEdit.Remove(target(remove.target()));
          }

          @Override
          public PlanEdit add(CaseEdit.Add add) {
            return new PlanEdit.Add(add.list(), add.json());
          }
        });
  }

  private static PlanEdit.Target target(CaseEdit.Target target) {
    return new PlanEdit.Target(target.field(), target.element());
  }
}
