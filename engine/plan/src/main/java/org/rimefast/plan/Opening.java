package org.rimefast.plan;

import org.jspecify.annotations.Nullable;

/**
 * A hole cut in the shell.
 *
 * @param id its id
 * @param pointer its JSON pointer
 * @param face the face it is in
 * @param from its left-hand edge, along the face
 * @param sill its lower edge, up the face
 * @param width its width, along the face
 * @param height its height, up the face
 * @param door the leaf in it; null if the plan gives none
 */
public record Opening(
    String id,
    String pointer,
    Face face,
    Amount from,
    Amount sill,
    Amount width,
    Amount height,
    @Nullable Door door)
    implements Element {
  /** An opening without a door leaf. */
  public Opening(
      String id, String pointer, Face face, Amount from, Amount sill, Amount width, Amount height) {
    this(id, pointer, face, from, sill, width, height, null);
  }
}
