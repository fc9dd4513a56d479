package org.rimefast.plan.internal.edit;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.rimefast.plan.PlanEdit;
import org.rimefast.plan.PlanEdits.Edited;
import org.rimefast.plan.PlanEdits.Fault;
import org.rimefast.plan.PlanLimits;
import org.rimefast.plan.internal.Wording;
import org.rimefast.plan.internal.json.JsonTree;
import org.rimefast.plan.internal.json.LooseTree;

/** Makes edits in the tree of a plan. */
public final class Editor {
  /** RFC 8259, section 6. */
  private static final Pattern JSON_NUMBER =
      Pattern.compile("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][-+]?[0-9]+)?");

  private final Map<String, Object> root;
  private final Elements elements;

  private Editor(Map<String, Object> root) {
    this.root = root;
    this.elements = new Elements(root);
  }

  /** Makes the edits. */
  public static Edited apply(byte[] plan, List<PlanEdit> edits) {
    List<Fault> faults = new ArrayList<>();
    Optional<Editor> editor = read(plan, faults);
    if (editor.isEmpty()) {
      return new Edited(Optional.empty(), faults);
    }
    for (int i = 0; i < edits.size(); i++) {
      try {
        editor.get().make(edits.get(i));
      } catch (Refused refused) {
        faults.add(new Fault(i, String.valueOf(refused.getMessage()), refused.remedy()));
      }
    }
    return new Edited(
        faults.isEmpty() ? Optional.of(LooseTree.print(editor.get().root)) : Optional.empty(),
        faults);
  }

  private static Optional<Editor> read(byte[] plan, List<Fault> faults) {
    JsonTree tree = JsonTree.read(plan, hasMark(plan) ? 3 : 0, PlanLimits.DEFAULT);
    JsonTree.Trouble trouble = tree.trouble();
    if (trouble != null) {
      faults.add(
          new Fault(
              -1,
              "The plan cannot be read (line " + trouble.place().line() + "): " + trouble.message(),
              trouble.remedy()));
      return Optional.empty();
    }
    if (tree.root() == null || !(LooseTree.of(tree.root()) instanceof Map<?, ?> members)) {
      faults.add(new Fault(-1, "The plan is no JSON object.", "Begin it with {."));
      return Optional.empty();
    }
    Optional<String> repeated = LooseTree.repeatedName(tree.root());
    if (repeated.isPresent()) {
      faults.add(
          new Fault(
              -1,
              "The plan has a name twice in one object"
                  + (repeated.get().isEmpty() ? "." : ", at " + repeated.get() + "."),
              "Keep one of them."));
      return Optional.empty();
    }
    return Optional.of(new Editor(typed(members)));
  }

  private static boolean hasMark(byte[] utf8) {
    return utf8.length >= 3
        && utf8[0] == (byte) 0xEF
        && utf8[1] == (byte) 0xBB
        && utf8[2] == (byte) 0xBF;
  }

  /** What the loose tree makes of an object. */
  @SuppressWarnings("unchecked")
  static Map<String, Object> typed(Map<?, ?> members) {
    return (Map<String, Object>) members;
  }

  /** What the loose tree makes of a list. */
  @SuppressWarnings("unchecked")
  static List<Object> typed(List<?> items) {
    return (List<Object>) items;
  }

  private interface Step {
    void run() throws Refused;
  }

  private void make(PlanEdit edit) throws Refused {
    Step step =
        edit.accept(
            new PlanEdit.Visitor<Step>() {
              @Override
              public Step set(PlanEdit.Set set) {
                return () -> Editor.this.set(set);
              }

              @Override
              public Step remove(PlanEdit.Remove remove) {
                return () -> Editor.this.remove(remove.target());
              }

              @Override
              public Step add(PlanEdit.Add add) {
                return () -> Editor.this.add(add);
              }
            });
    step.run();
  }

  private void set(PlanEdit.Set edit) throws Refused {
    PlanEdit.Target target = edit.target();
    Object value = value(edit.value());
    if (target.field().isEmpty()) {
      if (!target.element().startsWith("/")) {
        throw new Refused(
            "What is set is a field, or a place in the plan.",
            "Name a field of " + Wording.quoted(target.element()) + ", or begin with a slash.");
      }
      new Pointer(root, target.element()).set(value);
      return;
    }
    Map<String, Object> element = elements.find(target.element(), true);
    String[] words = target.field().get().split(" ", -1);
    FieldPath.find(element, words).set(value);
  }

  private void remove(PlanEdit.Target target) throws Refused {
    if (target.field().isPresent()) {
      Map<String, Object> element = elements.find(target.element(), false);
      String[] words = target.field().get().split(" ", -1);
      FieldPath field = FieldPath.find(element, words);
      if (!field.isThere()) {
        throw new Refused(
            Wording.quoted(target.element())
                + " has no "
                + target.field().get()
                + " of its own to take away.",
            elements.isFace(target.element())
                ? "What stands for all faces is at \"/faces/default\"."
                : "Take this edit out, or name a field that it has.");
      }
      field.remove();
    } else if (target.element().startsWith("/")) {
      new Pointer(root, target.element()).remove();
    } else {
      elements.remove(target.element());
    }
  }

  private void add(PlanEdit.Add edit) throws Refused {
    Object list = root.computeIfAbsent(edit.list(), name -> new ArrayList<>());
    if (!(list instanceof List<?> found)) {
      throw new Refused(
          Wording.quoted(edit.list()) + " is no list of the plan.",
          "Name a list such as boxes, studs or runs.");
    }
    Object entry = json(edit.json());
    if (entry instanceof List<?> entries) {
      typed(found).addAll(entries);
    } else if (entry instanceof Map<?, ?>) {
      typed(found).add(entry);
    } else {
      throw new Refused(
          "A new entry of " + edit.list() + " is an object in braces.",
          "Write it as in the plan: {\"id\": \"R-9\", ...}");
    }
  }

  private static Object value(PlanEdit.Value value) throws Refused {
    return switch (value.kind()) {
      case TEXT -> LooseTree.text(value.text());
      case NUMBER ->
          JSON_NUMBER.matcher(value.text()).matches()
              ? LooseTree.number(value.text())
              : LooseTree.text(value.text());
      case JSON -> json(value.text());
    };
  }

  private static Object json(String text) throws Refused {
    byte[] utf8 = text.getBytes(StandardCharsets.UTF_8);
    JsonTree tree = JsonTree.read(utf8, 0, PlanLimits.DEFAULT);
    JsonTree.Trouble trouble = tree.trouble();
    if (trouble != null || tree.root() == null) {
      throw new Refused(
          trouble == null
              ? "There is nothing between the triple quotes."
              : "What stands between the triple quotes is no JSON (line "
                  + trouble.place().line()
                  + " of it): "
                  + trouble.message().replaceFirst("^The file", "The text"),
          trouble == null ? "Write it as in the plan." : trouble.remedy());
    }
    if (LooseTree.repeatedName(tree.root()).isPresent()) {
      throw new Refused(
          "What stands between the triple quotes has a name twice in one object.",
          "Keep one of them.");
    }
    return LooseTree.of(tree.root());
  }

  /** A new object in order. */
  static Map<String, Object> structure() {
    return new LinkedHashMap<>();
  }
}
