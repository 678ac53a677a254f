package io.ovenmark.bake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BakeGridTest {
  private static List<String> settings(String grid) {
    return BakeGrid.read(grid).stream()
        .map(
            piece ->
                piece.id()
                    + " " + piece.temperature().orElseThrow()
                    + " " + piece.minutes().getAsDouble())
        .toList();
  }

  @Test
  void everyTemperatureMeetsEveryTime() {
    assertThat(settings("190,200 C x 14,16,18 min"))
        .containsExactly(
            "a 190 °C 14.0", "b 190 °C 16.0", "c 190 °C 18.0",
            "d 200 °C 14.0", "e 200 °C 16.0", "f 200 °C 18.0");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "190,200C x 14,16min",
        "190, 200 °C  X  14 , 16 min",
        "190C,200C × 14min,16min",
        "190,200 C×14,16 min",
        "190 °C, 200 °C * 14m, 16m",
        "190, 200 °C × 14, 16 min",
        "190 200 C x 14 16 min",
        "190 and 200 °C for 14 and 16 minutes",
        "190C, 200 x 14min, 16",
        "190 C 200 C x 14 min 16 min",
        "14, 16 min at 190, 200 °C",
        "190,200Cx14,16min",
        "190 & 200 ℃ × 14; 16 mins",
        "  190,\u00a0200\u202f°C\u00a0×\u00a014,\u00a016\u00a0min "
      })
  void isReadHoweverItIsWritten(String grid) {
    assertThat(settings(grid))
        .containsExactly("a 190 °C 14.0", "b 190 °C 16.0", "c 200 °C 14.0", "d 200 °C 16.0");
  }

  @Test
  void oneOfEachIsAGridToo() {
    assertThat(settings("375 F x 1h")).containsExactly("a 375 °F 60.0");
  }

  @Test
  void hoursAndFahrenheitAreReadToo() {
    assertThat(settings("375 and 400 °F x 1 h, 1h10min, 1.5 hours"))
        .startsWith("a 375 °F 60.0", "b 375 °F 70.0", "c 375 °F 90.0", "d 400 °F 60.0");
    assertThat(settings("190 C, 375 F x 14 min"))
        .containsExactly("a 190 °C 14.0", "b 375 °F 14.0");
  }

  @Test
  void besideAFieldWithUnitsBareNumbersHaveThem() {
    TypedUnits units = new TypedUnits("oz", "F");

    assertThat(BakeGrid.read("375, 400 x 14", units))
        .extracting(piece -> piece.temperature().orElseThrow().toString())
        .containsExactly("375 °F", "400 °F");
    assertThat(BakeGrid.read("190 C × 14, 16", units))
        .extracting(piece -> piece.minutes().getAsDouble())
        .containsExactly(14.0, 16.0);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "190-200 C x 14 min",
        "190–200 °C × 14, 16 min",
        "190 to 200 °C × 14 min",
        "190 C x 14-18 min",
        "190 C … 200 C x 14 min",
        "190..200 C x 14 min"
      })
  void aRangeIsRefusedForItDoesNotSayWhatLiesBetween(String grid) {
    assertThatThrownBy(() -> BakeGrid.read(grid))
        .hasMessageContaining("does not say which values lie between")
        .hasMessageContaining("Write each of them");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "190 C",
        "190,200 x 14,16 min",
        "190,200 C x 14,16",
        "190 C x 14 min x 2",
        "190,190 C x 14 min",
        ", C x 14 min",
        "200 °C, 14 min",
        "14, 16 min",
        "190, 190.0 C x 14 min",
        "1000 C x 14 min",
        "190 C x 14,,16 min",
        "x"
      })
  void aSlipIsToldInOneSentenceWithTheRemedy(String grid) {
    assertThatThrownBy(() -> BakeGrid.read(grid))
        .isInstanceOf(IllegalArgumentException.class)
        .message()
        .matches("(?s)[^\n]+\\.\n[^\n]+");
  }

  @Test
  void aGridOfThousandsIsRefusedBeforeItIsMade() {
    String numbers =
        IntStream.range(0, 150).mapToObj(Integer::toString).collect(Collectors.joining(","));

    assertThatThrownBy(() -> BakeGrid.read(numbers + " C x " + numbers + " min"))
        .hasMessageContaining("more than 200 pieces");
  }
}
