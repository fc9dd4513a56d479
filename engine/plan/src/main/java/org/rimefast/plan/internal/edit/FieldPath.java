package org.rimefast.plan.internal.edit;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A field of an element.
 *
 * @param owner the object that has it or will
 * @param names its name there; with more than one, the last is its name in an object that is not
 *     there yet
 */
record FieldPath(Map<String, Object> owner, List<String> names) {
  /** Fields that are objects, which may not be there yet. */
  private static final List<String> OBJECTS = List.of("foam", "repeat", "slack", "door");

  /**
   * The field that words mean: {@code outdoor design temperature} is {@code
   * outdoorDesignTemperature}, and {@code foam thickness} is {@code thickness} in {@code foam}.
   */
  static FieldPath find(Map<String, Object> element, String[] words) {
    String whole = joined(words);
    if (words.length == 1 || element.containsKey(whole)) {
      return new FieldPath(element, List.of(whole));
    }
    String[] rest = Arrays.copyOfRange(words, 1, words.length);
    if (element.get(words[0]) instanceof Map<?, ?> inner) {
      return find(Editor.typed(inner), rest);
    }
    if (OBJECTS.contains(words[0]) && !element.containsKey(words[0])) {
      return new FieldPath(element, List.of(words[0], joined(rest)));
    }
    return new FieldPath(element, List.of(whole));
  }

  private static String joined(String[] words) {
    StringBuilder name = new StringBuilder(words[0]);
    for (int i = 1; i < words.length; i++) {
      String word = words[i];
      name.append(word.substring(0, Math.min(1, word.length())).toUpperCase(Locale.ROOT));
      name.append(word.substring(Math.min(1, word.length())));
    }
    return name.toString();
  }

  boolean isThere() {
    return names.size() == 1 && owner.containsKey(names.get(0));
  }

  void remove() {
    owner.remove(names.get(0));
  }

  void set(Object value) {
    Map<String, Object> at = owner;
    for (String name : names.subList(0, names.size() - 1)) {
      Map<String, Object> made = Editor.structure();
      at.put(name, made);
      at = made;
    }
    at.put(names.get(names.size() - 1), value);
  }
}
