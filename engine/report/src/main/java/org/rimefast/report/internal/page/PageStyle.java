package org.rimefast.report.internal.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * The style that stands in a page, and the policy that allows a browser nothing else.
 *
 * @param sheet the style sheet; it holds no character that means something in HTML
 * @param policy a Content Security Policy (W3C, level 3)
 */
record PageStyle(String sheet, String policy) {
  private static final String SHEET = "/org/rimefast/report/standard-page.css";

  static final PageStyle STANDARD = of(read());

  private static PageStyle of(String sheet) {
    if (sheet.indexOf('<') >= 0 || sheet.indexOf('&') >= 0) {
      throw new IllegalStateException("a style sheet that cannot stand in a page as it is");
    }
    return new PageStyle(
        sheet,
        "default-src 'none'; style-src 'sha256-"
            + hash(sheet)
            + "'; base-uri 'none'; form-action 'none'");
  }

  private static String hash(String text) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return Base64.getEncoder()
          .encodeToString(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  private static String read() {
    try (InputStream in = PageStyle.class.getResourceAsStream(SHEET)) {
      if (in == null) {
        throw new IllegalStateException("the resource " + SHEET + " is not there");
      }
      // A browser makes each line end one line feed before it works out the hash.
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
    } catch (IOException e) {
      throw new UncheckedIOException("the resource " + SHEET + " cannot be read", e);
    }
  }
}
