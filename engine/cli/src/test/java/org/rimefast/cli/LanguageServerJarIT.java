package org.rimefast.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageServer;
import org.junit.jupiter.api.Test;

/** The language server as an editor starts it: the jar, in a process of its own. */
class LanguageServerJarIT {
  private static final String URI = "file:///jobs/house.rime";
  private static final String RULE =
      "standard t edition 1\n\nrule x \"\ud83e\uddca\" box must touch a stub severity fix stage framing"
          + " because \"b\" source \"s\"\n";

  @Test
  void anEditorIsServedOverStandardInputAndOutput() throws Exception {
    Process process = start();
    Copying heard = new Copying(process.getInputStream());
    Client client = new Client();
    Launcher<LanguageServer> launcher =
        LSPLauncher.createClientLauncher(client, heard, process.getOutputStream());
    Future<Void> listening = launcher.startListening();
    LanguageServer server = launcher.getRemoteProxy();

    server.initialize(new InitializeParams()).get(60, TimeUnit.SECONDS);
    server.initialized(new InitializedParams());
    server
        .getTextDocumentService()
        .didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(URI, "rime", 1, RULE)));
    Diagnostic told = client.next().getDiagnostics().get(0);
    assertThat(told.getCode().getLeft()).isEqualTo("unknown-word");
    int column = RULE.lines().toList().get(2).indexOf("stub");
    assertThat(told.getRange().getStart()).isEqualTo(new Position(2, column));

    List<CompletionItem> items =
        server
            .getTextDocumentService()
            .completion(
                new CompletionParams(new TextDocumentIdentifier(URI), new Position(2, column)))
            .get(60, TimeUnit.SECONDS)
            .getRight()
            .getItems();
    assertThat(items).extracting(CompletionItem::getLabel).contains("stud", "bracket");

    server
        .getTextDocumentService()
        .didChange(
            new DidChangeTextDocumentParams(
                new VersionedTextDocumentIdentifier(URI, 2),
                List.of(new TextDocumentContentChangeEvent(told.getRange(), "stud"))));
    PublishDiagnosticsParams second = client.next();
    assertThat(second.getVersion()).isEqualTo(2);
    assertThat(second.getDiagnostics()).isEmpty();

    server.shutdown().get(60, TimeUnit.SECONDS);
    server.exit();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).isZero();
    assertThat(text(process.getErrorStream())).isEmpty();
    assertThat(client.logged).isEmpty();
    listening.get(60, TimeUnit.SECONDS);
    assertOnlyMessages(heard.copy.toByteArray());
  }

  @Test
  void anEditorThatGoesAwayEndsTheServer() throws Exception {
    Process process = start();
    process.getOutputStream().close();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).isEqualTo(1);
    assertThat(text(process.getInputStream())).isEmpty();
  }

  /** Every byte of standard output belongs to a message with the length it says. */
  private static void assertOnlyMessages(byte[] bytes) throws IOException {
    ByteArrayInputStream in = new ByteArrayInputStream(bytes);
    int messages = 0;
    while (in.available() > 0) {
      StringBuilder header = new StringBuilder();
      while (header.indexOf("\r\n\r\n") < 0) {
        assertThat(in.available()).as("rest of a header: " + header).isPositive();
        header.append((char) in.read());
      }
      assertThat(header.toString()).matches("Content-Length: [0-9]+\r\n\r\n");
      int length = Integer.parseInt(header.substring(16).strip());
      String body = new String(in.readNBytes(length), StandardCharsets.UTF_8);
      assertThat(body).startsWith("{\"jsonrpc\":\"2.0\"").endsWith("}");
      messages++;
    }
    assertThat(messages).isGreaterThanOrEqualTo(5);
  }

  private static Process start() throws IOException {
    ProcessBuilder builder =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-jar",
            Path.of(Objects.requireNonNull(System.getProperty("rimefast.jar")))
                .toAbsolutePath()
                .toString(),
            "language-server");
    builder.environment().keySet().removeAll(List.of("JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS"));
    return builder.start();
  }

  private static String text(InputStream in) throws IOException {
    return new String(in.readAllBytes(), StandardCharsets.UTF_8);
  }

  /** Keeps what is read through it. */
  private static final class Copying extends FilterInputStream {
    private final ByteArrayOutputStream copy = new ByteArrayOutputStream();

    Copying(InputStream in) {
      super(in);
    }

    @Override
    public int read() throws IOException {
      int read = super.read();
      if (read >= 0) {
        copy.write(read);
      }
      return read;
    }

    @Override
    public int read(byte[] bytes, int offset, int length) throws IOException {
      int read = super.read(bytes, offset, length);
      if (read > 0) {
        copy.write(bytes, offset, read);
      }
      return read;
    }
  }

  private static final class Client implements LanguageClient {
    private final BlockingQueue<PublishDiagnosticsParams> published = new LinkedBlockingQueue<>();
    private final BlockingQueue<String> logged = new LinkedBlockingQueue<>();

    PublishDiagnosticsParams next() throws InterruptedException {
      return Objects.requireNonNull(published.poll(60, TimeUnit.SECONDS));
    }

    @Override
    public void telemetryEvent(Object object) {}

    @Override
    public void publishDiagnostics(PublishDiagnosticsParams diagnostics) {
      published.add(diagnostics);
    }

    @Override
    public void showMessage(MessageParams message) {
      logged.add(message.getMessage());
    }

    @Override
    public CompletableFuture<MessageActionItem> showMessageRequest(
        ShowMessageRequestParams params) {
      return CompletableFuture.completedFuture(new MessageActionItem(""));
    }

    @Override
    public void logMessage(MessageParams message) {
      logged.add(message.getMessage());
    }
  }
}
