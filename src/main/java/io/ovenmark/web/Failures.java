package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.desk.Json;
import io.ovenmark.desk.Refusals;
import io.ovenmark.desk.Views;
import io.ovenmark.notebook.Refusal;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Answers for what went wrong: refusals in the words that they carry, everything else as a fault of
 * the program, without telling its insides.
 */
final class Failures {
  private static final int FAULT = 500;

  /**
   * What the page gets.
   *
   * @param reason why, in snake case, such as {@code not_found}
   * @param sentence what is wrong
   * @param where file, field, address or parameter; may be empty
   * @param hint what to do; may be empty
   * @param problems all faults of a refused file; empty when it is not about a file
   */
  record Failure(
      String reason,
      String sentence,
      String where,
      String hint,
      List<Views.ProblemView> problems) {
    static Failure of(Refusal refusal) {
      return new Failure(
          refusal.reason().name().toLowerCase(Locale.ROOT),
          refusal.getMessage(),
          refusal.where(),
          refusal.hint(),
          refusal.problems().stream()
              .map(each -> new Views.ProblemView(each.where(), each.message(), each.hint()))
              .toList());
    }

    byte[] json() {
      return Json.compact(this).getBytes(StandardCharsets.UTF_8);
    }
  }

  private static final Failure INTERNAL =
      new Failure(
          "fault",
          "Something went wrong inside Ovenmark; your notebook was not changed.",
          "",
          "Try again. If it happens again, run \"ovenmark check\" and report what it says.",
          List.of());

  private final Consumer<Throwable> faults;

  Failures(Consumer<Throwable> faults) {
    this.faults = faults;
  }

  /** The status that stands for a reason. */
  static int status(Refusal.Reason reason) {
    return switch (reason) {
      case NOT_FOUND -> 404;
      case INVALID -> 422;
      case EXISTS, CONFLICT -> 409;
      case NOT_WRITABLE -> 423;
      case NOT_A_NOTEBOOK -> 503;
    };
  }

  void answer(Exception thrown, Context context) {
    if (thrown instanceof Denied denied) {
      write(
          context,
          denied.status(),
          new Failure(denied.reason(), denied.getMessage(), "", denied.hint(), List.of()));
      return;
    }
    int status = Refusals.of(thrown).map(refusal -> status(refusal.reason())).orElse(FAULT);
    write(context, status, told(thrown, faults));
  }

  /**
   * What a page is told of something that was thrown.
   *
   * @param thrown a refusal, or a fault of the program
   * @param faults told of the latter
   */
  static Failure told(Throwable thrown, Consumer<Throwable> faults) {
    Optional<Refusal> refusal = Refusals.of(thrown);
    if (refusal.isEmpty()) {
      faults.accept(thrown);
    }
    return refusal.map(Failure::of).orElse(INTERNAL);
  }

  private static void write(Context context, int status, Failure failure) {
    context.removeHeader("ETag");
    context
        .status(status)
        .contentType(Answers.JSON)
        .header("Cache-Control", "no-store")
        .result(failure.json());
  }

  /** Answers for what even the server does not catch, such as a stack that is too deep. */
  void error(HttpServletResponse response, Error error) {
    faults.accept(error);
    response.setStatus(FAULT);
    response.setContentType(Answers.JSON);
    response.setHeader("Cache-Control", "no-store");
    try {
      response.getOutputStream().write(INTERNAL.json());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
