package org.rimefast.languageserver;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceText;

/**
 * What the server needs of the program that runs it. Asked by several threads at once. Files are
 * named by their URIs, as editors name them: {@code file:///jobs/house.rime}.
 */
public interface EditorHost {
  /** The text of a shipped standard. */
  Optional<SourceText> shipped(String name);

  /**
   * The text of a file that is not open in the editor.
   *
   * @return empty if there is none, or none that can be read as UTF-8 text
   */
  Optional<String> read(String uri);

  /**
   * The files of rules, cases and waivers in a folder: those that end in {@code .rime}, in order.
   *
   * @param uri of the folder; it ends with a slash
   */
  List<String> files(String uri);

  /**
   * Runs cases.
   *
   * @param standard a standard without errors
   * @param cases each of a rule that the standard has; {@link Case#file} is the URI of its file
   * @return one for each case, in their order
   */
  List<CaseOutcome> runCases(Standard standard, List<Case> cases);
}
