package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.desk.CardOrder;
import io.ovenmark.desk.CardViews;
import io.ovenmark.desk.Json;
import io.ovenmark.desk.MakeCard;
import io.ovenmark.notebook.Address;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class CardAreaTest {
  private static final Address BUN = Address.parse("seeded-lupin-bun@3");

  private final Viewer viewer = RunningBench.FULL.viewer();
  private final MakeCard cards = new MakeCard(RunningBench.FULL.desk());

  private static CardOrder worded(List<String> words) {
    return new CardOrder("letter", "oz", "2", "none", "Two days.", List.of("Ask."), words);
  }

  private static String query(List<String> words) {
    StringBuilder query =
        new StringBuilder("?address=" + BUN)
            .append("&paper=letter&masses=oz&times=2&photo=none&storage=Two%20days.&more=Ask.");
    words.forEach(
        word -> query.append("&word=").append(URLEncoder.encode(word, StandardCharsets.UTF_8)));
    return query.toString();
  }

  @Test
  void theAnswerIsThatOfTheDeskHoweverLongCautionsAreWordedInAnyScript() {
    List<String> words =
        cards.call(BUN, worded(List.of())).cautions().stream()
            .map(CardViews.CautionView::caution)
            .filter(key -> key != null)
            .map(key -> key + "=" + "استخدم مقياس حرارة. ".repeat(40).strip())
            .toList();
    HttpResponse<byte[]> answer = Asking.get(viewer, "/api/card" + query(words));

    assertThat(words).hasSizeGreaterThan(3);
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(Asking.text(answer)).isEqualTo(Json.compact(cards.call(BUN, worded(words))));
    assertThat(Asking.text(Asking.get(viewer, "/made/card" + query(words))))
        .isEqualTo(cards.page(BUN, worded(words)));
  }

  @Test
  void thePageMayRunNothingAndFetchNothing() {
    HttpResponse<byte[]> page = Asking.get(viewer, "/made/card" + query(List.of()));

    assertThat(page.headers().firstValue("Content-Security-Policy").orElseThrow())
        .startsWith("default-src 'none'")
        .doesNotContain("script-src");
    assertThat(page.headers().firstValue("Content-Type")).hasValue("text/html;charset=utf-8");
  }

  @Test
  void aCautionThatTheFormulaDoesNotCallForIsRefused() {
    HttpResponse<byte[]> answer =
        Asking.get(viewer, "/api/card" + query(List.of("xylitol=Careful.")));

    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(Asking.text(answer)).contains("There is no caution", "Those that apply are");
  }
}
