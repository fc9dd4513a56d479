package org.rimefast.plan.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.function.IntConsumer;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.geometry.Contact.Body;

/** Finds what touches what; n log n for bodies that do not crowd. */
final class ContactFinder {
  private static final Comparator<Contact> ORDER =
      Comparator.<Contact, Contact.Kind>comparing(contact -> contact.a().kind())
          .thenComparing(contact -> contact.a().index())
          .thenComparing(contact -> contact.b().kind())
          .thenComparing(contact -> contact.b().index());

  private final ModuleGeometry geometry;
  private final RunGeometry runs;
  private final double distance;
  private final Predicate<Body> wanted;
  private final List<Contact> found = new ArrayList<>();

  ContactFinder(
      ModuleGeometry geometry, RunGeometry runs, double distance, Predicate<Body> wanted) {
    this.geometry = geometry;
    this.runs = runs;
    this.distance = distance;
    this.wanted = wanted;
  }

  List<Contact> find() {
    int parts = geometry.plan().parts().size();
    for (int part = 0; part < parts; part++) {
      if (wanted.test(Body.part(part))) {
        findForPart(part);
      }
    }
    for (int run = 0; run < geometry.plan().runs().size(); run++) {
      if (wanted.test(Body.run(run))) {
        findForRun(run);
      }
    }
    findRunsAtRuns();
    found.sort(ORDER);
    return List.copyOf(found);
  }

  private void findForPart(int part) {
    Body body = Body.part(part);
    if (geometry.clearance(part) <= distance) {
      ShellNearest shell = geometry.nearestShell(part);
      if (shell != null) {
        add(Body.SHELL, body, Lines.exchanged(shell.nearest()));
      }
    }
    geometry.partsWithin(
        part,
        distance,
        other -> {
          if (other > part && wanted.test(Body.part(other))) {
            add(body, Body.part(other), geometry.nearest(part, other));
          }
        });
  }

  private void findForRun(int run) {
    Body body = Body.run(run);
    if (geometry.runClearance(run) <= distance) {
      ShellNearest shell = geometry.runNearestShell(run);
      if (shell != null) {
        add(Body.SHELL, body, Lines.exchanged(shell.nearest()));
      }
    }
    geometry.partsNearRun(
        run,
        distance,
        part -> {
          Nearest nearest = wanted.test(Body.part(part)) ? geometry.runNearest(run, part) : null;
          if (nearest != null) {
            add(Body.part(part), body, Lines.exchanged(nearest));
          }
        });
  }

  /** Runs cross the whole module, so what is looked up are their segments. */
  private void findRunsAtRuns() {
    List<double[]> boxes = new ArrayList<>();
    List<Integer> owners = new ArrayList<>();
    for (int run = 0; run < geometry.plan().runs().size(); run++) {
      PlacedRun placed = runs.run(run);
      if (placed.isComplete() && wanted.test(Body.run(run))) {
        double[] line = placed.line();
        for (int i = 0; i + 5 < line.length; i += 3) {
          boxes.add(segmentBox(line, i, placed.radius()));
          owners.add(run);
        }
      }
    }
    double[] all = new double[6 * boxes.size()];
    int[] items = new int[boxes.size()];
    for (int i = 0; i < items.length; i++) {
      items[i] = i;
      System.arraycopy(boxes.get(i), 0, all, 6 * i, 6);
    }
    BoxTree tree = new BoxTree(all, items);
    TreeSet<Integer> near = new TreeSet<>();
    for (int i = 0; i < items.length; i++) {
      int run = owners.get(i);
      double[] box = boxes.get(i);
      IntConsumer note =
          other -> {
            if (owners.get(other) > run) {
              near.add(owners.get(other));
            }
          };
      tree.within(box[0], box[1], box[2], box[3], box[4], box[5], distance, note);
      if (i + 1 == items.length || owners.get(i + 1) != run) {
        for (int other : near) {
          if (geometry.gapBetweenRuns(run, other) <= distance) {
            add(Body.run(run), Body.run(other), geometry.nearestBetweenRuns(run, other));
          }
        }
        near.clear();
      }
    }
  }

  private static double[] segmentBox(double[] line, int i, double radius) {
    double[] box = new double[6];
    for (int axis = 0; axis < 3; axis++) {
      box[axis] = Math.min(line[i + axis], line[i + 3 + axis]) - radius;
      box[3 + axis] = Math.max(line[i + axis], line[i + 3 + axis]) + radius;
    }
    return box;
  }

  private void add(Body a, Body b, @Nullable Nearest nearest) {
    if (nearest != null) {
      found.add(new Contact(a, b, nearest.distance(), nearest.onElement()));
    }
  }
}
