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
   * @param variant a variant that is shared alone, as the main line of what is shared; empty for
   *     the main line with all variants, or for the first variant when the main line does not have
   *     the formula
   * @param reference whether the conventional formula that it was rebuilt from goes along
   * @param emails whether people's e-mail addresses go along
   * @param prices whether prices of foods go along, and fields of their files that Ovenmark does
   *     not know
   * @param othersNotes whether notes go along that others than the sharer wrote
   */
  public record Choice(
      Optional<String> variant,
      boolean reference,
      boolean emails,
      boolean prices,
      boolean othersNotes) {
    /** All lines, and nothing of what stays unless somebody wants it to go along. */
    public static final Choice USUAL = new Choice(Optional.empty(), false, false, false, false);
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
   * @throws Refusal when there is no such formula or variant
   */
  public ShareViews.Share preview(String formula, Choice choice, By by) {
    Address lead = lead(formula, choice);
    return view(lead, choice, excerpt(lead, choice, by), by);
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
    Address lead = lead(formula, choice);
    Excerpt excerpt = excerpt(lead, choice, by);
    excerpt.writeBundle(file.toAbsolutePath().normalize(), told(excerpt, progress));
    try {
      return new ShareViews.Shared(
          view(lead, choice, excerpt, by), file.toString(), false, Files.size(file));
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
    Address lead = lead(formula, choice);
    Excerpt excerpt = excerpt(lead, choice, by);
    excerpt.writeFolder(place, told(excerpt, progress));
    return new ShareViews.Shared(
        view(lead, choice, excerpt, by), folder.toString(), true, null);
  }

  private static LongConsumer told(Excerpt excerpt, Progress progress) {
    return done -> progress.at(done, excerpt.steps());
  }

  /** The main line, if it has the formula; else a variant. */
  private Address lead(String slug, Choice choice) {
    Notebook notebook = desk.notebook();
    Address main = Address.latest(slug, Optional.empty());
    if (choice.variant().isPresent()) {
      return Address.latest(slug, choice.variant());
    }
    return notebook.newestIfAny(main).isPresent()
        ? main
        : notebook.lines(slug).stream()
            .skip(1)
            .filter(line -> notebook.newestIfAny(line).isPresent())
            .findFirst()
            .orElse(main);
  }

  private Excerpt excerpt(Address lead, Choice choice, By by) {
    Discretion discretion = discretion(lead.formula(), choice);
    return Excerpt.of(
        desk.notebook(),
        new Excerpt.Wish(
            lead,
            choice.reference(),
            choice.prices(),
            author -> choice.emails() ? author : new Author(author.name(), ""),
            new ToldNotes(discretion, by.author(), choice.othersNotes()),
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

  private ShareViews.Share view(Address lead, Choice choice, Excerpt excerpt, By by) {
    Excerpt.Contained contained = excerpt.contained();
    String slug = lead.formula();
    Notebook notebook = desk.notebook();
    return new ShareViews.Share(
        slug,
        contained.name(),
        lead.variant().orElse(null),
        notebook.newestIfAny(Address.latest(slug, Optional.empty())).isPresent(),
        notebook.lines(slug).stream()
            .filter(line -> notebook.newestIfAny(line).isPresent())
            .flatMap(line -> line.variant().stream())
            .toList(),
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
        contained.prices(),
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
        choice.prices(),
        choice.othersNotes(),
        by.author().name(),
        slug + lead.variant().map(name -> "-" + name).orElse("") + ".bundle");
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
