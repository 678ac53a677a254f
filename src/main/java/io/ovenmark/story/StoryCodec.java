package io.ovenmark.story;

import io.ovenmark.json.CanonicalJson;
import io.ovenmark.json.Extras;
import io.ovenmark.json.Fields;
import io.ovenmark.json.JsonValue;
import io.ovenmark.json.Members;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Reads and writes a story's file, see {@link StoryPlan#path()}. */
public final class StoryCodec {
  private static final int MOST_REVISIONS = 1_000_000;

  private StoryCodec() {}

  /**
   * Reads a story.
   *
   * @param file the path in the notebook, also used in messages
   * @param formula slug of the formula, from the path
   * @param variant name of the variant, from the path; empty for the main line
   * @param utf8 the file's bytes
   * @return the story
   * @throws io.ovenmark.json.UnreadableException with everything that is wrong
   */
  public static StoryPlan read(
      String file, String formula, Optional<String> variant, byte[] utf8) {
    Fields fields = Fields.of(file, utf8);
    Optional<String> title = fields.text("title");
    Optional<String> by = fields.text("by");
    Optional<String> opening = fields.text("opening");
    Optional<String> closing = fields.text("closing");
    List<String> figures = fields.texts("figures");
    List<StoryPlan.Step> steps = fields.objects("steps", StoryCodec::step);
    Extras extras = fields.extras();
    Optional<StoryPlan> plan = Optional.empty();
    if (fields.problems().isEmpty()) {
      try {
        plan =
            Optional.of(
                new StoryPlan(
                    formula, variant, title, by, opening, closing, figures, steps, extras));
      } catch (IllegalArgumentException e) {
        fields.problem("", e);
      }
    }
    fields.finish();
    return plan.orElseThrow();
  }

  /**
   * Writes a story in canonical form.
   *
   * @param plan the story
   * @return UTF-8 JSON with a final newline
   */
  public static byte[] write(StoryPlan plan) {
    Members members =
        new Members()
            .text("title", plan.title())
            .text("by", plan.by())
            .text("opening", plan.opening())
            .text("closing", plan.closing());
    if (!plan.figures().isEmpty()) {
      members.texts("figures", plan.figures());
    }
    return CanonicalJson.write(
        members
            .list("steps", plan.steps(), StoryCodec::toJson)
            .extras(plan.extras())
            .object());
  }

  private static Optional<StoryPlan.Step> step(Fields fields) {
    Optional<Integer> revision = fields.whole("revision", 1, MOST_REVISIONS);
    if (!fields.has("revision")) {
      fields.problem(
          "revision", "The field is missing.", "Write the number of the revision that is told of.");
    }
    Optional<String> heading = fields.text("heading");
    Optional<String> words = fields.text("words");
    Optional<String> photo = fields.text("photo");
    Optional<String> figure = fields.text("figure");
    Extras extras = fields.extras();
    if (revision.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new StoryPlan.Step(revision.get(), heading, words, photo, figure, extras));
    } catch (IllegalArgumentException e) {
      fields.problem("", e);
      return Optional.empty();
    }
  }

  private static JsonValue toJson(StoryPlan.Step step) {
    return new Members()
        .number("revision", BigDecimal.valueOf(step.revision()))
        .text("heading", step.heading())
        .text("words", step.words())
        .text("photo", step.photo())
        .text("figure", step.figure())
        .extras(step.extras())
        .object();
  }
}
