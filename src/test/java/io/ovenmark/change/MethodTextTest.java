package io.ovenmark.change;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.change.TextRun.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MethodTextTest {
  /** Removed runs in [-…-], added ones in {+…+}, for the eye of the test only. */
  private static String marked(List<TextRun> runs) {
    return runs.stream()
        .map(
            run ->
                switch (run.kind()) {
                  case SAME -> run.text();
                  case REMOVED -> "[-" + run.text() + "-]";
                  case ADDED -> "{+" + run.text() + "+}";
                })
        .collect(Collectors.joining());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      ignoreLeadingAndTrailingWhitespace = true,
      value = {
        "Rest 10 min. | Rest 15 min. | Rest [-10-]{+15+} min.",
        "Mix all | Mix all dry parts | Mix all{+ dry parts+}",
        "a b c d | a x y d | a [-b c-]{+x y+} d",
        "Bake at 0.5 bar | Bake at 0.6 bar | Bake at [-0.5-]{+0.6+} bar",
        "don’t knead | knead | [-don’t -]knead",
        "190 °C | 205 °C | [-190-]{+205+} °C",
        "same | same | same",
        "Ψήνουμε 20 λεπτά | Ψήνουμε 25 λεπτά | Ψήνουμε [-20-]{+25+} λεπτά",
        "Ψήνουμε καλά. | Ψήνουμε. | Ψήνουμε[- καλά-].",
      })
  void proseIsComparedWordByWord(String from, String to, String expected) {
    assertThat(marked(MethodText.words(from, to))).isEqualTo(expected);
  }

  @Test
  void aLostFinalLineBreakIsSeen() {
    assertThat(MethodText.words("Mix.\n", "Mix."))
        .containsExactly(new TextRun(Kind.SAME, "Mix."), new TextRun(Kind.REMOVED, "\n"));
    assertThat(MethodText.words("Mix.\n\n", "Mix.\n"))
        .containsExactly(
            new TextRun(Kind.SAME, "Mix."),
            new TextRun(Kind.REMOVED, "\n\n"),
            new TextRun(Kind.ADDED, "\n"));
  }

  @Test
  void emptyTextsHaveNoRuns() {
    assertThat(MethodText.words("", "")).isEmpty();
    assertThat(MethodText.words("", "Mix")).containsExactly(new TextRun(Kind.ADDED, "Mix"));
  }

  @Test
  void joinedSignsAreNeverCut() {
    assertThat(Words.of("👩‍🍳👨‍🍳e\u0301te 🇬🇷🇸🇪 👍🏽\uD83Dx水好"))
        .containsExactly(
            "👩‍🍳", "👨‍🍳", "e\u0301te", " ", "🇬🇷", "🇸🇪", " ", "👍🏽", "\uD83D", "x", "水", "好");
  }

  @Test
  void markupIsTextLikeAnyOther() {
    assertThat(marked(MethodText.words("<b>&amp;</b>", "<i>&amp;</b>")))
        .isEqualTo("<[-b-]{+i+}>&amp;</b>");
  }

  @Test
  void stepsAreKeptRewordedAddedAndRemoved() {
    assertThat(
            MethodText.diff(
                List.of("Mix the dry parts.", "Add water.", "Rest 10 min.", "Bake."),
                List.of("Mix the dry parts.", "Rest 15 min.", "Bake.", "Cool on a rack.")))
        .containsExactly(
            new StepDiff.Kept(1, 1, "Mix the dry parts."),
            new StepDiff.Removed(2, "Add water."),
            new StepDiff.Changed(
                3,
                2,
                List.of(
                    new TextRun(Kind.SAME, "Rest "),
                    new TextRun(Kind.REMOVED, "10"),
                    new TextRun(Kind.ADDED, "15"),
                    new TextRun(Kind.SAME, " min."))),
            new StepDiff.Kept(4, 3, "Bake."),
            new StepDiff.Added(4, "Cool on a rack."));
  }

  @Test
  void stepsThatShareNothingAreNotTakenForOneAnother() {
    assertThat(MethodText.diff(List.of("Bake until brown."), List.of("Cool on a rack.")))
        .containsExactly(
            new StepDiff.Removed(1, "Bake until brown."), new StepDiff.Added(1, "Cool on a rack."));
  }

  @Test
  void blankAndRepeatedStepsAreSteps() {
    assertThat(MethodText.diff(List.of("Fold.", "Fold."), List.of("Fold.", "", "Fold.")))
        .containsExactly(
            new StepDiff.Kept(1, 1, "Fold."),
            new StepDiff.Added(2, ""),
            new StepDiff.Kept(2, 3, "Fold."));
    assertThat(MethodText.diff(List.of(), List.of())).isEmpty();
  }

  @Test
  void runsPutTogetherGiveBothTextsBack() {
    Random random = new Random(5);
    String[] stock = {"a", "bb", " ", "\n", ".", "é", "👩‍🍳", "\uD83D", "\uDC69", "\u0301", "1"};
    for (int round = 0; round < 3000; round++) {
      String from = text(random, stock);
      String to = text(random, stock);
      List<TextRun> runs = MethodText.words(from, to);
      assertThat(without(runs, Kind.ADDED)).isEqualTo(from);
      assertThat(without(runs, Kind.REMOVED)).isEqualTo(to);
      for (int i = 1; i < runs.size(); i++) {
        assertThat(runs.get(i).kind()).isNotEqualTo(runs.get(i - 1).kind());
      }
    }
  }

  private static String text(Random random, String[] stock) {
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(14); i > 0; i--) {
      text.append(stock[random.nextInt(stock.length)]);
    }
    return text.toString();
  }

  private static String without(List<TextRun> runs, Kind left) {
    return runs.stream()
        .filter(run -> run.kind() != left)
        .map(TextRun::text)
        .collect(Collectors.joining());
  }

  @Test
  void stepsPutTogetherGiveBothMethodsBackInOrder() {
    Random random = new Random(6);
    String[] words = {"mix", "rest", "fold", "bake", "well"};
    for (int round = 0; round < 2000; round++) {
      List<String> from = method(random, words);
      List<String> to = method(random, words);
      List<String> before = new ArrayList<>();
      List<String> after = new ArrayList<>();
      for (StepDiff step : MethodText.diff(from, to)) {
        if (step instanceof StepDiff.Kept kept) {
          before.add(kept.text());
          after.add(kept.text());
          assertThat(kept.fromNumber()).isEqualTo(before.size());
          assertThat(kept.toNumber()).isEqualTo(after.size());
        } else if (step instanceof StepDiff.Removed removed) {
          before.add(removed.text());
          assertThat(removed.fromNumber()).isEqualTo(before.size());
        } else if (step instanceof StepDiff.Added added) {
          after.add(added.text());
          assertThat(added.toNumber()).isEqualTo(after.size());
        } else if (step instanceof StepDiff.Changed changed) {
          before.add(without(changed.words(), Kind.ADDED));
          after.add(without(changed.words(), Kind.REMOVED));
          assertThat(changed.fromNumber()).isEqualTo(before.size());
          assertThat(changed.toNumber()).isEqualTo(after.size());
        }
      }
      assertThat(before).isEqualTo(from);
      assertThat(after).isEqualTo(to);
    }
  }

  private static List<String> method(Random random, String[] words) {
    List<String> steps = new ArrayList<>();
    for (int i = random.nextInt(6); i > 0; i--) {
      List<String> step = new ArrayList<>();
      for (int j = random.nextInt(4); j > 0; j--) {
        step.add(words[random.nextInt(words.length)]);
      }
      steps.add(String.join(" ", step));
    }
    return steps;
  }

  @Test
  void aHugeRewordingIsOneRemovalAndOneAddition() {
    String from = "begin " + "old ".repeat(50_000) + "end";
    String to = "begin " + "new ".repeat(50_000) + "end";
    assertThat(MethodText.words(from, to))
        .extracting(TextRun::kind)
        .containsExactly(Kind.SAME, Kind.REMOVED, Kind.ADDED, Kind.SAME);
    List<String> many = new ArrayList<>();
    List<String> others = new ArrayList<>();
    for (int i = 0; i < 3000; i++) {
      many.add("step " + i);
      others.add("other " + i);
    }
    assertThat(MethodText.diff(many, others)).hasSize(3000);
  }

  @Test
  void aLongRunOfJoinersEndsWithoutTrouble() {
    assertThat(Words.of("1" + ".1".repeat(100_000))).hasSize(1);
    assertThat(Words.of("\u200D".repeat(10_001))).isNotEmpty();
  }
}
