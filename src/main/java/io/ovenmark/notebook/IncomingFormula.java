package io.ovenmark.notebook;

import static java.util.Objects.requireNonNull;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.formula.Line;
import io.ovenmark.measure.Slug;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.Chronicle;
import io.ovenmark.notebook.store.CommitFacts;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.notebook.store.Transfer;
import io.ovenmark.notebook.store.WriteOutcome;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.LongConsumer;

/**
 * Takes a formula of another notebook in, with its history.
 *
 * <p>Its commits are made again on top of the main line, each with the note, the author and the
 * time that it had, and with the foods, the goals and the rule for energy that its figures rested
 * on; so its timeline says here what it said there. The last commit, by whoever takes it in, puts
 * the own foods, goals and settings back where they differ, brings the foods that are new, and can
 * be undone like any other change. Variants become branches, publications become tags. All of it
 * becomes visible at once.
 */
public final class IncomingFormula {
  /** Trailer that names a formula that was taken in, and the commit before that. */
  public static final String TAKES_IN = "Takes-in";

  private final Notebook target;
  private final Notebook source;
  private final Wish wish;
  private final CommitId head;
  private final Contents own;
  private final MadeContents contents;
  private final IncomingFiles files;
  private final OwnFiles ownFiles;
  private final FormulaPast past;
  private final String as;
  private final Formula newest;
  private final boolean reference;

  /** What becomes of foods and goals that differ from the own ones of the same name. */
  public enum Differing {
    /** The own ones stay, and the formula's newest revision uses them. */
    KEEP_OWN,
    /** Theirs come in under other names, and a new revision of the formula uses those. */
    TAKE_THEIRS
  }

  /**
   * What is wanted.
   *
   * @param formula its short name in the other notebook
   * @param as its short name here; empty for the same
   * @param reference whether the formula that it was rebuilt from comes in too, if there is none of
   *     that name here
   * @param differing what becomes of what differs; empty to be refused when anything does
   * @param pictures as in {@link Excerpt.Wish}
   */
  public record Wish(
      String formula,
      Optional<String> as,
      boolean reference,
      Optional<Differing> differing,
      Function<byte[], Optional<byte[]>> pictures) {
    /** Checks that nothing is null. */
    public Wish {
      requireNonNull(formula, "formula");
      requireNonNull(as, "as");
      requireNonNull(differing, "differing");
      requireNonNull(pictures, "pictures");
    }
  }

  /**
   * What was taken in.
   *
   * @param revision its newest revision here
   * @param expected what came in
   * @param leftAsEditedByHand files on disk that were in the way and stayed
   */
  public record TakenIn(
      Revision revision, ArrivingFormula expected, List<String> leftAsEditedByHand) {}

  private IncomingFormula(Notebook target, Notebook source, Wish wish) {
    this.target = target;
    this.source = source;
    this.wish = wish;
    this.as = wish.as().orElse(wish.formula());
    FormulaWriter.checked(as, () -> Slug.check(as));
    this.head = target.head(Layout.MAIN);
    this.own = target.at(head);
    this.contents = new MadeContents(source.store(), wish.pictures());
    this.files = new IncomingFiles(source, contents, own, wish.formula(), as);
    this.ownFiles = new OwnFiles(target, own, contents);
    LegibleFiles legible = new LegibleFiles(source);
    this.newest = legible.newest(wish.formula());
    this.reference =
        wish.reference()
            && newest.reference().filter(each -> own.formulaBlob(each).isPresent()).isEmpty();
    this.past = FormulaPast.of(source, wish.formula(), reference);
    past.ends().values().forEach(end -> legible.check(end.files()));
  }

  /**
   * What would come in; nothing is written.
   *
   * @param target the own notebook
   * @param source the other one
   * @param wish what is wanted
   * @return what comes in, and what differs
   * @throws Refusal when there is no such formula, or a file that it rests on cannot be read
   */
  public static ArrivingFormula look(Notebook target, Notebook source, Wish wish) {
    return new IncomingFormula(target, source, wish).expected();
  }

  /**
   * Takes it in.
   *
   * @param target the own notebook
   * @param source the other one
   * @param wish what is wanted
   * @param seen what the person saw; empty when that does not matter
   * @param by who takes it in, and when
   * @param progress told how many commits are written
   * @return what was taken in
   * @throws Refusal when the name is taken, something differs and nothing was chosen, what was seen
   *     is not so any more, or a file cannot be read
   */
  public static TakenIn takeIn(
      Notebook target,
      Notebook source,
      Wish wish,
      Optional<String> seen,
      By by,
      LongConsumer progress) {
    while (true) {
      IncomingFormula incoming = new IncomingFormula(target, source, wish);
      ArrivingFormula expected = incoming.expected();
      if (seen.filter(each -> !each.equals(expected.seen())).isPresent()) {
        throw new Refusal(
            Refusal.Reason.CONFLICT,
            wish.formula(),
            "What is in this notebook or in the other one changed meanwhile.",
            "Nothing was written. Look at what differs, then decide again.");
      }
      incoming.refuseTaken(expected);
      incoming.refuseUndecided(expected);
      Chronicle chronicle = incoming.told(expected, by);
      WriteOutcome outcome = incoming.write(chronicle, by, progress);
      if (outcome instanceof WriteOutcome.Written written) {
        Address line = Address.latest(incoming.as, Optional.empty());
        return new TakenIn(
            target.newestAt(line, written.commit()), expected, written.leftAsEditedByHand());
      }
    }
  }

