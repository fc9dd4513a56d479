package org.rimefast.plan;

import org.rimefast.plan.internal.json.Node.Structure;
import org.rimefast.plan.internal.json.TreeMaker;

/** A cable or conduit, while a plan is built. What is not given stays unknown. */
public final class RunBuilder {
  private final Structure item;

  RunBuilder(Structure item) {
    this.item = item;
  }

  /** Its outside diameter. */
  public RunBuilder diameter(double length) {
    BuilderValues.length(item, "diameter", length);
    return this;
  }

  /** Its outside diameter. */
  public RunBuilder diameter(String length) {
    TreeMaker.text(item, "diameter", length);
    return this;
  }

  /** The id of what its first end enters. */
  public RunBuilder from(String id) {
    TreeMaker.text(item, "from", id);
    return this;
  }

  /** The id of what its last end enters. */
  public RunBuilder to(String id) {
    TreeMaker.text(item, "to", id);
    return this;
  }

  /** The next point of its middle line. */
  public RunBuilder point(Face face, double along, double up, double depth) {
    Structure point = point(face);
    BuilderValues.length(point, "along", along);
    BuilderValues.length(point, "up", up);
    BuilderValues.length(point, "depth", depth);
    return this;
  }

  /** The next point of its middle line. */
  public RunBuilder point(Face face, String along, String up, String depth) {
    Structure point = point(face);
    TreeMaker.text(point, "along", along);
    TreeMaker.text(point, "up", up);
    TreeMaker.text(point, "depth", depth);
    return this;
  }

  private Structure point(Face face) {
    Structure point = TreeMaker.item(TreeMaker.sequenceOf(item, "path"));
    TreeMaker.text(point, "face", face.word());
    return point;
  }
}
