package org.rimefast.rulesets;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.rimefast.plan.PlanSchema;

/** The schema of plans as maps, lists and texts. */
final class SchemaTree {
  private static final Map<String, Object> ROOT = read(PlanSchema.text());

  private SchemaTree() {}

  /** The schema at a JSON pointer. */
  static Map<String, Object> at(String pointer) {
    Object node = ROOT;
    for (String step : pointer.isEmpty() ? List.<String>of() : List.of(pointer.split("/"))) {
      if (!step.isEmpty()) {
        node =
            node instanceof List<?> items ? items.get(Integer.parseInt(step)) : map(node).get(step);
        assertThat(node).as(pointer).isNotNull();
      }
    }
    return map(node);
  }

  /** The JSON pointers of all schemas that list fields. */
  static List<String> objects() {
    List<String> found = new ArrayList<>();
    collect(ROOT, "", found);
    return found;
  }

  /** The words that a schema allows, itself or by what it refers to; none if it is an object. */
  static List<String> words(Map<String, Object> schema) {
    Stream<String> own =
        Stream.concat(list(schema.get("enum")).stream(), Stream.ofNullable(schema.get("const")))
            .map(Object::toString);
    Stream<String> referred =
        Stream.ofNullable(schema.get("$ref"))
            .flatMap(reference -> words(at(reference.toString().substring(1))).stream());
    Stream<String> any =
        list(schema.get("anyOf")).stream().flatMap(one -> words(map(one)).stream());
    return Stream.of(own, referred, any).flatMap(words -> words).toList();
  }

  @SuppressWarnings("unchecked") // read() makes no other maps
  static Map<String, Object> map(Object node) {
    assertThat(node).isInstanceOf(Map.class);
    return (Map<String, Object>) node;
  }

  /** The list; empty if there is none. */
  @SuppressWarnings("unchecked") // read() makes no other lists
  static List<Object> list(Object node) {
    return node == null ? List.of() : (List<Object>) node;
  }

  private static void collect(Object node, String pointer, List<String> found) {
    if (node instanceof Map<?, ?> members) {
      if (members.get("type") instanceof String && members.get("properties") instanceof Map) {
        found.add(pointer);
      }
      members.forEach((name, value) -> collect(value, pointer + "/" + name, found));
    } else if (node instanceof List<?> items) {
      for (int i = 0; i < items.size(); i++) {
        collect(items.get(i), pointer + "/" + i, found);
      }
    }
  }

  private static Map<String, Object> read(String json) {
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      parser.nextToken();
      return map(value(parser));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Object value(JsonParser parser) throws IOException {
    if (parser.currentToken() == JsonToken.START_OBJECT) {
      Map<String, Object> members = new LinkedHashMap<>();
      while (parser.nextToken() != JsonToken.END_OBJECT) {
        String name = parser.currentName();
        parser.nextToken();
        members.put(name, value(parser));
      }
      return members;
    }
    if (parser.currentToken() == JsonToken.START_ARRAY) {
      List<Object> items = new ArrayList<>();
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        items.add(value(parser));
      }
      return items;
    }
    return parser.getText();
  }
}
