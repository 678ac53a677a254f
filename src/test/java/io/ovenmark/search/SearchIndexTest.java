package io.ovenmark.search;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Piece;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaEdit;
import io.ovenmark.formula.RandomFormulas;
import io.ovenmark.json.Extras;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SearchIndexTest {
  private static final String A = "a".repeat(40);
  private static final String B = "b".repeat(40);

  @TempDir Path folder;

  private static Formula bun() {
    return new FormulaEdit(Formula.named("Bun"))
        .add("water=180 g")
        .add("salt=4 g")
        .formula()
        .withMethod(List.of("Mix.", "Rest 10 min."));
  }

  private static Bake bake() {
    Piece piece = Piece.named("a");
    return new Bake(
        "bun",
        "2026-03-01-1",
        "bun@1",
        A,
        OffsetDateTime.parse("2026-03-01T10:00:00+01:00"),
        Optional.of("Ινές"),
        Optional.of("23 °C"),
        Optional.of("Oven door open"),
        List.of(piece),
        List.of("dense", "dense"),
        List.of(),
        Extras.NONE);
  }

  @Test
  void theFirstStateBringsEverything() {
    StepFacts facts = StepFacts.first(bun());
    assertThat(facts.foods()).containsExactly("water", "salt");
    assertThat(facts.method()).isFalse();
    assertThat(facts.passages())
        .containsExactly(
            new Passage(Passage.Place.NAME, "Bun"),
            new Passage(Passage.Place.STEP, "Mix."),
            new Passage(Passage.Place.STEP, "Rest 10 min."));
  }

  @Test
  void aStepBringsWhatItChanged() {
    Formula next =
        new FormulaEdit(bun())
            .set("water=0.19 kg")
            .set("salt.note=fine")
            .set("bake.temperature=200C")
            .formula()
            .withMethod(List.of("Mix.", "Rest 20 min."));
    StepFacts facts = StepFacts.between(bun(), next);
    assertThat(facts.foods()).containsExactlyInAnyOrder("water", "salt");
    assertThat(facts.method()).isTrue();
    assertThat(facts.oven()).isTrue();
    assertThat(facts.passages())
        .containsExactlyInAnyOrder(
            new Passage(Passage.Place.LINE_NOTE, "fine"),
            new Passage(Passage.Place.STEP, "Rest 20 min."));
  }

  @Test
  void theSameAmountWrittenOtherwiseIsNoChangeOfTheFood() {
    Formula next = new FormulaEdit(bun()).set("water=0.18 kg").formula();
    assertThat(StepFacts.between(bun(), next).foods()).isEmpty();
  }

  @Test
  void anExchangedFoodIsAChangeOfBoth() {
    Formula next =
        bun().withLines(List.of(bun().lines().get(0).withFood("milk-whole"), bun().lines().get(1)));
    assertThat(StepFacts.between(bun(), next).foods()).containsExactly("water", "milk-whole");
  }

  @Test
  void whatWasWrittenIsReadAgain() {
    SearchIndex index = new SearchIndex(folder);
    StepFacts step = index.add(SearchIndex.NOTHING, A, StepFacts.first(bun()));
    StepFacts same = index.add(A, B, StepFacts.NONE);
    BakeFacts bake = index.add(B, BakeFacts.of(bake()));
    index.save();
    SearchIndex again = new SearchIndex(folder);
    assertThat(again.step(SearchIndex.NOTHING, A)).contains(step);
    assertThat(again.step(A, B)).contains(same);
    assertThat(again.bake(B)).contains(bake);
    assertThat(again.bake(A)).isEmpty();
    assertThat(again.step(B, A)).isEmpty();
    assertThat(again.size()).isEqualTo(3);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void anyFactsAreReadAsTheyWereWritten(long seed) throws IOException {
    RandomFormulas formulas = new RandomFormulas(seed);
    SearchIndex index = new SearchIndex(folder);
    List<Formula> all = Stream.generate(formulas::next).limit(40).toList();
    for (int i = 1; i < all.size(); i++) {
      index.add(id(i), id(i + 1), StepFacts.between(all.get(i - 1), all.get(i)));
    }
    index.save();
    SearchIndex again = new SearchIndex(folder);
    for (int i = 1; i < all.size(); i++) {
      assertThat(again.step(id(i), id(i + 1))).isEqualTo(index.step(id(i), id(i + 1)));
    }
  }

  private static String id(int number) {
    return String.format("%040x", number);
  }

  @Test
  void nothingNewIsNotWritten() throws IOException {
    SearchIndex index = new SearchIndex(folder);
    index.save();
    assertThat(index.file()).doesNotExist();
    index.add(A, B, StepFacts.NONE);
    index.save();
    Files.delete(index.file());
    index.save();
    assertThat(index.file()).doesNotExist();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void aDamagedFileCountsAsNone(long seed) throws IOException {
    Random random = new Random(seed);
    SearchIndex index = new SearchIndex(folder);
    index.add(SearchIndex.NOTHING, A, StepFacts.first(bun()));
    index.add(B, BakeFacts.of(bake()));
    index.save();
    byte[] bytes = Files.readAllBytes(index.file());
    byte[] damaged =
        seed % 2 == 0 ? Arrays.copyOf(bytes, random.nextInt(bytes.length)) : bytes.clone();
    if (seed % 2 == 1) {
      damaged[random.nextInt(bytes.length)] ^= (byte) (1 + random.nextInt(255));
    }
    Files.write(index.file(), damaged);
    SearchIndex again = new SearchIndex(folder);
    assertThat(again.size()).isZero();
    again.add(A, B, StepFacts.NONE);
    again.save();
    assertThat(new SearchIndex(folder).size()).isEqualTo(1);
  }

  @Test
  void aFolderThatCannotBeWrittenLeavesTheIndexInMemory() throws IOException {
    Path file = Files.writeString(folder.resolve("in-the-way"), "x");
    SearchIndex index = new SearchIndex(file.resolve("below"));
    index.add(A, B, StepFacts.NONE);
    index.save();
    assertThat(index.step(A, B)).contains(StepFacts.NONE);
  }

  @Test
  void partsOfADeadWriterAreSweptAway() throws IOException {
    Path old = Files.writeString(folder.resolve("search-dead.part"), "x");
    Files.setLastModifiedTime(old, FileTime.from(Instant.parse("2020-01-01T00:00:00Z")));
    Path fresh = Files.writeString(folder.resolve("search-alive.part"), "x");
    SearchIndex index = new SearchIndex(folder);
    index.add(A, B, StepFacts.NONE);
    index.save();
    assertThat(old).doesNotExist();
    assertThat(fresh).exists();
  }

  @Test
  void aBakesFactsAreItsTextsEachOnce() {
    BakeFacts facts = BakeFacts.of(bake());
    assertThat(facts.findings()).containsExactly("dense");
    assertThat(facts.passages())
        .containsExactly(
            new Passage(Passage.Place.FINDING, "dense"),
            new Passage(Passage.Place.BAKE_NOTE, "Oven door open"),
            new Passage(Passage.Place.AMBIENT, "23 °C"));
  }
}
