package io.ovenmark.web;

import static io.ovenmark.web.LanBench.KITCHEN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.store.Author;
import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who gets in from the network, and who does not. */
class LanGuardTest {
  private static final Pattern NAMED = Pattern.compile("(?:src|href)=\"([^\"]+)\"");
  private static final Pattern DEVICE = Pattern.compile("\"device\":\"([^\"]*)\"");

  private LanBench bench;

  @BeforeEach
  void open(@TempDir Path folder) {
    bench = new LanBench(folder);
  }

  @AfterEach
  void close() {
    bench.close();
    assertThat(bench.faults()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/",
        "/index.html",
        "/app.js",
        "/api.js",
        "/pair.html",
        "/preferences",
        "/phone",
        "/formulas/seeded-lupin-bun",
        "/api/formulas",
        "/api/phone",
        "/api/pair",
        "/api/nothing",
        "/api/../api/formulas",
        "/photos/seeded-lupin-bun/2026-03-04-1-tray.jpg",
        "/lib/lit-html/lit-html.js",
        "/pair/",
        "/pair/x",
        "/PAIR",
        "/pair;x",
        "//pair",
        "/icons/../app.js",
        "/icons/%2e%2e/app.js",
        "/styles/print.css"
      })
  void aStrangerGetsNothingButThePairing(String path) {
    Asking.Raw raw = bench.get(path);
    assertThat(raw.status()).isIn(400, 401);
    assertThat(raw.body()).doesNotContain("Saltmarsh", "import ", "<script");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/pair",
        "/views/pair.js",
        "/colours.js",
        "/favicon.svg",
        "/manifest.webmanifest",
        "/icons/ovenmark-192.png",
        "/icons/ovenmark-512.png",
        "/icons/ovenmark-maskable-512.png",
        "/icons/ovenmark-180.png",
        "/icons/ovenmark.svg",
        "/styles/tokens.css",
        "/styles/base.css",
        "/styles/forms.css",
        "/styles/habits.css"
      })
  void whatThePairingNeedsIsThere(String path) {
    Asking.Raw raw = bench.get(path);
    assertThat(raw.status()).isEqualTo(200);
    assertThat(raw.hasHeader("Content-Security-Policy")).isTrue();
    assertThat(raw.body()).doesNotContain("Saltmarsh");
  }

  @Test
  void thePairingPageNeedsNothingElse() {
    String page = bench.get("/pair").body();
    List<String> files = NAMED.matcher(page).results().map(found -> found.group(1)).toList();
    assertThat(files).hasSizeGreaterThan(5).allMatch(Site.PAIRING::contains);
  }

  @Test
  void aPersonWhoOpensAPageIsLedToThePairing() {
    Asking.Raw raw = bench.get("/formulas/seeded-lupin-bun", "Accept: text/html,*/*");
    assertThat(raw.status()).isEqualTo(302);
    assertThat(raw.header("Location")).endsWith("/pair");
    assertThat(raw.header("Cache-Control")).isEqualTo("no-store");
    assertThat(bench.get("/api/formulas", "Accept: text/html").status()).isEqualTo(401);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/api/task/cancel",
        "/api/draft/begin",
        "/api/phone/code",
        "/api/phone/end",
        "/api/pair/end",
        "/api/nothing"
      })
  void aStrangerOrdersNothing(String order) {
    assertThat(bench.order(order, "{}").status()).isEqualTo(401);
  }

  @Test
  void aPairedDeviceReadsAndOrders() {
    String cookie = bench.paired("Ruben");
    assertThat(bench.get("/", cookie).status()).isEqualTo(200);
    Asking.Raw formulas = bench.get("/api/formulas", cookie);
    assertThat(formulas.status()).isEqualTo(200);
    assertThat(formulas.body()).contains("Saltmarsh");
    assertThat(bench.order("/api/task/cancel", "{\"task\": \"none\"}", cookie).status())
        .isEqualTo(404);
  }

  @Test
  void theCookieIsForThisViewerAloneAndNoScriptReadsIt() {
    String code = bench.viewer().invite().orElseThrow().code();
    Asking.Raw raw = bench.order("/api/pair", "{\"code\": \"" + code + "\"}");
    assertThat(raw.status()).isEqualTo(200);
    assertThat(raw.header("Set-Cookie"))
        .matches("ovenmark-\\d+=[\\w-]{43}; Path=/; Max-Age=43200; HttpOnly; SameSite=Strict");
    assertThat(raw.header("Cache-Control")).isEqualTo("no-store");
    String key = raw.header("Set-Cookie").replaceAll(".*=([\\w-]{43});.*", "$1");
    assertThat(raw.body()).doesNotContain(key);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "=",
        "=AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA",
        "=KEYx",
        "=\"KEY\"x",
        "-other=KEY"
      })
  void anythingButTheKeyIsNoKey(String forged) {
    String cookie = bench.paired("Ruben");
    String name = cookie.replaceAll("Cookie: (.*?)=.*", "$1");
    String key = cookie.replaceAll(".*?=", "");
    String shown = "Cookie: " + name + forged.replace("KEY", key);
    assertThat(bench.get("/api/formulas", shown).status()).isIn(400, 401);
    assertThat(bench.get("/api/formulas").status()).isEqualTo(401);
  }

  @Test
  void aPairingEndsWithItsTimeAndAtTheDesk() {
    String first = bench.paired("Ruben");
    bench.clock.move(Duration.ofHours(6));
    String second = bench.paired("Ines");
    bench.clock.move(Duration.ofHours(6));
    assertThat(bench.get("/api/formulas", first).status()).isEqualTo(401);
    assertThat(bench.get("/api/formulas", second).status()).isEqualTo(200);

    Matcher device = DEVICE.matcher(bench.get("/api/phone", second).body());
    assertThat(device.find()).isTrue();
    String order = "{\"device\": \"" + device.group(1) + "\"}";
    assertThat(bench.order("/api/phone/end", order, second).status()).isEqualTo(403);
    assertThat(atDesk("/api/phone/end", order).status()).isEqualTo(200);
    assertThat(bench.get("/api/formulas", second).status()).isEqualTo(401);
  }

  @Test
  void aDeviceEndsItsOwnPairing() {
    String cookie = bench.paired("Ruben");
    Asking.Raw left = bench.order("/api/pair/end", "{}", cookie);
    assertThat(left.status()).isEqualTo(200);
    assertThat(left.header("Set-Cookie")).contains("Max-Age=0");
    assertThat(bench.get("/api/formulas", cookie).status()).isEqualTo(401);
  }

  @Test
  void whatIsWrittenOnAPhoneIsCommittedInTheNameOfItsPerson(@TempDir Path other) {
    try (LanBench full = new LanBench(other, BenchNotebook::create)) {
      assertThat(restoredBy(full, full.paired("Ruben Quist"), 1))
          .isEqualTo(new Author("Ruben Quist", "ruben.quist@phone.invalid"));
      assertThat(restoredBy(full, full.paired(""), 2)).isEqualTo(RunningBench.by().author());
      assertThat(full.faults()).isEmpty();
    }
  }

  private static Author restoredBy(LanBench full, String cookie, int revision) {
    Address bun = Address.parse("seeded-lupin-bun");
    Revision newest = full.desk().notebook().newest(bun);
    String order =
        "{\"address\": \"" + bun + "@" + revision + "\", \"note\": \"Back\", \"seen\": \""
            + newest.commit().hex() + "\"}";
    assertThat(full.order("/api/restore", order, cookie).status()).isEqualTo(200);
    return full.desk().notebook().newest(bun).author();
  }

  @Test
  void aCodeWorksForOneDevice() {
    String code = bench.viewer().invite().orElseThrow().code();
    String order = "{\"code\": \"" + code + "\", \"name\": \"\"}";
    assertThat(bench.order("/api/pair", order).status()).isEqualTo(200);
    assertThat(bench.order("/api/pair", order).status()).isEqualTo(422);
  }

  @Test
  void guessingEndsTheCode() {
    String code = bench.viewer().invite().orElseThrow().code();
    for (int i = 0; i < Pairings.TRIES; i++) {
      Asking.Raw raw = bench.order("/api/pair", "{\"code\": \"ZZZZ-ZZZ" + i + "\"}");
      assertThat(raw.status()).isEqualTo(422);
      assertThat(raw.hasHeader("Set-Cookie")).isFalse();
    }
    assertThat(bench.order("/api/pair", "{\"code\": \"" + code + "\"}").status()).isEqualTo(422);
    assertThat(atDesk("/api/phone", "").body()).contains("\"too_many_tries\":true");
  }

  @Test
  void theCodeIsShownAtTheDeskAlone() {
    String code = bench.viewer().invite().orElseThrow().code();
    String cookie = bench.paired("Ruben");
    String next = bench.viewer().invite().orElseThrow().code();
    assertThat(atDesk("/api/phone", "").body()).contains(next).doesNotContain(code);
    assertThat(bench.get("/api/phone", cookie).body()).doesNotContain(next).contains("Ruben");
    assertThat(bench.order("/api/phone/code", "{}", cookie).status()).isEqualTo(403);
    assertThat(atDesk("/api/phone/code", "{}").body()).contains("\"invitation\":{");
    assertThat(atDesk("/api/pair", "{\"code\": \"" + next + "\"}").status()).isEqualTo(409);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "127.0.0.1:PORT",
        "localhost:PORT",
        "[::1]:PORT",
        "127.0.0.2",
        "127.0.0.2:1",
        "saltmarsh.example:PORT",
        "127.0.0.2.saltmarsh.example:PORT",
        ""
      })
  void fromTheNetworkOnlyTheAnnouncedAddressIsAName(String host) {
    String cookie = bench.paired("Ruben");
    Asking.Raw raw =
        Asking.raw(
            KITCHEN,
            bench.viewer(),
            "GET /api/formulas HTTP/1.1\r\nHost: " + host + "\r\n" + cookie
                + "\r\nConnection: close\r\n\r\n");
    assertThat(raw.status()).isIn(400, 403);
    assertThat(raw.body()).doesNotContain("Saltmarsh");
  }

  @Test
  void atThisMachineTheAddressOfTheNetworkIsNoName() {
    Asking.Raw raw =
        Asking.raw(
            bench.viewer(),
            "GET /api/formulas HTTP/1.1\r\nHost: 127.0.0.2:PORT\r\nConnection: close\r\n\r\n");
    assertThat(raw.status()).isEqualTo(403);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "http://127.0.0.1:PORT",
        "http://localhost:PORT",
        "http://saltmarsh.example:PORT",
        "https://127.0.0.2:PORT",
        "http://127.0.0.2",
        "null"
      })
  void aPageElsewhereCannotUseThePairing(String origin) {
    String cookie = bench.paired("Ruben");
    Asking.Raw raw =
        Asking.raw(
            KITCHEN,
            bench.viewer(),
            "POST /api/pair/end HTTP/1.1\r\nHost: 127.0.0.2:PORT\r\nOrigin: " + origin + "\r\n"
                + cookie
                + "\r\nContent-Type: application/json\r\nContent-Length: 2\r\n"
                + "Connection: close\r\n\r\n{}");
    assertThat(raw.status()).isEqualTo(403);
    assertThat(bench.get("/api/formulas", cookie).status()).isEqualTo(200);
    assertThat(bench.get("/api/formulas", cookie, "Origin: http://elsewhere.example").status())
        .isEqualTo(403);
  }

  @Test
  void anOrderWithoutAnOriginOrFromAnotherSiteIsRefusedEvenForPairing() {
    String code = bench.viewer().invite().orElseThrow().code();
    String json = "{\"code\": \"" + code + "\"}";
    String head =
        "POST /api/pair HTTP/1.1\r\nHost: 127.0.0.2:PORT\r\nContent-Type: application/json\r\n"
            + "Content-Length: " + json.length() + "\r\nConnection: close\r\n";
    assertThat(Asking.raw(KITCHEN, bench.viewer(), head + "\r\n" + json).status()).isEqualTo(403);
    String cross = "Origin: http://127.0.0.2:PORT\r\nSec-Fetch-Site: cross-site\r\n";
    assertThat(Asking.raw(KITCHEN, bench.viewer(), head + cross + "\r\n" + json).status())
        .isEqualTo(403);
    assertThat(bench.order("/api/pair", json).status()).isEqualTo(200);
  }

  @Test
  void atThisMachineNothingNeedBePaired() {
    assertThat(Asking.get(bench.viewer(), "/api/formulas").statusCode()).isEqualTo(200);
    assertThat(Asking.get(bench.viewer(), "/").statusCode()).isEqualTo(200);
  }

  @Test
  void itListensOnThoseTwoAddressesAlone() throws IOException {
    int port = bench.viewer().address().getPort();
    assertThatThrownBy(() -> new Socket("127.0.0.3", port).close())
        .isInstanceOf(ConnectException.class);
    for (NetworkInterface network : NetworkInterface.networkInterfaces().toList()) {
      for (InetAddress address : network.inetAddresses().toList()) {
        if (!address.isLoopbackAddress() && !address.isLinkLocalAddress()) {
          assertThatThrownBy(() -> new Socket(address, port).close())
              .isInstanceOf(ConnectException.class);
        }
      }
    }
  }

  @Test
  void aViewerWithoutNetworkAnswersNobodyThereAndSaysSo() {
    Viewer viewer = RunningBench.EMPTY.viewer();
    assertThat(viewer.invite()).isEmpty();
    assertThatThrownBy(() -> new Socket(KITCHEN, viewer.address().getPort()).close())
        .isInstanceOf(ConnectException.class);
    assertThat(Asking.text(Asking.get(viewer, "/api/phone"))).contains("\"open\":false");
  }

  @Test
  void aPortThatIsTakenInTheNetworkIsRefusedInASentence(@TempDir Path other) {
    int port = bench.viewer().address().getPort();
    assertThatThrownBy(
            () ->
                Viewer.start(
                    bench.desk(),
                    new Opening(port, RunningBench::by, Optional.empty()),
                    fault -> {}))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("in use");
  }

  private Asking.Raw atDesk(String path, String json) {
    String method = json.isEmpty() ? "GET " : "POST ";
    String carried =
        json.isEmpty()
            ? ""
            : "Origin: http://127.0.0.1:PORT\r\nContent-Type: application/json\r\nContent-Length: "
                + json.length() + "\r\n";
    return Asking.raw(
        bench.viewer(),
        method + path + " HTTP/1.1\r\nHost: 127.0.0.1:PORT\r\n" + carried
            + "Connection: close\r\n\r\n" + json);
  }
}
