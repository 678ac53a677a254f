package io.ovenmark.web;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What every answer says to the browser: take nothing from elsewhere, run nothing but the site's
 * own modules, and be used by no other page.
 */
final class Headers {
  /** By name. */
  static final Map<String, String> ALWAYS = always();

  private static final String OPENER = "Cross-Origin-Opener-Policy";

  /** On the network, where browsers only complain of what they heed on this machine. */
  private static final Map<String, String> OUTSIDE = without(OPENER);

  private Headers() {}

  /**
   * What an answer says.
   *
   * @param outside whether it goes to the network
   * @return by name
   */
  static Map<String, String> to(boolean outside) {
    return outside ? OUTSIDE : ALWAYS;
  }

  private static Map<String, String> without(String name) {
    Map<String, String> headers = new LinkedHashMap<>(ALWAYS);
    headers.remove(name);
    return Map.copyOf(headers);
  }

  private static Map<String, String> always() {
    Map<String, String> headers = new LinkedHashMap<>();
    headers.put(
        "Content-Security-Policy",
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self';"
            + " connect-src 'self'; frame-src 'self'; font-src 'self'; manifest-src 'self'; base-uri 'none';"
            + " form-action 'none'; frame-ancestors 'none'; require-trusted-types-for 'script';"
            + " trusted-types lit-html");
    headers.put("X-Content-Type-Options", "nosniff");
    headers.put("Referrer-Policy", "no-referrer");
    headers.put("Cross-Origin-Resource-Policy", "same-origin");
    headers.put(OPENER, "same-origin");
    return Map.copyOf(headers);
  }
}
