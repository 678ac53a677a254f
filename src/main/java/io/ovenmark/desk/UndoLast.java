package io.ovenmark.desk;

import io.ovenmark.formula.Formula;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.RecordWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Takes the last change back, whatever it was: a revision, a bake, a food. Undoing an undo does the
 * change again.
 */
public final class UndoLast {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public UndoLast(Desk desk) {
    this.desk = desk;
  }

  /**
   * Takes it back.
   *
   * @param variant the variant whose last change it is; empty for the main line
   * @param by who and when
   * @return what was taken back
   * @throws io.ovenmark.notebook.Refusal when there is nothing before it
   */
  public WriteViews.Undone call(Optional<Address> variant, By by) {
    Notebook notebook = desk.notebook();
    Address line = variant.orElseGet(() -> Address.latest("main", Optional.empty()));
    if (variant.isPresent()) {
      notebook.newest(line);
    }
    Contents before = notebook.latest(line);
    String undone = new RecordWriter(notebook).undo(line, by);
    Contents after = notebook.latest(line);
    List<WriteViews.UndoneFormula> formulas = new ArrayList<>();
    TreeSet<String> slugs = new TreeSet<>(before.formulas());
    slugs.addAll(after.formulas());
    variant.ifPresent(only -> slugs.removeIf(slug -> !slug.equals(only.formula())));
    for (String slug : slugs) {
      if (!before.formulaBlob(slug).equals(after.formulaBlob(slug))) {
        formulas.add(formula(slug, variant, before, after));
      }
    }
    return new WriteViews.Undone(
        variant.map(Address::line).orElse("main"), undone, after.commit().hex(), formulas);
  }

  private WriteViews.UndoneFormula formula(
      String slug, Optional<Address> variant, Contents before, Contents after) {
    if (after.formulaBlob(slug).isEmpty()) {
      return new WriteViews.UndoneFormula(slug, null, List.of());
    }
    Address line = Address.latest(slug, variant.flatMap(Address::variant));
    String address = desk.notebook().newest(line).address().toString();
    List<Views.ChangeView> changes = List.of();
    try {
      Optional<Formula> from = before.formula(slug);
      Optional<Formula> to = after.formula(slug);
      if (from.isPresent() && to.isPresent()) {
        changes = WriteParts.changes(desk.units(), from.get(), before, to.get(), after);
      }
    } catch (UnreadableException damaged) {
      // a damaged file was taken back or brought back: there are no words for what changed
    }
    return new WriteViews.UndoneFormula(slug, address, changes);
  }
}
