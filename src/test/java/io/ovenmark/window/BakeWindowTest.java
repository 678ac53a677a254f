package io.ovenmark.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The window of invented pieces: of a bench's tray, and of a made-up oven that is known exactly. */
class BakeWindowTest {
  private static final List<WindowLimit> LIMITS = limits("core at least 93 °C", "not dry");

  private static List<WindowLimit> limits(String... texts) {
    return Arrays.stream(texts).map(WindowLimit::read).toList();
  }

  private static BakedPiece piece(
      int number, double oven, double minutes, Double core, Double crust, String... findings) {
    return new BakedPiece(
        "2026-10-05-1",
        "p" + number,
        "seeded-lupin-bun@13",
        OptionalDouble.of(oven),
        minutes > 0 ? OptionalDouble.of(minutes) : OptionalDouble.empty(),
        core == null ? OptionalDouble.empty() : OptionalDouble.of(core),
        crust == null ? OptionalDouble.empty() : OptionalDouble.of(crust),
        OptionalDouble.empty(),
        List.of(findings),
        true,
        OptionalDouble.empty());
  }

  private static List<BakedPiece> tray() {
    return List.of(
        piece(1, 190, 20, 90.0, 0.9, "gummy crumb"),
        piece(2, 190, 25, 95.0, 1.5),
        piece(3, 190, 30, 98.0, 2.0, "dry"),
        piece(4, 205, 16, 90.0, 1.5, "gummy crumb"),
        piece(5, 205, 20, 95.0, 2.1),
        piece(6, 205, 25, 98.0, 2.8, "dry"));
  }

  private static BakeWindow window(List<BakedPiece> pieces, List<WindowLimit> limits) {
    return BakeWindow.of(pieces, limits, Axis.MINUTES, Optional.empty(), false);
  }

  private static List<String> missing(List<BakedPiece> pieces, List<WindowLimit> limits) {
    BakeWindow window = window(pieces, limits);
    assertThat(window.map().isPresent()).isEqualTo(window.missing().isEmpty());
    return window.missing().stream().map(Missing::what).toList();
  }

  @Test
  void lyingBetweenRawAndDryTheWindowRunsFromCoolAndLongToHotAndShort() {
    WindowMap map = window(tray(), LIMITS).map().orElseThrow();

    assertThat(map.best().chance()).isGreaterThan(WindowMap.POSSIBLE);
    assertThat(map.best().low()).isLessThan(map.best().chance());
    assertThat(map.best().high()).isGreaterThan(map.best().chance());
    WindowMap.Span cool = map.possible().get(0);
    WindowMap.Span hot = map.possible().get(map.possible().size() - 1);
    assertThat(cool.celsius()).isLessThan(hot.celsius());
    assertThat(cool.from() + cool.to()).isGreaterThan(hot.from() + hot.to());
    assertThat(map.failing()).extracting(WindowMap.Failing::words).contains("core too low", "dry");
  }

  @Test
  void everyChanceIsAChanceAndLikelyLiesWithinPossible() {
    WindowMap map = window(tray(), LIMITS).map().orElseThrow();

    assertThat(map.chances()).hasSameSizeAs(map.celsius());
    for (List<Double> row : map.chances()) {
      assertThat(row).hasSameSizeAs(map.along()).allSatisfy(c -> assertThat(c).isBetween(0.0, 1.0));
    }
    for (WindowMap.Span span : map.likely()) {
      assertThat(map.possible())
          .anySatisfy(
              wide -> {
                assertThat(wide.celsius()).isEqualTo(span.celsius());
                assertThat(wide.from()).isLessThanOrEqualTo(span.from());
                assertThat(wide.to()).isGreaterThanOrEqualTo(span.to());
              });
    }
  }

  @Test
  void oneMoreLimitNeverWidensTheWindow() {
    WindowMap two = window(tray(), LIMITS).map().orElseThrow();
    WindowMap three =
        window(tray(), limits("core at least 93 °C", "not dry", "crust 1 to 2.5"))
            .map()
            .orElseThrow();

    for (int r = 0; r < two.chances().size(); r++) {
      for (int c = 0; c < two.chances().get(r).size(); c++) {
        assertThat(three.chances().get(r).get(c))
            .isLessThanOrEqualTo(two.chances().get(r).get(c) + 1e-12);
      }
    }
  }

