package org.rimefast.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.rimefast.check.CheckResult;
import org.rimefast.report.internal.JsonDocument;

/**
 * Results of checks as JSON for programs, in the format {@code rimefast-check-1}.
 *
 * <p>One document holds any number of results. Every member is always there; what is not given is
 * {@code null}. Lengths and all other measured numbers are in SI units, texts in the unit that the
 * rule's author wrote. The bytes are UTF-8, indented, and end in a line feed; the same results give
 * the same bytes everywhere.
 */
public final class JsonReport {
  private static final String SCHEMA = "check.schema.json";

  private JsonReport() {}

  /**
   * The document.
   *
   * @param results of the plans that were checked
   * @param unusable plans and standards that could not be used
   */
  public static byte[] write(List<CheckResult> results, List<UnusableInput> unusable) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
    try {
      JsonDocument.write(results, unusable, bytes);
    } catch (IOException e) {
      throw new IllegalStateException("writing to memory cannot fail", e);
    }
    return bytes.toByteArray();
  }

  /** The JSON Schema (draft 2020-12) of the format. */
  public static String schema() {
    try (InputStream in = JsonReport.class.getResourceAsStream(SCHEMA)) {
      if (in == null) {
        throw new IllegalStateException("the resource " + SCHEMA + " is not there");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("the resource " + SCHEMA + " cannot be read", e);
    }
  }
}
