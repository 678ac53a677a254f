package io.ovenmark.desk;

import io.ovenmark.formula.Formula;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.ArrivingFormula;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.ForeignNotebook;
import io.ovenmark.notebook.IncomingFormula;
import io.ovenmark.notebook.LegibleFiles;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.photo.BarePhoto;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Takes a formula in from a bundle or from another notebook, with its history.
 *
 * <pre>{@code
 * TakeIn takeIn = new TakeIn(desk);
 * takeIn.look(Path.of("bun.bundle"), TakeIn.Choice.NONE, Progress.UNWATCHED);
 * takeIn.call(Path.of("bun.bundle"), TakeIn.Choice.NONE, by, Progress.UNWATCHED);
 * }</pre>
 */
public final class TakeIn {
  private final Desk desk;

  /**
   * What may be chosen.
   *
   * @param formula short name in the other notebook; empty when there is only one
   * @param as short name here; empty for the same
   * @param differing {@code own} or {@code theirs}; empty to be asked when foods or goals differ
   * @param reference whether the conventional formula comes in too
   * @param seen what {@link #look} said; empty when that does not matter
   */
  public record Choice(
      Optional<String> formula,
      Optional<String> as,
      Optional<String> differing,
      boolean reference,
      Optional<String> seen) {
    /** Nothing chosen; the conventional formula comes in too. */
    public static final Choice NONE =
        new Choice(
            Optional.empty(), Optional.empty(), Optional.empty(), true, Optional.empty());
  }

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public TakeIn(Desk desk) {
    this.desk = desk;
  }

  /**
   * What there is, and what would come in; nothing is written.
   *
   * @param from a bundle, or a notebook's folder
   * @param choice what was chosen so far
   * @param progress told how many objects are read
   * @return what there is
   * @throws Refusal when it is neither, or holds no such formula
   * @throws io.ovenmark.notebook.store.StoreException when the bundle is damaged
   */
  public ShareViews.Offer look(Path from, Choice choice, Progress progress) {
    try (ForeignNotebook foreign = open(from, progress)) {
      Notebook source = foreign.notebook();
      List<ShareViews.OfferedFormula> formulas = formulas(source);
      Optional<String> slug =
          choice.formula().isPresent() || likely(source, formulas).isPresent()
              ? Optional.of(chosen(choice, source, formulas))
              : Optional.empty();
      ShareViews.Arrival arrival =
          slug.map(
                  each ->
                      view(each, IncomingFormula.look(desk.notebook(), source, wish(each, choice))))
              .orElse(null);
      return new ShareViews.Offer(formulas, arrival);
    }
  }

  /**
   * Takes it in.
   *
   * @param from a bundle, or a notebook's folder
   * @param choice what was chosen
   * @param by who takes it in, and when
   * @param progress told how many commits are written
   * @return what was taken in
   * @throws Refusal when nothing was chosen where there is a choice, the name is taken, or what was
   *     seen is not so any more
   * @throws io.ovenmark.notebook.store.StoreException when the bundle is damaged
   */
  public ShareViews.TakenIn call(Path from, Choice choice, By by, Progress progress) {
    try (ForeignNotebook foreign = open(from, progress)) {
      Notebook source = foreign.notebook();
      String slug = chosen(choice, source, formulas(source));
      IncomingFormula.TakenIn taken =
          IncomingFormula.takeIn(
              desk.notebook(),
              source,
              wish(slug, choice),
              choice.seen(),
              by,
              done -> progress.at(done, 0));
      ShareViews.Arrival arrival = view(slug, taken.expected());
      return new ShareViews.TakenIn(
          WriteParts.revision(taken.revision()),
          arrival,
          arrival.differing().isEmpty() ? null : choice.differing().orElse(null),
          taken.leftAsEditedByHand());
    }
  }

  private ForeignNotebook open(Path from, Progress progress) {
    return ForeignNotebook.open(desk.notebook(), from, done -> progress.at(done, 0));
  }

