package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimefast.check.Verdict.BROKEN;
import static org.rimefast.check.Verdict.MET;
import static org.rimefast.check.Verdict.UNDECIDED;

import org.junit.jupiter.api.Test;
import org.rimefast.plan.Plan;

/**
 * Words for tracks and the studs in them, each met, broken and undecided. Studs are 41.3 mm deep
 * and reach from the floor to 25 mm below the roof's ribs. Plans are invented.
 */
class TrackWordsTest {
  private static final String STUDS =
      ", 'studs': [{'id': 'in', 'face': 'left', 'along': 400, 'material': 'steel'},"
          + " {'id': 'deep', 'face': 'left', 'along': 800, 'material': 'steel',"
          + " 'section': '362S162-43'}, {'id': 'out', 'face': 'left', 'along': 5000,"
          + " 'material': 'steel'}]";

  private static String track(String id, double up, String more) {
    return "{'id': '%s', 'face': 'left', 'along': 1000, 'up': %s, 'height': 32%s}"
        .formatted(id, up, more);
  }

  private static String tracks(String... tracks) {
    return STUDS + ", 'tracks': [" + String.join(", ", tracks) + "]";
  }

  private static Finding ask(String sentence, Plan plan, String element, Verdict expected) {
    Finding finding = Given.explain(sentence, plan, element);
    assertThat(finding.verdict()).as(finding.reason()).isEqualTo(expected);
    return finding;
  }

  @Test
  void aStudOverlapsATrackUnlessItsEndIsInIt() {
    Plan foot = Given.module(40, 25, tracks(track("foot", 16, ", 'width': 2000")));
    String sentence = "stud must not overlap a track";
    ask(sentence, foot, "in", MET);
    assertThat(ask(sentence, foot, "deep", BROKEN).evidence().toString())
        .contains("name=the stud reaches past the track by, value=50.8 mm");
    ask(sentence, foot, "out", MET);
    assertThat(ask("stud must overlap each track", foot, "in", BROKEN).evidence().toString())
        .contains("name=in the track, value=the end of the stud");
    Plan middle = Given.module(40, 25, tracks(track("middle", 900, ", 'width': 2000")));
    ask(sentence, middle, "in", BROKEN);
    ask("track must not overlap a stud", middle, "middle", BROKEN);
    ask(sentence, middle, "out", MET);
    Plan unknown = Given.module(40, 25, tracks(track("lost", 900, "")));
    assertThat(ask(sentence, unknown, "in", UNDECIDED).missing())
        .extracting(MissingValue::pointer)
        .contains("/tracks/0/width");
  }

  @Test
  void aStudTouchesTheTrackItStandsInAndMetalLeadsOn() {
    Plan plan =
        Given.module(40, 0, tracks(track("foot", 16, ", 'width': 2000, 'material': 'steel'")));
    ask("stud must touch a track", plan, "in", MET);
    ask("stud must touch a track", plan, "out", BROKEN);
    ask("track must be metal", plan, "foot", MET);
    ask("track must not touch the shell", plan, "foot", BROKEN);
    String path = "track must not lead over metal to a face";
    ask(path, plan, "foot", BROKEN);
    Plan unknown = Given.module(40, 0, tracks(track("foot", 16, ", 'width': 2000")));
    assertThat(ask(path, unknown, "foot", UNDECIDED).missing())
        .extracting(MissingValue::pointer)
        .contains("/tracks/0/material");
    Plan plastic =
        Given.module(40, 25, tracks(track("foot", 16, ", 'width': 2000, 'material': 'plastic'")));
    ask(path, plastic, "foot", MET);
  }

  @Test
  void aTracksDepthIsThatOfTheStudsUnlessGiven() {
    String sentence = "track must have depth <= 41.3 mm";
    String more = tracks(track("plain", 16, ""), track("given", 16, ", 'depth': 43"));
    Plan plan = Given.module(40, 25, more);
    ask(sentence, plan, "plain", MET);
    ask(sentence, plan, "given", BROKEN);
    String studless =
        Given.json(40, 25, more)
            .replace("'stud': {'depth': 41.3, 'flange': 31.75, 'thickness': 0.84},", "");
    assertThat(ask(sentence, Given.plan(studless), "plain", UNDECIDED).missing())
        .extracting(MissingValue::pointer)
        .containsExactly("/faces/default/stud");
    assertThat(ask("track must have width >= 1 m", plan, "plain", UNDECIDED).missing())
        .extracting(MissingValue::pointer)
        .containsExactly("/tracks/0/width");
  }

  @Test
  void clearanceAndPlaceOfATrackAreThoseOfAPart() {
    Plan plan = Given.module(40, 25, tracks(track("foot", 16, ", 'width': 1000")));
    ask("track must have clearance >= 25 mm", plan, "foot", MET);
    ask("track must have clearance >= 26 mm", plan, "foot", BROKEN);
    ask("track must not stand proud of the studs", plan, "foot", MET);
    Plan unknown = Given.module(40, 25, tracks(track("foot", 16, "")));
    ask("track must have clearance >= 25 mm", unknown, "foot", UNDECIDED);
  }
}
