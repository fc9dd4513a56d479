package org.rimefast.plan.geometry;

import java.util.HashMap;
import java.util.Map;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Face;
import org.rimefast.plan.Material;
import org.rimefast.plan.Part;
import org.rimefast.plan.Plan;
import org.rimefast.plan.Run;
import org.rimefast.plan.RunBuild.Connector;
import org.rimefast.plan.RunBuild.End;

/**
 * What metal is joined to what, as cold travels: metal items that touch, metal runs and the metal
 * parts that they enter, and the faces whose steel an item touches. Items are numbered: parts by
 * their index, then runs, the first of which follows the last part.
 *
 * <p>A join is certain, or possible: if a material, a place or a connector is not given, or if only
 * a tolerance could close the gap. A run is joined to a part that it enters by its connector there,
 * and by nothing else: a metal one joins them however far apart they are drawn, and an insulating
 * one keeps them apart even where they are drawn in contact. A run that passes through a service
 * hole of a stud is kept off it by a bushing; a hole of which it is not said whether it has one may
 * join them.
 *
 * <p>Immutable, worked out once: n log n for items that do not crowd.
 */
public final class MetalContacts {
  private static final Face[] FACES = Face.values();
  private static final double ROUNDING = 1e-6;
  private static final byte NO = 0;
  private static final byte POSSIBLE = 1;
  private static final byte CERTAIN = 2;

  private final ModuleGeometry geometry;
  private final Plan plan;
  private final int parts;
  private final byte[] metal;
  private final int[][] certain;
  private final int[][] possible;
  private final byte[] steel; // by item, then face

  private MetalContacts(ModuleGeometry geometry) {
    this.geometry = geometry;
    this.plan = geometry.plan();
    this.parts = plan.parts().size();
    int count = parts + plan.runs().size();
    this.metal = new byte[count];
    this.certain = new int[count][];
    this.possible = new int[count][];
    this.steel = new byte[count * FACES.length];
    for (int item = 0; item < count; item++) {
      metal[item] = metal(item);
    }
    PossibleBoxes boxes = new PossibleBoxes(geometry);
    IndexList[] entered = entered();
    Finder finder = new Finder(boxes);
    for (int item = 0; item < count; item++) {
      finder.find(item, entered[item]);
      workOutSteel(item, boxes);
    }
  }

  /** The metal contacts of a module. */
  public static MetalContacts of(ModuleGeometry geometry) {
    return new MetalContacts(geometry);
  }

  /** Reports the items to which an item is certainly joined, each once. */
  public void certain(int item, IntConsumer found) {
    report(certain[item], found);
  }

  /** Reports the items to which it may be joined, each once. */
  public void possible(int item, IntConsumer found) {
    report(possible[item], found);
  }

  private static void report(int[] items, IntConsumer found) {
    for (int item : items) {
      found.accept(item);
    }
  }

  /** True if an item is metal and touches the steel of a face. */
  public boolean certainlyTouches(int item, Face face) {
    return steel[FACES.length * item + face.ordinal()] == CERTAIN;
  }

  /** True if it may be metal and touch the steel of a face. */
  public boolean mayTouch(int item, Face face) {
    return steel[FACES.length * item + face.ordinal()] != NO;
  }

  private byte metal(int item) {
    if (item >= parts) {
      return plan.runs().get(item - parts).kind().isMetal() ? CERTAIN : NO;
    }
    Material material = plan.parts().get(item).material();
    return material == null ? POSSIBLE : material.isMetal() ? CERTAIN : NO;
  }

  /** What each item enters or is entered by. */
  private IndexList[] entered() {
    Map<String, Integer> byId = new HashMap<>();
    for (int part = 0; part < parts; part++) {
      byId.put(plan.parts().get(part).id(), part);
    }
    IndexList[] entered = new IndexList[metal.length];
    for (int i = 0; i < entered.length; i++) {
      entered[i] = new IndexList();
    }
    for (int run = 0; run < plan.runs().size(); run++) {
      Run given = plan.runs().get(run);
      for (String id : new @Nullable String[] {given.from(), given.to()}) {
        Integer part = id == null ? null : byId.get(id);
        if (part != null) {
          entered[parts + run].accept(part);
          entered[part].accept(parts + run);
        }
      }
    }
    return entered;
  }

  /** Finds what one item after another is joined to. */
  private final class Finder implements IntConsumer {
    private final PossibleBoxes boxes;
    private final int[] seen = new int[metal.length];
    private IndexList sure = new IndexList();
    private IndexList unsure = new IndexList();
    private int item;

    Finder(PossibleBoxes boxes) {
      this.boxes = boxes;
    }

    void find(int next, IndexList entered) {
      item = next;
      sure = new IndexList();
      unsure = new IndexList();
      seen[item] = item + 1;
      if (metal[item] != NO) {
        IntConsumer ofBox = box -> accept(boxes.body(box));
        for (int box = boxes.first(item); box < boxes.first(item + 1); box++) {
          boxes.near(box, geometry.contactTolerance() + ROUNDING, ofBox);
        }
        entered.inOrder(this);
      }
      certain[item] = sure.toArray();
      possible[item] = unsure.toArray();
    }

