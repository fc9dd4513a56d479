package org.rimefast.check.internal.steel;

import java.util.List;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.plan.Face;
import org.rimefast.plan.Part;
import org.rimefast.plan.geometry.FloorLine;

/** Words for how far one walks along the foot of a wall. */
final class FloorLineWords {
  private static final PlanFacts.Key<FloorLine> LINE =
      new PlanFacts.Key<>("floor line", FloorLine.class);

  private FloorLineWords() {}

  static void addTo(Dictionary.Builder words) {
    words.number(
        new Property(
            "wall.way along the floor line",
            "way along the floor line to a receptacle below _ in wall spaces from _",
            Nouns.WALL,
            List.of(Kinds.value(Kinds.LENGTH), Kinds.value(Kinds.LENGTH)),
            Kinds.LENGTH),
        FloorLineWords::way,
        FloorLineWords::explain);
  }

  private static FloorLine line(PlanFacts facts) {
    return facts.keep(LINE, each -> FloorLine.of(each.geometry()));
  }

  private static void way(PlanFacts facts, int element, Arguments arguments, Reading reading) {
    Face wall = facts.face(element);
    Reading below = arguments.number(0);
    Reading from = arguments.number(1);
    FloorLine line = line(facts);
    reading.between(
        line.least(wall, below.most() * 1000, from.most() * 1000) / 1000,
        line.most(wall, below.least() * 1000, from.least() * 1000) / 1000);
  }

  private static void explain(PlanFacts facts, int element, Arguments arguments, Explanation out) {
    FloorLine line = line(facts);
    Face wall = facts.face(element);
    double below = arguments.number(0).least() * 1000;
    double from = arguments.number(1).least() * 1000;
    FloorLine.Farthest farthest = line.farthest(wall, below, from);
    if (farthest == null) {
      out.fact("wall spaces", "none that is long enough");
    } else {
      out.fact("farthest point", "along " + Places.length(facts, farthest.along()));
      out.fact(
          "nearest receptacle",
          farthest.box() < 0
              ? "none in its wall space: the whole floor line counts"
              : facts.name(farthest.box()).label());
    }
    double most = line.most(wall, below, from);
    double least = line.least(wall, below, from);
    if (most - least > Touch.ROUNDING) {
      for (int part : line.uncertain()) {
        Part.Box box = (Part.Box) facts.part(part);
        Given.explain(facts, part, box.fittings().devices(), "devices", out);
        Given.explain(facts, part, box.along(), "along", out);
        Given.explain(facts, part, box.up(), "up", out);
      }
    }
  }
}
