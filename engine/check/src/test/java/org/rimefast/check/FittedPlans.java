package org.rimefast.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.rimefast.plan.Amount;
import org.rimefast.plan.BoxFittings;
import org.rimefast.plan.BoxFittings.Device;
import org.rimefast.plan.Door;
import org.rimefast.plan.Foaming;
import org.rimefast.plan.Opening;
import org.rimefast.plan.Part;
import org.rimefast.plan.Plan;
import org.rimefast.plan.Run;
import org.rimefast.plan.RunBuild;
import org.rimefast.units.Quantity;
import org.rimefast.units.Rational;
import org.rimefast.units.Units;

/** Plans with devices, doors, a foam gun and connectors. */
final class FittedPlans {
  private FittedPlans() {}

  private static Plan with(
      Plan plan, List<Opening> openings, List<Part> parts, List<Run> runs, Foaming foaming) {
    return new Plan(
        plan.id(),
        plan.title(),
        plan.units(),
        plan.tolerances(),
        plan.room(),
        plan.site(),
        plan.shell(),
        plan.faces(),
        openings,
        parts,
        runs,
        plan.circuits(),
        foaming,
        plan.readings(),
        plan.source());
  }

  static Plan gun(Plan plan, int nozzle, int reach) {
    return with(
        plan,
        plan.openings(),
        plan.parts(),
        plan.runs(),
        new Foaming(millimetres(nozzle), millimetres(reach)));
  }

  private static Amount millimetres(int value) {
    return new Amount(new Quantity(Rational.of(value), Units.MILLIMETRE, value + " mm"), null);
  }

  static Plan doors(Plan plan, Map<String, Door> doors) {
    List<Opening> openings = new ArrayList<>();
    for (Opening each : plan.openings()) {
      openings.add(
          new Opening(
              each.id(),
              each.pointer(),
              each.face(),
              each.from(),
              each.sill(),
              each.width(),
              each.height(),
              doors.get(each.id())));
    }
    return with(plan, openings, plan.parts(), plan.runs(), plan.foaming());
  }

  /** Every box whose id is given holds one receptacle; of the others nothing is known. */
  static Plan receptacles(Plan plan, String... ids) {
    List<Part> parts = new ArrayList<>();
    for (Part each : plan.parts()) {
      parts.add(
          each instanceof Part.Box box && List.of(ids).contains(box.id())
              ? new Part.Box(
                  box.id(),
                  box.pointer(),
                  box.kind(),
                  box.size(),
                  box.placement(),
                  box.mount(),
                  new BoxFittings(
                      null,
                      List.of(
                          new Device(
                              box.pointer() + "/devices/0", Device.Kind.RECEPTACLE, 1, null)),
                      null,
                      null,
                      null))
              : each);
    }
    return with(plan, plan.openings(), parts, plan.runs(), plan.foaming());
  }

  /** What joins the last end of each run to what it enters. */
  static Plan connectors(Plan plan, Map<String, RunBuild.Connector> connectors) {
    List<Run> runs = new ArrayList<>();
    for (Run each : plan.runs()) {
      RunBuild.End end = new RunBuild.End(null, connectors.get(each.id()), null);
      runs.add(
          new Run(
              each.id(),
              each.pointer(),
              each.kind(),
              each.diameter(),
              each.path(),
              each.from(),
              each.to(),
              new RunBuild(null, null, null, null, null, null, RunBuild.End.UNKNOWN, end, null)));
    }
    return with(plan, plan.openings(), plan.parts(), runs, plan.foaming());
  }
}
