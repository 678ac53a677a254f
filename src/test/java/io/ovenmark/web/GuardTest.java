package io.ovenmark.web;

import static io.ovenmark.web.ViewerTest.assertStrict;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GuardTest {
  private final Viewer viewer = RunningBench.FULL.viewer();

  @ParameterizedTest
  @ValueSource(strings = {"127.0.0.1:PORT", "localhost:PORT", "LOCALHOST:PORT", "[::1]:PORT"})
  void itAnswersToTheNamesOfThisMachine(String host) {
    assertThat(asHost(host).status()).isEqualTo(200);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "saltmarsh.example",
        "saltmarsh.example:PORT",
        "127.0.0.1",
        "127.0.0.1:1",
        "127.0.0.2:PORT",
        "localhost.saltmarsh.example:PORT",
        "[::2]:PORT",
        ""
      })
  void itDoesNotAnswerToOtherNames(String host) {
    Asking.Raw raw = asHost(host);
    assertThat(raw.status()).isIn(400, 403);
    assertThat(raw.body()).doesNotContain("Saltmarsh", "seeded");
    assertThat(raw.hasHeader("Content-Security-Policy")).isTrue();
  }

  private Asking.Raw asHost(String host) {
    return Asking.raw(
        viewer,
        "GET /api/formulas HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "http://saltmarsh.example",
        "https://127.0.0.1:PORT",
        "http://127.0.0.1",
        "http://127.0.0.1:PORT.saltmarsh.example",
        "null",
        "file://"
      })
  void itDoesNotAnswerToPagesFromElsewhere(String origin) {
    Asking.Raw raw = Asking.rawGet(viewer, "/api/formulas", "Origin: " + origin);
    assertThat(raw.status()).isEqualTo(403);
    assertThat(raw.body()).contains("\"reason\":\"forbidden\"").doesNotContain("seeded");
  }

  @ParameterizedTest
  @ValueSource(strings = {"http://127.0.0.1:PORT", "http://localhost:PORT"})
  void itAnswersToItsOwnPages(String origin) {
    assertThat(Asking.rawGet(viewer, "/api/formulas", "Origin: " + origin).status()).isEqualTo(200);
  }

  @ParameterizedTest
  @ValueSource(strings = {"POST", "PUT", "DELETE", "PATCH", "OPTIONS", "PROPFIND"})
  void pagesAndFilesAreOnlyRead(String method) {
    for (String path : List.of("/", "/nowhere", "/app.js", "/photos/seeded-lupin-bun/x.jpg")) {
      HttpResponse<byte[]> response = Asking.ask(viewer, method, path, "");
      assertThat(response.statusCode()).isEqualTo(405);
      assertThat(response.headers().firstValue("Allow")).hasValue("GET, HEAD");
      assertStrict(response);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"PUT", "DELETE", "PATCH", "OPTIONS", "PROPFIND"})
  void anOrderIsAPost(String method) {
    HttpResponse<byte[]> response = Asking.ask(viewer, method, "/api/formulas", "");
    assertThat(response.statusCode()).isEqualTo(405);
    assertThat(response.headers().firstValue("Allow")).hasValue("GET, HEAD, POST");
    assertStrict(response);
  }

  private static final String JSON = "Content-Type: application/json";

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Content-Type: application/json | 403",
        "Origin: http://saltmarsh.example~Content-Type: application/json | 403",
        "Origin: null~Content-Type: application/json | 403",
        "Origin: http://127.0.0.1:PORT~Sec-Fetch-Site: cross-site~Content-Type: application/json"
            + " | 403",
        "Origin: http://127.0.0.1:PORT~Sec-Fetch-Site: same-site~Content-Type: application/json"
            + " | 403",
        "Origin: http://127.0.0.1:PORT | 415",
        "Origin: http://127.0.0.1:PORT~Content-Type: text/plain | 415",
        "Origin: http://127.0.0.1:PORT~Content-Type: application/x-www-form-urlencoded | 415",
        "Origin: http://127.0.0.1:PORT~Content-Type: multipart/form-data; boundary=x | 415",
        "Origin: http://127.0.0.1:PORT~Content-Type: application/json | 404"
      })
  void anOrderComesFromItsOwnPagesAndIsJsonOrAPicture(String headers, int status) {
    Asking.Raw raw = order(headers.replace("~", "\r\n"), "{}");
    assertThat(raw.status()).isEqualTo(status);
    assertThat(raw.hasHeader("Content-Security-Policy")).isTrue();
  }

  @Test
  void anOrderThatIsTooLargeIsRefusedBeforeItIsRead() {
    String head =
        "POST /api/nothing HTTP/1.1\r\nHost: 127.0.0.1:PORT\r\nOrigin: http://127.0.0.1:PORT\r\n"
            + "Connection: close\r\n";
    long tooMuch = Guard.LARGEST_ORDER + 1;
    assertThat(
            Asking.raw(viewer, head + JSON + "\r\nContent-Length: " + tooMuch + "\r\n\r\n")
                .status())
        .isEqualTo(413);
    assertThat(
            Asking.raw(
                    viewer, head + JSON + "\r\nTransfer-Encoding: chunked\r\n\r\n2\r\n{}\r\n0\r\n\r\n")
                .status())
        .isEqualTo(411);
  }

  private Asking.Raw order(String headers, String body) {
    return Asking.raw(
        viewer,
        "POST /api/nothing HTTP/1.1\r\nHost: 127.0.0.1:PORT\r\n"
            + headers
            + "\r\nContent-Length: "
            + body.length()
            + "\r\nConnection: close\r\n\r\n"
            + body);
  }

  @Test
  void aReadingRequestCarriesNoContent() {
    Asking.Raw raw =
        Asking.raw(
            viewer,
            "GET /api/formulas HTTP/1.1\r\nHost: 127.0.0.1:PORT\r\nContent-Length: 5\r\n"
                + "Connection: close\r\n\r\nhello");
    assertThat(raw.status()).isEqualTo(413);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/photos/seeded-lupin-bun/../../notebook.json",
        "/photos/seeded-lupin-bun/..%2f..%2fnotebook.json",
        "/photos/seeded-lupin-bun/%2e%2e%2f%2e%2e%2fnotebook.json",
        "/photos/seeded-lupin-bun/%252e%252e%252fnotebook.json",
        "/photos/seeded-lupin-bun/..%5c..%5cnotebook.json",
        "/photos/seeded-lupin-bun/..\\..\\notebook.json",
        "/photos/seeded-lupin-bun/2026-03-04-1-tray.jpg%00.txt",
        "/photos/%2e%2e/notebook.json",
        "/photos/..%2fformulas/wheat-bun.json",
        "/photos/seeded-lupin-bun/.git",
        "/../notebook.json",
        "/..%2fnotebook.json",
        "/%2e%2e/%2e%2e/META-INF/MANIFEST.MF",
        "/lib/lit-html/../../../../META-INF/MANIFEST.MF",
        "/lib/lit-html/..%2f..%2fMANIFEST.MF",
        "/views/..%2fViewer.class",
        "/%",
        "/;/x"
      })
  void nothingOutsideIsReached(String path) {
    Asking.Raw raw = Asking.rawGet(viewer, path);
    assertThat(raw.status()).isIn(400, 404);
    assertThat(raw.body()).doesNotContain("\"format\"", "Manifest-Version", "Exception", "\tat ");
    assertThat(raw.hasHeader("Content-Security-Policy")).isTrue();
    assertThat(raw.hasHeader("Cross-Origin-Resource-Policy")).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"NONSENSE\r\n\r\n", "GET / HTTP/1.1\r\n\r\n", "GET /\u0001 HTTP/1.1\r\n\r\n"})
  void malformedRequestsGetAPlainAnswer(String request) {
    Asking.Raw raw = Asking.raw(viewer, request);
    assertThat(raw.status()).isBetween(400, 505);
    assertThat(raw.body()).doesNotContain("jetty", "Exception");
  }

  @Test
  void itListensOnThisMachineOnly() throws IOException {
    for (NetworkInterface network : NetworkInterface.networkInterfaces().toList()) {
      for (InetAddress address : network.inetAddresses().toList()) {
        if (!address.isLoopbackAddress() && !address.isLinkLocalAddress()) {
          assertThatThrownBy(() -> new Socket(address, viewer.address().getPort()).close())
              .isInstanceOf(ConnectException.class);
        }
      }
    }
    assertThat(viewer.address().getHost()).isEqualTo("127.0.0.1");
  }
}
