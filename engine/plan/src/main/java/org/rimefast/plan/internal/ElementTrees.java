package org.rimefast.plan.internal;

import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.BoxFittings;
import org.rimefast.plan.Door;
import org.rimefast.plan.Element;
import org.rimefast.plan.Material;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Opening;
import org.rimefast.plan.Part;
import org.rimefast.plan.Products;
import org.rimefast.plan.internal.json.Node.Sequence;
import org.rimefast.plan.internal.json.Node.Structure;
import org.rimefast.plan.internal.json.TreeMaker;
import org.rimefast.units.Quantity;
import org.rimefast.units.Rational;

/** The JSON trees of openings and parts; equal items in a row become one with a repeat. */
final class ElementTrees {
  private final PlanTree tree;
  private final Structure root;

  ElementTrees(PlanTree tree, Structure root) {
    this.tree = tree;
    this.root = root;
  }

  void openings(List<Opening> openings) {
    int i = 0;
    while (i < openings.size()) {
      int end = endOfRow(openings, i);
      List<Opening> row = openings.subList(i, end);
      Repeat repeat =
          repeat(row, Opening::from, Opening::sill).filter(found -> isRow(row, found)).orElse(null);
      for (Opening opening : repeat == null ? row : row.subList(0, 1)) {
        Structure item = TreeMaker.item(TreeMaker.sequenceOf(root, "openings"));
        opening(item, opening, repeat);
      }
      i = end;
    }
  }

  private static boolean isRow(List<Opening> row, Repeat repeat) {
    Opening first = row.get(0);
    String id = rowId(first);
    return matches(
        row,
        (i, item) -> OpeningsReader.moved(first, Repeat.id(id, i + 1), repeat, i).equals(item));
  }

  private void opening(Structure item, Opening opening, @Nullable Repeat repeat) {
    TreeMaker.text(item, "id", repeat == null ? opening.id() : rowId(opening));
    TreeMaker.text(item, "face", opening.face().word());
    tree.length(item, "from", opening.from());
    tree.length(item, "sill", opening.sill());
    tree.length(item, "width", opening.width());
    tree.length(item, "height", opening.height());
    Door door = opening.door();
    if (door != null) {
      Structure made = TreeMaker.structure(item, "door");
      TreeMaker.text(made, "hinge", door.hinge().word());
      TreeMaker.text(made, "opens", door.opens().word());
    }
    if (repeat != null) {
      tree.repeat(item, repeat);
    }
  }

  void parts(List<Part> parts) {
    for (PartsReader.PartList list : PartsReader.PartList.values()) {
      List<Part> own = parts.stream().filter(part -> listOf(part) == list).toList();
      int i = 0;
      while (i < own.size()) {
        int end = endOfRow(own, i);
        List<Part> row = own.subList(i, end);
        Repeat repeat =
            repeat(row, Part::along, Part::up).filter(found -> isPartRow(row, found)).orElse(null);
        for (Part part : repeat == null ? row : row.subList(0, 1)) {
          Sequence sequence = TreeMaker.sequenceOf(root, list.field());
          part(TreeMaker.item(sequence), part, repeat);
        }
        i = end;
      }
    }
  }

  private static boolean isPartRow(List<Part> row, Repeat repeat) {
    Part first = row.get(0);
    String id = rowId(first);
    return matches(
        row, (i, item) -> PartCopy.moved(first, Repeat.id(id, i + 1), repeat, i).equals(item));
  }

  private static PartsReader.PartList listOf(Part part) {
    if (part instanceof Part.Stud) {
      return PartsReader.PartList.STUDS;
    }
    if (part instanceof Part.Track) {
      return PartsReader.PartList.TRACKS;
    }
    if (part instanceof Part.Box) {
      return PartsReader.PartList.BOXES;
    }
    if (part instanceof Part.Bar) {
      return PartsReader.PartList.BARS;
    }
    if (part instanceof Part.Bracket) {
      return PartsReader.PartList.BRACKETS;
    }
    return part instanceof Part.Panel
        ? PartsReader.PartList.PANELS
        : PartsReader.PartList.LUMINAIRES;
  }

