package io.ovenmark.effect;

import io.ovenmark.effect.Candidate.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What mattered over the bakes of a formula: for each outcome the changes that moved together with
 * it. The model is that of {@link MixedModel}: linear, with a chance part for each bake and a
 * prior that draws effects towards zero, because a formula has few bakes, many changes, and trays
 * whose pieces are not independent. It finds what went together, not what caused it: a change that
 * was not noted, that always came with another, or that matters only beside another cannot be told
 * from this. Findings are counted as so many pieces in a hundred, by the same linear model, which
 * few bakes bear better than one with a curve.
 *
 * <pre>{@code
 * Mattered mattered = Mattered.of(history);
 * mattered.outcomes().get(0).effects().get(0).together().value();
 * }</pre>
 *
 * @param bakes bakes that were looked at
 * @param pieces their pieces
 * @param outcomes each with its effects, or with what is missing
 */
public record Mattered(int bakes, int pieces, List<OutcomeEffects> outcomes) {
  /** The least bakes with an outcome before anything is said of it (common practice). */
  static final int LEAST_BAKES = 4;

  /** Most groups of changes that are looked at for one outcome. */
  static final int MOST_GROUPS = 40;

  private static final int LEAST_PIECES = 5;
  private static final int LEAST_FOUND = 2;
  private static final int MOST_COMPANIONS = 3;
  private static final double KNOWN_ENOUGH = 0.1;

  /** Copies the list. */
  public Mattered {
    outcomes = List.copyOf(outcomes);
  }

  /**
   * Looks through a history.
   *
   * @param history the bakes
   * @return the outcomes in a fixed order
   */
  public static Mattered of(History history) {
    Pieces pieces = new Pieces(history);
    List<Candidate> candidates = Candidates.of(history, pieces);
    Map<List<Integer>, Compared> compared = new HashMap<>();
    return new Mattered(
        history.bakes().size(),
        pieces.count(),
        Outcome.of(pieces).stream()
            .map(outcome -> new Looking(history, pieces, candidates, outcome).effects(compared))
            .toList());
  }

  /** What does not depend on the outcome but on the pieces of which it is known. */
  private record Compared(Groups groups, Steps steps) {}

  /** The work for one outcome. */
  private static final class Looking {
    private final History history;
    private final Pieces pieces;
    private final Outcome outcome;
    private final List<Candidate> candidates;
    private final int[] known;
    private final int[] used;
    private final int[] bake;
    private final double[] values;
    private int leftOut;

    Looking(History history, Pieces pieces, List<Candidate> all, Outcome outcome) {
      this.history = history;
      this.pieces = pieces;
      this.outcome = outcome;
      known =
          IntStream.range(0, pieces.count())
              .filter(i -> !Double.isNaN(outcome.value(pieces, i)))
              .toArray();
      List<Candidate> here =
          all.stream()
              .map(candidate -> candidate.of(known))
              .filter(candidate -> unknown(candidate) <= KNOWN_ENOUGH * known.length)
              .toList();
      leftOut = (int) all.stream().filter(each -> unknown(each.of(known))
          > KNOWN_ENOUGH * known.length).count();
      int[] complete =
          IntStream.range(0, known.length)
              .filter(i -> here.stream().noneMatch(each -> Double.isNaN(each.values()[i])))
              .toArray();
      used = Arrays.stream(complete).map(i -> known[i]).toArray();
      candidates =
          here.stream().map(each -> each.of(complete)).filter(Candidate::varies).toList();
      bake = Arrays.stream(used).map(pieces::bake).toArray();
      values = Arrays.stream(used).mapToDouble(i -> outcome.value(pieces, i)).toArray();
    }

    private static long unknown(Candidate candidate) {
      return Arrays.stream(candidate.values()).filter(Double::isNaN).count();
    }

    private int bakes() {
      return (int) Arrays.stream(bake).distinct().count();
    }

    OutcomeEffects effects(Map<List<Integer>, Compared> compared) {
      Optional<String> missing = missing();
      if (missing.isPresent()) {
        return result(missing, 0, 0, List.of());
      }
      return fitted(
          compared.computeIfAbsent(
              Arrays.stream(used).boxed().toList(),
              each -> {
                Groups groups = new Groups(candidates);
                return new Compared(groups, new Steps(history, bake, candidates, groups));
              }));
    }

    private OutcomeEffects result(
        Optional<String> missing, double pieceChance, double bakeChance, List<Effect> effects) {
      return new OutcomeEffects(
          outcome,
          bakes(),
          used.length,
          pieces.count() - known.length,
          known.length - used.length,
          missing,
          Arrays.stream(values).average().orElse(Double.NaN),
          pieceChance,
          bakeChance,
          leftOut,
          effects);
    }

