package org.rimefast.plan.internal;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Products;
import org.rimefast.plan.Run;
import org.rimefast.plan.RunBuild;
import org.rimefast.plan.RunBuild.Conductors;
import org.rimefast.plan.internal.json.Node.Sequence;
import org.rimefast.plan.internal.json.Node.Structure;
import org.rimefast.plan.internal.json.TreeMaker;

/** The JSON trees of runs. */
final class RunTrees {
  private final PlanTree tree;

  RunTrees(PlanTree tree) {
    this.tree = tree;
  }

  void run(Structure node, Run run) {
    RunBuild build = run.build();
    TreeMaker.text(node, "id", run.id());
    TreeMaker.text(node, "kind", run.kind().word());
    RunBuild.Armour armour = build.armour();
    PlanTree.text(node, "armour", armour == null ? null : armour.word());
    across(node, run);
    tree.length(node, "bendRadius", build.bendRadius());
    PlanTree.text(node, "circuit", build.circuit());
    PlanTree.text(node, "from", run.from());
    end(node, "from", build.first());
    PlanTree.text(node, "to", run.to());
    end(node, "to", build.last());
    conductors(node, build.conductors());
    List<Amount> supports = build.supports();
    if (supports != null) {
      Sequence list = TreeMaker.sequenceOf(node, "supports");
      supports.forEach(place -> tree.length(list, place));
    }
    slack(node, build);
    path(node, run.path());
  }

  /** Diameter and bore, or the trade size that gives them. */
  private void across(Structure node, Run run) {
    Amount diameter = run.diameter();
    Amount bore = run.build().bore();
    Products.EmtSize size =
        run.kind() == Run.Kind.EMT && diameter != null && bore != null ? sizeOf(bore) : null;
    if (size == null) {
      tree.length(node, "diameter", diameter);
      tree.length(node, "bore", bore);
      return;
    }
    TreeMaker.text(node, "size", size.name());
    if (!new Amount(size.diameter(), null).equals(diameter)) {
      tree.length(node, "diameter", diameter);
    }
  }

  private static Products.@Nullable EmtSize sizeOf(Amount bore) {
    for (String name : Products.emtNames()) {
      Products.EmtSize size = Products.emt(name).orElse(null);
      if (size != null && new Amount(size.bore(), null).equals(bore)) {
        return size;
      }
    }
    return null;
  }

  private static void end(Structure node, String name, RunBuild.End end) {
    RunBuild.Side side = end.side();
    RunBuild.Connector connector = end.connector();
    PlanTree.text(node, name + "Side", side == null ? null : side.word());
    PlanTree.text(node, name + "Connector", connector == null ? null : connector.word());
  }

  private static void conductors(Structure node, @Nullable List<Conductors> groups) {
    if (groups == null) {
      return;
    }
    Sequence list = TreeMaker.sequenceOf(node, "conductors");
    for (Conductors group : groups) {
      Structure made = TreeMaker.item(list);
      TreeMaker.text(made, "size", group.gauge() + " AWG");
      if (group.count() != 1) {
        TreeMaker.number(made, "count", Integer.toString(group.count()));
      }
      if (group.use() != Conductors.Use.CURRENT_CARRYING) {
        TreeMaker.text(made, "use", group.use().word());
      }
      PlanTree.quantity(made, "rating", group.rating());
    }
  }

  private void slack(Structure node, RunBuild build) {
    Amount from = build.first().slack();
    Amount to = build.last().slack();
    Amount corners = build.cornerSlack();
    if (from != null || to != null || corners != null) {
      Structure made = TreeMaker.structure(node, "slack");
      tree.length(made, "from", from);
      tree.length(made, "to", to);
      tree.length(made, "corners", corners);
    }
  }

  private void path(Structure node, List<Run.PathPoint> points) {
    Sequence path = TreeMaker.sequenceOf(node, "path");
    for (Run.PathPoint point : points) {
      Structure made = TreeMaker.item(path);
      TreeMaker.text(made, "face", point.face().word());
      tree.length(made, "along", point.along());
      tree.length(made, "up", point.up());
      tree.length(made, "depth", point.depth());
      tree.length(made, "bend", point.bend());
    }
  }
}
