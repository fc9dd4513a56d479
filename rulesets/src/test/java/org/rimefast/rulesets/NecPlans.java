package org.rimefast.rulesets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Parts of invented plans for {@link NecTablesTest}: JSON with single quotes for double ones. */
final class NecPlans {
  private NecPlans() {}

  static String loaded(int gauge, int rating, double ambient, int count, double load) {
    String conductors =
        "{'size': '%d AWG', 'count': %d, 'rating': '%d degC'}".formatted(gauge, count, rating);
    return ("'room': {'temperature': '%s degC'}, 'circuits': [{'id': 'C', 'load': '%s A'}],"
            + " 'runs': [%s]")
        .formatted(
            text(ambient),
            text(load),
            run(
                "nonmetallic-cable",
                ", 'diameter': 10, 'circuit': 'C', 'conductors': [" + conductors + "]",
                path(1000, 1000, 2000, 1000)));
  }

  static String supported(String kind, double first, double second) {
    return "'boxes': [{'id': 'B', 'kind': 'square', 'face': 'left', 'clamps': 'none'}], 'panels':"
        + " [{'id': 'P', 'face': 'left'}], 'runs': ["
        + run(
            kind,
            ", 'from': 'B', 'to': 'P', 'supports': [%s, %s]".formatted(text(first), text(second)),
            path(1000, 1000, 1000 + second + 200, 1000))
        + "]";
  }

  static String bent(String kind, String made) {
    return "'runs': [" + run(kind, made, path(1000, 1000, 2000, 1000, 2000, 1500)) + "]";
  }

  static String tubing(String size, double length, String conductors) {
    String made = ", 'size': '%s', 'conductors': [%s]".formatted(size, conductors);
    return "'runs': [" + run("emt", made, path(1000, 1000, 1000 + length, 1000)) + "]";
  }

  /** A box that one cable enters. */
  static String box(String fields, String conductors) {
    String box = "'boxes': [{'id': 'B', 'face': 'left', 'fixtureStuds': 0, " + fields + "}]";
    String ends = ", 'from': 'B', 'to': 'P', 'conductors': [" + conductors + "]";
    return box
        + ", 'panels': [{'id': 'P', 'face': 'left'}], 'runs': ["
        + run("nonmetallic-cable", ends, path(1000, 1000, 2000, 1000))
        + "]";
  }

  /** Conductors as in {@code 12x4, 12b2}: four insulated ones and two that bond. */
  static String groups(String conductors) {
    List<String> groups = new ArrayList<>();
    for (String group : conductors.split(", ")) {
      String[] parts = group.trim().split("[xb]");
      String made = group(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]));
      groups.add(group.contains("b") ? made.replace("}", ", 'use': 'bonding'}") : made);
    }
    return String.join(", ", groups);
  }

  static String group(int gauge, int count) {
    return "{'size': '%d AWG', 'count': %d}".formatted(gauge, count);
  }

  static String run(String kind, String made, String path) {
    return "{'id': 'R', 'kind': '" + kind + "'" + made + ", 'path': " + path + "}";
  }

  /** A path on the left wall through points given as along, up, along, up. */
  static String path(double... places) {
    List<String> points = new ArrayList<>();
    for (int i = 0; i < places.length; i += 2) {
      points.add(point(places[i], places[i + 1]));
    }
    return "[" + String.join(", ", points) + "]";
  }

  static String point(double along, double up) {
    return "{'face': 'left', 'along': %s, 'up': %s, 'depth': 20}".formatted(text(along), text(up));
  }

  static String text(double number) {
    return String.format(Locale.ROOT, "%.6f", number);
  }
}