  /** The commit before a formula was taken in, of the commit that ended it. */
  static Optional<CommitId> before(Notebook notebook, CommitFacts facts) {
    String[] words = facts.trailers().getOrDefault(TAKES_IN, "").split(" ");
    if (words.length != 2 || !words[1].matches("[0-9a-f]{40}")) {
      return Optional.empty();
    }
    CommitId before = new CommitId(words[1]);
    try {
      return Optional.of(before)
          .filter(commit -> notebook.store().isAncestor(commit, facts.id()));
    } catch (StoreException unknown) {
      return Optional.empty();
    }
  }

  private WriteOutcome write(Chronicle chronicle, By by, LongConsumer progress) {
    try {
      return new Transfer(target.store())
          .takeIn(
              chronicle, Layout.MAIN, head, contents::read, by.author(), by.time(), progress);
    } catch (StoreException e) {
      if (e.reason() == StoreException.Reason.NAME_TAKEN) {
        throw taken();
      }
      throw e;
    }
  }

  private Refusal taken() {
    return new Refusal(
        Refusal.Reason.EXISTS,
        as,
        "There is, or was, a formula \"" + as + "\" in this notebook already.",
        "Choose another short name for the one that comes in.");
  }

  private void refuseTaken(ArrivingFormula expected) {
    if (expected.taken()) {
      throw taken();
    }
  }

  private boolean isTaken() {
    return target.isKnown(as)
        || target.handEdit(as).isPresent()
        || !target.store().list(head, Layout.bakes(as)).isEmpty()
        || !target.store().list(head, Layout.photos(as)).isEmpty()
        || !target.store().tags(Layout.PUBLISHED + as + "/").isEmpty();
  }

  private void refuseUndecided(ArrivingFormula expected) {
    List<String> names = new ArrayList<>(expected.differingFoods().keySet());
    names.addAll(expected.differingGoals().keySet());
    if (names.isEmpty() || wish.differing().isPresent()) {
      return;
    }
    throw new Refusal(
        Refusal.Reason.CONFLICT,
        "differing",
        "This notebook has other figures for " + String.join(", ", names) + ".",
        "Say whether to keep your own, or to take theirs in under other names.");
  }

  private ArrivingFormula expected() {
    Address main = Address.latest(wish.formula(), Optional.empty());
    FormulaPast.End end = past.ends().get(main);
    past.moments().forEach(moment -> files.incoming(moment.files()));
    SortedMap<String, BlobId> now = files.incoming(end.files());
    SortedSet<String> paths = new TreeSet<>();
    past.ends().values().forEach(each -> paths.addAll(files.incoming(each.files()).keySet()));
    Formula formula = newest;
    List<String> foods = new ArrayList<>(foods(formula));
    List<String> goals = new ArrayList<>(formula.goal().stream().toList());
    List<String> references = references(now);
    for (String each : references) {
      Formula other = formula(Layout.formula(each), now);
      foods.addAll(foods(other));
      goals.addAll(other.goal().stream().toList());
    }
    SortedMap<String, String> differingFoods = ownFiles.differing(foods, now, Layout::food);
    SortedMap<String, String> differingGoals = ownFiles.differing(goals, now, Layout::goal);
    Map<String, Integer> revisions = new LinkedHashMap<>();
    past.ends()
        .keySet()
        .forEach(
            line ->
                revisions.put(
                    Address.latest(as, line.variant()).line(), source.nextNumber(line) - 1));
    boolean policy = !source.at(source.head(Layout.MAIN)).settings().policy()
        .equals(own.settings().policy());
    return new ArrivingFormula(
        formula.name(),
        as,
        isTaken(),
        revisions,
        (int) paths.stream().filter(Layout::isBake).count(),
        (int) paths.stream().filter(Layout::isPhoto).count(),
        ownFiles.fresh(foods, now, Layout::food),
        differingFoods,
        ownFiles.fresh(goals, now, Layout::goal),
        differingGoals,
        references,
        formula.reference().filter(each -> own.formulaBlob(each).isPresent()).stream().toList(),
        policy,
        contents.unreadable(end.files()),
        List.copyOf(contents.stripped()),
        past.moments().stream()
            .map(moment -> moment.facts().author().name())
            .distinct()
            .sorted()
            .toList(),
        seen(differingFoods, differingGoals, policy));
  }

