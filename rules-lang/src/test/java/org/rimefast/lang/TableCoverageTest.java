package org.rimefast.lang;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.source.SourceText;

/**
 * A table is accepted exactly if trying out all words, all limits and what lies between them finds
 * one row for each case. Here every case is tried; the compiler counts.
 */
final class TableCoverageTest {
  private static final RuleCompiler COMPILER = new RuleCompiler(Words.vocabulary());
  private static final List<String> MOUNTS = List.of("flush", "surface", "on the lining");

  /** Limits are whole numbers from 0 to 3, so these are all cases of a depth. */
  private static final double[] DEPTHS = {-1, 0, 0.5, 1, 1.5, 2, 2.5, 3, 4};

  private static final double[] COUNTS = {0, 1, 2, 3, 4, 5};

  /** A cell as its author means it: two limits of one of the forms that cells have. */
  private record Numbers(int form, int a, int b) {
    boolean has(double x) {
      return switch (form) {
        case 0 -> true;
        case 1 -> x == a;
        case 2 -> x < a;
        case 3 -> x >= a;
        case 4 -> x > a && x <= b;
        case 5 -> x < a || x > b;
        case 6 -> x >= a && x < b;
        default -> x == a || x == b;
      };
    }

    String text(String unit) {
      String first = a + unit;
      String second = b + unit;
      return switch (form) {
        case 0 -> "any";
        case 1 -> first;
        case 2 -> "< " + first;
        case 3 -> "at least " + first;
        case 4 -> "> " + first + " and <= " + second;
        case 5 -> "< " + first + " or > " + second;
        case 6 -> "< " + second + " and >= " + first;
        default -> first + " or " + second;
      };
    }
  }

  private record Row(List<String> mounts, Numbers depth, Numbers count) {
    boolean has(String mount, double depthValue, double countValue) {
      return mounts.contains(mount) && depth.has(depthValue) && count.has(countValue);
    }
  }

  @Test
  void aTableIsAcceptedExactlyIfEachCaseHasOneRow() {
    Random random = new Random(20261125);
    int good = 0;
    int bad = 0;
    for (int i = 0; i < 3_000; i++) {
      List<Row> rows = rows(random);
      boolean otherwise = random.nextInt(3) == 0;
      boolean expected = isGood(rows, otherwise);
      String text = text(rows, otherwise);
      Compilation compilation = COMPILER.compile(new SourceText("x", text));
      assertThat(compilation.standard().isPresent())
          .as("%s\n%s", text, compilation.diagnostics())
          .isEqualTo(expected);
      good += expected ? 1 : 0;
      bad += expected ? 0 : 1;
      if (expected && otherwise) {
        cases(rows, compilation.standard().orElseThrow().tables().get(0), text);
      }
    }
    assertThat(good).isGreaterThan(300);
    assertThat(bad).isGreaterThan(300);
  }

  /** Rows that speak of each case once, and then perhaps one that is changed or left out. */
  private static List<Row> rows(Random random) {
    List<Row> rows = new ArrayList<>();
    int cut = 1 + random.nextInt(3);
    List<List<String>> mounts =
        random.nextBoolean()
            ? List.of(MOUNTS)
            : List.of(List.of("surface"), List.of("flush", "on the lining"));
    for (List<String> mount : mounts) {
      for (Numbers depth : split(random)) {
        for (Numbers count :
            random.nextBoolean()
                ? List.of(new Numbers(0, 0, 0))
                : List.of(new Numbers(2, cut, 0), new Numbers(3, cut, 0))) {
          rows.add(new Row(mount, depth, count));
        }
      }
    }
    if (random.nextBoolean()) {
      rows.remove(random.nextInt(rows.size()));
    }
    if (rows.isEmpty() || random.nextInt(3) == 0) {
      rows.add(new Row(List.of("surface"), any(random), any(random)));
    }
    return rows;
  }

  private static List<Numbers> split(Random random) {
    int a = random.nextInt(3);
    int b = a + random.nextInt(2);
    return switch (random.nextInt(5)) {
      case 0 -> List.of(new Numbers(0, 0, 0));
      case 1 -> List.of(new Numbers(2, a, 0), new Numbers(3, a, 0));
      case 2 -> List.of(new Numbers(5, a, b + 1), new Numbers(1, a, 0), new Numbers(4, a, b + 1));
      case 3 -> List.of(new Numbers(2, a, 0), new Numbers(6, a, b), new Numbers(3, b, 0));
      default -> List.of(new Numbers(5, a, a), new Numbers(1, a, 0));
    };
  }

  private static Numbers any(Random random) {
    return new Numbers(random.nextInt(8), random.nextInt(4), random.nextInt(4));
  }

  private static String text(List<Row> rows, boolean otherwise) {
    StringBuilder text = new StringBuilder("standard s edition 1\ntable needed of a box\n");
    text.append("by its mount, its depth, number of studs\n");
    for (Row row : rows) {
      String mounts = row.mounts().size() == 3 ? "any" : String.join(" or ", row.mounts());
      text.append("| ").append(mounts).append(" | ").append(row.depth().text(" mm"));
      text.append(" | ").append(row.count().text("")).append(" | 1 in |\n");
    }
    return text.append(otherwise ? "otherwise 2 in\n" : "").toString();
  }

  private static boolean isGood(List<Row> rows, boolean otherwise) {
    boolean left = false;
    boolean[] used = new boolean[rows.size()];
    for (String mount : MOUNTS) {
      for (double depth : DEPTHS) {
        for (double count : COUNTS) {
          int found = 0;
          for (int i = 0; i < rows.size(); i++) {
            boolean has = rows.get(i).has(mount, depth, count);
            found += has ? 1 : 0;
            used[i] |= has;
          }
          if (found > 1) {
            return false;
          }
          left |= found == 0;
        }
      }
    }
    for (boolean one : used) {
      if (!one) {
        return false;
      }
    }
    return left == otherwise;
  }

  /** The cases for "otherwise" are those of no row, each once. */
  private static void cases(List<Row> rows, Table table, String text) {
    List<List<Table.Cell>> cases = table.otherwise().orElseThrow().cases();
    for (String mount : MOUNTS) {
      for (double depth : DEPTHS) {
        for (double count : COUNTS) {
          boolean left = rows.stream().noneMatch(row -> row.has(mount, depth, count));
          long found =
              cases.stream()
                  .filter(
                      cells ->
                          has(cells.get(0), mount)
                              && has(cells.get(1), depth / 1000)
                              && has(cells.get(2), count))
                  .count();
          assertThat(found).as("%s\n%s %s %s", text, mount, depth, count).isEqualTo(left ? 1 : 0);
        }
      }
    }
  }

  private static boolean has(Table.Cell cell, String word) {
    return !(cell instanceof Table.Cell.Words words) || words.words().contains(word);
  }

  private static boolean has(Table.Cell cell, double x) {
    return !(cell instanceof Table.Cell.Numbers numbers)
        || numbers.ranges().stream().anyMatch(range -> has(range, x));
  }

  private static boolean has(Table.Range range, double x) {
    boolean low =
        range
            .low()
            .map(end -> end.included() ? x >= si(end) - 1e-9 : x > si(end) + 1e-9)
            .orElse(true);
    boolean high =
        range
            .high()
            .map(end -> end.included() ? x <= si(end) + 1e-9 : x < si(end) - 1e-9)
            .orElse(true);
    return low && high;
  }

  private static double si(Table.End end) {
    return end.limit().quantity().siDouble();
  }
}
