package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.effect.Effect;
import io.ovenmark.effect.EffectSentences;
import io.ovenmark.effect.History;
import io.ovenmark.effect.Mattered;
import io.ovenmark.effect.Outcome;
import io.ovenmark.effect.OutcomeEffects;
import io.ovenmark.formula.Formula;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Shows what mattered over the bakes of a line of history: which changes went together with which
 * outcomes. Only revisions that were baked are worked out.
 *
 * <pre>{@code
 * new ShowMattered(desk).call(Address.parse("seeded-lupin-bun"), false, Optional.empty());
 * }</pre>
 */
public final class ShowMattered {
  private static final int PERCENT = 90;
  private static final int MOST_STEPS = 12;

  private final Desk desk;
  private final EffectSentences sentences;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ShowMattered(Desk desk) {
    this.desk = desk;
    this.sentences = new EffectSentences(desk.units());
  }

  /**
   * Looks through the history.
   *
   * @param address a formula or variant; a revision stands for its whole line of history
   * @param withVariants whether the bakes of all other lines are looked at too
   * @param outcome the key, or the label, of the one outcome that is wanted; empty for all
   * @return the outcomes
   * @throws Refusal when there is no such line, revision or outcome
   */
  public MatteredViews.MatteredSheet call(
      Address address, boolean withVariants, Optional<String> outcome) {
    Address line = line(address);
    Map<String, Place> places = places(line, withVariants);
    List<Bake> bakes = new ArrayList<>(desk.notebook().bakes(line.formula()));
    bakes.sort(
        Comparator.comparing((Bake bake) -> bake.time().toInstant()).thenComparing(Bake::id));
    List<History.Baked> baked = new ArrayList<>();
    int unread = 0;
    for (Bake bake : bakes) {
      Place place =
          places.getOrDefault(key(bake.blob(), bake.address()), places.get(bake.blob()));
      if (place == null) {
        boolean elsewhere = !withVariants && isOfOtherLine(line, bake);
        unread += elsewhere ? 0 : 1;
        continue;
      }
      var sheet = desk.attempt(place.address(), place.revision(), bakes).sheet();
      if (sheet.isEmpty()) {
        unread++;
      } else {
        baked.add(
            new History.Baked(
                bake, place.address().toString(), sheet.get().worksheet(), place.line()));
      }
    }
    return view(line, withVariants, unread, Mattered.of(new History(baked)), outcome);
  }

  /** A revision and where it stands; line is empty for the main line. */
  private record Place(Address address, Revision revision, String line) {}

  private Address line(Address address) {
    if (address.point().kind() == Address.Point.Kind.EDITED) {
      return desk.notebook().lineOnDisk(address.formula())
          .orElseGet(() -> Address.latest(address.formula(), Optional.empty()));
    }
    return WriteParts.line(desk.notebook().revision(address).address());
  }

  private static String key(String blob, String address) {
    return blob + " " + address;
  }

  /** Revisions by the id of their content and address, and by the id alone the first of it. */
  private Map<String, Place> places(Address line, boolean withVariants) {
    Map<String, Place> places = new HashMap<>();
    List<Address> lines = new ArrayList<>(List.of(line));
    if (withVariants) {
      desk.notebook().lines(line.formula()).stream()
          .filter(other -> !other.equals(line))
          .forEach(lines::add);
    }
    for (Address each : lines) {
      if (desk.notebook().nextNumber(each) == 1) {
        continue;
      }
      int fork = each.variant().isPresent() ? desk.notebook().forkNumber(each) : 0;
      for (Revision revision : desk.notebook().revisions(each)) {
        boolean own = revision.number() > fork;
        Address at =
            own
                ? revision.address()
                : Address.latest(line.formula(), Optional.empty()).at(revision.number());
        Place place = new Place(at, revision, own ? each.variant().orElse("") : "");
        places.putIfAbsent(revision.blob().hex(), place);
        places.putIfAbsent(key(revision.blob().hex(), at.toString()), place);
      }
    }
    return places;
  }

