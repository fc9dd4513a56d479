package org.rimefast.plan.internal;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Part;
import org.rimefast.plan.Placement;

/** Copies of a part with another id and place. */
final class PartCopy {
  private PartCopy() {}

  /** The item of a row, counted from 0, whose first one is {@code part}. */
  static Part inRow(Part part, Repeat repeat, int steps) {
    return moved(part, Repeat.id(part.id(), steps + 1), repeat, steps);
  }

  /**
   * {@code part} with another id, moved on by a number of steps of a row.
   *
   * <p>A row that goes up takes the service holes of its studs along.
   */
  static Part moved(Part part, String id, Repeat repeat, int steps) {
    Placement placement = moved(part.placement(), repeat, steps);
    if (part instanceof Part.Stud p) {
      List<Part.ServiceHole> holes =
          repeat.up() && steps > 0
              ? p.holes().stream().map(hole -> moved(hole, repeat, steps)).toList()
              : p.holes();
      return new Part.Stud(id, p.pointer(), placement, p.section(), holes);
    }
    if (part instanceof Part.Track p) {
      return new Part.Track(id, p.pointer(), placement);
    }
    if (part instanceof Part.Box p) {
      return new Part.Box(id, p.pointer(), p.kind(), p.size(), placement, p.mount(), p.fittings());
    }
    if (part instanceof Part.Bar p) {
      return new Part.Bar(id, p.pointer(), placement);
    }
    if (part instanceof Part.Bracket p) {
      return new Part.Bracket(id, p.pointer(), p.holds(), placement);
    }
    if (part instanceof Part.Panel p) {
      return new Part.Panel(id, p.pointer(), placement, p.mount());
    }
    if (part instanceof Part.Luminaire p) {
      return new Part.Luminaire(id, p.pointer(), placement, p.mount());
    }
    throw new IllegalStateException("a kind of part that cannot be copied: " + part.getClass());
  }

  private static Placement moved(Placement first, Repeat repeat, int steps) {
    return repeat.up()
        ? first.at(first.along(), shifted(first.up(), repeat, steps))
        : first.at(shifted(first.along(), repeat, steps), first.up());
  }

  private static Part.ServiceHole moved(Part.ServiceHole hole, Repeat repeat, int steps) {
    return new Part.ServiceHole(
        hole.pointer(),
        Lengths.moved(hole.up(), repeat.spacing(), steps),
        hole.width(),
        hole.height(),
        hole.insert(),
        hole.plate());
  }

  private static @Nullable Amount shifted(@Nullable Amount start, Repeat repeat, int steps) {
    return start == null ? null : Lengths.moved(start, repeat.spacing(), steps);
  }
}
