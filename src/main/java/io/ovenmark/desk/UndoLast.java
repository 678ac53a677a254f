package io.ovenmark.desk;

import io.ovenmark.formula.Formula;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.LastChange;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Refusal;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;

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
   * What would be taken back.
   *
   * @param variant the variant whose last change it is; empty for the main line
   * @return the change, and what taking it back would do
   * @throws Refusal when there is nothing before it
   */
  public WriteViews.UndoPreview preview(Optional<Address> variant) {
    Address line = line(variant);
    LastChange change = LastChange.of(desk.notebook(), line);
    Contents now = desk.notebook().at(change.commit());
    Contents then = desk.notebook().at(change.before());
    return new WriteViews.UndoPreview(
        name(variant),
        change.commit().hex(),
        change.note(),
        change.author().name(),
        Json.time(change.time()),
        formulas(
            variant,
            now,
            then,
            slug -> Address.latest(slug, variant.flatMap(Address::variant)).line()),
        UndoSentences.of(change, now, then));
  }

  /**
   * Takes it back.
   *
   * @param variant the variant whose last change it is; empty for the main line
   * @param by who and when
   * @return what was taken back
   * @throws Refusal when there is nothing before it
   */
  public WriteViews.Undone call(Optional<Address> variant, By by) {
    return call(variant, Optional.empty(), by);
  }

  /**
   * Takes the change back that a person looked at.
   *
   * @param variant the variant whose last change it is; empty for the main line
   * @param seen commit id of the change; empty when that does not matter
   * @param by who and when
   * @return what was taken back
   * @throws Refusal when there is nothing before it, or another change is the last one by now
   */
  public WriteViews.Undone call(Optional<Address> variant, Optional<String> seen, By by) {
    Notebook notebook = desk.notebook();
    Address line = line(variant);
    LastChange change = LastChange.of(notebook, line);
    if (seen.filter(commit -> !commit.equals(change.commit().hex())).isPresent()) {
      throw LastChange.moved(line);
    }
    String undone = change.undo(by);
    Contents after = notebook.latest(line);
    return new WriteViews.Undone(
        name(variant),
        undone,
        after.commit().hex(),
        formulas(
            variant,
            notebook.at(change.commit()),
            after,
            slug ->
                notebook
                    .newest(Address.latest(slug, variant.flatMap(Address::variant)))
                    .address()
                    .toString()));
  }

  private Address line(Optional<Address> variant) {
    Address line = variant.orElseGet(() -> Address.latest("main", Optional.empty()));
    if (variant.isPresent()) {
      desk.notebook().newest(line);
    }
    return line;
  }

  private static String name(Optional<Address> variant) {
    return variant.map(Address::line).orElse("main");
  }

  private List<WriteViews.UndoneFormula> formulas(
      Optional<Address> variant,
      Contents before,
      Contents after,
      Function<String, String> address) {
    TreeSet<String> slugs = new TreeSet<>(before.formulas());
    slugs.addAll(after.formulas());
    variant.ifPresent(only -> slugs.removeIf(slug -> !slug.equals(only.formula())));
    return slugs.stream()
        .filter(slug -> !before.formulaBlob(slug).equals(after.formulaBlob(slug)))
        .map(slug -> formula(slug, before, after, address))
        .toList();
  }

  private WriteViews.UndoneFormula formula(
      String slug, Contents before, Contents after, Function<String, String> address) {
    if (after.formulaBlob(slug).isEmpty()) {
      return new WriteViews.UndoneFormula(slug, null, List.of());
    }
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
    return new WriteViews.UndoneFormula(slug, address.apply(slug), changes);
  }
}
