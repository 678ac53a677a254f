package io.ovenmark.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.ovenmark.measure.ShownUnits;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WindowLimitTest {
  private static BakedPiece piece(Double core, Double crust, boolean lookedAt, String... findings) {
    return new BakedPiece(
        "2026-10-05-1",
        "a",
        "seeded-lupin-bun@13",
        OptionalDouble.of(200),
        OptionalDouble.of(20),
        core == null ? OptionalDouble.empty() : OptionalDouble.of(core),
        crust == null ? OptionalDouble.empty() : OptionalDouble.of(crust),
        OptionalDouble.empty(),
        List.of(findings),
        lookedAt,
        OptionalDouble.empty());
  }

  @ParameterizedTest
  @CsvSource({
    "core at least 71 °C, core at least 71 °C",
    "core at least 71C, core at least 71 °C",
    "Core ≥ 71 °C, core at least 71 °C",
    "core 92 to 98 °C, core 92 to 98 °C",
    "core 92 °C - 98 °C, core 92 to 98 °C",
    "core at most 98 C, core at most 98 °C",
    "crust 2 to 3, crust 2 to 3",
    "'crust 1,5–2.5', crust 1.5 to 2.5",
    "crust at most 3 of 4, crust at most 3",
    "no gummy crumb, no gummy crumb",
    "No Gummy Crumb, no gummy crumb",
    "without dark base, no dark base",
    "not dry, not dry",
    "no dry, not dry",
    "with even crumb, with even crumb",
    "no cave at the top, no cave at the top",
    "cooking value at least 6 min, cooking value at least 6 min",
    "cooking value 5 to 9, cooking value 5 to 9 min"
  })
  void isReadAndWrittenAsItIsRead(String text, String written) {
    WindowLimit limit = WindowLimit.read(text);

    assertThat(limit.text()).isEqualTo(written);
    assertThat(WindowLimit.read(limit.text())).isEqualTo(limit);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", "core", "core 71", "core at least 71", "core at least 71 min", "crust 3 to 2",
        "crust 2 to 2", "crust at least 5", "crust 2 °C to 3 °C", "gummy crumb", "no ",
        "height at least 40 mm", "core at least 9999 °C", "cooking value at least 100 °C"
      })
  void isRefusedWithWhatToWrite(String text) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> WindowLimit.read(text))
        .withMessageContaining("\n");
  }

  @Test
  void isShownInTheUnitsOfTheReader() {
    ShownUnits fahrenheit = ShownUnits.of(Optional.of("oz"), Optional.of("F"));

    assertThat(WindowLimit.read("core at least 71 °C").text(fahrenheit))
        .isEqualTo("core at least 160 °F");
    assertThat(WindowLimit.read("core at least 160 °F").text()).isEqualTo("core at least 71.1 °C");
    assertThat(WindowLimit.read("crust 2 to 3").text(fahrenheit)).isEqualTo("crust 2 to 3");
  }

  @Test
  void aMeasureThatIsUnknownIsNeitherKeptNorBroken() {
    WindowLimit core = WindowLimit.read("core at least 71 °C");

    assertThat(core.isKept(piece(71.0, null, true))).contains(true);
    assertThat(core.isKept(piece(70.9, null, true))).contains(false);
    assertThat(core.isKept(piece(null, 2.0, true))).isEmpty();
  }

  /** A piece that nobody looked at may well be gummy. */
  @Test
  void aFindingIsAbsentOnlyWhereSomebodyLooked() {
    WindowLimit none = WindowLimit.read("no gummy crumb");

    assertThat(none.isKept(piece(95.0, 2.0, true, "even crumb"))).contains(true);
    assertThat(none.isKept(piece(95.0, 2.0, true, "gummy crumb"))).contains(false);
    assertThat(none.isKept(piece(95.0, 2.0, false))).isEmpty();
    assertThat(WindowLimit.read("with even crumb").isKept(piece(95.0, 2.0, true, "even crumb")))
        .contains(true);
  }
}
