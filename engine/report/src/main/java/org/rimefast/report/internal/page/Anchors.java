package org.rimefast.report.internal.page;

import java.util.Locale;

/**
 * Names of places in a page. They hold letters, digits, hyphens, underscores and full stops only,
 * and two different names never give the same.
 */
final class Anchors {
  private Anchors() {}

  /** A rule's own id, so that people can write a link to it by hand. */
  static String rule(String id) {
    return plain(id);
  }

  /** One full stop before a name keeps it apart from rules: names themselves give them in pairs. */
  static String constant(String name) {
    return "constant." + plain(name);
  }

  static String term(String name) {
    return "term." + plain(name);
  }

  static String table(String name) {
    return "table." + plain(name);
  }

  static String withdrawn(String id) {
    return "withdrawn." + plain(id);
  }

  private static String plain(String name) {
    StringBuilder plain = new StringBuilder(name.length());
    name.codePoints()
        .forEach(
            character -> {
              if (isPlain(character)) {
                plain.appendCodePoint(character);
              } else if (character == ' ') {
                plain.append('_');
              } else {
                String hex = Integer.toHexString(character).toUpperCase(Locale.ROOT);
                plain.append('.').append(hex).append('.');
              }
            });
    return plain.toString();
  }

  private static boolean isPlain(int character) {
    return (character >= 'a' && character <= 'z')
        || (character >= 'A' && character <= 'Z')
        || (character >= '0' && character <= '9')
        || character == '-';
  }
}
