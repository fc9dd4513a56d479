package org.rimefast.report.internal;

/** Compares ids as people count: {@code R-2} before {@code R-10}. No locale. */
final class NaturalOrder {
  private NaturalOrder() {}

  static int compare(String left, String right) {
    int a = 0;
    int b = 0;
    while (a < left.length() && b < right.length()) {
      if (isDigit(left.charAt(a)) && isDigit(right.charAt(b))) {
        int endA = digitsEnd(left, a);
        int endB = digitsEnd(right, b);
        int order = compareNumbers(left.substring(a, endA), right.substring(b, endB));
        if (order != 0) {
          return order;
        }
        a = endA;
        b = endB;
      } else if (left.charAt(a) != right.charAt(b)) {
        return Character.compare(left.charAt(a), right.charAt(b));
      } else {
        a++;
        b++;
      }
    }
    int rest = Integer.compare(left.length() - a, right.length() - b);
    // Leading zeros alone tell 01 from 1, so that different ids are never equal.
    return rest != 0 ? rest : left.compareTo(right);
  }

  private static int compareNumbers(String left, String right) {
    String a = withoutZeros(left);
    String b = withoutZeros(right);
    int order = Integer.compare(a.length(), b.length());
    return order != 0 ? order : a.compareTo(b);
  }

  private static String withoutZeros(String digits) {
    int at = 0;
    while (at < digits.length() - 1 && digits.charAt(at) == '0') {
      at++;
    }
    return digits.substring(at);
  }

  private static int digitsEnd(String text, int start) {
    int end = start;
    while (end < text.length() && isDigit(text.charAt(end))) {
      end++;
    }
    return end;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
