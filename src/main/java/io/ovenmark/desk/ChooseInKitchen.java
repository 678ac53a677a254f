package io.ovenmark.desk;

import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.FoodTable;
import io.ovenmark.pantry.LabelFood;
import io.ovenmark.pantry.LabelOrder;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.EnergyRule;
import io.ovenmark.worksheet.Figure;
import java.util.Arrays;
import java.util.List;

/** Says what can be chosen in the forms of foods, goals and settings. */
public final class ChooseInKitchen {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ChooseInKitchen(Desk desk) {
    this.desk = desk;
  }

  /**
   * Says it.
   *
   * @return all choices
   */
  public ChoiceViews.KitchenChoices call() {
    return new ChoiceViews.KitchenChoices(
        desk.notebook().folder().toString(),
        Arrays.stream(FoodKind.values()).map(FoodKind::key).toList(),
        Arrays.stream(Nutrient.values())
            .map(n -> new ChoiceViews.FigureChoice(n.key(), n.label(), n.unit(), true))
            .toList(),
        List.of(
            label(LabelFood.Panel.EUROPEAN_UNION), label(LabelFood.Panel.UNITED_STATES)),
        Arrays.stream(Allergen.values())
            .map(
                each ->
                    new ChoiceViews.AllergenChoice(
                        each.key(),
                        each.unitedStates(),
                        each.europeanUnion(),
                        Allergen.group("gluten").contains(each)))
            .toList(),
        EnergyRule.polyols(),
        Arrays.stream(Figure.values())
            .map(f -> new ChoiceViews.FigureChoice(f.key(), f.label(), f.unit(), f.isMacro()))
            .toList(),
        List.of(Basis.PIECE, Basis.BAKED_100_G, Basis.DOUGH_100_G, Basis.BATCH).stream()
            .map(basis -> new ChoiceViews.BasisChoice(basis.key(), basis.label()))
            .toList(),
        Arrays.stream(EnergyRule.values()).map(EnergyRule::key).toList(),
        FoodTable.columnNames());
  }

  private static ChoiceViews.LabelChoice label(LabelFood.Panel panel) {
    return new ChoiceViews.LabelChoice(
        panel.key(),
        LabelOrder.of(panel).stream()
            .map(
                row ->
                    new ChoiceViews.LabelRow(
                        row.figure().key(), row.words(), row.unit(), row.part()))
            .toList());
  }
}
