package org.rimefast.rulesets;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.rimefast.check.Checker;
import org.rimefast.check.Dictionary;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.StandardLibrary;
import org.rimefast.check.SteelModules;
import org.rimefast.check.Verdict;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Standard;
import org.rimefast.plan.PlanReader;
import org.rimefast.plan.PlanReading;

/**
 * Small plans, invented, around one number each, and what a shipped standard says of them. Texts
 * are JSON with single quotes.
 */
final class TablePlans {
  private static final Dictionary DICTIONARY = SteelModules.dictionary();
  private static final Map<String, Checker> CHECKERS = new ConcurrentHashMap<>();

  /** Length of the run that is strapped, in mm. */
  private static final int STRAPPED = 4400;

  private TablePlans() {}

  /** A small room: 2000 by 1500 by 2600 mm, studs 25 mm off the ribs, lining of 12.7 mm. */
  static String room(String members) {
    return """
    {'format': 'rimefast-plan-1', 'id': 'tables', 'title': 'A published number (invented)',
     'units': 'mm', 'shell': {'inside': {'length': 2000, 'width': 1500, 'height': 2600}},
     'faces': {'default': {'profile': 'side wall', 'phase': 40, 'standoff': 25,
       'stud': {'depth': 41.3, 'flange': 31.75, 'thickness': '0.88 mm'}, 'lining': 12.7},
       'floor': {'profile': 'plywood'}},
     %s}
    """
        .formatted(members);
  }

  static String box(String devices, int connectors, int studs) {
    return "{'id': 'B', 'kind': 'device', 'face': 'right', 'along': 500, 'up': 450, 'width': 54, 'height': 76, 'depth': 60, 'mount': 'flush', 'volume': '%%s mL', 'devices': [%s], 'wireConnectors': %d, 'fixtureStuds': %d}"
        .formatted(devices, connectors, studs);
  }

  /** A cable for each group of conductors. */
  static String filled(String box, BigDecimal volume, String conductors) {
    List<String> runs = new ArrayList<>();
    for (String group : conductors.split("\\+")) {
      String[] parts = group.split("x");
      runs.add(
          "{'id': 'C%d', 'kind': 'nonmetallic-cable', 'diameter': 10, 'from': 'P', 'to': 'B', 'conductors': [{'size': '%s AWG', 'count': %s}], 'path': [%s]}"
              .formatted(runs.size(), parts[0], parts[1], path("right 500 1500", "right 500 488")));
    }
    return room(
        "'boxes': [%s], 'panels': [%s], 'runs': [%s]"
            .formatted(box.formatted(volume.toPlainString()), panel(95), String.join(", ", runs)));
  }

  static String panel(int depth) {
    return "{'id': 'P', 'face': 'rear', 'along': 750, 'up': 1500, 'width': 360, 'height': 600, 'depth': %d, 'mount': 'surface', 'material': 'steel'}"
        .formatted(depth);
  }

  /** A cable of 10 mm through a hole that is as deep as it needs. */
  static String inAStud(double setBack, String guard) {
    String depth = number(setBack + 5);
    return room(
        "'studs': [{'id': 'S', 'face': 'left', 'along': 1000, 'depth': 92, 'holes': [{'up': 600, 'width': 90, 'height': 100, %s}]}], 'runs': [{'id': 'C', 'kind': 'nonmetallic-cable', 'diameter': 10, 'path': [{'face': 'left', 'along': 500, 'up': 600, 'depth': %s}, {'face': 'left', 'along': 1500, 'up': 600, 'depth': %s}]}]"
            .formatted(guard, depth, depth));
  }

  /** A run of 4400 mm from a box, up the right wall, along it and down. */
  static String strapped(String kind, double bore, String supports) {
    String inside = bore == 0 ? "" : "'bore': %s, ".formatted(bore);
    return room(
        "'boxes': [%s], 'panels': [%s], 'runs': [{'id': 'C', 'kind': '%s', 'diameter': %s, 'from': 'B', 'to': 'P', %s'supports': [%s], 'path': [%s]}]"
            .formatted(
                box("", 0, 0).formatted("300"),
                panel(95),
                kind,
                bore == 0 ? "12" : bore + 2,
                inside,
                supports,
                path("right 500 488", "right 500 2488", "right 1500 2488", "right 1500 1088")));
  }

