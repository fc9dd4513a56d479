package org.rimefast.lang.internal.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rimefast.lang.internal.resolve.Dictionary;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Term;

/**
 * What a sentence can use.
 *
 * @param dictionary the vocabulary
 * @param constants the constants, by name
 * @param terms the terms, in the order written; one whose definition is wrong too
 * @param tables the tables, in the order written
 */
public record Known(
    Dictionary dictionary, Map<String, Constant> constants, List<Term> terms, List<Table> tables) {
  /** Copies the collections. */
  public Known {
    constants = new LinkedHashMap<>(constants);
    terms = List.copyOf(terms);
    tables = List.copyOf(tables);
  }
}
