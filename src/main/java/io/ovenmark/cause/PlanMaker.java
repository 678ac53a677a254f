package io.ovenmark.cause;

import io.ovenmark.cause.Plan.Contrast;
import io.ovenmark.cause.Plan.Cost;
import io.ovenmark.cause.Plan.Dough;
import io.ovenmark.cause.Plan.Factor;
import io.ovenmark.cause.Plan.Load;
import io.ovenmark.cause.Plan.Setting;
import io.ovenmark.formula.Formula;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.measure.Temperature;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Makes one plan: settings, doughs, oven loads, what each comparison answers, and the cost. */
final class PlanMaker {
  private final Turn turn;
  private final Parts parts;
  private final Already already;
  private final PlanSize size;
  private final ShownUnits units;

  PlanMaker(Turn turn, Parts parts, List<Baked> bakes, PlanSize size, ShownUnits units) {
    this.turn = turn;
    this.parts = parts;
    this.already = new Already(turn, parts, bakes);
    this.size = size;
    this.units = units;
  }

  /** A plan of bundles of parts; names are those of bundles, none when each part is by itself. */
  Plan plan(String title, List<List<Part>> bundles, List<String> names) {
    List<Factor> factors = new ArrayList<>();
    for (int i = 0; i < bundles.size(); i++) {
      Optional<String> name = names.isEmpty() ? Optional.empty() : Optional.of(names.get(i));
      factors.add(factor(bundles.get(i), name));
    }
    Factorial design = Factorial.of(bundles.size());
    List<Recipe> recipes = new ArrayList<>();
    for (int setting = 0; setting < design.settings(); setting++) {
      recipes.add(recipe(design, setting, bundles));
    }
    List<Setting> settings = settings(design, recipes);
    List<Load> loads = Loads.of(settings, size, seed());
    List<Dough> doughs = doughs(settings, each -> true);
    List<Setting> open = settings.stream().filter(each -> each.soFar().pieces() == 0).toList();
    return new Plan(
        title,
        factors,
        design,
        settings,
        doughs,
        loads,
        contrasts(design, factors, settings),
        cost(settings.size(), doughs, loads),
        cost(
            open.size(),
            doughs(settings, open::contains),
            Loads.of(open, size, seed())),
        Already.pairs(factors, settings),
        remarks(settings, loads));
  }

  private long seed() {
    return (turn.finding() + turn.earlier().bake().path() + turn.later().bake().path()).hashCode();
  }

  private Factor factor(List<Part> bundle, Optional<String> name) {
    List<String> changes = bundle.stream().map(Part::name).toList();
    if (bundle.size() == 1) {
      Part part = bundle.get(0);
      return new Factor(name.orElse(part.name()), part.from(), part.to(), changes);
    }
    boolean oven = bundle.stream().noneMatch(part -> part.sort().isDough());
    return new Factor(
        name.orElseThrow(),
        oven ? level(bundle, true) : "as in " + turn.earlier().side().address(),
        oven ? level(bundle, false) : "as in " + turn.later().side().address(),
        changes);
  }

  private static String level(List<Part> bundle, boolean from) {
    return String.join(", ", bundle.stream().map(part -> from ? part.from() : part.to()).toList());
  }

  private Recipe recipe(Factorial design, int setting, List<List<Part>> bundles) {
    Recipe recipe = parts.later();
    for (int factor = 0; factor < bundles.size(); factor++) {
      if (!design.isHigh(setting, factor)) {
        for (Part part : bundles.get(factor)) {
          recipe = part.back().apply(recipe);
        }
      }
    }
    return recipe;
  }

  private List<Setting> settings(Factorial design, List<Recipe> recipes) {
    List<Formula> doughs = new ArrayList<>();
    List<Setting> settings = new ArrayList<>();
    for (int i = 0; i < recipes.size(); i++) {
      Recipe recipe = recipes.get(i);
      int dough = -1;
      for (int j = 0; j < doughs.size(); j++) {
        dough = recipe.sameDough(doughs.get(j)) ? j : dough;
      }
      if (dough < 0) {
        doughs.add(recipe.formula());
        dough = doughs.size() - 1;
      }
      List<Boolean> levels = new ArrayList<>();
      for (int factor = 0; factor < design.factors(); factor++) {
        levels.add(design.isHigh(i, factor));
      }
      settings.add(
          new Setting(
              i + 1, levels, recipe, dough + 1, address(recipe), already.of(recipe)));
    }
    return settings;
  }

  /** The side whose dough, tray and steam it is; the person still sets heat and time. */
  private Optional<String> address(Recipe recipe) {
    return Stream.of(turn.later(), turn.earlier())
        .filter(baked -> Already.isOf(recipe, baked))
        .map(baked -> baked.side().address())
        .findFirst();
  }

  private List<Dough> doughs(List<Setting> settings, Predicate<Setting> counts) {
    List<Dough> doughs = new ArrayList<>();
    int most = settings.stream().mapToInt(Setting::dough).max().orElse(0);
    for (int number = 1; number <= most; number++) {
      int wanted = number;
      List<Setting> own =
          settings.stream().filter(each -> each.dough() == wanted && counts.test(each)).toList();
      if (!own.isEmpty()) {
        doughs.add(dough(number, own));
      }
    }
    return doughs;
  }

