package org.rimefast.report;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A page as the XML parser of the platform sees it. */
final class PageStructure {
  private final Document document;

  private PageStructure(Document document) {
    this.document = document;
  }

  /** Fails if the page is not well-formed. */
  static PageStructure of(String page) {
    try {
      DocumentBuilder builder = DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder();
      // A parser that asks for anything from outside gets nothing.
      builder.setEntityResolver((publicId, systemId) -> new InputSource(new StringReader("")));
      builder.setErrorHandler(null);
      return new PageStructure(builder.parse(new InputSource(new StringReader(page))));
    } catch (Exception e) {
      throw new AssertionError("the page is not well-formed", e);
    }
  }

  List<Element> all(String name) {
    NodeList found = document.getElementsByTagName(name);
    List<Element> all = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      all.add((Element) found.item(i));
    }
    return all;
  }

  Set<String> elementNames() {
    return all("*").stream().map(Element::getTagName).collect(Collectors.toSet());
  }

  List<String> attributes(String name) {
    return all("*").stream()
        .filter(element -> element.hasAttribute(name))
        .map(element -> element.getAttribute(name))
        .toList();
  }

  /** The text of the element with this id. */
  String textOf(String id) {
    return all("*").stream()
        .filter(element -> element.getAttribute("id").equals(id))
        .map(element -> element.getTextContent().replaceAll("\\s+", " ").strip())
        .findFirst()
        .orElseThrow(() -> new AssertionError("nothing has the id " + id));
  }

  String text() {
    return document.getDocumentElement().getTextContent();
  }

  /** The levels of the headings, in order. */
  List<Integer> headings() {
    return all("*").stream()
        .map(element -> element.getTagName().toLowerCase(Locale.ROOT))
        .filter(name -> name.matches("h[1-6]"))
        .map(name -> Integer.parseInt(name.substring(1)))
        .toList();
  }

  /** How many cells each row of a table has. */
  static List<Integer> cells(Element table) {
    List<Integer> cells = new ArrayList<>();
    NodeList rows = table.getElementsByTagName("tr");
    for (int i = 0; i < rows.getLength(); i++) {
      int count = 0;
      for (Node cell = rows.item(i).getFirstChild(); cell != null; cell = cell.getNextSibling()) {
        count += cell instanceof Element ? 1 : 0;
      }
      cells.add(count);
    }
    return cells;
  }
}
