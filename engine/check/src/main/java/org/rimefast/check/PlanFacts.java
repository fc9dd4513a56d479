package org.rimefast.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.internal.Fields;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.plan.Circuit;
import org.rimefast.plan.Element;
import org.rimefast.plan.Face;
import org.rimefast.plan.Foaming;
import org.rimefast.plan.InspectReading;
import org.rimefast.plan.Opening;
import org.rimefast.plan.Part;
import org.rimefast.plan.Plan;
import org.rimefast.plan.Run;
import org.rimefast.plan.RunBuild;
import org.rimefast.plan.geometry.ModuleGeometry;

/**
 * A plan made ready for questions: every element has a handle, a number from 0, and what is worked
 * out once is kept as long as this object stands. Safe to share between threads.
 *
 * <p>Handles run over the parts of the plan, then its runs, its openings, its circuits, the
 * conductors in its runs, the six faces, and last the room.
 */
public final class PlanFacts {
  private static final Face[] FACES = Face.values();
  private static final String DEFAULT_FACE = "/faces/default";

  private final Plan plan;
  private final Dictionary dictionary;
  private final ModuleGeometry geometry;
  private final Element[] elements;
  private final Map<String, Integer> handlesById = new HashMap<>();
  private final Map<String, Integer> handlesByPointer = new HashMap<>();
  private final Map<String, Membership> members = new ConcurrentHashMap<>();
  private final Map<Object, Object> kept = new ConcurrentHashMap<>();
  private final Map<String, @Nullable InspectReading[]> readings = new HashMap<>();
  private final Optional<LocalDate> asOf;
  private final int runsFrom;
  private final int openingsFrom;
  private final int circuitsFrom;
  private final int facesFrom;
  private final ConductorList conductors;
  private final int room;
  private final @Nullable ElementName[] names; // each made when first asked for

  private record Membership(int[] handles, boolean[] isMember) {}

  /** Makes a plan ready for the words of a dictionary; all its readings count. */
  public PlanFacts(Plan plan, Dictionary dictionary) {
    this(plan, dictionary, Optional.empty());
  }

  /**
   * Makes a plan ready for the words of a dictionary.
   *
   * @param asOf the day that counts as today: nobody can have read anything after it, so a reading
   *     of a later day counts for nothing; all count if empty
   */
  public PlanFacts(Plan plan, Dictionary dictionary, Optional<LocalDate> asOf) {
    this.plan = plan;
    this.asOf = asOf;
    this.dictionary = dictionary;
    geometry = ModuleGeometry.of(plan);
    List<Element> all = new ArrayList<>(plan.parts());
    runsFrom = all.size();
    all.addAll(plan.runs());
    openingsFrom = all.size();
    all.addAll(plan.openings());
    circuitsFrom = all.size();
    all.addAll(plan.circuits());
    elements = all.toArray(new Element[0]);
    conductors = new ConductorList(plan.runs());
    facesFrom = elements.length + conductors.size();
    room = facesFrom + FACES.length;
    names = new ElementName[room + 1];
    for (int handle = 0; handle < elements.length; handle++) {
      handlesById.put(elements[handle].id(), handle);
      handlesByPointer.putIfAbsent(elements[handle].pointer(), handle);
    }
    for (Face face : FACES) {
      if (plan.face(face).pointer().endsWith("/" + face.word())) {
        handlesByPointer.put(plan.face(face).pointer(), handleOf(face));
      }
    }
    handlesByPointer.put(plan.room().pointer(), room);
    plan.readings().forEach(this::take);
  }

  /** True for a reading of a day that has not come yet. */
  boolean isOfTheFuture(InspectReading reading) {
    return asOf.isPresent() && reading.when().isAfter(asOf.get());
  }

  private void take(InspectReading reading) {
    int handle = handleOf(reading);
    if (handle >= 0 && !isOfTheFuture(reading)) {
      @Nullable InspectReading[] known =
          readings.computeIfAbsent(reading.inspect(), id -> new InspectReading[size()]);
      InspectReading before = known[handle];
      if (before == null || !reading.when().isBefore(before.when())) {
        known[handle] = reading;
      }
    }
  }

