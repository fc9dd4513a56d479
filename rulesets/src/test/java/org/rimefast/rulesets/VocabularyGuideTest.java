package org.rimefast.rulesets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.rimefast.check.SteelModules;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.lang.vocabulary.Vocabulary;
import org.rimefast.units.Dimension;
import org.rimefast.units.Unit;
import org.rimefast.units.Units;

/** The guide's tables hold every unit and every word with its type, and no other. */
class VocabularyGuideTest {
  private static final Guide GUIDE = Guide.read("writing-a-standard.md");
  private static final Vocabulary VOCABULARY = SteelModules.dictionary().vocabulary();

  @Test
  void everyUnitIsInTheTableBesideThoseThatMeasureTheSame() {
    List<Unit> all = new ArrayList<>();
    List<Dimension> dimensions = new ArrayList<>();
    for (List<String> row : GUIDE.table("Numbers and units").rows()) {
      List<Unit> units = units(row.get(1));
      assertThat(units).extracting(Unit::dimension).as(row.get(0)).isNotEmpty();
      assertThat(units.stream().map(Unit::dimension).distinct()).as(row.get(0)).hasSize(1);
      dimensions.add(units.get(0).dimension());
      all.addAll(units);
    }
    assertThat(dimensions).doesNotHaveDuplicates();
    assertThat(all).containsExactlyInAnyOrderElementsOf(Units.all());
  }

  @Test
  void theTableOfNounsIsThatOfTheVocabulary() {
    List<List<String>> expected = new ArrayList<>();
    for (Noun noun : VOCABULARY.nouns()) {
      List<String> broader = noun.broader().stream().map(Noun::singular).toList();
      expected.add(
          List.of(
              Guide.coded(List.of(noun.singular())),
              Guide.coded(List.of(noun.plural())),
              Guide.coded(broader)));
    }
    assertSame("Nouns", 3, expected);
  }

  @Test
  void theTableOfPropertiesIsThatOfTheVocabulary() {
    List<List<String>> expected = new ArrayList<>();
    for (Property property : VOCABULARY.properties()) {
      expected.add(
          List.of(
              Guide.coded(List.of(property.pattern())),
              Guide.coded(List.of(property.owner().singular())),
              kind(property.type()),
              unitOrWords(property.type())));
    }
    assertSame("Properties", 4, expected);
  }

  @Test
  void theTableOfLinksIsThatOfTheVocabulary() {
    assertSame(
        "Links",
        3,
        VOCABULARY.links().stream()
            .map(
                link ->
                    List.of(
                        Guide.coded(List.of(link.phrase())),
                        Guide.coded(List.of(link.owner().singular())),
                        Guide.coded(List.of(link.target().singular()))))
            .toList());
  }

  @Test
  void theTableOfRelationsIsThatOfTheVocabulary() {
    List<List<String>> expected = new ArrayList<>();
    for (Relation relation : VOCABULARY.relations()) {
      boolean being = relation.form() == Relation.Form.BE;
      expected.add(
          List.of(
              Guide.coded(List.of((being ? "be " : "") + relation.pattern())),
              Guide.coded(List.of((being ? "is " : "") + relation.third())),
              Guide.coded(List.of(relation.subject().singular())),
              slots(relation.slots())));
    }
    assertSame("Relations", 4, expected);
  }

  @Test
  void theTableOfStretchesIsThatOfTheVocabulary() {
    assertSame(
        "Stretches",
        3,
        VOCABULARY.stretches().stream()
            .map(
                stretch ->
                    List.of(
                        Guide.coded(List.of(stretch.pattern())),
                        Guide.coded(List.of(stretch.path().singular())),
                        slots(stretch.slots())))
            .toList());
  }

  /** Compares the first columns with the vocabulary; the last says in words what it means. */
  private static void assertSame(String heading, int columns, List<List<String>> expected) {
    Guide.Table table = GUIDE.table(heading);
    assertThat(table.rows())
        .extracting(row -> row.subList(0, columns))
        .containsExactlyInAnyOrderElementsOf(expected);
    assertThat(table.column(columns)).noneMatch(String::isBlank);
  }

  private static String slots(List<Slot> slots) {
    return slots.stream().map(VocabularyGuideTest::slot).collect(Collectors.joining(", "));
  }

  private static String slot(Slot slot) {
    if (slot instanceof Slot.Along) {
      return "a stretch of its path";
    }
    if (slot instanceof Slot.Element element) {
      String noun = element.noun().singular();
      return ("aeiou".indexOf(noun.charAt(0)) >= 0 ? "an `" : "a `") + noun + "`";
    }
    if (slot instanceof Slot.Kind kind) {
      return "a kind of `" + kind.noun().singular() + "`";
    }
    ValueType type = ((Slot.Of) slot).type();
    return type instanceof ValueType.Choice ? unitOrWords(type) : "a " + kind(type);
  }

  /** What the table of units calls such a value. */
  private static String kind(ValueType type) {
    if (type instanceof ValueType.Number number) {
      return kinds().get(number.dimension());
    }
    return type instanceof ValueType.Choice ? "word" : "text";
  }

  private static String unitOrWords(ValueType type) {
    if (type instanceof ValueType.Choice choice) {
      return Guide.coded(choice.words());
    }
    boolean plain =
        type instanceof ValueType.Text
            || (type instanceof ValueType.Number number && number.example().equals(Units.ONE));
    return plain ? "none" : Guide.coded(List.of(((ValueType.Number) type).example().symbol()));
  }

  private static Map<Dimension, String> kinds() {
    Map<Dimension, String> kinds = new LinkedHashMap<>();
    GUIDE
        .table("Numbers and units")
        .rows()
        .forEach(row -> kinds.put(units(row.get(1)).get(0).dimension(), row.get(0)));
    return kinds;
  }

  private static List<Unit> units(String cell) {
    if (cell.equals("none")) {
      return List.of(Units.ONE);
    }
    return Guide.code(cell).stream().map(symbol -> Units.find(symbol).orElseThrow()).toList();
  }
}
