package org.rimefast.languageserver.internal;

import java.util.concurrent.CountDownLatch;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;

/** From {@code initialize} over {@code shutdown} to {@code exit}, as the protocol lays it down. */
final class Lifecycle {
  private final CountDownLatch exit = new CountDownLatch(1);
  private volatile boolean initialized;
  private volatile boolean shutDown;

  void initialize() {
    initialized = true;
  }

  void shutDown() {
    shutDown = true;
  }

  void exit() {
    exit.countDown();
  }

  void awaitExit() throws InterruptedException {
    exit.await();
  }

  int exitCode() {
    return shutDown ? 0 : 1;
  }

  /** Refuses requests before {@code initialize} and after {@code shutdown}. */
  void requireRunning() {
    if (!initialized) {
      throw refusal(ResponseErrorCode.ServerNotInitialized, "initialize has not been asked yet");
    }
    if (shutDown) {
      throw refusal(ResponseErrorCode.InvalidRequest, "the server has been shut down");
    }
  }

  private static ResponseErrorException refusal(ResponseErrorCode code, String message) {
    return new ResponseErrorException(new ResponseError(code, message, null));
  }
}
