package io.ovenmark.desk;

import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.NotebookSettings;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.worksheet.EnergyRule;
import io.ovenmark.worksheet.NetCarbohydrate;
import io.ovenmark.worksheet.Policy;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Shows and changes the notebook's own settings: its title, the units that it is shown in, and how
 * energy and net carbohydrate are worked out. A change is first tried, with the figures that would
 * move, then saved; see {@link SaveFood} for what happens when two people change the same.
 */
public final class KeepSettings {
  private static final int LONGEST_TITLE = 120;
  private static final int MOST_TRIES = 5;
  private static final Address MAIN = Address.latest("main", Optional.empty());

  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public KeepSettings(Desk desk) {
    this.desk = desk;
  }

  private record Sides(
      Contents contents,
      NotebookSettings base,
      NotebookSettings theirs,
      NotebookSettings mine,
      List<KitchenWork.FieldProblem> problems,
      LinesInUse lines) {}

  /**
   * Shows the settings.
   *
   * @return the settings and how much the notebook holds
   */
  public KitchenWork.NotebookPage show() {
    Contents contents = desk.notebook().latest();
    NotebookSettings settings = contents.settings();
    LinesInUse lines = new LinesInUse(desk.notebook());
    List<Address> variants = variants(lines);
    return new KitchenWork.NotebookPage(
        settings.title(),
        desk.notebook().folder().toString(),
        contents.commit().hex(),
        settings.temperatureUnit(),
        settings.massUnit(),
        settings.policy().energy().key(),
        ShowGoal.shares(settings.policy().netCarbohydrate()),
        settings.policy().netCarbohydrate().inWords(),
        contents.formulas().size(),
        variants.size(),
        contents.foods().size(),
        contents.goals().size(),
        variants.stream()
            .filter(line -> !of(line).equals(Optional.of(settings)))
            .map(Address::line)
            .toList());
  }

  /**
   * Tries settings out; nothing is written.
   *
   * @param form the form
   * @return what would move
   * @throws Refusal when what the form rests on is not known
   */
  public KitchenWork.SettingsTried look(SettingsForm form) {
    Sides sides = sides(form);
    MovesMaker moves = new MovesMaker(desk);
    List<String> apart = new ArrayList<>();
    Policy policy = sides.mine().policy();
    for (LinesInUse.Use use : sides.lines().all()) {
      boolean main = use.line().variant().isEmpty();
      if (main || form.variants() && follows(use.line(), sides)) {
        if (!policy.equals(sides.base().policy())) {
          moves.add(List.of(use), Trial.with(policy));
        }
      } else {
        apart.add(use.line().line());
      }
    }
    return new KitchenWork.SettingsTried(
        policy.netCarbohydrate().inWords(),
        GoalReading.changed(facts(sides.base()), facts(sides.mine())),
        sides.problems(),
        moves.moves(apart));
  }

  /**
   * Saves settings.
   *
   * @param form the form
   * @param by who commits them, and when
   * @return what became of it
   * @throws Refusal when what the form rests on is not known, or the notebook cannot be written
   */
  public KitchenWork.Saved call(SettingsForm form, By by) {
    for (int tries = 1; ; tries++) {
      try {
        return attempt(form, by);
      } catch (Refusal refusal) {
        if (refusal.reason() != Refusal.Reason.CONFLICT || tries == MOST_TRIES) {
          throw refusal;
        }
      }
    }
  }

  private KitchenWork.Saved attempt(SettingsForm form, By by) {
    Sides sides = sides(form);
    if (!sides.problems().isEmpty()) {
      return result("invalid", sides, List.of(), List.of(), List.of(), List.of());
    }
    boolean shown = seen(form.answered()).equals(Optional.of(sides.theirs()));
    FactMerge merge =
        FactMerge.of(
            facts(sides.base()),
            facts(sides.mine()),
            facts(sides.theirs()),
            shown ? form.picks() : Map.of());
    if (!merge.clashes().isEmpty()) {
      return result("conflict", sides, merge.clashes(), List.of(), List.of(), List.of());
    }
    NotebookSettings merged = merged(sides, merge.merged());
    boolean unchanged = merged.equals(sides.theirs());
    if (!unchanged) {
      new RecordWriter(desk.notebook())
          .saveSettings(MAIN, merged, sides.theirs(), note(sides.theirs(), merged), by);
    }
    List<String> remarks = new ArrayList<>();
    List<String> alsoIn = form.variants() ? others(sides, merged, by, remarks) : List.of();
    return result(
        unchanged && alsoIn.isEmpty() ? "unchanged" : "saved",
        sides,
        List.of(),
        merge.fromThem(),
        alsoIn,
        remarks);
  }