  private void part(Structure item, Part part, @Nullable Repeat repeat) {
    TreeMaker.text(item, "id", repeat == null ? part.id() : rowId(part));
    Products.BoxSize size = null;
    if (part instanceof Part.Box box) {
      TreeMaker.text(item, "kind", box.kind().word());
      PlanTree.text(item, "size", box.size());
      size = box.size() == null ? null : Products.box(box.size()).orElse(null);
    }
    if (part instanceof Part.Bracket bracket) {
      PlanTree.text(item, "holds", bracket.holds());
    }
    TreeMaker.text(item, "face", part.face().word());
    tree.length(item, "along", part.along());
    tree.length(item, "up", part.up());
    own(item, "width", part.width(), size == null ? null : size.width());
    own(item, "height", part.height(), size == null ? null : size.height());
    own(item, "depth", part.depth(), size == null ? null : size.depth());
    tree.length(item, "front", part.front());
    Mount mount = part instanceof Part.Electrical electrical ? electrical.mount() : null;
    PlanTree.text(item, "mount", mount == null ? null : mount.word());
    Material material = part.material();
    PlanTree.text(item, "material", material == null ? null : material.word());
    if (part instanceof Part.Stud stud) {
      stud(item, stud);
    }
    if (part instanceof Part.Box box) {
      fittings(item, box.fittings(), size);
    }
    if (repeat != null) {
      tree.repeat(item, repeat);
    }
  }

  private void stud(Structure item, Part.Stud stud) {
    if (stud.section() != null && !stud.section().equals(tree.studOf(stud.face()))) {
      tree.stud(item, "section", stud.section());
    }
    for (Part.ServiceHole hole : stud.holes()) {
      Structure made = TreeMaker.item(TreeMaker.sequenceOf(item, "holes"));
      tree.length(made, "up", hole.up());
      tree.length(made, "width", hole.width());
      tree.length(made, "height", hole.height());
      Boolean insert = hole.insert();
      PlanTree.text(made, "insert", insert == null ? null : Names.wordOf(Names.INSERTS, insert));
      tree.length(made, "plate", hole.plate());
    }
  }

  private void fittings(Structure item, BoxFittings fittings, Products.@Nullable BoxSize size) {
    Amount volume = fittings.volume();
    if (size == null || !new Amount(size.volume(), null).equals(volume)) {
      PlanTree.quantity(item, "volume", volume);
    }
    List<BoxFittings.Device> devices = fittings.devices();
    if (devices != null) {
      Sequence list = TreeMaker.sequenceOf(item, "devices");
      for (BoxFittings.Device device : devices) {
        Structure made = TreeMaker.item(list);
        TreeMaker.text(made, "kind", device.kind().word());
        if (device.count() != 1) {
          TreeMaker.number(made, "count", Integer.toString(device.count()));
        }
        tree.length(made, "behind", device.behind());
      }
    }
    Boolean clamps = fittings.clamps();
    PlanTree.text(item, "clamps", clamps == null ? null : Names.wordOf(Names.CLAMPS, clamps));
    count(item, "fixtureStuds", fittings.fixtureStuds());
    count(item, "wireConnectors", fittings.wireConnectors());
  }

  private static void count(Structure item, String name, @Nullable Integer count) {
    if (count != null) {
      TreeMaker.number(item, name, Integer.toString(count));
    }
  }

  /** A length, unless the product's size already says it. */
  private void own(
      Structure item, String name, @Nullable Amount amount, @Nullable Quantity product) {
    if (amount != null && (product == null || !amount.equals(new Amount(product, null)))) {
      tree.length(item, name, amount);
    }
  }

  /** Where the run of items that stem from the same item of a plan ends. */
  private static int endOfRow(List<? extends Element> items, int first) {
    int end = first + 1;
    while (end < items.size() && items.get(end).pointer().equals(items.get(first).pointer())) {
      end++;
    }
    return end;
  }

  private static String rowId(Element first) {
    return first.id().substring(0, first.id().length() - 2);
  }

  /** The repeat that the first two items suggest. */
  private static <T extends Element> Optional<Repeat> repeat(
      List<T> row,
      java.util.function.Function<T, @Nullable Amount> along,
      java.util.function.Function<T, @Nullable Amount> up) {
    if (row.size() < 2 || !row.get(0).id().endsWith("-1") || row.get(0).id().length() < 3) {
      return Optional.empty();
    }
    Rational sideways = step(along.apply(row.get(0)), along.apply(row.get(1)));
    Rational upward = step(up.apply(row.get(0)), up.apply(row.get(1)));
    if (sideways.signum() > 0) {
      return Optional.of(new Repeat(row.size(), sideways, false));
    }
    return upward.signum() > 0
        ? Optional.of(new Repeat(row.size(), upward, true))
        : Optional.empty();
  }

  private static Rational step(@Nullable Amount from, @Nullable Amount to) {
    return from == null || to == null ? Rational.ZERO : to.value().si().minus(from.value().si());
  }

  private static <T> boolean matches(List<T> row, BiPredicate<Integer, T> test) {
    for (int i = 0; i < row.size(); i++) {
      if (!test.test(i, row.get(i))) {
        return false;
      }
    }
    return true;
  }
}
