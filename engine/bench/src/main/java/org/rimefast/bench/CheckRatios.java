package org.rimefast.bench;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Measures how a check grows with the plan, and prints the tables for the contributors' guide. */
public final class CheckRatios {
  private static final List<Integer> SIZES = List.of(1_000, 2_000, 4_000);

  private static final int SLOWEST = 10;

  private CheckRatios() {}

  /** Measures plans of as many elements as the arguments say; without any, 1 k to 4 k. */
  public static void main(String[] args) {
    List<Integer> sizes =
        args.length == 0 ? SIZES : Arrays.stream(args).map(Integer::valueOf).toList();
    print(new CheckGrowth().of(sizes));
  }

  private static void print(List<CheckGrowth.Size> sizes) {
    System.out.println();
    System.out.println(
        "| elements | findings | least processor time, ms | us an element | per doubling |");
    System.out.println("|---|---|---|---|---|");
    CheckGrowth.Size before = null;
    for (CheckGrowth.Size size : sizes) {
      System.out.printf(
          Locale.ROOT,
          "| %d | %d | %.0f | %.0f | %s |%n",
          size.elements(),
          size.findings(),
          size.whole(),
          1000 * size.whole() / size.elements(),
          before == null ? "" : perDoubling(before, size, before.whole(), size.whole()));
      before = size;
    }
    printRules(sizes);
  }

  private static void printRules(List<CheckGrowth.Size> sizes) {
    CheckGrowth.Size last = sizes.get(sizes.size() - 1);
    StringBuilder head = new StringBuilder("| rule | ms at ").append(last.elements()).append(" |");
    StringBuilder line = new StringBuilder("|---|---|");
    for (CheckGrowth.Size size : sizes.subList(1, sizes.size())) {
      head.append(" to ").append(size.elements()).append(" |");
      line.append("---|");
    }
    System.out.println();
    System.out.println(head);
    System.out.println(line);
    last.rules().entrySet().stream()
        .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
        .limit(SLOWEST)
        .forEach(rule -> System.out.println(row(rule.getKey(), rule.getValue(), sizes)));
  }

  private static String row(String rule, double time, List<CheckGrowth.Size> sizes) {
    StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "| %s | %.0f |", rule, time));
    for (int i = 1; i < sizes.size(); i++) {
      CheckGrowth.Size before = sizes.get(i - 1);
      CheckGrowth.Size size = sizes.get(i);
      double least = before.rules().getOrDefault(rule, Double.NaN);
      double most = size.rules().getOrDefault(rule, Double.NaN);
      row.append(' ').append(perDoubling(before, size, least, most)).append(" |");
    }
    return row.toString();
  }

  /** How many times the time twice the elements take, if it grows by a power between two sizes. */
  private static String perDoubling(
      CheckGrowth.Size small, CheckGrowth.Size large, double least, double most) {
    double doublings = Math.log((double) large.elements() / small.elements()) / Math.log(2);
    return String.format(Locale.ROOT, "%.2f", Math.pow(most / least, 1 / doublings));
  }
}
