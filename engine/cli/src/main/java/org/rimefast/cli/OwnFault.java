package org.rimefast.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** Tells of a fault of the program itself. */
final class OwnFault {
  private OwnFault() {}

  /** One line; with the trace below it if that is asked for. */
  static String lines(Throwable fault, boolean trace) {
    StackTraceElement[] frames = fault.getStackTrace();
    String where =
        frames.length == 0
            ? ""
            : " at "
                + frames[0].getClassName()
                + "."
                + frames[0].getMethodName()
                + ":"
                + frames[0].getLineNumber();
    String line =
        "rimefast: this is a fault of rimefast itself, not of your files: "
            + oneLine(fault.toString())
            + where
            + (trace ? "\n" : "; --debug shows the trace\n");
    return trace ? line + traceOf(fault) : line;
  }

  private static String traceOf(Throwable fault) {
    StringWriter text = new StringWriter();
    fault.printStackTrace(new PrintWriter(text, true));
    return text.toString().replace("\r\n", "\n");
  }

  private static String oneLine(String text) {
    return text.replace('\n', ' ').replace('\r', ' ');
  }
}
