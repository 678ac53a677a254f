package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.goal.Goal;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Revision;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Shows how figures went along a line of history: of the dough, of a piece, of the bakes, of the
 * share of a food. A figure that is not known in a revision stays unknown there.
 *
 * <pre>{@code
 * new ShowTrends(desk)
 *     .call(Address.parse("seeded-lupin-bun"), List.of("liquid_ratio"), from, to);
 * }</pre>
 */
public final class ShowTrends {
  private final Desk desk;

  /** A revision with what was worked out for it; without one for a file edited by hand. */
  private record Drawn(
      Address address,
      Optional<Revision> revision,
      List<Bake> bakes,
      Optional<Worksheet> worksheet) {}

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ShowTrends(Desk desk) {
    this.desk = desk;
  }

  /**
   * Works the figures out.
   *
   * @param line a formula, for its main line, or a variant, for its line from the beginning
   * @param keys which figures, such as {@code liquid_ratio}, {@code net_carbohydrate_g.per_piece},
   *     {@code mean_liking}, {@code share.water}
   * @param from the revision before, which need not be on the line
   * @param to the revision after, likewise
   * @return the figures of each revision
   * @throws io.ovenmark.notebook.Refusal when there is no such line or figure
   */
  public TrendViews.Trends call(
      Address line, List<String> keys, Optional<Address> from, Optional<Address> to) {
    List<Bake> bakes = desk.notebook().bakes(line.formula());
    List<Revision> revisions = desk.notebook().revisions(line);
    int fork = line.variant().isPresent() ? desk.notebook().forkNumber(line) : 0;
    List<Drawn> drawn = new ArrayList<>();
    for (Revision revision : revisions) {
      drawn.add(drawn(address(line, fork, revision), revision, bakes));
    }
    List<Worksheet> worksheets = drawn.stream().flatMap(d -> d.worksheet().stream()).toList();
    List<TrendFigure> all = TrendFigure.all(worksheets);
    List<TrendFigure> figures = keys.stream().map(key -> TrendFigure.named(key, all)).toList();
    Address newest = Address.latest(line.formula(), line.variant());
    Optional<Goal> goal =
        desk.attempt(newest, revisions.get(revisions.size() - 1), bakes)
            .sheet()
            .flatMap(Desk.Sheet::goal)
            .map(GoalCheck::goal);
    return new TrendViews.Trends(
        line.formula(),
        line.variant().orElse(null),
        figures.stream().map(figure -> view(figure, goal)).toList(),
        drawn.stream().map(each -> point(each, figures)).toList(),
        from.map(address -> point(elsewhere(address), figures)).orElse(null),
        to.map(address -> point(elsewhere(address), figures)).orElse(null),
        all.stream()
            .map(figure -> new TrendViews.Choice(figure.key(), figure.label(), figure.group()))
            .toList());
  }

  /** Before its fork the line of a variant is the main line. */
  private static Address address(Address line, int fork, Revision revision) {
    return revision.number() > fork
        ? revision.address()
        : Address.latest(line.formula(), Optional.empty()).at(revision.number());
  }

  private Drawn drawn(Address address, Revision revision, List<Bake> bakes) {
    return new Drawn(
        address,
        Optional.of(revision),
        Desk.bakesOf(revision.blob().hex(), bakes),
        desk.attempt(address, revision, bakes).sheet().map(Desk.Sheet::worksheet));
  }

  /** A revision of any line or formula, or the file edited by hand. */
  private Drawn elsewhere(Address address) {
    List<Bake> all = desk.notebook().bakes(address.formula());
    if (address.point().kind() != Address.Point.Kind.EDITED) {
      return drawn(address, desk.notebook().revision(address), all);
    }
    ShowFormula.Edited edited = ShowFormula.read(desk, address);
    List<Bake> bakes = Desk.bakesOf(edited.blob(), all);
    Worksheet sheet = desk.draft(edited.formula(), edited.line(), bakes).worksheet();
    return new Drawn(address, Optional.empty(), bakes, Optional.of(sheet));
  }

  private TrendViews.TrendFigureView view(TrendFigure figure, Optional<Goal> goal) {
    ShownUnits units = desk.units();
    boolean weighed =
        figure instanceof TrendFigure.Worked worked && worked.figure().isWeighed();
    return new TrendViews.TrendFigureView(
        figure.key(),
        figure.label(),
        figure.unit(units),
        figure.isMeasured(),
        goal.flatMap(figure::limit)
            .map(
                limit ->
                    new Views.LimitView(
                        bound(limit.atLeast(), weighed), bound(limit.atMost(), weighed)))
            .orElse(null));
  }

  private Double bound(OptionalDouble bound, boolean weighed) {
    if (bound.isEmpty()) {
      return null;
    }
    Quantity quantity = Quantity.known(bound.getAsDouble());
    return (weighed ? desk.units().inMassUnit(quantity) : quantity).low();
  }

  private TrendViews.Point point(Drawn drawn, List<TrendFigure> figures) {
    return new TrendViews.Point(
        drawn.address().toString(),
        drawn.revision().map(Revision::number).orElse(null),
        drawn.address().variant().orElse(null),
        drawn.revision().map(revision -> revision.commit().hex()).orElse(null),
        drawn.revision().map(revision -> Json.time(revision.time())).orElse(null),
        drawn.bakes().size(),
        figures.stream()
            .map(figure -> figure.value(drawn.worksheet(), drawn.bakes(), desk.units()))
            .toList());
  }
}
