package org.rimefast.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.rimefast.plan.Plan;

/** Makes small random plans in which about one value in eight is missing. */
final class RandomPlans {
  private static final List<String> FACES =
      List.of("left", "left", "left", "right", "front", "roof");

  private final Random random;
  private final int most;

  RandomPlans(Random random, int most) {
    this.random = random;
    this.most = most;
  }

  Plan plan() {
    List<String> members = new ArrayList<>();
    members.add(
        "'format': 'rimefast-plan-1', 'id': 'random', 'title': 'Random (invented)', 'units': 'mm'");
    if (random.nextBoolean()) {
      members.add("'tolerances': {'shell': 2, 'framing': 3, 'electrical': 4}");
    }
    members.add(
        "'room': {"
            + fields("'use': 'bunk room'", "'temperature': '21 degC'", "'humidity': '35 %'")
            + "}");
    members.add("'site': {" + fields("'outdoorDesignTemperature': '-38 degC'") + "}");
    members.add("'shell': {'size': '45G1'}");
    members.add("'faces': {'default': {" + face() + "}, 'roof': {" + face() + "}}");
    members.add(
        "'openings': [{'id': 'O1', 'face': 'left', 'from': 4000, 'sill': 0, 'width': 900, 'height': 2000}]");
    members.add(list("studs", () -> fields("'along': " + place(), "'material': 'steel'")));
    members.add(list("boxes", () -> "'kind': 'device', " + mounted()));
    members.add(list("bars", () -> placed() + ", 'front': " + random.nextInt(60)));
    members.add(list("brackets", () -> placed() + ", 'front': " + random.nextInt(40)));
    members.add(list("panels", this::mounted));
    members.add(list("luminaires", this::mounted));
    members.add(list("runs", this::run));
    members.add(list("tracks", this::track));
    return Given.plan("{" + String.join(",\n ", members) + "}");
  }

  private String face() {
    return fields(
        "'profile': '" + pick(List.of("side wall", "front wall", "roof", "flat")) + "'",
        "'phase': " + random.nextInt(250),
        "'standoff': " + random.nextInt(40),
        "'stud': '162S125-33'",
        "'lining': 12.7",
        "'foam': {"
            + fields(
                "'kind': '" + pick(List.of("closed-cell", "fibrous")) + "'",
                "'thickness': " + (20 + random.nextInt(80)))
            + "}");
  }

  private interface Body {
    String make();
  }

  private String list(String name, Body body) {
    List<String> items = new ArrayList<>();
    int count = random.nextInt(most + 1);
    for (int i = 0; i < count; i++) {
      String face = name.equals("runs") ? "" : "'face': '" + pick(FACES) + "'";
      String fields = body.make();
      String separator = face.isEmpty() || fields.isEmpty() ? "" : ", ";
      items.add("{'id': '" + name + i + "', " + face + separator + fields + "}");
    }
    return "'" + name + "': [" + String.join(",\n   ", items) + "]";
  }

  private String mounted() {
    return placed()
        + ", "
        + fieldsOr("'mount': '" + pick(List.of("flush", "covered", "surface")) + "'", "'up': 900");
  }

  /** Places near each other, so that some touch. */
  private String placed() {
    return fieldsOr(
        "'along': " + place(),
        "'width': " + (20 + random.nextInt(80)),
        "'height': " + (20 + random.nextInt(120)),
        "'depth': " + (3 + random.nextInt(60)),
        "'material': '" + pick(List.of("steel", "plastic", "wood")) + "'");
  }

  /** Across the feet of studs, some at their middle; its depth is mostly that of the studs. */
  private String track() {
    return fieldsOr(
        "'along': " + place(),
        "'width': " + (20 + random.nextInt(400)),
        "'height': " + (20 + random.nextInt(40)),
        pick(List.of("'material': 'steel'", "'material': 'steel', 'depth': 43")),
        "'up': " + pick(List.of(30, 30, 900)));
  }

  private int place() {
    return 400 + 20 * random.nextInt(30);
  }

  private String run() {
    String points =
        "{'face': 'left', 'along': %d, 'up': 900, 'depth': %d}, {'face': 'left', 'along': %d, 'up': %d, 'depth': 20}"
            .formatted(place(), random.nextInt(60), place() + 700, 800 + random.nextInt(200));
    String kind = pick(List.of("armoured-cable", "nonmetallic-cable", "emt"));
    return "'kind': '"
        + kind
        + "', "
        + fieldsOr("'diameter': 12", "'path': [" + points + "]").replace("@", "");
  }

  /** Some of the fields; each is left out one time in eight. */
  private String fields(String... all) {
    List<String> kept = new ArrayList<>();
    for (String field : all) {
      if (random.nextInt(8) != 0) {
        kept.add(field);
      }
    }
    return String.join(", ", kept);
  }

  /** As {@link #fields}, but the last one is always kept. */
  private String fieldsOr(String... all) {
    String[] optional = java.util.Arrays.copyOf(all, all.length - 1);
    String some = fields(optional);
    String last = all[all.length - 1];
    return some.isEmpty() ? last : some + ", " + last;
  }

  private <T> T pick(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }
}
