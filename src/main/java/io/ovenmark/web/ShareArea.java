package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.Progress;
import io.ovenmark.desk.ShareFormula;
import io.ovenmark.desk.ShareViews;
import io.ovenmark.desk.TakeIn;
import io.ovenmark.desk.WaitingBundles;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.function.Supplier;

/** A formula for somebody else, and one from somebody else. */
final class ShareArea implements Area {
  private final Desk desk;
  private final Supplier<By> by;

  ShareArea(Desk desk, Opening opening) {
    this.desk = desk;
    this.by = opening.by();
  }

  /** What a page must know before it sends a bundle. */
  record Limits(long mostBytes) {}

  /** A bundle that was sent, and what is in it. */
  record Sent(String bundle, ShareViews.Offer offer) {}

  /** What was chosen of a bundle that was sent. */
  record Taking(
      String bundle, String formula, String as, String differing, Boolean reference, String seen) {
    Taking {
      if (bundle == null) {
        throw new Refusal(
            Refusal.Reason.INVALID,
            "bundle",
            "The order lacks \"bundle\".",
            "Reload the page and try again.");
      }
    }

    TakeIn.Choice choice() {
      return new TakeIn.Choice(
          Optional.ofNullable(formula),
          Optional.ofNullable(as),
          Optional.ofNullable(differing),
          !Boolean.FALSE.equals(reference),
          Optional.ofNullable(seen));
    }
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question(
            "share",
            context ->
                new ShareFormula(desk)
                    .preview(Asked.text(context, "formula"), choice(context), by.get()))
        .read("/made/bundle", this::bundle)
        .question("take-in/limits", context -> new Limits(Guard.LARGEST_PICTURE))
        .order("take-in/send", this::send)
        .order("take-in/look", this::look)
        .order("take-in", this::take)
        .order("take-in/forget", this::forget);
  }

  private static ShareFormula.Choice choice(Context context) {
    return new ShareFormula.Choice(
        Asked.optional(context, "variant"),
        isAsked(context, "reference"),
        isAsked(context, "emails"),
        isAsked(context, "prices"),
        isAsked(context, "others"));
  }

  private static boolean isAsked(Context context, String name) {
    return Asked.optional(context, name).equals(Optional.of("true"));
  }

  /** Made anew for each download, since it is gone when it was read. */
  private void bundle(Context context) {
    String formula = Asked.text(context, "formula");
    try {
      Path folder = Files.createTempDirectory("ovenmark-bundle");
      Path file = folder.resolve("made.bundle");
      try {
        ShareViews.Shared shared =
            new ShareFormula(desk)
                .bundle(formula, choice(context), file, by.get(), Progress.UNWATCHED);
        InputStream in = Files.newInputStream(file, StandardOpenOption.DELETE_ON_CLOSE);
        context
            .contentType("application/octet-stream")
            .header("Cache-Control", "no-store")
            .header("Content-Length", String.valueOf(shared.bytes()))
            .header(
                "Content-Disposition",
                "attachment; filename=\"" + shared.share().fileName() + "\"")
            .result(in);
      } finally {
        Files.deleteIfExists(file);
        Files.deleteIfExists(folder);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Object send(Context context) {
    boolean received = false;
    try {
      WaitingBundles waiting = new WaitingBundles(desk);
      String id = waiting.put(context.bodyInputStream(), context.contentLength());
      received = true;
      return sent(waiting, id);
    } finally {
      if (!received) {
        Uploads.drain(context);
      }
    }
  }

  /** One that cannot be read is not kept. */
  private Sent sent(WaitingBundles waiting, String id) {
    boolean readable = false;
    try {
      ShareViews.Offer offer =
          new TakeIn(desk).look(waiting.file(id), TakeIn.Choice.NONE, Progress.UNWATCHED);
      readable = true;
      return new Sent(id, offer);
    } finally {
      if (!readable) {
        waiting.forget(id);
      }
    }
  }

  private Object look(Context context) {
    Taking taking = Asked.order(context, Taking.class);
    return new TakeIn(desk)
        .look(new WaitingBundles(desk).file(taking.bundle()), taking.choice(), Progress.UNWATCHED);
  }

  private Object take(Context context) {
    Taking taking = Asked.order(context, Taking.class);
    WaitingBundles waiting = new WaitingBundles(desk);
    ShareViews.TakenIn taken =
        new TakeIn(desk)
            .call(waiting.file(taking.bundle()), taking.choice(), by.get(), Progress.UNWATCHED);
    waiting.forget(taking.bundle());
    return taken;
  }

  private Object forget(Context context) {
    Taking taking = Asked.order(context, Taking.class);
    new WaitingBundles(desk).forget(taking.bundle());
    return new Limits(Guard.LARGEST_PICTURE);
  }
}
