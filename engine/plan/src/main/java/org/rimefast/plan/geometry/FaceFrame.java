package org.rimefast.plan.geometry;

import org.rimefast.plan.Face;
import org.rimefast.plan.ShellSize;

/**
 * The coordinates of a face: {@code along} and {@code up} as plans give them, and {@code out}, the
 * distance from the plane of the inward ribs' crests toward the outside. All in millimetres.
 *
 * <p>Seen from inside, facing the front (+x), the left wall (y = 0) is on the left. Facing the left
 * wall, the rear end is therefore on the left: its {@code along} is x. Facing the right wall, the
 * front end is on the left: {@code along} is length - x. Facing the front wall, the left wall is on
 * the left: {@code along} is y; facing the rear wall it is on the right: {@code along} is width -
 * y.
 */
public final class FaceFrame {
  private final Face face;
  private final ShellSize shell;

  private FaceFrame(Face face, ShellSize shell) {
    this.face = face;
    this.shell = shell;
  }

  /** The coordinates of a face of a shell. */
  public static FaceFrame of(Face face, ShellSize shell) {
    return new FaceFrame(face, shell);
  }

  /** Which face. */
  public Face face() {
    return face;
  }

  /** How far the face extends along. */
  public double alongExtent() {
    return face == Face.FRONT || face == Face.REAR ? shell.width() : shell.length();
  }

  /** How far the face extends up; on roof and floor, across. */
  public double upExtent() {
    return face.isWall() ? shell.height() : shell.width();
  }

  /** The point of the module with these coordinates on the face. */
  public Point toModule(double along, double up, double out) {
    return switch (face) {
      case LEFT -> new Point(along, -out, up);
      case RIGHT -> new Point(shell.length() - along, shell.width() + out, up);
      case FRONT -> new Point(shell.length() + out, along, up);
      case REAR -> new Point(-out, shell.width() - along, up);
      case ROOF -> new Point(along, up, shell.height() + out);
      case FLOOR -> new Point(along, up, -out);
    };
  }

  /** The cuboid of the module that has these extents on the face. */
  public Cuboid toModule(
      double alongMin, double upMin, double outMin, double alongMax, double upMax, double outMax) {
    Point a = toModule(alongMin, upMin, outMin);
    Point b = toModule(alongMax, upMax, outMax);
    return new Cuboid(
        Math.min(a.x(), b.x()),
        Math.min(a.y(), b.y()),
        Math.min(a.z(), b.z()),
        Math.max(a.x(), b.x()),
        Math.max(a.y(), b.y()),
        Math.max(a.z(), b.z()));
  }

  /** Where a point of the module is along the face. */
  public double along(double x, double y) {
    return switch (face) {
      case LEFT, ROOF, FLOOR -> x;
      case RIGHT -> shell.length() - x;
      case FRONT -> y;
      case REAR -> shell.width() - y;
    };
  }

  /** Where a point of the module is up the face; on roof and floor, across. */
  public double up(double y, double z) {
    return face.isWall() ? z : y;
  }

  /** How far a point of the module lies outside the plane of the face's inward ribs. */
  public double out(double x, double y, double z) {
    return switch (face) {
      case LEFT -> -y;
      case RIGHT -> y - shell.width();
      case FRONT -> x - shell.length();
      case REAR -> -x;
      case ROOF -> z - shell.height();
      case FLOOR -> -z;
    };
  }

  /** Where along the module a point before an end wall is that lies inside its ribs by so much. */
  double toX(double in) {
    return face == Face.FRONT ? shell.length() - in : in;
  }

  /** Where across the module a point before a side wall is that lies inside its ribs by so much. */
  double toY(double in) {
    return face == Face.RIGHT ? shell.width() - in : in;
  }

  /** Which axis of the module (0 = x, 1 = y, 2 = z) runs along the face. */
  int alongAxis() {
    return face == Face.FRONT || face == Face.REAR ? 1 : 0;
  }

  /** Which axis of the module runs up the face. */
  int upAxis() {
    return face.isWall() ? 2 : 1;
  }

  /** Which axis of the module runs out of the face. */
  int outAxis() {
    return 3 - alongAxis() - upAxis();
  }
}
