package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;

class RectangleUnionTest {
  private static final int SIDE = 40;

  /** Both references are independent: JTS by overlay, and a count of unit cells. */
  @Test
  void theAreaIsThatOfTheOverlayLibraryAndOfCountedCells() {
    Random random = new Random(41);
    GeometryFactory factory = new GeometryFactory();
    for (int round = 0; round < 2_000; round++) {
      int count = random.nextInt(9);
      double[] rectangles = new double[4 * count];
      List<Geometry> shapes = new ArrayList<>();
      boolean[] cells = new boolean[SIDE * SIDE];
      for (int i = 0; i < count; i++) {
        int x = random.nextInt(SIDE);
        int y = random.nextInt(SIDE);
        int x2 = x + random.nextInt(SIDE - x + 1);
        int y2 = y + random.nextInt(SIDE - y + 1);
        rectangles[4 * i] = x;
        rectangles[4 * i + 1] = y;
        rectangles[4 * i + 2] = x2;
        rectangles[4 * i + 3] = y2;
        if (x2 > x && y2 > y) {
          shapes.add(factory.toGeometry(new Envelope(x, x2, y, y2)));
        }
        for (int a = x; a < x2; a++) {
          for (int b = y; b < y2; b++) {
            cells[a * SIDE + b] = true;
          }
        }
      }
      int counted = 0;
      for (boolean cell : cells) {
        counted += cell ? 1 : 0;
      }
      double area = RectangleUnion.area(rectangles);
      assertThat(area).isEqualTo(counted);
      Geometry union = UnaryUnionOp.union(shapes, factory);
      assertThat(area).isCloseTo(union.getArea(), within(1e-6));
    }
  }
}
