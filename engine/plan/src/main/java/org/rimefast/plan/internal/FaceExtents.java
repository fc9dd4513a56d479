package org.rimefast.plan.internal;

import org.rimefast.plan.Face;
import org.rimefast.plan.ShellSize;

/**
 * How far a face reaches, in millimetres.
 *
 * @param along along the face
 * @param up up the face; across it on roof and floor
 */
record FaceExtents(double along, double up) {
  static FaceExtents of(Face face, ShellSize shell) {
    return switch (face) {
      case LEFT, RIGHT -> new FaceExtents(shell.length(), shell.height());
      case FRONT, REAR -> new FaceExtents(shell.width(), shell.height());
      case ROOF, FLOOR -> new FaceExtents(shell.length(), shell.width());
    };
  }
}