  static String straps(BigDecimal at) {
    return straps(at, at.add(new BigDecimal(1000)));
  }

  static String straps(int first, BigDecimal apart) {
    return straps(new BigDecimal(first), apart.add(new BigDecimal(first)));
  }

  /** Two straps, and more of them at short distances after these. */
  private static String straps(BigDecimal first, BigDecimal second) {
    StringBuilder all = new StringBuilder(first + ", " + second);
    BigDecimal next = second.add(new BigDecimal(800));
    while (next.compareTo(new BigDecimal(STRAPPED)) < 0) {
      all.append(", ").append(next);
      next = next.add(new BigDecimal(800));
    }
    return all.toString();
  }

  static String circuit(
      int gauge, int rating, int terminals, int count, String breaker, String load) {
    return filled(box("", 0, 0), new BigDecimal(5000), gauge + "x" + count)
        .replace("'conductors'", "'circuit': 'K', 'conductors'")
        .replace("'count': " + count, "'count': %d, 'rating': '%d degC'".formatted(count, rating))
        .replace(
            "'runs'",
            "'circuits': [{'id': 'K', 'panel': 'P', 'breaker': '%s A', 'voltage': '120 V', 'load': '%s A', 'terminals': '%d degC'}], 'runs'"
                .formatted(breaker, load, terminals));
  }

  /** A row of boxes with a receptacle each, and a cable from each to the next. */
  static String outlets(int count, int breaker) {
    String boxes =
        "{'id': 'X', 'kind': 'device', 'face': 'right', 'along': 100, 'up': 1000, 'width': 54, 'height': 76, 'depth': 60, 'mount': 'flush', 'devices': [{'kind': 'receptacle'}], 'repeat': {'count': %d, 'spacing': 60}}"
            .formatted(count);
    String runs =
        IntStream.range(1, count)
            .mapToObj(
                i ->
                    "{'id': 'C%d', 'kind': 'nonmetallic-cable', 'circuit': 'K', 'from': 'X-%d', 'to': 'X-%d', 'path': [%s]}"
                        .formatted(i, i, i + 1, path("right 100 1000", "right 160 1000")))
            .collect(Collectors.joining(", "));
    return room(
        "'circuits': [{'id': 'K', 'breaker': '%d A'}], 'boxes': [%s], 'runs': [%s]"
            .formatted(breaker, boxes, runs));
  }

  static String studWith(String web, String holes) {
    return room(
        "'studs': [{'id': 'S', 'face': 'left', 'along': 1000, 'depth': '%s in', 'holes': [%s]}]"
            .formatted(web, holes));
  }

  /** Points written as {@code face along up}, 20 mm behind the studs' warm face. */
  static String path(String... points) {
    List<String> all = new ArrayList<>();
    for (String point : points) {
      String[] at = point.split(" ");
      all.add("{'face': '%s', 'along': %s, 'up': %s, 'depth': 20}".formatted(at[0], at[1], at[2]));
    }
    return String.join(", ", all);
  }

  static String number(double value) {
    return String.format(Locale.ROOT, "%.6f", value);
  }

  static Verdict verdict(String standard, String rule, String element, String json) {
    byte[] utf8 = json.replace('\'', '"').getBytes(StandardCharsets.UTF_8);
    PlanReading reading = new PlanReader().read("tables.json", utf8);
    assertThat(reading.faults()).isEmpty();
    PlanFacts facts = new PlanFacts(reading.plan().orElseThrow(), DICTIONARY);
    Checker checker =
        CHECKERS.computeIfAbsent(standard, name -> new Checker(DICTIONARY, compile(name)));
    return checker.explain(rule, handle(facts, element), facts).verdict();
  }

  private static int handle(PlanFacts facts, String element) {
    for (int handle = 0; handle < facts.size(); handle++) {
      if (element.equals(facts.name(handle).id()) || element.equals(facts.name(handle).label())) {
        return handle;
      }
    }
    throw new IllegalArgumentException("the plan has no " + element);
  }

  private static Standard compile(String name) {
    return new RuleCompiler(DICTIONARY.vocabulary())
        .compile(StandardLibrary.find(name).orElseThrow())
        .standard()
        .orElseThrow();
  }
}
