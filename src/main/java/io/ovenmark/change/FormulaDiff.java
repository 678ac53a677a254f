package io.ovenmark.change;

import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.json.Extras;
import io.ovenmark.measure.Temperature;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The difference of two formulas. Lines and oven stages are the same when their ids are, whatever
 * else changed.
 *
 * <pre>{@code
 * List<Change> changes = FormulaDiff.between(earlier, later);
 * }</pre>
 */
public final class FormulaDiff {
  private static final double SAME_CELSIUS = 0.05;

  private final List<Change> changes = new ArrayList<>();

  private FormulaDiff() {}

  /**
   * Tells all that changed. The list is complete: it turns the earlier formula into the later one,
   * and it is empty exactly when the two are equal and their amounts are written in the same
   * characters. Takes time in proportion to the size of the formulas.
   *
   * @param from the earlier formula
   * @param to the later formula
   * @return the changes, always in this order: name, description, goal, reference; lines removed
   *     (in the earlier order), lines added or changed (in the later order), lines reordered;
   *     method; oven stages in the same manner as lines; yield; storage; unknown fields by name
   */
  public static List<Change> between(Formula from, Formula to) {
    FormulaDiff diff = new FormulaDiff();
    if (from != to) {
      diff.heading(from, to);
      diff.lines(from, to);
      if (!from.method().equals(to.method())) {
        diff.changes.add(new Change.MethodChanged(from.method(), to.method()));
      }
      diff.bake(from, to);
      for (YieldField field : YieldField.values()) {
        Optional<String> before = field.text(from.yield());
        Optional<String> after = field.text(to.yield());
        if (!before.equals(after)) {
          diff.changes.add(new Change.YieldChanged(field, before, after));
        }
      }
      if (!from.storage().equals(to.storage())) {
        diff.changes.add(new Change.StorageChanged(from.storage(), to.storage()));
      }
      diff.extras("", from.extras(), to.extras());
    }
    return List.copyOf(diff.changes);
  }

  private void heading(Formula from, Formula to) {
    if (!from.name().equals(to.name())) {
      changes.add(new Change.NameChanged(from.name(), to.name()));
    }
    if (!from.description().equals(to.description())) {
      changes.add(new Change.DescriptionChanged(from.description(), to.description()));
    }
    if (!from.goal().equals(to.goal())) {
      changes.add(new Change.GoalChanged(from.goal(), to.goal()));
    }
    if (!from.reference().equals(to.reference())) {
      changes.add(new Change.ReferenceChanged(from.reference(), to.reference()));
    }
  }

  private void lines(Formula from, Formula to) {
    Map<String, Line> before = byId(from.lines(), Line::id);
    Map<String, Line> after = byId(to.lines(), Line::id);
    int index = 0;
    for (Line line : from.lines()) {
      if (!after.containsKey(line.id())) {
        changes.add(new Change.LineRemoved(line, index));
      }
      index++;
    }
    index = 0;
    for (Line line : to.lines()) {
      Line earlier = before.get(line.id());
      if (earlier == null) {
        changes.add(new Change.LineAdded(line, index));
      } else if (!Same.line(earlier, line)) {
        line(earlier, line);
      }
      index++;
    }
    List<String> orderBefore = before.keySet().stream().filter(after::containsKey).toList();
    List<String> orderAfter = after.keySet().stream().filter(before::containsKey).toList();
    if (!orderBefore.equals(orderAfter)) {
      changes.add(
          new Change.LinesReordered(
              orderBefore, orderAfter, LongestRun.moved(orderBefore, orderAfter)));
    }
  }

  private void line(Line from, Line to) {
    String id = from.id();
    if (!from.food().equals(to.food())) {
      changes.add(new Change.FoodReplaced(id, from, to));
    } else if (!from.amount().writtenAs(to.amount())) {
      changes.add(
          Same.amountButWriting(from.amount(), to.amount())
              ? new Change.AmountRewritten(id, from.amount(), to.amount())
              : new Change.AmountChanged(id, from.amount(), to.amount()));
    }
    if (from.flour() != to.flour()) {
      changes.add(new Change.FlourMarkChanged(id, to.flour()));
    }
    if (!from.note().equals(to.note())) {
      changes.add(new Change.LineNoteChanged(id, from.note(), to.note()));
    }
    extras("lines." + id, from.extras(), to.extras());
  }

  private void bake(Formula from, Formula to) {
    Map<String, BakeSetting> before = byId(from.bake(), BakeSetting::id);
    Map<String, BakeSetting> after = byId(to.bake(), BakeSetting::id);
    int index = 0;
    for (BakeSetting setting : from.bake()) {
      if (!after.containsKey(setting.id())) {
        changes.add(new Change.BakeSettingRemoved(setting, index));
      }
      index++;
    }
    index = 0;
    for (BakeSetting setting : to.bake()) {
      BakeSetting earlier = before.get(setting.id());
      if (earlier == null) {
        changes.add(new Change.BakeSettingAdded(setting, index));
      } else if (!earlier.equals(setting)) {
        setting(earlier, setting);
      }
      index++;
    }
    List<String> orderBefore = before.keySet().stream().filter(after::containsKey).toList();
    List<String> orderAfter = after.keySet().stream().filter(before::containsKey).toList();
    if (!orderBefore.equals(orderAfter)) {
      changes.add(
          new Change.BakeSettingsReordered(
              orderBefore, orderAfter, LongestRun.moved(orderBefore, orderAfter)));
    }
  }

  private void setting(BakeSetting from, BakeSetting to) {
    for (BakeField field : BakeField.values()) {
      Optional<String> before = field.text(from);
      Optional<String> after = field.text(to);
      if (before.equals(after)) {
        continue;
      }
      if (field == BakeField.TEMPERATURE && sameHeat(from.temperature(), to.temperature())) {
        changes.add(
            new Change.TemperatureRewritten(
                from.id(), from.temperature().get(), to.temperature().get()));
      } else {
        changes.add(new Change.BakeSettingChanged(from.id(), field, before, after));
      }
    }
    extras("bake." + from.id(), from.extras(), to.extras());
  }

  private static boolean sameHeat(Optional<Temperature> a, Optional<Temperature> b) {
    return a.isPresent()
        && b.isPresent()
        && Math.abs(a.get().celsius() - b.get().celsius()) <= SAME_CELSIUS;
  }

  private void extras(String where, Extras from, Extras to) {
    if (from.equals(to)) {
      return;
    }
    for (String name : Same.extraNames(from, to)) {
      if (!Same.extra(name, from, to)) {
        changes.add(
            new Change.ExtraChanged(
                where, name, Same.extraText(name, from), Same.extraText(name, to)));
      }
    }
  }

  private static <T> Map<String, T> byId(List<T> items, Function<T, String> id) {
    Map<String, T> result = new LinkedHashMap<>();
    items.forEach(item -> result.put(id.apply(item), item));
    return result;
  }
}