  @Test
  void theOrderOfThePiecesDoesNotMatter() {
    List<BakedPiece> shuffled = new ArrayList<>(tray());
    Collections.shuffle(shuffled, new Random(4));

    WindowMap.Best one = window(tray(), LIMITS).map().orElseThrow().best();
    WindowMap.Best other = window(shuffled, LIMITS).map().orElseThrow().best();
    assertThat(other.celsius()).isEqualTo(one.celsius());
    assertThat(other.along()).isEqualTo(one.along());
    assertThat(other.chance()).isCloseTo(one.chance(), within(1e-9));
  }

  @Test
  void tooFewPiecesSayWhatIsMissing() {
    assertThat(missing(tray().subList(0, 3), LIMITS)).contains("pieces", "temperature");
    assertThat(missing(List.of(), LIMITS)).containsExactly("pieces");
    assertThat(missing(tray(), List.of())).containsExactly("limit");
    assertThat(window(List.of(), LIMITS).next()).isEmpty();
  }

  @Test
  void oneHeatOneTimeOrBothTogetherMakeNoMap() {
    List<BakedPiece> oneHeat = new ArrayList<>();
    List<BakedPiece> oneTime = new ArrayList<>();
    List<BakedPiece> together = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      oneHeat.add(piece(i, 200, 18 + i, 95.0, 2.0));
      oneTime.add(piece(i, 190 + 5 * i, 20, 95.0, 2.0));
      together.add(piece(i, 190 + 5 * i, 30 * Math.pow(1.1, -i), 95.0, 2.0));
    }
    assertThat(missing(oneHeat, LIMITS)).containsExactly("temperature");
    assertThat(missing(oneTime, LIMITS)).containsExactly("time");
    assertThat(missing(together, LIMITS)).containsExactly("together");
    assertThat(window(oneHeat, LIMITS).next())
        .isNotEmpty()
        .allSatisfy(next -> assertThat(next.settles()).isEmpty())
        .anySatisfy(next -> assertThat(next.celsius()).isNotEqualTo(200));
  }

  @Test
  void aLimitOfWhichLittleIsKnownMakesNoMapEither() {
    List<BakedPiece> unmeasured = new ArrayList<>();
    for (BakedPiece piece : tray()) {
      unmeasured.add(
          piece(
              unmeasured.size(),
              piece.ovenCelsius().getAsDouble(),
              piece.minutes().getAsDouble(),
              unmeasured.size() < 2 ? 95.0 : null,
              2.0));
    }
    BakeWindow window = window(unmeasured, LIMITS);

    assertThat(window.map()).isEmpty();
    assertThat(window.missing())
        .singleElement()
        .satisfies(
            missing -> {
              assertThat(missing.sentence()).contains("the core is known of 2 pieces");
              assertThat(missing.remedy()).startsWith("Add it to p2 of 2026-10-05-1");
            });
    assertThat(window.keepsAll(unmeasured.get(0))).contains(true);
    assertThat(window.keepsAll(unmeasured.get(5))).isEmpty();
  }

  @Test
  void aPieceWithoutTimeHasNoPlaceAndIsNotCounted() {
    List<BakedPiece> pieces = new ArrayList<>(tray());
    pieces.add(piece(9, 205, 0, 95.0, 2.0));

    BakeWindow window = window(pieces, LIMITS);
    assertThat(window.pieces()).hasSize(7);
    assertThat(window.onMap()).hasSize(6);
    assertThat(window.map()).isEqualTo(window(tray(), LIMITS).map());
  }

  @Test
  void whatIsWorthBakingLiesApartWithinTheOvenAndIsNotHopeless() {
    OvenRange range = OvenRange.of(185, 210, 15, 32, false);
    BakeWindow window =
        BakeWindow.of(tray(), LIMITS, Axis.MINUTES, Optional.of(range), false);

    assertThat(window.next()).hasSizeBetween(2, 3);
    for (NextBake next : window.next()) {
      assertThat(next.celsius()).isBetween(185.0, 210.0);
      assertThat(next.celsius() % 5).isZero();
      assertThat(next.minutes()).isBetween(15.0, 32.0);
      assertThat(next.settles()).isPresent();
      assertThat(next.settles().get().share()).isBetween(0.0, 1.0);
      assertThat(next.settles().get().chance()).isBetween(0.1, 1.0);
      for (NextBake other : window.next()) {
        assertThat(
                other == next
                    || Math.hypot(
                            (other.celsius() - next.celsius()) / 10,
                            Math.log(other.minutes() / next.minutes()) / Math.log(1.2))
                        >= 1)
            .isTrue();
      }
    }
    assertThat(window.next().get(0).settles().get().share())
        .isGreaterThanOrEqualTo(window.next().get(1).settles().get().share());
  }

  /** Whatever is found at the proposed place, less stays uncertain there. */
  @Test
  void bakingWhatIsProposedNarrowsWhatIsUncertainThere() {
    BakeWindow before = window(tray(), limits("core at least 93 °C"));
    NextBake next = before.next().get(0);
    List<BakedPiece> more = new ArrayList<>(tray());
    more.add(piece(7, next.celsius(), next.minutes(), 93.5, 1.8));
    OvenRange range = before.map().orElseThrow().range();
    BakeWindow after =
        BakeWindow.of(
            more, limits("core at least 93 °C"), Axis.MINUTES, Optional.of(range), false);

    assertThat(after.fits().get(0).perTenDegrees().deviation())
        .isLessThan(before.fits().get(0).perTenDegrees().deviation());
  }

  /**
   * A made-up oven: core 95 + 4 log time + 2 heat steps, scatter 0.8 °C. The chances of the map are
   * held against the share of many pieces baked there.
   */
  @Test
  void theChanceIsNearTheShareOfPiecesInAMadeUpOven() {
    Random random = new Random(21);
    List<BakedPiece> pieces = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      double oven = 185 + 5 * random.nextInt(7);
      double minutes = 16 + random.nextInt(15);
      pieces.add(piece(i, oven, minutes, core(oven, minutes, random), 2.0));
    }
    WindowMap map =
        window(pieces, limits("core at least 95 °C")).map().orElseThrow();
    double far = 0;
    int cells = 0;
    for (int r = 0; r < map.celsius().size(); r++) {
      for (int c = 0; c < map.along().size(); c++) {
        int kept = 0;
        for (int i = 0; i < 400; i++) {
          kept += core(map.celsius().get(r), map.along().get(c), random) >= 95 ? 1 : 0;
        }
        far += Math.abs(kept / 400.0 - map.chances().get(r).get(c));
        cells++;
      }
    }
    assertThat(far / cells).isLessThan(0.06);
  }

  private static double core(double oven, double minutes, Random random) {
    return 95
        + 4 * Math.log(minutes / 22) / Math.log(1.2)
        + 2 * (oven - 200) / 10
        + 0.8 * random.nextGaussian();
  }

  @Test
  void ovensInFahrenheitAreSetInTens() {
    assertThat(OvenRange.of(188, 206, 14, 30, true).settings())
        .allSatisfy(
            celsius -> {
              double fahrenheit = celsius * 1.8 + 32;
              assertThat(fahrenheit).isCloseTo(Math.rint(fahrenheit / 10) * 10, within(1e-9));
            })
        .hasSize(3);
  }

  @Test
  void proposedLimitsAreThoseOfEggOfTheFaultsAndOfTheGoodCrusts() {
    assertThat(ProposedLimits.of(tray(), true))
        .extracting(WindowLimit::text)
        .containsExactly(
            "core at least 71 °C", "no gummy crumb", "not dry", "crust 1.5 to 2.5");
    assertThat(ProposedLimits.of(List.of(), false)).isEmpty();
  }
}
