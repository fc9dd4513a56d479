package org.rimefast.lang.internal.paraphrase;

import org.jspecify.annotations.Nullable;

/**
 * Words, or what stood in their way.
 *
 * @param words the words; of no use if there is an obstacle
 * @param obstacle what cannot be said; null if all could
 */
public record Said(String words, @Nullable Obstacle obstacle) {
  /** True if all could be said. */
  public boolean isOk() {
    return obstacle == null;
  }
}
