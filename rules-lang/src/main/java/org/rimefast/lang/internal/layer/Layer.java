package org.rimefast.lang.internal.layer;

import java.util.List;
import org.rimefast.lang.internal.syntax.Statement;

/**
 * The statements of one standard, those of its included files where it includes them.
 *
 * @param statements in order
 * @param start where its text begins
 * @param isWhole false if some statement could not be read, so that a missing one is no news
 */
public record Layer(List<Statement> statements, int start, boolean isWhole) {
  /** Copies the list. */
  public Layer {
    statements = List.copyOf(statements);
  }
}
