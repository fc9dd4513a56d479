package org.rimefast.languageserver.internal;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Names of files, as the protocol has them. */
final class Uris {
  static final String RULES = ".rime";
  static final String CASES = ".cases.rime";

  private static final Pattern SCHEME = Pattern.compile("[a-zA-Z][a-zA-Z0-9+.-]*:.*");

  private Uris() {}

  /** True for the name of a file, and not for that of a shipped standard. */
  static boolean isUri(String name) {
    return SCHEME.matcher(name).matches();
  }

  /** The same for all spellings of a name: clients differ in what they write with percent signs. */
  static String key(String uri) {
    try {
      URI parsed = new URI(uri).normalize();
      String path = parsed.getPath();
      if (path == null) {
        return uri;
      }
      boolean drive = path.length() > 2 && path.charAt(0) == '/' && path.charAt(2) == ':';
      String host = parsed.getAuthority() == null ? "" : parsed.getAuthority();
      return parsed.getScheme()
          + "://"
          + host
          + (drive ? path.substring(0, 2).toLowerCase(Locale.ROOT) + path.substring(2) : path);
    } catch (URISyntaxException e) {
      return uri;
    }
  }

  /** The folder of a file, with the slash at its end; empty for what lies in none. */
  static String folder(String uri) {
    return uri.substring(0, uri.lastIndexOf('/') + 1);
  }

  /** A file's folder and some of those around it, nearest first. */
  static List<String> folders(String uri, int most) {
    List<String> folders = new ArrayList<>();
    String folder = folder(uri);
    while (!folder.isEmpty() && !folder.endsWith("//") && folders.size() < most) {
      folders.add(folder);
      folder = folder(folder.substring(0, folder.length() - 1));
    }
    return folders;
  }

  /** A file beside another one, or further down; empty if the other lies in no folder. */
  static Optional<String> beside(String uri, String name) {
    String folder = folder(uri);
    if (folder.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(folder + new URI(null, null, "/" + name, null).getRawPath().substring(1));
    } catch (URISyntaxException e) {
      return Optional.empty();
    }
  }

  /** The name without its folder and what it ends in. */
  static String stem(String uri) {
    String end = uri.endsWith(CASES) ? CASES : uri.endsWith(RULES) ? RULES : "";
    return uri.substring(0, uri.length() - end.length());
  }
}
