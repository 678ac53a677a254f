package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.notebook.Refusal;
import java.time.Duration;
import java.util.Base64;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PairingsTest {
  private final MovingClock clock = new MovingClock();
  private final Pairings pairings = new Pairings(clock);

  private Pairings.Paired pairedAs(String name) {
    return pairings.pair(pairings.newCode().text(), name);
  }

  @Test
  void aCodeGivesAKeyOf256BitsThatIsKnownAfterwards() {
    Pairings.Paired paired = pairedAs(" Ruben ");
    assertThat(Base64.getUrlDecoder().decode(paired.key())).hasSize(32);
    assertThat(paired.device().name()).isEqualTo("Ruben");
    assertThat(pairings.of(paired.key())).contains(paired.device());
    assertThat(pairings.devices()).containsExactly(paired.device());
  }

  @Test
  void codesAndKeysNeverRepeat() {
    Set<String> codes = new HashSet<>();
    Set<String> keys = new HashSet<>();
    for (int i = 0; i < 500; i++) {
      Pairings.Code code = pairings.newCode();
      assertThat(code.text()).matches("[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}");
      codes.add(code.text());
      Pairings.Paired paired = pairings.pair(code.text(), "");
      keys.add(paired.key());
      pairings.end(paired.device().id());
    }
    assertThat(codes).hasSize(500);
    assertThat(keys).hasSize(500);
  }

  @Test
  void aCodeWorksOnce() {
    String code = pairings.newCode().text();
    pairings.pair(code, "");
    assertThat(pairings.code()).isEmpty();
    assertRefused(code, "each works once");
  }

  @Test
  void aNewCodeEndsTheOneBefore() {
    String first = pairings.newCode().text();
    String second = pairings.newCode().text();
    assertRefused(first, "not the code");
    assertThat(pairings.pair(second, "")).isNotNull();
  }

  @Test
  void aCodeWorksUntilItsTimeIsOverAndNotLonger() {
    String code = pairings.newCode().text();
    clock.move(Pairings.CODE_WORKS.minusSeconds(1));
    assertThat(pairings.code()).isPresent();
    clock.move(Duration.ofSeconds(1));
    assertThat(pairings.code()).isEmpty();
    assertRefused(code, "No code works at present");
  }

  @Test
  void withoutACodeNobodyGetsIn() {
    assertRefused("", "No code works at present");
    assertRefused("0000-0000", "No code works at present");
  }

  @Test
  void afterAFewWrongTriesEvenTheRightCodeIsVoid() {
    String code = pairings.newCode().text();
    String wrong = code.startsWith("0") ? "1111-1111" : "0000-0000";
    for (int left = Pairings.TRIES - 1; left > 0; left--) {
      assertThatThrownBy(() -> pairings.pair(wrong, ""))
          .isInstanceOfSatisfying(
              Refusal.class, refusal -> assertThat(refusal.where()).isEqualTo("code"));
    }
    assertThat(pairings.isVoid()).isFalse();
    assertRefused(wrong, "Too many wrong codes");
    assertThat(pairings.isVoid()).isTrue();
    assertRefused(code, "Too many wrong codes");
    assertThat(pairings.devices()).isEmpty();
    assertThat(pairings.pair(pairings.newCode().text(), "")).isNotNull();
    assertThat(pairings.isVoid()).isFalse();
  }

  @Test
  void aCodeMayBeTypedAsPeopleType() {
    String code = pairings.newCode().text();
    String typed =
        " " + code.toLowerCase(Locale.ROOT).replace("-", " ").replace('0', 'o').replace('1', 'l');
    assertThat(pairings.pair(typed, "")).isNotNull();
  }

  @Test
  void aPairingEndsWithItsTime() {
    String key = pairedAs("Ruben").key();
    clock.move(Pairings.PAIRING_LASTS.minusSeconds(1));
    assertThat(pairings.of(key)).isPresent();
    clock.move(Duration.ofSeconds(1));
    assertThat(pairings.of(key)).isEmpty();
    assertThat(pairings.devices()).isEmpty();
  }

  @Test
  void endingOnePairingLeavesTheOthers() {
    Pairings.Paired one = pairedAs("Ruben");
    Pairings.Paired other = pairedAs("Ines");
    pairings.end(one.device().id());
    pairings.end("nobody");
    assertThat(pairings.of(one.key())).isEmpty();
    assertThat(pairings.of(other.key())).isPresent();
  }

  @Test
  void noOtherKeyOpens() {
    Pairings.Paired paired = pairedAs("Ruben");
    String key = paired.key();
    assertThat(pairings.of("")).isEmpty();
    assertThat(pairings.of(key.substring(1))).isEmpty();
    assertThat(pairings.of(key + "=")).isEmpty();
    assertThat(pairings.of(key.toLowerCase(Locale.ROOT))).isEmpty();
    assertThat(pairings.of(paired.device().id())).isEmpty();
  }

  @Test
  void thereAreNotAnyNumberOfDevices() {
    for (int i = 0; i < Pairings.MOST_DEVICES; i++) {
      pairedAs("");
    }
    String code = pairings.newCode().text();
    assertThatThrownBy(() -> pairings.pair(code, "")).hasMessageContaining("paired already");
    pairings.end(pairings.devices().get(0).id());
    assertThat(pairings.pair(code, "")).isNotNull();
  }

  @ParameterizedTest
  @ValueSource(strings = {"a\nb", "Ruben <x@y>", "a\u0000b", "a\u202Eb"})
  void aNameThatCannotStandInACommitIsRefusedAndTheCodeStillWorks(String name) {
    String code = pairings.newCode().text();
    assertThatThrownBy(() -> pairings.pair(code, name))
        .isInstanceOfSatisfying(
            Refusal.class, refusal -> assertThat(refusal.where()).isEqualTo("name"));
    assertThatThrownBy(() -> pairings.pair(code, "x".repeat(61))).isInstanceOf(Refusal.class);
    assertThat(pairings.pair(code, "Zoë ńáme")).isNotNull();
  }

  private void assertRefused(String code, String words) {
    assertThatThrownBy(() -> pairings.pair(code, ""))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining(words);
  }
}
