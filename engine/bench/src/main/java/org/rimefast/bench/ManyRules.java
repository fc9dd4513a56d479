package org.rimefast.bench;

import java.util.List;
import java.util.Random;
import org.rimefast.lang.source.SourceText;

/** Standards of many rules (invented, seeded): each sentence another, of the forms people write. */
final class ManyRules {
  private static final List<String> PARTS =
      List.of("box", "stud", "bar", "bracket", "panel", "luminaire");
  private static final List<String> UNITS = List.of("mm", "in", "cm");

  private final Random random;

  private ManyRules(long seed) {
    this.random = new Random(seed);
  }

  static SourceText of(int rules, long seed) {
    ManyRules maker = new ManyRules(seed);
    StringBuilder text = new StringBuilder("standard many edition 1\n\n");
    text.append("let foam behind a box be 2 in\n\n");
    text.append("let damp room be a room where its humidity >= 50 %\n\n");
    for (int i = 0; i < rules; i++) {
      text.append("rule r-").append(i).append(" \"Rule ").append(i).append("\"\n  ");
      text.append(maker.sentence());
      text.append("\n  severity fix\n  stage framing\n");
      text.append("  because \"measured\"\n  source \"common practice, no source\"\n\n");
    }
    return new SourceText("many.rime", text.toString());
  }

  private String any(List<String> words) {
    return words.get(random.nextInt(words.size()));
  }

  private String length() {
    return (random.nextInt(400) + 1) + " " + any(UNITS);
  }

  private String condition() {
    return switch (random.nextInt(6)) {
      case 0 -> "it is metal";
      case 1 -> "its depth >= " + length();
      case 2 -> "it is on a wall and not (it touches the shell)";
      case 3 -> "foam kind of its face is closed-cell";
      case 4 -> "it is a box or it is a stud";
      default -> "its room is a damp room";
    };
  }

  private String sentence() {
    String part = any(PARTS);
    return switch (random.nextInt(7)) {
      case 0 -> "part must have clearance >= " + length();
      case 1 -> "each part where " + condition() + " must not touch the shell";
      case 2 ->
          "each box where it is recessed must sit in outer bay with clearance >= foam behind a box";
      case 3 -> part + " must not be within " + length() + " of a bar (where it is metal)";
      case 4 ->
          "for each room, number of parts (where "
              + condition()
              + ") must be at most "
              + random.nextInt(40);
      case 5 ->
          "each part where "
              + condition()
              + " must (touch a stud or touch a bracket) and have depth <= "
              + length();
      default ->
          part
              + " must have foam cover >= (depth + "
              + length()
              + ") divided by 2 unless it is on the roof";
    };
  }
}
