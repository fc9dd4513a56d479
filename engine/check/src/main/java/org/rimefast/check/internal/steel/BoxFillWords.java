package org.rimefast.check.internal.steel;

import static org.rimefast.check.internal.steel.Kinds.property;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.HandleList;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.plan.Amount;
import org.rimefast.plan.BoxFittings;
import org.rimefast.plan.BoxFittings.Device;
import org.rimefast.plan.Part;

/** Words for what boxes hold. */
final class BoxFillWords {
  private BoxFillWords() {}

  static void addTo(Dictionary.Builder words) {
    words
        .number(
            property(Nouns.BOX, "volume", ElectricalKinds.VOLUME),
            (facts, element, arguments, reading) ->
                Given.read(fittings(facts, element).volume(), reading),
            (facts, element, arguments, out) ->
                Given.explain(facts, element, fittings(facts, element).volume(), "volume", out))
        .number(
            property(Nouns.BOX, "depth behind its strap", Kinds.LENGTH),
            BoxFillWords::behind,
            BoxFillWords::explainBehind)
        .relation(
            Kinds.verb(Nouns.BOX, "take _", "takes _", Kinds.element(Nouns.CONDUCTOR)),
            (facts, element, arguments) -> takes(facts, element, arguments.element(0)),
            BoxFillWords::taken,
            BoxFillWords::taking,
            BoxFillWords::explainTakes);
    devices(words, "number of devices", null);
    devices(words, "number of receptacles", Device.Kind.RECEPTACLE);
    devices(words, "number of switches", Device.Kind.SWITCH);
    count(
        words,
        "sets of clamps",
        "clamps",
        fittings -> fittings.clamps() == null ? null : fittings.clamps() ? 1 : 0);
    count(words, "number of fixture studs", "fixtureStuds", BoxFittings::fixtureStuds);
    count(words, "number of wire connectors", "wireConnectors", BoxFittings::wireConnectors);
  }

  private static BoxFittings fittings(PlanFacts facts, int box) {
    return ((Part.Box) facts.part(box)).fittings();
  }

  private static void devices(Dictionary.Builder words, String phrase, Device.@Nullable Kind kind) {
    words.number(
        property(Nouns.BOX, phrase, Kinds.COUNT),
        (facts, element, arguments, reading) -> {
          List<Device> devices = fittings(facts, element).devices();
          if (devices == null) {
            reading.missing();
            return;
          }
          int sum = 0;
          for (int i = 0; i < devices.size(); i++) {
            sum += kind == null || devices.get(i).kind() == kind ? devices.get(i).count() : 0;
          }
          reading.exactly(sum);
        },
        BoxFillWords::explainDevices);
  }

  private static void count(
      Dictionary.Builder words,
      String phrase,
      String field,
      Function<BoxFittings, @Nullable Integer> count) {
    words.number(
        property(Nouns.BOX, phrase, Kinds.COUNT),
        (facts, element, arguments, reading) -> {
          Integer known = count.apply(fittings(facts, element));
          reading.exactly(known == null ? Double.NaN : known);
        },
        (facts, element, arguments, out) ->
            Given.explain(facts, element, count.apply(fittings(facts, element)), field, out));
  }

  private static void explainDevices(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    Given.explain(facts, element, fittings(facts, element).devices(), "devices", out);
  }

  /** Whether a box feeds something: holds a device that is no switch. Unknown without a list. */
  static Truth isOutlet(PlanFacts facts, int box) {
    List<Device> devices = fittings(facts, box).devices();
    if (devices == null) {
      return Truth.UNKNOWN;
    }
    for (int i = 0; i < devices.size(); i++) {
      if (devices.get(i).kind() != Device.Kind.SWITCH && devices.get(i).count() > 0) {
        return Truth.TRUE;
      }
    }
    return Truth.FALSE;
  }

  /** How far the deepest device reaches behind its strap; nothing does in a box without devices. */
  private static void behind(PlanFacts facts, int element, Arguments arguments, Reading reading) {
    List<Device> devices = fittings(facts, element).devices();
    double least = devices == null ? Double.NaN : 0;
    double most = least;
    for (int i = 0; devices != null && i < devices.size(); i++) {
      Amount behind = devices.get(i).behind();
      // Math.max hands NaN on: one that is not given may reach farthest.
      least = Math.max(least, behind == null ? Double.NaN : behind.si() - behind.siTolerance());
      most = Math.max(most, behind == null ? Double.NaN : behind.si() + behind.siTolerance());
    }
    reading.between(least, most);
  }

  private static void explainBehind(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    explainDevices(facts, element, arguments, out);
    List<Device> devices = fittings(facts, element).devices();
    for (int i = 0; devices != null && i < devices.size(); i++) {
      if (devices.get(i).behind() == null) {
        out.missing(facts.missing(devices.get(i).pointer() + "/behind"));
      }
    }
  }

  /** A box takes the conductors of the runs that enter it. */
  private static Truth takes(PlanFacts facts, int box, int conductor) {
    Truth enters = Entries.enters(facts, facts.runOfConductor(conductor), box);
    return facts.conductor(conductor) == null ? enters.and(Truth.UNKNOWN) : enters;
  }

  private static void taken(
      PlanFacts facts, int element, Arguments arguments, HandleList candidates) {
    Entries entries = Entries.of(facts);
    for (int run : entries.runsAt(element)) {
      entries.conductors(facts, run, candidates);
    }
  }

  private static void taking(
      PlanFacts facts, int element, Arguments arguments, HandleList candidates) {
    if (facts.isConductor(element)) {
      for (int part : Entries.of(facts).partsOf(facts, facts.runOfConductor(element))) {
        candidates.add(part);
      }
    }
  }

  private static void explainTakes(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    int run = facts.runOfConductor(arguments.element(0));
    Entries.explain(facts, run, element, out);
    if (Entries.enters(facts, run, element) != Truth.FALSE) {
      RunMakeWords.explainConductors(facts, run, out);
    }
  }
}
