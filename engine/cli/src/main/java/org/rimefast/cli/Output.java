package org.rimefast.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/**
 * A stream of text, UTF-8 on every machine. A reader that stops reading, as {@code head} does, is
 * no fault: what is left is dropped. Any other fault is kept for the end.
 */
final class Output {
  private final OutputStream stream;
  private boolean closed;
  private Optional<IOException> fault = Optional.empty();

  Output(OutputStream stream) {
    this.stream = stream;
  }

  /** Why the text could not be written, if a person should know. */
  Optional<IOException> fault() {
    return fault;
  }

  void print(String text) {
    print(text.getBytes(StandardCharsets.UTF_8));
  }

  void print(byte[] bytes) {
    if (closed) {
      return;
    }
    try {
      stream.write(bytes);
      stream.flush();
    } catch (IOException e) {
      closed = true;
      if (!isBrokenPipe(e)) {
        fault = Optional.of(e);
      }
    }
  }

  /** The system's words for it, in the languages that keep the English term. */
  private static boolean isBrokenPipe(IOException e) {
    String message = e.getMessage();
    return message != null && message.toLowerCase(Locale.ROOT).contains("pipe");
  }
}
