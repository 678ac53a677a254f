package io.ovenmark.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WordsTest {
  private static boolean found(String words, String text) {
    return Words.of(words).areIn(Words.searchable(List.of(text)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "gummy | Still a Gummy crumb",
        "gumm crum | Still a gummy crumb",
        "crumb gummy | gummy, crumb",
        "creme | Crème fraîche",
        "CRÈME | creme",
        "ψωμι | Το ΨΩΜΊ δεν φούσκωσε",
        "λουπινος | αλεύρι λούπινος",
        "ΛΟΥΠΙΝΟΣ | λούπινος",
        "خبز | خُبْزٌ بلا غلوتين",
        "خبز | الخبز",
        "الخبز | الخبز",
        "احمر | أحمر",
        "soße | Sosse",
        "sosse | SOSSE Soße",
        "smorrebrod | Smørrebrød",
        "205 | at 205 °C",
        "2 tsp | ½ tsp",
        "面 | 用面粉和水",
        "ﬁbre | fibre",
        "cafe | cafe\u0301",
        "cooperate | co\u00ADoperate",
        "kg 12 | 12 kg"
      })
  void wordsThatPeopleTakeForTheSameAreFound(String words, String text) {
    assertThat(found(words, text)).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ummy | gummy",
        "gummy dry | gummy",
        "gummycrumb | gummy crumb",
        "crumbs | crumb",
        "20 | 1205"
      })
  void aWordMustBeginAWord(String words, String text) {
    assertThat(found(words, text)).isFalse();
  }

  @Test
  void aTextDoesNotRunIntoTheNext() {
    String searchable = Words.searchable(List.of("gum", "my crumb"));
    assertThat(Words.of("gummy").areIn(searchable)).isFalse();
    assertThat(Words.of("gum crumb").areIn(searchable)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  ", "…", "-- “”", "\u0301"})
  void nothingToLookForIsEverywhere(String words) {
    assertThat(Words.of(words).isEmpty()).isTrue();
    assertThat(found(words, "anything")).isTrue();
    assertThat(Words.of(words).areAllOf(words)).isFalse();
  }

  @Test
  void wholeWordsAreToldFromBeginnings() {
    String searchable = Words.searchable(List.of("Dry crumbs"));
    assertThat(Words.of("dry crumbs").areWholeIn(searchable)).isTrue();
    assertThat(Words.of("dry crumb").areWholeIn(searchable)).isFalse();
    assertThat(Words.of("Dry").areAllOf("dry")).isTrue();
    assertThat(Words.of("dry").areAllOf("dry crumb")).isFalse();
  }

  private static String marked(String words, String text) {
    return Words.of(words).marked(text).stream()
        .map(run -> run.match() ? "[" + run.text() + "]" : run.text())
        .collect(Collectors.joining());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "gumm | Still a Gummy crumb, gummy below | Still a [Gummy] crumb, [gummy] below",
        "ψωμι | Το ΨΩΜΊ! | Το [ΨΩΜΊ]!",
        "cafe | cafe\u0301 noir | [cafe\u0301] noir",
        "خبز | هذا الخبز | هذا [الخبز]",
        "2 | ½ tsp | [½] tsp",
        "b | <b>bold</b> | <[b]>[bold]</[b]>"
      })
  void matchingWordsAreMarkedAsTheyWereWritten(String words, String text, String expected) {
    assertThat(marked(words, text)).isEqualTo(expected);
  }

  @Test
  void aTextWithoutTheWordsHasNoMarks() {
    assertThat(Words.of("water").marked("flour")).isEmpty();
    assertThat(Words.of("").marked("flour")).isEmpty();
  }

  @Test
  void aLongTextIsCutAroundTheFirstMatch() {
    String text = "before ".repeat(100) + "gummy" + " behind".repeat(100);
    String marked = marked("gummy", text);
    assertThat(marked).startsWith("… before").endsWith("behind …").contains(" [gummy] ");
    assertThat(marked.length()).isLessThan(240);
  }

  @Test
  void aLongTextWithoutSpacesIsCutBetweenCharacters() {
    String text = "🍞".repeat(300) + " gummy " + "🍞".repeat(300);
    String shown = marked("gummy", text);
    assertThat(shown).contains("[gummy]");
    assertThat(shown.codePoints().noneMatch(point -> point >= 0xD800 && point <= 0xDFFF)).isTrue();
  }

  @Test
  void theBeginningOfATextIsOnePiece() {
    assertThat(Words.beginning("Drier dough")).containsExactly(new Words.Run("Drier dough", false));
    assertThat(Words.beginning("")).isEmpty();
  }
}
