package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.measure.Amount;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.FormulaWriter;
import io.ovenmark.notebook.NotebookFixture;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.VariantWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is found through the index is what a reading of everything finds, whatever happens. */
class FindInHistoryPropertiesTest {
  private static final int STEPS = 60;
  private static final List<String> FOODS =
      List.of("water", "salt", "psyllium-husk", "egg-whole", "sesame-seeds", "lupin-flour");
  private static final List<String> TEXTS =
      List.of(
          "Rest 10 min.",
          "Whisk the egg",
          "Ψήσε το ψωμί",
          "Σκούρος πάτος",
          "Crème, not gummy",
          "dense below",
          "Stir in psyllium");
  private static final List<String> ASKED =
      List.of("rest", "Egg", "ψωμι", "σκουροσ ΠΑΤΟΣ", "creme gumm", "dens", "psyllium", "bun", "x");

  @TempDir Path temporary;
  private Random random;
  private NotebookFixture fixture;

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void theIndexFindsWhatAPlainReadingFinds(long seed) throws IOException {
    random = new Random(seed);
    try (NotebookFixture own = new NotebookFixture(temporary)) {
      fixture = own;
      fixture.formula("bun").line("water", "100 g").method("Mix.").revise("Begin");
      Desk kept = new Desk(fixture.open());
      for (int step = 0; step < STEPS; step++) {
        happen(step);
        if (step % 6 == 5) {
          assertFound(kept);
        }
        if (step % 20 == 19) {
          damage(kept.searchShelf().index().file());
          assertFound(kept);
          assertFound(new Desk(fixture.open()));
        }
      }
    }
  }

  private <T> T pick(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }

  private void happen(int step) {
    List<String> formulas = fixture.notebook().latest().formulas();
    String formula = pick(formulas);
    Address line = pick(fixture.notebook().lines(formula));
    Revision newest = fixture.notebook().newest(line);
    int kind = random.nextInt(12);
    if (kind == 0) {
      fixture.formula("bun-" + step).line(pick(FOODS), step + 1 + " g").revise(pick(TEXTS));
    } else if (kind == 1 && line.variant().isEmpty()) {
      Revision from = pick(fixture.notebook().revisions(line));
      new VariantWriter(fixture.notebook())
          .fork(from, "v-" + step, Optional.empty(), "Fork " + pick(TEXTS), fixture.by());
    } else if (kind == 2) {
      Revision from = pick(fixture.notebook().revisions(line));
      if (!from.blob().equals(newest.blob())) {
        new FormulaWriter(fixture.notebook()).restore(from, line, "Back", fixture.by());
      }
    } else if (kind < 5) {
      fixture.bake(
          newest,
          List.of(NotebookFixture.piece("a", 200, 20, 90, 80, 40, pick(TEXTS), "dense")));
    } else {
      Formula changed = changed(fixture.notebook().formula(newest), step);
      String note = pick(TEXTS) + "\n\n" + pick(TEXTS);
      new FormulaWriter(fixture.notebook()).revise(newest, changed, note, fixture.by());
    }
  }

  /** Always another formula, since each step weighs water otherwise or writes another text. */
  private Formula changed(Formula formula, int step) {
    List<Line> lines = new ArrayList<>(formula.lines());
    int at = random.nextInt(lines.size());
    switch (random.nextInt(6)) {
      case 0 -> {
        String food = pick(FOODS);
        lines.add(Line.of(formula.freeLineId(food), food, Amount.parse(step + " g")));
      }
      case 1 -> lines.set(at, lines.get(at).withNote(Optional.of(pick(TEXTS) + " " + step)));
      case 2 -> {
        List<String> method = new ArrayList<>(formula.method());
        method.add(random.nextInt(method.size() + 1), pick(TEXTS) + " " + step);
        return formula.withMethod(method);
      }
      case 3 -> {
        return formula.withDescription(Optional.of(pick(TEXTS) + " " + step));
      }
      case 4 -> {
        return formula.withStorage(Optional.of(pick(TEXTS) + " " + step));
      }
      default -> lines.set(at, lines.get(at).withAmount(Amount.parse(step + 1000 + " g")));
    }
    return formula.withLines(lines);
  }

  private void assertFound(Desk desk) {
    FindInHistory verb = new FindInHistory(desk);
    verb.read((done, total) -> assertThat(done).isBetween(0L, total));
    PlainFind plain = new PlainFind(fixture.notebook());
    for (String words : ASKED) {
      SearchViews.Found found = verb.call(Search.forWords(words), Integer.MAX_VALUE);
      assertThat(hits(found)).as(words).isEqualTo(plain.words(words));
      assertThat(found.count()).isEqualTo(hits(found).size());
      assertThat(found.unread()).isZero();
    }
    for (String food : FOODS) {
      Search search = Search.read(desk, new Search.Texts("", "", food, "", "", "", "", List.of()));
      assertThat(hits(verb.call(search, Integer.MAX_VALUE))).as(food).isEqualTo(plain.food(food));
    }
  }

  private static Set<String> hits(SearchViews.Found found) {
    Set<String> hits = new TreeSet<>();
    for (SearchViews.FoundFormula formula : found.formulas()) {
      for (SearchViews.Hit hit : formula.hits()) {
        hits.add(hit.bake() == null ? hit.address() : formula.formula() + "/" + hit.bake());
      }
    }
    return hits;
  }

  /** Deletes the file, cuts it, changes a byte of it, or leaves it. */
  private void damage(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    switch (random.nextInt(4)) {
      case 0 -> Files.delete(file);
      case 1 -> Files.write(file, Arrays.copyOf(bytes, random.nextInt(bytes.length)));
      case 2 -> {
        bytes[random.nextInt(bytes.length)] ^= (byte) (1 + random.nextInt(255));
        Files.write(file, bytes);
      }
      default -> assertThat(file).exists();
    }
  }
}
