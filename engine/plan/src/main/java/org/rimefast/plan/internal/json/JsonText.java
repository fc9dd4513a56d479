package org.rimefast.plan.internal.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.ByteArrayOutputStream;
import java.io.IOException;

/** Prints JSON trees. */
public final class JsonText {
  private static final JsonFactory FACTORY = new JsonFactory();

  private JsonText() {}

  /** The tree in UTF-8, two spaces to a level, a line feed after every line. */
  public static byte[] print(Node root) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (JsonGenerator generator = FACTORY.createGenerator(out)) {
      generator.setPrettyPrinter(printer());
      print(root, generator);
      generator.writeRaw('\n');
    } catch (IOException e) {
      throw new IllegalStateException("writing to memory cannot fail", e);
    }
    return out.toByteArray();
  }

  private static DefaultPrettyPrinter printer() {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter(
            Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER));
    printer.indentObjectsWith(indenter);
    printer.indentArraysWith(indenter);
    return printer;
  }

  private static void print(Node node, JsonGenerator out) throws IOException {
    if (node instanceof Node.Structure structure) {
      out.writeStartObject();
      for (Node member : structure.members()) {
        out.writeFieldName(String.valueOf(member.name()));
        print(member, out);
      }
      out.writeEndObject();
    } else if (node instanceof Node.Sequence sequence) {
      out.writeStartArray();
      for (Node item : sequence.items()) {
        print(item, out);
      }
      out.writeEndArray();
    } else if (node instanceof Node.Text text) {
      out.writeString(text.value());
    } else if (node instanceof Node.Numeral number) {
      out.writeNumber(number.spelling());
    } else if (node instanceof Node.Literal literal) {
      out.writeRawValue(literal.word());
    }
  }
}
