package org.rimefast.languageserver.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.DiagnosticRelatedInformation;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.services.LanguageClient;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.source.Diagnostic;

/** Says what is wrong with open files, once their author pauses. */
final class DiagnosticsPublisher {
  /** How long nothing must change, in milliseconds. */
  static final long PAUSE = 150;

  private final Documents documents;
  private final Faults faults;
  private final ScheduledExecutorService clock =
      Executors.newSingleThreadScheduledExecutor(
          task -> {
            Thread thread = new Thread(task, "language-server-diagnostics");
            thread.setDaemon(true);
            return thread;
          });
  private final Map<String, Future<?>> waiting = new ConcurrentHashMap<>();
  private volatile @Nullable LanguageClient client;

  DiagnosticsPublisher(Documents documents, Faults faults) {
    this.documents = documents;
    this.faults = faults;
  }

  void connect(LanguageClient newClient) {
    client = newClient;
  }

  /** Publishes after {@code delay} milliseconds, unless the file changes again before. */
  void later(String uri, long delay) {
    try {
      Future<?> before =
          waiting.put(uri, clock.schedule(() -> publishGuarded(uri), delay, TimeUnit.MILLISECONDS));
      if (before != null) {
        before.cancel(false);
      }
    } catch (RejectedExecutionException e) {
      // The server is about to end, and nobody waits for an answer.
      waiting.remove(uri);
    }
  }

  /** Takes back what was said of a file that was closed. */
  void forget(String uri) {
    later(uri, 0);
  }

  void close() {
    clock.shutdownNow();
  }

  private void publishGuarded(String uri) {
    faults.guarded("diagnostics", false, () -> publish(uri));
  }

  private boolean publish(String uri) {
    LanguageClient known = client;
    if (known == null) {
      return false;
    }
    Document document = documents.find(uri).orElse(null);
    if (document == null) {
      known.publishDiagnostics(new PublishDiagnosticsParams(uri, List.of()));
      return true;
    }
    List<org.eclipse.lsp4j.Diagnostic> all = new ArrayList<>();
    for (Diagnostic diagnostic : document.analysis().compilation().diagnostics()) {
      all.add(of(document, diagnostic));
    }
    // If the file has changed meanwhile, what is said of it now is on its way.
    boolean current = documents.find(uri).filter(now -> now == document).isPresent();
    if (current) {
      known.publishDiagnostics(new PublishDiagnosticsParams(uri, all, document.version()));
    }
    return current;
  }

  /** A diagnostic as the protocol has it. */
  static org.eclipse.lsp4j.Diagnostic of(Document document, Diagnostic diagnostic) {
    String message =
        diagnostic.help().isEmpty()
            ? diagnostic.headline()
            : diagnostic.headline() + "\n" + diagnostic.help();
    org.eclipse.lsp4j.Diagnostic said =
        new org.eclipse.lsp4j.Diagnostic(
            document.range(diagnostic.span()),
            message,
            diagnostic.level() == Diagnostic.Level.ERROR
                ? DiagnosticSeverity.Error
                : DiagnosticSeverity.Warning,
            "rimefast",
            diagnostic.code().id());
    List<DiagnosticRelatedInformation> related = new ArrayList<>();
    for (Diagnostic.Related other : diagnostic.related()) {
      related.add(
          new DiagnosticRelatedInformation(
              new Location(document.uri(), document.range(other.span())), other.note()));
    }
    if (!related.isEmpty()) {
      said.setRelatedInformation(related);
    }
    return said;
  }
}
