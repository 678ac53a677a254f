package io.ovenmark.change;

import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.json.Extras;
import io.ovenmark.json.Fields;
import io.ovenmark.measure.Temperature;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** Applies changes to the earlier formula, to prove that a diff leaves nothing out. */
final class Replay implements ChangeVisitor<Void> {
  private Formula formula;
  private final List<Line> lines;
  private final List<BakeSetting> stages;
  private final List<Change.LineAdded> newLines = new ArrayList<>();
  private final List<Change.BakeSettingAdded> newStages = new ArrayList<>();

  private Replay(Formula formula) {
    this.formula = formula;
    this.lines = new ArrayList<>(formula.lines());
    this.stages = new ArrayList<>(formula.bake());
  }

  static Formula of(List<Change> changes, Formula from) {
    Replay replay = new Replay(from);
    changes.forEach(change -> change.accept(replay));
    replay.newLines.forEach(added -> replay.lines.add(added.index(), added.line()));
    replay.newStages.forEach(added -> replay.stages.add(added.index(), added.setting()));
    return replay.formula.withLines(replay.lines).withBake(replay.stages);
  }

  private static <T> Void reorder(List<T> items, List<String> order, Function<T, String> id) {
    items.sort((a, b) -> order.indexOf(id.apply(a)) - order.indexOf(id.apply(b)));
    return null;
  }

  private Void line(String id, UnaryOperator<Line> change) {
    lines.replaceAll(line -> line.id().equals(id) ? change.apply(line) : line);
    return null;
  }

  private Void stage(String id, UnaryOperator<BakeSetting> change) {
    stages.replaceAll(stage -> stage.id().equals(id) ? change.apply(stage) : stage);
    return null;
  }

  private Void set(Formula next) {
    formula = next;
    return null;
  }

  private static OptionalDouble number(Optional<String> text) {
    return text.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Double.parseDouble(text.get()));
  }

  @Override
  public Void nameChanged(Change.NameChanged change) {
    return set(formula.withName(change.to()));
  }

  @Override
  public Void descriptionChanged(Change.DescriptionChanged change) {
    return set(formula.withDescription(change.to()));
  }

  @Override
  public Void goalChanged(Change.GoalChanged change) {
    return set(formula.withGoal(change.to()));
  }

  @Override
  public Void referenceChanged(Change.ReferenceChanged change) {
    return set(formula.withReference(change.to()));
  }

  @Override
  public Void storageChanged(Change.StorageChanged change) {
    return set(formula.withStorage(change.to()));
  }

  @Override
  public Void lineAdded(Change.LineAdded change) {
    newLines.add(change);
    return null;
  }

  @Override
  public Void lineRemoved(Change.LineRemoved change) {
    lines.removeIf(line -> line.id().equals(change.line().id()));
    return null;
  }

  @Override
  public Void foodReplaced(Change.FoodReplaced change) {
    return line(
        change.lineId(),
        line -> line.withFood(change.to().food()).withAmount(change.to().amount()));
  }

  @Override
  public Void amountChanged(Change.AmountChanged change) {
    return line(change.lineId(), line -> line.withAmount(change.to()));
  }

  @Override
  public Void amountRewritten(Change.AmountRewritten change) {
    return line(change.lineId(), line -> line.withAmount(change.to()));
  }

  @Override
  public Void flourMarkChanged(Change.FlourMarkChanged change) {
    return line(change.lineId(), line -> line.withFlour(change.flour()));
  }

  @Override
  public Void lineNoteChanged(Change.LineNoteChanged change) {
    return line(change.lineId(), line -> line.withNote(change.to()));
  }

  @Override
  public Void linesReordered(Change.LinesReordered change) {
    return reorder(lines, change.to(), Line::id);
  }

  @Override
  public Void methodChanged(Change.MethodChanged change) {
    return set(formula.withMethod(change.to()));
  }

  @Override
  public Void bakeSettingAdded(Change.BakeSettingAdded change) {
    newStages.add(change);
    return null;
  }

  @Override
  public Void bakeSettingRemoved(Change.BakeSettingRemoved change) {
    stages.removeIf(stage -> stage.id().equals(change.setting().id()));
    return null;
  }

  @Override
  public Void bakeSettingChanged(Change.BakeSettingChanged change) {
    return stage(
        change.settingId(),
        stage ->
            switch (change.field()) {
              case TEMPERATURE -> stage.withTemperature(change.to().map(Temperature::parse));
              case MINUTES -> stage.withMinutes(number(change.to()));
              case RACK -> stage.withRack(change.to());
              case STEAM -> stage.withSteam(change.to());
              case VESSEL -> stage.withVessel(change.to());
              case NOTE -> stage.withNote(change.to());
            });
  }

  @Override
  public Void temperatureRewritten(Change.TemperatureRewritten change) {
    return stage(
        change.settingId(), stage -> stage.withTemperature(Optional.of(change.to())));
  }

  @Override
  public Void bakeSettingsReordered(Change.BakeSettingsReordered change) {
    return reorder(stages, change.to(), BakeSetting::id);
  }

  @Override
  public Void yieldChanged(Change.YieldChanged change) {
    Yield yield = formula.yield();
    return set(
        formula.withYield(
            switch (change.field()) {
              case PIECES ->
                  new Yield(
                      change.to().map(Integer::valueOf),
                      change.to().isPresent() ? OptionalDouble.empty() : yield.doughPerPieceGrams(),
                      yield.handlingLossPercent());
              case DOUGH_PER_PIECE ->
                  new Yield(
                      change.to().isPresent() ? Optional.empty() : yield.pieces(),
                      number(change.to()),
                      yield.handlingLossPercent());
              case HANDLING_LOSS ->
                  new Yield(yield.pieces(), yield.doughPerPieceGrams(), number(change.to()));
            }));
  }

  @Override
  public Void extraChanged(Change.ExtraChanged change) {
    Extras value =
        change
            .to()
            .map(json -> "{\"" + change.name() + "\": " + json + "}")
            .map(json -> Fields.of("test", json.getBytes(StandardCharsets.UTF_8)).extras())
            .orElse(Extras.NONE);
    String id = change.where().substring(change.where().indexOf('.') + 1);
    if (change.where().isEmpty()) {
      return set(formula.withExtras(formula.extras().with(change.name(), value)));
    }
    return change.where().startsWith("lines.")
        ? line(id, line -> line.withExtras(line.extras().with(change.name(), value)))
        : stage(id, stage -> stage.withExtras(stage.extras().with(change.name(), value)));
  }
}
