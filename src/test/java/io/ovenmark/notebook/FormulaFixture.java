package io.ovenmark.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaEdit;
import io.ovenmark.formula.Line;
import io.ovenmark.measure.Amount;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A formula of a {@link NotebookFixture} at work: edits, then {@link #revise}. */
public final class FormulaFixture {
  private final NotebookFixture fixture;
  private final Address line;
  private Formula formula;

  FormulaFixture(NotebookFixture fixture, Address line) {
    this.fixture = fixture;
    this.line = line;
    this.formula =
        fixture
            .notebook()
            .newestIfAny(line)
            .map(fixture.notebook()::formula)
            .orElseGet(() -> Formula.named(name(line.formula())));
  }

  private static String name(String slug) {
    return slug.substring(0, 1).toUpperCase(Locale.ROOT)
        + slug.substring(1).replace('-', ' ');
  }

  /** Adds a line that is called like its food. */
  public FormulaFixture line(String food, String amount) {
    List<Line> lines = new ArrayList<>(formula.lines());
    lines.add(Line.of(formula.freeLineId(food), food, Amount.parse(amount)));
    formula = formula.withLines(lines);
    return this;
  }

  /** Edits, such as {@code water=188 g} or {@code bake.temperature=205C}. */
  public FormulaFixture set(String... assignments) {
    for (String assignment : assignments) {
      formula = new FormulaEdit(formula).set(assignment).formula();
    }
    return this;
  }

  /** Replaces the method. */
  public FormulaFixture method(String... steps) {
    formula = formula.withMethod(List.of(steps));
    return this;
  }

  /** The formula as it stands here, committed or not. */
  public Formula formula() {
    return formula;
  }

  /** Commits what stands here; it must be saved as it is. */
  public FormulaFixture revise(String note) {
    FormulaWriter writer = new FormulaWriter(fixture.notebook());
    Optional<Revision> newest = fixture.notebook().newestIfAny(line);
    ReviseOutcome outcome =
        newest.isEmpty()
            ? writer.create(line.formula(), formula, note, fixture.by())
            : writer.revise(newest.get(), formula, note, fixture.by());
    assertThat(outcome)
        .isInstanceOfSatisfying(
            ReviseOutcome.Saved.class, saved -> assertThat(saved.merged()).isFalse());
    return this;
  }

  /** Branches a variant from the newest revision, for a goal or for none ({@code null}). */
  public FormulaFixture fork(String name, String goal) {
    new VariantWriter(fixture.notebook())
        .fork(newest(), name, Optional.ofNullable(goal), "For " + name, fixture.by());
    return fixture.variant(line.formula(), name);
  }

  /** The newest revision. */
  public Revision newest() {
    return fixture.notebook().newest(line);
  }

  /** A revision by its number. */
  public Revision at(int number) {
    return fixture.notebook().revision(line.at(number));
  }
}
