package org.rimefast.lang.tooling;

import java.util.List;
import org.rimefast.lang.source.Span;

/**
 * What can stand at a place.
 *
 * @param replaces the word that has been begun there, whole; empty if none has
 * @param proposals what can be written in its stead, likely ones first
 */
public record Proposals(Span replaces, List<Proposal> proposals) {
  /** Copies the list. */
  public Proposals {
    proposals = List.copyOf(proposals);
  }
}
