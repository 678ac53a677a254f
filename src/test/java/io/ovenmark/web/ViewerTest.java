package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.desk.CompareRevisions;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.Json;
import io.ovenmark.desk.ListFormulas;
import io.ovenmark.desk.ShowBake;
import io.ovenmark.desk.ShowFormula;
import io.ovenmark.desk.ShowTimeline;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Supplier;
import java.util.zip.GZIPInputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ViewerTest {
  private final Desk desk = RunningBench.FULL.desk();
  private final Viewer viewer = RunningBench.FULL.viewer();

  @AfterEach
  void nothingIsWrongInside() {
    assertThat(RunningBench.FULL.faults()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/",
        "/formulas/seeded-lupin-bun?a=2&b=egg-free@4",
        "/worksheet/seeded-lupin-bun@2",
        "/worksheet/seeded-lupin-bun/egg-free@4",
        "/bakes/seeded-lupin-bun/2026-03-04-1",
        "/app.js",
        "/styles/tokens.css",
        "/favicon.svg",
        "/lib/lit-html/lit-html.js",
        "/api/formulas",
        "/api/timeline?line=seeded-lupin-bun",
        "/api/timeline?line=seeded-lupin-bun/egg-free",
        "/api/sheet?address=seeded-lupin-bun@2",
        "/api/compare?from=seeded-lupin-bun@2&to=seeded-lupin-bun@3",
        "/api/bake?formula=seeded-lupin-bun&id=2026-03-04-1",
        "/photos/seeded-lupin-bun/2026-03-04-1-tray.jpg"
      })
  void everyRouteAnswersWithTheStrictHeaders(String path) {
    HttpResponse<byte[]> response = Asking.get(viewer, path);

    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(response.body()).isNotEmpty();
    assertStrict(response);
    assertThat(response.headers().firstValue("Cache-Control")).hasValue("private, no-cache");
    assertThat(response.headers().firstValue("ETag")).isPresent();
    assertThat(response.headers().firstValue("Set-Cookie")).isEmpty();
    assertThat(response.headers().firstValue("Server")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "/nowhere, 404",
    "/formulas, 404",
    "/formulas/a/b, 404",
    "/views/, 404",
    "/package-info.class, 404",
    "/api/nothing, 404",
    "/api/sheet, 422",
    "/api/sheet?address=, 422",
    "/api/sheet?address=Not%20an%20address, 422",
    "/api/sheet?address=nowhere, 404",
    "/api/sheet?address=seeded-lupin-bun@99, 404",
    "/api/sheet?address=seeded-lupin-bun/dairy-free, 404",
    "/api/sheet?address=seeded-lupin-bun@edited, 404",
    "/api/sheet?address=broken-bun, 422",
    "/api/timeline?line=nowhere, 404",
    "/api/compare?from=seeded-lupin-bun@1, 422",
    "/api/compare?from=seeded-lupin-bun@1&to=broken-bun, 422",
    "/api/bake?formula=seeded-lupin-bun&id=2030-01-01-1, 404",
    "/api/bake?formula=seeded-lupin-bun&id=../../notebook, 404",
    "/photos/seeded-lupin-bun/none.jpg, 404",
    "/photos/seeded-lupin-bun/notes.jpg, 422",
    "/photos/seeded-lupin-bun/2026-03-04-1-tray.jpg?width=none, 422",
    "/photos/seeded-lupin-bun/2026-03-04-1-tray.jpg?width=99999, 422"
  })
  void whatGoesWrongHasItsStatusAndTheStrictHeadersToo(String path, int status) {
    HttpResponse<byte[]> response = Asking.get(viewer, path);

    assertThat(response.statusCode()).isEqualTo(status);
    assertStrict(response);
    assertThat(response.headers().firstValue("Cache-Control")).hasValue("no-store");
  }

  static void assertStrict(HttpResponse<byte[]> response) {
    Headers.ALWAYS.forEach(
        (name, value) -> assertThat(response.headers().firstValue(name)).hasValue(value));
  }

  @Test
  void theHeadersForbidEverythingFromElsewhereAndEverythingInline() {
    assertThat(Headers.ALWAYS.get("Content-Security-Policy"))
        .startsWith(
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self';"
                + " connect-src 'self'; frame-src 'self'; font-src 'self'; manifest-src 'self'; base-uri 'none';"
                + " form-action 'none'; frame-ancestors 'none'")
        .doesNotContain("unsafe");
    assertThat(Headers.ALWAYS)
        .containsEntry("X-Content-Type-Options", "nosniff")
        .containsEntry("Referrer-Policy", "no-referrer")
        .containsEntry("Cross-Origin-Resource-Policy", "same-origin")
        .containsEntry("Cross-Origin-Opener-Policy", "same-origin");
  }

  @Test
  void refusalsAreToldAsTheDeskTellsThem() {
    String address = "seeded-lupin-bun@99";
    Refusal refusal = refusalOf(() -> new ShowFormula(desk).call(Address.parse(address)));

    String body = Asking.text(Asking.get(viewer, "/api/sheet?address=" + address));

    assertThat(body)
        .isEqualTo(
            Json.compact(
                new Failures.Failure(
                    "not_found",
                    refusal.getMessage(),
                    refusal.where(),
                    refusal.hint(),
                    List.of())));
  }

  @Test
  void aDamagedFileIsToldWithPlaceSentenceAndRemedy() {
    String body = Asking.text(Asking.get(viewer, "/api/sheet?address=broken-bun"));

    assertThat(body)
        .startsWith("{\"reason\":\"invalid\",\"sentence\":")
        .contains("\"problems\":[{\"where\":\"formulas/broken-bun.json:1:")
        .doesNotContain("Exception");
  }

  @ParameterizedTest
  @CsvSource({
    "NOT_FOUND, 404",
    "INVALID, 422",
    "EXISTS, 409",
    "CONFLICT, 409",
    "NOT_WRITABLE, 423",
    "NOT_A_NOTEBOOK, 503"
  })
  void eachReasonHasOneStatus(Refusal.Reason reason, int status) {
    assertThat(Failures.status(reason)).isEqualTo(status);
  }

  @Test
  void theAnswersAreTheDesksRecords() {
    Address second = Address.parse("seeded-lupin-bun@2");
    Address third = Address.parse("seeded-lupin-bun@3");
    Address bun = Address.parse("seeded-lupin-bun");
    Address eggFree = Address.parse("seeded-lupin-bun/egg-free");
    CompareRevisions compare = new CompareRevisions(desk);

    assertAnswer("formulas", new ListFormulas(desk).call());
    assertAnswer("timeline?line=seeded-lupin-bun", new ShowTimeline(desk).call(bun));
    assertAnswer("timeline?line=seeded-lupin-bun/egg-free", new ShowTimeline(desk).call(eggFree));
    assertAnswer("sheet?address=seeded-lupin-bun@2", new ShowFormula(desk).call(second));
    assertAnswer(
        "sheet?address=wheat-bun@edited",
        new ShowFormula(desk).call(Address.parse("wheat-bun@edited")));
    assertAnswer(
        "compare?from=seeded-lupin-bun@2&to=seeded-lupin-bun@3", compare.call(second, third));
    assertAnswer(
        "bake?formula=seeded-lupin-bun&id=2026-03-04-1",
        new ShowBake(desk).call("seeded-lupin-bun", "2026-03-04-1"));
  }

  private void assertAnswer(String question, Object record) {
    HttpResponse<byte[]> response = Asking.get(viewer, "/api/" + question);
    assertThat(Asking.text(response)).isEqualTo(Json.compact(record));
    assertThat(response.headers().firstValue("Content-Type"))
        .hasValue("application/json;charset=utf-8");
  }

  @Test
  void headTellsTheSameWithoutContent() {
    HttpResponse<byte[]> get = Asking.get(viewer, "/api/formulas");
    HttpResponse<byte[]> head = Asking.ask(viewer, "HEAD", "/api/formulas", "");
    assertThat(head.statusCode()).isEqualTo(200);
    assertThat(head.body()).isEmpty();
    assertThat(head.headers().firstValue("ETag")).isEqualTo(get.headers().firstValue("ETag"));
    assertStrict(head);
  }

  @Test
  void whatTheBrowserHasIsNotSentAgain() {
    for (String path : List.of("/api/formulas", "/app.js", "/" + BenchNotebook.PHOTO)) {
      String tag = Asking.get(viewer, path).headers().firstValue("ETag").orElseThrow();
      HttpResponse<byte[]> again =
          Asking.get(viewer, path, "If-None-Match", "\"other\", " + tag);
      assertThat(again.statusCode()).isEqualTo(304);
      assertThat(again.body()).isEmpty();
      assertStrict(again);
      assertThat(Asking.get(viewer, path, "If-None-Match", "\"other\"").statusCode())
          .isEqualTo(200);
    }
  }

  @Test
  void textIsCompressedAndPicturesAreNot() throws IOException {
    String path = "/api/timeline?line=seeded-lupin-bun";
    HttpResponse<byte[]> zipped = Asking.get(viewer, path, "Accept-Encoding", "gzip");
    assertThat(zipped.headers().firstValue("Content-Encoding")).hasValue("gzip");
    byte[] text = new GZIPInputStream(new ByteArrayInputStream(zipped.body())).readAllBytes();
    assertThat(new String(text, StandardCharsets.UTF_8))
        .isEqualTo(Asking.text(Asking.get(viewer, path)));
    assertThat(
            Asking.get(viewer, "/" + BenchNotebook.PHOTO, "Accept-Encoding", "gzip")
                .headers()
                .firstValue("Content-Encoding"))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "/, text/html; charset=utf-8",
    "/app.js, text/javascript; charset=utf-8",
    "/styles/base.css, text/css; charset=utf-8",
    "/favicon.svg, image/svg+xml",
    "/lib/lit-html/directives/live.js, text/javascript; charset=utf-8"
  })
  void filesHaveTheirTypes(String path, String type) {
    String stated = Asking.get(viewer, path).headers().firstValue("Content-Type").orElseThrow();
    assertThat(stated.replace(" ", "")).isEqualTo(type.replace(" ", ""));
  }

  @Test
  void anUnknownPageIsTheShellSoThatItCanSaySo() {
    HttpResponse<byte[]> response = Asking.get(viewer, "/no/such/page");
    assertThat(response.statusCode()).isEqualTo(404);
    assertThat(response.body()).isEqualTo(Asking.get(viewer, "/").body());
  }

  private static Opening on(int port) {
    return new Opening(port, RunningBench::by);
  }

  @Test
  void aPortThatIsTakenIsRefusedWithARemedy() {
    int port = viewer.address().getPort();
    Refusal refusal = refusalOf(() -> Viewer.start(desk, on(port), fault -> {}));
    assertThat(refusal.reason()).isEqualTo(Refusal.Reason.INVALID);
    assertThat(refusal.getMessage()).contains(String.valueOf(port));
    assertThat(refusal.hint()).isNotBlank();
    assertThatThrownBy(() -> Viewer.start(desk, on(70_000), fault -> {})).isInstanceOf(Refusal.class);
    assertThatThrownBy(() -> Viewer.start(desk, on(-1), fault -> {})).isInstanceOf(Refusal.class);
  }

  @Test
  void aClosedViewerFreesItsPort() {
    Viewer first = Viewer.start(desk, on(0), fault -> {});
    int port = first.address().getPort();
    first.close();
    try (Viewer second = Viewer.start(desk, on(port), fault -> {})) {
      assertThat(Asking.get(second, "/api/formulas").statusCode()).isEqualTo(200);
    }
  }

  @Test
  void aPhotoIsSentAsItIs() {
    byte[] kept = desk.notebook().photo("seeded-lupin-bun", BenchNotebook.PHOTO).orElseThrow();
    HttpResponse<byte[]> response = Asking.get(viewer, "/" + BenchNotebook.PHOTO);
    assertThat(response.body()).isEqualTo(kept);
    assertThat(response.headers().firstValue("Content-Type")).hasValue("image/jpeg");
  }

  @ParameterizedTest
  @CsvSource({"400, 400", "16, 16", "2400, 1200"})
  void aPhotoIsSentSmallerButNeverLarger(int wanted, int width) throws IOException {
    String path = "/" + BenchNotebook.PHOTO + "?width=" + wanted;
    HttpResponse<byte[]> response = Asking.get(viewer, path);
    assertThat(ImageIO.read(new ByteArrayInputStream(response.body())).getWidth()).isEqualTo(width);
    assertThat(response.headers().firstValue("Content-Type")).hasValue("image/jpeg");
    assertThat(Asking.get(viewer, path).body()).isEqualTo(response.body());
  }

  private static Refusal refusalOf(Supplier<?> action) {
    try {
      action.get();
    } catch (Refusal refusal) {
      return refusal;
    }
    throw new AssertionError("not refused");
  }
}
