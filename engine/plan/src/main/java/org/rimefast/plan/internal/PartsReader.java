package org.rimefast.plan.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.BoxFittings;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Part;
import org.rimefast.plan.Placement;
import org.rimefast.plan.Products;
import org.rimefast.plan.StudSection;
import org.rimefast.plan.internal.json.Node;
import org.rimefast.units.Quantity;

/** Reads studs, tracks, boxes, bars, brackets, panels and luminaires. */
final class PartsReader {
  static final List<String> HOLE_FIELDS = List.of("up", "width", "height", "insert", "plate");

  private final Context context;
  private final Ids ids;
  private final FacesReader facesReader;
  private final Map<Face, FaceBuild> faces;
  private final List<Part> parts = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();

  PartsReader(Context context, Ids ids, FacesReader facesReader, Map<Face, FaceBuild> faces) {
    this.context = context;
    this.ids = ids;
    this.facesReader = facesReader;
    this.faces = faces;
  }

  /** The parts that one item of the file stands for: {@code parts[first .. first + count - 1]}. */
  record Row(Node node, String what, int first, int count) {}

  List<Part> parts() {
    return parts;
  }

  List<Row> rows() {
    return rows;
  }

  /** Reads one list of the plan. */
  void read(PartList list, Fields plan) {
    for (Node item : plan.items(list.field())) {
      Fields fields = Fields.of(context, item, list.what(), list.fields());
      if (fields != null) {
        readItem(list, fields);
      }
    }
  }

  private void readItem(PartList list, Fields fields) {
    String id = fields.requiredText("id", "Add \"id\": a name that no other element has.");
    Face face = fields.requiredWord("face", Names.FACES);
    Node repeatNode = fields.get("repeat");
    Repeat repeat = repeatNode == null ? null : Repeat.read(context, fields, repeatNode);
    Placement placement =
        new Placement(
            face == null ? Face.LEFT : face,
            fields.length("along", Amounts.Range.ANY),
            fields.length("up", Amounts.Range.ANY),
            fields.length("width", Amounts.Range.POSITIVE),
            fields.length("height", Amounts.Range.POSITIVE),
            fields.length("depth", Amounts.Range.POSITIVE),
            fields.length("front", Amounts.Range.ANY),
            fields.word("material", Names.MATERIALS));
    Part part = list.read(this, fields, id == null ? "" : id, placement);
    boolean placed = repeat == null || hasStart(fields, repeat);
    int count = repeat == null ? 1 : repeat.count();
    if (!context.count(count, fields) || !fields.node().isClosed()) {
      return;
    }
    ids.take(id, repeat, fields);
    boolean whole = id != null && face != null && placed;
    if (part == null || !whole || (repeatNode != null && repeat == null)) {
      return;
    }
    rows.add(new Row(fields.node(), list.what(), parts.size(), count));
    if (repeat == null) {
      parts.add(part);
    } else {
      for (int i = 0; i < count; i++) {
        parts.add(PartCopy.inRow(part, repeat, i));
      }
    }
  }

  private boolean hasStart(Fields fields, Repeat repeat) {
    String start = repeat.up() ? "up" : "along";
    if (fields.has(start)) {
      return true;
    }
    context.faults.add(
        "bad-repeat",
        fields.node(),
        Fields.capital(fields.owner())
            + " repeats "
            + (repeat.up() ? "up" : "along")
            + " the face but has no \""
            + start
            + "\".",
        "Add \"" + start + "\": the place of the first one.");
    return false;
  }

  /** The lists of parts in a plan, in their order in the model. */
  enum PartList {
    STUDS("studs", "stud", "section", "holes") {
      @Override
      Part read(PartsReader reader, Fields fields, String id, Placement placement) {
        return reader.stud(fields, id, placement);
      }
    },
    TRACKS("tracks", "track") {
      @Override
      Part read(PartsReader reader, Fields fields, String id, Placement placement) {
        return new Part.Track(id, fields.node().pointer(), placement);
      }
    },
    BOXES("boxes", "box", boxFields()) {
      @Override
      @Nullable Part read(PartsReader reader, Fields fields, String id, Placement placement) {
        return reader.box(fields, id, placement);
      }
    },
    BARS("bars", "bar") {
      @Override
      Part read(PartsReader reader, Fields fields, String id, Placement placement) {
        return new Part.Bar(id, fields.node().pointer(), placement);
      }
    },
    BRACKETS("brackets", "bracket", "holds") {
      @Override
      Part read(PartsReader reader, Fields fields, String id, Placement placement) {
        String holds = fields.text("holds");
        reader.ids.refer(fields, "holds", holds, Ids.To.PLACED);
        return new Part.Bracket(id, fields.node().pointer(), holds, placement);
      }
    },
    PANELS("panels", "panel", "mount") {
      @Override
      Part read(PartsReader reader, Fields fields, String id, Placement placement) {
        return new Part.Panel(id, fields.node().pointer(), placement, mount(fields));
      }
    },
    LUMINAIRES("luminaires", "luminaire", "mount") {
      @Override
      Part read(PartsReader reader, Fields fields, String id, Placement placement) {
        return new Part.Luminaire(id, fields.node().pointer(), placement, mount(fields));
      }
    };

