package org.rimefast.lang.internal.resolve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Noun;

/** The tables of a standard. A table is announced by its name first, and defined in its turn. */
public final class Tables {
  /** How far a table has come. */
  enum State {
    ANNOUNCED,
    CURRENT,
    BROKEN,
    DEFINED
  }

  /**
   * A table by its name.
   *
   * @param table the table, if it is defined
   */
  record Named(String name, Noun noun, State state, @Nullable Table table) {
    List<String> parts() {
      return List.of(name.split(" "));
    }
  }

  private final Map<String, Named> byName = new LinkedHashMap<>();
  private final Set<Span> usesOfBroken = new HashSet<>();

  /** No tables. */
  public Tables() {}

  /** Tables that are known. */
  public Tables(List<Table> known) {
    known.forEach(this::define);
  }

  /** Makes a name known whose table is still to be read. */
  public void announce(String name, Noun noun) {
    byName.put(name, new Named(name, noun, State.ANNOUNCED, null));
  }

  /** Says whose definition is being read; it counts as broken unless {@link #define} follows. */
  public void begin(String name, Noun noun) {
    byName.put(name, new Named(name, noun, State.CURRENT, null));
  }

  /** Ends what {@link #begin} began. */
  public void end(String name, Noun noun) {
    Named named = byName.get(name);
    if (named != null && named.state() == State.CURRENT) {
      byName.put(name, new Named(name, noun, State.BROKEN, null));
    }
  }

  void noteUseOfBroken(Span span) {
    usesOfBroken.add(span);
  }

  /** True where a table was used that has mistakes of its own, which are told already. */
  public boolean isUseOfBroken(Span span) {
    return usesOfBroken.contains(span);
  }

  /** True if a table is called so. */
  public boolean has(String name) {
    return byName.containsKey(name);
  }

  /** Makes a table known by its content. */
  public void define(Table table) {
    byName.put(table.name(), new Named(table.name(), table.noun(), State.DEFINED, table));
  }

  /** Every table that is defined, in the order of their announcement. */
  public List<Table> defined() {
    List<Table> defined = new ArrayList<>();
    for (Named named : byName.values()) {
      if (named.table() != null) {
        defined.add(named.table());
      }
    }
    return defined;
  }

  List<Named> all() {
    return List.copyOf(byName.values());
  }
}
