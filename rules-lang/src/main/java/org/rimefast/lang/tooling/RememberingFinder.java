package org.rimefast.lang.tooling;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.rimefast.lang.source.SourceFinder;
import org.rimefast.lang.source.SourceText;

/** Finds each text once, so that a standard is read twice from the same texts. */
final class RememberingFinder implements SourceFinder {
  private final SourceFinder finder;
  private final Map<String, Optional<SourceText>> found = new HashMap<>();
  private final Map<String, SourceFinder> below = new HashMap<>();

  RememberingFinder(SourceFinder finder) {
    this.finder = finder;
  }

  @Override
  public Optional<SourceText> include(String name) {
    return once("include " + name, () -> finder.include(name));
  }

  @Override
  public Optional<SourceText> base(String name, String edition) {
    return once("base " + name + "\n" + edition, () -> finder.base(name, edition));
  }

  @Override
  public SourceFinder ofBase(String name, String edition) {
    String key = name + "\n" + edition;
    SourceFinder known = below.get(key);
    if (known == null) {
      known = new RememberingFinder(finder.ofBase(name, edition));
      below.put(key, known);
    }
    return known;
  }

  private Optional<SourceText> once(String key, Supplier<Optional<SourceText>> find) {
    Optional<SourceText> known = found.get(key);
    if (known == null) {
      known = find.get();
      found.put(key, known);
    }
    return known;
  }
}