    private final String field;
    private final String what;

    @SuppressWarnings("ImmutableEnumChecker") // a copy that cannot change
    private final List<String> fields;

    PartList(String field, String what, String... own) {
      this.field = field;
      this.what = what;
      List<String> all = new ArrayList<>(List.of("id", "face", "along", "up"));
      all.addAll(List.of("width", "height", "depth", "front", "material"));
      all.addAll(List.of(own));
      all.add("repeat");
      this.fields = List.copyOf(all);
    }

    String field() {
      return field;
    }

    String what() {
      return what;
    }

    List<String> fields() {
      return fields;
    }

    abstract @Nullable Part read(PartsReader reader, Fields fields, String id, Placement placement);

    private static String[] boxFields() {
      List<String> fields = new ArrayList<>(List.of("kind", "size", "mount"));
      fields.addAll(FittingsReader.FIELDS);
      return fields.toArray(new String[0]);
    }

    private static @Nullable Mount mount(Fields fields) {
      return fields.word("mount", Names.MOUNTS);
    }
  }

  private Part stud(Fields fields, String id, Placement placement) {
    StudSection own = facesReader.stud(fields, "section");
    FaceBuild build = faces.get(placement.face());
    StudSection section = own == null && build != null ? build.stud() : own;
    return new Part.Stud(id, fields.node().pointer(), placement, section, holes(fields));
  }

  private List<Part.ServiceHole> holes(Fields stud) {
    List<Part.ServiceHole> holes = new ArrayList<>();
    for (Node item : stud.items("holes")) {
      Fields fields = Fields.of(context, item, "service hole", HOLE_FIELDS);
      if (fields != null) {
        Amount up = fields.requiredLength("up", Amounts.Range.ANY);
        Amount width = fields.requiredLength("width", Amounts.Range.POSITIVE);
        Amount height = fields.requiredLength("height", Amounts.Range.POSITIVE);
        Boolean insert = fields.word("insert", Names.INSERTS);
        Amount plate = fields.length("plate", Amounts.Range.NOT_NEGATIVE);
        if (up != null && width != null && height != null) {
          holes.add(new Part.ServiceHole(item.pointer(), up, width, height, insert, plate));
        }
      }
    }
    return holes;
  }

  private @Nullable Part box(Fields fields, String id, Placement given) {
    Part.Box.Kind kind = fields.requiredWord("kind", Names.BOX_KINDS);
    Mount mount = PartList.mount(fields);
    String size = fields.text("size");
    Optional<Products.BoxSize> product = size == null ? Optional.empty() : Products.box(size);
    Node sizeNode = fields.get("size");
    if (size != null && product.isEmpty() && sizeNode != null) {
      FacesReader.unknownProduct(context, sizeNode, size, "box size", Products.boxNames());
    }
    BoxFittings fittings =
        new FittingsReader(context)
            .read(fields, sized(null, product.map(Products.BoxSize::volume)));
    if (kind == null) {
      return null;
    }
    Placement placement =
        new Placement(
            given.face(),
            given.along(),
            given.up(),
            sized(given.width(), product.map(Products.BoxSize::width)),
            sized(given.height(), product.map(Products.BoxSize::height)),
            sized(given.depth(), product.map(Products.BoxSize::depth)),
            given.front(),
            given.material());
    return new Part.Box(
        id,
        fields.node().pointer(),
        kind,
        product.map(Products.BoxSize::name).orElse(null),
        placement,
        mount,
        fittings);
  }

  private static @Nullable Amount sized(@Nullable Amount own, Optional<Quantity> product) {
    return own != null ? own : product.map(size -> new Amount(size, null)).orElse(null);
  }
}
