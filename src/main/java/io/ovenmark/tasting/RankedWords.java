package io.ovenmark.tasting;

import static io.ovenmark.tasting.ResultSentences.count;
import static io.ovenmark.tasting.ResultSentences.number;
import static io.ovenmark.tasting.ResultSentences.p;
import static io.ovenmark.tasting.ResultSentences.percent;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Says what rankings, scores of liking and just-about-right scores tell. */
final class RankedWords {
  private static final int FEW = 8;

  private RankedWords() {}

  static void ranking(
      Ranking ranking, List<String> names, List<String> says, List<String> cannot) {
    int n = ranking.answered();
    if (n > 0) {
      Friedman test = ranking.friedman().orElseThrow();
      List<Integer> order = new ArrayList<>();
      for (int sample = 1; sample <= ranking.rankSums().size(); sample++) {
        order.add(sample);
      }
      order.sort(Comparator.comparing(sample -> ranking.rankSums().get(sample - 1)));
      String ranked =
          String.join(
              ", ",
              order.stream()
                  .map(
                      sample ->
                          names.get(sample - 1) + " "
                              + number(ranking.rankSums().get(sample - 1) / (double) n))
                  .toList());
      says.add(
          (test.p() <= Chance.ALPHA
                  ? "The order is more than chance (" + p(test.p()) + how(test) + "). "
                  : "No order is shown (" + p(test.p()) + how(test) + "). ")
              + "Mean ranks, 1 is best: " + ranked + ".");
      for (Ranking.Pair pair : ranking.pairs()) {
        if (pair.apart()) {
          says.add(
              names.get(pair.better() - 1) + " is ranked before " + names.get(pair.other() - 1)
                  + " (rank sums " + pair.difference() + " apart, "
                  + number(ranking.leastDifference()) + " needed).");
        }
      }
      cannot.add(
          ranking.bestP() > Chance.ALPHA
              ? count(n, "ranking") + (n == 1 ? " is" : " are") + " too few to show any order, even"
                  + " if all agree."
              : count(n, "ranking") + " are too few to see mean ranks less than "
                  + number(ranking.leastDifference() / n) + " apart.");
    }
    cannot.add("A ranking does not tell how far apart the samples are liked.");
  }

  private static String how(Friedman test) {
    return switch (test.method()) {
      case EXACT -> ", exact";
      case PERMUTATIONS -> ", by permutations";
      case CHI_SQUARED -> ", chi-squared";
    };
  }

  static void liking(Liking liking, List<String> names, List<String> says, List<String> cannot) {
    liking.blocks().ifPresent(blocks -> blocks(blocks, names, says, cannot));
    for (int j = 0; j < liking.samples().size(); j++) {
      Liking.One one = liking.samples().get(j);
      if (one.scored() == 0) {
        continue;
      }
      String mean = names.get(j) + ": mean liking " + number(one.mean().orElseThrow());
      says.add(
          one.lowest().isPresent()
              ? mean + " (95 %: " + number(one.lowest().getAsDouble()) + " to "
                  + number(one.highest().orElseThrow()) + "; tasters spread by "
                  + number(one.deviation().orElseThrow()) + ") from "
                  + count(one.scored(), "taster") + "."
              : mean + " from 1 taster, which says nothing of others.");
    }
    int fewest = liking.samples().stream().mapToInt(Liking.One::scored).min().orElse(0);
    if (fewest > 0 && fewest < FEW) {
      cannot.add(
          "The intervals take the scores for normally spread, which so few tasters cannot show;"
              + " look at the single scores too.");
    }
    cannot.add(
        "A panel of colleagues or family does not speak for guests: liking carries over only to"
            + " people like these tasters.");
  }

  private static void blocks(
      Blocks blocks, List<String> names, List<String> says, List<String> cannot) {
    String over = " over the " + count(blocks.tasters(), "taster") + " who scored all samples";
    if (blocks.pairs().size() == 1) {
      Blocks.Pair pair = blocks.pairs().get(0);
      String told =
          names.get(pair.better() - 1) + " scores " + number(pair.difference())
              + " points above " + names.get(pair.other() - 1) + over + " (95 %: "
              + number(pair.lowest()) + " to " + number(pair.highest()) + "; paired t-test, "
              + p(blocks.p()) + ").";
      says.add(
          (pair.apart() ? "The liking differs. " : "No difference in liking is shown. ") + told);
    } else {
      says.add(
          (blocks.p() <= Chance.ALPHA
                  ? "The samples are liked differently ("
                  : "No difference in liking is shown (")
              + p(blocks.p()) + ", analysis of blocks" + over + ").");
      for (Blocks.Pair pair : blocks.pairs()) {
        if (pair.apart()) {
          says.add(
              names.get(pair.better() - 1) + " is liked " + number(pair.difference())
                  + " points more than " + names.get(pair.other() - 1) + " ("
                  + number(blocks.leastDifference()) + " needed).");
        }
      }
    }
    cannot.add(
        blocks.f().isPresent()
            ? count(blocks.tasters(), "taster") + " are too few to see reliably a difference of"
                + " less than about " + number(blocks.visible()) + " points."
            : "These tasters differ from each other in nothing but their level, so there is no"
                + " spread to judge the difference by.");
  }

  static void attributes(
      List<JustAboutRight> all, List<String> names, List<String> says, List<String> cannot) {
    for (JustAboutRight each : all) {
      String where = names.get(each.sample() - 1) + ", " + each.attribute();
      side(each.tooLittle(), where + ": too little for ", says);
      side(each.tooMuch(), where + ": too much for ", says);
    }
    if (!all.isEmpty()) {
      cannot.add(
          "The drop in liking is of those who said so, not an effect: whoever likes a sample less"
              + " may find more wrong with it. A fifth of the tasters as the limit is common"
              + " practice, no source.");
    }
  }

  private static void side(JustAboutRight.Side side, String start, List<String> says) {
    if (!side.counts()) {
      return;
    }
    String share = start + count(side.tasters(), "taster") + " (" + percent(side.share()) + ")";
    if (side.drop().isEmpty()) {
      says.add(share + "; what that costs in liking is not known.");
    } else {
      double drop = side.drop().getAsDouble();
      says.add(
          share + ", who like it " + number(Math.abs(drop)) + " points "
              + (drop >= 0 ? "less" : "more") + " than those who find it right.");
    }
  }
}
