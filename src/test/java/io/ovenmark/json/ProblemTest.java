package io.ovenmark.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ProblemTest {
  @Test
  void saysFileLineColumnAndFieldAsFarAsTheyAreKnown() {
    assertThat(new Problem("a.json", new Position(3, 7), "lines[2].amount", "Bad.", "Mend it."))
        .hasToString("a.json:3:7, field lines[2].amount: Bad. Mend it.");
    assertThat(new Problem("a.json", Position.NONE, "name", "Bad.", "Mend it.").where())
        .isEqualTo("a.json, field name");
    assertThat(new Problem("a.json", Position.NONE, "", "Bad.", "Mend it.").where())
        .isEqualTo("a.json");
  }

  @Test
  void staysOnOneLineWhateverTheFileHeld() {
    Problem problem =
        new Problem("a.json", Position.NONE, "x\ny", "A\u001b[31m\r\n\0B.", "Mend\tit.");
    assertThat(problem).hasToString("a.json, field x y: A [31m   B. Mend it.");
  }

  @Test
  void cutsOverlongTexts() {
    Problem problem = new Problem("a.json", Position.NONE, "", "x".repeat(1_000_000), "Mend it.");
    assertThat(problem.message()).hasSize(301).endsWith("x…");
  }

  @Test
  void theExceptionSpeaksOfTheFirstAndCarriesAll() {
    Problem one = new Problem("a.json", Position.NONE, "", "One.", "Mend it.");
    Problem two = new Problem("a.json", Position.NONE, "", "Two.", "Mend it.");
    UnreadableException refused = new UnreadableException(List.of(one, two));
    assertThat(refused).hasMessage("a.json: One. Mend it.");
    assertThat(refused.problems()).containsExactly(one, two);
  }
}
