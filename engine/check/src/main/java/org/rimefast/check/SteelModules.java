package org.rimefast.check;

import java.util.List;
import org.rimefast.check.internal.steel.SteelWords;

/** The vocabulary of corrugated steel modules. */
public final class SteelModules {
  /** The stages of the work, in order. The hold point is between pre-foam and foam. */
  public static final List<String> STAGES =
      List.of("layout", "framing", "rough-in", "pre-foam", "foam", "lining", "handover");

  private SteelModules() {}

  /** The shipped words: nouns, properties and relations of modules, with what they do on a plan. */
  public static Dictionary dictionary() {
    Dictionary.Builder words = Dictionary.builder(STAGES);
    SteelWords.addTo(words);
    return words.build();
  }
}
