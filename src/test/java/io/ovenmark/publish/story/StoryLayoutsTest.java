package io.ovenmark.publish.story;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.measure.Quantity;
import io.ovenmark.publish.card.Card;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class StoryLayoutsTest {
  private static final StoryPhoto PHOTO =
      new StoryPhoto(new byte[] {1, 2, 3}, "Two <b>flat</b> buns", Optional.of("Cut | open"));

  static Card card() {
    return new Card(
        "Bun",
        Optional.empty(),
        "6 pieces",
        Optional.of("6 pieces"),
        Optional.empty(),
        List.of(
            new Card.Ingredient(
                "110 g", OptionalDouble.of(110), Optional.empty(), "lupin flour", Optional.empty())),
        List.of("Mix."),
        List.of(),
        List.of(new Card.Fact("protein_g", "protein", "unknown", Quantity.UNKNOWN)),
        List.of("Summed."),
        List.of("lupin"),
        List.of(),
        List.of("Contains lupin: people allergic to peanut can react to it."),
        Optional.empty(),
        "bun@5",
        Optional.of("2026-09-14"),
        1);
  }

  private static Story.Step step(int number, String heading, Optional<Move> move) {
    return new Story.Step(
        number,
        "bun@" + number,
        "2026-09-0" + number,
        heading,
        Optional.of("First line.\n\nSecond line."),
        number == 1 ? List.of() : List.of("Water down 20 g."),
        Optional.of("Two things changed."),
        List.of("Not baked."),
        move,
        number == 1 ? Optional.of(PHOTO) : Optional.empty());
  }

  private static final Move MOVE =
      new Move("mean_liking", "liking, 1 to 9", "", 5, 7.5, "5", "7.5", "+2.5", false);

  private static Story story(String title, List<Arc> arcs) {
    return new Story(
        title,
        "Bun",
        Optional.empty(),
        "2 revisions",
        Optional.empty(),
        Optional.of("It stays soft."),
        Optional.of(PHOTO),
        List.of(
            step(1, "Begin", Optional.empty()), step(2, "# Drier *dough*", Optional.of(MOVE))),
        arcs,
        card());
  }

  private static Arc arc(double... values) {
    List<Arc.Point> points = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      boolean known = !Double.isNaN(values[i]);
      points.add(
          new Arc.Point(
              i + 1,
              i % 2 == 0,
              known ? OptionalDouble.of(values[i]) : OptionalDouble.empty(),
              known ? String.valueOf(values[i]) : "not baked"));
    }
    return new Arc(
        "x", "liking", "", OptionalDouble.of(6), OptionalDouble.empty(), points);
  }

  @Test
  void thePageIsWholeAndRunsNothing() {
    String page = StoryHtml.of(story("A <script>alert(1)</script> bun", List.of(arc(2, 5, 7))));

    assertThat(page)
        .startsWith("<!DOCTYPE html>")
        .doesNotContain("<script")
        .contains("&lt;script&gt;")
        .contains("Two &lt;b&gt;flat&lt;/b&gt; buns")
        .contains("data:image/jpeg;base64,AQID")
        .doesNotContain("http://")
        .doesNotContain("https://")
        .contains("people allergic to peanut")
        .contains("hollow: bun@1")
        .contains("goal at least 6");
    assertThat(StoryHtml.of(story("A <script>alert(1)</script> bun", List.of(arc(2, 5, 7)))))
        .isEqualTo(page);
  }

  @Test
  void aWayIsDrawnOnlyWhereTwoPointsAreKnownAndDashedOverAGap() {
    String drawn = StoryHtml.of(story("Bun", List.of(arc(2, Double.NaN, 7))));

    assertThat(drawn).contains("class=\"way gap\"").doesNotContain("class=\"way\"");
    assertThat(drawn).contains("liking: revision 1 2.0, revision 3 7.0; goal at least 6.");
    assertThat(StoryHtml.of(story("Bun", List.of(arc(2, Double.NaN)))))
        .doesNotContain("How the figures went");
  }

  @Test
  void barsHaveTheProportionOfTheirFigures() {
    String page = StoryHtml.of(story("Bun", List.of()));

    assertThat(page)
        .contains("class=\"before\" x=\"10.0\" y=\"6.0\" width=\"200.0\"")
        .contains("class=\"after\" x=\"10.0\" y=\"50.0\" width=\"300.0\"");
  }

  @Test
  void theMarkdownShowsItsPhotosAsFilesBesideIt() {
    List<StoryFile> files = StoryMarkdown.of(story("Bun", List.of(arc(2, 5, 7))));
    String text = new String(files.get(0).content(), UTF_8);

    assertThat(files).extracting(StoryFile::name).containsExactly("story.md", "step-01.jpg");
    assertThat(files.get(1).content()).containsExactly(1, 2, 3);
    assertThat(text)
        .startsWith("# Bun\n")
        .contains("## 2. \\# Drier \\*dough\\*")
        .contains("![Two \\<b\\>flat\\</b\\> buns](step-01.jpg)")
        .contains("*Cut \\| open*")
        .contains("First line.\n\nSecond line.")
        .contains("| revision | liking |\n|---|---|\n| 1 | 2.0 |\n| 3 | 7.0 |")
        .contains("## Bun\n")
        .contains("### Ingredients");
    assertThat(text.lines().filter(line -> line.startsWith("# "))).hasSize(1);
  }
}
