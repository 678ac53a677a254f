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

  private Headers() {}

  private static Map<String, String> always() {
    Map<String, String> headers = new LinkedHashMap<>();
    headers.put(
        "Content-Security-Policy",
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self';"
            + " connect-src 'self'; font-src 'self'; base-uri 'none'; form-action 'none';"
            + " frame-ancestors 'none'; require-trusted-types-for 'script';"
            + " trusted-types lit-html");
    headers.put("X-Content-Type-Options", "nosniff");
    headers.put("Referrer-Policy", "no-referrer");
    headers.put("Cross-Origin-Resource-Policy", "same-origin");
    headers.put("Cross-Origin-Opener-Policy", "same-origin");
    return Map.copyOf(headers);
  }
}