  private static List<ShareViews.OfferedFormula> formulas(Notebook source) {
    return source.latest().formulas().stream()
        .map(slug -> new ShareViews.OfferedFormula(slug, name(source, slug)))
        .toList();
  }

  private static String name(Notebook source, String slug) {
    try {
      return source.latest().formula(slug).orElseThrow().name();
    } catch (UnreadableException damaged) {
      return slug;
    }
  }

  /** The only one that no other one was rebuilt from. */
  private static Optional<String> likely(
      Notebook source, List<ShareViews.OfferedFormula> formulas) {
    List<String> slugs =
        new ArrayList<>(formulas.stream().map(ShareViews.OfferedFormula::formula).toList());
    List<String> references = new ArrayList<>();
    for (String slug : slugs) {
      try {
        source.latest().formula(slug).flatMap(Formula::reference).ifPresent(references::add);
      } catch (UnreadableException damaged) {
        throw LegibleFiles.refusal(damaged);
      }
    }
    slugs.removeAll(references);
    return slugs.size() == 1 ? Optional.of(slugs.get(0)) : Optional.empty();
  }

  /** The formula that was named; else the likely one. */
  private static String chosen(
      Choice choice, Notebook source, List<ShareViews.OfferedFormula> formulas) {
    List<String> slugs =
        formulas.stream().map(ShareViews.OfferedFormula::formula).toList();
    if (choice.formula().isPresent()) {
      String wanted = choice.formula().get();
      if (slugs.contains(wanted)) {
        return wanted;
      }
      throw new Refusal(
          Refusal.Reason.NOT_FOUND,
          wanted,
          "There is no formula \"" + wanted + "\" in what is taken in.",
          "There is: " + some(slugs));
    }
    Optional<String> likely = likely(source, formulas);
    if (likely.isPresent()) {
      return likely.get();
    }
    throw slugs.isEmpty()
        ? new Refusal(
            Refusal.Reason.NOT_FOUND, "", "There is no formula in it.", "Ask for another one.")
        : new Refusal(
            Refusal.Reason.INVALID,
            "formula",
            "There are several formulas in it.",
            "Name one of them: " + some(slugs));
  }

  private static String some(List<String> slugs) {
    List<String> named = new ArrayList<>(slugs.subList(0, Math.min(slugs.size(), 12)));
    if (slugs.size() > named.size()) {
      named.add("…");
    }
    return String.join(", ", named);
  }

  private static IncomingFormula.Wish wish(String slug, Choice choice) {
    return new IncomingFormula.Wish(
        slug,
        choice.as().filter(as -> !as.isBlank()),
        choice.reference(),
        choice.differing().map(TakeIn::differing),
        BarePhoto::of);
  }

  private static IncomingFormula.Differing differing(String word) {
    return switch (word.strip().toLowerCase(Locale.ROOT)) {
      case "own" -> IncomingFormula.Differing.KEEP_OWN;
      case "theirs" -> IncomingFormula.Differing.TAKE_THEIRS;
      default ->
          throw new Refusal(
              Refusal.Reason.INVALID,
              "differing",
              "\"" + word + "\" is no choice.",
              "Say own or theirs.");
    };
  }

  private static ShareViews.Arrival view(String slug, ArrivingFormula expected) {
    List<ShareViews.DifferingFile> differing = new ArrayList<>();
    expected
        .differingFoods()
        .forEach(
            (own, theirs) -> differing.add(new ShareViews.DifferingFile("food", own, theirs)));
    expected
        .differingGoals()
        .forEach(
            (own, theirs) -> differing.add(new ShareViews.DifferingFile("goal", own, theirs)));
    return new ShareViews.Arrival(
        slug,
        expected.name(),
        expected.as(),
        expected.taken(),
        ShareFormula.lines(expected.revisions()),
        expected.bakes(),
        expected.photos(),
        expected.newFoods(),
        List.copyOf(differing),
        expected.newGoals(),
        expected.newReferences(),
        expected.ownReferences(),
        expected.policyDiffers(),
        expected.photosLeftOut(),
        expected.photosStripped(),
        expected.people(),
        expected.seen());
  }
}
