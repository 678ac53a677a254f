package io.ovenmark.web;

import java.nio.ByteBuffer;
import java.util.List;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/** Answers requests that are so malformed that no route gets to see them. */
final class MalformedRequests implements Request.Handler {
  private static final Failures.Failure FAILURE =
      new Failures.Failure(
          "malformed",
          "The request cannot be understood.",
          "",
          "Open the address without unusual characters.",
          List.of());

  @Override
  public boolean handle(Request request, Response response, Callback callback) {
    fill(response.getHeaders());
    response.write(true, ByteBuffer.wrap(FAILURE.json()), callback);
    return true;
  }

  private static void fill(HttpFields.Mutable fields) {
    Headers.ALWAYS.forEach(fields::put);
    fields.put(HttpHeader.CONTENT_TYPE, Answers.JSON);
    fields.put(HttpHeader.CACHE_CONTROL, "no-store");
  }
}
