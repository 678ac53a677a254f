package io.ovenmark.paste;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Goes through a pasted block line by line and remembers in which part of it it is. */
final class BlockReader {
  /** What follows so many lines is not read. */
  static final int MOST_LINES = 500;
  private static final int LONGEST_TITLE = 120;
  private static final int LONGEST_STEP = 20_000;
  private static final int SHORT_ITEM_WORDS = 8;

  /** A food one of whose names has all the words of a line fits it at least so well. */
  private static final double ALL_WORDS = 0.7;

  private final List<String> texts;
  private final FoodMatcher matcher;
  private final LineChoices choices;
  private final List<PastedLine> lines = new ArrayList<>();
  private final List<String> steps = new ArrayList<>();
  private LineKinds.Part part = LineKinds.Part.START;
  private Optional<String> title = Optional.empty();
  private Optional<String> section = Optional.empty();
  private Optional<String> stepHeading = Optional.empty();
  private Optional<PastedYield> yield = Optional.empty();
  private boolean numberedStep;
  private boolean blankBefore = true;

  BlockReader(String text, FoodMatcher matcher, LineChoices choices) {
    this.texts = PasteText.lines(text, MOST_LINES);
    this.matcher = matcher;
    this.choices = choices;
  }

  Optional<String> title() {
    return title;
  }

  List<PastedLine> lines() {
    return lines;
  }

  List<String> steps() {
    return steps;
  }

  Optional<PastedYield> yield() {
    return yield;
  }

  void read() {
    for (int i = 0; i < texts.size(); i++) {
      String text = texts.get(i);
      if (i == MOST_LINES) {
        rest(text);
      } else if (text.length() > LONGEST_STEP) {
        ingredient(i, text);
      } else {
        String tidy = PasteText.tidy(text);
        if (!tidy.isEmpty()) {
          line(i, text, tidy);
        }
        blankBefore = tidy.isEmpty();
      }
    }
  }

  private void rest(String text) {
    if (!text.isBlank()) {
      lines.add(PastedLine.unread(MOST_LINES + 1, text, MOST_LINES));
    }
  }

  private void line(int i, String text, String tidy) {
    Optional<LineKinds.Part> heads = LineKinds.part(tidy);
    Optional<String> first = LineKinds.inlineStep(tidy);
    if (heads.isPresent()) {
      part = heads.get();
      section = Optional.empty();
      stepHeading = Optional.empty();
      other(i, text, PastedLine.Kind.HEADING);
    } else if (first.isPresent()) {
      part = LineKinds.Part.METHOD;
      step(i, text, first.get(), false);
    } else if (isTitle(i, tidy)) {
      title = Optional.of(PasteText.withoutBullet(tidy));
      other(i, text, PastedLine.Kind.TITLE);
    } else if (isYield(tidy)) {
      yield = PastedYield.read(tidy);
      other(i, text, PastedLine.Kind.YIELD);
    } else if (part == LineKinds.Part.NOTES || LineKinds.isDetail(tidy)) {
      other(i, text, PastedLine.Kind.NOTE);
    } else if (part == LineKinds.Part.METHOD) {
      method(i, text, tidy);
    } else {
      list(i, text, tidy);
    }
  }

  private boolean isYield(String tidy) {
    return yield.isEmpty() && PastedYield.read(tidy).isPresent();
  }

  private boolean isTitle(int i, String tidy) {
    boolean possible =
        lines.isEmpty()
            && tidy.length() <= LONGEST_TITLE
            && !tidy.endsWith(":")
            && !LineKinds.isStep(tidy)
            && !LineKinds.isSentence(tidy)
            && PastedYield.read(tidy).isEmpty();
    Optional<String> next = next(i);
    if (!possible || next.isEmpty()) {
      return false;
    }
    if (LineKinds.part(next.get()).isPresent()
        || PastedYield.read(next.get()).isPresent()
        || tidy.startsWith("#")) {
      return true;
    }
    IngredientLine read = IngredientLine.read(tidy);
    boolean measured = read.amount().filter(amount -> !amount.isCount()).isPresent();
    boolean apart = texts.get(i + 1).isBlank();
    return !measured
        && read.doubts().isEmpty()
        && (read.amount().isEmpty() || apart)
        && (read.preparation().isEmpty() || apart)
        && (tidy.equals(PasteText.withoutNumber(tidy)))
        && !isFood(read);
  }

