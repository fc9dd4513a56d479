package org.rimefast.plan;

import java.util.List;
import java.util.Map;
import org.rimefast.units.Unit;

/**
 * One module as planned. Immutable. Rows of equal items ({@code repeat}) are written out.
 *
 * @param id the plan's id
 * @param title one line for people
 * @param units the unit of lengths given as plain numbers
 * @param tolerances how far what is built may lie from what is drawn
 * @param room the room it becomes
 * @param site where it stands
 * @param shell the inside of the shell
 * @param faces how each face is built up; has all six
 * @param openings holes cut in the shell
 * @param parts studs, tracks, boxes, bars, brackets, panels and luminaires, in the order of those
 *     lists
 * @param runs cables and conduits
 * @param circuits branch circuits
 * @param foaming what the foam is sprayed with
 * @param readings what was found on site
 * @param source where it came from
 */
public record Plan(
    String id,
    String title,
    Unit units,
    Tolerances tolerances,
    Room room,
    Site site,
    ShellSize shell,
    Map<Face, FaceBuild> faces,
    List<Opening> openings,
    List<Part> parts,
    List<Run> runs,
    List<Circuit> circuits,
    Foaming foaming,
    List<InspectReading> readings,
    PlanSource source) {
  /** What the first field of a plan file says. */
  public static final String FORMAT = "rimefast-plan-1";

  /** Copies the lists. */
  public Plan {
    faces = Map.copyOf(faces);
    openings = List.copyOf(openings);
    parts = List.copyOf(parts);
    runs = List.copyOf(runs);
    circuits = List.copyOf(circuits);
    readings = List.copyOf(readings);
  }

  /** A plan without circuits of a module that nobody has looked at on site. */
  public Plan(
      String id,
      String title,
      Unit units,
      Tolerances tolerances,
      Room room,
      Site site,
      ShellSize shell,
      Map<Face, FaceBuild> faces,
      List<Opening> openings,
      List<Part> parts,
      List<Run> runs,
      PlanSource source) {
    this(
        id,
        title,
        units,
        tolerances,
        room,
        site,
        shell,
        faces,
        openings,
        parts,
        runs,
        List.of(),
        Foaming.UNKNOWN,
        List.of(),
        source);
  }

  /** How a face is built up. */
  public FaceBuild face(Face face) {
    FaceBuild build = faces.get(face);
    if (build == null) {
      throw new IllegalStateException("a plan has all six faces, this one has no " + face);
    }
    return build;
  }

  /**
   * Starts a plan.
   *
   * @param units the unit of lengths given as plain numbers: mm, cm, m, in or ft
   */
  public static PlanBuilder builder(String id, String title, Unit units) {
    return new PlanBuilder(id, title, units);
  }

  /** The same plan with another source. */
  public Plan withSource(PlanSource other) {
    return new Plan(
        id,
        title,
        units,
        tolerances,
        room,
        site,
        shell,
        faces,
        openings,
        parts,
        runs,
        circuits,
        foaming,
        readings,
        other);
  }

  /** True if both plans say the same, wherever they came from. */
  public boolean sameContent(Plan other) {
    return withSource(other.source).equals(other);
  }
}
