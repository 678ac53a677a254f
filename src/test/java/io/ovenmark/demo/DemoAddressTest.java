package io.ovenmark.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DemoAddressTest {

  @ParameterizedTest
  @ValueSource(strings = {"wheat-bun@1", "seeded-lupin-bun/egg-free@12"})
  void isWrittenAsItWasRead(String text) {
    assertThat(DemoAddress.parse(text)).hasToString(text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "wheat-bun", "wheat-bun@", "wheat-bun@0", "wheat-bun@-1", "a/b/c@1", "Bun@1"})
  void refusesWhatIsNone(String text) {
    assertThatThrownBy(() -> DemoAddress.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\n");
  }
}
