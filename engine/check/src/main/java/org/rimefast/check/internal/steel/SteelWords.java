package org.rimefast.check.internal.steel;

import org.rimefast.check.Dictionary;

/** All words of corrugated steel modules. */
public final class SteelWords {
  private SteelWords() {}

  /** Adds them all. */
  public static void addTo(Dictionary.Builder words) {
    Nouns.addTo(words);
    PartWords.addTo(words);
    ShellWords.addTo(words);
    Facing.addTo(words);
    GapWords.addTo(words);
    BehindWords.addTo(words);
    StudWords.addTo(words);
    HoleWords.addTo(words);
    RunWords.addTo(words);
    FaceWords.addTo(words);
  }
}
