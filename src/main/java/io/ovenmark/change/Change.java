package io.ovenmark.change;

import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Line;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Temperature;
import java.util.List;
import java.util.Optional;

/**
 * One difference between an earlier and a later formula, found by the ids of lines and oven stages.
 * Each kind says what may be concluded from it, and each has a sentence in {@link ChangeSentences}.
 * What a change does to figures is not known here.
 */
public sealed interface Change {
  /**
   * Calls the one method of the visitor that is made for this kind.
   *
   * @param <R> what the visitor answers
   * @param visitor not null
   * @return the answer
   */
  <R> R accept(ChangeVisitor<R> visitor);

  /**
   * The formula is called something else; nothing that is weighed or done changed.
   *
   * @param from the name before
   * @param to the name after
   */
  record NameChanged(String from, String to) implements Change {
    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.nameChanged(this);
    }
  }

  /**
   * The describing sentences changed; nothing that is weighed or done did.
   *
   * @param from the description before; empty when there was none
   * @param to the description after; empty when there is none
   */
  record DescriptionChanged(Optional<String> from, Optional<String> to) implements Change {
    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.descriptionChanged(this);
    }
  }

  /**
   * The formula is developed towards another goal; whether it meets it is judged anew.
   *
   * @param from slug of the goal before; empty when there was none
   * @param to slug of the goal after; empty when there is none
   */
  record GoalChanged(Optional<String> from, Optional<String> to) implements Change {
    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.goalChanged(this);
    }
  }

  /**
   * The formula is held against another conventional formula.
   *
   * @param from slug of the reference before; empty when there was none
   * @param to slug of the reference after; empty when there is none
   */
  record ReferenceChanged(Optional<String> from, Optional<String> to) implements Change {
    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.referenceChanged(this);
    }
  }

  /**
   * A line with this id stands only in the later formula. It may still be the same food as a
   * removed line under another id, or stand in a removed line's place: see {@link LinePair}.
   *
   * @param line the whole line
   * @param index where it stands among all lines of the later formula, from 0
   */
  record LineAdded(Line line, int index) implements Change {
    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.lineAdded(this);
    }
  }

  /**
   * A line with this id stands only in the earlier formula.
   *
   * @param line the whole line
   * @param index where it stood among all lines of the earlier formula, from 0
   */
  record LineRemoved(Line line, int index) implements Change {
    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.lineRemoved(this);
    }
  }

  /**
   * The line kept its id and is made of another food. A change of its amount is told here too and
   * not once more as {@link AmountChanged}; flour mark, note and unknown fields have changes of
   * their own.
   *
   * @param lineId the line
   * @param from the line before
   * @param to the line after
   */
  record FoodReplaced(String lineId, Line from, Line to) implements Change {
    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.foodReplaced(this);
    }
  }

  /**
   * Another amount of the same food. When one side is a volume or a household measure it may still
   * weigh the same, which only the food's data can tell.
   *
   * @param lineId the line
   * @param from the amount before
   * @param to the amount after
   */
  record AmountChanged(String lineId, Amount from, Amount to) implements Change {
    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.amountChanged(this);
    }
  }

  /**
   * The same amount in other characters: the same number and measure ({@code ½ tsp}, {@code 0.5
   * tsp}) or, when both are masses, the same mass ({@code 1 kg}, {@code 1000 g}). No figure moves.
   *
   * @param lineId the line
   * @param from the amount before
   * @param to the amount after
   */
  record AmountRewritten(String lineId, Amount from, Amount to) implements Change {
    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.amountRewritten(this);
    }
  }

  /**
   * The line joined or left the base of baker's percentages; what is weighed is the same.
   *
   * @param lineId the line
   * @param flour whether it counts as flour now
   */
  record FlourMarkChanged(String lineId, boolean flour) implements Change {
    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.flourMarkChanged(this);
    }
  }

  /**
   * The note on a line changed. It may hold an instruction such as a temperature, so it can matter.
   *
   * @param lineId the line
   * @param from the note before; empty when there was none
   * @param to the note after; empty when there is none
   */
  record LineNoteChanged(
      String lineId, Optional<String> from, Optional<String> to)
      implements Change {
    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.lineNoteChanged(this);
    }
  }

  /**
   * Lines that are in both formulas stand in another order. What is weighed is the same.
   *
   * @param from ids of the common lines in their order before
   * @param to the same ids in their order after
   * @param moved the fewest of them whose moving explains the new order, in the new order
   */
  record LinesReordered(List<String> from, List<String> to, List<String> moved) implements Change {
    /** Copies the lists. */
    public LinesReordered {
      from = List.copyOf(from);
      to = List.copyOf(to);
      moved = List.copyOf(moved);
    }

    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.linesReordered(this);
    }
  }

  /**
   * At least one step differs. {@link MethodText#diff} tells which words.
   *
   * @param from the steps before
   * @param to the steps after
   */
  record MethodChanged(List<String> from, List<String> to) implements Change {
    /** Copies the lists. */
    public MethodChanged {
      from = List.copyOf(from);
      to = List.copyOf(to);
    }

    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.methodChanged(this);
    }
  }

  /**
   * A stage in the oven with this id stands only in the later formula.
   *
   * @param setting the whole stage
   * @param index where it stands among all stages of the later formula, from 0
   */
  record BakeSettingAdded(BakeSetting setting, int index) implements Change {
    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.bakeSettingAdded(this);
    }
  }

  /**
   * A stage in the oven with this id stands only in the earlier formula.
   *
   * @param setting the whole stage
   * @param index where it stood among all stages of the earlier formula, from 0
   */
  record BakeSettingRemoved(BakeSetting setting, int index) implements Change {
    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.bakeSettingRemoved(this);
    }
  }

  /**
   * A stage in the oven is prescribed otherwise in one field.
   *
   * @param settingId the stage
   * @param field which field
   * @param from its text before; empty when it was not stated
   * @param to its text after; empty when it is not stated
   */
  record BakeSettingChanged(
      String settingId, BakeField field, Optional<String> from, Optional<String> to)
      implements Change {
    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.bakeSettingChanged(this);
    }
  }

  /**
   * The same oven temperature within 0.05 °C, written otherwise, as in the other scale ({@code 205
   * °C}, {@code 401 °F}). The bake is the same.
   *
   * @param settingId the stage
   * @param from the temperature before
   * @param to the temperature after
   */
  record TemperatureRewritten(
      String settingId, Temperature from, Temperature to)
      implements Change {
    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.temperatureRewritten(this);
    }
  }

  /**
   * Stages that are in both formulas follow one another in another order: a different bake.
   *
   * @param from ids of the common stages in their order before
   * @param to the same ids in their order after
   * @param moved the fewest of them whose moving explains the new order, in the new order
   */
  record BakeSettingsReordered(
      List<String> from, List<String> to, List<String> moved)
      implements Change {
    /** Copies the lists. */
    public BakeSettingsReordered {
      from = List.copyOf(from);
      to = List.copyOf(to);
      moved = List.copyOf(moved);
    }

    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.bakeSettingsReordered(this);
    }
  }

  /**
   * A batch is divided otherwise, or another loss is reckoned with: figures a piece move, figures
   * of the batch do not.
   *
   * @param field which field
   * @param from its plain number before; empty when it was not stated
   * @param to its plain number after; empty when it is not stated
   */
  record YieldChanged(
      YieldField field, Optional<String> from, Optional<String> to)
      implements Change {
    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.yieldChanged(this);
    }
  }

  /**
   * What was baked is to be kept otherwise; nothing that is weighed or done changed.
   *
   * @param from how to keep it before; empty when it was not stated
   * @param to how to keep it after; empty when it is not stated
   */
  record StorageChanged(Optional<String> from, Optional<String> to) implements Change {
    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.storageChanged(this);
    }
  }

  /**
   * A field that Ovenmark does not know changed; it enters no figure.
   *
   * @param where empty text for the formula, else {@code lines.<id>} or {@code bake.<id>}
   * @param name the field
   * @param from its JSON text before; empty when it was absent
   * @param to its JSON text after; empty when it is absent
   */
  record ExtraChanged(
      String where, String name, Optional<String> from, Optional<String> to)
      implements Change {
    @Override
    public <R> R accept(ChangeVisitor<R> visitor) {
      return visitor.extraChanged(this);
    }
  }
}
