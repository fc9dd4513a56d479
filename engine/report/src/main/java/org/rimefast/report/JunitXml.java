package org.rimefast.report;

import java.io.StringWriter;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.rimefast.check.cases.CaseProblem;
import org.rimefast.check.cases.CaseResult;
import org.rimefast.check.cases.CaseResults;
import org.rimefast.check.cases.Mismatch;
import org.rimefast.report.internal.VisibleText;

/**
 * What came of cases, in the XML that programs which run tests exchange by custom, first written by
 * JUnit: one {@code testsuite} for each standard, one {@code testcase} for each case, a {@code
 * failure} for one that did not come out as expected and an {@code error} for one that could not be
 * run. It holds no time and no host: the same results give the same text everywhere.
 */
public final class JunitXml {
  private static final String EVERY_RULE = "every-rule";

  private final XMLStreamWriter out;

  private JunitXml(XMLStreamWriter out) {
    this.out = out;
  }

  /** The XML of several standards' cases; lines end in a line feed. */
  public static String write(List<CaseResults> all) {
    StringWriter text = new StringWriter();
    try {
      XMLStreamWriter out = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
      new JunitXml(out).document(all);
      out.close();
    } catch (XMLStreamException e) {
      throw new IllegalStateException("writing to memory cannot fail", e);
    }
    return text.append('\n').toString();
  }

  private void document(List<CaseResults> all) throws XMLStreamException {
    out.writeStartDocument("UTF-8", "1.0");
    line(0);
    out.writeStartElement("testsuites");
    counts(
        all.stream().mapToInt(results -> results.results().size()).sum(),
        all.stream().mapToInt(CaseResults::otherwise).sum(),
        all.stream().mapToInt(CaseResults::notRun).sum());
    for (CaseResults results : all) {
      suite(results);
    }
    line(0);
    out.writeEndElement();
    out.writeEndDocument();
  }

  private void suite(CaseResults results) throws XMLStreamException {
    line(1);
    out.writeStartElement("testsuite");
    attribute("name", results.standard().name() + " edition " + results.standard().edition());
    counts(results.results().size(), results.otherwise(), results.notRun());
    attribute("skipped", "0");
    for (CaseResult result : results.results()) {
      test(result, results);
    }
    line(1);
    out.writeEndElement();
  }

  private void counts(int tests, int failures, int errors) throws XMLStreamException {
    attribute("tests", Integer.toString(tests));
    attribute("failures", Integer.toString(failures));
    attribute("errors", Integer.toString(errors));
  }

  private void test(CaseResult result, CaseResults results) throws XMLStreamException {
    line(2);
    out.writeStartElement("testcase");
    attribute(
        "classname", results.standard().name() + "." + result.example().rule().orElse(EVERY_RULE));
    attribute("name", result.example().name());
    if (!result.problems().isEmpty()) {
      CaseProblem first = result.problems().get(0);
      told("error", "could-not-be-run", first.message(), result, results);
    } else if (!result.mismatches().isEmpty()) {
      Mismatch first = result.mismatches().get(0);
      String message = "expected " + first.expected() + "; instead " + first.found();
      told("failure", "not-as-expected", message, result, results);
    }
    if (!result.isAsExpected()) {
      line(2);
    }
    out.writeEndElement();
  }

  private void told(
      String element, String type, String message, CaseResult result, CaseResults results)
      throws XMLStreamException {
    line(3);
    out.writeStartElement(element);
    attribute("type", type);
    attribute("message", message);
    // The lines are free of controls already, but for their ends.
    out.writeCharacters(CaseReport.one(result, results, TextOptions.PLAIN));
    out.writeEndElement();
  }

  private void attribute(String name, String value) throws XMLStreamException {
    out.writeAttribute(name, VisibleText.of(value));
  }

  private void line(int depth) throws XMLStreamException {
    out.writeCharacters("\n" + "  ".repeat(depth));
  }
}
