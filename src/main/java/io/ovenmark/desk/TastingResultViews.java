package io.ovenmark.desk;

import io.ovenmark.tasting.Blocks;
import io.ovenmark.tasting.Friedman;
import io.ovenmark.tasting.JustAboutRight;
import io.ovenmark.tasting.Liking;
import io.ovenmark.tasting.Preference;
import io.ovenmark.tasting.Ranking;
import io.ovenmark.tasting.ResultSentences;
import io.ovenmark.tasting.Results;
import io.ovenmark.tasting.Sample;
import io.ovenmark.tasting.Score;
import io.ovenmark.tasting.Serving;
import io.ovenmark.tasting.Sheet;
import io.ovenmark.tasting.Tasting;
import io.ovenmark.tasting.Triangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Makes the views of results. */
final class TastingResultViews {
  private TastingResultViews() {}

  static TastingViews.ResultsView view(Tasting tasting) {
    Results results = Results.of(tasting);
    ResultSentences sentences =
        ResultSentences.of(results, tasting.samples().stream().map(Sample::text).toList());
    return new TastingViews.ResultsView(
        results.sheets(),
        results.answered(),
        sentences.says(),
        sentences.cannot(),
        results.triangle().map(TastingResultViews::view).orElse(null),
        results.preference().map(TastingResultViews::view).orElse(null),
        results.ranking().map(TastingResultViews::view).orElse(null),
        results.liking().map(liking -> view(liking, tasting)).orElse(null),
        results.attributes().isEmpty()
            ? null
            : results.attributes().stream().map(TastingResultViews::view).toList());
  }

  private static TastingViews.TriangleView view(Triangle triangle) {
    return new TastingViews.TriangleView(
        triangle.answered(),
        triangle.correct(),
        number(triangle.p()),
        whole(triangle.leastCorrect()),
        number(triangle.discriminators()),
        number(triangle.lowest()),
        number(triangle.highest()),
        number(triangle.visible()));
  }

  private static TastingViews.PreferenceView view(Preference result) {
    return new TastingViews.PreferenceView(
        result.first(),
        result.second(),
        result.neither(),
        number(result.p()),
        whole(result.leastMajority()),
        number(result.lowest()),
        number(result.highest()),
        number(result.visible()));
  }

  private static TastingViews.RankingView view(Ranking ranking) {
    Optional<Friedman> test = ranking.friedman();
    boolean some = ranking.answered() > 0;
    return new TastingViews.RankingView(
        ranking.answered(),
        ranking.rankSums(),
        test.map(Friedman::statistic).orElse(null),
        test.map(Friedman::degreesOfFreedom).orElse(null),
        test.map(Friedman::p).orElse(null),
        test.map(each -> each.method().name().toLowerCase(Locale.ROOT)).orElse(null),
        some ? ranking.leastDifference() : null,
        some ? ranking.agreement() : null,
        some
            ? ranking.pairs().stream()
                .map(
                    pair ->
                        new TastingViews.PairView(
                            pair.better(),
                            pair.other(),
                            pair.difference(),
                            null,
                            null,
                            pair.apart()))
                .toList()
            : List.of());
  }

  private static TastingViews.LikingView view(Liking liking, Tasting tasting) {
    List<TastingViews.LikedView> samples = new ArrayList<>();
    for (int i = 0; i < liking.samples().size(); i++) {
      Liking.One one = liking.samples().get(i);
      samples.add(
          new TastingViews.LikedView(
              i + 1,
              one.scored(),
              number(one.mean()),
              number(one.deviation()),
              number(one.lowest()),
              number(one.highest()),
              one.counts(),
              scores(tasting, i + 1)));
    }
    return new TastingViews.LikingView(
        List.copyOf(samples), liking.blocks().map(TastingResultViews::view).orElse(null));
  }

  private static List<TastingViews.TasterScore> scores(Tasting tasting, int sample) {
    List<TastingViews.TasterScore> scores = new ArrayList<>();
    for (Sheet sheet : tasting.sheets()) {
      List<Score> said = sheet.answer().map(answer -> answer.scores()).orElse(List.of());
      for (Serving serving : sheet.servings()) {
        said.stream()
            .filter(score -> score.code().equals(serving.code()))
            .filter(score -> serving.sample() == sample && score.liking().isPresent())
            .forEach(
                score ->
                    scores.add(
                        new TastingViews.TasterScore(
                            sheet.number(), score.liking().getAsDouble())));
      }
    }
    return List.copyOf(scores);
  }

  private static TastingViews.BlocksView view(Blocks blocks) {
    return new TastingViews.BlocksView(
        blocks.tasters(),
        number(blocks.f()),
        blocks.samplesFreedom(),
        blocks.errorFreedom(),
        blocks.p(),
        blocks.leastDifference(),
        blocks.visible(),
        blocks.pairs().stream()
            .map(
                pair ->
                    new TastingViews.PairView(
                        pair.better(),
                        pair.other(),
                        pair.difference(),
                        pair.lowest(),
                        pair.highest(),
                        pair.apart()))
            .toList());
  }

  private static TastingViews.AttributeView view(JustAboutRight each) {
    return new TastingViews.AttributeView(
        each.sample(),
        each.attribute(),
        each.counts(),
        number(each.right()),
        view(each.tooLittle()),
        view(each.tooMuch()),
        number(each.directionP()));
  }

  private static TastingViews.SideView view(JustAboutRight.Side side) {
    return new TastingViews.SideView(
        side.tasters(),
        number(side.share()),
        number(side.drop()),
        number(side.lowest()),
        number(side.highest()),
        number(side.weighted()),
        side.counts());
  }

  static Double number(OptionalDouble number) {
    return number.isPresent() ? number.getAsDouble() : null;
  }

  static Integer whole(OptionalInt number) {
    return number.isPresent() ? number.getAsInt() : null;
  }
}
