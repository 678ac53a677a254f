package io.ovenmark.notebook;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Problem;
import java.util.List;

/**
 * Something that cannot be done because of what a person asked or of the data at hand: one
 * sentence, where, and what to do. Everything else that goes wrong is a fault of the program.
 */
public final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Why something is refused. */
  public enum Reason {
    /** There is no such formula, revision, variant, bake, photo, food or goal. */
    NOT_FOUND,
    /** What was given cannot be used as it stands. */
    INVALID,
    /** Something of that name is there already. */
    EXISTS,
    /** It changed meanwhile in a way that only a person can settle. */
    CONFLICT,
    /** The folder is not a notebook that this program can open. */
    NOT_A_NOTEBOOK,
    /** The notebook is locked or may not be written. */
    NOT_WRITABLE
  }

  private final Reason reason;
  private final String where;
  private final String hint;
  private final transient List<Problem> problems;

  /**
   * Refuses.
   *
   * @param reason why
   * @param where file, field, address or option that it is about; may be empty
   * @param sentence one sentence that says what is wrong
   * @param hint one sentence that says what to do; may be empty
   */
  public Refusal(Reason reason, String where, String sentence, String hint) {
    this(reason, where, sentence, hint, List.of());
  }

  private Refusal(
      Reason reason, String where, String sentence, String hint, List<Problem> problems) {
    super(requireNonNull(sentence, "sentence"));
    this.reason = requireNonNull(reason, "reason");
    this.where = requireNonNull(where, "where");
    this.hint = requireNonNull(hint, "hint");
    this.problems = List.copyOf(problems);
  }

  /**
   * Refuses a file for what is wrong in it.
   *
   * @param problems what is wrong, at least one
   * @return the refusal
   */
  public static Refusal of(List<Problem> problems) {
    Problem first = problems.get(0);
    return new Refusal(Reason.INVALID, first.where(), first.message(), first.hint(), problems);
  }

  /**
   * Refuses what a value type refused: its message holds a sentence and, after a line break, a
   * remedy.
   *
   * @param where file, field or option that it is about
   * @param e what was thrown
   * @return the refusal
   */
  public static Refusal of(String where, IllegalArgumentException e) {
    String[] parts = String.valueOf(e.getMessage()).split("\n", 2);
    return new Refusal(Reason.INVALID, where, parts[0], parts.length > 1 ? parts[1] : "");
  }

  /**
   * Why.
   *
   * @return the reason
   */
  public Reason reason() {
    return reason;
  }

  /**
   * What it is about.
   *
   * @return file with line and column, field, address or option; may be empty
   */
  public String where() {
    return where;
  }

  /**
   * What to do.
   *
   * @return one sentence; may be empty
   */
  public String hint() {
    return hint;
  }

  /**
   * All faults of a refused file.
   *
   * @return empty when it is not about a file
   */
  public List<Problem> problems() {
    return problems;
  }
}
