package org.rimefast.lang.source;

import java.util.ArrayList;
import java.util.List;

/**
 * Rule text: one file, or several that make one standard together. The offsets of all of them run
 * on in one count, so that a {@link Span} names a place in any of them.
 *
 * <p>Use: {@code new SourceText("house.rime", text)}.
 */
public final class SourceText {
  /**
   * One file.
   *
   * @param name how messages name it: a file name or {@code standard cold-steel-modules}
   * @param text the whole text
   */
  public record Part(String name, String text) {}

  /** Line and column of an offset, both counted from 1; columns count UTF-16 code units. */
  public record Position(int line, int column) {}

  /** The same, and the name of the file. */
  public record Place(String name, int line, int column) {}

  private final List<Part> parts;
  private final List<Integer> starts;
  private final String text;

  /** One file. */
  public SourceText(String name, String text) {
    this(List.of(new Part(name, text)));
  }

  private SourceText(List<Part> parts) {
    this.parts = List.copyOf(parts);
    List<Integer> offsets = new ArrayList<>();
    StringBuilder all = new StringBuilder();
    for (Part part : this.parts) {
      // A line feed between two files, which belongs to neither.
      all.append(offsets.isEmpty() ? "" : "\n");
      offsets.add(all.length());
      all.append(part.text());
    }
    this.starts = List.copyOf(offsets);
    this.text = all.toString();
  }

  /**
   * Several files; the first gives the whole its name.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static SourceText of(List<Part> parts) {
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("a text of no file");
    }
    return new SourceText(parts);
  }

  /** The same with one file more at its end; all places stay. */
  public SourceText with(Part part) {
    List<Part> more = new ArrayList<>(parts);
    more.add(part);
    return new SourceText(more);
  }

  /** The name of the first file. */
  public String name() {
    return parts.get(0).name();
  }

  /** The text of all files, in order, with a line feed between two of them. */
  public String text() {
    return text;
  }

  /** The files, in order. */
  public List<Part> parts() {
    return parts;
  }

  /** Where the text of a file stands in the whole. */
  public Span spanOf(int part) {
    int start = starts.get(part);
    return new Span(start, start + parts.get(part).text().length());
  }

  /** The file in which an offset lies; its end belongs to it. */
  public int partAt(int offset) {
    int part = 0;
    while (part + 1 < starts.size() && starts.get(part + 1) <= offset) {
      part++;
    }
    return part;
  }

  /** Where the character at {@code offset} stands. */
  public Place place(int offset) {
    int part = partAt(offset);
    int start = starts.get(part);
    String own = parts.get(part).text();
    int line = 1;
    int lineStart = 0;
    int end = Math.min(offset - start, own.length());
    for (int i = 0; i < end; i++) {
      if (own.charAt(i) == '\n') {
        line++;
        lineStart = i + 1;
      }
    }
    return new Place(parts.get(part).name(), line, end - lineStart + 1);
  }

  /** Line and column of the character at {@code offset}, in its own file. */
  public Position positionOf(int offset) {
    Place place = place(offset);
    return new Position(place.line(), place.column());
  }

  /** The text of line {@code line} of the first file, counted from 1, without its end of line. */
  public String line(int line) {
    String[] lines = parts.get(0).text().split("\n", -1);
    String found = line >= 1 && line <= lines.length ? lines[line - 1] : "";
    return found.endsWith("\r") ? found.substring(0, found.length() - 1) : found;
  }

  /** The text that a span covers. */
  public String textOf(Span span) {
    return text.substring(span.start(), span.end());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SourceText source && parts.equals(source.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return name() + (parts.size() == 1 ? "" : " and " + (parts.size() - 1) + " more");
  }
}