  /** The plan. */
  public Plan plan() {
    return plan;
  }

  /** Its geometry; a part's index there is its handle. */
  public ModuleGeometry geometry() {
    return geometry;
  }

  /** How many handles there are. */
  public int size() {
    return room + 1;
  }

  /** The handle of the element with this id, or -1. */
  public int handleOf(String id) {
    return handlesById.getOrDefault(id, -1);
  }

  /** The handle of the element with this id, else of the face of this name or the room, or -1. */
  public int handleNamed(String name) {
    int handle = handleOf(name);
    if (handle >= 0) {
      return handle;
    }
    for (Face face : FACES) {
      if (face.word().equals(name)) {
        return handleOf(face);
      }
    }
    return name.equals(InspectReading.ROOM) ? room : -1;
  }

  /** The handle of what a reading is of, or -1 if the plan has no such element. */
  public int handleOf(InspectReading reading) {
    String of = reading.of();
    return of == null ? room : handleNamed(of);
  }

  /** What was last found on site of an element, asked this inspect item; null if nothing was. */
  public @Nullable InspectReading reading(String inspect, int handle) {
    @Nullable InspectReading[] known = readings.get(inspect);
    return known == null ? null : known[handle];
  }

  /** The handle of a face. */
  public int handleOf(Face face) {
    return facesFrom + face.ordinal();
  }

  /** The handle of the room. */
  public int room() {
    return room;
  }

  /** True for a part: stud, track, box, bar, bracket, panel or luminaire. */
  public boolean isPart(int handle) {
    return handle < runsFrom;
  }

  /** True for a cable or conduit. */
  public boolean isRun(int handle) {
    return handle >= runsFrom && handle < openingsFrom;
  }

  /** True for an opening. */
  public boolean isOpening(int handle) {
    return handle >= openingsFrom && handle < circuitsFrom;
  }

  /** True for a circuit. */
  public boolean isCircuit(int handle) {
    return handle >= circuitsFrom && handle < elements.length;
  }

  /** True for a conductor. */
  public boolean isConductor(int handle) {
    return handle >= elements.length && handle < facesFrom;
  }

  /** True for a face of the module. */
  public boolean isFace(int handle) {
    return handle >= facesFrom && handle < room;
  }

  /** True for the room. */
  public boolean isRoom(int handle) {
    return handle == room;
  }

  /** The part with this handle. */
  public Part part(int handle) {
    return (Part) elements[handle];
  }

  /** The run with this handle. */
  public Run run(int handle) {
    return (Run) elements[handle];
  }

  /** The index in the plan's geometry of the run with this handle. */
  public int runIndex(int handle) {
    return handle - runsFrom;
  }

  /** The handle of the run with this index in the plan's geometry. */
  public int handleOfRun(int index) {
    return runsFrom + index;
  }

  /** The opening with this handle. */
  public Opening opening(int handle) {
    return (Opening) elements[handle];
  }

  /** The circuit with this handle. */
  public Circuit circuit(int handle) {
    return (Circuit) elements[handle];
  }

  /** The handle of the run that a conductor is in. */
  public int runOfConductor(int handle) {
    return handleOfRun(conductors.run(handle - elements.length));
  }

  /**
   * What the plan says of a conductor; null if it does not say which conductors the run has, and
   * this one stands for all of them.
   */
  public RunBuild.@Nullable Conductors conductor(int handle) {
    return conductors.group(handle - elements.length);
  }

  /**
   * True for an element that stands for one or more of which the plan does not say how many: the
   * conductors of a run for which it gives none.
   */
  public boolean standsForMany(int handle) {
    return isConductor(handle) && conductor(handle) == null;
  }

  /** The face with this handle. */
  public Face face(int handle) {
    return FACES[handle - facesFrom];
  }

  /** The handles of all elements that a noun means, in increasing order. Do not change it. */
  public int[] members(Noun noun) {
    return membership(noun).handles;
  }

