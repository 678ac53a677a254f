package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.change.Choice;
import io.ovenmark.desk.CarryOver;
import io.ovenmark.desk.Choices;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ForkVariant;
import io.ovenmark.desk.PublishRevision;
import io.ovenmark.desk.RestoreRevision;
import io.ovenmark.desk.UndoLast;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.VariantWriter;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What can be done with revisions that are there: restore, publish, branch, carry over, undo. Each
 * has a look ahead that writes nothing; each order names the revision that was looked at.
 */
final class ActsArea implements Area {
  private final Desk desk;
  private final Opening opening;

  ActsArea(Desk desk, Opening opening) {
    this.desk = desk;
    this.opening = opening;
  }

  /**
   * An earlier revision to restore.
   *
   * @param address the revision
   * @param note why
   * @param seen commit id of the newest revision as the page showed it
   */
  record Restore(String address, String note, String seen) {
    Restore {
      required("address", address);
      required("seen", seen);
      note = note == null ? "" : note;
    }
  }

  /**
   * A revision to publish.
   *
   * @param address the revision
   * @param note what is published, and where
   * @param seen commit id of the revision as the page showed it
   */
  record Publish(String address, String note, String seen) {
    Publish {
      required("address", address);
      required("seen", seen);
      note = note == null ? "" : note;
    }
  }

  /**
   * A variant to branch.
   *
   * @param address the revision it begins with
   * @param name its name
   * @param goal short name of its goal; null or empty to keep the formula's
   * @param note why
   * @param seen commit id of the revision as the page showed it
   */
  record Fork(String address, String name, String goal, String note, String seen) {
    Fork {
      required("address", address);
      required("seen", seen);
      name = name == null ? "" : name.strip();
      note = note == null ? "" : note;
    }
  }

  /**
   * A variant into which to carry the main line's improvements, or to look at what that gives.
   *
   * @param variant the variant
   * @param choices {@code ours}, {@code theirs} or {@code base} by field; may be missing
   * @param note why; may be missing in a look ahead
   * @param seenVariant commit id of the variant's newest revision as the page showed it
   * @param seenMain commit id of the main line's
   */
  record Carry(
      String variant,
      Map<String, String> choices,
      String note,
      String seenVariant,
      String seenMain) {
    Carry {
      required("variant", variant);
      choices = choices == null ? Map.of() : choices;
      note = note == null ? "" : note;
    }

    Choices chosen() {
      Map<String, Choice> chosen = new TreeMap<>();
      choices.forEach((field, side) -> chosen.put(field, choice(field, side)));
      return new Choices(chosen, Optional.empty());
    }

    VariantWriter.Seen seen() {
      return new VariantWriter.Seen(
          required("seen_variant", seenVariant), required("seen_main", seenMain));
    }
  }

  /**
   * A change to take back.
   *
   * @param line {@code main} or the variant
   * @param seen commit id of the change as the page showed it
   */
  record Undo(String line, String seen) {
    Undo {
      required("line", line);
      required("seen", seen);
    }
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question(
            "restore",
            context -> {
              Address earlier = Asked.address(desk, context, "address");
              return new RestoreRevision(Asked.desk(desk, context)).preview(earlier, earlier);
            })
        .order("restore", this::restore)
        .question(
            "publish",
            context ->
                new PublishRevision(Asked.desk(desk, context))
                    .preview(Asked.address(desk, context, "address")))
        .order("publish", this::publish)
        .order("fork", this::fork)
        .order("carry/preview", this::lookAtCarry)
        .order("carry", this::carry)
        .question(
            "undo",
            context ->
                new UndoLast(Asked.desk(desk, context)).preview(line(Asked.text(context, "line"))))
        .order("undo", this::undo);
  }

  private Object restore(Context context) {
    Restore order = Asked.order(context, Restore.class);
    Address earlier = desk.address(order.address());
    return new RestoreRevision(Asked.desk(desk, context))
        .call(earlier, earlier, order.note(), Optional.of(order.seen()), opening.by().get());
  }

  private Object publish(Context context) {
    Publish order = Asked.order(context, Publish.class);
    return new PublishRevision(Asked.desk(desk, context))
        .call(
            desk.address(order.address()),
            order.note(),
            Optional.of(order.seen()),
            opening.by().get());
  }

  private Object fork(Context context) {
    Fork order = Asked.order(context, Fork.class);
    Optional<String> goal = Optional.ofNullable(order.goal()).filter(text -> !text.isBlank());
    return new ForkVariant(Asked.desk(desk, context))
        .call(
            desk.address(order.address()),
            order.name(),
            goal,
            order.note(),
            Optional.of(order.seen()),
            opening.by().get());
  }

  private Object lookAtCarry(Context context) {
    Carry order = Asked.order(context, Carry.class);
    return new CarryOver(Asked.desk(desk, context))
        .preview(desk.address(order.variant()), order.chosen());
  }

  private Object carry(Context context) {
    Carry order = Asked.order(context, Carry.class);
    return new CarryOver(Asked.desk(desk, context))
        .call(
            desk.address(order.variant()),
            order.chosen(),
            Optional.of(order.seen()),
            order.note(),
            opening.by().get());
  }

  private Object undo(Context context) {
    Undo order = Asked.order(context, Undo.class);
    return new UndoLast(Asked.desk(desk, context))
        .call(line(order.line()), Optional.of(order.seen()), opening.by().get());
  }

  private Optional<Address> line(String text) {
    return text.equals("main") ? Optional.empty() : Optional.of(variant(text));
  }

  private Address variant(String text) {
    Address line = desk.address(text);
    if (line.variant().isEmpty()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "line",
          "\"" + text + "\" is neither main nor a variant.",
          "Name a variant, as in seeded-lupin-bun/egg-free.");
    }
    return line;
  }

  private static Choice choice(String field, String side) {
    for (Choice choice : Choice.values()) {
      if (choice.name().toLowerCase(Locale.ROOT).equals(side)) {
        return choice;
      }
    }
    throw new Refusal(
        Refusal.Reason.INVALID,
        field,
        "\"" + side + "\" is no side to choose.",
        "Choose ours, theirs or base.");
  }

  private static String required(String field, String text) {
    if (text == null || text.isBlank()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          field,
          "The order lacks \"" + field + "\".",
          "Reload the page and try again.");
    }
    return text;
  }
}
