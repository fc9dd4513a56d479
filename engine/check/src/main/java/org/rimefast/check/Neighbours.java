package org.rimefast.check;

/**
 * Receives the elements that a chain leads to from one element. Used again and again without new
 * memory, so keep no reference to it.
 */
public final class Neighbours {
  private final HandleList certain = new HandleList();
  private final HandleList possible = new HandleList();

  /** None yet. */
  public Neighbours() {}

  /** The chain certainly leads to this element. */
  public void add(int handle) {
    certain.add(handle);
  }

  /** It may lead there: the plan does not say, or only its tolerance could close the gap. */
  public void addPossible(int handle) {
    possible.add(handle);
  }

  /** Forgets all. */
  public void clear() {
    certain.clear();
    possible.clear();
  }

  /** Those to which it certainly leads. */
  public HandleList certain() {
    return certain;
  }

  /** Those to which it may lead. */
  public HandleList possible() {
    return possible;
  }
}
