package org.rimefast.plan;

import java.util.List;
import java.util.function.Consumer;
import org.rimefast.plan.internal.json.Node;
import org.rimefast.plan.internal.json.Node.Structure;
import org.rimefast.plan.internal.json.TreeMaker;

/**
 * One part, or a row of equal ones, while a plan is built. What is not given stays unknown. A value
 * that its kind of part does not have, such as a mount of a bar, is a fault of the built plan.
 */
public final class PartBuilder {
  private final Structure item;

  PartBuilder(Structure item) {
    this.item = item;
  }

  /** Its middle, along the face. */
  public PartBuilder along(double length) {
    BuilderValues.length(item, "along", length);
    return this;
  }

  /** Its middle, along the face. */
  public PartBuilder along(String length) {
    TreeMaker.text(item, "along", length);
    return this;
  }

  /** Its middle, up the face. */
  public PartBuilder up(double length) {
    BuilderValues.length(item, "up", length);
    return this;
  }

  /** Its middle, up the face. */
  public PartBuilder up(String length) {
    TreeMaker.text(item, "up", length);
    return this;
  }

  /** Its extent along the face. */
  public PartBuilder width(double length) {
    BuilderValues.length(item, "width", length);
    return this;
  }

  /** Its extent along the face. */
  public PartBuilder width(String length) {
    TreeMaker.text(item, "width", length);
    return this;
  }

  /** Its extent up the face. */
  public PartBuilder height(double length) {
    BuilderValues.length(item, "height", length);
    return this;
  }

  /** Its extent up the face. */
  public PartBuilder height(String length) {
    TreeMaker.text(item, "height", length);
    return this;
  }

  /** Its extent toward the shell. */
  public PartBuilder depth(double length) {
    BuilderValues.length(item, "depth", length);
    return this;
  }

  /** Its extent toward the shell. */
  public PartBuilder depth(String length) {
    TreeMaker.text(item, "depth", length);
    return this;
  }

  /** Where its room side is, as a depth from the studs' warm face toward the shell. */
  public PartBuilder front(double length) {
    BuilderValues.length(item, "front", length);
    return this;
  }

  /** Where its room side is, as a depth from the studs' warm face toward the shell. */
  public PartBuilder front(String length) {
    TreeMaker.text(item, "front", length);
    return this;
  }

  /** What it is made of. */
  public PartBuilder material(Material material) {
    TreeMaker.text(item, "material", material.word());
    return this;
  }

  /** How a box, panel or luminaire stands to the lining. */
  public PartBuilder mount(Mount mount) {
    TreeMaker.text(item, "mount", mount.word());
    return this;
  }

  /** The trade size of a box; see {@link Products#boxNames}. */
  public PartBuilder size(String size) {
    TreeMaker.text(item, "size", size);
    return this;
  }

  /** The volume marked on a box: {@code 18 in3}. */
  public PartBuilder volume(String volume) {
    TreeMaker.text(item, "volume", volume);
    return this;
  }

  /** Devices in a box, each on a strap of its own. */
  public PartBuilder devices(BoxFittings.Device.Kind kind, int count) {
    device(kind, count);
    return this;
  }

  /** Devices in a box, each on a strap of its own, and how far they reach behind it. */
  public PartBuilder devices(BoxFittings.Device.Kind kind, int count, double behind) {
    BuilderValues.length(device(kind, count), "behind", behind);
    return this;
  }

  /** Devices in a box, each on a strap of its own, and how far they reach behind it. */
  public PartBuilder devices(BoxFittings.Device.Kind kind, int count, String behind) {
    TreeMaker.text(device(kind, count), "behind", behind);
    return this;
  }

  /** A box is known to hold no devices. */
  public PartBuilder noDevices() {
    TreeMaker.sequenceOf(item, "devices");
    return this;
  }

  /** Whether clamps inside a box hold its cables. */
  public PartBuilder clamps(boolean internal) {
    TreeMaker.text(item, "clamps", internal ? "internal" : "none");
    return this;
  }

  /** How many luminaire studs and hickeys a box holds. */
  public PartBuilder fixtureStuds(int count) {
    TreeMaker.number(item, "fixtureStuds", Integer.toString(count));
    return this;
  }

  /** How many capped wire connectors a box holds. */
  public PartBuilder wireConnectors(int count) {
    TreeMaker.number(item, "wireConnectors", Integer.toString(count));
    return this;
  }

  /** The id of what a bracket holds. */
  public PartBuilder holds(String id) {
    TreeMaker.text(item, "holds", id);
    return this;
  }

  /** The designation of a stud that differs from its face's. */
  public PartBuilder section(String designation) {
    TreeMaker.text(item, "section", designation);
    return this;
  }

  /** A service hole of a stud: its middle up the face, across the web, along the stud. */
  public PartBuilder hole(double up, double width, double height) {
    Structure hole = hole();
    BuilderValues.length(hole, "up", up);
    BuilderValues.length(hole, "width", width);
    BuilderValues.length(hole, "height", height);
    return this;
  }

  /** A service hole of a stud: its middle up the face, across the web, along the stud. */
  public PartBuilder hole(String up, String width, String height) {
    Structure hole = hole();
    TreeMaker.text(hole, "up", up);
    TreeMaker.text(hole, "width", width);
    TreeMaker.text(hole, "height", height);
    return this;
  }

  /** A service hole of a stud, and what is fitted to it. */
  public PartBuilder hole(double up, double width, double height, Consumer<HoleBuilder> build) {
    hole(up, width, height);
    build.accept(new HoleBuilder(lastHole()));
    return this;
  }

  /** A service hole of a stud, and what is fitted to it. */
  public PartBuilder hole(String up, String width, String height, Consumer<HoleBuilder> build) {
    hole(up, width, height);
    build.accept(new HoleBuilder(lastHole()));
    return this;
  }

  /** A row along the face, of which the values above are those of the first one. */
  public PartBuilder repeat(int count, double spacing) {
    BuilderValues.length(row(count), "spacing", spacing);
    return this;
  }

  /** A row along the face, of which the values above are those of the first one. */
  public PartBuilder repeat(int count, String spacing) {
    TreeMaker.text(row(count), "spacing", spacing);
    return this;
  }

  /** A row up the face, of which the values above are those of the first one. */
  public PartBuilder repeatUp(int count, double spacing) {
    Structure row = row(count);
    BuilderValues.length(row, "spacing", spacing);
    TreeMaker.text(row, "direction", "up");
    return this;
  }

  /** A row up the face, of which the values above are those of the first one. */
  public PartBuilder repeatUp(int count, String spacing) {
    Structure row = row(count);
    TreeMaker.text(row, "spacing", spacing);
    TreeMaker.text(row, "direction", "up");
    return this;
  }

  private Structure lastHole() {
    List<Node> holes = TreeMaker.sequenceOf(item, "holes").items();
    return (Structure) holes.get(holes.size() - 1);
  }

  private Structure device(BoxFittings.Device.Kind kind, int count) {
    Structure device = TreeMaker.item(TreeMaker.sequenceOf(item, "devices"));
    TreeMaker.text(device, "kind", kind.word());
    TreeMaker.number(device, "count", Integer.toString(count));
    return device;
  }

  private Structure hole() {
    return TreeMaker.item(TreeMaker.sequenceOf(item, "holes"));
  }

  private Structure row(int count) {
    Structure row = TreeMaker.structure(item, "repeat");
    TreeMaker.number(row, "count", Integer.toString(count));
    return row;
  }
}
