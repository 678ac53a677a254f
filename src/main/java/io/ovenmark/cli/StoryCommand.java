package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.StoryFolder;
import io.ovenmark.desk.StoryOrder;
import io.ovenmark.desk.StoryViews;
import io.ovenmark.desk.TellStory;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.publish.story.StoryFile;
import io.ovenmark.story.StoryPlan;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells how a formula came to be. */
@Command(
    name = "story",
    header = "Tell how a formula came to be, to publish it.",
    description = {
      "Tell of the revisions that matter: for each its photo, what changed since the one told"
          + " before, what was seen, the figure that moved; then the card. Without --steps and"
          + " without a kept story it is every bake that taught something.",
      "--keep keeps the choices and your own words in the notebook; later calls start from them."
          + " The card's cautions always stand at the end."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark story seeded-lupin-bun",
      "  ovenmark story seeded-lupin-bun --form page > bun.html",
      "  ovenmark story seeded-lupin-bun --form pictures --into video",
      "  ovenmark story seeded-lupin-bun --steps 1,5,8,13 --words 8=\"Here it rose.\" --keep"
    })
final class StoryCommand extends WritingCommand {
  private enum Form {
    OUTLINE,
    PAGE,
    MARKDOWN,
    PICTURES
  }

  @Parameters(
      index = "0",
      paramLabel = "ADDRESS",
      description = "A formula or variant; a revision stands for its line of history.")
  private String address;

  @Option(
      names = "--form",
      paramLabel = "FORM",
      defaultValue = "outline",
      description = {
        "outline (default), page, markdown or pictures (1920 × 1080, for a video)."
      })
  private String form;

  @Option(
      names = "--into",
      paramLabel = "FOLDER",
      description = "Where to write markdown with its photos, or the pictures.")
  private Path into;

  @Option(names = "--replace", description = "Replace files of the same names in FOLDER.")
  private boolean replace;

  @Option(
      names = "--steps",
      paramLabel = "N",
      split = ",",
      description = "Numbers of the revisions to tell of, such as 1,5,8,13.")
  private List<Integer> steps;

  @Option(names = "--proposed", description = "Tell of every bake that taught something.")
  private boolean proposed;

  @Option(names = "--title", paramLabel = "TEXT", description = "Its title.")
  private String title;

  @Option(names = "--by", paramLabel = "NAME", description = "Who tells it; default: nobody.")
  private String teller;

  @Option(names = "--opening", paramLabel = "TEXT", description = "Words before the first step.")
  private String opening;

  @Option(names = "--closing", paramLabel = "TEXT", description = "Words after the last step.")
  private String closing;

  @Option(
      names = "--figures",
      paramLabel = "KEY",
      split = ",",
      description = "Figures whose way is drawn, such as mean_liking,best_height_mm.")
  private List<String> figures;

  @Option(
      names = "--heading",
      paramLabel = "N=TEXT",
      description = "Heading of revision N; default: its note.")
  private Map<Integer, String> headings = new LinkedHashMap<>();

  @Option(names = "--words", paramLabel = "N=TEXT", description = "Your words on revision N.")
  private Map<Integer, String> words = new LinkedHashMap<>();

  @Option(
      names = "--photo",
      paramLabel = "N=FILE",
      description = "Photo of revision N as its bake names it, or none.")
  private Map<Integer, String> photos = new LinkedHashMap<>();

  @Option(
      names = "--moved",
      paramLabel = "N=KEY",
      description = "Figure that is shown to have moved in revision N.")
  private Map<Integer, String> moved = new LinkedHashMap<>();

  @Option(names = "--keep", description = "Keep these choices in the notebook.")
  private boolean keep;

  @Override
  ExitCode run(Desk desk) {
    Form wanted = form();
    boolean files = wanted == Form.MARKDOWN || wanted == Form.PICTURES;
    if (files != (into != null)) {
      throw usage(
          files
              ? "Say where to write the files: --into FOLDER."
              : "--into is for --form markdown and --form pictures.");
    }
    if (proposed && steps != null) {
      throw usage("--proposed and --steps exclude each other.");
    }
    TellStory tell = new TellStory(desk);
    Address which = desk.address(address);
    StoryViews.StorySheet before = tell.call(tell.plan(which));
    StoryPlan plan = tell.plan(which, order(before));
    StoryViews.StorySheet sheet =
        keep ? tell.keep(plan, before.base(), by(desk)) : tell.call(plan);
    if (files) {
      ProgressLines lines = new ProgressLines(surroundings());
      write(
          wanted == Form.MARKDOWN
              ? tell.markdown(plan)
              : tell.pictures(
                  plan, (done, total) -> lines.at("Drawing the pictures", done, total)));
      print(sheet, out -> out.line("Wrote " + into + "."));
    } else if (wanted == Form.PAGE && !json()) {
      print(sheet, out -> out.document(tell.page(plan)));
    } else {
      print(sheet, out -> StoryText.print(sheet, out));
    }
    return ExitCode.DONE;
  }

  private void write(List<StoryFile> files) {
    StoryFolder.write(file(into), files, replace);
  }

  /** The kept choices with those of the command line over them. */
  private StoryOrder order(StoryViews.StorySheet sheet) {
    StoryViews.PlanView kept = sheet.plan();
    return new StoryOrder(
        title == null ? kept.title() : title,
        teller == null ? kept.by() : teller,
        opening == null ? kept.opening() : opening,
        closing == null ? kept.closing() : closing,
        figures == null ? kept.figures() : figures,
        steps(sheet));
  }

  private List<StoryOrder.StepOrder> steps(StoryViews.StorySheet sheet) {
    Map<Integer, StoryOrder.StepOrder> known = new LinkedHashMap<>();
    sheet.plan().steps().forEach(step -> known.put(step.revision(), step));
    TreeSet<Integer> own = new TreeSet<>();
    List.of(headings, words, photos, moved).forEach(each -> own.addAll(each.keySet()));
    List<Integer> chosen = new ArrayList<>();
    if (steps != null) {
      chosen.addAll(new TreeSet<>(steps));
    } else if (proposed || sheet.proposed()) {
      if (own.isEmpty()) {
        return List.of();
      }
      sheet.revisions().stream()
          .filter(StoryViews.Candidate::proposed)
          .map(StoryViews.Candidate::revision)
          .forEach(chosen::add);
    } else {
      chosen.addAll(known.keySet());
    }
    for (int revision : own) {
      if (!chosen.contains(revision)) {
        throw usage("Revision " + revision + " is none of the steps: add it to --steps.");
      }
    }
    return chosen.stream()
        .map(
            revision -> {
              StoryOrder.StepOrder step = known.get(revision);
              return new StoryOrder.StepOrder(
                  revision,
                  headings.getOrDefault(revision, step == null ? null : step.heading()),
                  words.getOrDefault(revision, step == null ? null : step.words()),
                  photos.getOrDefault(revision, step == null ? null : step.photo()),
                  moved.getOrDefault(revision, step == null ? null : step.figure()));
            })
        .toList();
  }

  private Form form() {
    return switch (form) {
      case "outline" -> Form.OUTLINE;
      case "page" -> Form.PAGE;
      case "markdown" -> Form.MARKDOWN;
      case "pictures" -> Form.PICTURES;
      default ->
          throw new Refusal(
              Refusal.Reason.INVALID,
              "--form",
              "There is no form \"" + form + "\" of a story.",
              "Choose outline, page, markdown or pictures.");
    };
  }
}
