package org.rimefast.plan;

import java.util.List;
import org.rimefast.plan.internal.json.Node;
import org.rimefast.plan.internal.json.Node.Sequence;
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

  /** The form of its armour, if it is a cable that has one. */
  public RunBuilder armour(RunBuild.Armour armour) {
    TreeMaker.text(item, "armour", armour.word());
    return this;
  }

  /** Inside diameter of a conduit. */
  public RunBuilder bore(double length) {
    BuilderValues.length(item, "bore", length);
    return this;
  }

  /** Inside diameter of a conduit. */
  public RunBuilder bore(String length) {
    TreeMaker.text(item, "bore", length);
    return this;
  }

  /** The trade size of electrical metallic tubing; see {@link Products#emtNames}. */
  public RunBuilder size(String size) {
    TreeMaker.text(item, "size", size);
    return this;
  }

  /** Radius of its bends to their inner edge, where a point has none of its own. */
  public RunBuilder bendRadius(double length) {
    BuilderValues.length(item, "bendRadius", length);
    return this;
  }

  /** Radius of its bends to their inner edge, where a point has none of its own. */
  public RunBuilder bendRadius(String length) {
    TreeMaker.text(item, "bendRadius", length);
    return this;
  }

  /** The id of the circuit that it belongs to. */
  public RunBuilder circuit(String id) {
    TreeMaker.text(item, "circuit", id);
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

  /** The side by which its first end enters. */
  public RunBuilder fromSide(RunBuild.Side side) {
    TreeMaker.text(item, "fromSide", side.word());
    return this;
  }

  /** The side by which its last end enters. */
  public RunBuilder toSide(RunBuild.Side side) {
    TreeMaker.text(item, "toSide", side.word());
    return this;
  }

  /** What joins its first end to what it enters. */
  public RunBuilder fromConnector(RunBuild.Connector connector) {
    TreeMaker.text(item, "fromConnector", connector.word());
    return this;
  }

  /** What joins its last end to what it enters. */
  public RunBuilder toConnector(RunBuild.Connector connector) {
    TreeMaker.text(item, "toConnector", connector.word());
    return this;
  }

  /** Current-carrying conductors, such as two of {@code 12 AWG}. */
  public RunBuilder conductors(String size, int count) {
    group(size, count);
    return this;
  }

  /** Conductors and what they are for. */
  public RunBuilder conductors(String size, int count, RunBuild.Conductors.Use use) {
    TreeMaker.text(group(size, count), "use", use.word());
    return this;
  }

  /**
   * Conductors, what they are for and the temperature that their insulation is rated for.
   *
   * @param rating for example {@code 90 degC}
   */
  public RunBuilder conductors(String size, int count, RunBuild.Conductors.Use use, String rating) {
    Structure group = group(size, count);
    TreeMaker.text(group, "use", use.word());
    TreeMaker.text(group, "rating", rating);
    return this;
  }

  /** It is known to hold no conductors, as an empty conduit. */
  public RunBuilder noConductors() {
    TreeMaker.sequenceOf(item, "conductors");
    return this;
  }

  /** Where straps hold it, along its middle line from its first end; none if none is given. */
  public RunBuilder supports(double... lengths) {
    Sequence supports = TreeMaker.sequenceOf(item, "supports");
    for (double length : lengths) {
      BuilderValues.length(supports, length);
    }
    return this;
  }

  /** Where straps hold it, along its middle line from its first end. */
  public RunBuilder supports(List<String> lengths) {
    Sequence supports = TreeMaker.sequenceOf(item, "supports");
    lengths.forEach(length -> TreeMaker.text(supports, length));
    return this;
  }

  /** Length to spare at its first end, inside what it enters. */
  public RunBuilder fromSlack(double length) {
    BuilderValues.length(TreeMaker.structureOf(item, "slack"), "from", length);
    return this;
  }

  /** Length to spare at its first end, inside what it enters. */
  public RunBuilder fromSlack(String length) {
    TreeMaker.text(TreeMaker.structureOf(item, "slack"), "from", length);
    return this;
  }

  /** Length to spare at its last end, inside what it enters. */
  public RunBuilder toSlack(double length) {
    BuilderValues.length(TreeMaker.structureOf(item, "slack"), "to", length);
    return this;
  }

  /** Length to spare at its last end, inside what it enters. */
  public RunBuilder toSlack(String length) {
    TreeMaker.text(TreeMaker.structureOf(item, "slack"), "to", length);
    return this;
  }

  /** Length to spare at each inside corner that it rounds. */
  public RunBuilder cornerSlack(double length) {
    BuilderValues.length(TreeMaker.structureOf(item, "slack"), "corners", length);
    return this;
  }

  /** Length to spare at each inside corner that it rounds. */
  public RunBuilder cornerSlack(String length) {
    TreeMaker.text(TreeMaker.structureOf(item, "slack"), "corners", length);
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

  /** The next point of its middle line, and the radius of its bend there to the inner edge. */
  public RunBuilder point(Face face, double along, double up, double depth, double bend) {
    point(face, along, up, depth);
    BuilderValues.length(lastPoint(), "bend", bend);
    return this;
  }

  /** The next point of its middle line, and the radius of its bend there to the inner edge. */
  public RunBuilder point(Face face, String along, String up, String depth, String bend) {
    point(face, along, up, depth);
    TreeMaker.text(lastPoint(), "bend", bend);
    return this;
  }

  private Structure lastPoint() {
    List<Node> points = TreeMaker.sequenceOf(item, "path").items();
    return (Structure) points.get(points.size() - 1);
  }

  private Structure group(String size, int count) {
    Structure group = TreeMaker.item(TreeMaker.sequenceOf(item, "conductors"));
    TreeMaker.text(group, "size", size);
    TreeMaker.number(group, "count", Integer.toString(count));
    return group;
  }

  private Structure point(Face face) {
    Structure point = TreeMaker.item(TreeMaker.sequenceOf(item, "path"));
    TreeMaker.text(point, "face", face.word());
    return point;
  }
}
