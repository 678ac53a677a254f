package io.ovenmark.desk;

import io.ovenmark.formula.Formula;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Excerpt;
import io.ovenmark.notebook.FormulaNames;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.store.Author;
import io.ovenmark.photo.BarePhoto;
import io.ovenmark.publish.share.Discretion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongConsumer;

/**
 * Writes one formula with its history for somebody else: as a Git bundle in one file, or as a
 * notebook's folder.
 *
 * <pre>{@code
 * ShareFormula share = new ShareFormula(desk);
 * share.preview("seeded-lupin-bun", Choice.USUAL, by);
 * share.bundle("seeded-lupin-bun", Choice.USUAL, file, by, Progress.UNWATCHED);
 * }</pre>
 */
public final class ShareFormula {
  private final Desk desk;

  /**
   * What may be chosen.
   *
   * @param reference whether the conventional formula that it was rebuilt from goes along
   * @param emails whether people's e-mail addresses go along
   */
  public record Choice(boolean reference, boolean emails) {
    /** With the conventional formula, without addresses. */
    public static final Choice USUAL = new Choice(true, false);
  }

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ShareFormula(Desk desk) {
    this.desk = desk;
  }

  /**
   * What would go along; nothing is written.
   *
   * @param formula short name
   * @param choice what was chosen
   * @param by who shares it, and when
   * @return what goes along, and what a person should look at before
   * @throws Refusal when there is no such formula on the main line
   */
  public ShareViews.Share preview(String formula, Choice choice, By by) {
    return view(formula, choice, excerpt(formula, choice, by));
  }

  /**
   * Writes a bundle, which native Git clones and Ovenmark takes in.
   *
   * @param formula short name
   * @param choice what was chosen
   * @param file where; must not exist
   * @param by who shares it, and when
   * @param progress told how many commits are written
   * @return what was written
   * @throws Refusal when there is no such formula, or something at that place
   */
  public ShareViews.Shared bundle(
      String formula, Choice choice, Path file, By by, Progress progress) {
    if (Files.exists(file)) {
      throw new Refusal(
          Refusal.Reason.EXISTS,
          file.toString(),
          "There is a file or folder " + file + " already.",
          "Choose another name.");
    }
    Path folder = file.toAbsolutePath().normalize().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new Refusal(
          Refusal.Reason.NOT_FOUND,
          file.toString(),
          "There is no folder " + folder + ".",
          "Make it first, or choose another one.");
    }
    Excerpt excerpt = excerpt(formula, choice, by);
    excerpt.writeBundle(file.toAbsolutePath().normalize(), told(excerpt, progress));
    try {
      return new ShareViews.Shared(
          view(formula, choice, excerpt), file.toString(), false, Files.size(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Writes a notebook's folder, which Ovenmark and native Git open.
   *
   * @param formula short name
   * @param choice what was chosen
   * @param folder where; missing or empty, and outside of the notebook
   * @param by who shares it, and when
   * @param progress told how many commits are written
   * @return what was written
   * @throws Refusal when there is no such formula, or something at that place
   */
  public ShareViews.Shared folder(
      String formula, Choice choice, Path folder, By by, Progress progress) {
    Path place = folder.toAbsolutePath().normalize();
    if (place.startsWith(desk.notebook().folder())) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          folder.toString(),
          "This folder is a part of the notebook itself.",
          "Choose a folder outside of it.");
    }
    Excerpt excerpt = excerpt(formula, choice, by);
    excerpt.writeFolder(place, told(excerpt, progress));
    return new ShareViews.Shared(
        view(formula, choice, excerpt), folder.toString(), true, null);
  }

  private static LongConsumer told(Excerpt excerpt, Progress progress) {
    return done -> progress.at(done, excerpt.steps());
  }

  private Excerpt excerpt(String slug, Choice choice, By by) {
    Notebook notebook = desk.notebook();
    Discretion discretion = discretion(slug, choice);
    return Excerpt.of(
        notebook,
        new Excerpt.Wish(
            slug,
            choice.reference(),
            author -> choice.emails() ? author : new Author(author.name(), ""),
            discretion::note,
            BarePhoto::of,
            discretion::speaksOfOthers),
        by);
  }

  private Discretion discretion(String slug, Choice choice) {
    Notebook notebook = desk.notebook();
    Map<String, Set<String>> names = FormulaNames.of(notebook);
    Set<String> own = new HashSet<>(names.getOrDefault(slug, Set.of()));
    own.add(slug);
    for (Address line : notebook.lines(slug)) {
      if (notebook.nextNumber(line) > 1) {
        for (Revision revision : notebook.revisions(line)) {
          reference(revision).ifPresent(each -> spokenOf(own, names, each, choice));
        }
      }
    }
    List<String> others = new ArrayList<>();
    names.forEach(
        (each, called) -> {
          others.add(each);
          others.addAll(called);
        });
    others.removeAll(own);
    return Discretion.of(own, others, choice.emails());
  }

  /** The formula's own file names its reference, whether that goes along or not. */
  private static void spokenOf(
      Set<String> own, Map<String, Set<String>> names, String reference, Choice choice) {
    own.add(reference);
    if (choice.reference()) {
      own.addAll(names.getOrDefault(reference, Set.of()));
    }
  }

  private Optional<String> reference(Revision revision) {
    try {
      return Optional.of(desk.notebook().formula(revision)).flatMap(Formula::reference);
    } catch (UnreadableException damaged) {
      return Optional.empty();
    }
  }

  private static ShareViews.Share view(String slug, Choice choice, Excerpt excerpt) {
    Excerpt.Contained contained = excerpt.contained();
    return new ShareViews.Share(
        slug,
        contained.name(),
        lines(contained.revisions()),
        contained.bakes(),
        contained.photos(),
        contained.foods(),
        contained.goals(),
        contained.references().stream()
            .map(
                each ->
                    new ShareViews.SharedReference(
                        each, contained.referencesAlong().contains(each)))
            .toList(),
        contained.people().stream()
            .map(
                each ->
                    new ShareViews.Person(
                        each.name(),
                        choice.emails() && !each.email().isEmpty() ? each.email() : null))
            .distinct()
            .toList(),
        contained.publications(),
        contained.notes(),
        contained.notesCut(),
        contained.commitsLeftOut(),
        contained.photosLeftOut(),
        contained.photosStripped(),
        contained.speaksOfOthers(),
        contained.unknownFields().entrySet().stream()
            .map(each -> new ShareViews.FieldsOfFile(each.getKey(), each.getValue()))
            .toList(),
        choice.reference(),
        choice.emails(),
        slug + ".bundle");
  }

  static List<ShareViews.SharedLine> lines(Map<String, Integer> revisions) {
    return revisions.entrySet().stream()
        .map(
            each -> {
              String[] words = each.getKey().split("/", 2);
              String variant = words.length > 1 ? words[1] : null;
              return new ShareViews.SharedLine(each.getKey(), variant, each.getValue());
            })
        .toList();
  }
}
