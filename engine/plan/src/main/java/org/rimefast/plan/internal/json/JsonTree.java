package org.rimefast.plan.internal.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.PlanLimits;
import org.rimefast.plan.PlanSource.Place;
import org.rimefast.plan.internal.json.Node.Container;
import org.rimefast.plan.internal.json.Node.Position;
import org.rimefast.plan.internal.json.Node.Sequence;
import org.rimefast.plan.internal.json.Node.Step;
import org.rimefast.plan.internal.json.Node.Structure;

/**
 * A JSON text as a tree.
 *
 * @param root the outermost value; null if the text broke off before it began
 * @param trouble what stopped the reading; null if the whole text was read
 */
public record JsonTree(@Nullable Node root, @Nullable Trouble trouble) {

  /** What is wrong with a text, and where. */
  public record Trouble(String code, String pointer, Place place, String message, String remedy) {}

  /**
   * Reads a text in UTF-8. Never throws for what a text may hold; memory and time are bounded by
   * the text's length, and nothing is kept of a value that exceeds {@code limits}.
   *
   * @param text the whole text, checked to be UTF-8
   * @param start where it starts in the array
   */
  public static JsonTree read(byte[] text, int start, PlanLimits limits) {
    Reader reader = new Reader(text, start, limits);
    return new JsonTree(reader.root, reader.trouble);
  }

  private static final class Reader {
    private final byte[] text;
    private final int start;
    private final PlanLimits limits;
    private final LineCounter counter;
    private final Deque<Container> open = new ArrayDeque<>();
    private @Nullable Node root;
    private @Nullable Trouble trouble;
    private @Nullable String name;
    private int nameLine;
    private int nameColumn;

    Reader(byte[] text, int start, PlanLimits limits) {
      this.text = text;
      this.start = start;
      this.limits = limits;
      this.counter = new LineCounter(text, start);
      SyntaxTrouble syntax = new SyntaxTrouble(text, start);
      try (JsonParser parser = factory(limits).createParser(text, start, text.length - start)) {
        readAll(parser, syntax);
      } catch (IOException e) {
        throw new IllegalStateException("bytes in memory cannot fail to be read", e);
      }
      for (Container container : open) {
        container.markOpen(true);
      }
    }

    /** Factories are dear to make, and keep the names they have seen. */
    private static final JsonFactory USUAL = make(PlanLimits.DEFAULT);

    private static JsonFactory factory(PlanLimits limits) {
      return limits.textLength() == PlanLimits.DEFAULT.textLength() ? USUAL : make(limits);
    }

    private static JsonFactory make(PlanLimits limits) {
      return new JsonFactoryBuilder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(Integer.MAX_VALUE)
                  .maxNumberLength(limits.textLength())
                  .maxStringLength(limits.textLength())
                  .maxNameLength(limits.textLength())
                  .build())
          .configure(JsonFactory.Feature.INTERN_FIELD_NAMES, false)
          .build();
    }

    private void readAll(JsonParser parser, SyntaxTrouble syntax) throws IOException {
      try {
        while (trouble == null) {
          JsonToken token = parser.nextToken();
          if (token == null) {
            if (root == null) {
              fail(syntax.explain(open.peek()));
            }
            return;
          }
          int offset = start + (int) parser.currentTokenLocation().getByteOffset();
          syntax.at(token, offset);
          take(parser, token, offset, syntax);
        }
      } catch (StreamConstraintsException e) {
        tooLarge(syntax.startOfLong(limits.textLength()));
      } catch (JsonProcessingException e) {
        fail(syntax.explain(open.peek()));
      }
    }

    private void take(JsonParser parser, JsonToken token, int offset, SyntaxTrouble syntax)
        throws IOException {
      counter.advance(offset);
      if (root != null && open.isEmpty()) {
        fail(SyntaxTrouble.afterEnd(offset));
        return;
      }
      switch (token) {
        case END_OBJECT, END_ARRAY -> open.pop();
        case FIELD_NAME -> {
          name = parser.currentName();
          nameLine = counter.line();
          nameColumn = counter.column();
        }
        case START_OBJECT -> openContainer(new Structure(step()));
        case START_ARRAY -> openContainer(new Sequence(step()));
        case VALUE_STRING -> {
          syntax.insideText();
          String value = parser.getText();
          syntax.afterText();
          if (value.length() > limits.textLength()) {
            tooLarge(offset);
          } else {
            put(new Node.Text(step(), value));
          }
        }
        case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT ->
            put(new Node.Numeral(step(), parser.getText()));
        default -> put(new Node.Literal(step(), parser.getText()));
      }
    }

    private Step step() {
      Container parent = open.peek();
      if (parent == null) {
        return Step.root(new Position(0, 0, counter.line(), counter.column()));
      }
      if (parent instanceof Sequence sequence) {
        return Step.item(sequence, new Position(0, 0, counter.line(), counter.column()));
      }
      if (!(parent instanceof Structure structure) || name == null) {
        throw new IllegalStateException("a member without a name");
      }
      return Step.member(
          structure, name, new Position(nameLine, nameColumn, counter.line(), counter.column()));
    }

    private void put(Node node) {
      Container parent = open.peek();
      if (parent == null) {
        root = node;
      } else {
        parent.add(node);
      }
    }

    private void openContainer(Container container) {
      if (open.size() >= limits.depth()) {
        trouble =
            new Trouble(
                "too-deep",
                pointerOfOpen(),
                new Place(counter.line(), counter.column()),
                "Values are nested more than " + limits.depth() + " levels deep here.",
                "A plan needs no more than 6 levels; take the extra brackets out.");
        return;
      }
      put(container);
      open.push(container);
    }

    private void tooLarge(int offset) {
      counter.advance(offset);
      trouble =
          new Trouble(
              "too-large",
              pointerOfOpen(),
              new Place(counter.line(), counter.column()),
              (offset < text.length && text[offset] == '"' ? "A text" : "A number")
                  + " here is longer than "
                  + limits.textLength()
                  + " characters.",
              "Shorten it; the rest of the file was not read.");
    }

    private void fail(SyntaxTrouble.Found found) {
      counter.advance(found.offset());
      trouble =
          new Trouble(
              "not-json",
              pointerOfOpen(),
              new Place(counter.line(), counter.column()),
              found.message(),
              found.remedy());
    }

    private String pointerOfOpen() {
      Container innermost = open.peek();
      return innermost == null ? "" : innermost.pointer();
    }
  }
}