  private List<String> others(
      Sides sides, NotebookSettings merged, By by, List<String> remarks) {
    List<String> alsoIn = new ArrayList<>();
    for (Address line : variants(sides.lines())) {
      Optional<NotebookSettings> own = of(line);
      if (!follows(line, sides) || own.equals(Optional.of(merged))) {
        continue;
      }
      try {
        new RecordWriter(desk.notebook())
            .saveSettings(line, merged, own.orElseThrow(), note(own.get(), merged), by);
        alsoIn.add(line.line());
      } catch (Refusal | StoreException e) {
        remarks.add("The settings of " + line.line() + " stayed as they were: " + e.getMessage());
      }
    }
    return alsoIn;
  }

  private static List<Address> variants(LinesInUse lines) {
    return lines.all().stream()
        .map(LinesInUse.Use::line)
        .filter(line -> line.variant().isPresent())
        .toList();
  }

  private boolean follows(Address line, Sides sides) {
    Optional<NotebookSettings> own = of(line);
    return own.equals(Optional.of(sides.base())) || own.equals(Optional.of(sides.theirs()));
  }

  /** A line's own settings; empty when its file is damaged. */
  private Optional<NotebookSettings> of(Address line) {
    try {
      return Optional.of(desk.notebook().latest(line).settings());
    } catch (UnreadableException | StoreException e) {
      Refusals.problemsOf(e);
      return Optional.empty();
    }
  }

  private Sides sides(SettingsForm form) {
    Contents contents = desk.notebook().latest();
    NotebookSettings base = seen(form.seen()).orElseGet(contents::settings);
    List<KitchenWork.FieldProblem> problems = new ArrayList<>();
    return new Sides(
        contents,
        base,
        contents.settings(),
        read(form, base, problems),
        problems,
        new LinesInUse(desk.notebook()));
  }

  private Optional<NotebookSettings> seen(String commit) {
    return commit == null || commit.isBlank()
        ? Optional.empty()
        : Optional.of(
            desk.notebook()
                .at(Asked.read("seen", () -> new CommitId(commit)))
                .settings());
  }

  private static NotebookSettings read(
      SettingsForm form, NotebookSettings base, List<KitchenWork.FieldProblem> problems) {
    if (form.title().isEmpty() || form.title().length() > LONGEST_TITLE) {
      problems.add(
          new KitchenWork.FieldProblem(
              "title",
              form.title().isEmpty() ? "The notebook has no title." : "The title is too long.",
              "Write a few words, at most " + LONGEST_TITLE + " letters."));
    }
    Optional<NetCarbohydrate> net = GoalReading.subtract(form.subtract(), problems);
    EnergyRule energy =
        EnergyRule.withKey(form.energyRule()).orElse(base.policy().energy());
    return new NotebookSettings(
        base.format(),
        form.title(),
        List.of("°C", "°F").contains(form.temperatureUnit())
            ? form.temperatureUnit()
            : base.temperatureUnit(),
        List.of("g", "oz").contains(form.massUnit()) ? form.massUnit() : base.massUnit(),
        new Policy(energy, net.orElse(base.policy().netCarbohydrate())),
        base.extras());
  }

  private static Map<String, String> facts(NotebookSettings settings) {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("title", settings.title());
    facts.put("temperatures in", settings.temperatureUnit());
    facts.put("masses in", settings.massUnit());
    facts.put("energy by", settings.policy().energy().key());
    facts.put("net carbohydrate", settings.policy().netCarbohydrate().inWords());
    return facts;
  }

  private static NotebookSettings merged(Sides sides, Map<String, String> facts) {
    NotebookSettings mine = sides.mine();
    NotebookSettings theirs = sides.theirs();
    boolean myNet = facts(mine).get("net carbohydrate").equals(facts.get("net carbohydrate"));
    return new NotebookSettings(
        theirs.format(),
        facts.get("title"),
        facts.get("temperatures in"),
        facts.get("masses in"),
        new Policy(
            EnergyRule.withKey(facts.get("energy by")).orElseThrow(),
            (myNet ? mine : theirs).policy().netCarbohydrate()),
        theirs.extras());
  }

  private static String note(NotebookSettings from, NotebookSettings to) {
    return "Settings: "
        + String.join(
            ", ",
            GoalReading.changed(facts(from), facts(to)).stream()
                .map(fact -> fact.equals("title") ? "title" : fact + " " + facts(to).get(fact))
                .toList());
  }

  private static KitchenWork.Saved result(
      String outcome,
      Sides sides,
      List<KitchenWork.Clash> clashes,
      List<String> taken,
      List<String> alsoIn,
      List<String> remarks) {
    return new KitchenWork.Saved(
        outcome,
        "notebook",
        clashes,
        sides.contents().commit().hex(),
        taken,
        alsoIn,
        sides.problems(),
        remarks);
  }
}
