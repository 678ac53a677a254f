package io.ovenmark.desk;

import static io.ovenmark.notebook.NotebookFixture.piece;
import static io.ovenmark.notebook.Refusals.refuses;
import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.publish.story.StoryFile;
import io.ovenmark.publish.story.StoryPictures;
import io.ovenmark.story.StoryPlan;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TellStoryTest {
  private static final Address BUN = Address.parse("seeded-lupin-bun");
  private static final String FILE = "stories/seeded-lupin-bun.json";

  @TempDir Path temporary;
  private LupinBench bench;
  private TellStory tell;

  @BeforeEach
  void begin() {
    bench = new LupinBench(temporary);
    tell = new TellStory(bench.desk());
  }

  @AfterEach
  void close() {
    bench.fixture().assertClean();
    bench.close();
  }

  private static StoryOrder.StepOrder step(int revision, String heading, String photo) {
    return new StoryOrder.StepOrder(revision, heading, null, photo, null);
  }

  private static StoryOrder order(String title, StoryOrder.StepOrder... steps) {
    return new StoryOrder(title, null, null, null, null, List.of(steps));
  }

  private StoryViews.StorySheet sheet(StoryOrder order) {
    return tell.call(tell.plan(BUN, order));
  }

  /** Revisions 2 and 3 were baked: heights at most 39 and 47 mm, so 8 mm more. */
  @Test
  void everyBakeThatTaughtSomethingIsProposedWithWhatChangedAndMoved() {
    StoryViews.StorySheet sheet = tell.call(tell.plan(BUN));

    assertThat(sheet.proposed()).isTrue();
    assertThat(sheet.kept()).isFalse();
    assertThat(sheet.steps()).extracting(StoryViews.StepView::revision).containsExactly(2, 3);
    StoryViews.StepView first = sheet.steps().get(0);
    StoryViews.StepView second = sheet.steps().get(1);
    assertThat(first.changed()).isEmpty();
    assertThat(first.move()).isNull();
    assertThat(first.heading()).isEqualTo("Wetter");
    assertThat(first.seen())
        .anyMatch(text -> text.startsWith("2 pieces in 1 bake, up to 39 mm high"))
        .contains(
            "Good: good oven spring (1 of 2).", "To mend: dark base (1 of 2), dense (1 of 2).");
    assertThat(second.changed()).singleElement().asString().contains("esame seeds", "30 g");
    assertThat(second.move().figure()).isEqualTo("best_height_mm");
    assertThat(second.move().differenceText()).isEqualTo("+8 mm");
    assertThat(second.credit()).contains("cannot be credited to one of them");
    assertThat(sheet.card()).isEqualTo("seeded-lupin-bun@3");
    assertThat(sheet.cautions()).anyMatch(text -> text.contains("71 °C"));
    assertThat(sheet.span()).startsWith("2 revisions and 2 bakes, ");
  }

  @Test
  void whatWasNotMeasuredIsNeverANumber() {
    StoryViews.StorySheet sheet =
        sheet(order(null, step(1, null, null), step(2, null, null)));

    assertThat(sheet.steps().get(0).seen()).containsExactly("Not baked.");
    assertThat(sheet.steps().get(1).moves())
        .extracting(StoryViews.MoveView::figure)
        .doesNotContain("best_height_mm", "mean_liking");
    assertThat(sheet.steps().get(1).seen().get(0)).contains("not tasted");
    StoryViews.StorySheet drawn =
        tell.call(
            tell.plan(
                BUN,
                new StoryOrder(
                    null, null, null, null, List.of("best_height_mm"),
                    List.of(step(1, null, null), step(3, null, null)))));
    assertThat(drawn.arcs().get(0).points())
        .extracting(StoryViews.ArcPoint::value)
        .containsExactly(null, 39.0, 47.0);
    assertThat(drawn.arcs().get(0).points().get(0).text()).isEqualTo("not baked");
  }

  @Test
  void aFormulaThatWasNeverBakedIsToldFromItsFirstRevisionToItsLast() {
    StoryViews.StorySheet sheet =
        tell.call(tell.plan(Address.parse("sesame-crispbread")));

    assertThat(sheet.steps()).extracting(StoryViews.StepView::revision).containsExactly(1);
    assertThat(sheet.steps().get(0).seen()).containsExactly("Not baked.");
  }

  @Test
  void bakesOfARestoredContentAreToldWhereTheyWereBaked() {
    RestoreRevision restore = new RestoreRevision(bench.desk());
    restore.call(BUN.at(2), BUN, "Back to the wetter one", bench.fixture().by());
    assertThat(tell.call(tell.plan(BUN)).steps())
        .extracting(StoryViews.StepView::revision)
        .containsExactly(2, 3);

    bench.fixture().bake(bench.bun().at(4), List.of(piece("a", 190, 25, 90, 82, 30, "flat")));

    StoryViews.StorySheet sheet = tell.call(tell.plan(BUN));
    assertThat(sheet.steps())
        .extracting(StoryViews.StepView::revision)
        .containsExactly(2, 3, 4);
    assertThat(sheet.steps().get(0).seen().get(0)).startsWith("2 pieces in 1 bake");
    assertThat(sheet.steps().get(2).seen().get(0)).startsWith("1 piece in 1 bake");
  }

  @Test
  void ownWordsStandAndWhatIsNotThereIsRefusedWithItsPlace() {
    StoryOrder own =
        new StoryOrder(
            "A bun without wheat", "Ines", "Why.", "So.", null,
            List.of(
                new StoryOrder.StepOrder(2, "Too wet", "It tore.", "none", null),
                new StoryOrder.StepOrder(3, null, null, null, "liquid_ratio")));
    StoryViews.StorySheet sheet = sheet(own);

    assertThat(sheet.title()).isEqualTo("A bun without wheat");
    assertThat(sheet.steps().get(0).heading()).isEqualTo("Too wet");
    assertThat(sheet.steps().get(0).photo()).isNull();
    assertThat(sheet.steps().get(1).move().figure()).isEqualTo("liquid_ratio");
    assertThat(sheet.markdown())
        .startsWith("# A bun without wheat\n\nIne")
        .contains("It tore.", "Why.", "So.");
    assertThat(tell.page(tell.plan(BUN, own))).contains("It tore.", "A bun without wheat");

    assertThat(
            refuses(Refusal.Reason.NOT_FOUND, () -> sheet(order(null, step(9, null, null)))).hint())
        .contains("1 to 3");
    refuses(
        Refusal.Reason.NOT_FOUND,
        () -> sheet(order(null, step(2, null, "photos/seeded-lupin-bun/none.jpg"))));
    refuses(
        Refusal.Reason.INVALID,
        () -> sheet(order(null, step(3, null, null), step(2, null, null))));
    refuses(Refusal.Reason.INVALID, () -> sheet(order("x".repeat(121))));
    refuses(
        Refusal.Reason.NOT_FOUND,
        () -> sheet(new StoryOrder(null, null, null, null, List.of("fluff"), null)));
    refuses(Refusal.Reason.INVALID, () -> tell.plan(Address.parse("seeded-lupin-bun@edited")));
  }

  @Test
  void whatIsKeptIsAFileThatNativeGitShowsAndUndoTakesAway() {
    StoryPlan plan = tell.plan(BUN, order("A bun without wheat", step(3, null, null)));
    StoryViews.StorySheet kept = tell.keep(plan, null, bench.fixture().by());

    assertThat(kept.kept()).isTrue();
    assertThat(kept.base()).isEqualTo(bench.fixture().git("rev-parse", "main:" + FILE).strip());
    assertThat(bench.fixture().git("log", "-1", "--format=%s"))
        .startsWith("Story: seeded-lupin-bun");
    assertThat(bench.fixture().onDisk(FILE)).contains("\"revision\": 3");
    assertThat(tell.plan(BUN)).isEqualTo(plan);

    int commits = bench.fixture().commits("main");
    assertThat(tell.keep(plan, kept.base(), bench.fixture().by()).base()).isEqualTo(kept.base());
    assertThat(bench.fixture().commits("main")).isEqualTo(commits);

    WriteViews.UndoPreview undo = new UndoLast(bench.desk()).preview(Optional.empty());
    assertThat(undo.toString()).contains("The story seeded-lupin-bun is taken away.");
    new UndoLast(bench.desk()).call(Optional.empty(), bench.fixture().by());
    assertThat(tell.call(tell.plan(BUN)).kept()).isFalse();
  }

  @Test
  void aVariantHasAStoryOfItsOwnAndItsHistoryStaysAsItWas() {
    Address variant = Address.parse("seeded-lupin-bun/egg-free");
    String before = bench.fixture().git("rev-parse", "variant/seeded-lupin-bun/egg-free");
    tell.keep(
        tell.plan(variant, order("Without egg", step(3, null, null), step(4, null, null))),
        null,
        bench.fixture().by());

    assertThat(bench.fixture().onDisk("stories/seeded-lupin-bun/egg-free.json")).contains("egg");
    assertThat(bench.fixture().git("rev-parse", "variant/seeded-lupin-bun/egg-free"))
        .isEqualTo(before);
    assertThat(tell.call(tell.plan(BUN)).kept()).isFalse();
    assertThat(tell.call(tell.plan(variant)).steps().get(1).changed().get(0)).contains("gg");
  }

  @Test
  void whoeverKeepsOverAnotherOnesStoryIsToldAndFieldsOfOthersStay() {
    String first = tell.keep(tell.plan(BUN, order("One")), null, bench.fixture().by()).base();
    refuses(
        Refusal.Reason.CONFLICT,
        () -> tell.keep(tell.plan(BUN, order("Two")), null, bench.fixture().by()));
    tell.keep(tell.plan(BUN, order("Two")), first, bench.fixture().by());
    refuses(
        Refusal.Reason.CONFLICT,
        () -> tell.keep(tell.plan(BUN, order("Three")), first, bench.fixture().by()));
    assertThat(tell.plan(BUN).title()).contains("Two");

    bench.fixture().edit(FILE, "{\"title\": \"By hand\", \"music\": \"slow\"}\n");
    bench.fixture().git("commit", "-qam", "By hand");
    String base = tell.call(tell.plan(BUN)).base();
    tell.keep(tell.plan(BUN, order("Four")), base, bench.fixture().by());
    assertThat(bench.fixture().onDisk(FILE)).contains("Four", "\"music\": \"slow\"");
  }

  @Test
  void ofManyWhoKeepAtOnceOneDoesAndTheOthersAreTold()
      throws InterruptedException, ExecutionException {
    ExecutorService people = Executors.newFixedThreadPool(4);
    List<Future<Boolean>> done = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      StoryPlan plan = tell.plan(BUN, order("Story " + i));
      done.add(
          people.submit(
              () -> {
                try {
                  tell.keep(plan, null, bench.fixture().by());
                  return true;
                } catch (Refusal refusal) {
                  assertThat(refusal.reason()).isEqualTo(Refusal.Reason.CONFLICT);
                  return false;
                }
              }));
    }
    int kept = 0;
    for (Future<Boolean> each : done) {
      kept += each.get() ? 1 : 0;
    }
    people.shutdown();
    assertThat(kept).isEqualTo(1);
  }

  @Test
  void theCheckFindsAStoryThatTellsOfWhatIsNotThere() {
    bench.fixture().edit(FILE, "{\"steps\": [{\"revision\": 2}, {\"revision\": 9}]}\n");
    bench.fixture().edit("stories/rye-bun.json", "{}\n");
    bench.fixture().git("add", "-A");
    bench.fixture().git("commit", "-qm", "By hand");

    List<KitchenViews.CheckResult> found =
        new CheckNotebook(bench.desk()).call(CheckNotebook.Progress.NONE).results();

    assertThat(found).extracting(KitchenViews.CheckResult::message)
        .contains(
            "seeded-lupin-bun has no revision 9.",
            "The story is of rye-bun, which the notebook lacks.");
  }

  @Test
  void theSameStoryGivesTheSameBytesInEveryForm() throws IOException {
    StoryPlan plan = tell.plan(BUN);
    TellStory again = new TellStory(bench.desk());

    assertThat(again.page(plan)).isEqualTo(tell.page(plan));
    List<StoryFile> pictures = tell.pictures(plan, Progress.UNWATCHED);
    byte[] zip = StoryFolder.zip(pictures);
    assertThat(StoryFolder.zip(again.pictures(plan, Progress.UNWATCHED))).isEqualTo(zip);
    assertThat(tell.picture(plan, 2).content()).isEqualTo(pictures.get(1).content());
    refuses(Refusal.Reason.NOT_FOUND, () -> tell.picture(plan, pictures.size()));

    List<String> names = new ArrayList<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (var entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        names.add(entry.getName());
      }
    }
    assertThat(names).containsExactlyElementsOf(pictures.stream().map(StoryFile::name).toList());
    assertThat(StoryPictures.WIDTH + " × " + StoryPictures.HEIGHT).isEqualTo("1920 × 1080");
  }

  @Test
  void filesAreNotWrittenOverWithoutBeingAsked() throws IOException {
    Path folder = temporary.resolve("video");
    List<StoryFile> files = tell.markdown(tell.plan(BUN));
    StoryFolder.write(folder, files, false);
    Files.writeString(folder.resolve("story.md"), "mine");

    refuses(Refusal.Reason.EXISTS, () -> StoryFolder.write(folder, files, false));
    assertThat(folder.resolve("story.md")).hasContent("mine");
    StoryFolder.write(folder, files, true);
    assertThat(folder.resolve("story.md")).binaryContent().isEqualTo(files.get(0).content());
    try (var left = Files.list(folder)) {
      assertThat(left).hasSize(files.size());
    }
  }
}
