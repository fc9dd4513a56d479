package org.rimefast.rulesets;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.CorrugationProfile;
import org.rimefast.plan.Door;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.Opening;
import org.rimefast.plan.Part;
import org.rimefast.plan.Placement;
import org.rimefast.plan.Plan;
import org.rimefast.plan.Run;
import org.rimefast.plan.RunBuild;
import org.rimefast.plan.ShellSize;
import org.rimefast.units.Quantity;
import org.rimefast.units.Rational;
import org.rimefast.units.Units;

/**
 * A motion of a whole module, worked out exactly on what the plan gives. Nothing of the engine's
 * geometry is used, so that the two can be held against each other.
 */
final class ModuleMove {
  private static final Rational MILLIMETRES = Rational.of(1000);

  /** Where a face goes, which of its directions turn round, and how far along all of it moves. */
  private record To(Face face, boolean alongTurns, boolean upTurns, Rational shift) {}

  private final Map<Face, To> faces = new EnumMap<>(Face.class);
  private final Rational longer;

  private ModuleMove(Rational longer) {
    this.longer = longer;
  }

  /** By half a turn about the upright axis: what was left is right, what was front is rear. */
  static ModuleMove halfTurn() {
    return new ModuleMove(Rational.ZERO)
        .with(Face.LEFT, Face.RIGHT, false, false)
        .with(Face.RIGHT, Face.LEFT, false, false)
        .with(Face.FRONT, Face.REAR, false, false)
        .with(Face.REAR, Face.FRONT, false, false)
        .with(Face.ROOF, Face.ROOF, true, true)
        .with(Face.FLOOR, Face.FLOOR, true, true);
  }

  /** Left and right mirrored; what was at the front stays there. */
  static ModuleMove mirror() {
    return new ModuleMove(Rational.ZERO)
        .with(Face.LEFT, Face.RIGHT, true, false)
        .with(Face.RIGHT, Face.LEFT, true, false)
        .with(Face.FRONT, Face.FRONT, true, false)
        .with(Face.REAR, Face.REAR, true, false)
        .with(Face.ROOF, Face.ROOF, false, true)
        .with(Face.FLOOR, Face.FLOOR, false, true);
  }

  /** The rear end pulled out by {@code millimetres}; ribs and all else stay where they are. */
  static ModuleMove longerAtTheRear(Rational millimetres) {
    ModuleMove move = new ModuleMove(millimetres);
    for (Face face : Face.values()) {
      boolean fromTheRear = face == Face.LEFT || face == Face.ROOF || face == Face.FLOOR;
      move.faces.put(face, new To(face, false, false, fromTheRear ? millimetres : Rational.ZERO));
    }
    return move;
  }

  private ModuleMove with(Face from, Face to, boolean alongTurns, boolean upTurns) {
    faces.put(from, new To(to, alongTurns, upTurns, Rational.ZERO));
    return this;
  }

  /** Where a face goes. */
  Face face(Face face) {
    return to(face).face();
  }

  private To to(Face face) {
    return faces.get(face);
  }

  /** The module, moved. */
  Plan of(Plan plan) {
    ShellSize shell = plan.shell();
    Map<Face, FaceBuild> builds = new EnumMap<>(Face.class);
    plan.faces().forEach((face, build) -> builds.put(to(face).face(), build(shell, build)));
    Map<String, Face> faceOf = new HashMap<>();
    plan.parts().forEach(part -> faceOf.put(part.id(), part.face()));
    return new Plan(
        plan.id(),
        plan.title(),
        plan.units(),
        plan.tolerances(),
        plan.room(),
        plan.site(),
        new ShellSize(
            shell.name(),
            decimal(shell.length()).plus(longer).toDouble(),
            shell.width(),
            shell.height()),
        builds,
        plan.openings().stream().map(opening -> opening(shell, opening)).toList(),
        plan.parts().stream().map(part -> part(shell, part)).toList(),
        plan.runs().stream().map(run -> run(shell, run, faceOf)).toList(),
        plan.circuits(),
        plan.foaming(),
        plan.readings(),
        plan.source());
  }

  private FaceBuild build(ShellSize shell, FaceBuild build) {
    To to = to(build.face());
    return new FaceBuild(
        to.face(),
        build.pointer(),
        build.profile(),
        build.ribs(),
        phase(shell, build, to),
        build.sheet(),
        build.standoff(),
        build.stud(),
        build.lining(),
        build.foam());
  }

  /** Where the first inward rib begins then: a rib that turns round begins where it ended. */
  private @Nullable Amount phase(ShellSize shell, FaceBuild build, To to) {
    CorrugationProfile profile = build.profile();
    Amount phase = build.phase();
    if (phase == null || profile == null || profile.isFlat()) {
      return phase;
    }
    boolean upright = build.ribs() == FaceBuild.Ribs.UPRIGHT;
    boolean turns = upright ? to.alongTurns() : to.upTurns();
    Rational place = millimetres(phase);
    if (turns) {
      Rational extent = upright ? along(shell, build.face()) : up(shell, build.face());
      place = extent.minus(place).minus(decimal(profile.inner()));
    }
    place = upright ? place.plus(to.shift()) : place;
    Rational pitch =
        decimal(profile.outer())
            .plus(decimal(profile.web()).times(Rational.of(2)))
            .plus(decimal(profile.inner()));
    while (place.signum() < 0) {
      place = place.plus(pitch);
    }
    while (place.compareTo(pitch) >= 0) {
      place = place.minus(pitch);
    }
    return amount(place, phase);
  }

