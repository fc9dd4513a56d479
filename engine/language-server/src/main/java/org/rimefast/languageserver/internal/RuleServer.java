package org.rimefast.languageserver.internal;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionOptions;
import org.eclipse.lsp4j.CodeLensOptions;
import org.eclipse.lsp4j.CompletionOptions;
import org.eclipse.lsp4j.ExecuteCommandOptions;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.PositionEncodingKind;
import org.eclipse.lsp4j.RenameOptions;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.ServerInfo;
import org.eclipse.lsp4j.SetTraceParams;
import org.eclipse.lsp4j.TextDocumentSyncKind;
import org.eclipse.lsp4j.TextDocumentSyncOptions;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageServer;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.eclipse.lsp4j.services.WorkspaceService;
import org.rimefast.lang.tooling.RuleAnalyser;
import org.rimefast.languageserver.EditorHost;

/** The server as the protocol sees it. */
public final class RuleServer implements LanguageServer {
  private final Lifecycle lifecycle = new Lifecycle();
  private final Faults faults = new Faults();
  private final ExecutorService workers =
      Executors.newFixedThreadPool(
          2,
          task -> {
            // Broken text nests deeper than any that compiles.
            Thread thread = new Thread(null, task, "language-server-worker", 16L << 20);
            thread.setDaemon(true);
            return thread;
          });
  private final DiagnosticsPublisher publisher;
  private final TextService texts;
  private final FolderService folder;

  /** A server for one client. */
  public RuleServer(RuleAnalyser analyser, EditorHost host) {
    Documents documents = new Documents(host);
    Analyses analyses = new Analyses(analyser);
    CaseRuns runs = new CaseRuns(host);
    this.publisher = new DiagnosticsPublisher(documents, analyses, runs, faults);
    this.texts =
        new TextService(
            analyser.vocabulary(),
            documents,
            analyses,
            runs,
            publisher,
            faults,
            workers,
            lifecycle);
    this.folder = new FolderService(texts, publisher);
  }

  /** Says whom to tell. */
  public void connect(LanguageClient client) {
    faults.connect(client);
    publisher.connect(client);
  }

  /** Waits for {@code exit}, or for the client to be gone, and gives the exit code. */
  public int awaitExit(Future<Void> listening) {
    Thread watch =
        new Thread(
            () -> {
              try {
                listening.get();
              } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
              } catch (ExecutionException e) {
                faults.guarded(
                    "listening",
                    false,
                    () -> {
                      throw new IllegalStateException(e.getCause());
                    });
              }
              lifecycle.exit();
            },
            "language-server-watch");
    watch.setDaemon(true);
    watch.start();
    try {
      lifecycle.awaitExit();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return lifecycle.exitCode();
  }

  /** Lets go of what the server holds. */
  public void close() {
    publisher.close();
    workers.shutdownNow();
  }

  @Override
  public CompletableFuture<InitializeResult> initialize(InitializeParams params) {
    lifecycle.initialize();
    return CompletableFuture.completedFuture(
        new InitializeResult(capabilities(), new ServerInfo("rimefast")));
  }

  private static ServerCapabilities capabilities() {
    TextDocumentSyncOptions sync = new TextDocumentSyncOptions();
    sync.setOpenClose(true);
    sync.setChange(TextDocumentSyncKind.Incremental);
    sync.setSave(true);
    ServerCapabilities all = new ServerCapabilities();
    all.setPositionEncoding(PositionEncodingKind.UTF16);
    all.setTextDocumentSync(sync);
    all.setCompletionProvider(new CompletionOptions(false, List.of(" ")));
    all.setHoverProvider(true);
    all.setDefinitionProvider(true);
    all.setReferencesProvider(true);
    all.setRenameProvider(new RenameOptions(true));
    all.setDocumentFormattingProvider(true);
    all.setDocumentSymbolProvider(true);
    all.setCodeLensProvider(new CodeLensOptions(false));
    all.setExecuteCommandProvider(new ExecuteCommandOptions(List.of(CaseRuns.COMMAND)));
    all.setCodeActionProvider(new CodeActionOptions(List.of(CodeActionKind.QuickFix)));
    return all;
  }

  @Override
  public CompletableFuture<Object> shutdown() {
    lifecycle.shutDown();
    return CompletableFuture.completedFuture(null);
  }

  @Override
  public void exit() {
    lifecycle.exit();
  }

  @Override
  public void setTrace(SetTraceParams params) {
    // Nothing is traced.
  }

  @Override
  public TextDocumentService getTextDocumentService() {
    return texts;
  }

  @Override
  public WorkspaceService getWorkspaceService() {
    return folder;
  }
}
