package io.ovenmark.web;

import io.javalin.http.Context;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.function.Supplier;

/**
 * Sends what was asked for, and is the one place that says how it may be kept. Nothing that the
 * viewer shows is fixed for ever: even a sheet named by a commit gains bakes and publications, and
 * a photo keeps its name when it is replaced. So everything may be kept and must be asked about
 * again; what is still the same costs one short answer on this machine.
 */
final class Answers {
  static final String JSON = "application/json; charset=utf-8";

  private static final int TAG_BYTES = 16;

  private Answers() {}

  /**
   * Sends content, or only that the browser's copy is still good.
   *
   * @param context the request
   * @param contentType its type
   * @param content its bytes
   */
  static void send(Context context, String contentType, byte[] content) {
    send(context, contentType, digest(content), () -> content);
  }

  /**
   * Sends content that has a name already, or only that the browser's copy is still good.
   *
   * @param context the request
   * @param contentType its type
   * @param name names the content: equal names mean equal bytes; plain letters and digits
   * @param content makes its bytes; not asked when the browser has them
   */
  static void send(Context context, String contentType, String name, Supplier<byte[]> content) {
    String tag = "W/\"" + name + "\"";
    context
        .header("ETag", tag)
        .header("Cache-Control", "private, no-cache")
        .header("Vary", "Accept-Encoding");
    String known = context.header("If-None-Match");
    if (known != null && Arrays.stream(known.split(",")).map(String::strip).anyMatch(tag::equals)) {
      context.status(304);
    } else {
      context.contentType(contentType).result(content.get());
    }
  }

  /**
   * A name for bytes: equal bytes have equal names.
   *
   * @param content the bytes
   * @return 32 hexadecimal digits
   */
  static String digest(byte[] content) {
    try {
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(content);
      return HexFormat.of().formatHex(hash, 0, TAG_BYTES);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
