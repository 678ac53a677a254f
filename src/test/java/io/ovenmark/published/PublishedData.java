package io.ovenmark.published;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.json.Extras;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.HouseholdMeasure;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.pantry.Nutrients;
import io.ovenmark.pantry.Source;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Foods and dishes of the data files beside these tests; each file names its source. */
final class PublishedData {
  private static final Map<String, Food> FOODS = readFoods();

  private PublishedData() {}

  /** A dish with its ingredients and what is published of it. */
  record Dish(
      String name,
      Basis basis,
      Optional<Integer> pieces,
      OptionalDouble share,
      List<String[]> lines,
      List<Published> published) {
    @Override
    public String toString() {
      return name;
    }
  }

  /** A published figure and how closely it must be met. */
  record Published(Figure figure, double value, double tolerance) {}

  static Optional<Food> food(String slug) {
    return Optional.ofNullable(FOODS.get(slug));
  }

  static String slug(String ndb) {
    return "ndb-" + ndb;
  }

  /** A formula of lines "NDB No., amount". */
  static Formula formula(Yield yield, List<String[]> lines) {
    List<Line> made = new ArrayList<>();
    for (String[] line : lines) {
      String slug = slug(line[0]);
      made.add(Line.of(slug, slug, Amount.parse(line[1])));
    }
    return Formula.named("published").withLines(made).withYield(yield);
  }

  static Worksheet sheet(Formula formula, BakedYield baked) {
    return Worksheet.of(formula, PublishedData::food, Policy.USUAL, baked);
  }

  static BakedYield share(double share) {
    return new BakedYield(Quantity.known(share), 1);
  }

  static List<Dish> dishes() {
    List<Dish> dishes = new ArrayList<>();
    for (String row : rows("dishes.csv")) {
      String[] cells = row.split(";", -1);
      switch (cells[0]) {
        case "dish" ->
            dishes.add(
                new Dish(
                    cells[1],
                    Basis.withLabel(cells[2]).orElseThrow(),
                    cells[3].isEmpty() ? Optional.empty() : Optional.of(Integer.valueOf(cells[3])),
                    number(cells[4]),
                    new ArrayList<>(),
                    new ArrayList<>()));
        case "line" ->
            dishes.get(dishes.size() - 1).lines().add(new String[] {cells[1], cells[2]});
        case "published" -> {
          double value = Double.parseDouble(cells[2]);
          boolean relative = cells[3].endsWith("%");
          double tolerance = Double.parseDouble(cells[3].replace("%", ""));
          dishes.get(dishes.size() - 1).published().add(
              new Published(
                  Figure.withKey(cells[1]).orElseThrow(),
                  value,
                  relative ? value * tolerance / 100 : tolerance));
        }
        default -> throw new IllegalStateException("unknown row " + row);
      }
    }
    return dishes;
  }

  private static Map<String, Food> readFoods() {
    Map<String, Food> foods = new LinkedHashMap<>();
    List<String> rows = rows("foods.csv");
    String[] header = rows.get(0).split(";", -1);
    for (String row : rows.subList(1, rows.size())) {
      String[] cells = row.split(";", -1);
      Map<Nutrient, Quantity> known = new EnumMap<>(Nutrient.class);
      known.put(Nutrient.POLYOLS, Quantity.ZERO);
      known.put(Nutrient.ALLULOSE, Quantity.ZERO);
      List<HouseholdMeasure> household = new ArrayList<>();
      for (int i = 3; i < cells.length; i++) {
        if (header[i].equals("household") && !cells[i].isEmpty()) {
          String[] parts = cells[i].split("=");
          household.add(new HouseholdMeasure(parts[0], Double.parseDouble(parts[1])));
        } else if (!cells[i].isEmpty()) {
          known.put(
              Nutrient.withKey(header[i]).orElseThrow(), Quantity.of(number(cells[i])));
        }
      }
      String slug = slug(cells[0]);
      foods.put(
          slug,
          new Food(
              slug,
              cells[1],
              FoodKind.withKey(cells[2]).orElseThrow(),
              new Source(Source.Kind.SR28, Optional.of(cells[0]), Optional.empty()),
              Nutrients.of(known),
              household,
              OptionalDouble.empty(),
              Optional.of(Set.of()),
              Optional.empty(),
              Optional.empty(),
              Extras.NONE));
    }
    return foods;
  }

  private static OptionalDouble number(String cell) {
    return cell.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Double.parseDouble(cell));
  }

  private static List<String> rows(String file) {
    try (InputStream in = PublishedData.class.getResourceAsStream(file)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text.lines().filter(row -> !row.startsWith("#")).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
