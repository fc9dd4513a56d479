package org.rimefast.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.net.URL;
import java.util.List;
import java.util.Objects;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimefast.check.cases.CaseResults;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

class JunitXmlTest {
  private static final List<CaseResults> ALL =
      List.of(SampleCases.everything(), SampleCases.sound());

  @Test
  void everythingIsTold() throws IOException {
    Golden.check("cases.xml", JunitXml.write(ALL));
  }

  @Test
  void theXmlFollowsTheSchema() throws Exception {
    validate(JunitXml.write(ALL));
    validate(JunitXml.write(List.of()));
  }

  /** A schema that refuses nothing would say nothing. */
  @ParameterizedTest
  @CsvSource({
    "tests=\"6\", tests=\"some\"",
    "<testcase classname, <testcase class",
    "type=\"could-not-be-run\", kind=\"could-not-be-run\"",
    "</testsuites>, <case/></testsuites>"
  })
  void theSchemaRefusesWhatDoesNotFollowIt(String right, String wrong) {
    String xml = JunitXml.write(ALL);
    String changed = xml.replace(right, wrong);
    assertThat(changed).isNotEqualTo(xml);
    assertThatThrownBy(() -> validate(changed)).isInstanceOf(SAXException.class);
  }

  @Test
  void theCountsAreThoseOfTheElements() throws Exception {
    Element root =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(JunitXml.write(ALL))))
            .getDocumentElement();
    assertThat(root.getAttribute("tests")).isEqualTo("6").isEqualTo(count(root, "testcase"));
    assertThat(root.getAttribute("failures")).isEqualTo("2").isEqualTo(count(root, "failure"));
    assertThat(root.getAttribute("errors")).isEqualTo("2").isEqualTo(count(root, "error"));
    Element failure = (Element) root.getElementsByTagName("failure").item(0);
    assertThat(failure.getAttribute("message"))
        .startsWith("expected broken by box R-1; instead met by box R-1: clearance of box R-1 is");
    assertThat(((Element) failure.getParentNode()).getAttribute("name"))
        .isEqualTo("a box <before> a rib & \"near\" it");
  }

  private static String count(Element root, String name) {
    return Integer.toString(root.getElementsByTagName(name).getLength());
  }

  private static void validate(String xml) throws SAXException, IOException {
    URL schema = Objects.requireNonNull(JunitXmlTest.class.getResource("junit.xsd"));
    SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
        .newSchema(schema)
        .newValidator()
        .validate(new StreamSource(new StringReader(xml)));
  }
}
