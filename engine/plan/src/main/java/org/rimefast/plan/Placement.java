package org.rimefast.plan;

import org.jspecify.annotations.Nullable;

/**
 * Where a part is on a face, how large it is and what it is made of. Null means not given.
 *
 * @param face the face it is on
 * @param along its middle, along the face
 * @param up its middle, up the face
 * @param width its extent along the face
 * @param height its extent up the face
 * @param depth its extent toward the shell
 * @param front where its room side is, as a depth from the studs' warm face toward the shell; null
 *     if its mount decides
 * @param material what it is made of
 */
public record Placement(
    Face face,
    @Nullable Amount along,
    @Nullable Amount up,
    @Nullable Amount width,
    @Nullable Amount height,
    @Nullable Amount depth,
    @Nullable Amount front,
    @Nullable Material material) {
  /** The same with its middle at another place of the face. */
  public Placement at(@Nullable Amount otherAlong, @Nullable Amount otherUp) {
    return new Placement(face, otherAlong, otherUp, width, height, depth, front, material);
  }
}
