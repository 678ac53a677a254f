package io.ovenmark.publish.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PictureTextTest {
  private static final TextStyle PLAIN = TextStyle.plain(30);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a", "Psyllium husk powder 24 g → 30 g (+6 g).", StoryByHand.GREEK, StoryByHand.ARABIC
      })
  void noLineIsWiderThanItMayBe(String text) {
    String words = (text + " ").repeat(9) + "x".repeat(200);
    for (double width = 90; width < 900; width += 70) {
      PictureText set = PictureText.of(words, PLAIN, width);

      assertThat(set.across()).isLessThanOrEqualTo(width + 0.5);
      assertThat(set.words().replace(" ", "")).isEqualTo(words.replace(" ", ""));
    }
  }

  @Test
  void aFigureStaysWithItsUnit() {
    String text = "Water 210 g → 180 g (−30 g), baked at 205 °C for 21 min, 9.8 % lost.";
    for (double width = 160; width < 700; width += 10) {
      assertThat(PictureText.of(text, PLAIN, width).rows())
          .noneMatch(row -> row.words().strip().matches(".*(210|180|30|205|21|9\\.8)"));
    }
  }

  @Test
  void aFigureAmongWordsFromRightToLeftKeepsItsOrder() {
    PictureText text = PictureText.of(StoryByHand.ARABIC + " 71 °C", PLAIN, 1500);

    assertThat(text.rows().get(0).letters().isLeftToRight()).isFalse();
    assertThat(text.words()).isEqualTo(StoryByHand.ARABIC + " 71 °C");
    assertThat(text.rows().get(0).words()).contains("\u200e71\u00a0°C");
  }

  @Test
  void aTextShrinksUntilItFitsAndIsCutOnlyThen() {
    String text = "Even crumb, good oven spring, crumb dry to the touch. ".repeat(4);
    PictureText large = PictureText.fitted(text, TextStyle.plain(48), 26, 900, 400);
    PictureText small = PictureText.fitted(text, TextStyle.plain(48), 26, 900, 160);
    PictureText cut = PictureText.fitted(text, TextStyle.plain(48), 26, 900, 80);

    assertThat(large.style().size()).isEqualTo(48);
    assertThat(small.style().size()).isBetween(26.0, 46.0);
    assertThat(small.words().strip()).isEqualTo(text.strip());
    assertThat(cut.style().size()).isEqualTo(26);
    assertThat(cut.height()).isLessThanOrEqualTo(80);
    assertThat(cut.words()).endsWith("…");
  }

  @Test
  void theLinesOfAHeadingAreEven() {
    String text = "Higher, but gummy under the crust in every piece of the tray";
    PictureText plain = PictureText.fitted(text, TextStyle.bold(64), 64, 1700, 300);
    PictureText heading = PictureText.heading(text, TextStyle.bold(64), 64, 1700, 300);

    assertThat(heading.rows()).hasSameSizeAs(plain.rows()).hasSize(2);
    assertThat(heading.words()).isEqualTo(plain.words());
    assertThat(heading.rows().get(1).across()).isGreaterThan(plain.rows().get(1).across());
  }

  @Test
  void linesOfATextAreParagraphsAndControlSignsAreBlanks() {
    PictureText text = PictureText.of("one\r\n\n\ttwo\u0007three\n", PLAIN, 900);

    assertThat(text.rows()).hasSize(2);
    assertThat(text.words()).isEqualTo("one two three");
    assertThat(PictureText.of(" \n ", PLAIN, 900).isEmpty()).isTrue();
  }

  /** The face comes with the program: DejaVu Sans Condensed, whatever the machine has. */
  @Test
  void theTypeComesWithTheProgramAndHasLatinGreekAndArabic() {
    for (boolean bold : new boolean[] {false, true}) {
      assertThat(PictureType.face(bold, 30).getFamily()).isEqualTo("DejaVu Sans Condensed");
      for (String text :
          List.of(StoryByHand.GREEK, StoryByHand.ARABIC, "½ → − ≥ ° · … “crème brûlée” Žluť")) {
        assertThat(PictureType.face(bold, 30).canDisplayUpTo(text)).isEqualTo(-1);
      }
    }
    assertThat(PictureType.class.getResource("/net/sf/jasperreports/fonts/dejavu/LICENSE"))
        .isNotNull();
  }

  @Test
  void aSignThatNoFaceHasIsStillSet() {
    PictureText text = PictureText.of("bun \ud83e\udd56 and \u4e00", PLAIN, 900);

    assertThat(text.words()).isEqualTo("bun \ud83e\udd56 and \u4e00");
    assertThat(text.across()).isPositive();
  }

  @Test
  void pagesLoseNothingWhateverTheirHeight() {
    Random random = new Random(7);
    for (int round = 0; round < 40; round++) {
      TextColumn column = new TextColumn(500);
      StringBuilder all = new StringBuilder();
      for (int part = 0; part < 12; part++) {
        String words = ("w" + part + "x ").repeat(1 + random.nextInt(60)).strip();
        column.paragraph(words, PLAIN);
        all.append(words).append(' ');
      }
      double height = 120 + random.nextInt(700);

      List<TextColumn> pages = column.pages(height, random.nextBoolean());

      assertThat(pages).allMatch(page -> page.height() <= height);
      String words = pages.stream().map(TextColumn::words).collect(Collectors.joining(" "));
      assertThat(words.replaceAll("[. ]+", " ").strip()).isEqualTo(all.toString().strip());
    }
  }

  @Test
  void aHeadingStandsOnThePageOfItsTextAndIsRepeatedWhenItGoesOn() {
    TextColumn column = new TextColumn(600);
    column.paragraph("One line.", PLAIN);
    column.heading("To mind", TextStyle.bold(30));
    column.paragraph("First caution.", PLAIN);
    column.paragraph("Second caution.", PLAIN);

    List<TextColumn> pages = column.pages(130, false);

    assertThat(pages)
        .extracting(TextColumn::words)
        .containsExactly(
            "One line.",
            "To mind: First caution.",
            "To mind, continued: Second caution.");
  }

  @Test
  void aColumnThatIsCutSaysSoAndKeepsWithinItsHeight() {
    TextColumn column = new TextColumn(600);
    column.heading("What changed", TextStyle.bold(30));
    for (int at = 0; at < 20; at++) {
      column.paragraph("Water " + at + " g.", PLAIN);
    }
    for (double height = 90; height < 700; height += 35) {
      TextColumn cut = column.within(height);

      assertThat(cut.height()).isLessThanOrEqualTo(height);
      assertThat(cut.words()).contains(TextColumn.GOES_ON);
    }
    assertThat(column.within(2000)).isSameAs(column);
  }
}
