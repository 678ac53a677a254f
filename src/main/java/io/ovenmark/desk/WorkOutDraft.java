package io.ovenmark.desk;

import io.ovenmark.change.FormulaDiff;
import io.ovenmark.compare.Comparison;
import io.ovenmark.compare.Side;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.formula.FormulaDraft;
import io.ovenmark.formula.Line;
import io.ovenmark.json.Problem;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Slug;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Works out a formula that is still being typed, beside the revision that it began from. What
 * cannot be read yet makes the figures that rest on it unknown or bounded, never zero.
 *
 * <pre>{@code
 * DraftViews.DraftSheet sheet =
 *     new WorkOutDraft(desk).call(document, Optional.of("seeded-lupin-bun@7"), Set.of());
 * }</pre>
 *
 * <p>Both sides are worked out with the foods and settings of today, so that every difference comes
 * from what was typed; a remark says so where the base's own figures are others.
 */
public final class WorkOutDraft {
  private static final String DOCUMENT = "draft";
  private static final String FIRST_NOTE = "First version";

  private final Desk desk;

  /** The revision that a draft began from, as far as it can be read. */
  private record Base(Revision revision, Formula formula, Address line) {}

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public WorkOutDraft(Desk desk) {
    this.desk = desk;
  }

  /**
   * Works it out.
   *
   * @param document the formula as JSON, in which any text may be half typed
   * @param base address of the revision that it began from; empty for a new formula
   * @param weighed indices in the document of the lines that are in the bowl already
   * @return the figures, what they were, what changes, and what cannot be read
   * @throws Refusal when there is no such revision
   * @throws io.ovenmark.json.UnreadableException when the document is no JSON object at all, or the
   *     base is damaged
   */
  public DraftViews.DraftSheet call(
      JsonText document, Optional<String> base, Set<Integer> weighed) {
    FormulaDraft draft = FormulaCodec.draft(DOCUMENT, document.utf8());
    Optional<Base> from = base.map(this::base);
    Address line =
        from.map(Base::line).orElseGet(() -> Address.latest(DOCUMENT, Optional.empty()));
    Desk.Sheet sheet = desk.draft(draft.formula(), line, List.of());
    int number = from.map(Base::line).map(desk.notebook()::nextNumber).orElse(1);
    List<Views.ChangeView> changes = from.map(f -> changes(f, draft.formula())).orElse(List.of());
    return new DraftViews.DraftSheet(
        new ShowFormula(desk).unsaved(from.map(Base::line), number, sheet),
        draft.places(),
        bowl(draft, sheet, weighed),
        from.map(f -> comparison(f, sheet, number)).orElse(null),
        changes,
        from.isEmpty() ? FIRST_NOTE : ReviseFormula.noteFrom(changes),
        from.isEmpty() ? proposedName(draft) : null,
        problems(draft, sheet, line),
        from.map(this::remarks).orElse(List.of()));
  }

  /**
   * How two documents differ.
   *
   * @param from the earlier
   * @param to the later
   * @param line a line of history whose foods give the names; empty for the main line's
   * @return the changes in words
   * @throws io.ovenmark.json.UnreadableException when one is no JSON object at all
   */
  public DraftViews.DraftDifference differences(
      JsonText from, JsonText to, Optional<String> line) {
    Contents foods =
        line.map(text -> desk.notebook().latest(WriteParts.line(desk.address(text))))
            .orElseGet(desk.notebook()::latest);
    return new DraftViews.DraftDifference(
        WriteParts.changes(
            desk.units(),
            FormulaCodec.draft(DOCUMENT, from.utf8()).formula(),
            foods,
            FormulaCodec.draft(DOCUMENT, to.utf8()).formula(),
            foods));
  }

  /**
   * Reads a draft that is to be saved.
   *
   * @param document the formula as JSON
   * @return the formula
   * @throws Refusal with everything that cannot be read
   */
  static Formula complete(JsonText document) {
    FormulaDraft draft = FormulaCodec.draft(DOCUMENT, document.utf8());
    if (!draft.problems().isEmpty()) {
      throw Refusal.of(draft.problems());
    }
    return draft.formula();
  }

  private Base base(String text) {
    Address address = desk.address(text);
    Revision revision = desk.notebook().revision(address);
    return new Base(
        revision, desk.notebook().formula(revision), WriteParts.line(revision.address()));
  }

