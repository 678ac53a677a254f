package io.ovenmark.notebook;

import static java.util.Objects.requireNonNull;

import io.ovenmark.notebook.store.Author;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitFacts;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.Companion;
import io.ovenmark.notebook.store.Difference;
import io.ovenmark.notebook.store.Transfer;
import io.ovenmark.notebook.store.Write;
import io.ovenmark.notebook.store.WriteOutcome;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The last change of a line of history, of whatever file, and how it is taken back: by a new commit
 * whose files are those before it. Undoing an undo does the change again.
 *
 * <pre>{@code
 * LastChange change = LastChange.of(notebook, line);
 * change.undo(by);
 * }</pre>
 */
public final class LastChange {
  private final Notebook notebook;
  private final Address line;
  private final CommitFacts facts;
  private final CommitId before;
  private final SortedMap<String, Difference> files;
  private final List<Companion> along;

  private LastChange(
      Notebook notebook,
      Address line,
      CommitFacts facts,
      CommitId before,
      SortedMap<String, Difference> files) {
    this.notebook = notebook;
    this.line = line;
    this.facts = facts;
    this.before = before;
    this.files = files;
    this.along = TakenAlong.of(notebook, facts);
    along.forEach(this::refuseChanged);
  }

  /**
   * Finds it.
   *
   * @param notebook the notebook
   * @param line the line; the change may be of any file on its branch
   * @return the change
   * @throws Refusal when there is nothing to take back, or a variant that came in with it was
   *     changed since
   */
  public static LastChange of(Notebook notebook, Address line) {
    requireNonNull(line, "line");
    CommitId head = notebook.head(line.branch());
    CommitFacts facts = notebook.store().facts(head);
    Optional<CommitId> before =
        IncomingFormula.before(notebook, facts).or(() -> facts.parents().stream().findFirst());
    if (before.isEmpty() || notebook.at(before.get()).blob(Layout.SETTINGS).isEmpty()) {
      throw nothing(line, "There is no change before the beginning of the notebook.");
    }
    if (line.variant().isPresent() && notebook.isFork(line, head)) {
      throw nothing(line, "The variant has no change of its own yet.");
    }
    SortedMap<String, Difference> files =
        notebook.store().differences(Optional.of(head), before.get());
    if (files.isEmpty()) {
      throw nothing(line, "The last change changed no file.");
    }
    return new LastChange(notebook, line, facts, before.get(), files);
  }

  /**
   * The commit that made it.
   *
   * @return its id
   */
  public CommitId commit() {
    return facts.id();
  }

  /**
   * The commit whose files there would be again.
   *
   * @return its id
   */
  public CommitId before() {
    return before;
  }

  /**
   * What was noted for it.
   *
   * @return one line
   */
  public String note() {
    return facts.subject();
  }

  /**
   * Who made it.
   *
   * @return the author
   */
  public Author author() {
    return facts.author();
  }

  /**
   * When.
   *
   * @return the time
   */
  public OffsetDateTime time() {
    return facts.time();
  }

  /** What taking it back does to a file. */
  public enum Effect {
    /** It is there again. */
    BACK,
    /** It is as it was before. */
    AS_BEFORE,
    /** It is gone. */
    GONE,
    /** It would come back, but is not kept here. */
    LOST
  }

  /**
   * What taking it back does.
   *
   * @return the effect by the file's path
   */
  public SortedMap<String, Effect> effects() {
    SortedMap<String, Effect> effects = new TreeMap<>();
    files.forEach((path, file) -> effects.put(path, effect(file)));
    return effects;
  }

  /**
   * What taking it back does to variants that came in with a formula.
   *
   * @return the effect by the variant's line, such as {@code seeded-lupin-bun/egg-free}
   */
  public SortedMap<String, Effect> variants() {
    return effects(Companion.Kind.BRANCH);
  }

  /**
   * What taking it back does to publications that came in with a formula.
   *
   * @return the effect by the published revision, such as {@code seeded-lupin-bun@5}
   */
  public SortedMap<String, Effect> publications() {
    return effects(Companion.Kind.TAG);
  }

  private SortedMap<String, Effect> effects(Companion.Kind kind) {
    SortedMap<String, Effect> effects = new TreeMap<>();
    for (Companion each : along) {
      Companion.Standing standing = standing(each);
      boolean back = each.way() == Companion.Way.BRING_BACK;
      if (each.kind() == kind && (back || standing == Companion.Standing.READY)) {
        effects.put(
            TakenAlong.called(each),
            standing == Companion.Standing.NOTHING
                ? Effect.LOST
                : back ? Effect.BACK : Effect.GONE);
      }
    }
    return effects;
  }

  private Companion.Standing standing(Companion companion) {
    return new Transfer(notebook.store()).standing(companion);
  }

  private void refuseChanged(Companion companion) {
    if (standing(companion) != Companion.Standing.OTHER) {
      return;
    }
    String name = TakenAlong.called(companion);
    if (companion.way() == Companion.Way.BRING_BACK) {
      throw new Refusal(
          Refusal.Reason.EXISTS,
          name,
          "There is another " + name + " by now, so the one that was taken back cannot return.",
          "Rename or delete the other one with git first.");
    }
    throw new Refusal(
        Refusal.Reason.CONFLICT,
        name,
        name + " was changed since it was taken in, so taking it in cannot be undone.",
        "Keep it, or, if those changes may go, delete it first with: git "
            + (companion.kind() == Companion.Kind.BRANCH ? "branch -D " : "tag -d ")
            + companion.name());
  }

  private static Effect effect(Difference file) {
    if (file.to().isEmpty()) {
      return Effect.GONE;
    }
    return file.from().isEmpty() ? Effect.BACK : Effect.AS_BEFORE;
  }

  /**
   * Takes it back.
   *
   * @param by who and when
   * @return the note of the change that was taken back
   * @throws Refusal when it is not the last change any more
   */
  public String undo(By by) {
    Write write =
        Write.to(
                line.branch(), Optional.of(facts.id()), by.author(), by.time(), undoNote(facts))
            .trailer(RecordWriter.UNDOES, facts.id().hex())
            .with(along);
    for (Map.Entry<String, Difference> file : files.entrySet()) {
      Optional<BlobId> then = file.getValue().to();
      write =
          then.isPresent() ? write.keep(file.getKey(), then.get()) : write.delete(file.getKey());
    }
    WriteOutcome outcome = notebook.store().write(write);
    if (outcome instanceof WriteOutcome.Moved) {
      throw moved(line);
    }
    if (outcome instanceof WriteOutcome.Unchanged) {
      throw nothing(line, "The last change changed no file.");
    }
    return facts.subject();
  }

  /**
   * The refusal for a change that is not the last one any more.
   *
   * @param line the line of history
   * @return a conflict
   */
  public static Refusal moved(Address line) {
    return new Refusal(
        Refusal.Reason.CONFLICT,
        line.line(),
        "Somebody wrote to " + line.line() + " meanwhile, so the last change is another one now.",
        "Look at it, then undo again.");
  }

  private static Refusal nothing(Address line, String sentence) {
    return new Refusal(Refusal.Reason.INVALID, line.line(), sentence, "");
  }

  private static String undoNote(CommitFacts facts) {
    if (facts.trailers().containsKey(RecordWriter.UNDOES)) {
      for (String word : List.of("Undo: ", "Redo: ")) {
        if (facts.subject().startsWith(word)) {
          String other = word.equals("Undo: ") ? "Redo: " : "Undo: ";
          return other + facts.subject().substring(word.length());
        }
      }
    }
    return "Undo: " + facts.subject();
  }
}
