package org.rimefast.languageserver.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.DiagnosticRelatedInformation;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.services.LanguageClient;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.tooling.Analysis;

/**
 * Says what is wrong with open files and those that belong to them, once their author pauses: each
 * thing in the file in which it stands.
 */
final class DiagnosticsPublisher {
  /** How long nothing must change, in milliseconds. */
  static final long PAUSE = 150;

  /** What was said of a file last. */
  private record Said(
      Optional<Document> document, List<org.eclipse.lsp4j.Diagnostic> diagnostics) {}

  private final Documents documents;
  private final Analyses analyses;
  private final CaseRuns runs;
  private final Faults faults;
  private final ScheduledExecutorService clock =
      Executors.newSingleThreadScheduledExecutor(
          task -> {
            Thread thread = new Thread(null, task, "language-server-diagnostics", 16L << 20);
            thread.setDaemon(true);
            return thread;
          });
  // Touched by the clock's thread alone.
  private final Map<String, Said> last = new HashMap<>();
  private @Nullable Future<?> waiting;
  private volatile @Nullable LanguageClient client;

  DiagnosticsPublisher(Documents documents, Analyses analyses, CaseRuns runs, Faults faults) {
    this.documents = documents;
    this.analyses = analyses;
    this.runs = runs;
    this.faults = faults;
  }

  void connect(LanguageClient newClient) {
    client = newClient;
  }

  /** Publishes after {@code delay} milliseconds, unless something changes again before. */
  synchronized void later(long delay) {
    try {
      Future<?> before = waiting;
      waiting =
          clock.schedule(
              () -> faults.guarded("diagnostics", false, this::publish),
              delay,
              TimeUnit.MILLISECONDS);
      if (before != null) {
        before.cancel(false);
      }
    } catch (RejectedExecutionException e) {
      // The server is about to end, and nobody waits for an answer.
      waiting = null;
    }
  }

  /** Shows a message to the author. */
  void show(MessageParams message) {
    LanguageClient known = client;
    if (known != null) {
      known.showMessage(message);
    }
  }

  void close() {
    clock.shutdownNow();
  }

  private boolean publish() {
    LanguageClient known = client;
    if (known == null) {
      return false;
    }
    Files files = documents.files();
    Map<String, Set<org.eclipse.lsp4j.Diagnostic>> byFile = diagnostics(files);
    runs.failed()
        .forEach(
            (uri, more) -> byFile.computeIfAbsent(uri, u -> new LinkedHashSet<>()).addAll(more));
    for (String uri : List.copyOf(last.keySet())) {
      if (!byFile.containsKey(uri)) {
        last.remove(uri);
        known.publishDiagnostics(new PublishDiagnosticsParams(uri, List.of()));
      }
    }
    byFile.forEach(
        (uri, all) -> {
          Optional<Document> document = files.open(uri);
          Said now = new Said(document, List.copyOf(all));
          // If the file has changed meanwhile, what is said of it now is on its way.
          boolean current = documents.files().open(uri).equals(document);
          if (current && !now.equals(last.put(uri, now))) {
            PublishDiagnosticsParams said = new PublishDiagnosticsParams(uri, now.diagnostics());
            document.ifPresent(open -> said.setVersion(open.version()));
            known.publishDiagnostics(said);
          }
        });
    return true;
  }

  /** What is wrong, by file; of every open file something is said, if only that nothing is. */
  private Map<String, Set<org.eclipse.lsp4j.Diagnostic>> diagnostics(Files files) {
    Workspace workspace = new Workspace(files, analyses);
    Map<String, Set<org.eclipse.lsp4j.Diagnostic>> byFile = new LinkedHashMap<>();
    Set<Analysis> told = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Document document : files.open()) {
      byFile.computeIfAbsent(document.uri(), u -> new LinkedHashSet<>());
    }
    for (Document document : files.open()) {
      View view = workspace.view(document);
      List<Analysis> all = new ArrayList<>();
      all.add(view.analysis());
      all.addAll(workspace.withCompanions(List.of(view.standard())));
      for (Analysis analysis : all) {
        if (told.add(analysis)) {
          Places places = new Places(analysis.source());
          for (Diagnostic diagnostic : analysis.diagnostics()) {
            places
                .location(diagnostic.span())
                .ifPresent(
                    place ->
                        byFile
                            .computeIfAbsent(place.getUri(), u -> new LinkedHashSet<>())
                            .add(of(places, diagnostic)));
          }
        }
      }
      view.notice().ifPresent(notice -> notice(document, notice, byFile));
    }
    return byFile;
  }

  private static void notice(
      Document document, String notice, Map<String, Set<org.eclipse.lsp4j.Diagnostic>> byFile) {
    byFile
        .computeIfAbsent(document.uri(), u -> new LinkedHashSet<>())
        .add(
            new org.eclipse.lsp4j.Diagnostic(
                new Range(new Position(0, 0), new Position(0, 0)),
                notice,
                DiagnosticSeverity.Warning,
                "rimefast"));
  }

  /** A diagnostic as the protocol has it. */
  static org.eclipse.lsp4j.Diagnostic of(Places places, Diagnostic diagnostic) {
    String message =
        diagnostic.help().isEmpty()
            ? diagnostic.headline()
            : diagnostic.headline() + "\n" + diagnostic.help();
    org.eclipse.lsp4j.Diagnostic said =
        new org.eclipse.lsp4j.Diagnostic(
            places.range(diagnostic.span()),
            message,
            diagnostic.level() == Diagnostic.Level.ERROR
                ? DiagnosticSeverity.Error
                : DiagnosticSeverity.Warning,
            "rimefast",
            diagnostic.code().id());
    List<DiagnosticRelatedInformation> related = new ArrayList<>();
    for (Diagnostic.Related other : diagnostic.related()) {
      places
          .location(other.span())
          .ifPresent(place -> related.add(new DiagnosticRelatedInformation(place, other.note())));
    }
    if (!related.isEmpty()) {
      said.setRelatedInformation(related);
    }
    return said;
  }
}
