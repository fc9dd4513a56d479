package org.rimefast.plan;

import org.rimefast.plan.internal.json.Node.Structure;
import org.rimefast.plan.internal.json.TreeMaker;

/** What a reading says beside its answer, while a plan is built. */
public final class ReadingBuilder {
  private final Structure item;

  ReadingBuilder(Structure item) {
    this.item = item;
  }

  /** The element that was looked at, by its id; the room if it is not given. */
  public ReadingBuilder of(String id) {
    TreeMaker.text(item, "of", id);
    return this;
  }

  /** The face that was looked at. */
  public ReadingBuilder of(Face face) {
    return of(face.word());
  }

  /** What was read, with its unit: {@code 7 degC}. */
  public ReadingBuilder value(String quantity) {
    TreeMaker.text(item, "value", quantity);
    return this;
  }

  /** What else was seen. */
  public ReadingBuilder note(String text) {
    TreeMaker.text(item, "note", text);
    return this;
  }
}
