package io.ovenmark.desk;

import static io.ovenmark.notebook.Refusals.refuses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.measure.ShownUnits;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal.Reason;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShowTrendsTest {
  private static final Address BUN = Address.parse(LupinBench.BUN);

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

  private TrendViews.Trends trends(Address line, String... keys) {
    return new ShowTrends(desk).call(line, List.of(keys), Optional.empty(), Optional.empty());
  }

  @Test
  void figuresAreThoseOfTheTimeline() {
    TrendViews.Trends trends = trends(BUN, "liquid_ratio", "net_carbohydrate_g.per_piece");
    List<Views.TimelineEntry> entries =
        new ShowTimeline(desk).call(BUN).revisions().stream()
            .filter(entry -> entry.variant() == null)
            .toList();
    assertThat(trends.points()).hasSize(3);
    for (int i = 0; i < 3; i++) {
      TrendViews.Point point = trends.points().get(i);
      FigureSet figures = entries.get(2 - i).figures();
      assertThat(point.address()).isEqualTo(entries.get(2 - i).address());
      assertThat(point.commit()).isEqualTo(entries.get(2 - i).commit());
      assertThat(point.values().get(0).value())
          .isEqualTo(FigureSet.number(figures.figures().get("liquid_ratio")));
      assertThat(point.values().get(1).value())
          .isEqualTo(FigureSet.number(figures.figures().get("net_carbohydrate_g")));
    }
  }

  @Test
  void theGoalsLimitBelongsToTheFigureForItsOwnBasis() {
    TrendViews.Trends trends =
        trends(
            BUN, "net_carbohydrate_g.per_piece", "net_carbohydrate_g.per_batch", "fat_g.per_piece");
    assertThat(trends.figures().get(0).limit()).isEqualTo(new Views.LimitView(null, 4.0));
    assertThat(trends.figures().get(1).limit()).isNull();
    assertThat(trends.figures().get(2).limit()).isNull();
  }

  @Test
  void whatWasMeasuredRestsOnTheBakesOfTheContentAndIsElseMissing() {
    TrendViews.Trends trends = trends(BUN, "best_height_mm", "mean_loss_percent", "mean_liking");
    assertThat(trends.figures()).allMatch(TrendViews.TrendFigureView::measured);
    TrendViews.Point second = trends.points().get(1);
    assertThat(second.bakes()).isEqualTo(1);
    assertThat(second.values().get(0).value()).isEqualTo(39);
    assertThat(second.values().get(0).count()).isEqualTo(2);
    assertThat(second.values().get(0).text()).isEqualTo("39 mm (n 2)");
    // by hand: 100·(1 − 66/76) = 13.158, 100·(1 − 64/76) = 15.789, mean 14.474
    assertThat(second.values().get(1).value()).isCloseTo(14.474, within(0.001));
    assertThat(second.values().get(2).value()).isNull();
    assertThat(second.values().get(2).text()).isEqualTo("not tasted");
    assertThat(trends.points().get(0).values().get(0))
        .isEqualTo(new TrendViews.Value(null, null, null, 0, "not baked"));
  }

  @Test
  void anUnknownFigureIsNoNumber() {
    TrendViews.Value never =
        trends(BUN, "protein_g.per_100_g_baked").points().get(0).values().get(0);
    assertThat(never.value()).isNull();
    assertThat(never.count()).isNull();
    assertThat(trends(BUN, "baked_per_piece_g").points().get(0).values().get(0).text())
        .isEqualTo("unknown");
  }

  @Test
  void theShareOfAFoodIsThatOfItsLines() {
    TrendViews.Trends trends = trends(BUN, "share.water", "share.sesame-seeds");
    TrendViews.Value share = trends.points().get(1).values().get(0);
    double dough =
        new ShowFormula(desk).call(BUN.at(2)).lines().stream()
            .mapToDouble(Views.LineView::grams)
            .sum();
    assertThat(share.value()).isCloseTo(100 * 188 / dough, within(1e-9));
    assertThat(trends.points().get(1).values().get(1).value()).isZero();
    assertThat(trends.points().get(2).values().get(1).value()).isPositive();
    assertThat(trends.choices())
        .filteredOn(choice -> choice.key().equals("share.sesame-seeds"))
        .singleElement()
        .satisfies(choice -> assertThat(choice.label()).endsWith(", % of batch"));
  }

  @Test
  void costIsOfferedOnlyWhereThereIsAPriceAndIsABoundWhereSomeAreMissing() {
    assertThat(trends(BUN, "pieces").choices())
        .extracting(TrendViews.Choice::key)
        .doesNotContain("cost.per_piece");
    bench.price("lupin-flour", "4.00", "EUR", 1000);
    bench.bun().set("water=200 g").revise("Wetter");
    TrendViews.Trends trends = trends(BUN, "cost.per_batch", "cost.per_piece");
    TrendViews.Value cost = trends.points().get(3).values().get(0);
    assertThat(cost.value()).isNull();
    assertThat(cost.atLeast()).isCloseTo(120 * 4.0 / 1000, within(1e-9));
    assertThat(cost.atMost()).isNull();
    assertThat(cost.text()).isEqualTo("at least 0.48 EUR");
    assertThat(trends.points().get(0).values().get(0).text()).isEqualTo("unknown");
  }

  @Test
  void aVariantsLineBeginsWithTheMainLineAndPinsMayStandElsewhere() {
    TrendViews.Trends trends =
        new ShowTrends(desk)
            .call(
                Address.parse(LupinBench.BUN + "/egg-free"),
                List.of("liquid_ratio"),
                Optional.of(Address.parse("sesame-crispbread@1")),
                Optional.of(BUN.at(2)));
    assertThat(trends.points())
        .extracting(TrendViews.Point::address)
        .startsWith("seeded-lupin-bun@1", "seeded-lupin-bun@2", "seeded-lupin-bun@3")
        .endsWith("seeded-lupin-bun/egg-free@5");
    assertThat(trends.from().address()).isEqualTo("sesame-crispbread@1");
    assertThat(trends.to().revision()).isEqualTo(2);
  }

  @Test
  void theFileEditedByHandIsAPointToo() {
    String file = "formulas/" + LupinBench.BUN + ".json";
    bench.fixture().edit(file, bench.fixture().onDisk(file).replace("188 g", "196 g"));
    TrendViews.Point edited =
        new ShowTrends(desk)
            .call(
                BUN,
                List.of("share.water"),
                Optional.empty(),
                Optional.of(Address.parse(LupinBench.BUN + "@edited")))
            .to();
    assertThat(edited.revision()).isNull();
    assertThat(edited.values().get(0).value())
        .isGreaterThan(trends(BUN, "share.water").points().get(2).values().get(0).value());
  }

  @Test
  void weighedMassesAndCoresAreInTheReadersUnits() {
    ShowTrends verb =
        new ShowTrends(desk.shownIn(ShownUnits.of(Optional.of("oz"), Optional.of("F"))));
    TrendViews.Trends trends =
        verb.call(
            BUN,
            List.of("dough_per_piece_g", "protein_g.per_piece", "lowest_core_c"),
            Optional.empty(),
            Optional.empty());
    assertThat(trends.figures())
        .extracting(TrendViews.TrendFigureView::unit)
        .containsExactly("oz", "g", "°F");
    assertThat(trends.points().get(0).values().get(0).text()).endsWith(" oz");
  }

  @Test
  void whatThereIsNotIsRefused() {
    refuses(Reason.NOT_FOUND, () -> trends(BUN, "happiness"));
    refuses(Reason.NOT_FOUND, () -> trends(Address.parse(LupinBench.BUN + "/vegan"), "pieces"));
  }
}
