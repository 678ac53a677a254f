package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.Progress;
import io.ovenmark.desk.StoryFolder;
import io.ovenmark.desk.StoryOrder;
import io.ovenmark.desk.StoryViews;
import io.ovenmark.desk.TellStory;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.publish.story.StoryFile;
import io.ovenmark.story.StoryCodec;
import io.ovenmark.story.StoryPlan;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Stories: as data, as the page that is published, as files. */
final class StoryArea implements Area {
  /** How many choices that were looked at can still be shown; each is a few kilobytes. */
  private static final int LOOKED_AT = 200;

  private static final String HTML = "text/html; charset=utf-8";
  private static final String PNG = "image/png";
  private static final String ZIP = "application/zip";

  private final Desk desk;
  private final TellStory tell;
  private final Supplier<By> by;
  private final Map<String, Looked> looked =
      Collections.synchronizedMap(
          new LinkedHashMap<>(64, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<String, Looked> eldest) {
              return size() > LOOKED_AT;
            }
          });

  /** Choices that were looked at, for a reader of certain units. */
  private record Looked(StoryPlan plan, TellStory tell) {}

  /**
   * A story with what its page and pictures are asked for by.
   *
   * @param story the story
   * @param made names these choices; the same choices have the same name
   * @param folder the notebook's folder, which tells what a browser keeps apart
   */
  record Shown(StoryViews.StorySheet story, String made, String folder) {}

  /** What is looked at or kept. */
  record Chosen(String address, StoryOrder story, String base) {
    Chosen {
      if (address == null || story == null) {
        throw new Refusal(
            Refusal.Reason.INVALID,
            address == null ? "address" : "story",
            "The order lacks \"" + (address == null ? "address" : "story") + "\".",
            "Reload the page and try again.");
      }
    }
  }

  StoryArea(Desk desk, Opening opening) {
    this.desk = desk;
    this.tell = new TellStory(desk);
    this.by = opening.by();
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question("story", this::story)
        .order("story/look", this::look)
        .order("story/keep", this::keep)
        .read("/made/story", this::page)
        .read("/made/story-picture", this::picture)
        .read("/made/story-pictures", context -> archive(context, true))
        .read("/made/story-markdown", context -> archive(context, false));
  }

  private TellStory tell(Context context) {
    return tell.shownOn(Asked.desk(desk, context));
  }

  private Object story(Context context) {
    TellStory told = tell(context);
    StoryPlan plan = told.plan(Asked.address(desk, context, "address"));
    return shown(told, plan, told.call(plan));
  }

  private Object look(Context context) {
    Chosen chosen = Asked.order(context, Chosen.class);
    TellStory told = tell(context);
    StoryPlan plan = told.plan(address(chosen), chosen.story());
    return shown(told, plan, told.call(plan));
  }

  private Object keep(Context context) {
    Chosen chosen = Asked.order(context, Chosen.class);
    TellStory told = tell(context);
    StoryPlan plan = told.plan(address(chosen), chosen.story());
    return shown(told, plan, told.keep(plan, chosen.base(), by.get()));
  }

  private Address address(Chosen chosen) {
    return desk.address(chosen.address());
  }

  private Shown shown(TellStory told, StoryPlan plan, StoryViews.StorySheet sheet) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.writeBytes((plan.path() + "\n" + told.units() + "\n").getBytes(StandardCharsets.UTF_8));
    bytes.writeBytes(StoryCodec.write(plan));
    String made = Answers.digest(bytes.toByteArray());
    looked.put(made, new Looked(plan, told));
    return new Shown(sheet, made, desk.notebook().folder().toString());
  }

  private Looked made(Context context) {
    Looked found = looked.get(Asked.text(context, "made"));
    if (found == null) {
      throw new Refusal(
          Refusal.Reason.NOT_FOUND,
          "story",
          "The viewer does not know these choices any more.",
          "Reload the page of the story.");
    }
    return found;
  }

  private void page(Context context) {
    Looked chosen = made(context);
    String page = chosen.tell().page(chosen.plan());
    Answers.send(context, HTML, page.getBytes(StandardCharsets.UTF_8));
    context.header("Content-Security-Policy", CardArea.POLICY);
  }

  private void picture(Context context) {
    Looked chosen = made(context);
    String number = Asked.text(context, "number");
    if (!number.matches("\\d{1,4}")) {
      throw new Refusal(
          Refusal.Reason.INVALID, "number", "No picture is meant by that.", "Number them from 1.");
    }
    StoryFile file = chosen.tell().picture(chosen.plan(), Integer.parseInt(number));
    Answers.send(context, PNG, file.content());
  }

  private void archive(Context context, boolean pictures) {
    Looked chosen = made(context);
    List<StoryFile> files =
        pictures
            ? chosen.tell().pictures(chosen.plan(), Progress.UNWATCHED)
            : chosen.tell().markdown(chosen.plan());
    String line =
        chosen.plan().formula() + chosen.plan().variant().map(name -> "-" + name).orElse("");
    Answers.send(context, ZIP, StoryFolder.zip(files));
    context.header(
        "Content-Disposition",
        "attachment; filename=\"" + line + (pictures ? "-pictures" : "-story") + ".zip\"");
  }
}
