package org.rimefast.languageserver.internal;

import java.util.Locale;
import java.util.concurrent.CancellationException;
import java.util.function.Supplier;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.MessageType;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.services.LanguageClient;
import org.jspecify.annotations.Nullable;

/** Keeps the server alive after a fault of its own, and tells the client of it. */
final class Faults {
  private volatile @Nullable LanguageClient client;

  void connect(LanguageClient newClient) {
    client = newClient;
  }

  /** The answer; {@code otherwise} if there is a fault of ours in the way. */
  <T> T guarded(String what, T otherwise, Supplier<T> answer) {
    try {
      return answer.get();
    } catch (ResponseErrorException | CancellationException e) {
      throw e;
    } catch (RuntimeException | StackOverflowError e) {
      log(what, e);
      return otherwise;
    }
  }

  private void log(String what, Throwable fault) {
    LanguageClient known = client;
    if (known != null) {
      known.logMessage(
          new MessageParams(
              MessageType.Error,
              String.format(
                  Locale.ROOT,
                  "rimefast: %s: this is a fault of rimefast itself, not of your files: %s%s",
                  what,
                  fault,
                  place(fault))));
    }
  }

  private static String place(Throwable fault) {
    StackTraceElement[] frames = fault.getStackTrace();
    return frames.length == 0 ? "" : " at " + frames[0];
  }
}
