package io.ovenmark.desk;

import static io.ovenmark.desk.LupinBench.BUN;
import static io.ovenmark.notebook.Refusals.refuses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaEdit;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.FormulaWriter;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Refusal.Reason;
import io.ovenmark.notebook.Revision;
import io.ovenmark.pantry.Nutrient;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DeskTest {
  private static final String FILE = "formulas/seeded-lupin-bun.json";
  private static final Address LATEST = Address.latest(BUN, Optional.empty());

  @TempDir Path temporary;
  private LupinBench bench;
  private Desk desk;

  @BeforeEach
  void setUpABench() {
    bench = new LupinBench(temporary);
    desk = bench.desk();
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private Views.FormulaSheet show(String address) {
    return new ShowFormula(desk).call(Address.parse(address));
  }

  private ComparisonViews.ComparisonView compare(String from, String to) {
    return new CompareRevisions(desk).call(Address.parse(from), Address.parse(to));
  }

  private Double netCarbohydrate(String address) {
    FigureSet piece = show(address).macros().get("per_piece");
    return FigureSet.number(piece.figures().get("net_carbohydrate_g"));
  }

  private void editOnDisk(String from, String to) {
    bench.fixture().edit(FILE, bench.fixture().onDisk(FILE).replace(from, to));
  }

  // Addresses

  @Test
  void anAddressOfAKnownFormulaIsTakenAsItIs() {
    for (String text : List.of(BUN, BUN + "@2", BUN + "/egg-free", BUN + "@99", BUN + "/vegan@1")) {
      assertThat(desk.address(text)).isEqualTo(Address.parse(text));
    }
  }

  @Test
  void aCommitAloneIsAnAddress() {
    String commit = bench.bun().at(2).commit().hex();
    String few = commit.substring(0, 9);

    assertThat(desk.address(commit)).isEqualTo(LATEST.atCommit(commit));
    assertThat(desk.address(few)).isEqualTo(LATEST.atCommit(few));
    assertThat(new ShowFormula(desk).call(desk.address(few)).address())
        .isEqualTo("seeded-lupin-bun@2");
  }

  @Test
  void aFormulaGoesBeforeACommitOfTheSameName() {
    String commit = bench.bun().at(2).commit().hex().substring(0, 8);
    bench.fixture().formula(commit).line("water", "1 g").revise("Named like a commit");

    assertThat(desk.address(commit)).isEqualTo(Address.latest(commit, Optional.empty()));
  }

  @ParameterizedTest
  @CsvSource({
    "seeded-lupin-bum, seeded-lupin-bun",
    "lupin, seeded-lupin-bun",
    "crispbread@2, sesame-crispbread",
    "seseme-crispbred, sesame-crispbread"
  })
  void anUnknownFormulaIsRefusedWithTheOneThatMayBeMeant(String text, String near) {
    Refusal refusal = refuses(Reason.NOT_FOUND, () -> desk.address(text));

    assertThat(refusal.hint()).startsWith("Did you mean " + near + "? ");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0000000", "honey-cake", "deadbeefdeadbeef"})
  void whatIsNoFormulaAndNoCommitIsRefused(String text) {
    Refusal refusal = refuses(Reason.NOT_FOUND, () -> desk.address(text));

    assertThat(refusal.hint()).isEqualTo("List what there is with: ovenmark list");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "Bun", "../x", "bun@", "a/b/c"})
  void whatIsNoAddressIsRefused(String text) {
    assertThat(refuses(Reason.INVALID, () -> desk.address(text)).hint()).isNotEmpty();
  }

  @Test
  void aFileThatIsNotYetAFormulaHasAnAddress() {
    bench.fixture().edit("formulas/cocoa-muffin.json", "{\"name\": \"Muffin\"}");

    assertThat(desk.address("cocoa-muffin@edited")).hasToString("cocoa-muffin@edited");
    assertThat(show("cocoa-muffin@edited").revision()).isEqualTo(1);
  }

  // Foods of then and of today

  @Test
  void aNewLabelMovesTheLatestFiguresAndNeverTheOldOnes() {
    Double before = netCarbohydrate("seeded-lupin-bun@3");
    assertThat(show(BUN).address()).isEqualTo("seeded-lupin-bun@3");

    bench.relabelFlour();

    assertThat(netCarbohydrate("seeded-lupin-bun@3")).isEqualTo(before);
    assertThat(netCarbohydrate(BUN)).isLessThan(before);
    assertThat(show(BUN).address()).isEqualTo(BUN);
    assertThat(show(BUN).foodsChangedSince()).isTrue();
    assertThat(show(BUN).revision()).isEqualTo(3);
    assertThat(show("seeded-lupin-bun@3").foodsChangedSince()).isFalse();
    assertThat(new ShowTimeline(desk).call(LATEST).revisions())
        .filteredOn(each -> each.address().equals("seeded-lupin-bun@3"))
        .singleElement()
        .satisfies(
            each ->
                assertThat(FigureSet.number(each.figures().figures().get("net_carbohydrate_g")))
                    .isEqualTo(before));
  }

  @Test
  void comparingARevisionWithTheLatestAfterANewLabelShowsTheFoodOnly() {
    bench.relabelFlour();

    ComparisonViews.ComparisonView view = compare("seeded-lupin-bun@3", BUN);

    assertThat(view.identical()).isFalse();
    assertThat(view.lines()).allSatisfy(line -> assertThat(line.change()).isEqualTo("same"));
    assertThat(view.foodData())
        .singleElement()
        .satisfies(food -> assertThat(food.food()).isEqualTo("lupin-flour"));
    assertThat(view.process()).isEmpty();
    assertThat(view.method()).isEmpty();
    assertThat(view.macros().get("per_piece").get("net_carbohydrate_g").delta()).isNegative();
    assertThat(view.to().address()).isEqualTo(BUN);
  }

  @Test
  void aFoodThatTheFormulaDoesNotUseChangesNothingForIt() {
    bench.fixture().formula("sesame-crispbread").line("salt", "3 g").revise("Salt");
    bench.fixture().relabel("salt", Nutrient.SODIUM, 38_000);
    bench.fixture().goal("salty", "{\"name\": \"Salty\"}");

    assertThat(show(BUN).address()).isEqualTo("seeded-lupin-bun@3");
    assertThat(show(BUN).foodsChangedSince()).isFalse();
    assertThat(compare("seeded-lupin-bun@3", BUN).identical()).isTrue();
  }

  @Test
  void aStricterGoalIsTheLatestsAndNotTheOldRevisions() {
    bench
        .fixture()
        .goal(
            "low-carb-bun",
            "{\"name\": \"Stricter\", \"limits\":"
                + " [{\"figure\": \"net_carbohydrate_g\", \"per\": \"piece\", \"at_most\": 1}]}");

    assertThat(show("seeded-lupin-bun@3").goal().met()).isTrue();
    assertThat(show(BUN).goal().met()).isFalse();
  }

  // Bakes

  @Test
  void aRestoredRevisionHasTheBakesOfTheEarlierOne() {
    Revision second = bench.bun().at(2);
    new FormulaWriter(bench.fixture().notebook())
        .restore(second, LATEST, "Back to the softer one", bench.fixture().by());

    assertThat(show("seeded-lupin-bun@4").bakes())
        .singleElement()
        .satisfies(
            bake ->
                assertThat(bake.revisions())
                    .containsExactly("seeded-lupin-bun@2", "seeded-lupin-bun@4"));
    assertThat(new ShowTimeline(desk).call(LATEST).revisions().get(0).restores())
        .isEqualTo("seeded-lupin-bun@2");
    assertThat(compare("seeded-lupin-bun@2", "seeded-lupin-bun@4").identical()).isTrue();
  }

  // The file on disk

  @Test
  void anEditOnDiskIsShownWithTheNumberItWouldGet() {
    editOnDisk("188 g", "199 g");

    Views.FormulaSheet sheet = show("seeded-lupin-bun@edited");

    assertThat(sheet.address()).isEqualTo("seeded-lupin-bun@edited");
    assertThat(sheet.revision()).isEqualTo(4);
    assertThat(sheet.commit()).isNull();
    assertThat(compare(BUN, "seeded-lupin-bun@edited").lines())
        .filteredOn(line -> line.change().equals("changed"))
        .singleElement()
        .satisfies(line -> assertThat(line.deltaG()).isEqualTo(11.0));
    assertThat(new ListFormulas(desk).call().formulas().get(0).editedByHand()).isTrue();
    assertThat(new CompareRevisions(desk).before(Address.parse("seeded-lupin-bun@edited")))
        .isEqualTo(LATEST);
  }

  @Test
  void aDraftUsesTheFoodsThatCommittingItWouldBringAlong() {
    editOnDisk("\"sesame-seeds\",\n      \"amount\"", "\"sunflower-seeds\",\n      \"amount\"");

    assertThat(show("seeded-lupin-bun@edited").lines().get(4).kind()).isEqualTo("dry");
    assertThat(show("seeded-lupin-bun@edited").unknowns())
        .noneMatch(unknown -> unknown.nutrient().equals("food"));
  }

  @Test
  void noEditOrAnotherLinesEditIsRefused() {
    refuses(Reason.NOT_FOUND, () -> show("seeded-lupin-bun@edited"));
    editOnDisk("188 g", "199 g");

    Refusal refusal =
        refuses(Reason.NOT_FOUND, () -> show("seeded-lupin-bun/egg-free@edited"));

    assertThat(refusal.hint()).endsWith("git checkout variant/seeded-lupin-bun/egg-free");
    bench.fixture().git("checkout", "-q", "-m", "variant/seeded-lupin-bun/egg-free");
    assertThat(new CompareRevisions(desk).before(Address.parse("seeded-lupin-bun@edited")))
        .hasToString("seeded-lupin-bun/egg-free");
  }

  @Test
  void aFileDeletedFromDiskIsRefusedWithTheWayBack() throws Exception {
    Files.delete(bench.fixture().directory().resolve(FILE));

    assertThat(refuses(Reason.NOT_FOUND, () -> show("seeded-lupin-bun@edited")).hint())
        .endsWith("git checkout -- " + FILE);
  }

  // Timeline and neighbours

  @Test
  void theTimelineShowsEachRevisionOnceNewestFirst() {
    assertThat(new ShowTimeline(desk).call(LATEST).revisions())
        .extracting(Views.TimelineEntry::address)
        .containsExactly(
            "seeded-lupin-bun/egg-free@5",
            "seeded-lupin-bun/egg-free@4",
            "seeded-lupin-bun@3",
            "seeded-lupin-bun@2",
            "seeded-lupin-bun@1");
    assertThat(new ShowTimeline(desk).call(Address.parse("seeded-lupin-bun/egg-free")).revisions())
        .extracting(Views.TimelineEntry::revision)
        .containsExactly(5, 4, 3, 2, 1);
  }

  @Test
  void revisionsOfOneLineKeepTheirOrderWhateverTheirClocksSay() {
    bench.fixture().edit(FILE, bench.fixture().onDisk(FILE).replace("188 g", "190 g"));
    bench.fixture().git(
        "-c", "user.name=Late", "commit", "-qam", "Clock of 2019", "--date=2019-01-01T00:00:00Z");

    assertThat(new ShowTimeline(desk).call(LATEST).revisions())
        .filteredOn(each -> each.variant() == null)
        .extracting(Views.TimelineEntry::revision)
        .containsExactly(4, 3, 2, 1);
  }

  @Test
  void theRevisionBeforeIsFoundAcrossAFork() {
    CompareRevisions compare = new CompareRevisions(desk);

    assertThat(compare.before(LATEST)).hasToString("seeded-lupin-bun@2");
    assertThat(compare.before(Address.parse("seeded-lupin-bun/egg-free@4")))
        .hasToString("seeded-lupin-bun/egg-free@3");
    refuses(Reason.NOT_FOUND, () -> compare.before(LATEST.at(1)));
  }

  @Test
  void twoFormulasAndTwoVariantsAreCompared() {
    assertThat(compare(BUN, "sesame-crispbread").lines())
        .extracting(ComparisonViews.LineDifference::change)
        .contains("removed", "replaced");
    assertThat(compare(BUN, "seeded-lupin-bun/egg-free").goal().rules())
        .anySatisfy(rule -> assertThat(rule.rule()).contains("egg"));
  }

  // Damage

  @Test
  void aDamagedFormulaIsListedWithWhatIsWrongAndTheOthersAreNotAffected() {
    bench.fixture().edit(FILE, "{\n  \"name\": \"Bun\",\n  \"lines\": 7\n}\n");
    bench.fixture().git("commit", "-qam", "Broken by hand");

    Views.FormulaList list = new ListFormulas(desk).call();
    Views.TimelineView timeline = new ShowTimeline(desk).call(LATEST);

    assertThat(list.formulas().get(0).name()).isEqualTo(BUN);
    assertThat(list.formulas().get(0).revisions()).isEqualTo(4);
    assertThat(list.formulas().get(0).perPiece()).isNull();
    assertThat(list.formulas().get(0).problems().get(0).where()).startsWith(FILE + ":3:");
    assertThat(list.formulas().get(1).problems()).isEmpty();
    assertThat(timeline.revisions().get(0).problems()).hasSize(1);
    assertThat(timeline.revisions().get(0).figures()).isNull();
    assertThat(timeline.revisions().get(1).problems()).isEmpty();

    Notebook notebook = bench.fixture().notebook();
    Formula sound = notebook.formula(notebook.revision(LATEST.at(3)));
    new FormulaWriter(notebook)
        .revise(
            notebook.newest(LATEST),
            new FormulaEdit(sound).set("water=190 g").formula(),
            "Repaired",
            bench.fixture().by());
    assertThat(new ShowTimeline(desk).call(LATEST).revisions().get(0))
        .satisfies(
            repaired -> {
              assertThat(repaired.problems()).isEmpty();
              assertThat(repaired.changes()).isEmpty();
              assertThat(repaired.figures()).isNotNull();
            });
  }

  @Test
  void aDamagedFoodLeavesTheFormulasNameAndItsOldRevisions() {
    bench.fixture().edit("pantry/lupin-flour.json", "{\"name\": \"Lupin\"");
    bench.fixture().git("commit", "-qam", "Broken by hand");

    Views.FormulaEntry bun = new ListFormulas(desk).call().formulas().get(0);

    assertThat(bun.name()).isEqualTo("Seeded lupin bun");
    assertThat(bun.goal()).isEqualTo("low-carb-bun");
    assertThat(bun.problems().get(0).where()).startsWith("pantry/lupin-flour.json");
    assertThat(show("seeded-lupin-bun@3").lines()).hasSize(5);
  }

  @Test
  void aDamagedBakeIsToldBesideTheOthers() {
    bench.fixture().edit("bakes/seeded-lupin-bun/2026-03-09-1.json", "[]");
    bench.fixture().git("add", "bakes");
    bench.fixture().git("commit", "-qm", "By hand");

    assertThat(new ShowTimeline(desk).call(LATEST).problems())
        .singleElement()
        .satisfies(each -> assertThat(each.where()).contains("2026-03-09-1.json"));
    assertThat(new ListFormulas(desk).call().formulas().get(0).bakes()).isEqualTo(2);
    assertThat(show("seeded-lupin-bun@2").bakes()).hasSize(1);
  }

  @Test
  void aVariantBranchWithoutTheFormulaIsLeftOut() {
    bench.fixture().git("branch", "variant/sesame-crispbread/odd", "main~3");
    bench.fixture().git("checkout", "-q", "-b", "variant/seeded-lupin-bun/gone");
    bench.fixture().git("rm", "-q", FILE);
    bench.fixture().git("commit", "-qm", "Gone");
    bench.fixture().git("checkout", "-q", "main");

    assertThat(new ListFormulas(desk).call().formulas())
        .extracting(entry -> entry.variants().size())
        .containsExactly(1, 0);
    assertThat(new ShowTimeline(desk).call(LATEST).variants()).hasSize(1);
    assertThat(new ShowTimeline(desk).call(Address.parse("sesame-crispbread")).revisions())
        .hasSize(1);
  }

  @Test
  void aLostObjectIsToldOfTheFormulaThatNeedsIt() throws Exception {
    String blob = bench.bun().newest().blob().hex();
    Path object =
        bench.fixture().directory().resolve(
            ".git/objects/" + blob.substring(0, 2) + "/" + blob.substring(2));
    Files.delete(object);
    try (Desk fresh = new Desk(bench.fixture().open())) {
      Views.FormulaList list = new ListFormulas(fresh).call();
      assertThat(list.formulas().get(0).problems()).hasSize(1);
      assertThat(list.formulas().get(0).problems().get(0).message()).contains(blob);
      assertThat(list.formulas().get(1).problems()).isEmpty();
    }
  }

  // Refusals

  @Test
  void everythingAPersonCanMendIsARefusal() {
    assertThat(Refusals.of(new IllegalStateException("bug"))).isEmpty();
    assertThat(Refusals.of(new NullPointerException())).isEmpty();
    Refusal refusal = new Refusal(Reason.EXISTS, "x", "There is one.", "");
    assertThat(Refusals.of(refusal)).containsSame(refusal);
    bench.fixture().edit(FILE, "{\"name\": 5}");
    assertThat(
            Refusals.of(
                catchThrowable(
                    () -> show("seeded-lupin-bun@edited"))))
        .hasValueSatisfying(
            found -> {
              assertThat(found.reason()).isEqualTo(Reason.INVALID);
              assertThat(found.where()).startsWith(FILE + ":1:10");
              assertThat(found.problems()).isNotEmpty();
            });
  }
}
