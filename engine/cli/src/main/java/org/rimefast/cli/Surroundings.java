package org.rimefast.cli;

import java.io.InputStream;
import java.io.OutputStream;
import java.util.Map;

/**
 * What the command finds around it.
 *
 * @param in standard input
 * @param out standard output
 * @param err standard error
 * @param terminal whether a person sees the output as it comes
 * @param environment environment variables
 */
record Surroundings(
    InputStream in,
    OutputStream out,
    OutputStream err,
    boolean terminal,
    Map<String, String> environment) {

  /** True if the variable is there and not empty. */
  boolean has(String variable) {
    return !environment.getOrDefault(variable, "").isEmpty();
  }
}
