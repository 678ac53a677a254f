package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Directory;
import io.ovenmark.desk.ShowBake;
import io.ovenmark.desk.Views;
import io.ovenmark.photo.Pictures;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.Socket;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures sent to a viewer, good and bad ones. */
class PhotoOrdersTest {
  private static final String BUN = "seeded-lupin-bun";
  private static final String BAKE = "2026-03-09-1";
  private static final String PLACE = "formula=" + BUN + "&bake=" + BAKE;
  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  private static OwnBench bench;

  @BeforeAll
  static void open() {
    bench = OwnBench.with(BenchNotebook::create);
  }

  @AfterAll
  static void close() {
    bench.close();
  }

  @AfterEach
  void nothingIsWrongInside() {
    assertThat(bench.faults()).isEmpty();
  }

  private static HttpRequest request(String order, String type, byte[] body) {
    String own = bench.viewer().address().toString().replaceAll("/$", "");
    return HttpRequest.newBuilder(Asking.at(bench.viewer(), "/api/" + order))
        .header("Origin", own)
        .header("Content-Type", type)
        .POST(HttpRequest.BodyPublishers.ofByteArray(body))
        .build();
  }

  private static HttpResponse<String> send(String order, String type, byte[] body) {
    try {
      return CLIENT.send(request(order, type, body), HttpResponse.BodyHandlers.ofString());
    } catch (IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static HttpResponse<String> add(String more, byte[] picture) {
    return send("photo/add?" + PLACE + more, "image/jpeg", picture);
  }

  private static HttpResponse<String> order(String name, String json) {
    return send(name, "application/json", json.getBytes(StandardCharsets.UTF_8));
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private static String member(String json, String name) {
    Matcher matcher = Pattern.compile("\"" + name + "\":\"([^\"]*)\"").matcher(json);
    assertThat(matcher.find()).as(name + " in " + json).isTrue();
    return matcher.group(1);
  }

  private static List<Views.PhotoView> photos() {
    return new ShowBake(bench.desk()).call(BUN, BAKE).photos();
  }

  private static Views.PhotoView newest() {
    return photos().get(photos().size() - 1);
  }

  private static byte[] picture(int width) {
    return Pictures.jpeg(Pictures.corners(width, 60));
  }

  @Test
  void aPictureIsKeptWithoutItsPlaceAndWithItsDate() throws Exception {
    byte[] camera =
        Pictures.withExif(
            picture(301),
            new Pictures.Exif()
                .orientation(6)
                .camera("Saltmarsh One")
                .taken("2026:03:09 11:20:00")
                .zone("+01:00")
                .at(54, 8));
    camera =
        Pictures.withXmp(
            camera, "exif:GPSLatitude=\"54,30.0N\" exif:GPSLongitude=\"8,20.0E\"");
    assertThat(kinds(camera)).contains("GPS", "XMP");

    HttpResponse<String> answer = add("&name=a.jpg&caption=Two+buns", camera);

    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(newest().taken()).isEqualTo("2026-03-09T11:20:00+01:00");
    assertThat(newest().caption()).isEqualTo("Two buns");
    byte[] kept = bench.desk().notebook().photo(BUN, newest().file()).orElseThrow();
    assertThat(kinds(kept)).isSubsetOf("JPEG", "JFIF", "Huffman", "File Type");
    assertThat(new String(kept, StandardCharsets.ISO_8859_1))
        .doesNotContain("Exif", "GPS", "Saltmarsh", "http://");
    assertThat(Pictures.read(kept).getHeight()).isEqualTo(301);
    byte[] sent = Asking.get(bench.viewer(), "/" + newest().file()).body();
    assertThat(sent).isEqualTo(kept);
  }

  private static List<String> kinds(byte[] jpeg) throws Exception {
    return StreamSupport.stream(
            ImageMetadataReader.readMetadata(new ByteArrayInputStream(jpeg))
                .getDirectories()
                .spliterator(),
            false)
        .map(Directory::getName)
        .toList();
  }

  static Stream<Arguments> badPictures() {
    byte[] jpeg = Pictures.jpeg(Pictures.corners(800, 600));
    byte[] moving = Pictures.withChunk(Pictures.webp("lossy"), "ANIM", new byte[6], 0x02);
    return Stream.of(
        Arguments.of("notes.jpg", "Bake at 190".getBytes(StandardCharsets.UTF_8), "a text file"),
        Arguments.of("huge.png", Pictures.pngHeader(20_000, 10_000, 8, 2), "20000 × 10000"),
        Arguments.of("cut.jpg", Arrays.copyOf(jpeg, jpeg.length / 2), "damaged or cut off"),
        Arguments.of("empty.jpg", new byte[0], "is empty"),
        Arguments.of("moving.webp", moving, "a moving WebP picture"),
        Arguments.of("print.jpg", Pictures.cmyk(80, 60), "colours of printing"),
        Arguments.of("phone.heic", heic(), "a HEIC picture"));
  }

  private static byte[] heic() {
    return "\0\0\0\u0018ftypheic\0\0\0\0".getBytes(StandardCharsets.ISO_8859_1);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("badPictures")
  void aBadPictureGetsOneSentenceAndARemedyAndHarmsNothing(
      String name, byte[] bytes, String says) {
    int before = photos().size();

    for (String way : List.of("", "&with_others=true")) {
      HttpResponse<String> answer = add("&name=" + name + way, bytes);

      assertThat(answer.statusCode()).isEqualTo(422);
      assertThat(member(answer.body().replace("\\\"", "'"), "sentence"))
          .startsWith("The photo '" + name + "' ")
          .contains(says)
          .endsWith(".");
      assertThat(member(answer.body(), "hint")).endsWith(".");
    }
    assertThat(photos()).hasSize(before);
    assertThat(Asking.text(Asking.get(bench.viewer(), "/api/photo/waiting?" + PLACE)))
        .endsWith("\"photos\":[]}");
  }

  @Test
  void aPngThatUnfoldsToMoreThanItDeclaresIsKeptAsItDeclares() {
    byte[] header = Pictures.pngHeader(33, 21, 8, 2);
    byte[] pixels = Pictures.chunk("IDAT", Pictures.zeros(64));
    byte[] text = Pictures.chunk("zTXt", Pictures.zeros(64));
    byte[] end = Pictures.chunk("IEND", new byte[0]);
    ByteBuffer png =
        ByteBuffer.allocate(header.length + text.length + pixels.length + end.length)
            .put(header)
            .put(text)
            .put(pixels)
            .put(end);

    assertThat(add("&name=bomb.png", png.array()).statusCode()).isEqualTo(200);
    byte[] kept = bench.desk().notebook().photo(BUN, newest().file()).orElseThrow();
    assertThat(Pictures.read(kept).getWidth()).isEqualTo(33);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../../x.jpg",
        "..\\..\\x.jpg",
        "C:\\CON.jpg",
        "/etc/passwd",
        "<img src=x onerror=alert(1)>.jpg",
        "a\u0000b\n\u001b[31m.jpg",
        "\u202egpj.exe",
        ".git",
        "%2e%2e%2f"
      })
  void aHostileNameIsOnlyEverShown(String name) throws IOException {
    byte[] picture = picture(400 + Math.abs(name.hashCode() % 300));
    List<String> before = onDisk();

    assertThat(add("&name=" + encoded(name), picture).statusCode()).isEqualTo(200);

    assertThat(newest().file()).matches("photos/seeded-lupin-bun/2026-03-09-1-\\d+\\.jpg");
    List<String> after = new ArrayList<>(onDisk());
    after.removeAll(before);
    assertThat(after).containsExactly(newest().file());
    assertThat(member(add("&name=" + encoded(name), new byte[0]).body(), "sentence"))
        .doesNotContain("\\u001b", "\u202e");
  }

  private static List<String> onDisk() throws IOException {
    try (Stream<Path> files = Files.walk(bench.folder())) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> bench.folder().relativize(file).toString())
          .filter(file -> !file.startsWith(".git"))
          .toList();
    }
  }

  @Test
  void aVeryLongNameIsCut() {
    String body = add("&name=" + "x".repeat(4000), new byte[0]).body();

    assertThat(member(body.replace("\\\"", "'"), "sentence")).hasSizeLessThan(100);
  }

  @Test
  void picturesChosenTogetherAreOneCommit() {
    int before = photos().size();
    String one = member(add("&name=1.jpg&with_others=true", picture(201)).body(), "picture");
    String two = member(add("&name=2.jpg&with_others=true", picture(202)).body(), "picture");
    assertThat(photos()).hasSize(before);
    String head = head();

    HttpResponse<String> kept = keep(one, two);

    assertThat(kept.statusCode()).isEqualTo(200);
    assertThat(photos()).hasSize(before + 2);
    assertThat(head()).isNotEqualTo(head);
    assertThat(keep(one, two).body()).contains("\"photos_added\":[]", "\"missing\":[]");
    assertThat(photos()).hasSize(before + 2);
  }

  private static String head() {
    return bench.desk().notebook().latest().commit().hex();
  }

  private static HttpResponse<String> keep(String... pictures) {
    return order(
        "photo/keep",
        "{\"formula\":\"%s\",\"bake\":\"%s\",\"pictures\":[\"%s\"]}"
            .formatted(BUN, BAKE, String.join("\",\"", pictures)));
  }

  @Test
  void marksAreChangedWithWhatTheyWereBasedOn() {
    add("&name=marks.jpg", picture(203));
    String file = newest().file();
    String none = "{\"caption\":null,\"alternative\":null,\"marks\":[]}";
    String left = none.replace("[]", "[{\"piece\":\"a\",\"x\":0.25,\"y\":0.5}]");
    String right = none.replace("[]", "[{\"piece\":\"a\",\"x\":0.75,\"y\":0.5}]");

    assertThat(change(file, none, left).body()).contains("\"outcome\":\"committed\"");
    assertThat(change(file, none, right).body())
        .contains("\"outcome\":\"conflict\"", "75 % from the left", "25 % from the left");
    assertThat(change(file, left, right).body()).contains("\"outcome\":\"committed\"");
    assertThat(change(file, right, none.replace("[]", "[{\"piece\":\"a\",\"x\":7,\"y\":0}]")).body())
        .contains("\"reason\":\"invalid\"", "The place x");
    assertThat(change(file, right, "{}").statusCode()).isEqualTo(422);
  }

  private static HttpResponse<String> change(String file, String base, String wanted) {
    return order(
        "photo/change",
        "{\"formula\":\"%s\",\"bake\":\"%s\",\"photo\":\"%s\",\"base\":%s,\"wanted\":%s}"
            .formatted(BUN, BAKE, file, base, wanted));
  }

  @Test
  void aPhotoIsTakenAwayAndBroughtBack() {
    add("&name=away.jpg", picture(204));
    String file = newest().file();
    String where =
        "{\"formula\":\"%s\",\"bake\":\"%s\",\"photo\":\"%s\"".formatted(BUN, BAKE, file);
    String none = ",\"base\":{\"caption\":null,\"alternative\":null,\"marks\":[]}}";

    HttpResponse<String> removed = order("photo/remove", where + none);

    assertThat(removed.statusCode()).isEqualTo(200);
    assertThat(Asking.get(bench.viewer(), "/" + file).statusCode()).isEqualTo(404);
    assertThat(order("photo/remove", where + none).statusCode()).isEqualTo(404);
    String commit = member(removed.body(), "commit");
    order("photo/bring-back", where + ",\"commit\":\"" + commit + "\"}");
    assertThat(Asking.get(bench.viewer(), "/" + file).statusCode()).isEqualTo(200);
    assertThat(order("photo/bring-back", where + ",\"commit\":\"" + "0".repeat(40) + "\"}"))
        .extracting(HttpResponse::statusCode)
        .isEqualTo(404);
  }

  @Test
  void ofManyAtOnceEachIsKeptOrToldToComeBackLater() {
    int many = 2 * Uploads.ON_THE_WAY;
    int before = photos().size();
    CountDownLatch together = new CountDownLatch(1);
    List<CompletableFuture<Integer>> sent = new ArrayList<>();
    for (int i = 0; i < many; i++) {
      byte[] picture = Pictures.jpeg(Pictures.corners(900 + i, 700));
      sent.add(
          CompletableFuture.supplyAsync(
              () -> {
                try {
                  together.await();
                } catch (InterruptedException e) {
                  throw new IllegalStateException(e);
                }
                return add("&name=many.jpg", picture).statusCode();
              },
              task -> new Thread(task).start()));
    }
    together.countDown();
    List<Integer> answers = sent.stream().map(CompletableFuture::join).toList();

    assertThat(answers).containsOnly(200, 503).contains(200);
    assertThat(photos())
        .hasSize(before + (int) answers.stream().filter(each -> each == 200).count());
  }

  @Test
  void aPictureThatIsBrokenOffIsNeitherKeptNorAFault() throws IOException {
    int before = photos().size();
    int port = bench.viewer().address().getPort();
    try (Socket socket = new Socket("127.0.0.1", port)) {
      String head =
          "POST /api/photo/add?%1$s HTTP/1.1\r\nHost: 127.0.0.1:%2$d\r\nOrigin: http://127.0.0.1:%2$d"
              + "\r\nContent-Type: image/jpeg\r\nContent-Length: 500000\r\n\r\n\u00ff\u00d8";
      socket
          .getOutputStream()
          .write(head.formatted(PLACE, port).getBytes(StandardCharsets.ISO_8859_1));
      socket.shutdownOutput();
      socket.getInputStream().readAllBytes();
    }

    assertThat(photos()).hasSize(before);
    assertThat(add("&name=next.jpg", picture(205)).statusCode()).isEqualTo(200);
  }

  @Test
  void aPictureThatIsTooLargeIsRefusedUnread() {
    Asking.Raw raw =
        Asking.raw(
            bench.viewer(),
            "POST /api/photo/add?" + PLACE + " HTTP/1.1\r\nHost: 127.0.0.1:PORT\r\n"
                + "Origin: http://127.0.0.1:PORT\r\nContent-Type: image/jpeg\r\n"
                + "Content-Length: " + (70 << 20) + "\r\nConnection: close\r\n\r\n");

    assertThat(raw.status()).isEqualTo(413);
    assertThat(raw.body()).contains("larger than the 64 MB", "Choose a smaller picture.");
  }

  @Test
  void thereMustBeSuchABake() {
    HttpResponse<String> answer =
        send(
            "photo/add?formula=" + BUN + "&bake=2030-01-01-1&name=x.jpg",
            "image/jpeg",
            picture(100));

    assertThat(answer.statusCode()).isEqualTo(404);
    assertThat(send("photo/add?bake=x", "image/jpeg", picture(100)).statusCode()).isEqualTo(422);
  }
}
