package org.rimefast.plan.internal;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.CorrugationProfile;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.FaceBuild.Foam;
import org.rimefast.plan.FaceBuild.Ribs;
import org.rimefast.plan.Products;
import org.rimefast.plan.StudSection;
import org.rimefast.plan.internal.json.Node;
import org.rimefast.units.Dimension;

/** Reads how the faces are built up. */
final class FacesReader {
  static final List<String> FACE_FIELDS =
      List.of("profile", "ribs", "phase", "sheet", "standoff", "stud", "lining", "foam");
  static final List<String> FOAM_FIELDS = List.of("kind", "thickness", "conductivity");
  static final List<String> PROFILE_FIELDS = List.of("outer", "web", "inner", "depth");
  static final List<String> STUD_FIELDS = List.of("depth", "flange", "thickness");

  /** How messages and the model call a size that a plan spells out. */
  static final String AS_GIVEN = "as given";

  private final Context context;

  FacesReader(Context context) {
    this.context = context;
  }

  /** One entry, its absent fields null. */
  private record Entry(
      @Nullable CorrugationProfile profile,
      @Nullable Ribs ribs,
      @Nullable Amount phase,
      @Nullable Amount sheet,
      @Nullable Amount standoff,
      @Nullable StudSection stud,
      @Nullable Amount lining,
      @Nullable Foam foam) {
    static final Entry EMPTY = new Entry(null, null, null, null, null, null, null, null);

    FaceBuild build(Face face, String pointer, Entry rest) {
      Ribs ownRibs = first(ribs, rest.ribs);
      return new FaceBuild(
          face,
          pointer,
          first(profile, rest.profile),
          ownRibs == null ? Ribs.UPRIGHT : ownRibs,
          first(phase, rest.phase),
          first(sheet, rest.sheet),
          first(standoff, rest.standoff),
          first(stud, rest.stud),
          first(lining, rest.lining),
          first(foam, rest.foam));
    }

    private static <T> @Nullable T first(@Nullable T own, @Nullable T rest) {
      return own == null ? rest : own;
    }
  }

  /** All six faces; a field that a face's own entry lacks comes from the default entry. */
  Map<Face, FaceBuild> read(@Nullable Node node) {
    Entry rest = Entry.EMPTY;
    Map<Face, Entry> own = new EnumMap<>(Face.class);
    Fields fields =
        node == null ? null : Fields.of(context, node, "list of faces", Names.FACE_ENTRIES);
    if (fields != null) {
      for (String name : Names.FACE_ENTRIES) {
        Node entry = fields.get(name);
        Face face = Names.FACES.get(name);
        if (entry != null) {
          Entry read = entry(entry, face == null ? "default face" : name + " face");
          if (face == null) {
            rest = read;
          } else {
            own.put(face, read);
          }
        }
      }
    }
    Map<Face, FaceBuild> faces = new LinkedHashMap<>();
    for (Face face : Face.values()) {
      Entry entry = own.get(face);
      faces.put(
          face,
          entry == null
              ? Entry.EMPTY.build(face, "/faces/default", rest)
              : entry.build(face, "/faces/" + face.word(), rest));
    }
    return faces;
  }

  private Entry entry(Node node, String what) {
    Fields fields = Fields.of(context, node, what, FACE_FIELDS);
    if (fields == null) {
      return Entry.EMPTY;
    }
    return new Entry(
        profile(fields),
        fields.word("ribs", Names.RIBS),
        fields.length("phase", Amounts.Range.ANY),
        fields.length("sheet", Amounts.Range.POSITIVE),
        fields.length("standoff", Amounts.Range.NOT_NEGATIVE),
        stud(fields, "stud"),
        fields.length("lining", Amounts.Range.NOT_NEGATIVE),
        foam(fields.get("foam")));
  }

  private @Nullable Foam foam(@Nullable Node node) {
    Fields fields = node == null ? null : Fields.of(context, node, "foam", FOAM_FIELDS);
    return fields == null
        ? null
        : new Foam(
            fields.word("kind", Names.FOAM_KINDS),
            fields.length("thickness", Amounts.Range.NOT_NEGATIVE),
            fields.quantity("conductivity", Dimension.CONDUCTIVITY, "\"0.025 W/(m K)\""));
  }

  private @Nullable CorrugationProfile profile(Fields face) {
    Node node = face.get("profile");
    if (node == null) {
      return null;
    }
    if (!(node instanceof Node.Structure)) {
      return product(face, "profile", node, "profile", Products::profile, Products::profileNames);
    }
    Fields fields = Fields.of(context, node, "profile", PROFILE_FIELDS);
    if (fields == null) {
      return null;
    }
    Amount outer = fields.requiredLength("outer", Amounts.Range.NOT_NEGATIVE);
    Amount web = fields.requiredLength("web", Amounts.Range.NOT_NEGATIVE);
    Amount inner = fields.requiredLength("inner", Amounts.Range.NOT_NEGATIVE);
    Amount depth = fields.requiredLength("depth", Amounts.Range.NOT_NEGATIVE);
    if (outer == null || web == null || inner == null || depth == null) {
      return null;
    }
    CorrugationProfile profile =
        new CorrugationProfile(
            AS_GIVEN,
            outer.millimetres(),
            web.millimetres(),
            inner.millimetres(),
            depth.millimetres());
    if (!profile.isFlat() && profile.pitch() <= 0) {
      context.faults.add(
          "negative-size",
          node,
          "A profile with a depth has ribs, and the pitch of these is 0.",
          "Give \"outer\", \"web\" and \"inner\" as measured, or write \"flat\".");
      return null;
    }
    return profile;
  }

  /** A stud's section, by designation or spelled out. */
  @Nullable StudSection stud(Fields owner, String name) {
    Node node = owner.get(name);
    if (node == null) {
      return null;
    }
    if (!(node instanceof Node.Structure)) {
      return product(owner, name, node, "stud", Products::stud, Products::studNames);
    }
    Fields fields = Fields.of(context, node, "stud section", STUD_FIELDS);
    if (fields == null) {
      return null;
    }
    Amount depth = fields.requiredLength("depth", Amounts.Range.POSITIVE);
    Amount flange = fields.requiredLength("flange", Amounts.Range.POSITIVE);
    Amount thickness = fields.requiredLength("thickness", Amounts.Range.POSITIVE);
    return depth == null || flange == null || thickness == null
        ? null
        : new StudSection(
            AS_GIVEN, depth.millimetres(), flange.millimetres(), thickness.millimetres());
  }

  /** A product by name; null, with a fault, if there is none of that name. */
  private <T> @Nullable T product(
      Fields owner,
      String field,
      Node node,
      String what,
      Function<String, Optional<T>> find,
      Supplier<List<String>> names) {
    if (!(node instanceof Node.Text text)) {
      owner.wrongType(node, field, "the name of a " + what + " or its sizes in braces { }");
      return null;
    }
    Optional<T> found = find.apply(text.value());
    if (found.isEmpty()) {
      unknownProduct(context, node, text.value(), what, names.get());
    }
    return found.orElse(null);
  }

  static void unknownProduct(
      Context context, Node node, String name, String what, List<String> names) {
    String known =
        names.size() <= 20
            ? "Known are " + String.join(", ", names) + "."
            : "A designation is web in 1/100 in, S, flange in 1/100 in, thickness in mil: "
                + "162S125-33.";
    context.faults.add(
        "unknown-product",
        node,
        "There is no " + what + " " + Wording.quoted(name) + " among the known ones.",
        Wording.nearest(name, names).map(near -> "Did you mean \"" + near + "\"? ").orElse("")
            + known
            + " Or give its sizes.");
  }
}
