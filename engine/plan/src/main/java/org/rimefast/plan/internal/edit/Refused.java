package org.rimefast.plan.internal.edit;

/** An edit that cannot be made. Never leaves this package. */
final class Refused extends Exception {
  private final String remedy;

  Refused(String message, String remedy) {
    super(message, null, false, false);
    this.remedy = remedy;
  }

  String remedy() {
    return remedy;
  }
}
