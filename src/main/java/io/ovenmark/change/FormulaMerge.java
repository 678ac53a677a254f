package io.ovenmark.change;

import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Temperature;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Brings two formulas that come from the same one together by meaning: line by line and stage by
 * stage through their ids, and field by field within them.
 *
 * <pre>{@code
 * Merged merged = FormulaMerge.merge(base, ours, theirs);
 * if (merged instanceof Merged.Conflicting open) {
 *   merged = FormulaMerge.resolve(open, Map.of("lines.water.amount", Choice.THEIRS));
 * }
 * }</pre>
 *
 * <p>The rules:
 *
 * <ul>
 *   <li>What one side changed and the other left alone is taken. The same change on both sides
 *       counts once and as settled; an amount is the same only in the same characters.
 *   <li>The same line or stage added on both sides stands once when both are the same, and is a
 *       conflict otherwise. One that was removed here and changed there is a conflict; one that was
 *       removed and left alone is gone.
 *   <li>Order is never a conflict: the side that put common lines in another order is followed, and
 *       ours when both did, which a note tells unless they agree. What only the other side has
 *       comes after its nearest earlier neighbour.
 *   <li>A method is merged with whole steps as units.
 *   <li>Pieces and dough mass a piece are one field, for a yield states one of them only.
 *   <li>At a conflict the draft keeps ours, in every case.
 * </ul>
 */
public final class FormulaMerge {
  private final Three<Formula> sides;
  private final Pick pick;
  private final List<String> notes = new ArrayList<>();

  private FormulaMerge(Three<Formula> sides, Map<String, Choice> chosen) {
    this.sides = sides;
    this.pick = new Pick(chosen);
  }

  /**
   * Merges.
   *
   * @param base the formula that both sides came from
   * @param ours the first side
   * @param theirs the second side
   * @return settled, or a draft with conflicts
   */
  public static Merged merge(Formula base, Formula ours, Formula theirs) {
    return run(new Merged.Sides(base, ours, theirs, Map.of()));
  }

  /**
   * Settles conflicts by choice. Choices may come one after the other: what is returned remembers
   * those made.
   *
   * @param open what a merge, or an earlier call of this, left open
   * @param choices by conflict path
   * @return settled when nothing is open any more, else what remains, whose {@link
   *     Merged.Conflicting#sentence} says so
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy, when a path
   *     names no open conflict
   */
  public static Merged resolve(Merged.Conflicting open, Map<String, Choice> choices) {
    Set<String> known = new LinkedHashSet<>();
    open.conflicts().forEach(conflict -> known.add(conflict.path()));
    Map<String, Choice> chosen = new HashMap<>(open.sides().chosen());
    for (String path : new TreeSet<>(choices.keySet())) {
      if (!known.contains(path)) {
        throw new IllegalArgumentException(
            "There is no open conflict at " + Texts.quoted(path) + ".\n"
                + "Choose for " + Texts.listed(known.stream().map(Texts::shown).toList()) + ".");
      }
      chosen.put(path, choices.get(path));
    }
    Merged.Sides sides = open.sides();
    return run(new Merged.Sides(sides.base(), sides.ours(), sides.theirs(), chosen));
  }

  private static Merged run(Merged.Sides sides) {
    FormulaMerge merge =
        new FormulaMerge(
            new Three<>(sides.base(), sides.ours(), sides.theirs()), sides.chosen());
    Formula formula = merge.formula();
    List<Conflict> conflicts = merge.pick.open();
    return conflicts.isEmpty()
        ? new Merged.Settled(formula, merge.notes)
        : new Merged.Conflicting(formula, conflicts, merge.notes, sides);
  }

  private Formula formula() {
    return new Formula(
        pick.value("name", "the name", sides.map(Formula::name), Optional::of),
        pick.text("description", "the description", sides.map(Formula::description)),
        pick.text("goal", "the goal", sides.map(Formula::goal)),
        pick.text("reference", "the reference formula", sides.map(Formula::reference)),
        items("the lines", sides.map(Formula::lines), Line::id, this::line),
        StepMerge.merge(sides.map(Formula::method), pick),
        items("the oven stages", sides.map(Formula::bake), BakeSetting::id, this::setting),
        batch(sides.map(Formula::yield)),
        pick.text("storage", "the storage", sides.map(Formula::storage)),
        pick.extras("", "", sides.map(Formula::extras)));
  }

  private interface ItemMerge<T> {
    Optional<T> merge(String id, Three<Optional<T>> item);
  }

