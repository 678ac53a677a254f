package io.ovenmark.desk;

import static java.util.Objects.requireNonNull;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.formula.Yield;
import io.ovenmark.json.Extras;
import io.ovenmark.measure.Slug;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.FormulaWriter;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.ReviseOutcome;
import io.ovenmark.notebook.Revision;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Adds a formula to the main line.
 *
 * <pre>{@code
 * NewFormula verb = new NewFormula(desk);
 * verb.call(verb.named("Seeded lupin bun"), Optional.empty(), "Begin", by);
 * }</pre>
 */
public final class NewFormula {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public NewFormula(Desk desk) {
    this.desk = desk;
  }

  /**
   * A formula of which nothing but its name is stated.
   *
   * @param name its name for people
   * @return the formula
   * @throws Refusal when the name is blank
   */
  public Formula named(String name) {
    requireNonNull(name, "name");
    try {
      return new Formula(
          name.strip(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          List.of(),
          List.of(),
          List.of(),
          Yield.UNSTATED,
          Optional.empty(),
          Extras.NONE);
    } catch (IllegalArgumentException e) {
      throw Refusal.of("name", e);
    }
  }

  /**
   * A copy of a revision to begin another formula with; what it was copied from becomes the
   * conventional formula that it is rebuilt from.
   *
   * @param address the revision
   * @return the beginning
   * @throws Refusal when there is no such revision
   */
  public WriteViews.Beginning copyOf(Address address) {
    Revision revision = desk.notebook().revision(address);
    Formula formula = desk.notebook().formula(revision);
    Formula copy = formula.withReference(Optional.of(revision.address().formula()));
    return new WriteViews.Beginning(
        WriteParts.revision(revision),
        formula.name(),
        new String(FormulaCodec.write(copy), StandardCharsets.UTF_8).strip());
  }

  /**
   * Commits it as revision 1.
   *
   * @param formula the formula
   * @param shortName what it is filed under; empty to take one from its name
   * @param note why, not blank
   * @param by who and when
   * @return what was committed
   * @throws Refusal when there is one of that short name, a food is unknown, or there is no such
   *     goal
   */
  public WriteViews.RevisionWritten call(
      Formula formula, Optional<String> shortName, String note, By by) {
    WriteParts.requireGoal(formula, desk.notebook().latest());
    List<String> remarks = new ArrayList<>();
    String slug = shortName.orElseGet(() -> proposed(formula.name(), remarks));
    ReviseOutcome.Saved saved = new FormulaWriter(desk.notebook()).create(slug, formula, note, by);
    remarks.addAll(WriteParts.changed(desk, saved.revision()).remarks());
    return new WriteViews.RevisionWritten(
        "committed",
        WriteParts.revision(saved.revision()),
        null,
        List.of(),
        null,
        List.of(),
        List.of(),
        saved.foodsAdded(),
        saved.leftAsEditedByHand(),
        List.copyOf(remarks));
  }

  /** The short name that a formula gets when none is asked for. */
  String shortName(Formula formula) {
    return proposed(formula.name(), new ArrayList<>());
  }

  /** The short name for a name; one without letters a-z gets a number. */
  private String proposed(String name, List<String> remarks) {
    Set<String> taken = new HashSet<>(desk.notebook().latest().formulas());
    int number = 1;
    while (taken.contains("formula-" + number)) {
      number++;
    }
    String fallback = "formula-" + number;
    String slug = Slug.of(name, fallback);
    if (slug.equals(fallback)) {
      remarks.add(
          "The name has no letter a-z, so the formula is filed as \""
              + slug
              + "\"; its name is kept as it is written.");
    }
    return slug;
  }
}
