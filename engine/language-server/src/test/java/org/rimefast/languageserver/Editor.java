package org.rimefast.languageserver;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Predicate;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageServer;
import org.rimefast.check.SteelModules;

/** A client of the protocol that keeps what it hears, and the server it speaks to. */
final class Editor implements LanguageClient, AutoCloseable {
  /** Longer than any machine takes; only what hangs runs into it. */
  static final long PATIENCE = 60;

  static final String URI = "file:///jobs/house.rime";

  private final LanguageServer server;
  private final CompletableFuture<Integer> exitCode = new CompletableFuture<>();
  private final OutputStream toServer;
  private final BlockingQueue<PublishDiagnosticsParams> published = new LinkedBlockingQueue<>();
  private final List<String> logged = new CopyOnWriteArrayList<>();
  private final BlockingQueue<MessageParams> shown = new LinkedBlockingQueue<>();
  private Future<Void> listening = CompletableFuture.completedFuture(null);
  private int version;

  /** Starts a server in this process that has not been initialized. */
  Editor() {
    this(new DiskOfTests());
  }

  /** The same, with files beside those that are open. */
  Editor(DiskOfTests disk) {
    try {
      PipedInputStream serverIn = new PipedInputStream(1 << 16);
      PipedOutputStream out = new PipedOutputStream(serverIn);
      PipedInputStream in = new PipedInputStream(1 << 16);
      PipedOutputStream serverOut = new PipedOutputStream(in);
      Thread thread =
          new Thread(
              () -> {
                int code =
                    RuleLanguageServer.run(
                        serverIn, serverOut, SteelModules.dictionary().vocabulary(), disk);
                exitCode.complete(code);
              });
      thread.setDaemon(true);
      thread.start();
      this.toServer = out;
      this.server = connect(in, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private LanguageServer connect(InputStream in, OutputStream out) {
    Launcher<LanguageServer> launcher = LSPLauncher.createClientLauncher(this, in, out);
    this.listening = launcher.startListening();
    return launcher.getRemoteProxy();
  }

  /** An editor whose server is ready. */
  static Editor ready() {
    return ready(new DiskOfTests());
  }

  static Editor ready(DiskOfTests disk) {
    Editor editor = new Editor(disk);
    editor.initialize();
    return editor;
  }

  InitializeResult initialize() {
    InitializeResult result = await(server.initialize(new InitializeParams()));
    server.initialized(new InitializedParams());
    return result;
  }

  LanguageServer server() {
    return server;
  }

  /** What the server said went wrong in itself. */
  List<String> logged() {
    return logged;
  }

  TextDocumentIdentifier id() {
    return new TextDocumentIdentifier(URI);
  }

  void open(String text) {
    version = 1;
    open(URI, text);
  }

  void open(String uri, String text) {
    server
        .getTextDocumentService()
        .didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(uri, "rime", 1, text)));
  }

  /** What is said of a file, once that is so; what is said before is let go. */
  PublishDiagnosticsParams said(String uri, Predicate<PublishDiagnosticsParams> wanted) {
    while (true) {
      PublishDiagnosticsParams next = nextPublished();
      if (next.getUri().equals(uri) && wanted.test(next)) {
        return next;
      }
    }
  }

  /** What the server shows to the author. */
  MessageParams nextShown() {
    try {
      MessageParams next = shown.poll(PATIENCE, TimeUnit.SECONDS);
      if (next == null) {
        throw new AssertionError("nothing was shown");
      }
      return next;
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  /** Replaces a stretch, as one keystroke does. */
  void type(Range range, String text) {
    change(List.of(new TextDocumentContentChangeEvent(range, text)));
  }

  void change(List<TextDocumentContentChangeEvent> changes) {
    version++;
    server
        .getTextDocumentService()
        .didChange(
            new DidChangeTextDocumentParams(
                new VersionedTextDocumentIdentifier(URI, version), changes));
  }

  void closeFile() {
    server.getTextDocumentService().didClose(new DidCloseTextDocumentParams(id()));
  }

  int version() {
    return version;
  }

  /** What is said of the version that was typed last; what is said of earlier ones is let go. */
  PublishDiagnosticsParams diagnostics() {
    while (true) {
      PublishDiagnosticsParams next = nextPublished();
      if (next.getVersion() != null && next.getVersion() == version) {
        return next;
      }
    }
  }

  PublishDiagnosticsParams nextPublished() {
    try {
      PublishDiagnosticsParams next = published.poll(PATIENCE, TimeUnit.SECONDS);
      if (next == null) {
        throw new AssertionError("nothing was published");
      }
      return next;
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  List<PublishDiagnosticsParams> publishedSoFar() {
    List<PublishDiagnosticsParams> all = new ArrayList<>();
    published.drainTo(all);
    return all;
  }

  List<CompletionItem> completion(Position position) {
    return completion(URI, position);
  }

  List<CompletionItem> completion(String uri, Position position) {
    return await(
            server
                .getTextDocumentService()
                .completion(new CompletionParams(new TextDocumentIdentifier(uri), position)))
        .getRight()
        .getItems();
  }

  int exitCode() {
    return await(exitCode);
  }

  /** Closes the line without a word. */
  void hangUp() {
    try {
      toServer.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static <T> T await(CompletableFuture<T> future) {
    try {
      return future.get(PATIENCE, TimeUnit.SECONDS);
    } catch (InterruptedException | ExecutionException | TimeoutException e) {
      throw new AssertionError(e);
    }
  }

  /** Where an offset stands, counted independently of the server: lines end with \n here. */
  static Position position(String text, int offset) {
    int line = (int) text.substring(0, offset).chars().filter(c -> c == '\n').count();
    return new Position(line, offset - (text.lastIndexOf('\n', offset - 1) + 1));
  }

  static int offset(String text, Position position) {
    int start = 0;
    for (int i = 0; i < position.getLine(); i++) {
      start = text.indexOf('\n', start) + 1;
    }
    return start + position.getCharacter();
  }

  /** Applies edits, which may not overlap, as the protocol says. */
  static String apply(String text, List<? extends TextEdit> edits) {
    List<TextEdit> last = new ArrayList<>(edits);
    last.sort(
        (a, b) -> offset(text, b.getRange().getStart()) - offset(text, a.getRange().getStart()));
    String result = text;
    for (TextEdit edit : last) {
      result =
          result.substring(0, offset(text, edit.getRange().getStart()))
              + edit.getNewText()
              + result.substring(offset(text, edit.getRange().getEnd()));
    }
    return result;
  }

  @Override
  public void close() {
    hangUp();
    listening.cancel(true);
  }

  @Override
  public void telemetryEvent(Object object) {}

  @Override
  public void publishDiagnostics(PublishDiagnosticsParams diagnostics) {
    published.add(diagnostics);
  }

  @Override
  public void showMessage(MessageParams message) {
    shown.add(message);
  }

  @Override
  public CompletableFuture<MessageActionItem> showMessageRequest(ShowMessageRequestParams params) {
    return CompletableFuture.completedFuture(new MessageActionItem(""));
  }

  @Override
  public void logMessage(MessageParams message) {
    logged.add(message.getMessage());
  }
}