  private Dough dough(int number, List<Setting> own) {
    Recipe recipe = own.get(0).recipe();
    Quantity grams = Quantity.ZERO;
    for (Setting setting : own) {
      grams = grams.plus(setting.recipe().pieceGrams().times(size.pieces()));
    }
    OptionalDouble lost = recipe.formula().yield().handlingLossPercent();
    Quantity mixed = grams.dividedBy(1 - lost.orElse(0) / 100);
    Worksheet later = turn.later().side().sheet();
    Worksheet earlier = turn.earlier().side().sheet();
    Optional<String> address =
        Stream.of(turn.later(), turn.earlier())
            .filter(baked -> recipe.sameDough(baked.side().sheet().formula()))
            .map(baked -> baked.side().address())
            .findFirst();
    return new Dough(
        number,
        recipe,
        address,
        own.size() * size.pieces(),
        mixed,
        Weighing.lines(recipe.formula(), later, earlier, mixed));
  }

  private List<Contrast> contrasts(
      Factorial design, List<Factor> factors, List<Setting> settings) {
    boolean known = settings.stream().allMatch(each -> each.soFar().pieces() > 0);
    List<Double> shares =
        settings.stream()
            .map(each -> known ? 100.0 * each.soFar().with() / each.soFar().pieces() : 0)
            .toList();
    List<Contrast> contrasts = new ArrayList<>();
    for (int word : design.words()) {
      contrasts.add(
          new Contrast(
              word,
              name(word, factors),
              question(word, factors),
              numbers(design, word, 1),
              numbers(design, word, -1),
              design.alias(word).map(alias -> name(alias, factors)),
              known ? OptionalDouble.of(design.effect(word, shares)) : OptionalDouble.empty()));
    }
    return contrasts;
  }

  private static List<Integer> numbers(Factorial design, int word, int sign) {
    List<Integer> numbers = new ArrayList<>();
    for (int setting = 0; setting < design.settings(); setting++) {
      if (design.sign(setting, word) == sign) {
        numbers.add(setting + 1);
      }
    }
    return numbers;
  }

  private static List<String> names(int word, List<Factor> factors) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < factors.size(); i++) {
      if ((word & 1 << i) != 0) {
        names.add(factors.get(i).name());
      }
    }
    return names;
  }

  private static String name(int word, List<Factor> factors) {
    return String.join(" × ", names(word, factors));
  }

  private static String question(int word, List<Factor> factors) {
    List<String> names = names(word, factors);
    return switch (names.size()) {
      case 1 -> "Is it the " + names.get(0) + "?";
      case 2 -> "Does it take both, " + names.get(0) + " and " + names.get(1) + "?";
      default -> "Does it take " + String.join(", ", names) + " together?";
    };
  }

  private Cost cost(int settings, List<Dough> doughs, List<Load> loads) {
    Quantity grams = Quantity.ZERO;
    for (Dough dough : doughs) {
      grams = grams.plus(dough.grams());
    }
    Quantity minutes = Quantity.ZERO;
    int trays = 0;
    for (Load load : loads) {
      minutes = minutes.plus(load.minutes());
      trays += load.trays();
    }
    return new Cost(settings, settings * size.pieces(), doughs.size(), grams, trays, minutes);
  }

  private List<String> remarks(List<Setting> settings, List<Load> loads) {
    List<String> remarks = new ArrayList<>();
    List<Setting> cool = coolest(settings);
    if (!cool.isEmpty()) {
      String numbers =
          String.join(" and ", cool.stream().map(each -> "" + each.number()).toList());
      remarks.add(
          (cool.size() == 1 ? "Setting " : "Settings ") + numbers + ", "
              + cool.get(0).recipe().oven(units)
              + (cool.size() == 1 ? ", gets" : ", get")
              + " less heat than either bake had: measure the core before anyone tastes.");
    }
    if (size.pieces() == 1) {
      remarks.add(
          "With one piece of each setting chance cannot be told from effect; two or more are"
              + " better.");
    }
    if (loads.size() > 1) {
      remarks.add(
          "Ovens differ from load to load: what separates the loads (temperature, rack or tray) is"
              + " sure only when they are baked again in the other order.");
    }
    return remarks;
  }

  /** Settings at the lower heat and the shorter time, when those belong to different bakes. */
  private static List<Setting> coolest(List<Setting> settings) {
    double heat = least(settings, recipe -> recipe.temperature().map(Temperature::celsius));
    double time =
        least(
            settings,
            recipe ->
                recipe.minutes().isPresent()
                    ? Optional.of(recipe.minutes().getAsDouble())
                    : Optional.empty());
    return settings.stream()
        .filter(each -> each.levels().contains(true) && each.levels().contains(false))
        .filter(
            each ->
                each.recipe().temperature().filter(t -> t.celsius() == heat).isPresent()
                    && each.recipe().minutes().isPresent()
                    && each.recipe().minutes().getAsDouble() == time)
        .filter(each -> settings.stream().noneMatch(other -> isCorner(other, heat, time)))
        .toList();
  }

  private static boolean isCorner(Setting setting, double heat, double time) {
    boolean corner =
        setting.levels().stream().distinct().count() == 1;
    return corner
        && setting.recipe().temperature().filter(t -> t.celsius() == heat).isPresent()
        && setting.recipe().minutes().isPresent()
        && setting.recipe().minutes().getAsDouble() == time;
  }

  private static double least(
      List<Setting> settings, Function<Recipe, Optional<Double>> of) {
    return settings.stream()
        .map(each -> of.apply(each.recipe()))
        .flatMap(Optional::stream)
        .mapToDouble(Double::doubleValue)
        .min()
        .orElse(Double.NaN);
  }
}
