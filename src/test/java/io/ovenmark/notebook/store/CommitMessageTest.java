package io.ovenmark.notebook.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CommitMessageTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Less water | Less water | '' | {}",
        "Less water~ | Less water | '' | {}",
        "Less~water | Less water | '' | {}",
        "~~Less water~~It was wet~ | Less water | It was wet | {}",
        "A~~B~C~~D | A | B~C~~D | {}",
        "A~~Key: v | A | '' | {Key=v}",
        "A~~B~~Key: v~Other-2: w | A | B | {Key=v, Other-2=w}",
        "A~~B~~Key: v~~ | A | B | {Key=v}",
        "A~~Key: v~not a trailer | A | Key: v~not a trailer | {}",
        "Key: v | Key: v | '' | {}",
        "A~~Key: v~ folded | A | '' | {Key=v folded}",
        "A~~Key: v~Key: w | A | '' | {Key=w}",
        "A~~Note: it~~Key: v | A | Note: it | {Key=v}",
        "'' | '' | '' | {}",
        "~~ | '' | '' | {}",
      })
  void isReadIntoSubjectBodyAndTrailers(
      String text, String subject, String body, String trailers) {
    CommitMessage message = CommitMessage.parse(text.replace('~', '\n'));

    assertThat(message.subject()).isEqualTo(subject);
    assertThat(message.body()).isEqualTo(body.replace('~', '\n'));
    assertThat(message.trailers()).hasToString(trailers);
  }

  @Test
  void isReadBackAsItWasComposed() {
    Map<String, String> trailers = new TreeMap<>(Map.of("Formula", "seeded-lupin-bun"));

    String text = CommitMessage.compose("Λιγότερο νερό\r\n\r\nNote: it was wet\n", trailers);

    CommitMessage message = CommitMessage.parse(text);
    assertThat(message.subject()).isEqualTo("Λιγότερο νερό");
    assertThat(message.body()).isEqualTo("Note: it was wet");
    assertThat(message.trailers()).isEqualTo(trailers);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  \n ", "nul \0 inside"})
  void refusesAMessageThatSaysNothingOrHoldsANul(String text) {
    assertThatThrownBy(() -> CommitMessage.compose(text, Map.of()))
        .isInstanceOfSatisfying(
            StoreException.class,
            e -> assertThat(e.reason()).isEqualTo(StoreException.Reason.BAD_MESSAGE));
  }

  @ParameterizedTest
  @CsvSource({"Key with space,v", "'',v", "Key,''", "Key:,v", "-Key,v", "Key,'a\nb'"})
  void refusesATrailerThatWouldNotBeReadBack(String key, String value) {
    assertThatThrownBy(() -> CommitMessage.compose("A", Map.of(key, value)))
        .isInstanceOf(StoreException.class);
  }
}
