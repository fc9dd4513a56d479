package org.rimefast.rulesets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * A guide as it stands in the folder of this module: its headings, fenced blocks and tables. Knows
 * as much of Markdown as the guides use.
 */
final class Guide {
  private static final Pattern CODE = Pattern.compile("`([^`]+)`");

  private final List<String> headings = new ArrayList<>();
  private final List<Block> blocks = new ArrayList<>();
  private final List<Table> tables = new ArrayList<>();

  /** A fenced block; its kind is the word after the fence. */
  record Block(String kind, String text) {}

  /** A table under a heading, without its header. */
  record Table(String heading, List<List<String>> rows) {
    /** The cells of one column, from 0. */
    List<String> column(int index) {
      return rows.stream().map(row -> row.get(index)).toList();
    }
  }

  private Guide(List<String> lines) {
    int i = 0;
    while (i < lines.size()) {
      String line = lines.get(i);
      if (line.startsWith("```")) {
        int end = end(lines, i + 1, "```", true);
        String text = String.join("\n", lines.subList(i + 1, end));
        blocks.add(new Block(line.substring(3).strip(), text.isEmpty() ? "" : text + "\n"));
        i = end + 1;
      } else if (line.startsWith("|")) {
        int end = end(lines, i, "|", false);
        tables.add(
            new Table(
                headings.get(headings.size() - 1),
                lines.subList(i + 2, end).stream().map(Guide::cells).toList()));
        i = end;
      } else {
        if (line.startsWith("#")) {
          headings.add(line.replaceFirst("^#+ ", ""));
        }
        i++;
      }
    }
  }

  /** The guide in this file, named from the folder of this module. */
  static Guide read(String file) {
    try {
      return new Guide(Files.readAllLines(Path.of(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  List<String> headings() {
    return headings;
  }

  List<Block> blocks() {
    return blocks;
  }

  /** The texts of the blocks of a kind; there is at least one. */
  List<String> texts(String kind) {
    List<String> texts =
        blocks.stream().filter(block -> block.kind().equals(kind)).map(Block::text).toList();
    assertThat(texts).as("blocks marked " + kind).isNotEmpty();
    return texts;
  }

  List<Table> tables(String heading) {
    return tables.stream().filter(table -> table.heading().equals(heading)).toList();
  }

  /** The one table under a heading. */
  Table table(String heading) {
    List<Table> found = tables(heading);
    assertThat(found).as("tables under " + heading).hasSize(1);
    return found.get(0);
  }

  /** What a text holds in backticks, in order. */
  static List<String> code(String text) {
    return CODE.matcher(text).results().map((MatchResult match) -> match.group(1)).toList();
  }

  /** A list of words as the tables write it. */
  static String coded(List<String> words) {
    return String.join(", ", words.stream().map(word -> "`" + word + "`").toList());
  }

  /** The first line from {@code from} on that does, or does not, start so. */
  private static int end(List<String> lines, int from, String start, boolean does) {
    int i = from;
    while (i < lines.size() && lines.get(i).startsWith(start) != does) {
      i++;
    }
    return i;
  }

  private static List<String> cells(String line) {
    String[] cells = line.substring(1).split("\\|", -1);
    return Arrays.stream(cells).limit(cells.length - 1L).map(String::strip).toList();
  }
}
