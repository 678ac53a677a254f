package io.ovenmark.tasting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the answers of a tasting so far show; the part that belongs to its kind is there.
 *
 * <pre>{@code
 * Results results = Results.of(tasting);
 * List<String> says = ResultSentences.of(results, names).says();
 * }</pre>
 *
 * @param kind the tasting's kind
 * @param sheets how many sheets there are
 * @param answered how many are answered
 * @param triangle of a triangle
 * @param preference of a paired preference
 * @param ranking of a ranking
 * @param liking of scores of liking, also of a just-about-right tasting
 * @param attributes of a just-about-right tasting: each attribute of each sample
 */
public record Results(
    TastingKind kind,
    int sheets,
    int answered,
    Optional<Triangle> triangle,
    Optional<Preference> preference,
    Optional<Ranking> ranking,
    Optional<Liking> liking,
    List<JustAboutRight> attributes) {
  /** Copies. */
  public Results {
    attributes = List.copyOf(attributes);
  }

  /**
   * Works them out.
   *
   * @param tasting the tasting
   * @return its results
   */
  public static Results of(Tasting tasting) {
    List<Sheet> answered =
        tasting.sheets().stream().filter(sheet -> sheet.answer().isPresent()).toList();
    int samples = tasting.samples().size();
    TastingKind kind = tasting.kind();
    return new Results(
        kind,
        tasting.sheets().size(),
        answered.size(),
        kind == TastingKind.TRIANGLE ? Optional.of(triangle(answered)) : Optional.empty(),
        kind == TastingKind.PREFERENCE ? Optional.of(preference(answered)) : Optional.empty(),
        kind == TastingKind.RANKING
            ? Optional.of(Ranking.of(ranks(answered, samples), samples))
            : Optional.empty(),
        kind.isScored() ? Optional.of(Liking.of(scores(answered, samples), samples)) : noLiking(),
        attributes(tasting, answered));
  }

  private static Optional<Liking> noLiking() {
    return Optional.empty();
  }

  private static Triangle triangle(List<Sheet> sheets) {
    int correct = 0;
    for (Sheet sheet : sheets) {
      int chosen = sheet.sample(sheet.answer().orElseThrow().choice().orElseThrow());
      long alike =
          sheet.servings().stream().filter(serving -> serving.sample() == chosen).count();
      correct += alike == 1 ? 1 : 0;
    }
    return Triangle.of(sheets.size(), correct);
  }

  private static Preference preference(List<Sheet> sheets) {
    int[] chosen = new int[3];
    for (Sheet sheet : sheets) {
      chosen[sheet.sample(sheet.answer().orElseThrow().choice().orElseThrow())]++;
    }
    return Preference.of(chosen[1], chosen[2], chosen[0]);
  }

  private static List<List<Integer>> ranks(List<Sheet> sheets, int samples) {
    List<List<Integer>> ranks = new ArrayList<>();
    for (Sheet sheet : sheets) {
      List<Integer> order =
          sheet.answer().orElseThrow().ranking().stream().map(sheet::sample).toList();
      List<Integer> row = new ArrayList<>();
      for (int sample = 1; sample <= samples; sample++) {
        row.add(order.indexOf(sample) + 1);
      }
      ranks.add(row);
    }
    return ranks;
  }

  private static List<List<OptionalDouble>> scores(List<Sheet> sheets, int samples) {
    List<List<OptionalDouble>> scores = new ArrayList<>();
    for (Sheet sheet : sheets) {
      List<OptionalDouble> row = new ArrayList<>();
      for (int sample = 1; sample <= samples; sample++) {
        row.add(score(sheet, sample).map(Score::liking).orElse(OptionalDouble.empty()));
      }
      scores.add(row);
    }
    return scores;
  }

  private static Optional<Score> score(Sheet sheet, int sample) {
    return sheet.servings().stream()
        .filter(serving -> serving.sample() == sample)
        .findFirst()
        .flatMap(serving -> sheet.answer().flatMap(answer -> answer.score(serving.code())));
  }

  private static List<JustAboutRight> attributes(Tasting tasting, List<Sheet> answered) {
    List<JustAboutRight> all = new ArrayList<>();
    for (int sample = 1; sample <= tasting.samples().size(); sample++) {
      for (String attribute : tasting.attributes()) {
        List<JustAboutRight.Said> said = new ArrayList<>();
        for (Sheet sheet : answered) {
          score(sheet, sample)
              .ifPresent(
                  score ->
                      score
                          .attribute(attribute)
                          .ifPresent(
                              value ->
                                  said.add(new JustAboutRight.Said(value, score.liking()))));
        }
        all.add(JustAboutRight.of(sample, attribute, said));
      }
    }
    return all;
  }
}
