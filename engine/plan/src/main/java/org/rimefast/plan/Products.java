package org.rimefast.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.rimefast.units.Quantity;
import org.rimefast.units.QuantityParser;
import org.rimefast.units.QuantityParser.Parsed;

/**
 * Sizes that plans may call by name, each with its source.
 *
 * <p>Use: {@code Products.stud("162S125-33")}. Every firm may spell its own sizes out in a plan
 * instead; where a shell or a sheet was measured, the measured values belong in the plan.
 */
public final class Products {
  private static final double INCH = 25.4;

  // Size codes: ISO 6346 (first character length, second height, G1 general purpose with vents).
  // Inside sizes: typical of such modules, as published by their owners; ISO 1496-1 sets only the
  // least ones (for example 11998 x 2330 x 2655 for 40 ft high). 25G1: length and width of the
  // 20 ft module and height of the high one; derived, not published.
  private static final Map<String, ShellSize> SHELLS =
      byName(
          List.of(
              new ShellSize("22G1", 5898, 2352, 2395),
              new ShellSize("25G1", 5898, 2352, 2693),
              new ShellSize("42G1", 12032, 2352, 2392),
              new ShellSize("45G1", 12032, 2350, 2693)),
          ShellSize::name);

  // Common practice, no source: no standard fixes a corrugation. The flats of "side wall" and
  // "roof", and that 110/18/104 is the front wall, are from memory; each set adds up to the pitch
  // that makers give (278, 250 and 209 mm), and the depths are makers' too.
  private static final Map<String, CorrugationProfile> PROFILES =
      byName(
          List.of(
              new CorrugationProfile("side wall", 72, 68, 70, 36),
              new CorrugationProfile("front wall", 110, 18, 104, 45.6),
              new CorrugationProfile("roof", 91, 13.5, 91, 20),
              new CorrugationProfile("flat", 0, 0, 0, 0),
              // The usual floor: 28 mm plywood on cross members, no steel sheet.
              new CorrugationProfile("plywood", 0, 0, 0, 0, false)),
          CorrugationProfile::name);

  // SSMA product technical guide: the number before S is the web in 1/100 in, after it the flange.
  private static final Map<String, Double> WEBS_INCHES =
      ordered("162", 1.625, "250", 2.5, "350", 3.5, "362", 3.625, "400", 4.0, "600", 6.0);
  private static final Map<String, Double> FLANGES_INCHES =
      ordered(
          "125", 1.25, "137", 1.375, "162", 1.625, "200", 2.0, "250", 2.5, "300", 3.0, "350", 3.5);

  // Design thickness by mil: the least thickness is 95 % of it, AISI S100 A2.4.
  private static final Map<String, Double> THICKNESSES_INCHES =
      ordered(
          "18", 0.0188, "27", 0.0283, "30", 0.0312, "33", 0.0346, "43", 0.0451, "54", 0.0566, "68",
          0.0713, "97", 0.1017, "118", 0.1242);

  // NFPA 70, chapter 9, table 4 gives the inside diameter; the outside ones are from memory. A
  // tubing is round, so its area follows.
  private static final Map<String, EmtSize> TUBINGS =
      byName(
          List.of(
              tubing("1/2 in EMT", "0.622", "0.706"),
              tubing("3/4 in EMT", "0.824", "0.922"),
              tubing("1 in EMT", "1.049", "1.163"),
              tubing("1-1/4 in EMT", "1.380", "1.510")),
          EmtSize::name);

  private static final Pattern GAUGE = Pattern.compile("([1-9]|1[0-8]) AWG");

  private static final Map<String, BoxSize> BOXES = byName(boxes(), BoxSize::name);

  private Products() {}

  /**
   * The outside of a box by its trade size.
   *
   * @param name the trade size: {@code 3 x 2 x 2-1/2 in}
   * @param width along the face
   * @param height up the face
   * @param depth toward the shell
   * @param volume the least that the box table lists for it; one that is marked on the box counts
   */
  public record BoxSize(
      String name, Quantity width, Quantity height, Quantity depth, Quantity volume) {}

  /**
   * Electrical metallic tubing (EMT) by its trade size.
   *
   * @param name the trade size: {@code 3/4 in EMT}
   * @param bore inside diameter
   * @param diameter outside diameter
   */
  public record EmtSize(String name, Quantity bore, Quantity diameter) {}

  /** The typical inside of a module by its ISO 6346 size code. */
  public static Optional<ShellSize> shell(String code) {
    return Optional.ofNullable(SHELLS.get(code));
  }

  /** The size codes that {@link #shell} knows. */
  public static List<String> shellNames() {
    return List.copyOf(SHELLS.keySet());
  }

  /** A typical corrugation by name. */
  public static Optional<CorrugationProfile> profile(String name) {
    return Optional.ofNullable(PROFILES.get(name));
  }

  /** The names that {@link #profile} knows. */
  public static List<String> profileNames() {
    return List.copyOf(PROFILES.keySet());
  }