  private boolean isOfOtherLine(Address line, Bake bake) {
    try {
      Address baked = Address.parse(bake.address());
      return !baked.variant().equals(line.variant());
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  private MatteredViews.MatteredSheet view(
      Address line,
      boolean withVariants,
      int unread,
      Mattered mattered,
      Optional<String> wanted) {
    Revision newest = desk.notebook().newest(line);
    List<OutcomeEffects> outcomes =
        wanted.map(name -> List.of(named(name, mattered))).orElse(mattered.outcomes());
    return new MatteredViews.MatteredSheet(
        line.formula(),
        line.variant().orElse(null),
        desk.readable(newest).map(Formula::name).orElse(line.formula()),
        newest.address().toString(),
        withVariants,
        desk.notebook().variants(line.formula()),
        mattered.bakes(),
        mattered.pieces(),
        unread,
        sentences.summary(mattered),
        outcomes.stream().map(this::outcome).toList(),
        new MatteredViews.ModelView(
            EffectSentences.model(), EffectSentences.why(), EffectSentences.cannot(), PERCENT));
  }

  private static OutcomeEffects named(String name, Mattered mattered) {
    return mattered.outcomes().stream()
        .filter(
            each -> each.outcome().key().equals(name) || each.outcome().label().equals(name)
                || each.outcome().brief().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new Refusal(
                    Refusal.Reason.INVALID,
                    "outcome",
                    "There is no outcome \"" + name + "\" in these bakes.",
                    "Ask for one of: "
                        + String.join(
                            ", ",
                            mattered.outcomes().stream()
                                .map(each -> each.outcome().brief())
                                .toList())
                        + "."));
  }

  private MatteredViews.OutcomeView outcome(OutcomeEffects effects) {
    Outcome outcome = effects.outcome();
    boolean missing = effects.missing().isPresent();
    return new MatteredViews.OutcomeView(
        outcome.key(),
        outcome.label(),
        outcome.unit(),
        outcome.kind() == Outcome.Kind.FINDING,
        sentences.headline(effects),
        missing,
        effects.bakes(),
        effects.pieces(),
        effects.unknown(),
        effects.set(),
        Double.isNaN(effects.mean()) ? null : effects.mean(),
        missing ? null : effects.pieceDeviation(),
        missing ? null : effects.bakeDeviation(),
        missing ? null : sentences.multiplicity(effects),
        effects.leftOut(),
        effects.effects().stream().map(effect -> effect(outcome, effect)).toList());
  }

  private MatteredViews.EffectView effect(Outcome outcome, Effect effect) {
    return new MatteredViews.EffectView(
        effect.key(),
        effect.kind(),
        effect.label(),
        EffectSentences.change(effect),
        effect.with(),
        effect.perAmount(),
        effect.perUnit(),
        sentences.per(effect),
        effect.eitherOr() ? null : effect.least(),
        effect.eitherOr() ? null : effect.most(),
        sentences.tried(effect),
        sentences.sentence(outcome, effect),
        effect.standing().name().toLowerCase(Locale.ROOT),
        size(outcome, effect.together()),
        size(outcome, effect.byItself()),
        effect.steps().size(),
        effect.alone(),
        EffectSentences.alone(effect),
        newestFirst(effect.steps()).stream()
            .limit(MOST_STEPS)
            .map(
                step ->
                    new MatteredViews.StepView(
                        step.fromAddress(),
                        step.toAddress(),
                        step.fromBake(),
                        step.toBake(),
                        step.oneTray(),
                        step.alone()))
            .toList(),
        effect.companions().stream()
            .map(each -> new MatteredViews.CompanionView(each.label(), each.times()))
            .toList());
  }

  private static List<Effect.Step> newestFirst(List<Effect.Step> steps) {
    List<Effect.Step> sorted = new ArrayList<>(steps);
    Collections.reverse(sorted);
    sorted.sort(Comparator.comparing(step -> !step.alone()));
    return sorted;
  }

  private MatteredViews.SizeView size(Outcome outcome, Effect.Size size) {
    return new MatteredViews.SizeView(
        size.value(),
        size.low(),
        size.high(),
        size.sureOfSign(),
        sentences.signed(outcome, size.value()),
        sentences.number(outcome, size.low()),
        sentences.number(outcome, size.high()));
  }
}