  private List<Views.ChangeView> changes(Base base, Formula draft) {
    if (FormulaDiff.between(base.formula(), draft).isEmpty()) {
      return List.of();
    }
    return WriteParts.changes(
        desk.units(),
        base.formula(),
        desk.notebook().at(base.revision().commit()),
        draft,
        desk.notebook().latest(base.line()));
  }

  private ComparisonViews.ComparisonView comparison(Base base, Desk.Sheet now, int number) {
    Desk.Sheet before = desk.draft(base.formula(), base.line(), List.of());
    Revision revision = base.revision();
    String address = revision.address().toString();
    String formula = revision.address().formula();
    String variant = revision.address().variant().orElse(null);
    Comparison comparison =
        Comparison.between(
            Side.of(address, before.worksheet()).withGoal(before.goal()),
            Side.of(DOCUMENT, now.worksheet()).withGoal(now.goal()));
    return ComparisonViewMaker.of(
        comparison,
        new ComparisonViews.SideView(
            address,
            formula,
            variant,
            revision.number(),
            revision.commit().hex(),
            Json.time(revision.time()),
            revision.author().name(),
            revision.note(),
            base.formula().name()),
        new ComparisonViews.SideView(
            DOCUMENT,
            formula,
            variant,
            number,
            null,
            null,
            null,
            null,
            now.worksheet().formula().name()),
        Map.of());
  }

  /** What is in the bowl, and what is still to come. */
  private static FigureSet bowl(FormulaDraft draft, Desk.Sheet sheet, Set<Integer> weighed) {
    Quantity in = Quantity.ZERO;
    Quantity left = Quantity.ZERO;
    for (int i = 0; i < draft.places().size(); i++) {
      Quantity grams = sheet.worksheet().lines().get(i).grams();
      if (weighed.contains(draft.places().get(i))) {
        in = in.plus(grams);
      } else {
        left = left.plus(grams);
      }
    }
    Map<String, Quantity> bowl = new LinkedHashMap<>();
    bowl.put("in_bowl_g", in);
    bowl.put("left_g", left);
    return new FigureSet(bowl);
  }

  private List<String> remarks(Base base) {
    return desk.restsOnOtherFoods(base.line(), base.revision())
        ? List.of(
            "Foods, the goal or settings changed since "
                + base.revision().address()
                + "; both sides are worked out with today’s.")
        : List.of();
  }

  private String proposedName(FormulaDraft draft) {
    String name = draft.formula().name();
    return name.equals(FormulaDraft.NO_NAME) ? "" : Slug.of(name, "");
  }

  /** What cannot be read, then what can be read and not be saved: foods and goals that are not. */
  private List<Views.ProblemView> problems(FormulaDraft draft, Desk.Sheet sheet, Address line) {
    List<Views.ProblemView> problems = new ArrayList<>();
    draft.problems().forEach(problem -> problems.add(view(problem)));
    List<WorksheetLine> lines = sheet.worksheet().lines();
    for (int i = 0; i < lines.size(); i++) {
      Line each = lines.get(i).line();
      if (lines.get(i).food().isEmpty() && !each.food().equals(FormulaDraft.NO_FOOD)) {
        problems.add(
            new Views.ProblemView(
                "lines." + draft.places().get(i) + ".food",
                "The pantry has no food \"" + each.food() + "\".",
                "Choose another, or add it to the pantry."));
      }
    }
    draft
        .formula()
        .goal()
        .filter(goal -> !knows(goal, line))
        .ifPresent(
            goal ->
                problems.add(
                    new Views.ProblemView(
                        "goal",
                        "There is no goal \"" + goal + "\" in this notebook.",
                        "Choose another, or none.")));
    return List.copyOf(problems);
  }

  private boolean knows(String goal, Address line) {
    return desk.notebook().latest().goal(goal).isPresent()
        || line.variant().isPresent() && desk.notebook().latest(line).goal(goal).isPresent();
  }

  private static Views.ProblemView view(Problem problem) {
    String path = problem.field().replaceAll("\\[(\\d+)\\]", ".$1");
    return new Views.ProblemView(path, problem.message(), problem.hint());
  }
}
