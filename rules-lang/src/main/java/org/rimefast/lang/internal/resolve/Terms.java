package org.rimefast.lang.internal.resolve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.vocabulary.Noun;

/** The terms of a standard. A term is announced by its name first, and defined in its turn. */
public final class Terms {
  private final Map<String, Kind> bySingular = new LinkedHashMap<>();
  private String current = "";

  /** Makes a name known whose definition is still to be read. */
  public void announce(String singular, String plural, Noun noun) {
    bySingular.put(singular, new Kind(noun, singular, plural, null, true));
  }

  /** True if a term is called so, in the singular or the plural. */
  public boolean has(String name) {
    return bySingular.values().stream()
        .anyMatch(kind -> kind.singular().equals(name) || kind.plural().equals(name));
  }

  /** Says whose definition is being read. */
  public void begin(String singular) {
    current = singular;
  }

  /** Ends what {@link #begin} began. */
  public void define(Term term) {
    bySingular.put(
        term.singular(), new Kind(term.noun(), term.singular(), term.plural(), term, true));
    current = "";
  }

  /** True for the term whose definition is being read. */
  boolean isCurrent(Kind kind) {
    return kind.singular().equals(current);
  }

  /** Every term that is defined, in the order of their announcement. */
  public List<Term> defined() {
    List<Term> defined = new ArrayList<>();
    for (Kind kind : bySingular.values()) {
      if (kind.term() != null) {
        defined.add(kind.term());
      }
    }
    return defined;
  }

  List<Kind> all() {
    return List.copyOf(bySingular.values());
  }
}
