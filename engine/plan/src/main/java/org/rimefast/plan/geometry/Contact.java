package org.rimefast.plan.geometry;

/**
 * Two bodies that touch, or nearly.
 *
 * @param a the one that comes first: the shell before parts, parts before runs, then by index
 * @param b the other
 * @param gap the distance between them in millimetres; 0 if they meet
 * @param at a point of {@code a} that is nearest to {@code b}
 */
public record Contact(Body a, Body b, double gap, Point at) {

  /** What kind of body touches. */
  public enum Kind {
    SHELL,
    PART,
    RUN
  }

  /**
   * A body of the module.
   *
   * @param kind what it is
   * @param index its index in the plan's list of parts or runs; 0 for the shell
   */
  public record Body(Kind kind, int index) {
    /** The steel of all six faces, which is one body. */
    public static final Body SHELL = new Body(Kind.SHELL, 0);

    /** The part at {@code index} of the plan's parts. */
    public static Body part(int index) {
      return new Body(Kind.PART, index);
    }

    /** The run at {@code index} of the plan's runs. */
    public static Body run(int index) {
      return new Body(Kind.RUN, index);
    }
  }
}
