package org.rimefast.bench;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.rimefast.plan.Plan;
import org.rimefast.plan.PlanReader;
import org.rimefast.plan.PlanReading;

/** A plan of 2,000 parts (invented, seeded): boxes, studs, bars, brackets and luminaires. */
final class LargePlan {
  private LargePlan() {}

  static Plan of(int parts, long seed) {
    Random random = new Random(seed);
    List<String> boxes = new ArrayList<>();
    List<String> studs = new ArrayList<>();
    List<String> bars = new ArrayList<>();
    List<String> brackets = new ArrayList<>();
    List<String> luminaires = new ArrayList<>();
    for (int i = 0; i < parts; i++) {
      switch (i % 10) {
        case 0, 1, 2, 3 -> boxes.add(box(i, random));
        case 4, 5, 6 -> studs.add(item(i, wall(random), random, "'material': 'steel'"));
        case 7 -> bars.add(item(i, wall(random), random, size(200, 40, 3) + ", 'front': 20"));
        case 8 -> brackets.add(item(i, wall(random), random, size(2, 60, 38) + ", 'front': 1"));
        default ->
            luminaires.add(item(i, "roof", random, size(300, 150, 70) + ", 'mount': 'surface'"));
      }
    }
    String json =
        """
        {'format': 'rimefast-plan-1', 'id': 'large', 'title': 'Large (invented)', 'units': 'mm',
         'tolerances': {'shell': 2, 'framing': 3, 'electrical': 3},
         'shell': {'size': '45G1'},
         'faces': {'default': {'profile': 'side wall', 'phase': 40, 'standoff': 25,
             'stud': '162S125-33', 'lining': 12.7, 'foam': {'kind': 'closed-cell', 'thickness': 75}},
           'roof': {'profile': 'roof'}, 'floor': {'profile': 'plywood'}},
         'boxes': [%s], 'studs': [%s], 'bars': [%s], 'brackets': [%s], 'luminaires': [%s]}
        """
            .formatted(
                String.join(",", boxes),
                String.join(",", studs),
                String.join(",", bars),
                String.join(",", brackets),
                String.join(",", luminaires));
    PlanReading reading =
        new PlanReader()
            .read("large.json", json.replace('\'', '"').getBytes(StandardCharsets.UTF_8));
    return reading
        .plan()
        .orElseThrow(() -> new IllegalStateException("faults: " + reading.faults()));
  }

  private static String box(int i, Random random) {
    String mount = random.nextInt(4) == 0 ? "surface" : "flush";
    String depth = random.nextInt(20) == 0 ? "" : ", 'depth': " + (38 + random.nextInt(20));
    return item(
        i,
        wall(random),
        random,
        "'kind': 'device', 'width': 54, 'height': 76, 'mount': '" + mount + "'" + depth);
  }

  private static String wall(Random random) {
    return random.nextBoolean() ? "left" : "right";
  }

  private static String item(int i, String face, Random random, String more) {
    return "{'id': 'p%d', 'face': '%s', 'along': %d, 'up': %d, %s}"
        .formatted(
            i,
            face,
            300 + random.nextInt(11_400),
            300 + random.nextInt(face.equals("roof") ? 1700 : 2000),
            more.contains("'material'") || i % 10 == 9 ? more : more + ", 'material': 'steel'");
  }

  private static String size(int width, int height, int depth) {
    return "'width': " + width + ", 'height': " + height + ", 'depth': " + depth;
  }
}