  /**
   * A stud by its designation: web in 1/100 in, S, flange in 1/100 in, thickness in mil, as in
   * {@code 162S125-33}.
   */
  public static Optional<StudSection> stud(String designation) {
    int s = designation.indexOf('S');
    int dash = designation.indexOf('-');
    if (s < 0 || dash < s) {
      return Optional.empty();
    }
    Double web = WEBS_INCHES.get(designation.substring(0, s));
    Double flange = FLANGES_INCHES.get(designation.substring(s + 1, dash));
    Double thickness = THICKNESSES_INCHES.get(designation.substring(dash + 1));
    return web == null || flange == null || thickness == null
        ? Optional.empty()
        : Optional.of(new StudSection(designation, mm(web), mm(flange), mm(thickness)));
  }

  /** Every designation that {@link #stud} knows. */
  public static List<String> studNames() {
    List<String> names = new ArrayList<>();
    for (String web : WEBS_INCHES.keySet()) {
      for (String flange : FLANGES_INCHES.keySet()) {
        for (String thickness : THICKNESSES_INCHES.keySet()) {
          names.add(web + "S" + flange + "-" + thickness);
        }
      }
    }
    return names;
  }

  /** A box by its trade size. */
  public static Optional<BoxSize> box(String name) {
    return Optional.ofNullable(BOXES.get(name));
  }

  /** The trade sizes that {@link #box} knows. */
  public static List<String> boxNames() {
    return List.copyOf(BOXES.keySet());
  }

  /** Electrical metallic tubing by its trade size. */
  public static Optional<EmtSize> emt(String name) {
    return Optional.ofNullable(TUBINGS.get(name));
  }

  /** The trade sizes that {@link #emt} knows. */
  public static List<String> emtNames() {
    return List.copyOf(TUBINGS.keySet());
  }

  /**
   * The number of a conductor's size in American wire gauge: 12 of {@code 12 AWG}; empty if it is
   * none from 18 to 1.
   */
  public static OptionalInt gauge(String size) {
    Matcher parts = GAUGE.matcher(size);
    return parts.matches() ? OptionalInt.of(Integer.parseInt(parts.group(1))) : OptionalInt.empty();
  }

  /**
   * Trade sizes of the box table of NFPA 70, table 314.16(A), with its volumes in cubic inches: its
   * outside dimensions are nominal. A device box in a wall is taller than wide, and so is a handy
   * (utility) box.
   */
  private static List<BoxSize> boxes() {
    List<BoxSize> boxes = new ArrayList<>();
    ordered("1-1/2", 7.5, "2", 10.0, "2-1/4", 10.5, "2-1/2", 12.5, "2-3/4", 14.0, "3-1/2", 18.0)
        .forEach((depth, in3) -> boxes.add(box("3 x 2 x " + depth + " in", "2", "3", depth, in3)));
    ordered("1-1/4", 18.0, "1-1/2", 21.0, "2-1/8", 30.3)
        .forEach((depth, in3) -> boxes.add(box("4 x 4 x " + depth + " in", "4", "4", depth, in3)));
    ordered("1-1/4", 25.5, "1-1/2", 29.5, "2-1/8", 42.0)
        .forEach(
            (depth, in3) ->
                boxes.add(
                    box("4-11/16 x 4-11/16 x " + depth + " in", "4-11/16", "4-11/16", depth, in3)));
    ordered("1-1/4", 12.5, "1-1/2", 15.5, "2-1/8", 21.5)
        .forEach(
            (depth, in3) -> boxes.add(box("octagon 4 x " + depth + " in", "4", "4", depth, in3)));
    // 10.3 and 14.5 are from memory.
    ordered("1-1/2", 10.3, "1-7/8", 13.0, "2-1/8", 14.5)
        .forEach(
            (depth, in3) ->
                boxes.add(box("handy 4 x 2-1/8 x " + depth + " in", "2-1/8", "4", depth, in3)));
    return boxes;
  }

  private static BoxSize box(
      String name, String width, String height, String depth, double cubicInches) {
    return new BoxSize(
        name,
        inches(width),
        inches(height),
        inches(depth),
        quantity(BigDecimal.valueOf(cubicInches).toPlainString() + " in3"));
  }

  private static EmtSize tubing(String name, String bore, String diameter) {
    return new EmtSize(name, inches(bore), inches(diameter));
  }

  private static Quantity inches(String number) {
    return quantity(number + " in");
  }

  private static Quantity quantity(String text) {
    if (QuantityParser.parse(text) instanceof Parsed.Ok ok) {
      return ok.quantity();
    }
    throw new IllegalStateException("a product's size that cannot be read: " + text);
  }

  private static double mm(double inches) {
    // Rounded to 1e-9 mm, so that 1.375 in is 34.925 mm and not a neighbour of it.
    return Math.round(inches * INCH * 1e9) / 1e9;
  }

  private static <T> Map<String, T> byName(List<T> products, Function<T, String> name) {
    Map<String, T> map = new LinkedHashMap<>();
    for (T product : products) {
      map.put(name.apply(product), product);
    }
    return map;
  }

  private static Map<String, Double> ordered(Object... pairs) {
    Map<String, Double> map = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      map.put((String) pairs[i], (Double) pairs[i + 1]);
    }
    return map;
  }
}
