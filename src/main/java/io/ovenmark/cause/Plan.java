package io.ovenmark.cause;

import io.ovenmark.formula.Line;
import io.ovenmark.measure.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Bakes that tell changes apart which came together: each factor stands at its earlier and at its
 * later level, in all or half of the combinations.
 *
 * @param title what it separates, in words
 * @param factors what is set either way
 * @param design which combinations
 * @param settings the combinations, numbered from 1
 * @param doughs the doughs to mix
 * @param loads what goes into the oven together
 * @param contrasts what each comparison of settings answers
 * @param all what all of it takes
 * @param missing what is left to bake when settings count that were baked already
 * @param pairs what settings say already that differ in one factor alone and were both baked
 * @param remarks what else to mind
 */
public record Plan(
    String title,
    List<Factor> factors,
    Factorial design,
    List<Setting> settings,
    List<Dough> doughs,
    List<Load> loads,
    List<Contrast> contrasts,
    Cost all,
    Cost missing,
    List<String> pairs,
    List<String> remarks) {

  /**
   * What is set either way.
   *
   * @param name in words
   * @param from its level as it was before
   * @param to its level as it was after
   * @param changes names of the changes that it bundles; one unless it is a bundle
   */
  public record Factor(String name, String from, String to, List<String> changes) {
    /** Copies the list. */
    public Factor {
      changes = List.copyOf(changes);
    }
  }

  /**
   * One combination.
   *
   * @param number from 1
   * @param levels for each factor whether it stands as after
   * @param recipe dough and oven
   * @param dough number of its dough
   * @param address a revision that is this dough and this oven; empty when there is none
   * @param soFar what is known of it already
   */
  public record Setting(
      int number,
      List<Boolean> levels,
      Recipe recipe,
      int dough,
      Optional<String> address,
      SoFar soFar) {
    /** Copies the list. */
    public Setting {
      levels = List.copyOf(levels);
    }
  }

  /**
   * What earlier bakes say of a setting.
   *
   * @param pieces pieces of this dough that had nearly this oven, in judged bakes
   * @param with those of them with the finding
   * @param bakes the bakes' ids
   */
  public record SoFar(int pieces, int with, List<String> bakes) {
    /** Copies the list. */
    public SoFar {
      bakes = List.copyOf(bakes);
    }
  }

  /**
   * One dough of the plan.
   *
   * @param number from 1
   * @param recipe one recipe of this dough
   * @param address a revision of exactly this dough; empty when it needs a draft
   * @param pieces pieces to make of it
   * @param grams dough to mix for them, with the loss on handling
   * @param lines what to weigh for that
   */
  public record Dough(
      int number,
      Recipe recipe,
      Optional<String> address,
      int pieces,
      Quantity grams,
      List<Weighed> lines) {
    /** Copies the list. */
    public Dough {
      lines = List.copyOf(lines);
    }
  }

  /**
   * A line of a dough.
   *
   * @param line the line as the formula has it, for a whole batch
   * @param name the food's name
   * @param differs whether it is one of the changes
   * @param grams what to weigh for the plan
   */
  public record Weighed(Line line, String name, boolean differs, Quantity grams) {}

  /**
   * What goes into the oven together.
   *
   * @param recipe one recipe of this load: its temperature, rack, tray and steam
   * @param places the pieces in the order on the tray, drawn by lot
   * @param trays how many trays
   * @param minutes time in the oven, tray after tray, each until its last piece is done
   */
  public record Load(Recipe recipe, List<Place> places, int trays, Quantity minutes) {
    /** Copies the list. */
    public Load {
      places = List.copyOf(places);
    }
  }

  /**
   * A piece on a tray.
   *
   * @param place from 1, row by row
   * @param setting number of its setting
   * @param dough number of its dough
   * @param minutes when it is taken out; empty when that is not known
   */
  public record Place(int place, int setting, int dough, OptionalDouble minutes) {}

  /**
   * What a comparison of settings answers.
   *
   * @param word the factors, as {@link Factorial} has them
   * @param name the factors in words
   * @param question what it answers
   * @param plus numbers of settings on one side
   * @param minus numbers of settings on the other
   * @param alias with what it is mixed up, in words; empty when with nothing
   * @param effect share of pieces with the finding on the first side less that on the other, in
   *     percentage points; empty unless every setting was baked
   */
  public record Contrast(
      int word,
      String name,
      String question,
      List<Integer> plus,
      List<Integer> minus,
      Optional<String> alias,
      OptionalDouble effect) {
    /** Copies the lists. */
    public Contrast {
      plus = List.copyOf(plus);
      minus = List.copyOf(minus);
    }
  }

  /**
   * What baking takes.
   *
   * @param settings combinations to bake
   * @param pieces pieces
   * @param doughs doughs to mix
   * @param doughGrams dough in grams
   * @param trays trays
   * @param ovenMinutes minutes in the oven, without heating up
   */
  public record Cost(
      int settings, int pieces, int doughs, Quantity doughGrams, int trays, Quantity ovenMinutes) {}

  /** Copies the lists. */
  public Plan {
    factors = List.copyOf(factors);
    settings = List.copyOf(settings);
    doughs = List.copyOf(doughs);
    loads = List.copyOf(loads);
    contrasts = List.copyOf(contrasts);
    pairs = List.copyOf(pairs);
    remarks = List.copyOf(remarks);
  }
}