  private boolean isFood(IngredientLine read) {
    FoodMatch match = matcher.match(read);
    return !match.candidates().isEmpty() && match.candidates().get(0).score() >= ALL_WORDS;
  }

  private Optional<String> next(int i) {
    for (int j = i + 1; j < texts.size(); j++) {
      String text = texts.get(j);
      if (!text.isBlank()) {
        String start = text.substring(0, Math.min(text.length(), PasteText.LONGEST_LINE));
        return Optional.of(PasteText.tidy(start));
      }
    }
    return Optional.empty();
  }

  /** A line before or among the ingredients. */
  private void list(int i, String text, String tidy) {
    Optional<String> heading = LineKinds.heading(tidy);
    if (LineKinds.isStep(tidy) && !hasMeasure(tidy)) {
      part = LineKinds.Part.METHOD;
      method(i, text, tidy);
    } else if (heading.isPresent() || LineKinds.isShouted(tidy) && !isFood(tidy)) {
      section = heading.or(() -> Optional.of(tidy));
      other(i, text, PastedLine.Kind.HEADING);
    } else if (LineKinds.isSentence(tidy)) {
      other(i, text, PastedLine.Kind.NOTE);
    } else {
      part = LineKinds.Part.INGREDIENTS;
      ingredient(i, text);
    }
  }

  private boolean isFood(String tidy) {
    return !matcher.match(IngredientLine.read(tidy)).candidates().isEmpty();
  }

  /** Whether a line begins with an amount in a unit. */
  private static boolean hasMeasure(String tidy) {
    return AmountReader.read(PasteText.withoutNumber(tidy))
        .flatMap(AmountReader.Found::amount)
        .filter(amount -> !amount.isCount())
        .isPresent();
  }

  private void method(int i, String text, String tidy) {
    Optional<String> heading = LineKinds.heading(tidy);
    boolean numbered = PasteText.isNumbered(tidy);
    boolean item =
        !numbered
            && hasMeasure(tidy)
            && !tidy.endsWith(".")
            && PasteText.words(tidy) <= SHORT_ITEM_WORDS;
    if (heading.isPresent() && !numbered) {
      stepHeading = heading;
      section = heading;
      other(i, text, PastedLine.Kind.HEADING);
    } else if (item && (blankBefore || !goesOn(tidy))) {
      ingredient(i, text);
    } else {
      step(i, text, PasteText.withoutNumber(tidy), numbered);
    }
  }

  private void step(int i, String text, String step, boolean numbered) {
    other(i, text, PastedLine.Kind.STEP);
    boolean joined = !numbered && !blankBefore && stepHeading.isEmpty() && goesOn(step);
    if (joined) {
      int last = steps.size() - 1;
      steps.set(last, steps.get(last) + " " + step);
      return;
    }
    numberedStep = numbered;
    steps.add(stepHeading.map(heading -> heading + ": ").orElse("") + step);
    stepHeading = Optional.empty();
  }

  /** Whether a line goes on with the step above it. */
  private boolean goesOn(String tidy) {
    if (steps.isEmpty()) {
      return false;
    }
    String above = steps.get(steps.size() - 1);
    boolean open = !above.isEmpty() && ".!?:;)".indexOf(above.charAt(above.length() - 1)) < 0;
    return numberedStep || open && !tidy.isEmpty() && !Character.isUpperCase(tidy.codePointAt(0));
  }

  private void ingredient(int i, String text) {
    lines.add(LineSettler.settle(i + 1, IngredientLine.read(text), section, matcher, choices));
  }

  private void other(int i, String text, PastedLine.Kind kind) {
    lines.add(PastedLine.other(i + 1, text, kind));
  }
}
