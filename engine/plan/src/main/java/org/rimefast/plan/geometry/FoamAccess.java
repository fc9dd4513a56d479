package org.rimefast.plan.geometry;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Face;
import org.rimefast.plan.Foaming;
import org.rimefast.plan.Part;
import org.rimefast.plan.RunBuild.Side;

/**
 * Where a foam gun gets behind parts, and what steel stays bare. Lengths in millimetres, areas in
 * square millimetres. Immutable, worked out once: n log n for parts that do not crowd.
 *
 * <p>The model is plain and says bare where it is unsure. The nozzle goes in at a side of a part
 * beside which the free gap is at least the nozzle's width. From the edge of the part on that side
 * foam is carried straight in behind it as far as the gun reaches, if the gap behind the part is at
 * least the nozzle's width everywhere; else none gets there. What is left of the part's rectangle
 * is bare. So are the strips between a stud and the end of its face or another stud that are
 * narrower than the nozzle. What is fixed onto the finished lining hides nothing.
 */
public final class FoamAccess {
  private static final Side[] SIDES = {Side.LEFT, Side.RIGHT, Side.BELOW, Side.ABOVE};

  private final ModuleGeometry geometry;
  private final OnFace onFace;
  private final FreeSides sides;
  private final BackGaps backs;
  private final @Nullable BareSteel bare;
  private final Bounds[] beside;
  private final Bounds[] behind;

  private FoamAccess(ModuleGeometry geometry) {
    this.geometry = geometry;
    this.onFace = new OnFace(geometry);
    this.sides = new FreeSides(geometry, onFace);
    this.backs = new BackGaps(geometry, onFace);
    int count = geometry.plan().parts().size();
    this.beside = new Bounds[count];
    this.behind = new Bounds[count];
    for (int part = 0; part < count; part++) {
      double least = 0;
      double most = 0;
      for (int side = 0; side < FreeSides.SIDES; side++) {
        least = Math.max(least, sides.least(part, side));
        most = Math.max(most, sides.most(part, side));
      }
      beside[part] = new Bounds(least, most);
      behind[part] = new Bounds(backs.least(part), backs.most(part));
    }
    Foaming foaming = geometry.plan().foaming();
    Amount nozzle = foaming.nozzle();
    Amount reach = foaming.reach();
    this.bare =
        nozzle == null || reach == null
            ? null
            : new BareSteel(geometry, onFace, sides, backs, nozzle, reach);
  }

  /** The foam access of a module. */
  public static FoamAccess of(ModuleGeometry geometry) {
    return new FoamAccess(geometry);
  }

  /**
   * The widest free gap at the four sides of a part, on its face: to the next part of the face that
   * overlaps it in the other direction and in depth, or to the end of the face. Runs count for
   * nothing. A part without a place may stand anywhere.
   */
  public Bounds beside(int part) {
    return beside[part];
  }

  /** The side at which the gap is widest as drawn; left if the part has no place. */
  public Side widestSide(int part) {
    int widest = 0;
    for (int side = 1; side < FreeSides.SIDES; side++) {
      widest = sides.drawn(part, side) > sides.drawn(part, widest) ? side : widest;
    }
    return SIDES[widest];
  }

  /** The free gap at one of the four sides, as drawn. */
  public double gapBeside(int part, Side side) {
    return sides.drawn(part, place(side));
  }

  /** The part that ends the gap at one of the four sides; -1 if the end of the face does. */
  public int nextBeside(int part, Side side) {
    return sides.nearest(part, place(side));
  }

  private static int place(Side side) {
    return switch (side) {
      case LEFT -> FreeSides.LEFT;
      case RIGHT -> FreeSides.RIGHT;
      case BELOW -> FreeSides.BELOW;
      case ABOVE -> FreeSides.ABOVE;
      case BACK, FRONT -> throw new IllegalArgumentException(side + " is not beside a part");
    };
  }

  /** JSON pointers of what is missing to be certain of {@link #beside}. */
  public List<String> missingForBeside(int part) {
    return sides.missing(part);
  }

  /**
   * The least distance straight back from a part, over its rectangle, to the sheet or to a part
   * that stands behind it. Openings count as sheet, as they do for zones.
   */
  public Bounds behind(int part) {
    return behind[part];
  }

  /** {@link #behind} as drawn. */
  public double gapBehind(int part) {
    return backs.drawn(part);
  }

  /** The part that is nearest behind; -1 if the sheet is. */
  public int nextBehind(int part) {
    return backs.nearest(part);
  }

  /** JSON pointers of what is missing to be certain of {@link #behind}. */
  public List<String> missingForBehind(int part) {
    return backs.missing(part);
  }

  /** The area of steel behind a part that the gun does not reach. */
  public Bounds bareBehind(int part) {
    if (onFace.comesAfterFoam(part)) {
      return BareSteel.NONE;
    }
    return bare == null ? Bounds.MISSING : bare.behind(part);
  }

  /** Where steel stays bare behind a part as drawn; empty if nowhere, or if that is not known. */
  public Optional<BareArea> bareAreaBehind(int part) {
    return bare == null || onFace.comesAfterFoam(part)
        ? Optional.empty()
        : bare.area(part).filter(area -> area.area() > 0);
  }

  /** JSON pointers of what is missing to be certain of {@link #bareBehind}. */
  public List<String> missingForBareBehind(int part) {
    if (onFace.comesAfterFoam(part)) {
      return List.of();
    }
    Set<String> pointers = new LinkedHashSet<>(missingOfGun());
    pointers.addAll(backs.missing(part));
    pointers.addAll(sides.missing(part));
    return List.copyOf(pointers);
  }

  private List<String> missingOfGun() {
    List<String> pointers = new ArrayList<>();
    if (geometry.plan().foaming().nozzle() == null) {
      pointers.add(Foaming.POINTER + "/nozzle");
    }
    if (geometry.plan().foaming().reach() == null) {
      pointers.add(Foaming.POINTER + "/reach");
    }
    return pointers;
  }

  /**
   * The area of steel of a face that the gun does not reach: behind its parts and in narrow strips
   * beside its studs, what lies behind several counted once, openings left out. 0 for a face
   * without steel.
   */
  public Bounds bare(Face face) {
    return bare == null ? Bounds.MISSING : bare.of(face);
  }

  /** Where the bare steel of a face is as drawn, in no certain order; they may overlap. */
  public List<BareArea> bareAreas(Face face) {
    return bare == null ? List.of() : bare.areas(face);
  }

  /** JSON pointers of what is missing to be certain of {@link #bare}. */
  public List<String> missingForBare(Face face) {
    Set<String> pointers = new LinkedHashSet<>(missingOfGun());
    List<Part> parts = geometry.plan().parts();
    for (int part = 0; part < parts.size(); part++) {
      if (parts.get(part).face() == face && !onFace.comesAfterFoam(part)) {
        pointers.addAll(backs.missing(part));
        pointers.addAll(sides.missing(part));
      }
    }
    return List.copyOf(pointers);
  }

  /**
   * A rectangle of steel that stays bare, in the coordinates of its face.
   *
   * @param part the part that hides it, or the stud beside which it is
   * @param beside true if it is a narrow strip beside a stud
   */
  public record BareArea(
      int part, boolean beside, double alongMin, double upMin, double alongMax, double upMax) {
    /** Its size in square millimetres. */
    public double area() {
      return Math.max(0, alongMax - alongMin) * Math.max(0, upMax - upMin);
    }
  }
}
