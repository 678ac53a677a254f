package io.ovenmark.publish.label;

import io.ovenmark.worksheet.EnergyRule;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What somebody chose for a label.
 *
 * @param lossPercent an allowance for the loss on baking, from 0 to below 100; empty for what was
 *     weighed
 * @param energy the rule for energy; empty for each region's own
 * @param reference the amount by which United States claims are judged; empty when none was chosen
 */
public record LabelTerms(
    OptionalDouble lossPercent,
    Optional<EnergyRule> energy,
    Optional<ReferenceAmount> reference) {
  /** Nothing chosen. */
  public static final LabelTerms USUAL =
      new LabelTerms(OptionalDouble.empty(), Optional.empty(), Optional.empty());

  /** Checks the loss. */
  public LabelTerms {
    double loss = lossPercent.orElse(0);
    if (!(loss >= 0 && loss < 100)) {
      throw new IllegalArgumentException(
          "A loss on baking lies from 0 % to below 100 %.\n"
              + "Give the share of the dough that leaves in the oven, such as \"12 %\".");
    }
  }

  /**
   * The same with an allowance for the loss.
   *
   * @param percent the loss in percent of the dough
   * @return the terms
   */
  public LabelTerms withLoss(double percent) {
    return new LabelTerms(OptionalDouble.of(percent), energy, reference);
  }

  /**
   * The same with a rule for energy.
   *
   * @param rule the rule
   * @return the terms
   */
  public LabelTerms withEnergy(EnergyRule rule) {
    return new LabelTerms(lossPercent, Optional.of(rule), reference);
  }

  /**
   * The same with a reference amount.
   *
   * @param amount the amount
   * @return the terms
   */
  public LabelTerms withReference(ReferenceAmount amount) {
    return new LabelTerms(lossPercent, energy, Optional.of(amount));
  }
}
