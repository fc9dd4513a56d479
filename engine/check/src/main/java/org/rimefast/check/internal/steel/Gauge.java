package org.rimefast.check.internal.steel;

/**
 * American wire gauge: ASTM B258 makes 36 AWG 0.005 in and 4/0 AWG 0.46 in thick, and each of the
 * 39 steps between them the same ratio, whose 39th power is 92. For one strand; a stranded
 * conductor has the same metal and a little more outside.
 */
final class Gauge {
  private static final int LARGEST = 1;
  private static final int SMALLEST = 18;
  private static final double MILS_OF_36 = 5;

  /** Worked out once, by gauge. */
  private static final double[] CIRCULAR_MILS = new double[SMALLEST + 1];

  static {
    for (int gauge = LARGEST; gauge <= SMALLEST; gauge++) {
      double mils = MILS_OF_36 * Math.pow(92, (36 - gauge) / 39.0);
      CIRCULAR_MILS[gauge] = mils * mils;
    }
  }

  private Gauge() {}

  /** The square of the diameter in thousandths of an inch; NaN for a size that no plan has. */
  static double circularMils(int gauge) {
    return gauge < LARGEST || gauge > SMALLEST ? Double.NaN : CIRCULAR_MILS[gauge];
  }

  /** The cross-section of the metal in m2. */
  static double squareMetres(int gauge) {
    double mil = 0.0254e-3;
    return Math.PI / 4 * circularMils(gauge) * mil * mil;
  }
}
