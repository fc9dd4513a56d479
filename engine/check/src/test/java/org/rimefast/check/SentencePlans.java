package org.rimefast.check;

import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.plan.Plan;
import org.rimefast.units.Dimension;
import org.rimefast.units.Units;

/**
 * Nouns, and plans for sentences. On the left wall of the plans, inward ribs have their middle at
 * 75 mm and outer bays at 214 mm, and again every 278 mm; ribs lie 66.3 mm behind the studs' warm
 * face.
 */
final class SentencePlans {
  static final Noun BOX = Given.DICTIONARY.noun("box");
  static final Noun CABLE = Given.DICTIONARY.noun("cable");
  static final Noun CONDUIT = Given.DICTIONARY.noun("conduit");
  static final Noun PANEL = Given.DICTIONARY.noun("panel");
  static final Noun WALL = Given.DICTIONARY.noun("wall");
  static final ValueType.Number LENGTH = new ValueType.Number(Dimension.LENGTH, Units.MILLIMETRE);
  static final ValueType.Number TEMPERATURE =
      new ValueType.Number(Dimension.TEMPERATURE, Units.DEGREE_CELSIUS);
  static final Noun STUD = Given.DICTIONARY.noun("stud");
  static final Noun PART = Given.DICTIONARY.noun("part");
  static final Noun ITEM = Given.DICTIONARY.noun("item");
  static final Noun FACE = Given.DICTIONARY.noun("face");
  static final Noun ROOM = Given.DICTIONARY.noun("room");
  static final Slot A_BOX = new Slot.Element(BOX);

  private SentencePlans() {}

  static Plan module(String more) {
    return Given.module(40, 25, more);
  }

  static String box(String id, double along) {
    return Given.box(id, along);
  }

  static String bracket(String id, double along, double depth, String material) {
    return "{'id': '%s', 'face': 'left', 'along': %s, 'up': 1200, 'width': 2, 'height': 60, 'depth': %s, 'front': 0%s}"
        .formatted(id, along, depth, material);
  }

  static String panel(String id, double along, String mount) {
    return "{'id': '%s', 'face': 'left', 'along': %s, 'up': 1500, 'width': 360, 'height': 600, 'depth': 95, 'mount': '%s'}"
        .formatted(id, along, mount);
  }

  /** A run along the left wall; each point is along, up and depth. */
  static String run(String id, String kind, String more, String... points) {
    StringBuilder path = new StringBuilder();
    for (String point : points) {
      String[] at = point.split(" ");
      path.append(path.isEmpty() ? "" : ", ")
          .append("{'face': 'left', 'along': " + at[0])
          .append(at[1].equals("?") ? "" : ", 'up': " + at[1])
          .append(", 'depth': " + at[2] + "}");
    }
    return "{'id': '%s', 'kind': '%s'%s, 'path': [%s]}".formatted(id, kind, more, path);
  }
}
