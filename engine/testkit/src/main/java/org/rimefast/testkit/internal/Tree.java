package org.rimefast.testkit.internal;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A JSON object that is being put together; its members stay in order. */
final class Tree {
  private final Map<String, Object> members = new LinkedHashMap<>();

  static Tree of(String field, Object value) {
    return new Tree().with(field, value);
  }

  /** Puts a text, a count (int), a length (long, or with what goes with it), a list or a tree. */
  Tree with(String field, Object value) {
    members.put(field, value);
    return this;
  }

  /** The JSON text, with lengths in {@code unit}. */
  String print(String unit) {
    StringWriter out = new StringWriter();
    DefaultPrettyPrinter layout =
        new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"));
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.setPrettyPrinter(layout);
      write(json, this, unit);
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot fail", e);
    }
    return out.append('\n').toString();
  }

  private static void write(JsonGenerator json, Object value, String unit) throws IOException {
    if (value instanceof Tree tree) {
      json.writeStartObject();
      for (Map.Entry<String, Object> member : tree.members.entrySet()) {
        json.writeFieldName(member.getKey());
        write(json, member.getValue(), unit);
      }
      json.writeEndObject();
    } else if (value instanceof List<?> list) {
      json.writeStartArray();
      for (Object item : list) {
        write(json, item, unit);
      }
      json.writeEndArray();
    } else if (value instanceof Long length) {
      write(json, Length.of(length), unit);
    } else if (value instanceof Length length) {
      write(json, length.in(unit), unit);
    } else if (value instanceof BigDecimal number) {
      json.writeNumber(number.toPlainString());
    } else if (value instanceof Integer number) {
      json.writeNumber(number);
    } else {
      json.writeString((String) value);
    }
  }
}
