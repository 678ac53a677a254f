package io.ovenmark.publish.share;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DiscretionTest {
  private static final String OTHERWISE = "Formula changed";

  private final Discretion discretion =
      Discretion.of(
          List.of("seeded-lupin-bun", "Seeded lupin bun"),
          List.of("sesame-crispbread", "Sesame crispbread", "bun", "芝麻饼", "Κουλούρι"),
          false);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "as the sesame-crispbread",
        "SESAME CRISPBREAD too",
        "Sesame crispbreads too",
        "and sesame, crispbread",
        "像芝麻饼一样",
        "όπως το κουλούρι."
      })
  void findsAMention(String text) {
    assertThat(discretion.speaksOfOthers(text)).isTrue();
    assertThat(discretion.note(text, OTHERWISE)).startsWith(OTHERWISE).doesNotContain("risp");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Drier dough",
        "The bun is flat",
        "Toasted sesame on the seeded lupin bun",
        "A crispbreadlike crust of sesame",
        "sesamecrispbread"
      })
  void takesNothingElseForOne(String text) {
    assertThat(discretion.speaksOfOthers(text)).isFalse();
    assertThat(discretion.note(text, OTHERWISE)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Wetter. Sesame crispbread drier. Baked hot. | Wetter. Baked hot.",
        "Wetter; sesame crispbread drier | Wetter;"
      })
  void cutsSentenceBySentence(String note, String told) {
    assertThat(discretion.note(note, OTHERWISE)).isEqualTo(told);
  }

  @Test
  void keepsTheBodyOfASubjectThatGoes() {
    assertThat(
            discretion.note("Bun and sesame crispbread\n\nRest longer.\nSesame crispbread: no.",
                OTHERWISE))
        .isEqualTo("Formula changed (the note spoke of other formulas too)\n\nRest longer.");
  }

  @Test
  void cutsANameThatRunsOverTheEndOfALine() {
    assertThat(discretion.note("Wetter\n\nAs with the sesame\ncrispbread", OTHERWISE))
        .isEqualTo("Formula changed (the note spoke of other formulas too)");
  }

  @Test
  void addressesGoUnlessTheyAreKept() {
    String note = "Wetter\n\nCo-authored-by: Ines <ines@example.org>";

    assertThat(discretion.note(note, OTHERWISE)).isEqualTo("Wetter\n\nCo-authored-by: Ines");
    assertThat(Discretion.of(List.of("a"), List.of(), true).note(note, OTHERWISE))
        .isEqualTo(note);
  }

  @Test
  void isNeverBlank() {
    assertThat(discretion.note("ines@example.org", OTHERWISE)).isEqualTo(OTHERWISE);
  }
}
