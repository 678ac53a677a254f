package io.ovenmark.desk;

import io.ovenmark.json.Problem;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.store.StoreException;
import java.util.List;
import java.util.Optional;

/**
 * Turns what was thrown into what a person can act on: one place for the command line and the page.
 */
public final class Refusals {
  private Refusals() {}

  /**
   * The refusal that a throwable stands for.
   *
   * @param thrown what a verb threw
   * @return the refusal; empty for a fault of the program
   */
  public static Optional<Refusal> of(Throwable thrown) {
    if (thrown instanceof Refusal refusal) {
      return Optional.of(refusal);
    }
    if (thrown instanceof UnreadableException unreadable) {
      return Optional.of(Refusal.of(unreadable.problems()));
    }
    if (thrown instanceof StoreException store) {
      return Optional.of(
          new Refusal(reason(store.reason()), store.where(), store.getMessage(), ""));
    }
    return Optional.empty();
  }

  /**
   * What is wrong with a file, when that is why something could not be read.
   *
   * @param thrown what reading threw
   * @return the problems; empty when it was thrown for another reason
   */
  static List<Views.ProblemView> problems(RuntimeException thrown) {
    if (thrown instanceof UnreadableException unreadable) {
      return views(unreadable.problems());
    }
    boolean damaged =
        thrown instanceof StoreException store
            && (store.reason() == StoreException.Reason.CORRUPT
                || store.reason() == StoreException.Reason.MISSING);
    return damaged
        ? List.of(
            new Views.ProblemView(
                ((StoreException) thrown).where(),
                thrown.getMessage(),
                "See what else is damaged with: ovenmark check"))
        : List.of();
  }

  /**
   * What is wrong with a file that could not be read.
   *
   * @param thrown what reading threw; thrown again when it is for another reason
   * @return the problems, at least one
   */
  static List<Views.ProblemView> problemsOf(RuntimeException thrown) {
    List<Views.ProblemView> problems = problems(thrown);
    if (problems.isEmpty()) {
      throw thrown;
    }
    return problems;
  }

  static List<Views.ProblemView> views(List<Problem> problems) {
    return problems.stream()
        .map(each -> new Views.ProblemView(each.where(), each.message(), each.hint()))
        .toList();
  }

  private static Refusal.Reason reason(StoreException.Reason reason) {
    return switch (reason) {
      case NOT_A_REPOSITORY, UNSUPPORTED_REPOSITORY, CORRUPT -> Refusal.Reason.NOT_A_NOTEBOOK;
      case MISSING, AMBIGUOUS -> Refusal.Reason.NOT_FOUND;
      case NAME_TAKEN -> Refusal.Reason.EXISTS;
      case LOCKED, OPERATION_IN_PROGRESS, CHECKED_OUT, REFUSED, DISK ->
          Refusal.Reason.NOT_WRITABLE;
      case PATH_OUTSIDE, NOT_A_FILE, BAD_NAME, BAD_MESSAGE, BAD_BUNDLE -> Refusal.Reason.INVALID;
    };
  }
}
