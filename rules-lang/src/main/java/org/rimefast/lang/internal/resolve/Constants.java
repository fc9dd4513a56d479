package org.rimefast.lang.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.rimefast.lang.rule.Constant;

/** The named constants of a standard, by their first word. */
public final class Constants {
  private final Dictionary.Table<Constant> table = new Dictionary.Table<>();
  private final List<String> names = new ArrayList<>();

  /** An index of constants by name. */
  public Constants(Map<String, Constant> byName) {
    byName.values().forEach(this::add);
  }

  /** Adds one whose name is new. */
  public void add(Constant constant) {
    table.add(constant.name(), constant);
    names.add(constant.name());
  }

  Dictionary.Table<Constant> table() {
    return table;
  }

  List<String> names() {
    return names;
  }
}
