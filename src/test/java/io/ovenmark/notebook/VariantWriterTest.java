package io.ovenmark.notebook;

import static io.ovenmark.notebook.NotebookFixture.piece;
import static io.ovenmark.notebook.Refusals.refuses;
import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.bake.Bake;
import io.ovenmark.change.Choice;
import io.ovenmark.change.Conflict;
import io.ovenmark.change.Merged;
import io.ovenmark.formula.Formula;
import io.ovenmark.notebook.Refusal.Reason;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Nutrient;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VariantWriterTest {
  private static final String BUN = "seeded-lupin-bun";
  private static final String FILE = "formulas/seeded-lupin-bun.json";
  private static final Address MAIN = Address.latest(BUN, Optional.empty());
  private static final Address EGG_FREE = Address.latest(BUN, Optional.of("egg-free"));
  private static final String BRANCH = "variant/seeded-lupin-bun/egg-free";

  @TempDir Path temporary;
  private NotebookFixture fixture;
  private VariantWriter writer;

  @BeforeEach
  void beginABunOfTwoRevisions() {
    fixture = new NotebookFixture(temporary);
    writer = new VariantWriter(fixture.notebook());
    bun()
        .line("lupin-flour", "120 g")
        .line("egg-whole", "2 large")
        .line("water", "180 g")
        .line("salt", "4 g")
        .revise("Begin")
        .set("water=188 g")
        .revise("Wetter");
  }

  @AfterEach
  void close() {
    fixture.close();
  }

  private FormulaFixture bun() {
    return fixture.formula(BUN);
  }

  private FormulaFixture eggFree() {
    return fixture.variant(BUN, "egg-free");
  }

  private String amount(Address line, String id) {
    Notebook notebook = fixture.notebook();
    return notebook.formula(notebook.newest(line)).line(id).orElseThrow().amount().toString();
  }

  private CarryOutcome carry(Map<String, Choice> choices) {
    return writer.carry(EGG_FREE, choices, "Carry over", fixture.by());
  }

  private CarryOutcome.Carried carried() {
    CarryOutcome outcome = carry(Map.of());
    assertThat(outcome).isInstanceOf(CarryOutcome.Carried.class);
    return (CarryOutcome.Carried) outcome;
  }

  @Test
  void aVariantContinuesTheNumberingFromItsFork() {
    bun().fork("egg-free", null).set("egg-whole=0 g").revise("No egg");
    bun().set("salt=5 g").revise("Saltier").set("salt=6 g").revise("Saltier still");

    Notebook notebook = fixture.notebook();
    assertThat(notebook.revisions(EGG_FREE))
        .extracting(revision -> revision.address().toString())
        .containsExactly(
            "seeded-lupin-bun/egg-free@1",
            "seeded-lupin-bun/egg-free@2",
            "seeded-lupin-bun/egg-free@3");
    assertThat(notebook.forkNumber(EGG_FREE)).isEqualTo(2);
    assertThat(notebook.variants(BUN)).containsExactly("egg-free");
    assertThat(notebook.newest(MAIN).number()).isEqualTo(4);
    assertThat(amount(MAIN, "egg-whole")).isEqualTo("2 large");
    assertThat(fixture.git("rev-parse", BRANCH + "~1")).isEqualTo(bun().at(2).commit().hex());
    fixture.assertClean();
  }

  @Test
  void aVariantOfTheLatestRevisionHasTodaysFoods() {
    fixture.relabel("lupin-flour", Nutrient.PROTEIN, 41);

    Revision begun = writer.fork(bun().newest(), "egg-free", Optional.empty(), "", fixture.by());

    assertThat(begun.address()).hasToString("seeded-lupin-bun/egg-free@2");
    assertThat(begun.commit()).isEqualTo(bun().newest().commit());
    assertThat(fixture.git("rev-parse", BRANCH)).isEqualTo(fixture.git("rev-parse", "main"));
    assertThat(fixture.notebook().latest(EGG_FREE).food("lupin-flour"))
        .isEqualTo(fixture.notebook().latest().food("lupin-flour"));
  }

  @Test
  void aVariantOfAnOlderRevisionHasTheFoodsOfThatTime() {
    fixture.relabel("lupin-flour", Nutrient.PROTEIN, 41);

    Revision begun = writer.fork(bun().at(1), "egg-free", Optional.empty(), "", fixture.by());

    assertThat(begun.number()).isEqualTo(1);
    assertThat(amount(EGG_FREE, "water")).isEqualTo("180 g");
    assertThat(fixture.git("rev-parse", BRANCH)).isEqualTo(bun().at(1).commit().hex());
    assertThat(fixture.notebook().forkNumber(EGG_FREE)).isEqualTo(1);
  }

  @Test
  void theGoalIsStatedInAFirstRevisionAndComesAlong() {
    fixture.goal("egg-free", "{\"name\": \"Egg-free\", \"without\": {\"allergens\": [\"eggs\"]}}");

    Revision begun =
        writer.fork(bun().at(1), "egg-free", Optional.of("egg-free"), "No egg", fixture.by());

    assertThat(begun.number()).isEqualTo(2);
    assertThat(begun.note()).isEqualTo("No egg");
    assertThat(fixture.notebook().formula(begun).goal()).contains("egg-free");
    assertThat(fixture.notebook().at(begun.commit()).goal("egg-free"))
        .isEqualTo(fixture.notebook().latest().goal("egg-free"));
    assertThat(fixture.git("show", "--name-only", "--format=", BRANCH))
        .isEqualTo(FILE + "\ngoals/egg-free.json");
    fixture.assertClean();
  }

  @Test
  void aVariantThatCannotBeMadeLeavesNoBranch() {
    Revision newest = bun().newest();
    fixture.goal("egg-free", "{\"name\": \"Egg-free\"}");

    refuses(
        Reason.NOT_FOUND,
        () -> writer.fork(newest, "vegan", Optional.of("vegan"), "No egg", fixture.by()));
    refuses(
        Reason.INVALID,
        () -> writer.fork(newest, "vegan", Optional.of("egg-free"), " ", fixture.by()));
    refuses(Reason.INVALID, () -> writer.fork(newest, "2", Optional.empty(), "2", fixture.by()));
    assertThat(fixture.notebook().variants(BUN)).isEmpty();

    bun().fork("egg-free", null);
    refuses(
        Reason.EXISTS,
        () -> writer.fork(newest, "egg-free", Optional.empty(), "Again", fixture.by()));
  }

  @Test
  void aVariantOfARevisionFromBeforeARenamingGoesByTheNewName() {
    fixture.git("mv", FILE, "formulas/lupin-bun.json");
    fixture.git("commit", "-qm", "Rename");
    Notebook notebook = fixture.notebook();
    Revision first = notebook.revision(Address.parse("lupin-bun@1"));

    Revision begun = writer.fork(first, "egg-free", Optional.empty(), "For guests", fixture.by());

    assertThat(begun.address()).hasToString("lupin-bun/egg-free@2");
    assertThat(begun.blob()).isEqualTo(first.blob());
    assertThat(fixture.tree("variant/lupin-bun/egg-free")).doesNotContainKey(FILE);
  }

  @Test
  void aFoodThatOnlyTheMainLineKnowsComesIntoTheVariantAsItIsThere() {
    FormulaFixture variant = bun().fork("egg-free", null);
    fixture.formula("sesame-crispbread").line("sesame-seeds", "90 g").revise("Begin");
    fixture.relabel("sesame-seeds", Nutrient.PROTEIN, 19);

    variant.line("sesame-seeds", "30 g").revise("With sesame");

    assertThat(fixture.tree(BRANCH).get("pantry/sesame-seeds.json"))
        .isEqualTo(fixture.tree("main").get("pantry/sesame-seeds.json"));
  }

  @Test
  void bakesOfAVariantAreKeptOnItsBranchAndFoundWithAllOthers() {
    Revision here = bun().newest();
    Revision there = bun().fork("egg-free", null).set("egg-whole=0 g").revise("No egg").newest();
    Bake ours = fixture.bake(here, List.of(piece("a", 200, 25, 60, 52, 40)));
    Bake theirs = fixture.bake(there, List.of(piece("a", 200, 25, 60, 51, 30)), "flat.jpg");

    Notebook notebook = fixture.notebook();
    assertThat(notebook.bakes(BUN)).containsExactly(ours, theirs);
    assertThat(theirs.id()).endsWith("-2");
    assertThat(fixture.tree("main")).doesNotContainKey(theirs.path());
    assertThat(new RecordWriter(notebook).lineOf(theirs)).isEqualTo(EGG_FREE);
    assertThat(notebook.photo(BUN, "photos/seeded-lupin-bun/flat.jpg"))
        .hasValueSatisfying(bytes -> assertThat(new String(bytes)).isEqualTo("picture flat.jpg"));
    assertThat(notebook.photo(BUN, "notebook.json")).isEmpty();
    fixture.assertClean();
  }

  @Test
  void carryingOverIsATrueMergeThatTakesTheOtherFilesAlong() {
    bun().fork("egg-free", null).set("egg-whole=0 g").revise("No egg");
    bun().line("sesame-seeds", "30 g").set("salt=5 g").revise("Seeds and salt");
    fixture.formula("sesame-crispbread").line("sesame-seeds", "90 g").revise("Crispbread");
    fixture.bake(bun().newest(), List.of(piece("a", 200, 25, 60, 52, 40)), "tray.jpg");

    CarryOutcome.Carried carried = carried();

    assertThat(carried.keptAsInVariant()).isEmpty();
    assertThat(carried.revision().address()).hasToString("seeded-lupin-bun/egg-free@4");
    assertThat(carried.revision().merge()).isTrue();
    assertThat(carried.revision().trailers().get(VariantWriter.CARRIES))
        .isEqualTo("seeded-lupin-bun@3 " + bun().newest().commit().hex());
    Formula merged = fixture.notebook().formula(carried.revision());
    assertThat(merged.lines())
        .extracting(line -> line.id() + " " + line.amount())
        .containsExactly(
            "lupin-flour 120 g", "egg-whole 0 g", "water 188 g", "salt 5 g", "sesame-seeds 30 g");
    Map<String, String> expected = fixture.tree("main");
    expected.put(FILE, carried.revision().blob().hex());
    assertThat(fixture.tree(BRANCH)).isEqualTo(expected);
    assertThat(fixture.git("log", "-1", "--format=%P", BRANCH))
        .isEqualTo(eggFree().at(3).commit().hex() + " " + fixture.git("rev-parse", "main"));
    assertThat(fixture.git("log", "--graph", "--format=%s", "-4", BRANCH))
        .startsWith("*   Carry over\n|\\  \n| * Bake of seeded-lupin-bun@3\n| * Crispbread\n");
    assertThat(fixture.git("show", "--stat", "--format=%s", BRANCH)).startsWith("Carry over");
    fixture.assertClean();
  }

  @Test
  void carryingOverTwiceDoesNothingTheSecondTime() {
    bun().fork("egg-free", null).set("egg-whole=0 g").revise("No egg");
    bun().set("salt=5 g").revise("Saltier");
    Revision newest = carried().revision();
    int commits = fixture.commits(BRANCH);

    assertThat(writer.preview(EGG_FREE)).isEmpty();
    assertThat(carry(Map.of())).isEqualTo(new CarryOutcome.NothingToCarry(newest));
    assertThat(fixture.commits(BRANCH)).isEqualTo(commits);
  }

  @Test
  void whatWasCarriedOverOnceIsNotAskedAgain() {
    bun().fork("egg-free", null).set("salt=3 g").revise("Less salt");
    bun().set("salt=5 g").revise("Saltier");
    carry(Map.of("lines.salt.amount", Choice.OURS));
    bun().set("water=190 g").revise("Wetter");

    assertThat(carried().revision().number()).isEqualTo(4);
    assertThat(amount(EGG_FREE, "salt")).isEqualTo("3 g");
    assertThat(amount(EGG_FREE, "water")).isEqualTo("190 g");
  }

  @Test
  void contradictionsNeedChoicesAndNothingIsWrittenBefore() {
    bun().fork("egg-free", null).set("water=170 g", "salt=3 g").revise("Drier");
    bun().set("water=200 g", "salt=5 g", "lupin-flour=130 g").revise("Wetter");
    int commits = fixture.commits(BRANCH);

    CarryOutcome outcome = carry(Map.of("lines.salt.amount", Choice.THEIRS));

    assertThat(outcome)
        .isInstanceOfSatisfying(
            CarryOutcome.Undecided.class,
            open ->
                assertThat(open.merge().conflicts())
                    .extracting(Conflict::path)
                    .containsExactly("lines.water.amount"));
    assertThat(writer.preview(EGG_FREE))
        .hasValueSatisfying(m -> assertThat(m).isInstanceOf(Merged.Conflicting.class));
    assertThat(fixture.commits(BRANCH)).isEqualTo(commits);

    assertThat(
            carry(Map.of("lines.salt.amount", Choice.THEIRS, "lines.water.amount", Choice.OURS)))
        .isInstanceOf(CarryOutcome.Carried.class);
    assertThat(amount(EGG_FREE, "salt")).isEqualTo("5 g");
    assertThat(amount(EGG_FREE, "water")).isEqualTo("170 g");
    assertThat(amount(EGG_FREE, "lupin-flour")).isEqualTo("130 g");
  }

  @Test
  void aChoiceForNoContradictionIsRefused() {
    bun().fork("egg-free", null).set("salt=3 g").revise("Less salt");
    bun().set("salt=5 g").revise("Saltier");

    refuses(Reason.INVALID, () -> carry(Map.of("lines.honey.amount", Choice.OURS)));
  }

  @Test
  void aFileThatBothSidesChangedStaysAsInTheVariantAndIsNamed() {
    bun().fork("egg-free", null);
    fixture.relabel("lupin-flour", Nutrient.PROTEIN, 41);
    Notebook notebook = fixture.notebook();
    var before = notebook.latest(EGG_FREE).food("salt");
    var after = notebook.latest(EGG_FREE).food("lupin-flour").orElseThrow();
    new RecordWriter(notebook)
        .saveFood(
            EGG_FREE,
            new Food(
                after.slug(),
                "Other lupin flour",
                after.kind(),
                after.source(),
                after.per100g(),
                after.household(),
                after.densityGramsPerMillilitre(),
                after.allergens(),
                after.polyol(),
                after.price(),
                after.extras()),
            Optional.of(after),
            "Other flour",
            fixture.by());

    CarryOutcome.Carried carried = carried();

    assertThat(carried.keptAsInVariant()).containsExactly("pantry/lupin-flour.json");
    assertThat(notebook.latest(EGG_FREE).food("lupin-flour").orElseThrow().name())
        .isEqualTo("Other lupin flour");
    assertThat(notebook.latest(EGG_FREE).food("salt")).isEqualTo(before);
    assertThat(carried.revision().number()).isEqualTo(2);
    assertThat(carry(Map.of())).isInstanceOf(CarryOutcome.NothingToCarry.class);
  }

  @Test
  void aVariantWithoutChangesOfItsOwnGetsTheVeryBytesSoThatItsBakesAreFound() {
    bun().fork("egg-free", null);
    fixture.edit(FILE, fixture.onDisk(FILE).replace("4 g", "0.005 kg") + "\n");
    fixture.git("commit", "-qam", "Saltier, by hand");
    Revision third = bun().newest();
    fixture.bake(third, List.of(piece("a", 200, 25, 60, 52, 40)));

    CarryOutcome.Carried carried = carried();

    assertThat(carried.revision().blob()).isEqualTo(third.blob());
    assertThat(fixture.notebook().bakes(BUN).get(0).blob())
        .isEqualTo(carried.revision().blob().hex());
  }

  @Test
  void aDeletionOnTheMainLineIsCarriedOverToo() {
    bun().fork("egg-free", null).set("egg-whole=0 g").revise("No egg");
    fixture.edit("readme.txt", "bench\n");
    fixture.git("add", "readme.txt");
    fixture.git("commit", "-qm", "Readme");
    carried();
    assertThat(fixture.tree(BRANCH)).containsKey("readme.txt");
    fixture.git("rm", "-q", "readme.txt");
    fixture.git("commit", "-qm", "No readme");

    carried();

    assertThat(fixture.tree(BRANCH)).doesNotContainKey("readme.txt");
  }

  @Test
  void carryingIntoAVariantThatIsNotThereIsRefused() {
    assertThat(refuses(Reason.NOT_FOUND, () -> carry(Map.of())).hint())
        .isEqualTo("It has no variants yet.");
    bun().fork("dairy-free", null);
    assertThat(refuses(Reason.NOT_FOUND, () -> carry(Map.of())).hint())
        .isEqualTo("Its variants are dairy-free.");
  }

  @Test
  void carryingIntoACheckedOutVariantBringsItsFilesAlong() {
    bun().fork("egg-free", null).set("egg-whole=0 g").revise("No egg");
    bun().set("salt=5 g").revise("Saltier");
    fixture.git("checkout", "-q", BRANCH);

    carried();

    assertThat(fixture.onDisk(FILE)).contains("5 g").contains("0 g");
    fixture.assertClean();
  }
}
