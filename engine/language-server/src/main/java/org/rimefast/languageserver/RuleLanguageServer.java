package org.rimefast.languageserver;

import java.io.InputStream;
import java.io.OutputStream;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageClient;
import org.rimefast.lang.tooling.RuleAnalyser;
import org.rimefast.lang.vocabulary.Vocabulary;
import org.rimefast.languageserver.internal.RuleServer;

/**
 * A server of the Language Server Protocol 3.17 for rule text.
 *
 * <p>Use, with the words of steel modules:
 *
 * <pre>{@code
 * Vocabulary vocabulary = SteelModules.dictionary().vocabulary();
 * System.exit(RuleLanguageServer.run(System.in, System.out, vocabulary, host));
 * }</pre>
 */
public final class RuleLanguageServer {
  private RuleLanguageServer() {}

  /**
   * Serves one client until it says {@code exit} or its end of the line closes. Nothing but
   * messages of the protocol is written.
   *
   * @param in what the client says
   * @param out what it hears
   * @param vocabulary the words that rules may use
   * @param host gives what is not open in the client, and runs cases
   * @return the exit code that the protocol asks for: 0 if the client said {@code shutdown} before,
   *     else 1
   */
  public static int run(InputStream in, OutputStream out, Vocabulary vocabulary, EditorHost host) {
    ExecutorService threads =
        Executors.newCachedThreadPool(
            task -> {
              Thread thread = new Thread(task, "language-server");
              thread.setDaemon(true);
              return thread;
            });
    RuleServer server = new RuleServer(new RuleAnalyser(vocabulary), host);
    try {
      Launcher<LanguageClient> launcher =
          LSPLauncher.createServerLauncher(server, in, out, threads, messages -> messages);
      server.connect(launcher.getRemoteProxy());
      Future<Void> listening = launcher.startListening();
      return server.awaitExit(listening);
    } finally {
      server.close();
      threads.shutdownNow();
    }
  }
}
