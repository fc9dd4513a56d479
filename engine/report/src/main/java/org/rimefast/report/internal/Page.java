package org.rimefast.report.internal;

import java.util.ArrayList;
import java.util.List;
import org.rimefast.report.TextOptions;

/** Lines of text that wrap at a width. A character counts as one column. */
public final class Page {
  private final StringBuilder text = new StringBuilder();
  private final TextOptions options;

  /** An empty page. */
  public Page(TextOptions options) {
    this.options = options;
  }

  /** Columns in a line. */
  int width() {
    return options.width();
  }

  /** An empty line. */
  public Page blank() {
    text.append('\n');
    return this;
  }

  /** Lines that are laid out already; control characters must be gone from them. */
  public Page verbatim(String lines) {
    text.append(lines);
    if (!lines.endsWith("\n")) {
      text.append('\n');
    }
    return this;
  }

  /** A section's name over a ruled line. */
  public Page section(String name) {
    text.append(inked(Ink.HEADING, name)).append('\n');
    text.append("-".repeat(options.width())).append('\n');
    return this;
  }

  /** Two texts at the ends of a line; the second goes below if there is no room. */
  public Page ends(Ink ink, String left, String right) {
    String start = VisibleText.of(left);
    String end = VisibleText.of(right);
    int gap = options.width() - length(start) - length(end);
    if (gap < 2) {
      hang(0, "", 0, ink, left);
      return hang(2, "", 0, Ink.NONE, right);
    }
    text.append(inked(ink, start));
    if (!end.isEmpty()) {
      text.append(" ".repeat(gap)).append(end);
    }
    text.append('\n');
    return this;
  }

  /** A paragraph. */
  public Page paragraph(int indent, String words) {
    return hang(indent, "", 0, Ink.NONE, words);
  }

  /** A paragraph whose later lines are set in by two. */
  public Page entry(Ink ink, String words) {
    List<String> lines = wrap(VisibleText.of(words), options.width() - 2);
    for (int i = 0; i < lines.size(); i++) {
      text.append(i == 0 ? inked(ink, lines.get(0)) : "  " + lines.get(i)).append('\n');
    }
    return this;
  }

  /**
   * A paragraph behind a lead; its later lines start below its first word.
   *
   * @param indent spaces before the lead
   * @param lead what stands before it; without one the ink colours the paragraph
   * @param leadWidth columns that the lead takes; it takes more if it is longer
   * @param ink colour of the lead
   * @param words the paragraph
   */
  public Page hang(int indent, String lead, int leadWidth, Ink ink, String words) {
    String shown = VisibleText.of(lead);
    int column = indent + (shown.isEmpty() ? 0 : Math.max(leadWidth, length(shown) + 1));
    List<String> lines = wrap(VisibleText.of(words), Math.max(20, options.width() - column));
    text.append(" ".repeat(indent)).append(inked(ink, shown));
    if (words.isEmpty()) {
      return blank();
    }
    text.append(" ".repeat(column - indent - length(shown)));
    for (int i = 0; i < lines.size(); i++) {
      if (i > 0) {
        text.append(" ".repeat(column));
      }
      text.append(shown.isEmpty() ? inked(ink, lines.get(i)) : lines.get(i));
      text.append('\n');
    }
    return this;
  }

  /** How many columns a text takes. */
  static int length(String shown) {
    return shown.codePointCount(0, shown.length());
  }

  private String inked(Ink ink, String words) {
    return options.colour() ? ink.on(words) : words;
  }

  /** At least one line; a word that is longer than a line is cut. */
  static List<String> wrap(String words, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    int used = 0;
    int at = 0;
    while (at < words.length()) {
      if (words.charAt(at) == ' ') {
        at++;
        continue;
      }
      int space = words.indexOf(' ', at);
      int end = space < 0 ? words.length() : space;
      int size = words.codePointCount(at, end);
      if (used > 0 && used + 1 + size > width) {
        lines.add(line.toString());
        line.setLength(0);
        used = 0;
      }
      if (used > 0) {
        line.append(' ');
        used++;
      }
      while (used + size > width) {
        int cut = words.offsetByCodePoints(at, width - used);
        lines.add(line.append(words, at, cut).toString());
        line.setLength(0);
        size -= width - used;
        used = 0;
        at = cut;
      }
      line.append(words, at, end);
      used += size;
      at = end;
    }
    if (used > 0 || lines.isEmpty()) {
      lines.add(line.toString());
    }
    return lines;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
