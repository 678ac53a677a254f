package io.ovenmark.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/**
 * The files that the pages are made of, from the class path: the site's own and the one library
 * that it uses. All pages are one shell; what it shows follows from the address.
 */
final class Site {
  /** The addresses of the pages; app.js knows what each shows. */
  static final List<String> PAGES =
      List.of(
          "/",
          "/search",
          "/begin",
          "/take-in",
          "/share/{formula}",
          "/carry/{formula}/{variant}",
          "/formulas/{formula}",
          "/worksheet/{formula}",
          "/worksheet/{formula}/{variant}",
          "/levers/{formula}",
          "/levers/{formula}/{variant}",
          "/scale/{formula}",
          "/scale/{formula}/{variant}",
          "/mattered/{formula}",
          "/mattered/{formula}/{variant}",
          "/card/{formula}",
          "/card/{formula}/{variant}",
          "/story/{formula}",
          "/story/{formula}/{variant}",
          "/label/{formula}",
          "/label/{formula}/{variant}",
          "/beside",
          "/bakes/{formula}/{bake}",
          "/window/{formula}",
          "/window/{formula}/{variant}",
          "/record/{formula}",
          "/record/{formula}/{variant}",
          "/preferences",
          "/phone",
          "/drafts/{draft}",
          "/pantry",
          "/new-food",
          "/new-goal",
          "/food-table",
          "/pantry/{food}",
          "/goals",
          "/goals/{goal}",
          "/replace/{formula}",
          "/replace/{formula}/{variant}",
          "/rebuild/{formula}",
          "/rebuild/{formula}/{variant}",
          "/notebook",
          "/causes/{formula}",
          "/causes/{formula}/{variant}",
          "/tastings/{formula}",
          "/tastings/{formula}/{variant}",
          "/tasting/{formula}/{tasting}",
          "/tasting/{formula}/{tasting}/sheets",
          "/tasting/{formula}/{tasting}/sheet/{sheet}");

  /** What a device gets that is not paired yet: the page that pairs it, and what names the site. */
  static final Set<String> PAIRING =
      Set.of(
          Guard.PAIRING_PAGE,
          "/views/pair.js",
          "/colours.js",
          "/favicon.svg",
          "/manifest.webmanifest",
          "/icons/ovenmark.svg",
          "/icons/ovenmark-180.png",
          "/icons/ovenmark-192.png",
          "/icons/ovenmark-512.png",
          "/icons/ovenmark-maskable-512.png",
          "/styles/tokens.css",
          "/styles/base.css",
          "/styles/forms.css",
          "/styles/habits.css");

  private static final String OWN = "io/ovenmark/web/site/";
  private static final String LIBRARY = "lib/lit-html/";
  private static final String LIBRARY_FILES = "META-INF/resources/webjars/lit-html/3.3.2/";
  private static final Pattern NAME =
      Pattern.compile("(?:[a-z0-9][a-z0-9-]*/){0,4}[a-z0-9][a-z0-9-]*\\.([a-z]{2,11})");
  private static final Map<String, String> TYPES =
      Map.of(
          "html", "text/html; charset=utf-8",
          "js", "text/javascript; charset=utf-8",
          "css", "text/css; charset=utf-8",
          "svg", "image/svg+xml",
          "png", "image/png",
          "webmanifest", "application/manifest+json");

  private final Map<String, byte[]> files = new ConcurrentHashMap<>();

  /** The shell of every page. */
  void shell(Context context) {
    Answers.send(context, TYPES.get("html"), read("index.html").orElseThrow());
  }

  /** The page that pairs a device; it asks for nothing else of the site. */
  void pairing(Context context) {
    Answers.send(context, TYPES.get("html"), read("pair.html").orElseThrow());
  }

  /** A file, or the shell saying that there is no such page. */
  void file(Context context) {
    String path = context.path().substring(1);
    var name = NAME.matcher(path);
    Optional<byte[]> content =
        name.matches() && TYPES.containsKey(name.group(1)) ? read(path) : Optional.empty();
    if (content.isPresent()) {
      Answers.send(context, TYPES.get(name.group(1)), content.get());
    } else {
      context
          .status(404)
          .contentType(TYPES.get("html"))
          .header("Cache-Control", "no-store")
          .result(read("index.html").orElseThrow());
    }
  }

  private Optional<byte[]> read(String path) {
    byte[] known = files.get(path);
    if (known != null) {
      return Optional.of(known);
    }
    String resource =
        path.startsWith(LIBRARY)
            ? LIBRARY_FILES + path.substring(LIBRARY.length())
            : OWN + path;
    try (InputStream in = Site.class.getClassLoader().getResourceAsStream(resource)) {
      if (in == null) {
        return Optional.empty();
      }
      byte[] bytes = in.readAllBytes();
      files.put(path, bytes);
      return Optional.of(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