    @Override
    public void accept(int other) {
      if (seen[other] == item + 1) {
        return;
      }
      seen[other] = item + 1;
      byte joined = joined(item, other);
      if (joined == CERTAIN) {
        sure.accept(other);
      } else if (joined == POSSIBLE) {
        unsure.accept(other);
      }
    }
  }

  private byte joined(int a, int b) {
    byte most = least(metal[a], metal[b]);
    if (most == NO) {
      return NO;
    }
    int part = Math.min(a, b);
    int run = Math.max(a, b) - parts;
    if (part < parts && run >= 0) {
      Run given = plan.runs().get(run);
      String id = plan.parts().get(part).id();
      boolean first = id.equals(given.from());
      boolean last = id.equals(given.to());
      if (first || last) {
        byte atFirst = first ? connected(given.build().first()) : NO;
        byte atLast = last ? connected(given.build().last()) : NO;
        return least(most, (byte) Math.max(atFirst, atLast));
      }
    }
    if (part < parts && run >= 0 && plan.parts().get(part) instanceof Part.Stud stud) {
      return least(most, inHole(run, part, stud));
    }
    return least(most, touching(a, b));
  }

  /** A bushing keeps a run that passes through a service hole off the metal of the stud. */
  private byte inHole(int run, int part, Part.Stud stud) {
    byte joined = touching(part, parts + run);
    byte through = NO;
    int count = geometry.runs().passCount(run, part);
    for (int i = 0; i < count; i++) {
      StudPass pass = geometry.runs().pass(run, part, i);
      if (pass.inHole() == Certainty.NO) {
        return joined;
      }
      Boolean insert = stud.holes().get(pass.hole()).insert();
      byte here =
          pass.inHole() == Certainty.POSSIBLE || insert == null ? POSSIBLE : insert ? NO : CERTAIN;
      through = (byte) Math.max(through, here);
    }
    return count == 0 ? joined : least(joined, through);
  }

  private static byte connected(End end) {
    Connector connector = end.connector();
    return connector == null ? POSSIBLE : connector == Connector.METAL ? CERTAIN : NO;
  }

  private static byte least(byte a, byte b) {
    return a < b ? a : b;
  }

  private byte touching(int a, int b) {
    double gap;
    double tolerance;
    if (a < parts && b < parts) {
      gap = geometry.gap(a, b);
      tolerance = geometry.gapTolerance(a, b);
    } else if (a >= parts && b >= parts) {
      gap = geometry.gapBetweenRuns(a - parts, b - parts);
      tolerance = geometry.gapToleranceBetweenRuns(a - parts, b - parts);
    } else {
      int run = Math.max(a, b) - parts;
      gap = geometry.runGap(run, Math.min(a, b));
      tolerance = geometry.runGapTolerance(run, Math.min(a, b));
    }
    return near(gap, tolerance);
  }

  private byte near(double gap, double tolerance) {
    double contact = geometry.contactTolerance() + ROUNDING;
    return gap <= contact ? CERTAIN : gap - tolerance > contact ? NO : POSSIBLE;
  }

  private void workOutSteel(int item, PossibleBoxes boxes) {
    if (metal[item] == NO) {
      return;
    }
    double reach = geometry.contactTolerance() + ROUNDING;
    for (int box = boxes.first(item); box < boxes.first(item + 1); box++) {
      for (Face face : FACES) {
        double least =
            geometry
                .shell()
                .leastDistance(
                    face,
                    boxes.least(box, 0),
                    boxes.least(box, 1),
                    boxes.least(box, 2),
                    boxes.most(box, 0),
                    boxes.most(box, 1),
                    boxes.most(box, 2));
        // An opening whose edges may be off bounds the steel no more nearly than this.
        int at = FACES.length * item + face.ordinal();
        if (least <= reach + tolerance(item) && steel[at] == NO) {
          steel[at] = least(metal[item], near(distance(item, face), tolerance(item)));
        }
      }
    }
  }

  private double tolerance(int item) {
    return item < parts
        ? geometry.positionTolerance(item)
        : geometry.runPositionTolerance(item - parts);
  }

  /** How far an item is from the steel of one face as drawn; NaN if that is not known. */
  private double distance(int item, Face face) {
    if (geometry.sheet(face) == null) {
      return Double.NaN;
    }
    if (item >= parts) {
      PlacedRun run = geometry.placedRun(item - parts);
      return run.isComplete()
          ? new ShellLines(geometry.shell())
                  .faceDistance(face, run.line(), Double.POSITIVE_INFINITY)
              - run.radius()
          : Double.NaN;
    }
    Cuboid box = geometry.cuboid(item);
    return box == null
        ? Double.NaN
        : geometry
            .shell()
            .faceDistance(
                face,
                box.minX(),
                box.minY(),
                box.minZ(),
                box.maxX(),
                box.maxY(),
                box.maxZ(),
                Double.POSITIVE_INFINITY);
  }
}
