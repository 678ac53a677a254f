package io.ovenmark.notebook;

import static io.ovenmark.notebook.NotebookFixture.piece;
import static io.ovenmark.notebook.Refusals.refuses;
import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Piece;
import io.ovenmark.goal.Goal;
import io.ovenmark.goal.GoalCodec;
import io.ovenmark.notebook.Refusal.Reason;
import io.ovenmark.notebook.store.RepositoryFixture;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Nutrient;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordWriterTest {
  private static final String BUN = "seeded-lupin-bun";
  private static final Address MAIN = Address.latest(BUN, Optional.empty());
  private static final Address EGG_FREE = Address.latest(BUN, Optional.of("egg-free"));
  private static final List<Piece> PIECES = List.of(piece("a", 200, 25, 60, 52, 40, "dense"));

  @TempDir Path temporary;
  private NotebookFixture fixture;
  private RecordWriter writer;
  private Revision second;

  @BeforeEach
  void beginABunOfTwoRevisions() {
    fixture = new NotebookFixture(temporary);
    writer = new RecordWriter(fixture.notebook());
    second =
        fixture
            .formula(BUN)
            .line("lupin-flour", "120 g")
            .line("water", "180 g")
            .revise("Begin")
            .set("water=188 g")
            .revise("Wetter")
            .newest();
  }

  @AfterEach
  void close() {
    fixture.close();
  }

  private static Goal goal(int atMost) {
    String json =
        "{\"name\": \"Low carb\", \"limits\":"
            + " [{\"figure\": \"net_carbohydrate_g\", \"per\": \"piece\", \"at_most\": "
            + atMost
            + "}]}";
    return GoalCodec.read("low-carb", "low-carb", json.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void bakesAreNamedByTheirDayAndCounted() {
    Bake one = fixture.bake(second, PIECES);
    Bake two = fixture.bake(second, PIECES);

    assertThat(one.id()).isEqualTo("2026-03-01-1");
    assertThat(two.id()).isEqualTo("2026-03-01-2");
    assertThat(fixture.notebook().bakes(BUN)).containsExactly(one, two);
    assertThat(fixture.notebook().revisions(MAIN)).hasSize(2);
    fixture.assertClean();
  }

  @Test
  void aBakeOfATakenNameIsRefused() {
    Bake bake = fixture.bake(second, PIECES);
    Bake other = bake.withPieces(List.of(Piece.named("b")));

    refuses(
        Reason.EXISTS, () -> writer.addBake(MAIN, other, Map.of(), "Bake", fixture.by()));
    assertThat(fixture.notebook().bakes(BUN)).containsExactly(bake);
  }

  @Test
  void aPictureOfATakenNameIsRefusedSoThatNoneIsLost() {
    Bake bake = fixture.bake(second, PIECES, "tray.jpg");
    String photo = "photos/seeded-lupin-bun/tray.jpg";
    Map<String, byte[]> other = Map.of(photo, RepositoryFixture.bytes("other"));

    refuses(
        Reason.EXISTS,
        () -> writer.changeBake(MAIN, bake, bake, other, "Picture", fixture.by()));
    assertThat(fixture.onDisk(photo)).isEqualTo("picture tray.jpg");
  }

  @Test
  void aBakeIsChangedUnlessSomebodyElseDidSoMeanwhile() {
    Bake bake = fixture.bake(second, PIECES);
    Bake rated = bake.withPieces(List.of(piece("a", 200, 25, 60, 52, 40, "gummy crumb")));
    Map<String, byte[]> picture =
        Map.of("photos/seeded-lupin-bun/crumb.jpg", RepositoryFixture.bytes("crumb"));

    writer.changeBake(MAIN, bake, rated, picture, "Tasted", fixture.by());

    assertThat(fixture.notebook().bakes(BUN)).containsExactly(rated);
    assertThat(fixture.notebook().photo(BUN, "photos/seeded-lupin-bun/crumb.jpg")).isPresent();
    Bake late = bake.withPieces(List.of(piece("a", 200, 25, 60, 52, 40, "dry")));
    refuses(
        Reason.CONFLICT,
        () -> writer.changeBake(MAIN, bake, late, Map.of(), "Tasted", fixture.by()));
    assertThat(fixture.notebook().bakes(BUN)).containsExactly(rated);
    fixture.assertClean();
  }

  @Test
  void aDamagedBakeLeavesTheOthersReadableAndIsNamed() {
    Bake bake = fixture.bake(second, PIECES);
    fixture.edit("bakes/seeded-lupin-bun/2026-03-02-1.json", "{\"address\": 5}");
    fixture.edit("bakes/seeded-lupin-bun/notes.json", "{}");
    fixture.git("add", "bakes");
    fixture.git("commit", "-qm", "By hand");

    assertThat(fixture.notebook().bakes(BUN)).containsExactly(bake);
    assertThat(fixture.notebook().bakeProblems(BUN))
        .isNotEmpty()
        .allSatisfy(
            problem ->
                assertThat(problem.file()).isEqualTo("bakes/seeded-lupin-bun/2026-03-02-1.json"));
  }

  @Test
  void aGoalIsMadeAndChangedAndContradictionsAreRefused() {
    writer.saveGoal(goal(4), Optional.empty(), "Goal", fixture.by());
    assertThat(fixture.notebook().latest().goal("low-carb")).contains(goal(4));
    refuses(
        Reason.EXISTS,
        () -> writer.saveGoal(goal(5), Optional.empty(), "Again", fixture.by()));

    writer.saveGoal(goal(3), Optional.of(goal(4)), "Stricter", fixture.by());
    refuses(
        Reason.CONFLICT,
        () -> writer.saveGoal(goal(6), Optional.of(goal(4)), "Laxer", fixture.by()));
    assertThat(fixture.notebook().latest().goal("low-carb")).contains(goal(3));
    fixture.assertClean();
  }

  @Test
  void aGoalThatWasDeletedMeanwhileIsNotBroughtBackByChangingIt() {
    writer.saveGoal(goal(4), Optional.empty(), "Goal", fixture.by());
    fixture.git("rm", "-q", "goals/low-carb.json");
    fixture.git("commit", "-qm", "No goal");

    refuses(
        Reason.CONFLICT,
        () -> writer.saveGoal(goal(3), Optional.of(goal(4)), "Stricter", fixture.by()));
  }

  @Test
  void aFoodIsMadeAndChangedAndContradictionsAreRefused() {
    Food sesame = BuiltInPantry.find("sesame-seeds").orElseThrow();
    writer.saveFood(sesame, Optional.empty(), "Sesame", fixture.by());
    Food changed = fixture.relabel("sesame-seeds", Nutrient.PROTEIN, 19);

    refuses(
        Reason.CONFLICT,
        () -> writer.saveFood(sesame, Optional.of(sesame), "Back", fixture.by()));
    refuses(
        Reason.EXISTS, () -> writer.saveFood(sesame, Optional.empty(), "New", fixture.by()));
    assertThat(fixture.notebook().latest().food("sesame-seeds")).contains(changed);
  }

  @Test
  void aRevisionIsPublishedOnceByAnAnnotatedTag() {
    fixture.formula(BUN).fork("egg-free", null).set("water=180 g").revise("Drier");
    writer.publish(second, "For the spring menu", fixture.by());
    Revision variant = fixture.notebook().newest(EGG_FREE);
    writer.publish(variant, "For guests without egg", fixture.by());

    assertThat(fixture.git("tag", "-n1"))
        .isEqualTo(
            "published/seeded-lupin-bun/2 For the spring menu\n"
                + "published/seeded-lupin-bun/egg-free/3 For guests without egg");
    assertThat(fixture.notebook().published(BUN))
        .containsOnlyKeys(second.commit(), variant.commit());
    assertThat(refuses(Reason.EXISTS, () -> writer.publish(second, "Again", fixture.by())))
        .hasMessage("The revision seeded-lupin-bun@2 is published already.");
    refuses(Reason.INVALID, () -> writer.publish(second, " ", fixture.by()));
    fixture.assertClean();
  }

  @Test
  void undoTakesTheLastChangeBackAndUndoneAgainDoesItAgain() {
    Map<String, String> before = fixture.tree("main");
    Bake bake = fixture.bake(second, PIECES, "tray.jpg");
    Map<String, String> after = fixture.tree("main");

    assertThat(writer.undo(MAIN, fixture.by())).isEqualTo("Bake of seeded-lupin-bun@2");
    assertThat(fixture.tree("main")).isEqualTo(before);
    assertThat(fixture.notebook().bakes(BUN)).isEmpty();
    assertThat(fixture.directory().resolve("photos")).doesNotExist();
    fixture.assertClean();

    assertThat(writer.undo(MAIN, fixture.by())).isEqualTo("Undo: Bake of seeded-lupin-bun@2");
    assertThat(fixture.tree("main")).isEqualTo(after);
    assertThat(fixture.notebook().bakes(BUN)).containsExactly(bake);
    fixture.assertClean();

    writer.undo(MAIN, fixture.by());
    assertThat(fixture.git("log", "-3", "--format=%s"))
        .isEqualTo(
            "Undo: Bake of seeded-lupin-bun@2\n"
                + "Redo: Bake of seeded-lupin-bun@2\n"
                + "Undo: Bake of seeded-lupin-bun@2");
    assertThat(fixture.git("log", "-1", "--format=%(trailers:key=Undoes,valueonly)").strip())
        .isEqualTo(fixture.git("rev-parse", "main~1"));
  }

  @Test
  void anUndoneRevisionIsARevisionWithTheContentBefore() {
    writer.undo(MAIN, fixture.by());

    Revision third = fixture.notebook().newest(MAIN);
    assertThat(third.number()).isEqualTo(3);
    assertThat(third.note()).isEqualTo("Undo: Wetter");
    assertThat(third.blob()).isEqualTo(fixture.notebook().revision(MAIN.at(1)).blob());
  }

  @Test
  void theBeginningOfTheNotebookCannotBeUndone() {
    writer.undo(MAIN, fixture.by());
    fixture.git("reset", "-q", "--hard", "main~3");

    refuses(Reason.INVALID, () -> writer.undo(MAIN, fixture.by()));
    fixture.assertClean();
  }

  @Test
  void aVariantWithoutAChangeOfItsOwnCannotUndoThoseOfTheMainLine() {
    fixture.formula(BUN).fork("egg-free", null);
    refuses(Reason.INVALID, () -> writer.undo(EGG_FREE, fixture.by()));

    fixture.variant(BUN, "egg-free").set("water=170 g").revise("Drier");
    assertThat(writer.undo(EGG_FREE, fixture.by())).isEqualTo("Drier");
    assertThat(fixture.notebook().newest(EGG_FREE).blob()).isEqualTo(second.blob());
    assertThat(fixture.notebook().newest(MAIN)).isEqualTo(second);
  }

  @Test
  void anUndoneCarryingOverLeavesTheVariantAsItWas() {
    fixture.formula(BUN).fork("egg-free", null).set("water=170 g").revise("Drier");
    Map<String, String> before = fixture.tree("variant/seeded-lupin-bun/egg-free");
    fixture.formula(BUN).line("salt", "4 g").revise("Salt");
    new VariantWriter(fixture.notebook()).carry(EGG_FREE, Map.of(), "Carry", fixture.by());

    writer.undo(EGG_FREE, fixture.by());

    assertThat(fixture.tree("variant/seeded-lupin-bun/egg-free")).isEqualTo(before);
  }

  @Test
  void undoLeavesAFileThatWasEditedByHand() {
    String file = "formulas/seeded-lupin-bun.json";
    String text = fixture.onDisk(file).replace("188 g", "199 g");
    fixture.edit(file, text);

    writer.undo(MAIN, fixture.by());

    assertThat(fixture.onDisk(file)).isEqualTo(text);
    assertThat(fixture.notebook().handEdits()).containsOnlyKeys(BUN);
  }
}
