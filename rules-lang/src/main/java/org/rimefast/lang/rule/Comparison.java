package org.rimefast.lang.rule;

/** How two values are compared. */
public enum Comparison {
  AT_LEAST(">="),
  MORE_THAN(">"),
  AT_MOST("<="),
  LESS_THAN("<"),
  EQUAL("="),
  NOT_EQUAL("!=");

  private final String sign;

  Comparison(String sign) {
    this.sign = sign;
  }

  /** The sign: {@code >=}. */
  public String sign() {
    return sign;
  }
}
