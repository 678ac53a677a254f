package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.formula.Formula;
import io.ovenmark.goal.Goal;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.Survey;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

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
  private final Map<Key, Sheet> sheets;
  private final ShownUnits units;
  private final SearchShelf searchShelf;
  private final ListedRows listedRows;

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
    this.units = ShownUnits.AS_WRITTEN;
    this.sheets =
        Collections.synchronizedMap(
            new LinkedHashMap<>(256, 0.75f, true) {
              @Override
              protected boolean removeEldestEntry(Map.Entry<Key, Sheet> eldest) {
                return size() > KEPT_SHEETS;
              }
            });
    this.searchShelf = new SearchShelf(this);
    this.listedRows = new ListedRows(new Survey(notebook), ProgramMark.find());
  }

  private Desk(Desk desk, ShownUnits units) {
    this.notebook = desk.notebook;
    this.sheets = desk.sheets;
    this.searchShelf = desk.searchShelf;
    this.listedRows = desk.listedRows;
    this.units = units;
  }

  /**
   * The same desk for a reader of certain units: whatever a verb says there in sentences has masses
   * and temperatures in them. Numbers of answers stay in the units of their names.
   *
   * @param wanted the units
   * @return a desk on the same notebook, which is closed with either
   */
  public Desk shownIn(ShownUnits wanted) {
    return new Desk(this, wanted);
  }

  /**
   * How sentences state masses and temperatures.
   *
   * @return as written, unless the desk is one for a reader of certain units
   */
  public ShownUnits units() {
    return units;
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
   * Reads an address as a person writes it: a formula with variant and revision, or a full or
   * abbreviated commit id alone, of at least 7 digits. A formula of that name goes before a commit.
   *
   * @param text such as {@code seeded-lupin-bun/egg-free@7} or {@code 4f2a91c}
   * @return the address; whether its variant and revision exist shows when it is used
   * @throws Refusal when it is no address, or there is no such formula or commit
   */
  public Address address(String text) {
    Optional<Address> parsed = Optional.empty();
    Optional<Refusal> refusal = Optional.empty();
    try {
      parsed = Optional.of(Address.parse(text));
    } catch (IllegalArgumentException e) {
      refusal = Optional.of(Refusal.of("address", e));
    }
    if (parsed.isPresent() && exists(parsed.get())) {
      return parsed.get();
    }
    Optional<Address> commit = notebook.addressOfCommit(text);
    if (commit.isPresent()) {
      return commit.get();
    }
    if (refusal.isPresent()) {
      throw refusal.get();
    }
    throw noFormula(parsed.get().formula());
  }

  private boolean exists(Address address) {
    return notebook.latest().formulaBlob(address.formula()).isPresent()
        || notebook.isKnown(address.formula())
        || notebook.handEdit(address.formula()).isPresent();
  }

  private Refusal noFormula(String slug) {
    List<String> near = NearNames.of(slug, notebook.latest().formulas());
    String list = "List what there is with: ovenmark list";
    return new Refusal(
        Refusal.Reason.NOT_FOUND,
        slug,
        "There is no formula \"" + slug + "\" in this notebook.",
        near.isEmpty() ? list : "Did you mean " + String.join(" or ", near) + "? " + list);
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
   * Whether the foods, the goal or the settings that an address is worked out with differ from
   * those of the revision's own commit, as far as the formula uses them.
   *
   * @param address how the revision was asked for
   * @param revision the revision found
   * @return true when a figure may differ from the numbered revision's
   */
  public boolean restsOnOtherFoods(Address address, Revision revision) {
    Contents asked = contents(address, revision);
    if (asked.commit().equals(revision.commit())) {
      return false;
    }
    Formula formula = notebook.formula(revision);
    return !asked
        .figuresKey(formula)
        .equals(notebook.at(revision.commit()).figuresKey(formula));
  }

  private Contents contents(Address address, Revision revision) {
    return switch (address.point().kind()) {
      case LATEST -> notebook.latest(address);
      case COMMIT -> notebook.at(notebook.commit(address));
      default -> notebook.at(revision.commit());
    };
  }

  /**
   * What could be worked out.
   *
   * @param sheet the worksheet and the goal; empty when a file is damaged
   * @param problems what is wrong then
   */
  record Attempt(Optional<Sheet> sheet, List<Views.ProblemView> problems) {}

  /** Works out what an address means, unless a file that it rests on is damaged. */
  Attempt attempt(Address address, Revision revision, List<Bake> bakesOfFormula) {
    try {
      return new Attempt(Optional.of(sheet(address, revision, bakesOfFormula)), List.of());
    } catch (UnreadableException | StoreException e) {
      List<Views.ProblemView> problems = Refusals.problems(e);
      if (problems.isEmpty()) {
        throw e;
      }
      return new Attempt(Optional.empty(), problems);
    }
  }

  /** A revision's formula, unless its file is damaged. */
  Optional<Formula> readable(Revision revision) {
    try {
      return Optional.of(notebook.formula(revision));
    } catch (UnreadableException | StoreException e) {
      if (Refusals.problems(e).isEmpty()) {
        throw e;
      }
      return Optional.empty();
    }
  }

  private Sheet sheet(Revision revision, Contents contents, List<Bake> bakesOfFormula) {
    BakedYield bakedYield =
        BakedYield.measured(bakesOf(revision.blob().hex(), bakesOfFormula));
    Formula formula = notebook.formula(revision);
    Key key = new Key(revision.blob().hex(), contents.figuresKey(formula), bakedYield);
    Sheet known = sheets.get(key);
    if (known == null) {
      Policy policy = contents.policy(formula);
      known = workOut(formula, contents::food, contents::goal, policy, bakedYield);
      sheets.put(key, known);
    }
    return known;
  }

  /**
   * Works a formula out that is not a revision yet. Foods and the goal that its line of history
   * lacks are those that a commit of it would bring along: the main line's, else the built-in
   * table's.
   *
   * @param formula the formula
   * @param line the line of history whose foods and settings are used
   * @param bakes the bakes of exactly this content
   * @return the worksheet and the goal
   */
  public Sheet draft(Formula formula, Address line, List<Bake> bakes) {
    Contents main = notebook.latest();
    Contents here = line.variant().isEmpty() ? main : notebook.latest(line);
    return workOut(
        formula,
        slug -> here.food(slug).or(() -> main.food(slug)).or(() -> BuiltInPantry.find(slug)),
        slug -> here.goal(slug).or(() -> main.goal(slug)),
        here,
        BakedYield.measured(bakes));
  }

  /** The same with foods and goals of one's own, and nothing weighed. */
  Sheet draft(
      Formula formula,
      Function<String, Optional<Food>> foods,
      Function<String, Optional<Goal>> goals,
      Address line) {
    return workOut(
        formula, foods, goals, notebook.latest(line), BakedYield.measured(List.of()));
  }

  private static Sheet workOut(
      Formula formula,
      Function<String, Optional<Food>> foods,
      Function<String, Optional<Goal>> goals,
      Contents settings,
      BakedYield bakedYield) {
    Policy policy = settings.settings().policy();
    Policy own =
        formula
            .goal()
            .flatMap(goals)
            .flatMap(Goal::netCarbohydrate)
            .map(net -> new Policy(policy.energy(), net))
            .orElse(policy);
    return workOut(formula, foods, goals, own, bakedYield);
  }

  /**
   * Works the newest formula of a line of history out with what that line has now, except for what
   * is tried out.
   *
   * @param line the line of history
   * @param formula its newest formula
   * @param trial what is tried out
   * @return the worksheet and the goal
   */
  Sheet tried(Address line, Formula formula, Trial trial) {
    Contents here = notebook.latest(line);
    Function<String, Optional<Food>> food = slug -> trial.food(slug).or(() -> here.food(slug));
    Function<String, Optional<Goal>> goal = slug -> trial.goal(slug).or(() -> here.goal(slug));
    Policy settings = trial.policy().orElseGet(() -> here.settings().policy());
    Policy policy =
        formula
            .goal()
            .flatMap(goal)
            .flatMap(Goal::netCarbohydrate)
            .map(net -> new Policy(settings.energy(), net))
            .orElse(settings);
    List<Bake> bakes =
        here.formulaBlob(line.formula())
            .map(blob -> bakesOf(blob.hex(), notebook.bakes(line.formula())))
            .orElse(List.of());
    return workOut(formula, food, goal, policy, BakedYield.measured(bakes));
  }

  private static Sheet workOut(
      Formula formula,
      Function<String, Optional<Food>> foods,
      Function<String, Optional<Goal>> goals,
      Policy policy,
      BakedYield bakedYield) {
    Worksheet worksheet = Worksheet.of(formula, foods::apply, policy, bakedYield);
    Optional<GoalCheck> goal =
        formula.goal().flatMap(goals).map(found -> GoalCheck.of(found, worksheet));
    return new Sheet(worksheet, goal);
  }

  /**
   * The revisions of a formula by their content: a restored revision has the content of an earlier
   * one, and bakes belong to contents.
   *
   * @param formula short name of the formula
   * @return for each content's id the addresses of its revisions: of the main line, then of each
   *     variant after its fork, oldest first
   */
  public Map<String, List<String>> revisionsByContent(String formula) {
    Map<String, List<String>> addresses = new HashMap<>();
    for (Address line : notebook.lines(formula)) {
      int fork = line.variant().isPresent() ? notebook.forkNumber(line) : 0;
      if (notebook.nextNumber(line) > 1) {
        for (Revision revision : notebook.revisions(line)) {
          if (revision.number() > fork) {
            addresses
                .computeIfAbsent(revision.blob().hex(), blob -> new ArrayList<>())
                .add(revision.address().toString());
          }
        }
      }
    }
    return addresses;
  }

  /**
   * Bakes of one formula as programs see them.
   *
   * @param bakes the bakes
   * @return each with the addresses of all revisions of its content
   */
  List<Views.BakeView> views(List<Bake> bakes) {
    return bakes.isEmpty() ? List.of() : views(bakes, revisionsByContent(bakes.get(0).formula()));
  }

  static List<Views.BakeView> views(List<Bake> bakes, Map<String, List<String>> addresses) {
    return bakes.stream()
        .map(bake -> BakeViews.view(bake, addresses.getOrDefault(bake.blob(), List.of())))
        .toList();
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

  /** What was worked out for the list of formulas. */
  ListedRows listedRows() {
    return listedRows;
  }

  /** What there is to search. */
  SearchShelf searchShelf() {
    return searchShelf;
  }

  @Override
  public void close() {
    notebook.close();
  }
}