  private Opening opening(ShellSize shell, Opening opening) {
    To to = to(opening.face());
    Door door = opening.door();
    Door turned =
        door == null || !to.alongTurns()
            ? door
            : new Door(
                door.hinge() == Door.Hinge.LEFT ? Door.Hinge.RIGHT : Door.Hinge.LEFT, door.opens());
    Rational width = millimetres(opening.width());
    Rational height = millimetres(opening.height());
    return new Opening(
        opening.id(),
        opening.pointer(),
        to.face(),
        alongOf(shell, opening.face(), opening.from(), width),
        upOf(shell, opening.face(), opening.sill(), height),
        opening.width(),
        opening.height(),
        turned);
  }

  private Part part(ShellSize shell, Part part) {
    Placement old = part.placement();
    Placement placement =
        new Placement(
            to(old.face()).face(),
            old.along() == null ? null : alongOf(shell, old.face(), old.along(), Rational.ZERO),
            old.up() == null ? null : upOf(shell, old.face(), old.up(), Rational.ZERO),
            old.width(),
            old.height(),
            old.depth(),
            old.front(),
            old.material());
    if (part instanceof Part.Stud stud) {
      List<Part.ServiceHole> holes = new ArrayList<>();
      for (Part.ServiceHole hole : stud.holes()) {
        Amount up = upOf(shell, old.face(), hole.up(), Rational.ZERO);
        holes.add(
            new Part.ServiceHole(
                hole.pointer(), up, hole.width(), hole.height(), hole.insert(), hole.plate()));
      }
      return new Part.Stud(stud.id(), stud.pointer(), placement, stud.section(), holes);
    }
    if (part instanceof Part.Box box) {
      return new Part.Box(
          box.id(), box.pointer(), box.kind(), box.size(), placement, box.mount(), box.fittings());
    }
    if (part instanceof Part.Track track) {
      return new Part.Track(track.id(), track.pointer(), placement);
    }
    if (part instanceof Part.Bar bar) {
      return new Part.Bar(bar.id(), bar.pointer(), placement);
    }
    if (part instanceof Part.Bracket bracket) {
      return new Part.Bracket(bracket.id(), bracket.pointer(), bracket.holds(), placement);
    }
    if (part instanceof Part.Panel panel) {
      return new Part.Panel(panel.id(), panel.pointer(), placement, panel.mount());
    }
    if (part instanceof Part.Luminaire luminaire) {
      return new Part.Luminaire(luminaire.id(), luminaire.pointer(), placement, luminaire.mount());
    }
    throw new IllegalStateException("a part of another kind: " + part.id());
  }

  private Run run(ShellSize shell, Run run, Map<String, Face> faceOf) {
    List<Run.PathPoint> path = new ArrayList<>();
    for (Run.PathPoint point : run.path()) {
      Face face = point.face();
      path.add(
          new Run.PathPoint(
              point.pointer(),
              to(face).face(),
              point.along() == null ? null : alongOf(shell, face, point.along(), Rational.ZERO),
              point.up() == null ? null : upOf(shell, face, point.up(), Rational.ZERO),
              point.depth(),
              point.bend()));
    }
    RunBuild build = run.build();
    RunBuild turned =
        new RunBuild(
            build.armour(),
            build.bore(),
            build.bendRadius(),
            build.conductors(),
            build.circuit(),
            build.supports(),
            end(build.first(), faceOf.get(run.from())),
            end(build.last(), faceOf.get(run.to())),
            build.cornerSlack());
    return new Run(
        run.id(), run.pointer(), run.kind(), run.diameter(), path, run.from(), run.to(), turned);
  }

  private RunBuild.End end(RunBuild.End end, @Nullable Face face) {
    RunBuild.Side side = end.side();
    if (side == null || face == null) {
      return end;
    }
    To to = to(face);
    RunBuild.Side turned =
        switch (side) {
          case LEFT -> to.alongTurns() ? RunBuild.Side.RIGHT : side;
          case RIGHT -> to.alongTurns() ? RunBuild.Side.LEFT : side;
          case ABOVE -> to.upTurns() ? RunBuild.Side.BELOW : side;
          case BELOW -> to.upTurns() ? RunBuild.Side.ABOVE : side;
          case BACK, FRONT -> side;
        };
    return new RunBuild.End(turned, end.connector(), end.slack());
  }

  /** A place along a face; of what reaches {@code size} on from there, where it then begins. */
  private Amount alongOf(ShellSize shell, Face face, Amount place, Rational size) {
    To to = to(face);
    Rational old = millimetres(place);
    if (!to.alongTurns()) {
      return to.shift().signum() == 0 ? place : amount(old.plus(to.shift()), place);
    }
    return amount(along(shell, face).minus(old).minus(size), place);
  }

  private Amount upOf(ShellSize shell, Face face, Amount place, Rational size) {
    return to(face).upTurns()
        ? amount(up(shell, face).minus(millimetres(place)).minus(size), place)
        : place;
  }

  private static Rational along(ShellSize shell, Face face) {
    return decimal(face == Face.FRONT || face == Face.REAR ? shell.width() : shell.length());
  }

  private static Rational up(ShellSize shell, Face face) {
    return decimal(face.isWall() ? shell.height() : shell.width());
  }

  private static Rational decimal(double millimetres) {
    return Rational.of(BigDecimal.valueOf(millimetres));
  }

  private static Rational millimetres(Amount amount) {
    return amount.value().si().times(MILLIMETRES);
  }

  private static Amount amount(Rational millimetres, Amount like) {
    String text = millimetres.toDecimal(30).toPlainString() + " mm";
    return new Amount(new Quantity(millimetres, Units.MILLIMETRE, text), like.plusMinus());
  }
}
