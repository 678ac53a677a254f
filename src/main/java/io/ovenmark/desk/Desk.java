package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.formula.Formula;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Revision;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An open notebook with what has been worked out from it so far. Every verb works on a desk; many
 * may do so at the same time.
 *
 * <pre>{@code
 * try (Desk desk = new Desk(Notebook.open(folder))) {
 *   Views.FormulaSheet sheet = new ShowFormula(desk).call(Address.parse("seeded-lupin-bun@5"));
 * }
 * }</pre>
 */
public final class Desk implements AutoCloseable {
  /** How many worksheets are kept; one takes some 20 kB. */
  private static final int KEPT_SHEETS = 4096;

  private record Key(String blob, String figures, BakedYield bakedYield) {}

  private final Notebook notebook;
  private final Map<Key, Sheet> sheets =
      Collections.synchronizedMap(
          new LinkedHashMap<>(256, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<Key, Sheet> eldest) {
              return size() > KEPT_SHEETS;
            }
          });

  /**
   * A formula worked out, with its goal.
   *
   * @param worksheet the figures
   * @param goal how the goal stands; empty when the formula has none, or one that is gone
   */
  public record Sheet(Worksheet worksheet, Optional<GoalCheck> goal) {}

  /**
   * A desk for a notebook.
   *
   * @param notebook the notebook, closed with the desk
   */
  public Desk(Notebook notebook) {
    this.notebook = notebook;
  }

  /**
   * The notebook.
   *
   * @return the notebook, open
   */
  public Notebook notebook() {
    return notebook;
  }

  /**
   * Works a revision out with the foods and settings of its own commit.
   *
   * @param revision the revision
   * @param bakesOfFormula all bakes of its formula
   * @return the worksheet and the goal
   */
  public Sheet sheet(Revision revision, List<Bake> bakesOfFormula) {
    return sheet(revision, notebook.at(revision.commit()), bakesOfFormula);
  }

  /**
   * Works out what an address means: a numbered revision with the foods, goals and settings of its
   * own commit, the latest with those of today, a state at a commit with those of that commit. So
   * old figures never move, and a changed package label shows in the latest.
   *
   * @param address how the revision was asked for
   * @param revision the revision found
   * @param bakesOfFormula all bakes of its formula
   * @return the worksheet and the goal
   */
  public Sheet sheet(Address address, Revision revision, List<Bake> bakesOfFormula) {
    return sheet(revision, contents(address, revision), bakesOfFormula);
  }

  /**
   * Whether the foods, goals or settings that an address is worked out with differ from those of the
   * revision's own commit.
   *
   * @param address how the revision was asked for
   * @param revision the revision found
   * @return true when a figure may differ from the numbered revision's
   */
  public boolean restsOnOtherFoods(Address address, Revision revision) {
    return !contents(address, revision)
        .figuresKey()
        .equals(notebook.at(revision.commit()).figuresKey());
  }

  private Contents contents(Address address, Revision revision) {
    return switch (address.point().kind()) {
      case LATEST -> notebook.latest(address);
      case COMMIT -> notebook.at(notebook.commit(address));
      default -> notebook.at(revision.commit());
    };
  }

  private Sheet sheet(Revision revision, Contents contents, List<Bake> bakesOfFormula) {
    BakedYield bakedYield =
        BakedYield.measured(bakesOf(revision.blob().hex(), bakesOfFormula));
    Key key = new Key(revision.blob().hex(), contents.figuresKey(), bakedYield);
    Sheet known = sheets.get(key);
    if (known == null) {
      known = workOut(notebook.formula(revision), contents, bakedYield);
      sheets.put(key, known);
    }
    return known;
  }

  /**
   * Works a formula out that is not a revision yet.
   *
   * @param formula the formula
   * @param line the line of history whose foods and settings are used
   * @param bakes the bakes of exactly this content
   * @return the worksheet and the goal
   */
  public Sheet draft(Formula formula, Address line, List<Bake> bakes) {
    return workOut(formula, notebook.latest(line), BakedYield.measured(bakes));
  }

  private static Sheet workOut(Formula formula, Contents contents, BakedYield bakedYield) {
    Policy policy = contents.policy(formula);
    Worksheet worksheet = Worksheet.of(formula, contents::food, policy, bakedYield);
    Optional<GoalCheck> goal =
        formula.goal().flatMap(contents::goal).map(found -> GoalCheck.of(found, worksheet));
    return new Sheet(worksheet, goal);
  }

  /**
   * The bakes of one content.
   *
   * @param blob id of the formula's content
   * @param bakes bakes to choose from
   * @return those of this content, in the given order
   */
  public static List<Bake> bakesOf(String blob, List<Bake> bakes) {
    return bakes.stream().filter(bake -> bake.blob().equals(blob)).toList();
  }

  @Override
  public void close() {
    notebook.close();
  }
}
