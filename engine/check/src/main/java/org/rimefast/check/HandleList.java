package org.rimefast.check;

import java.util.Arrays;
import java.util.function.IntConsumer;

/** A growing list of element handles that is used again and again without new memory. */
public final class HandleList implements IntConsumer {
  private int[] handles = new int[16];
  private int size;

  /** An empty list. */
  public HandleList() {}

  /** Adds a handle. */
  public void add(int handle) {
    if (size == handles.length) {
      handles = Arrays.copyOf(handles, 2 * size);
    }
    handles[size++] = handle;
  }

  @Override
  public void accept(int handle) {
    add(handle);
  }

  /** A copy of the handles. */
  public int[] toArray() {
    return Arrays.copyOf(handles, size);
  }

  /** Puts the handles in increasing order. */
  public void sort() {
    Arrays.sort(handles, 0, size);
  }

  /** Empties the list. */
  public void clear() {
    size = 0;
  }

  /** How many there are. */
  public int size() {
    return size;
  }

  /** The handle at {@code index}. */
  public int get(int index) {
    return handles[index];
  }
}
