package org.rimefast.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A part with a place on a face. Null means not given. */
public sealed interface Part extends Element {
  /** The face it is on. */
  Face face();

  /** Its middle, along the face. */
  @Nullable Amount along();

  /** Its middle, up the face. */
  @Nullable Amount up();

  /** Its extent along the face. */
  @Nullable Amount width();

  /** Its extent up the face. */
  @Nullable Amount height();

  /** Its extent toward the shell. */
  @Nullable Amount depth();

  /**
   * Where its room side is, as a depth from the studs' warm face toward the shell; null if {@code
   * mount} decides.
   */
  @Nullable Amount front();

  /** What it is made of. */
  @Nullable Material material();

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
      Face face,
      @Nullable Amount along,
      @Nullable Amount up,
      @Nullable Amount width,
      @Nullable Amount height,
      @Nullable Amount depth,
      @Nullable Amount front,
      @Nullable Material material,
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
   */
  record ServiceHole(String pointer, Amount up, Amount width, Amount height) {}

  /**
   * A box for devices or connections.
   *
   * @param kind what kind of box
   * @param size the product size that it was given by, if any
   */
  record Box(
      String id,
      String pointer,
      Kind kind,
      @Nullable String size,
      Face face,
      @Nullable Amount along,
      @Nullable Amount up,
      @Nullable Amount width,
      @Nullable Amount height,
      @Nullable Amount depth,
      @Nullable Mount mount,
      @Nullable Amount front,
      @Nullable Material material)
      implements Part {
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
  record Bar(
      String id,
      String pointer,
      Face face,
      @Nullable Amount along,
      @Nullable Amount up,
      @Nullable Amount width,
      @Nullable Amount height,
      @Nullable Amount depth,
      @Nullable Amount front,
      @Nullable Material material)
      implements Part {}

  /**
   * A bracket.
   *
   * @param holds the id of what it holds
   */
  record Bracket(
      String id,
      String pointer,
      @Nullable String holds,
      Face face,
      @Nullable Amount along,
      @Nullable Amount up,
      @Nullable Amount width,
      @Nullable Amount height,
      @Nullable Amount depth,
      @Nullable Amount front,
      @Nullable Material material)
      implements Part {}

  /** A distribution panel. */
  record Panel(
      String id,
      String pointer,
      Face face,
      @Nullable Amount along,
      @Nullable Amount up,
      @Nullable Amount width,
      @Nullable Amount height,
      @Nullable Amount depth,
      @Nullable Mount mount,
      @Nullable Amount front,
      @Nullable Material material)
      implements Part {}

  /** A luminaire. */
  record Luminaire(
      String id,
      String pointer,
      Face face,
      @Nullable Amount along,
      @Nullable Amount up,
      @Nullable Amount width,
      @Nullable Amount height,
      @Nullable Amount depth,
      @Nullable Mount mount,
      @Nullable Amount front,
      @Nullable Material material)
      implements Part {}
}
