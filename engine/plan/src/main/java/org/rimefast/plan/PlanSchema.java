package org.rimefast.plan;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * The JSON Schema (draft 2020-12) of plans, for editors and for programs that write plans. It says
 * what can be said about one value at a time; {@link PlanReader} finds more, such as ids used twice
 * and parts outside their face.
 */
public final class PlanSchema {
  /** The resource that holds the schema. */
  public static final String RESOURCE = "org/rimefast/plan/plan.schema.json";

  private PlanSchema() {}

  /** The schema's text. */
  public static String text() {
    try (InputStream in = PlanSchema.class.getResourceAsStream("plan.schema.json")) {
      if (in == null) {
        throw new IllegalStateException("the schema is missing from the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
