package io.ovenmark.desk;

import io.ovenmark.notebook.Address;
import io.ovenmark.story.StoryPlan;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Checks what stories say of revisions and photos; they lie on the main line. */
final class CheckStories {
  private final CheckHistories histories;
  private final Set<String> files;
  private final CheckLog log;

  CheckStories(CheckHistories histories, Set<String> files, CheckLog log) {
    this.histories = histories;
    this.files = files;
    this.log = log;
  }

  void check(String path, StoryPlan plan) {
    Address line = Address.latest(plan.formula(), plan.variant());
    OptionalInt newest = histories.newest(line);
    if (newest.isEmpty()) {
      return;
    }
    if (newest.getAsInt() == 0) {
      log.wrong(
          path,
          Optional.empty(),
          "The story is of " + line.line() + ", which the notebook lacks.",
          "Delete the file, or rename it to the formula that it tells of.");
      return;
    }
    int number = 0;
    for (StoryPlan.Step step : plan.steps()) {
      String field = path + ", field steps[" + number++ + "]";
      if (step.revision() > newest.getAsInt()) {
        log.wrong(
            field + ".revision",
            Optional.empty(),
            line.line() + " has no revision " + step.revision() + ".",
            "Its newest is " + newest.getAsInt() + "; name one of them, or take the step out.");
      }
      step.photo()
          .filter(photo -> !photo.equals(StoryPlan.NO_PHOTO) && !files.contains(photo))
          .ifPresent(
              photo ->
                  log.wrong(
                      field + ".photo",
                      Optional.empty(),
                      "The picture " + photo + " is not there.",
                      "Name a photo of one of its bakes, or none."));
    }
  }
}