  /** True if the noun means this element. */
  public boolean isMember(Noun noun, int handle) {
    return membership(noun).isMember[handle];
  }

  private Membership membership(Noun noun) {
    Membership known = members.get(noun.id());
    if (known != null) {
      return known;
    }
    // Not computeIfAbsent: what a noun means may rest on what another one means.
    Membership made = workOut(noun);
    Membership first = members.putIfAbsent(noun.id(), made);
    return first != null ? first : made;
  }

  private Membership workOut(Noun noun) {
    Dictionary.Members contains = dictionary.members(noun);
    int[] handles = new int[size()];
    boolean[] isMember = new boolean[size()];
    int count = 0;
    for (int handle = 0; handle < size(); handle++) {
      if (contains.contains(this, handle)) {
        handles[count++] = handle;
        isMember[handle] = true;
      }
    }
    return new Membership(Arrays.copyOf(handles, count), isMember);
  }

  /**
   * What {@code make} gives, worked out once for each key and kept. Two keys are the same if their
   * names and types are.
   */
  public <T> T keep(Key<T> key, Function<PlanFacts, T> make) {
    Object known = kept.get(key);
    if (known == null) {
      T made = make.apply(this);
      Object first = kept.putIfAbsent(key, made);
      known = first != null ? first : made;
    }
    return key.type().cast(known);
  }

  /** Names something that is worked out once for each plan. */
  public record Key<T>(String name, Class<T> type) {}

  /** Names an element to people and programs. */
  public ElementName name(int handle) {
    ElementName known = names[handle]; // immutable, so it is safe if two threads make one
    if (known == null) {
      String pointer = pointer(handle);
      known =
          new ElementName(
              Labels.noun(this, handle),
              id(handle),
              Labels.where(this, handle),
              pointer,
              place(pointer));
      names[handle] = known;
    }
    return known;
  }

  /** A value of an element that the plan does not give: {@code missing(12, "depth")}. */
  public MissingValue missing(int handle, String field) {
    return missing(pointer(handle) + "/" + field, field, Optional.of(name(handle).label()));
  }

  /** A value that the plan does not give, by its JSON pointer. */
  public MissingValue missing(String pointer) {
    String owner = pointer.substring(0, Math.max(0, pointer.lastIndexOf('/')));
    while (!owner.isEmpty()) {
      Integer handle = handlesByPointer.get(owner);
      String field = pointer.substring(owner.length() + 1);
      if (handle != null) {
        return missing(pointer, field, Optional.of(name(handle).label()));
      }
      if (owner.equals(DEFAULT_FACE)) {
        return missing(pointer, field, Optional.of("the faces' default"));
      }
      owner = owner.substring(0, owner.lastIndexOf('/'));
    }
    String field = pointer.substring(pointer.lastIndexOf('/') + 1);
    return missing(
        pointer,
        field,
        pointer.startsWith(Foaming.POINTER + "/") ? Optional.of("the foam gun") : Optional.empty());
  }

  private MissingValue missing(String pointer, String field, Optional<String> owner) {
    String words = Fields.words(field);
    return new MissingValue(
        pointer, owner.map(label -> words + " of " + label).orElse(words), place(pointer));
  }

  private Optional<org.rimefast.plan.PlanSource.Place> place(String pointer) {
    return Optional.ofNullable(plan.source().placeOf(pointer));
  }

  private String pointer(int handle) {
    if (handle < elements.length) {
      return elements[handle].pointer();
    }
    if (isConductor(handle)) {
      RunBuild.Conductors group = conductor(handle);
      return group != null
          ? group.pointer()
          : elements[runOfConductor(handle)].pointer() + "/conductors";
    }
    return isRoom(handle) ? plan.room().pointer() : plan.face(face(handle)).pointer();
  }

  private String id(int handle) {
    if (handle < elements.length) {
      return elements[handle].id();
    }
    if (isConductor(handle)) {
      return conductors.name(handle - elements.length);
    }
    return "";
  }
}
