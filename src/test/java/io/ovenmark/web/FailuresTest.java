package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.javalin.Javalin;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;

class FailuresTest {
  @Test
  void faultsOfTheProgramTellNothingOfItsInsidesAndAreReported() throws Exception {
    List<Throwable> faults = new CopyOnWriteArrayList<>();
    Failures failures = new Failures(faults::add);
    Javalin server =
        Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              config.router.javaLangErrorHandler(failures::error);
              config.routes.get("/fault", context -> fail(new IllegalStateException("secret")));
              config.routes.get("/error", context -> fail(new StackOverflowError("secret")));
              config.routes.exception(Exception.class, failures::answer);
            });
    try {
      server.start("127.0.0.1", 0);
      for (String path : List.of("/fault", "/error")) {
        HttpResponse<String> response = get(server.port(), path);
        assertThat(response.statusCode()).isEqualTo(500);
        assertThat(response.body())
            .startsWith("{\"reason\":\"fault\",\"sentence\":\"Something went wrong inside")
            .doesNotContain("secret", "java", "\\tat");
      }
      assertThat(faults).extracting(Throwable::getMessage).containsExactly("secret", "secret");
    } finally {
      server.stop();
    }
  }

  private static void fail(Throwable thrown) throws Exception {
    if (thrown instanceof Error error) {
      throw error;
    }
    throw (Exception) thrown;
  }

  private static HttpResponse<String> get(int port, String path)
      throws IOException, InterruptedException {
    return HttpClient.newHttpClient()
        .send(
            HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path)).build(),
            HttpResponse.BodyHandlers.ofString());
  }
}
