package org.rimefast.check.internal.steel;

import java.util.List;
import org.rimefast.check.Dictionary;
import org.rimefast.check.PlanFacts;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.plan.Face;
import org.rimefast.plan.Part;

/** The kinds of element that a plan has. */
final class Nouns {
  static final Noun ITEM = noun("item", "items");
  static final Noun PART = noun("part", "parts", ITEM);
  static final Noun ELECTRICAL_PART = noun("electrical part", "electrical parts", PART);
  static final Noun BOX = noun("box", "boxes", ELECTRICAL_PART);
  static final Noun STUD = noun("stud", "studs", PART);
  static final Noun TRACK = noun("track", "tracks", PART);
  static final Noun BAR = noun("bar", "bars", PART);
  static final Noun BRACKET = noun("bracket", "brackets", PART);
  static final Noun PANEL = noun("panel", "panels", ELECTRICAL_PART);
  static final Noun LUMINAIRE = noun("luminaire", "luminaires", ELECTRICAL_PART);
  static final Noun RUN = noun("run", "runs", ITEM);
  static final Noun CABLE = noun("cable", "cables", RUN);
  static final Noun CONDUIT = noun("conduit", "conduits", RUN);
  static final Noun CIRCUIT = noun("circuit", "circuits");
  static final Noun CONDUCTOR = noun("conductor", "conductors");
  static final Noun OPENING = noun("opening", "openings");
  static final Noun FACE = noun("face", "faces");
  static final Noun WALL = noun("wall", "walls", FACE);
  static final Noun ROOF = noun("roof", "roofs", FACE);
  static final Noun FLOOR = noun("floor", "floors", FACE);
  static final Noun ROOM = noun("room", "rooms");

  private Nouns() {}

  private static Noun noun(String singular, String plural, Noun... broader) {
    return new Noun(singular, singular, plural, List.of(broader));
  }

  static void addTo(Dictionary.Builder words) {
    words
        .noun(ITEM, (facts, handle) -> facts.isPart(handle) || facts.isRun(handle))
        .noun(PART, PlanFacts::isPart)
        .noun(ELECTRICAL_PART, (facts, handle) -> isPart(facts, handle, Part.Electrical.class))
        .noun(BOX, (facts, handle) -> isPart(facts, handle, Part.Box.class))
        .noun(STUD, (facts, handle) -> isPart(facts, handle, Part.Stud.class))
        .noun(TRACK, (facts, handle) -> isPart(facts, handle, Part.Track.class))
        .noun(BAR, (facts, handle) -> isPart(facts, handle, Part.Bar.class))
        .noun(BRACKET, (facts, handle) -> isPart(facts, handle, Part.Bracket.class))
        .noun(PANEL, (facts, handle) -> isPart(facts, handle, Part.Panel.class))
        .noun(LUMINAIRE, (facts, handle) -> isPart(facts, handle, Part.Luminaire.class))
        .noun(RUN, PlanFacts::isRun)
        .noun(CABLE, (facts, handle) -> facts.isRun(handle) && facts.run(handle).kind().isCable())
        .noun(
            CONDUIT, (facts, handle) -> facts.isRun(handle) && !facts.run(handle).kind().isCable())
        .noun(CIRCUIT, PlanFacts::isCircuit)
        .noun(CONDUCTOR, PlanFacts::isConductor)
        .noun(OPENING, PlanFacts::isOpening)
        .noun(FACE, PlanFacts::isFace)
        .noun(WALL, (facts, handle) -> facts.isFace(handle) && facts.face(handle).isWall())
        .noun(ROOF, (facts, handle) -> isFace(facts, handle, Face.ROOF))
        .noun(FLOOR, (facts, handle) -> isFace(facts, handle, Face.FLOOR))
        .noun(ROOM, PlanFacts::isRoom);
  }

  private static boolean isPart(PlanFacts facts, int handle, Class<? extends Part> kind) {
    return facts.isPart(handle) && kind.isInstance(facts.part(handle));
  }

  private static boolean isFace(PlanFacts facts, int handle, Face face) {
    return facts.isFace(handle) && facts.face(handle) == face;
  }
}
