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
    HoleLevelWords.addTo(words);
    RunWords.addTo(words);
    RunMakeWords.addTo(words);
    RunPathWords.addTo(words);
    SupportWords.addTo(words);
    EntryWords.addTo(words);
    BundleWords.addTo(words);
    ConductorWords.addTo(words);
    BoxFillWords.addTo(words);
    CircuitWords.addTo(words);
    PassWords.addTo(words);
    ApproachWords.addTo(words);
    CourseWords.addTo(words);
    ProudWords.addTo(words);
    OverlapWords.addTo(words);
    FaceWords.addTo(words);
    OpeningWords.addTo(words);
    CoverWords.addTo(words);
    FoamWords.addTo(words);
    SpaceWords.addTo(words);
    FloorLineWords.addTo(words);
    MetalWords.addTo(words);
  }
}
