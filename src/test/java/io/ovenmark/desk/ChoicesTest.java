package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.change.Choice;
import io.ovenmark.change.Conflict;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ChoicesTest {
  private static final List<Conflict> OPEN =
      List.of(conflict("lines.water.amount"), conflict("bake.bake.minutes"));

  private static Conflict conflict(String path) {
    return new Conflict(path, "x", Optional.empty(), Optional.empty(), Optional.empty());
  }

  @Test
  void aLineMayBeNamedWithoutTheWordLines() {
    Choices choices = new Choices(Map.of("water.amount", Choice.THEIRS), Optional.empty());
    assertThat(choices.among(OPEN)).containsExactly(Map.entry("lines.water.amount", Choice.THEIRS));
  }

  @Test
  void theRestGoesToOneSideUnlessAFieldSaysOtherwise() {
    Choices choices =
        new Choices(Map.of("bake.bake.minutes", Choice.BASE), Optional.of(Choice.OURS));
    assertThat(choices.among(OPEN))
        .containsOnly(
            Map.entry("lines.water.amount", Choice.OURS),
            Map.entry("bake.bake.minutes", Choice.BASE));
    assertThat(choices.among(OPEN.subList(1, 2)))
        .containsOnly(Map.entry("bake.bake.minutes", Choice.BASE));
  }

  @Test
  void aFieldThatIsNotOpenIsRefusedWithThoseThatAre() {
    Choices choices = new Choices(Map.of("salt.amount", Choice.OURS), Optional.empty());
    assertThatThrownBy(() -> choices.among(OPEN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "Nothing is to be chosen at \"salt.amount\".\n"
                + "Choose for lines.water.amount, bake.bake.minutes.");
    assertThatThrownBy(() -> choices.among(List.of()))
        .hasMessageEndingWith("There is no conflict.");
  }
}
