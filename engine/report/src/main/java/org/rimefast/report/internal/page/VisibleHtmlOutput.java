package org.rimefast.report.internal.page;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import org.jspecify.annotations.Nullable;
import org.rimefast.report.internal.VisibleText;

/** Escapes every text by where it stands, and makes visible what would hide or reorder it. */
public final class VisibleHtmlOutput extends OwaspHtmlTemplateOutput {
  private final StringOutput written;

  /** An empty page. */
  public VisibleHtmlOutput() {
    this(new StringOutput());
  }

  private VisibleHtmlOutput(StringOutput written) {
    super(written);
    this.written = written;
  }

  @Override
  public void writeUserContent(@Nullable String value) {
    super.writeUserContent(value == null ? null : VisibleText.of(value));
  }

  /** All that was written. */
  public String text() {
    return written.toString();
  }
}
