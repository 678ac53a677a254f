package io.ovenmark.compare;

import io.ovenmark.change.BakeField;
import io.ovenmark.change.Change;
import io.ovenmark.change.YieldField;
import io.ovenmark.formula.BakeSetting;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.worksheet.Policy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Sorts the changes of a formula that concern single fields into yield, oven and writing. */
final class FieldChanges {
  private final List<FieldChange> yieldChanges = new ArrayList<>();
  private final List<FieldChange> process = new ArrayList<>();
  private final List<FieldChange> texts = new ArrayList<>();

  private final ShownUnits units;

  FieldChanges(List<Change> changes, ShownUnits units) {
    this.units = units;
    changes.forEach(this::sort);
  }

  List<FieldChange> yieldChanges() {
    return yieldChanges;
  }

  List<FieldChange> process() {
    return process;
  }

  List<FieldChange> texts() {
    return texts;
  }

  /** Rules that differ: for energy, for net carbohydrate. */
  static List<FieldChange> rules(Policy from, Policy to) {
    List<FieldChange> rules = new ArrayList<>();
    if (from.energy() != to.energy()) {
      rules.add(
          new FieldChange(
              "energy",
              "energy by",
              Optional.of(Attribution.rule(from.energy())),
              Optional.of(Attribution.rule(to.energy())),
              true));
    }
    if (!from.netCarbohydrate().equals(to.netCarbohydrate())) {
      rules.add(
          new FieldChange(
              "net_carbohydrate",
              "net carbohydrate as",
              Optional.of(from.netCarbohydrate().inWords()),
              Optional.of(to.netCarbohydrate().inWords()),
              true));
    }
    return List.copyOf(rules);
  }

  private void sort(Change change) {
    if (change instanceof Change.YieldChanged c) {
      yieldChanged(c);
    } else if (change instanceof Change.BakeSettingChanged c) {
      process.add(
          new FieldChange(
              "bake." + c.settingId() + "." + c.field().key(),
              label(c.field(), c.settingId()),
              c.from().map(text -> withUnit(c.field(), text, units)),
              c.to().map(text -> withUnit(c.field(), text, units)),
              true));
    } else if (change instanceof Change.BakeSettingAdded c) {
      stage(c.setting(), true);
    } else if (change instanceof Change.BakeSettingRemoved c) {
      stage(c.setting(), false);
    } else if (change instanceof Change.TemperatureRewritten c) {
      process.add(
          new FieldChange(
              "bake." + c.settingId() + ".temperature",
              label(BakeField.TEMPERATURE, c.settingId()),
              Optional.of(c.from().toString()),
              Optional.of(c.to().toString()),
              false));
    } else if (change instanceof Change.BakeSettingsReordered c) {
      process.add(
          new FieldChange(
              "bake",
              "order of oven stages",
              Optional.of(String.join(", ", c.from())),
              Optional.of(String.join(", ", c.to())),
              true));
    } else {
      text(change);
    }
  }

  private void text(Change change) {
    if (change instanceof Change.NameChanged c) {
      text("name", "name", Optional.of(c.from()), Optional.of(c.to()), false);
    } else if (change instanceof Change.DescriptionChanged c) {
      text("description", "description", c.from(), c.to(), false);
    } else if (change instanceof Change.StorageChanged c) {
      text("storage", "storage", c.from(), c.to(), false);
    } else if (change instanceof Change.GoalChanged c) {
      text("goal", "goal", c.from(), c.to(), false);
    } else if (change instanceof Change.ReferenceChanged c) {
      text("reference", "reference formula", c.from(), c.to(), false);
    } else if (change instanceof Change.LineNoteChanged c) {
      String field = "lines." + c.lineId() + ".note";
      text(field, "note on " + c.lineId(), c.from(), c.to(), true);
    } else if (change instanceof Change.ExtraChanged c) {
      String where = c.where().isEmpty() ? "" : c.where() + ".";
      text(where + c.name(), "field " + c.name(), c.from(), c.to(), false);
    }
  }

  private void text(
      String field, String label, Optional<String> from, Optional<String> to, boolean matters) {
    texts.add(new FieldChange(field, label, from, to, matters));
  }

  private void yieldChanged(Change.YieldChanged c) {
    UnaryOperator<String> shown =
        switch (c.field()) {
          case PIECES -> text -> text;
          case DOUGH_PER_PIECE -> units::grams;
          case HANDLING_LOSS -> text -> text + " %";
        };
    String label =
        switch (c.field()) {
          case PIECES -> "pieces";
          case DOUGH_PER_PIECE -> "dough a piece";
          case HANDLING_LOSS -> "handling loss";
        };
    boolean sameLoss =
        c.field() == YieldField.HANDLING_LOSS
            && c.from().orElse("0").equals("0")
            && c.to().orElse("0").equals("0");
    yieldChanges.add(
        new FieldChange(
            "yield." + c.field().key(),
            label,
            c.from().map(shown),
            c.to().map(shown),
            !sameLoss));
  }

  private void stage(BakeSetting setting, boolean added) {
    boolean stated = false;
    for (BakeField field : BakeField.values()) {
      Optional<String> text = field.text(setting).map(value -> withUnit(field, value, units));
      if (text.isPresent()) {
        stated = true;
        process.add(
            new FieldChange(
                "bake." + setting.id() + "." + field.key(),
                label(field, setting.id()),
                added ? Optional.empty() : text,
                added ? text : Optional.empty(),
                true));
      }
    }
    if (!stated) {
      Optional<String> text = Optional.of("of which nothing is stated");
      process.add(
          new FieldChange(
              "bake." + setting.id(),
              "oven stage " + setting.id(),
              added ? Optional.empty() : text,
              added ? text : Optional.empty(),
              true));
    }
  }

  static String label(BakeField field, String stage) {
    String label =
        switch (field) {
          case TEMPERATURE -> "oven temperature";
          case MINUTES -> "oven time";
          case RACK -> "rack";
          case STEAM -> "steam";
          case VESSEL -> "vessel";
          case NOTE -> "oven note";
        };
    return stage.equals("bake") ? label : label + " of stage " + stage;
  }

  static String withUnit(BakeField field, String text, ShownUnits units) {
    return switch (field) {
      case MINUTES -> text + " min";
      case TEMPERATURE -> units.heat(text);
      default -> text;
    };
  }
}
