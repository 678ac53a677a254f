package io.ovenmark.change;

import static io.ovenmark.change.Texts.capital;
import static io.ovenmark.change.Texts.counted;
import static io.ovenmark.change.Texts.listed;
import static io.ovenmark.change.Texts.quoted;
import static io.ovenmark.change.Texts.shown;

import io.ovenmark.formula.BakeSetting;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Prints each change as one short sentence on one line, with real minus signs and arrows: {@code
 * Water 180 g → 202 g (+22 g).} Texts of people are shortened and stand on one line, but are not
 * escaped for HTML or a terminal; that is for whoever shows the sentence.
 */
public final class ChangeSentences implements ChangeVisitor<String> {
  private final Function<String, String> lineName;
  private final Function<String, String> foodName;
  private final ShownUnits units;

  /**
   * A printer of amounts and temperatures as they were written.
   *
   * @param lineName gives the display name for a line id, be it of the earlier or the later formula
   * @param foodName gives the display name for the slug of a food, asked when a line keeps its id
   *     and changes its food
   */
  public ChangeSentences(Function<String, String> lineName, Function<String, String> foodName) {
    this(lineName, foodName, ShownUnits.AS_WRITTEN);
  }

  /**
   * A printer.
   *
   * @param lineName gives the display name for a line id, be it of the earlier or the later formula
   * @param foodName gives the display name for the slug of a food, asked when a line keeps its id
   *     and changes its food
   * @param units how masses and temperatures are shown; where a change is one of writing alone,
   *     they stand as written
   */
  public ChangeSentences(
      Function<String, String> lineName, Function<String, String> foodName, ShownUnits units) {
    this.lineName = lineName;
    this.foodName = foodName;
    this.units = units;
  }

  /**
   * A printer that knows no names and reads ids and slugs as words: {@code lupin flour}.
   *
   * @return the printer
   */
  public static ChangeSentences plain() {
    return new ChangeSentences(Texts::words, Texts::words);
  }

  /**
   * Prints one change.
   *
   * @param change the change
   * @return a sentence with a full stop
   */
  public String of(Change change) {
    return change.accept(this);
  }

  /**
   * Prints changes in the order given.
   *
   * @param changes the changes
   * @return a sentence for each
   */
  public List<String> of(List<Change> changes) {
    return changes.stream().map(this::of).toList();
  }

  @Override
  public String nameChanged(Change.NameChanged change) {
    return "Renamed from " + quoted(change.from()) + " to " + quoted(change.to()) + ".";
  }

  @Override
  public String descriptionChanged(Change.DescriptionChanged change) {
    return "Description " + become(change.from(), change.to()) + ".";
  }

  @Override
  public String goalChanged(Change.GoalChanged change) {
    return "Goal " + fromTo(change.from(), change.to(), "") + ".";
  }

  @Override
  public String referenceChanged(Change.ReferenceChanged change) {
    return "Reference formula " + fromTo(change.from(), change.to(), "") + ".";
  }

  @Override
  public String lineAdded(Change.LineAdded change) {
    return "Added "
        + line(change.line().id())
        + ", "
        + amount(change.line().amount())
        + (change.line().flour() ? ", counting as flour." : ".");
  }

  @Override
  public String lineRemoved(Change.LineRemoved change) {
    return "Removed "
        + line(change.line().id())
        + ", "
        + amount(change.line().amount())
        + ".";
  }

  @Override
  public String foodReplaced(Change.FoodReplaced change) {
    Amount from = change.from().amount();
    Amount to = change.to().amount();
    return "Replaced "
        + shown(foodName.apply(change.from().food()))
        + " with "
        + shown(foodName.apply(change.to().food()))
        + ", "
        + (from.writtenAs(to)
            ? amount(to)
            : amount(from) + " → " + amount(to))
        + ".";
  }

  @Override
  public String amountChanged(Change.AmountChanged change) {
    return capital(line(change.lineId()))
        + " "
        + amount(change.from())
        + " → "
        + amount(change.to())
        + difference(change.from(), change.to())
        + ".";
  }