  /** The same as long as the other notebook is, and the own foods and goals that differ. */
  private String seen(
      SortedMap<String, String> foods, SortedMap<String, String> goals, boolean policy) {
    StringBuilder said = new StringBuilder(source.head(Layout.MAIN).hex());
    past.ends()
        .keySet()
        .forEach(line -> said.append(' ').append(source.head(line.branch()).hex()));
    foods.keySet().forEach(each -> said.append(own.blob(Layout.food(each))));
    goals.keySet().forEach(each -> said.append(own.blob(Layout.goal(each))));
    said.append(policy);
    return target.blobOf(said.toString().getBytes(StandardCharsets.UTF_8)).hex();
  }

  private Formula formula(String path, SortedMap<String, BlobId> files) {
    return FormulaCodec.read(path, contents.read(files.get(path)));
  }

  private static List<String> foods(Formula formula) {
    return formula.lines().stream().map(Line::food).distinct().toList();
  }

  /** The reference formulas that come in and are not here yet. */
  private List<String> references(SortedMap<String, BlobId> now) {
    return now.keySet().stream()
        .flatMap(path -> Layout.slugIn(Layout.FORMULAS, path).stream())
        .filter(each -> !each.equals(as))
        .toList();
  }

  private Chronicle told(ArrivingFormula expected, By by) {
    Retelling retelling =
        new Retelling(
            past,
            wish.formula(),
            as,
            own::blob,
            new Retelling.Telling(
                files::incoming,
                (note, otherwise, author) -> note.isBlank() ? otherwise : note,
                author -> author));
    retelling.tellAll();
    retelling.tellPublications(source.store());
    Address main = Address.latest(as, Optional.empty());
    SortedMap<String, BlobId> now =
        files.incoming(past.ends().get(Address.latest(wish.formula(), Optional.empty())).files());
    Chronicle along = retelling.chronicle();
    String message = message(expected);
    retelling.append(
        main, here(now, expected), by, ids -> message + TakenAlong.trailer(along, ids));
    return retelling.chronicle();
  }

  /** What stays of the newest files beside the own ones. */
  private SortedMap<String, BlobId> here(SortedMap<String, BlobId> now, ArrivingFormula expected) {
    SortedMap<String, BlobId> kept = new TreeMap<>();
    now.forEach(
        (path, blob) -> {
          boolean shared = path.startsWith(Layout.PANTRY + "/") || path.startsWith(Layout.GOALS);
          if (!shared && !path.equals(Layout.SETTINGS)) {
            kept.put(path, blob);
          }
        });
    expected.newFoods().forEach(each -> kept.put(Layout.food(each), now.get(Layout.food(each))));
    expected.newGoals().forEach(each -> kept.put(Layout.goal(each), now.get(Layout.goal(each))));
    if (wish.differing().equals(Optional.of(Differing.TAKE_THEIRS))) {
      expected
          .differingFoods()
          .forEach((slug, name) -> kept.put(Layout.food(name), now.get(Layout.food(slug))));
      expected
          .differingGoals()
          .forEach((slug, name) -> kept.put(Layout.goal(name), now.get(Layout.goal(slug))));
      List<String> formulas = new ArrayList<>(expected.newReferences());
      formulas.add(as);
      for (String slug : formulas) {
        String path = Layout.formula(slug);
        Formula before = formula(path, now);
        Formula after = renamed(before, expected);
        if (!after.equals(before)) {
          kept.put(path, contents.put(FormulaCodec.write(after)));
        }
      }
    }
    return kept;
  }

  private static Formula renamed(Formula formula, ArrivingFormula expected) {
    return formula
        .withLines(
            formula.lines().stream()
                .map(
                    line ->
                        line.withFood(
                            expected
                                .differingFoods()
                                .getOrDefault(line.food(), line.food())))
                .toList())
        .withGoal(
            formula.goal().map(goal -> expected.differingGoals().getOrDefault(goal, goal)));
  }

  private String message(ArrivingFormula expected) {
    StringBuilder said = new StringBuilder("Take in " + expected.name());
    boolean theirs = wish.differing().equals(Optional.of(Differing.TAKE_THEIRS));
    Map<String, String> differing = new TreeMap<>(expected.differingFoods());
    differing.putAll(expected.differingGoals());
    if (!differing.isEmpty()) {
      said.append("\n\n");
      said.append(
          theirs
              ? "Theirs under other names: " + String.join(", ", differing.values())
              : "Kept as they are here: " + String.join(", ", differing.keySet()));
      said.append('.');
    }
    return said.append("\n\n" + TAKES_IN + ": " + as + " " + head.hex()).toString();
  }
}
