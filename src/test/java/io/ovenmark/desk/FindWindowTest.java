package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.bake.PieceText;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FindWindowTest {
  private static final Address BUN = Address.parse("seeded-lupin-bun");

  @TempDir Path temporary;
  private LupinBench bench;
  private FindWindow verb;

  @BeforeEach
  void begin() {
    bench = new LupinBench(temporary);
    verb = new FindWindow(bench.desk());
  }

  @AfterEach
  void close() {
    bench.close();
  }

  /** Six pieces from raw to dry, five of them with a log. */
  private void bakeTray() {
    bench.fixture()
        .bake(
            bench.bun().at(3),
            PieceText.read(
                List.of(),
                List.of(
                    "a 190C 20min core=90C crust=0.9 finding='gummy crumb' log='5min 40C,20min 90C'",
                    "b 190C 25min core=95C crust=1.6 finding='even crumb' log='5min 40C,25min 95C'",
                    "c 190C 30min core=98C crust=2.1 finding=dry log='5min 40C,30min 98C'",
                    "d 205C 16min core=90C crust=1.5 finding='gummy crumb' log='5min 50C,16min 90C'",
                    "e 205C 20min core=95C crust=2.2 finding='even crumb' log='5min 50C,20min 95C'",
                    "f 205C 25min core=98C crust=2.9 finding=dry")));
  }

  @Test
  void withFewPiecesItSaysWhatIsMissing() {
    WindowViews.WindowSheet sheet = verb.call(BUN, WindowOrder.USUAL);

    assertThat(sheet.address()).isEqualTo("seeded-lupin-bun@3");
    assertThat(sheet.map()).isNull();
    assertThat(sheet.summary()).startsWith("No map yet: ");
    assertThat(sheet.missing())
        .extracting(WindowViews.MissingView::sentence)
        .contains(
            "1 piece has oven temperature and time; a map needs at least 4.",
            "“core at least 71 °C” cannot be judged: the core is known of no piece.");
    assertThat(sheet.plan()).contains("190 °C").contains(" min");
    assertThat(sheet.asked().limits()).contains("core at least 71 °C");
    assertThat(sheet.asked().proposed()).isTrue();
  }

  /** The piece of the first tray has no core: it stays on the map, with that limit open. */
  @Test
  void aPieceWithoutACoreIsOpenNotBroken() {
    bakeTray();
    WindowViews.WindowSheet sheet =
        verb.call(BUN, WindowOrder.of("dough", "core at least 93 °C", "not dry"));

    assertThat(sheet.map()).isNotNull();
    assertThat(sheet.pieces().get(0).keeps()).isNull();
    assertThat(sheet.pieces().get(0).open()).containsExactly("core at least 93 °C");
    assertThat(sheet.pieces().get(1).keeps()).isFalse();
    assertThat(sheet.pieces().get(1).breaks()).containsExactly("core at least 93 °C");
    assertThat(sheet.pieces().get(2).keeps()).isTrue();
    assertThat(sheet.limits().get(0).known()).isEqualTo(6);
  }

  @Test
  void theTraysOwnPiecesMakeAMap() {
    bakeTray();
    WindowViews.WindowSheet sheet =
        verb.call(BUN, WindowOrder.of(null, "no gummy crumb", "not dry"));

    assertThat(sheet.map()).isNotNull();
    assertThat(sheet.asked().pieces()).isEqualTo("revision");
    assertThat(sheet.summary())
        .matches("(At|Nowhere).* pieces?( in 10)? .*With 7 pieces that is .* in 10\\.");
    assertThat(sheet.limits())
        .extracting(WindowViews.LimitView::limit, WindowViews.LimitView::known)
        .containsExactly(
            tuple("no gummy crumb", 7),
            tuple("not dry", 7));
    assertThat(sheet.limits().get(0).sentence()).startsWith("A fifth more time: ");
    assertThat(sheet.next()).hasSizeBetween(2, 3);
    assertThat(sheet.plan().split(", ")).hasSameSizeAs(sheet.next());
    assertThat(sheet.next().get(0).sentence()).contains("Tells most about “");
    assertThat(sheet.cautions().get(0)).contains("never says that a piece is safe", "71 °C");
    assertThat(sheet.summary() + sheet.next()).doesNotContain("safe");
  }

  @Test
  void choicesTellHowManyPiecesAndDoughsThereAre() {
    bakeTray();
    WindowViews.WindowSheet all = verb.call(BUN, WindowOrder.of("all", "not dry"));

    assertThat(all.choices())
        .extracting(WindowViews.ChoiceView::count)
        .containsExactly(7, 7, 9);
    assertThat(all.choices().get(2).doughs()).isEqualTo(2);
    assertThat(all.remarks()).anySatisfy(r -> assertThat(r).startsWith("The pieces are of 2 doughs"));
    assertThat(verb.call(BUN.at(2), WindowOrder.of("revision", "not dry")).pieces()).hasSize(2);
  }

  /** Only the oven setting changes, so the pieces of both revisions are of one dough. */
  @Test
  void aRevisionWithTheSameDoughBringsItsPieces() {
    bakeTray();
    bench.bun().set("bake.temperature=200C").revise("Cooler");

    WindowViews.WindowSheet sheet = verb.call(BUN, WindowOrder.of("dough", "not dry"));
    assertThat(sheet.address()).isEqualTo("seeded-lupin-bun@4");
    assertThat(sheet.choices())
        .extracting(WindowViews.ChoiceView::count)
        .containsExactly(0, 7, 9);
    bench.bun().set("water=170 g").revise("Drier");
    assertThat(verb.call(BUN, WindowOrder.of("dough", "not dry")).pieces()).isEmpty();
  }

  @Test
  void theDoseIsAnAxisForPiecesWhoseCoreWasLogged() {
    bakeTray();
    WindowOrder order =
        new WindowOrder(
            "revision", List.of("no gummy crumb"), "dose", null, null, "100 °C", "33");
    WindowViews.WindowSheet sheet = verb.call(BUN, order);

    assertThat(sheet.map()).isNotNull();
    assertThat(sheet.pieces()).filteredOn(WindowViews.PieceView::onMap).hasSize(5);
    assertThat(sheet.pieces().get(6).dose()).isNull();
    assertThat(sheet.next()).isEmpty();
    assertThat(sheet.remarks())
        .anySatisfy(r -> assertThat(r).contains("f of", "the dose is unknown"));
    double usual = sheet.pieces().get(1).dose();
    double other =
        verb.call(
                BUN,
                new WindowOrder("revision", List.of("not dry"), "dose", null, null, "67 °C", null))
            .pieces()
            .get(1)
            .dose();
    assertThat(other / usual).isCloseTo(10, within(1e-9));
  }

  @Test
  void temperaturesStandInTheUnitsOfTheReader() {
    bakeTray();
    Desk american =
        bench.desk().shownIn(ShownUnits.of(Optional.of("oz"), Optional.of("F")));
    WindowViews.WindowSheet sheet =
        new FindWindow(american).call(BUN, WindowOrder.of("revision", "not dry"));

    assertThat(sheet.next()).isNotEmpty();
    assertThat(sheet.plan()).contains("0 °F ").doesNotContain("°C");
    assertThat(sheet.limits().get(0).sentence()).contains("20 °F hotter");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "null",
      value = {
        "some | null | null | null | null | null | null | Write revision or dough or all.",
        "null | gummy | null | null | null | null | null | Write it as in: core",
        "null | null | hours | null | null | null | null | Write minutes or dose.",
        "null | null | null | hot | null | null | null | 180 to 220 °C",
        "null | null | null | 220 to 180 °C | null | null | null | smaller value first",
        "null | null | null | null | 30 | null | null | 14 to 30 min",
        "null | null | null | null | null | 300 °C | null | 0 to 200 °C",
        "null | null | null | null | null | null | much | Write digits"
      })
  void whatIsNotUnderstoodIsRefusedWithWhatToWrite(
      String pieces, String limit, String along, String oven, String time, String reference,
      String z, String expected) {
    WindowOrder order =
        new WindowOrder(
            pieces, limit == null ? null : List.of(limit), along, oven, time, reference, z);

    assertThatThrownBy(() -> verb.call(BUN, order))
        .isInstanceOfSatisfying(
            Refusal.class,
            refusal -> {
              assertThat(refusal.reason()).isEqualTo(Refusal.Reason.INVALID);
              assertThat(refusal.hint()).contains(expected);
            });
  }

  @Test
  void theOvensRangeBoundsTheMapAndWhatIsProposed() {
    bakeTray();
    WindowViews.WindowSheet sheet =
        verb.call(
            BUN,
            new WindowOrder(
                "revision", List.of("not dry"), null, "190 to 200 °C", "18 to 26 min", null, null));

    assertThat(sheet.map().temperaturesC()).containsExactly(190.0, 195.0, 200.0);
    assertThat(sheet.next())
        .allSatisfy(
            next -> {
              assertThat(next.temperatureC()).isBetween(190.0, 200.0);
              assertThat(next.minutes()).isBetween(18.0, 26.0);
            });
  }
}
