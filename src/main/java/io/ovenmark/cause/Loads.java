package io.ovenmark.cause;

import io.ovenmark.cause.Plan.Load;
import io.ovenmark.cause.Plan.Place;
import io.ovenmark.cause.Plan.Setting;
import io.ovenmark.formula.BakeSetting;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Temperature;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/**
 * Parts settings into what can share an oven: one temperature, rack, tray and steam. Times may
 * differ, since pieces can be taken out one by one. Places on the tray are drawn by lot, the same
 * each time for the same plan.
 */
final class Loads {
  private record Key(Optional<Double> celsius, Optional<String> rack, List<BakeSetting> stages) {}

  private Loads() {}

  static List<Load> of(List<Setting> settings, PlanSize size, long seed) {
    Map<Key, List<Setting>> groups = new LinkedHashMap<>();
    for (Setting setting : settings) {
      Recipe recipe = setting.recipe();
      Key key =
          new Key(
              recipe.temperature().map(Temperature::celsius),
              recipe.rack(),
              Recipe.stages(recipe.formula()));
      groups.computeIfAbsent(key, each -> new ArrayList<>()).add(setting);
    }
    Random lot = new Random(seed);
    List<Load> loads = new ArrayList<>();
    groups.values().forEach(group -> loads.add(load(group, size, lot)));
    return List.copyOf(loads);
  }

  private static Load load(List<Setting> group, PlanSize size, Random lot) {
    List<Setting> drawn = new ArrayList<>();
    for (int i = 0; i < size.pieces(); i++) {
      drawn.addAll(group);
    }
    Collections.shuffle(drawn, lot);
    List<Place> places = new ArrayList<>();
    Quantity minutes = Quantity.ZERO;
    int trays = (drawn.size() + size.perTray() - 1) / size.perTray();
    for (int tray = 0; tray < trays; tray++) {
      int end = Math.min(drawn.size(), (tray + 1) * size.perTray());
      Quantity longest = Quantity.ZERO;
      for (int i = tray * size.perTray(); i < end; i++) {
        Setting setting = drawn.get(i);
        OptionalDouble time = setting.recipe().minutes();
        places.add(new Place(i + 1, setting.number(), setting.dough(), time));
        longest = longer(longest, Quantity.of(time));
      }
      minutes = minutes.plus(longest);
    }
    return new Load(group.get(0).recipe(), places, trays, minutes);
  }

  private static Quantity longer(Quantity one, Quantity other) {
    return Quantity.between(
        Math.max(one.low(), other.low()), Math.max(one.high(), other.high()));
  }
}