  @Override
  public String amountRewritten(Change.AmountRewritten change) {
    return capital(line(change.lineId()))
        + " is written "
        + shown(change.to().toString())
        + " instead of "
        + shown(change.from().toString())
        + ", the same amount.";
  }

  @Override
  public String flourMarkChanged(Change.FlourMarkChanged change) {
    return capital(line(change.lineId()))
        + (change.flour() ? " now counts as flour." : " no longer counts as flour.");
  }

  @Override
  public String lineNoteChanged(Change.LineNoteChanged change) {
    return capital(line(change.lineId()))
        + ": note "
        + textFromTo(change.from(), change.to())
        + ".";
  }

  @Override
  public String linesReordered(Change.LinesReordered change) {
    return moved(change.moved(), change.to(), this::line);
  }

  @Override
  public String methodChanged(Change.MethodChanged change) {
    if (change.from().isEmpty()) {
      return "Method added, " + counted(change.to().size(), "step", "steps") + ".";
    }
    if (change.to().isEmpty()) {
      return "Method removed, " + counted(change.from().size(), "step", "steps") + ".";
    }
    int added = 0;
    int removed = 0;
    List<Integer> reworded = new ArrayList<>();
    for (StepDiff step : MethodText.diff(change.from(), change.to())) {
      if (step instanceof StepDiff.Added) {
        added++;
      } else if (step instanceof StepDiff.Removed) {
        removed++;
      } else if (step instanceof StepDiff.Changed reword) {
        reworded.add(reword.toNumber());
      }
    }
    List<String> parts = new ArrayList<>();
    if (reworded.size() == 1) {
      parts.add("step " + reworded.get(0) + " reworded");
    } else if (!reworded.isEmpty()) {
      parts.add(reworded.size() + " steps reworded");
    }
    if (added > 0) {
      parts.add(counted(added, "step", "steps") + " added");
    }
    if (removed > 0) {
      parts.add(counted(removed, "step", "steps") + " removed");
    }
    return "Method: " + listed(parts) + ".";
  }

  @Override
  public String bakeSettingAdded(Change.BakeSettingAdded change) {
    return "Added oven stage " + stage(change.setting()) + ".";
  }

  @Override
  public String bakeSettingRemoved(Change.BakeSettingRemoved change) {
    return "Removed oven stage " + stage(change.setting()) + ".";
  }

  @Override
  public String bakeSettingChanged(Change.BakeSettingChanged change) {
    String what =
        switch (change.field()) {
          case TEMPERATURE -> "Oven temperature";
          case MINUTES -> "Oven time";
          case RACK -> "Rack";
          case STEAM -> "Steam";
          case VESSEL -> "Vessel";
          case NOTE -> "Oven note";
        };
    String values =
        switch (change.field()) {
          case TEMPERATURE -> temperatures(change.from(), change.to());
          case MINUTES -> fromTo(change.from(), change.to(), " min");
          default -> textFromTo(change.from(), change.to());
        };
    return what + ofStage(change.settingId()) + " " + values + ".";
  }

  @Override
  public String temperatureRewritten(Change.TemperatureRewritten change) {
    return "Oven temperature"
        + ofStage(change.settingId())
        + " is written "
        + change.to()
        + " instead of "
        + change.from()
        + ", the same heat.";
  }

  @Override
  public String bakeSettingsReordered(Change.BakeSettingsReordered change) {
    return moved(change.moved(), change.to(), id -> "oven stage " + id);
  }

  @Override
  public String yieldChanged(Change.YieldChanged change) {
    return switch (change.field()) {
      case PIECES -> "Pieces " + fromTo(change.from(), change.to(), "") + ".";
      case DOUGH_PER_PIECE -> "Dough a piece " + doughPerPiece(change) + ".";
      case HANDLING_LOSS -> "Loss on handling " + fromTo(change.from(), change.to(), " %") + ".";
    };
  }

  @Override
  public String storageChanged(Change.StorageChanged change) {
    return "Storage " + become(change.from(), change.to()) + ".";
  }

