package org.rimefast.plan.internal.json;

import java.util.AbstractMap;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.PlanLimits;
import org.rimefast.plan.PlanSource.Place;

/**
 * Where each JSON pointer's value starts. The text is gone through again when the first place is
 * asked for: most plans that are read are never asked.
 */
public final class Places extends AbstractMap<String, Place> {
  private final PlanLimits limits;
  private final int start;
  private byte @Nullable [] text;
  private @Nullable Map<String, Place> places;

  /**
   * The places of a text that has been read without trouble.
   *
   * @param text the text; must not be changed afterwards
   */
  public Places(byte[] text, int start, PlanLimits limits) {
    this.text = text;
    this.start = start;
    this.limits = limits;
  }

  /** The line and column of an offset. */
  public static Place at(byte[] text, int offset) {
    LineCounter counter = new LineCounter(text, 0);
    counter.advance(offset);
    return new Place(counter.line(), counter.column());
  }

  private synchronized Map<String, Place> places() {
    if (places == null) {
      Map<String, Place> found = new HashMap<>();
      if (text == null) {
        throw new IllegalStateException("the text is kept until its places are known");
      }
      Node root = JsonTree.read(text, start, limits).root();
      if (root != null) {
        collect(root, "", found);
      }
      places = Collections.unmodifiableMap(found);
      text = null;
    }
    return places;
  }

  private static void collect(Node node, String pointer, Map<String, Place> found) {
    Place place = node.place();
    if (place != null) {
      found.put(pointer, place);
    }
    if (node instanceof Node.Structure structure) {
      for (Node member : structure.members()) {
        String name = String.valueOf(member.name());
        collect(member, pointer + "/" + name.replace("~", "~0").replace("/", "~1"), found);
      }
    } else if (node instanceof Node.Sequence sequence) {
      int i = 0;
      for (Node item : sequence.items()) {
        collect(item, pointer + "/" + i++, found);
      }
    }
  }

  @Override
  public Set<Entry<String, Place>> entrySet() {
    return places().entrySet();
  }

  @Override
  public @Nullable Place get(@Nullable Object key) {
    return places().get(key);
  }

  @Override
  public boolean containsKey(@Nullable Object key) {
    return places().containsKey(key);
  }
}
