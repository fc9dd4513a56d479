package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A missing value is named so that its author finds it. */
class MissingWordsTest {
  private static final String PLAN =
      """
      {'format': 'rimefast-plan-1', 'id': 'p', 'title': 'Small (invented)', 'units': 'mm',
       'shell': {'size': '45G1'},
       'openings': [{'id': 'D', 'face': 'left', 'from': 0, 'sill': 0, 'width': 900, 'height': 2000}],
       'studs': [{'id': 'S', 'face': 'left', 'holes': [{'up': 300, 'width': 19, 'height': 38}]}],
       'boxes': [{'id': 'B', 'kind': 'device', 'face': 'left', 'devices': [{'kind': 'switch'}]}],
       'runs': [{'id': 'C1', 'kind': 'metal-clad-cable', 'conductors': [{'size': '12 AWG'}],
         'path': [{'face': 'left'}, {'face': 'left'}]}],
       'circuits': [{'id': 'L1'}]}
      """;
  private static final PlanFacts FACTS = new PlanFacts(Given.plan(PLAN), Given.DICTIONARY);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /runs/0/bendRadius          | bend radius of cable C1
          /runs/0/conductors          | conductors of cable C1
          /runs/0/supports            | supports of cable C1
          /runs/0/slack/from          | slack at the first end of cable C1
          /runs/0/slack/to            | slack at the last end of cable C1
          /runs/0/slack/corners       | slack at the corners of cable C1
          /runs/0/fromSide            | side at the first end of cable C1
          /runs/0/toConnector         | connector at the last end of cable C1
          /runs/0/path/1/bend         | bend of point 2 of the path of cable C1
          /runs/0/conductors/0/rating | rating of group 1 of the conductors of cable C1
          /studs/0/holes/0/plate      | plate of service hole 1 of stud S
          /boxes/0/devices/0/behind   | depth behind the strap of device 1 of box B
          /boxes/0/wireConnectors     | wire connectors of box B
          /openings/0/door            | door of opening D
          /circuits/0/breaker         | breaker of circuit L1
          /foaming/nozzle             | nozzle of the foam gun
          """)
  void aMissingValueIsNamedInWords(String pointer, String words) {
    assertThat(FACTS.missing(pointer).description()).isEqualTo(words);
  }
}
