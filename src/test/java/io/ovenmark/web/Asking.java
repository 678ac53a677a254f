package io.ovenmark.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Asks a running viewer: as a well-behaved client does, or byte by byte. */
final class Asking {
  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  /** What came back on a bare socket. */
  record Raw(int status, String head, String body) {
    /** The value of a header; empty when it is not there. */
    String header(String name) {
      return head.lines()
          .filter(line -> line.regionMatches(true, 0, name + ":", 0, name.length() + 1))
          .map(line -> line.substring(name.length() + 1).strip())
          .findFirst()
          .orElse("");
    }

    boolean hasHeader(String name) {
      return head.toLowerCase(Locale.ROOT).contains("\n" + name.toLowerCase(Locale.ROOT) + ":");
    }
  }

  private Asking() {}

  /** GET as a browser on this machine does, with headers as pairs of name and value. */
  static HttpResponse<byte[]> get(Viewer viewer, String path, String... headers) {
    HttpRequest.Builder request = HttpRequest.newBuilder(at(viewer, path));
    for (int i = 0; i < headers.length; i += 2) {
      request.header(headers[i], headers[i + 1]);
    }
    return send(request.build());
  }

  /** Any method, with content when there is any. */
  static HttpResponse<byte[]> ask(Viewer viewer, String method, String path, String content) {
    HttpRequest.BodyPublisher body =
        content.isEmpty()
            ? HttpRequest.BodyPublishers.noBody()
            : HttpRequest.BodyPublishers.ofString(content);
    return send(HttpRequest.newBuilder(at(viewer, path)).method(method, body).build());
  }

  private static HttpResponse<byte[]> send(HttpRequest request) {
    try {
      return CLIENT.send(request, HttpResponse.BodyHandlers.ofByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  static URI at(Viewer viewer, String path) {
    return URI.create(viewer.address().toString().replaceAll("/$", "") + path);
  }

  static String text(HttpResponse<byte[]> response) {
    return new String(response.body(), StandardCharsets.UTF_8);
  }

  /** A request written out as it is; {@code PORT} stands for the viewer's port. */
  static Raw raw(Viewer viewer, String request) {
    return raw("127.0.0.1", viewer, request);
  }

  /** The same, at another address on which the viewer listens. */
  static Raw raw(String address, Viewer viewer, String request) {
    String port = String.valueOf(viewer.address().getPort());
    try (Socket socket = new Socket(address, viewer.address().getPort())) {
      socket
          .getOutputStream()
          .write(request.replace("PORT", port).getBytes(StandardCharsets.ISO_8859_1));
      socket.getOutputStream().flush();
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      socket.getInputStream().transferTo(bytes);
      String[] parts = bytes.toString(StandardCharsets.UTF_8).split("\r\n\r\n", 2);
      int status = Integer.parseInt(parts[0].split(" ", 3)[1]);
      return new Raw(status, parts[0].replace("\r", ""), parts.length > 1 ? parts[1] : "");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A raw GET with the viewer's own name. */
  static Raw rawGet(Viewer viewer, String path, String... lines) {
    String more = lines.length == 0 ? "" : String.join("\r\n", lines) + "\r\n";
    return raw(
        viewer,
        "GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:PORT\r\n" + more
            + "Connection: close\r\n\r\n");
  }
}
