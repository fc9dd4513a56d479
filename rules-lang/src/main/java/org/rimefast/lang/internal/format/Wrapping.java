package org.rimefast.lang.internal.format;

import java.util.ArrayList;
import java.util.List;

/** Breaks a run of words into lines of a given width, at the places that read best. */
final class Wrapping {
  static final int WIDTH = 100;

  /** A break at one of the best places must leave at least so much on its line to be chosen. */
  private static final int HALF = WIDTH / 2;

  /** How well a line can begin with a word. */
  enum Break {
    BEST,
    FAIR,
    NEVER
  }

  /**
   * A word and how it may be set.
   *
   * @param apart whether a space stands before it
   * @param depth how many parentheses are open before it
   */
  record Word(String text, boolean apart, Break before, int depth) {
    private int width() {
      return text.codePointCount(0, text.length()) + (apart ? 1 : 0);
    }
  }

  private Wrapping() {}

  /** The lines; {@code first} is the indent of the first one, {@code next} of the others. */
  static void write(List<Word> words, int first, int next, Lines lines) {
    int indent = first;
    int start = 0;
    while (start < words.size()) {
      int end = lineEnd(words, start, WIDTH - indent);
      lines.line(indent, joined(words.subList(start, end)));
      indent = next;
      start = end;
    }
  }

  /** The index after the last word of the line that begins at {@code start}. */
  private static int lineEnd(List<Word> words, int start, int width) {
    List<Integer> best = new ArrayList<>();
    int fair = 0;
    int shallow = 0;
    int used = 0;
    for (int i = start; i < words.size(); i++) {
      Word word = words.get(i);
      boolean fits = used <= width;
      if (i > start && word.before() != Break.NEVER) {
        if (!fits) {
          break;
        }
        if (word.before() == Break.FAIR) {
          fair = i;
        } else {
          best.add(i);
          if (used >= HALF && (shallow == 0 || word.depth() <= words.get(shallow).depth())) {
            shallow = i;
          }
        }
      }
      used += word.width() - (i == start && word.apart() ? 1 : 0);
    }
    if (used <= width) {
      return words.size();
    }
    if (shallow > 0) {
      return shallow;
    }
    if (!best.isEmpty()) {
      return best.get(best.size() - 1);
    }
    return fair > 0 ? fair : afterOverlong(words, start);
  }

  /** Where nothing can be done about a line that is too long, it ends as soon as it can. */
  private static int afterOverlong(List<Word> words, int start) {
    int end = start + 1;
    while (end < words.size() && words.get(end).before() == Break.NEVER) {
      end++;
    }
    return end;
  }

  private static String joined(List<Word> words) {
    StringBuilder line = new StringBuilder();
    for (Word word : words) {
      line.append(word.apart() && !line.isEmpty() ? " " : "").append(word.text());
    }
    return line.toString();
  }
}