  @Override
  public String extraChanged(Change.ExtraChanged change) {
    String where = change.where();
    String owner = "";
    if (where.startsWith("lines.")) {
      owner = " of " + line(where.substring("lines.".length()));
    } else if (where.startsWith("bake.")) {
      owner = " of oven stage " + where.substring("bake.".length());
    }
    return "Other field "
        + quoted(change.name())
        + owner
        + " "
        + fromTo(change.from(), change.to(), "")
        + ".";
  }

  private String doughPerPiece(Change.YieldChanged change) {
    return fromTo(change.from().map(units::grams), change.to().map(units::grams), "");
  }

  private String amount(Amount amount) {
    return shown(units.amount(amount));
  }

  private String line(String id) {
    return shown(lineName.apply(id));
  }

  private static String moved(
      List<String> moved, List<String> order, Function<String, String> name) {
    if (moved.size() > 1) {
      return "Moved " + listed(moved.stream().map(name).toList()) + ".";
    }
    int place = order.indexOf(moved.get(0));
    return "Moved "
        + name.apply(moved.get(0))
        + (place == 0 ? " to the top." : " after " + name.apply(order.get(place - 1)) + ".");
  }

  private String difference(Amount from, Amount to) {
    if (!from.isRead() || !to.isRead()) {
      return "";
    }
    if (from.measure().equals(to.measure()) && units.keeps(to)) {
      String sum = Texts.signed(to.number().subtract(from.number()));
      return " (" + sum + " " + shown(to.measure()) + ")";
    }
    if (from.grams().isPresent() && to.grams().isPresent()) {
      BigDecimal grams = to.grams().get().subtract(from.grams().get());
      return units.massUnit().equals("g")
          ? " (" + Texts.signed(grams) + " g)"
          : " (" + units.massDifference(Quantity.known(grams.doubleValue())) + ")";
    }
    return "";
  }

  private String temperatures(Optional<String> before, Optional<String> after) {
    Optional<String> from = before.map(units::heat);
    Optional<String> to = after.map(units::heat);
    if (from.isPresent() && to.isPresent()) {
      String scale = to.get().substring(to.get().lastIndexOf(' '));
      if (from.get().endsWith(scale)) {
        String number = from.get().substring(0, from.get().length() - scale.length());
        return number + " → " + to.get();
      }
    }
    return fromTo(from, to, "");
  }

  private static String fromTo(Optional<String> from, Optional<String> to, String unit) {
    if (from.isEmpty()) {
      return "set to " + shown(to.orElse("")) + unit;
    }
    return to.isEmpty()
        ? shown(from.get()) + unit + " no longer stated"
        : shown(from.get()) + " → " + shown(to.get()) + unit;
  }

  private static String textFromTo(Optional<String> from, Optional<String> to) {
    if (from.isEmpty()) {
      return "added: " + quoted(to.orElse(""));
    }
    return to.isEmpty()
        ? quoted(from.get()) + " removed"
        : quoted(from.get()) + " → " + quoted(to.get());
  }

  private static String become(Optional<String> from, Optional<String> to) {
    return from.isEmpty() ? "added" : to.isEmpty() ? "removed" : "changed";
  }

  private static String ofStage(String id) {
    return id.equals("bake") ? "" : " of stage " + id;
  }

  private String stage(BakeSetting setting) {
    List<String> parts = new ArrayList<>();
    setting.temperature().ifPresent(heat -> parts.add(units.heat(heat)));
    Texts.plain(setting.minutes()).ifPresent(minutes -> parts.add(minutes + " min"));
    setting.rack().ifPresent(text -> parts.add("rack " + quoted(text)));
    setting.steam().ifPresent(text -> parts.add("steam " + quoted(text)));
    setting.vessel().ifPresent(text -> parts.add("vessel " + quoted(text)));
    setting.note().ifPresent(text -> parts.add("note " + quoted(text)));
    return setting.id() + (parts.isEmpty() ? "" : ": " + String.join(", ", parts));
  }
}
