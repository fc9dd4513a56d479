package org.rimefast.check.internal.steel;

import java.util.List;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.Neighbours;
import org.rimefast.check.PlanFacts;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.plan.Face;
import org.rimefast.plan.Part;
import org.rimefast.plan.Run;
import org.rimefast.plan.RunBuild.End;
import org.rimefast.plan.geometry.MetalContacts;
import org.rimefast.plan.geometry.RunsInSpace;

/** Words for how cold travels through metal. */
final class MetalWords {
  private static final PlanFacts.Key<MetalContacts> CONTACTS =
      new PlanFacts.Key<>("metal contacts", MetalContacts.class);
  private static final Face[] FACES = Face.values();
  private static final String BASE = "lead over metal to _";
  private static final String THIRD = "leads over metal to _";
  private static final String WITHOUT = " without passing _";

  private MetalWords() {}

  static void addTo(Dictionary.Builder words) {
    words
        .chain(
            Kinds.verb(Nouns.ITEM, BASE, THIRD, Kinds.element(Nouns.FACE)),
            MetalWords::next,
            MetalWords::explain)
        .chain(
            new Relation(
                "item." + BASE + WITHOUT,
                Relation.Form.VERB,
                BASE + WITHOUT,
                THIRD + WITHOUT,
                Nouns.ITEM,
                List.of(Kinds.element(Nouns.FACE), new Slot.Kind(Nouns.ITEM))),
            MetalWords::next,
            MetalWords::explain);
  }

  /**
   * Metal that an item is joined to, and the faces whose steel it touches; a face leads no further.
   * Parts and runs have the same numbers as handles and in the contacts.
   */
  private static void next(PlanFacts facts, int element, Neighbours found) {
    if (facts.isFace(element)) {
      return;
    }
    MetalContacts contacts = facts.keep(CONTACTS, each -> MetalContacts.of(each.geometry()));
    contacts.certain(element, found.certain());
    contacts.possible(element, found.possible());
    for (Face face : FACES) {
      if (contacts.certainlyTouches(element, face)) {
        found.add(facts.handleOf(face));
      } else if (contacts.mayTouch(element, face)) {
        found.addPossible(facts.handleOf(face));
      }
    }
  }

  /** Why one step is not certain: a material, a connector, or a place. */
  private static void explain(PlanFacts facts, int from, int to, Explanation out) {
    explainMaterial(facts, from, out);
    if (facts.isFace(to)) {
      ShellWords.explainSheet(facts, from, facts.face(to), out);
      return;
    }
    explainMaterial(facts, to, out);
    int run = facts.isRun(from) ? from : to;
    int part = facts.isRun(from) ? to : from;
    if (facts.isRun(run) && facts.isPart(part)) {
      Run given = facts.run(run);
      String id = facts.part(part).id();
      boolean first = id.equals(given.from());
      boolean last = id.equals(given.to());
      explainConnector(facts, run, first, given.build().first(), "fromConnector", out);
      explainConnector(facts, run, last, given.build().last(), "toConnector", out);
      if (first || last) {
        return;
      }
      explainInserts(facts, run, part, out);
    }
    GapWords.explain(facts, from, to, out);
  }

  /**
   * Where a run passes through a stud, the bushing of the hole matters, if the plan tells of it.
   */
  private static void explainInserts(PlanFacts facts, int run, int part, Explanation out) {
    if (facts.part(part) instanceof Part.Stud stud) {
      RunsInSpace runs = facts.geometry().runs();
      for (int i = 0; i < runs.passCount(facts.runIndex(run), part); i++) {
        int hole = runs.pass(facts.runIndex(run), part, i).hole();
        if (hole >= 0 && stud.holes().get(hole).insert() == null) {
          out.missing(facts.missing(stud.holes().get(hole).pointer() + "/insert"));
        }
      }
    }
  }

  private static void explainConnector(
      PlanFacts facts, int run, boolean enters, End end, String field, Explanation out) {
    if (enters) {
      Given.explain(facts, run, end.connector(), field, out);
    }
  }

  private static void explainMaterial(PlanFacts facts, int item, Explanation out) {
    if (facts.isPart(item)) {
      Given.explain(facts, item, facts.part(item).material(), "material", out);
    }
  }
}
