package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.ovenmark.bake.PieceText;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TastingsTest {
  private static final String BUN = Kitchen.BUN;

  @TempDir Path folder;
  private Kitchen kitchen;
  private Desk desk;

  @BeforeEach
  void bake() {
    kitchen = new Kitchen(folder);
    desk = kitchen.desk();
    new RecordBake(desk)
        .call(
            RecordBake.Request.of(
                    Address.parse(BUN + "@2"), OffsetDateTime.parse("2026-03-02T08:30:00+01:00"))
                .withPieces(
                    PieceText.read(List.of(), List.of("a 190C core=68C", "b 200C core=96C"))),
            kitchen.by());
  }

  @AfterEach
  void close() {
    kitchen.close();
  }

  private TastingViews.TastingSheet plan(String kind, int tasters, String... samples) {
    return new PlanTasting(desk)
        .call(
            new PlanTasting.Request(
                kind,
                List.of(samples),
                tasters,
                "",
                kind.equals("just-about-right") ? List.of("sweet") : List.of(),
                "",
                5),
            kitchen.by());
  }

  private TastingViews.TastingSheet triangle() {
    return plan("triangle", 6, BUN + "@1", BUN + "@2");
  }

  private Path file(TastingViews.TastingSheet tasting) {
    return kitchen
        .repository()
        .directory()
        .resolve("tastings/" + BUN + "/" + tasting.id() + ".json");
  }

  private static AnswerOrder choice(String code) {
    return new AnswerOrder(code, null, null, null, "MK");
  }

  private Refusal refused(Runnable act) {
    return catchThrowableOfType(Refusal.class, act::run);
  }

  @Test
  void aTastingIsCommittedOnTheMainLineAndTheCheckKnowsIt() throws IOException {
    TastingViews.TastingSheet tasting = triangle();

    Path file = file(tasting);
    assertThat(Files.readString(file)).startsWith("{\n  \"kind\": \"triangle\"");
    assertThat(kitchen.repository().git("status", "--porcelain")).isEmpty();
    KitchenViews.CheckView check = new CheckNotebook(desk).call(CheckNotebook.Progress.NONE);
    assertThat(check.ok()).isTrue();
    assertThat(check.results()).isEmpty();
    assertThat(new ShowTimeline(desk).call(Address.parse(BUN)).revisions()).hasSize(2);
  }

  @Test
  void theCheckFindsWhatDoesNotFitTheHistory() throws IOException {
    TastingViews.TastingSheet tasting = plan("liking", 2, BUN + "@2:2026-03-02-1/b");
    Path file = file(tasting);
    Files.writeString(
        file,
        Files.readString(file)
            .replace("\"piece\": \"b\"", "\"piece\": \"z\"")
            .replace(BUN + "@2", BUN + "@1"));
    kitchen.repository().git("commit", "-aqm", "By hand");

    KitchenViews.CheckView check = new CheckNotebook(desk).call(CheckNotebook.Progress.NONE);
    assertThat(Json.readable(check))
        .contains("has no piece \\\"z\\\"")
        .contains("says it is of " + BUN + "@1, but its content is that of " + BUN + "@2");
  }

  @Test
  void undoTakesTheLastAnswerBack() {
    TastingViews.TastingSheet tasting = triangle();
    String odd = tasting.sheets().get(0).codes().get(0);
    new EnterAnswer(desk).taster(BUN, tasting.id(), 1, choice(odd), kitchen.by());

    new UndoLast(desk).call(Optional.empty(), kitchen.by());

    assertThat(new ShowTasting(desk).call(BUN, tasting.id()).results().answered()).isZero();
  }

  @Test
  void whatATasterSeesDoesNotTellTheSamplesApart() {
    TastingViews.TastingSheet tasting = triangle();
    String shown = Json.readable(new ShowTasting(desk).sheets(BUN, tasting.id()));

    assertThat(shown).doesNotContain("@1", "@2", "\"sample\"", "\"seed\"", "Softer dough");
    assertThat(new ShowTasting(desk).sheet(BUN, tasting.id(), 3).codes())
        .isEqualTo(tasting.sheets().get(2).codes())
        .hasSize(3);
  }

  @Test
  void allergensOfAllSamplesStandOnEverySheetAndCoolEggIsNamedToTheOrganiser() {
    TastingViews.TastingSheet tasting = plan("liking", 2, BUN + "@2:2026-03-02-1/a", BUN + "@1");
    List<String> sheet = new ShowTasting(desk).sheet(BUN, tasting.id(), 1).cautions();

    assertThat(sheet)
        .anyMatch(each -> each.startsWith("The samples contain eggs, lupin."))
        .anyMatch(each -> each.contains("Raw flour"))
        .anyMatch(each -> each.contains("Local food codes"))
        .noneMatch(each -> each.contains("68"));
    assertThat(tasting.cautions().get(0)).startsWith("Ask each taster about allergies");
    assertThat(tasting.cautions())
        .anyMatch(each -> each.contains("2026-03-02-1/a (68 °C). Do not serve it"))
        .anyMatch(each -> each.contains("no core temperature is noted for " + BUN + "@1"));
  }

  @Test
  void anAnswerIsSentOnceAndOnlyTheOrganiserCorrectsIt() {
    TastingViews.TastingSheet tasting = triangle();
    List<String> codes = tasting.sheets().get(1).codes();
    EnterAnswer enter = new EnterAnswer(desk);
    assertThat(
            enter.taster(BUN, tasting.id(), 2, choice(codes.get(0)), kitchen.by()).answered())
        .isTrue();

    Refusal again =
        refused(() -> enter.taster(BUN, tasting.id(), 2, choice(codes.get(1)), kitchen.by()));
    assertThat(again.reason()).isEqualTo(Refusal.Reason.EXISTS);

    TastingViews.SheetView seen = new ShowTasting(desk).call(BUN, tasting.id()).sheets().get(1);
    assertThat(seen.initials()).isEqualTo("MK");
    Refusal unseen =
        refused(
            () -> enter.organiser(BUN, tasting.id(), 2, choice(codes.get(1)), "", kitchen.by()));
    assertThat(unseen.reason()).isEqualTo(Refusal.Reason.CONFLICT);

    TastingViews.TastingSheet corrected =
        enter.organiser(
            BUN, tasting.id(), 2, choice(codes.get(1)), seen.version(), kitchen.by());
    assertThat(corrected.sheets().get(1).answer().choice()).isEqualTo(codes.get(1));
    assertThat(corrected.sheets().get(1).version()).isNotEqualTo(seen.version());
  }

  @Test
  void tastersWhoSendAtTheSameTimeDoNotDisturbEachOther() {
    TastingViews.TastingSheet tasting = triangle();
    List<CompletableFuture<Void>> sent =
        IntStream.rangeClosed(1, 6)
            .mapToObj(
                number ->
                    CompletableFuture.runAsync(
                        () ->
                            new EnterAnswer(desk)
                                .taster(
                                    BUN,
                                    tasting.id(),
                                    number,
                                    choice(tasting.sheets().get(number - 1).codes().get(2)),
                                    kitchen.by())))
            .toList();
    sent.forEach(CompletableFuture::join);

    assertThat(new ShowTasting(desk).call(BUN, tasting.id()).results().answered()).isEqualTo(6);
  }

  @Test
  void unknownFieldsOfAnAnswerSurviveItsCorrection() throws IOException {
    TastingViews.TastingSheet tasting = plan("just-about-right", 1, BUN + "@2");
    String code = tasting.sheets().get(0).codes().get(0);
    EnterAnswer enter = new EnterAnswer(desk);
    enter.text(
        BUN, tasting.id(), 1, code + "=7,sweet=-1", EnterAnswer.Words.NONE, false, kitchen.by());
    Path file = file(tasting);
    Files.writeString(
        file,
        Files.readString(file)
            .replace("\"liking\": 7", "\"liking\": 7, \"bites\": 3")
            .replace("\"score\": -1", "\"score\": -1, \"sure\": true"));
    kitchen.repository().git("commit", "-aqm", "By hand");

    AnswerOrder order =
        new AnswerOrder(
            null,
            null,
            List.of(new AnswerOrder.ScoreOrder(code, 5.0, Map.of("sweet", 0))),
            "later",
            null);
    String version = new ShowTasting(desk).call(BUN, tasting.id()).sheets().get(0).version();
    enter.organiser(BUN, tasting.id(), 1, order, version, kitchen.by());

    assertThat(Files.readString(file))
        .contains("\"liking\": 5", "\"bites\": 3", "\"sure\": true", "\"note\": \"later\"");
  }

  @Test
  void moreSheetsLeaveThoseThatAreThere() {
    TastingViews.TastingSheet tasting = triangle();
    TastingViews.TastingSheet more = new PlanTasting(desk).more(BUN, tasting.id(), 1, kitchen.by());

    assertThat(more.sheets()).hasSize(7);
    assertThat(more.sheets().subList(0, 6)).isEqualTo(tasting.sheets());
    assertThat(tasting.remarks()).isEmpty();
    assertThat(more.remarks().get(0)).contains("balanced with 6 sheets");
  }

  @Test
  void whatCannotBeTastedIsRefusedWithAField() {
    assertThat(refused(() -> plan("triangle", 6, BUN + "@1")).where()).isEqualTo("samples");
    assertThat(refused(() -> plan("triangle", 6, BUN + "@1", BUN + "@1")).where())
        .isEqualTo("samples");
    assertThat(refused(() -> plan("triangle", 0, BUN + "@1", BUN + "@2")).where())
        .isEqualTo("tasters");
    assertThat(refused(() -> plan("smell", 6, BUN + "@1", BUN + "@2")).where())
        .isEqualTo("kind");
    assertThat(refused(() -> plan("liking", 6, BUN + "@1:2026-03-02-1")))
        .hasMessageContaining("is of " + BUN + "@2, not of " + BUN + "@1");
    assertThat(refused(() -> plan("liking", 6, BUN + "@2:2026-03-02-1/z")))
        .hasMessageContaining("has no piece \"z\"");
    assertThat(refused(() -> new ShowTasting(desk).call(BUN, "2026-01-01-1")).reason())
        .isEqualTo(Refusal.Reason.NOT_FOUND);
    TastingViews.TastingSheet tasting = triangle();
    assertThat(refused(() -> new ShowTasting(desk).sheet(BUN, tasting.id(), 7)).where())
        .isEqualTo("sheet 7");
    assertThat(
            refused(
                () ->
                    new EnterAnswer(desk)
                        .taster(BUN, tasting.id(), 1, choice("99"), kitchen.by())))
        .hasMessageContaining("which is not on it");
  }

  @Test
  void theListNamesWhatCanBeTastedAndADamagedTastingHidesNothing() throws IOException {
    TastingViews.TastingSheet tasting = triangle();
    Path broken =
        kitchen.repository().directory().resolve("tastings/" + BUN + "/2026-01-01-1.json");
    Files.writeString(broken, "{");
    kitchen.repository().git("add", "-A");
    kitchen.repository().git("commit", "-qm", "By hand");
    TastingViews.TastingList list = new ShowTasting(desk).list(Address.parse(BUN));

    assertThat(list.tastings())
        .extracting(TastingViews.TastingLine::id)
        .containsExactly(tasting.id());
    assertThat(list.problems()).isNotEmpty();
    assertThat(list.samples())
        .extracting(TastingViews.SampleChoice::sample)
        .containsExactly(
            BUN + "@2", BUN + "@2:2026-03-02-1", BUN + "@2:2026-03-02-1/a",
            BUN + "@2:2026-03-02-1/b", BUN + "@1");
    assertThat(list.panels().get(1).leastCorrect()).isEqualTo(8);
  }
}
