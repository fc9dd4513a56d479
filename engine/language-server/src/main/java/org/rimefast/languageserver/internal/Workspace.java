package org.rimefast.languageserver.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.tooling.Analysis;
import org.rimefast.lang.tooling.TextRole;

/** Which files belong together, at one time. */
final class Workspace {
  /** How many folders up a file is looked for that includes another one. */
  private static final int FOLDERS = 4;

  private final Files files;
  private final Analyses analyses;

  Workspace(Files files, Analyses analyses) {
    this.files = files;
    this.analyses = analyses;
  }

  Files files() {
    return files;
  }

  /** The same with other texts, as they would be. */
  Workspace with(Map<String, String> texts) {
    return new Workspace(files.with(texts), analyses.fresh());
  }

  /** A file as part of what it belongs to. */
  View view(Document document) {
    SourceText source = document.source();
    TextRole role = TextRole.of(source);
    if (isCases(document.uri(), role)) {
      return companion(document, role, true);
    }
    if (role.kind() == TextRole.Kind.WAIVERS) {
      return companion(document, role, false);
    }
    if (role.kind() == TextRole.Kind.PART) {
      for (Analysis root : roots(document.uri())) {
        int part = part(root, document.uri());
        return new View(this, document, root, part, root, Optional.empty());
      }
    }
    Analysis own = analyses.standard(files, source);
    return new View(this, document, own, 0, own, Optional.empty());
  }

  private static boolean isCases(String uri, TextRole role) {
    boolean other = role.kind() == TextRole.Kind.STANDARD || role.kind() == TextRole.Kind.WAIVERS;
    return role.kind() == TextRole.Kind.CASES || (uri.endsWith(Uris.CASES) && !other);
  }

  private View companion(Document document, TextRole role, boolean isCases) {
    String beside =
        isCases && document.uri().endsWith(Uris.CASES)
            ? Uris.stem(document.uri()) + Uris.RULES
            : Uris.beside(document.uri(), role.standard() + Uris.RULES).orElse("");
    Optional<SourceText> source = beside.isEmpty() ? Optional.empty() : files.read(beside);
    source = source.isPresent() ? source : files.shipped(role.standard());
    Analysis standard = analyses.standard(files, source.orElse(new SourceText(beside + "\n", "")));
    SourceText own = document.source();
    Analysis analysis = isCases ? analyses.cases(own, standard) : analyses.waivers(own, standard);
    String name = beside.substring(beside.lastIndexOf('/') + 1);
    Optional<String> notice =
        source.isEmpty()
            ? Optional.of(
                "There is no standard "
                    + name
                    + " beside this file and none of this name is shipped, so what stands here"
                    + " cannot be checked.")
            : standard.standard().isEmpty()
                ? Optional.of(
                    "The standard has a fault. What stands here is checked once that is put"
                        + " right.")
                : Optional.empty();
    return new View(this, document, analysis, 0, standard, notice);
  }

  /** What is made of a file of the same name; empty if there is none any more. */
  Optional<Analysis> analysis(SourceText was) {
    if (!Uris.isUri(was.name())) {
      return Optional.of(analyses.standard(files, was));
    }
    return files
        .read(was.name())
        .map(source -> view(new Document(was.name(), 0, source.text())).analysis());
  }

  /** The standards that a file is part of, its own among them. */
  List<Analysis> roots(String uri) {
    Map<String, String> candidates = new LinkedHashMap<>();
    candidates.put(Uris.key(uri), uri);
    for (Document document : files.open()) {
      candidates.putIfAbsent(Uris.key(document.uri()), document.uri());
    }
    for (String folder : Uris.folders(uri, FOLDERS)) {
      files.in(folder).forEach(other -> candidates.putIfAbsent(Uris.key(other), other));
    }
    List<Analysis> roots = new ArrayList<>();
    for (Map.Entry<String, String> candidate : candidates.entrySet()) {
      boolean own = candidate.getKey().equals(Uris.key(uri));
      files
          .read(candidate.getValue())
          .filter(source -> own || mayNameOthers(source.text()))
          .filter(source -> isRoot(source, own))
          .map(source -> analyses.standard(files, source))
          .filter(root -> part(root, uri) >= 0)
          .ifPresent(roots::add);
    }
    return roots;
  }

  private static boolean mayNameOthers(String text) {
    return text.contains("include") || text.contains("builds");
  }

  private static boolean isRoot(SourceText source, boolean own) {
    TextRole role = TextRole.of(source);
    return role.kind() == TextRole.Kind.STANDARD && (own || role.namesOthers());
  }

  /** Which part of a text a file is; -1 if it is none. */
  static int part(Analysis root, String uri) {
    for (int part = 0; part < root.source().parts().size(); part++) {
      String name = root.source().parts().get(part).name();
      if (Uris.isUri(name) && Uris.key(name).equals(Uris.key(uri))) {
        return part;
      }
    }
    return -1;
  }

  /** The cases beside a standard. */
  Optional<Analysis> casesOf(Analysis root) {
    String uri = root.source().name();
    return Uris.isUri(uri) && uri.endsWith(Uris.RULES) && !uri.endsWith(Uris.CASES)
        ? files.read(Uris.stem(uri) + Uris.CASES).map(source -> analyses.cases(source, root))
        : Optional.empty();
  }

  /** The cases and waivers beside a standard. */
  List<Analysis> companions(Analysis root) {
    List<Analysis> all = new ArrayList<>();
    casesOf(root).ifPresent(all::add);
    String uri = root.source().name();
    if (!Uris.isUri(uri)) {
      return all;
    }
    String name = TextRole.of(root.source()).standard();
    for (String other : files.in(Uris.folder(uri))) {
      files
          .read(other)
          .filter(source -> source.text().contains("waivers"))
          .filter(
              source -> {
                TextRole role = TextRole.of(source);
                return role.kind() == TextRole.Kind.WAIVERS
                    && role.standard().equals(name)
                    && Uris.key(Uris.beside(other, name + Uris.RULES).orElse(""))
                        .equals(Uris.key(uri));
              })
          .ifPresent(source -> all.add(analyses.waivers(source, root)));
    }
    return all;
  }

  /** The standards and, beside each, its cases and waivers; each once. */
  List<Analysis> withCompanions(List<Analysis> roots) {
    Set<Analysis> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    List<Analysis> all = new ArrayList<>();
    for (Analysis root : roots) {
      if (seen.add(root)) {
        all.add(root);
      }
      for (Analysis companion : companions(root)) {
        if (seen.add(companion)) {
          all.add(companion);
        }
      }
    }
    return all;
  }
}
