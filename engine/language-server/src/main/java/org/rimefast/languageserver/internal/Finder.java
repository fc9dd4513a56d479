package org.rimefast.languageserver.internal;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.rimefast.lang.source.SourceFinder;
import org.rimefast.lang.source.SourceText;

/**
 * Finds included files beside a standard's file, and bases among the shipped ones or beside it.
 * Remembers what it found, to tell later whether it would find the same.
 */
final class Finder implements SourceFinder {
  private record Lookup(boolean isShipped, String name) {
    Optional<SourceText> in(Files files) {
      return isShipped ? files.shipped(name) : files.read(name);
    }
  }

  private final Files files;
  private final Optional<String> file;
  private final Map<Lookup, Optional<SourceText>> found;

  /** For a standard in a file. */
  Finder(Files files, String uri) {
    this(files, Optional.of(uri), new LinkedHashMap<>());
  }

  private Finder(Files files, Optional<String> file, Map<Lookup, Optional<SourceText>> found) {
    this.files = files;
    this.file = file;
    this.found = found;
  }

  @Override
  public Optional<SourceText> include(String name) {
    return file.flatMap(uri -> Uris.beside(uri, name)).flatMap(uri -> find(new Lookup(false, uri)));
  }

  @Override
  public Optional<SourceText> base(String name, String edition) {
    Optional<SourceText> shipped = find(new Lookup(true, name));
    boolean plain = name.chars().noneMatch(c -> c == '/' || c == '\\' || c == ':');
    return shipped.isPresent() || !plain ? shipped : include(name + Uris.RULES);
  }

  @Override
  public SourceFinder ofBase(String name, String edition) {
    return find(new Lookup(true, name)).isPresent()
        ? new Finder(files, Optional.empty(), found)
        : this;
  }

  private Optional<SourceText> find(Lookup lookup) {
    Optional<SourceText> text = lookup.in(files);
    found.put(lookup, text);
    return text;
  }

  /** True if in these files the same would be found. */
  boolean finds(Files now) {
    return found.entrySet().stream()
        .allMatch(entry -> entry.getKey().in(now).equals(entry.getValue()));
  }
}