  private <T> List<T> items(
      String what, Three<List<T>> lists, Function<T, String> id, ItemMerge<T> one) {
    Three<Map<String, T>> byId =
        lists.map(
            list -> {
              Map<String, T> items = new HashMap<>();
              list.forEach(item -> items.put(id.apply(item), item));
              return items;
            });
    Three<List<String>> ids = lists.map(list -> list.stream().map(id).toList());
    Set<String> all = new LinkedHashSet<>(ids.base());
    // An order that does not depend on which side is ours.
    TreeSet<String> added = new TreeSet<>(ids.ours());
    added.addAll(ids.theirs());
    all.addAll(added);
    Map<String, T> result = new HashMap<>();
    for (String key : all) {
      one.merge(key, byId.map(items -> Optional.ofNullable(items.get(key))))
          .ifPresent(item -> result.put(key, item));
    }
    OrderMerge order = OrderMerge.of(ids, result.keySet());
    if (order.contested()) {
      notes.add("Both sides put " + what + " in another order; the first side's order was kept.");
    }
    return order.ids().stream().map(result::get).toList();
  }

  /** The words of an id; of the food too when the line was made for another one. */
  private static String named(String id, Optional<Line> line) {
    String words = Texts.words(id);
    return line.map(Line::food)
        .filter(food -> !id.startsWith(food))
        .map(food -> Texts.words(food) + " (line " + id + ")")
        .orElse(words);
  }

  private Optional<Line> line(String id, Three<Optional<Line>> item) {
    String path = "lines." + id;
    String name = named(id, item.ours().or(item::base).or(item::theirs));
    if (item.base().isEmpty() || item.ours().isEmpty() || item.theirs().isEmpty()) {
      return pick.value(
          path, "the line " + name, item, Same::line, line -> line.map(FormulaMerge::text));
    }
    Three<Line> lines = item.map(Optional::orElseThrow);
    return Optional.of(
        new Line(
            id,
            pick.value(path + ".food", "the food of " + name, lines.map(Line::food), Optional::of),
            pick.value(
                path + ".amount",
                "the amount of " + name,
                lines.map(Line::amount),
                Amount::writtenAs,
                amount -> Optional.of(amount.toString())),
            pick.value(
                path + ".flour",
                "the flour mark of " + name,
                lines.map(Line::flour),
                flour -> Optional.of(flour.toString())),
            pick.text(path + ".note", "the note of " + name, lines.map(Line::note)),
            pick.extras(path + ".", " of " + name, lines.map(Line::extras))));
  }

  private Optional<BakeSetting> setting(String id, Three<Optional<BakeSetting>> item) {
    String path = "bake." + id;
    String of = " of oven stage " + id;
    if (item.base().isEmpty() || item.ours().isEmpty() || item.theirs().isEmpty()) {
      return pick.value(
          path, "the oven stage " + id, item, setting -> setting.map(FormulaMerge::text));
    }
    Three<BakeSetting> settings = item.map(Optional::orElseThrow);
    return Optional.of(
        new BakeSetting(
            id,
            pick.value(
                path + ".temperature",
                "the temperature" + of,
                settings.map(BakeSetting::temperature),
                heat -> heat.map(Temperature::toString)),
            pick.value(
                path + ".minutes",
                "the time" + of,
                settings.map(BakeSetting::minutes),
                minutes -> Texts.plain(minutes).map(number -> number + " min")),
            pick.text(path + ".rack", "the rack" + of, settings.map(BakeSetting::rack)),
            pick.text(path + ".steam", "the steam" + of, settings.map(BakeSetting::steam)),
            pick.text(path + ".vessel", "the vessel" + of, settings.map(BakeSetting::vessel)),
            pick.text(path + ".note", "the note" + of, settings.map(BakeSetting::note)),
            pick.extras(path + ".", of, settings.map(BakeSetting::extras))));
  }

  private record Portion(Optional<Integer> pieces, OptionalDouble dough) {
    Optional<String> text() {
      return pieces.isPresent()
          ? pieces.map(count -> Texts.counted(count, "piece", "pieces"))
          : Texts.plain(dough).map(grams -> grams + " g of dough a piece");
    }
  }

  private Yield batch(Three<Yield> yields) {
    Portion portion =
        pick.value(
            "yield",
            "the yield",
            yields.map(yield -> new Portion(yield.pieces(), yield.doughPerPieceGrams())),
            Portion::text);
    OptionalDouble loss =
        pick.value(
            "yield.handling_loss_percent",
            "the loss on handling",
            yields.map(Yield::handlingLossPercent),
            percent -> Texts.plain(percent).map(number -> number + " %"));
    return new Yield(portion.pieces(), portion.dough(), loss);
  }

  private static String text(Line line) {
    StringBuilder text = new StringBuilder(line.amount() + " " + line.food());
    if (line.flour()) {
      text.append("; counts as flour");
    }
    line.note().ifPresent(note -> text.append("; note: ").append(note));
    for (String name : Same.extraNames(line.extras())) {
      text.append("; ").append(name).append(": ").append(line.extras().text(name));
    }
    return text.toString();
  }

  private static String text(BakeSetting setting) {
    List<String> parts = new ArrayList<>();
    for (BakeField field : BakeField.values()) {
      field.text(setting).ifPresent(value -> parts.add(field.key() + ": " + value));
    }
    for (String name : Same.extraNames(setting.extras())) {
      parts.add(name + ": " + setting.extras().text(name));
    }
    return parts.isEmpty() ? "nothing stated" : String.join("; ", parts);
  }
}