    private Optional<String> missing() {
      if (used.length == 0) {
        return Optional.of("Not known of any piece. Note " + outcome.measured() + " of each.");
      }
      if (bakes() < LEAST_BAKES) {
        int more = LEAST_BAKES - bakes();
        return Optional.of(
            "Known of " + counted(bakes(), "bake") + " only; at least " + LEAST_BAKES
                + " are needed. Note " + outcome.measured() + " of "
                + counted(more, "more bake") + ".");
      }
      if (used.length < LEAST_PIECES) {
        return Optional.of(
            "Known of " + counted(used.length, "piece") + " only; at least " + LEAST_PIECES
                + " are needed.");
      }
      if (outcome.kind() == Outcome.Kind.FINDING) {
        long with = Arrays.stream(values).filter(value -> value > 0).count();
        if (used.length - with < LEAST_FOUND) {
          return Optional.of("Found on almost every piece, so that nothing can be told from it.");
        }
      } else if (Arrays.stream(values).max().getAsDouble()
          - Arrays.stream(values).min().getAsDouble() < outcome.resolution() / 2) {
        return Optional.of("The same on every piece, so that nothing can be told from it.");
      }
      return candidates.isEmpty()
          ? Optional.of("Nothing was changed between these pieces, as far as was noted.")
          : Optional.empty();
    }

    private static String counted(int count, String noun) {
      return count + " " + noun + (count == 1 ? "" : "s");
    }

    private OutcomeEffects fitted(Compared compared) {
      Groups groups = compared.groups();
      Steps steps = compared.steps();
      List<Integer> looked =
          IntStream.range(0, groups.count())
              .filter(group -> groups.lead(group).isPresent())
              .boxed()
              .sorted(Comparator.comparing(group -> -steps.of(group).size()))
              .toList();
      if (looked.size() > MOST_GROUPS) {
        leftOut += looked.size() - MOST_GROUPS;
        looked = looked.subList(0, MOST_GROUPS);
      }
      List<double[]> columns =
          looked.stream().map(group -> groups.lead(group).orElseThrow().values()).toList();
      int[] trays = numbered(bake);
      MixedModel.Fit fit = new MixedModel(trays, columns, values).fit(outcome.resolution());
      List<Effect> effects = new ArrayList<>();
      for (int k = 0; k < looked.size(); k++) {
        int group = looked.get(k);
        MixedModel.Estimate own =
            new MixedModel(trays, List.of(columns.get(k)), values)
                .fit(outcome.resolution()).effects().get(0);
        effects.add(effect(groups, group, steps, fit.effects().get(k), own));
      }
      effects.sort(
          Comparator.comparing(Effect::standing)
              .thenComparing(effect -> -effect.together().sureOfSign())
              .thenComparing(Effect::key));
      return result(Optional.empty(), fit.pieceDeviation(), fit.bakeDeviation(), effects);
    }

    private static int[] numbered(int[] bake) {
      int[] numbers = new int[bake.length];
      for (int i = 1; i < bake.length; i++) {
        numbers[i] = numbers[i - 1] + (bake[i] == bake[i - 1] ? 0 : 1);
      }
      return numbers;
    }

    private Effect effect(
        Groups groups,
        int group,
        Steps steps,
        MixedModel.Estimate together,
        MixedModel.Estimate own) {
      Candidate lead = groups.lead(group).orElseThrow();
      double step = step(lead);
      return new Effect(
          lead.key(),
          lead.kind().name().toLowerCase(Locale.ROOT),
          lead.label(),
          unique(groups.others(group, lead)),
          step,
          lead.kind().unit(),
          lead.kind().isEitherOr(),
          lead.least(),
          lead.most(),
          size(together, step),
          size(own, step),
          steps.of(group),
          steps.companions(group, MOST_COMPANIONS));
    }

    private static List<String> unique(List<String> labels) {
      Set<String> seen = new HashSet<>();
      return labels.stream().filter(seen::add).toList();
    }

    /** A round step within what was tried, for lines that are weighed in small amounts. */
    private static double step(Candidate lead) {
      double step = lead.kind().step();
      if (lead.kind() != Kind.LINE && lead.kind() != Kind.WATERY_LINE) {
        return step;
      }
      double range = lead.most() - lead.least();
      for (double round : new double[] {10, 5, 2, 1, 0.5, 0.2, 0.1}) {
        step = round;
        if (round <= range) {
          break;
        }
      }
      return step;
    }

    private static Effect.Size size(MixedModel.Estimate estimate, double step) {
      return new Effect.Size(
          estimate.mean() * step,
          estimate.low() * step,
          estimate.high() * step,
          estimate.sureOfSign());
    }
  }
}
