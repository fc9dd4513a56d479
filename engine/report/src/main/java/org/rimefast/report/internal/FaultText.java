package org.rimefast.report.internal;

import org.rimefast.report.UnusableInput;

/** Writes why an input cannot be used. */
public final class FaultText {
  private FaultText() {}

  private static String words(UnusableInput.Kind kind) {
    return switch (kind) {
      case PLAN -> "plan";
      case STANDARD -> "standard";
      case WAIVERS -> "file of waivers";
    };
  }

  /** One paragraph for each fault, then how many there are. */
  public static void write(UnusableInput input, Page page) {
    for (UnusableInput.Fault fault : input.faults()) {
      String place = FindingText.place(fault.file().orElse(input.name()), fault.place());
      page.entry(Ink.NONE, place + ": error[" + fault.code() + "]: " + fault.message());
      fault
          .pointer()
          .filter(pointer -> !pointer.isEmpty())
          .ifPresent(pointer -> page.hang(2, "at", 3, Ink.NONE, pointer));
      if (!fault.remedy().isEmpty()) {
        page.hang(2, "help:", 6, Ink.NONE, fault.remedy());
      }
    }
    int count = input.faults().size();
    page.paragraph(
        0,
        input.name()
            + ": this "
            + words(input.kind())
            + " cannot be used: "
            + (count == 1 ? "1 fault." : count + " faults."));
  }
}
