package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.Json;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import java.util.Optional;

/** Reads what a question or an order says. */
final class Asked {
  private Asked() {}

  /**
   * A parameter that must be there.
   *
   * @throws Refusal when it is missing or blank
   */
  static String text(Context context, String parameter) {
    return optional(context, parameter)
        .orElseThrow(
            () ->
                new Refusal(
                    Refusal.Reason.INVALID,
                    parameter,
                    "The question lacks \"" + parameter + "\".",
                    "Add ?" + parameter + "=… to the address."));
  }

  /** A parameter that may be missing; blank counts as missing. */
  static Optional<String> optional(Context context, String parameter) {
    return Optional.ofNullable(context.queryParam(parameter)).filter(text -> !text.isBlank());
  }

  /**
   * A parameter that is the address of a formula or revision.
   *
   * @throws Refusal when it is missing, no address, or there is no such formula
   */
  static Address address(Desk desk, Context context, String parameter) {
    return desk.address(text(context, parameter));
  }

  /**
   * The desk for whoever asks: its sentences are in the units that the page names with each
   * question and order, {@code masses_in=oz} and {@code temperatures_in=F}; without them as
   * written.
   *
   * @throws Refusal when there is no such unit
   */
  static Desk desk(Desk desk, Context context) {
    Optional<String> mass = optional(context, "masses_in");
    Optional<String> temperature = optional(context, "temperatures_in");
    if (mass.isEmpty() && temperature.isEmpty()) {
      return desk;
    }
    try {
      return desk.shownIn(ShownUnits.of(mass, temperature));
    } catch (IllegalArgumentException e) {
      throw Refusal.of("units", e);
    }
  }

  /**
   * What an order carries, as a record.
   *
   * @throws Refusal when it is not the JSON of such a record
   */
  static <T> T order(Context context, Class<T> type) {
    return Json.read(context.bodyAsBytes(), type);
  }
}
