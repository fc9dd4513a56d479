package org.rimefast.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A part with a place on a face. Null means not given. */
public sealed interface Part extends Element {
  /** Where it is on its face, how large it is and what it is made of. */
  Placement placement();

  /** The {@link Placement#face} of its placement. */
  default Face face() {
    return placement().face();
  }

  /** The {@link Placement#along} of its placement. */
  default @Nullable Amount along() {
    return placement().along();
  }

  /** The {@link Placement#up} of its placement. */
  default @Nullable Amount up() {
    return placement().up();
  }

  /** The {@link Placement#width} of its placement. */
  default @Nullable Amount width() {
    return placement().width();
  }

  /** The {@link Placement#height} of its placement. */
  default @Nullable Amount height() {
    return placement().height();
  }

  /** The {@link Placement#depth} of its placement. */
  default @Nullable Amount depth() {
    return placement().depth();
  }

  /** The {@link Placement#front} of its placement. */
  default @Nullable Amount front() {
    return placement().front();
  }

  /** The {@link Placement#material} of its placement. */
  default @Nullable Material material() {
    return placement().material();
  }

  /** A part that conductors enter. */
  sealed interface Electrical extends Part {
    /** How it stands to the lining; null if not given. */
    @Nullable Mount mount();
  }

  /**
   * A stud, upright on walls and across on the roof, its warm face at depth 0. Without a height it
   * reaches from end to end of the face, but for the standoff of the framing there.
   *
   * @param section its section; the face's if the plan names none for it; null if neither does
   * @param holes its service holes
   */
  record Stud(
      String id,
      String pointer,
      Placement placement,
      @Nullable StudSection section,
      List<ServiceHole> holes)
      implements Part {
    /** Copies the list. */
    public Stud {
      holes = List.copyOf(holes);
    }
  }

  /**
   * A hole in a stud's web.
   *
   * @param up its middle, up the face
   * @param width its extent across the web (toward the shell)
   * @param height its extent along the stud
   * @param insert true if a bushing or grommet covers its edges; null if not given
   * @param plate thickness of the steel plate that guards what passes; null if not given
   */
  record ServiceHole(
      String pointer,
      Amount up,
      Amount width,
      Amount height,
      @Nullable Boolean insert,
      @Nullable Amount plate) {
    /** A hole of which no more is known than where it is. */
    public ServiceHole(String pointer, Amount up, Amount width, Amount height) {
      this(pointer, up, width, height, null, null);
    }
  }

  /**
   * A track: a U section in which ends of studs stand. Without a depth it is as deep as the stud
   * section of its face; its room side is at depth 0 unless its front is given.
   */
  record Track(String id, String pointer, Placement placement) implements Part {}

  /**
   * A box for devices or connections.
   *
   * @param kind what kind of box
   * @param size the product size that it was given by, if any
   * @param fittings what it holds
   */
  record Box(
      String id,
      String pointer,
      Kind kind,
      @Nullable String size,
      Placement placement,
      @Nullable Mount mount,
      BoxFittings fittings)
      implements Electrical {
    /** A box of which it is not known what it holds. */
    public Box(
        String id,
        String pointer,
        Kind kind,
        @Nullable String size,
        Placement placement,
        @Nullable Mount mount) {
      this(id, pointer, kind, size, placement, mount, BoxFittings.UNKNOWN);
    }

    /** Kinds of box. */
    public enum Kind {
      DEVICE,
      SQUARE,
      OCTAGON,
      HANDY,
      JUNCTION;

      /** The word that plans and rules use. */
      public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
      }
    }
  }

  /** A bar from stud to stud, or any flat metal or wood behind the lining. */
  record Bar(String id, String pointer, Placement placement) implements Part {}

  /**
   * A bracket.
   *
   * @param holds the id of what it holds
   */
  record Bracket(String id, String pointer, @Nullable String holds, Placement placement)
      implements Part {}

  /** A distribution panel. */
  record Panel(String id, String pointer, Placement placement, @Nullable Mount mount)
      implements Electrical {}

  /** A luminaire. */
  record Luminaire(String id, String pointer, Placement placement, @Nullable Mount mount)
      implements Electrical {}
}
