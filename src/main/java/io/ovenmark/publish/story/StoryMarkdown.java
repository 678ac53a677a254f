package io.ovenmark.publish.story;

import static io.ovenmark.publish.card.CardMarkdown.plain;
import static io.ovenmark.publish.card.CardMarkdown.within;

import io.ovenmark.publish.card.CardMarkdown;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A story as Markdown (CommonMark, with tables) with its photos as files beside it. */
public final class StoryMarkdown {
  /** The name of the text's file. */
  public static final String NAME = "story.md";

  private StoryMarkdown() {}

  /**
   * The text and the photos that it shows.
   *
   * @param story the story
   * @return {@value #NAME} first, then a JPEG for each step that has a photo
   */
  public static List<StoryFile> of(Story story) {
    List<StoryFile> files = new ArrayList<>();
    files.add(new StoryFile(NAME, text(story).getBytes(StandardCharsets.UTF_8), ""));
    for (Story.Step step : story.steps()) {
      step.photo()
          .ifPresent(
              photo ->
                  files.add(new StoryFile(photoName(step), photo.jpeg(), photo.alternative())));
    }
    return files;
  }

  /**
   * The text alone.
   *
   * @param story the story; where it carries no photos the text shows none
   * @return Markdown that ends with a line break
   */
  public static String text(Story story) {
    List<String> parts = new ArrayList<>();
    parts.add("# " + within(story.title()));
    parts.add(story.by().map(by -> plain(by) + ", " + plain(story.span())).orElse(story.span()));
    story.opening().ifPresent(text -> parts.addAll(paragraphs(text)));
    for (Story.Step step : story.steps()) {
      step(step, parts);
    }
    ways(story, parts);
    story.closing().ifPresent(text -> parts.addAll(paragraphs(text)));
    parts.add(CardMarkdown.of(story.card()).strip().replaceAll("(?m)^#", "##"));
    return String.join("\n\n", parts) + "\n";
  }

  private static void step(Story.Step step, List<String> parts) {
    parts.add("## " + step.number() + ". " + within(step.heading()));
    parts.add("*" + within(step.address()) + ", " + step.date() + "*");
    step.photo()
        .ifPresent(
            photo -> {
              parts.add("![" + within(photo.alternative()) + "](" + photoName(step) + ")");
              photo
                  .caption()
                  .filter(caption -> !caption.equals(photo.alternative()))
                  .ifPresent(caption -> parts.add("*" + within(caption) + "*"));
            });
    step.words().ifPresent(text -> parts.addAll(paragraphs(text)));
    if (!step.changed().isEmpty()) {
      parts.add("**What changed.** " + within(String.join(" ", step.changed())));
    }
    parts.add("**What was seen.** " + within(String.join(" ", step.seen())));
    step.move()
        .ifPresent(
            move ->
                parts.add(
                    "**What moved.** " + within(move.label()) + ": " + within(move.fromText())
                        + " → **" + within(move.toText()) + "** (" + within(move.difference())
                        + ")"));
    step.credit().ifPresent(text -> parts.add("> " + plain(text)));
  }

  /** The ways of the key figures as a table: a row for each step, a column for each figure. */
  private static void ways(Story story, List<String> parts) {
    if (story.arcs().isEmpty()) {
      return;
    }
    parts.add("## How the figures went");
    StringBuilder table = new StringBuilder("| revision |");
    story.arcs().forEach(arc -> table.append(' ').append(within(arc.label())).append(" |"));
    table.append("\n|---|").append("---|".repeat(story.arcs().size()));
    List<Arc.Point> first = story.arcs().get(0).points();
    for (int i = 0; i < first.size(); i++) {
      if (first.get(i).told()) {
        int at = i;
        table.append("\n| ").append(first.get(i).revision()).append(" | ")
            .append(
                story.arcs().stream()
                    .map(arc -> within(arc.points().get(at).text()))
                    .collect(Collectors.joining(" | ")))
            .append(" |");
      }
    }
    parts.add(table.toString());
  }

  private static List<String> paragraphs(String text) {
    return text.strip().lines().map(String::strip).filter(line -> !line.isEmpty())
        .map(CardMarkdown::plain)
        .toList();
  }

  private static String photoName(Story.Step step) {
    return String.format(Locale.ROOT, "step-%02d.jpg", step.number());
  }
}
