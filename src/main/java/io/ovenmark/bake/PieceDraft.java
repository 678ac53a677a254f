package io.ovenmark.bake;

import io.ovenmark.measure.Quoting;
import io.ovenmark.measure.Temperature;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/** A piece into which the words of its text are put one by one. */
final class PieceDraft {
  private static final String SCORE = "score.";
  private static final String EXAMPLE =
      "Write it as in: a 190C 24min dough=95g baked=82g height=46mm finding='gummy crumb'";

  private final Piece start;
  private final String written;
  private final Set<String> seen = new HashSet<>();
  private Optional<Temperature> temperature;
  private OptionalDouble minutes;
  private Optional<String> rack;
  private OptionalDouble dough;
  private OptionalDouble baked;
  private OptionalDouble width;
  private OptionalDouble height;
  private Optional<Temperature> core;
  private List<CorePoint> coreLog;
  private OptionalDouble crust;
  private final List<String> findings;
  private List<Double> liking;
  private final List<Piece.Attribute> attributes;
  private Optional<String> verdict;
  private Optional<String> note;

  /**
   * Begins with what is known.
   *
   * @param written the whole text, for messages
   */
  PieceDraft(Piece start, String written) {
    this.start = start;
    this.written = written;
    this.temperature = start.temperature();
    this.minutes = start.minutes();
    this.rack = start.rack();
    this.dough = start.doughGrams();
    this.baked = start.bakedGrams();
    this.width = start.widthMillimetres();
    this.height = start.heightMillimetres();
    this.core = start.core();
    this.coreLog = start.coreLog();
    this.crust = start.crustShade();
    this.findings = new ArrayList<>(start.findings());
    this.liking = start.liking();
    this.attributes = new ArrayList<>(start.attributes());
    this.verdict = start.verdict();
    this.note = start.note();
  }

  /** Takes one word. */
  void take(PieceWord word) {
    String name = word.name().isEmpty() ? bareField(word) : word.name();
    if (!seen.add(name) && !name.equals("finding")) {
      throw PieceWord.bad("\"" + name + "\" stands twice" + inPiece(), "Keep one of them.");
    }
    try {
      set(name, word);
    } catch (IllegalArgumentException e) {
      throw within(e);
    }
  }

  /** The piece as it is now. */
  Piece piece() {
    try {
      return new Piece(
          start.id(), temperature, minutes, rack, dough, baked, width, height, core, coreLog, crust,
          findings, liking, attributes, verdict, note, start.extras());
    } catch (IllegalArgumentException e) {
      throw within(e);
    }
  }

  private IllegalArgumentException within(IllegalArgumentException e) {
    String[] parts = String.valueOf(e.getMessage()).split("\n", 2);
    String sentence = parts[0].replaceAll("\\.$", "") + inPiece();
    return PieceWord.bad(sentence, parts.length > 1 ? parts[1] : EXAMPLE);
  }

  private String inPiece() {
    return ", in the piece " + Quoting.quote(written) + ".";
  }

  private String bareField(PieceWord word) {
    Optional<String> field =
        word.quoted() ? Optional.empty() : PieceMeasure.bareField(word.text());
    if (field.isEmpty()) {
      throw PieceWord.bad(
          Quoting.quote(word.text()) + " is not understood" + inPiece(),
          "Put several words in quotes, as in note='dark at the edge'. " + EXAMPLE);
    }
    if (field.get().isEmpty()) {
      throw PieceWord.bad(
          Quoting.quote(word.text()) + " has no unit" + inPiece(),
          "Write for example 190C for the oven or 24min for the time.");
    }
    return field.get();
  }

  private void set(String name, PieceWord word) {
    String value = word.text();
    switch (name) {
      case "oven" -> temperature = optional(value).map(Temperature::parse);
      case "time" -> minutes = number(value, PieceMeasure::minutes);
      case "rack" -> rack = optional(value);
      case "dough" -> dough = number(value, PieceMeasure::grams);
      case "baked" -> baked = number(value, PieceMeasure::grams);
      case "width" -> width = number(value, PieceMeasure::millimetres);
      case "height" -> height = number(value, PieceMeasure::millimetres);
      case "core" -> core = optional(value).map(Temperature::parse);
      case "log" -> coreLog = CoreLog.read(value);
      case "crust" -> crust = number(value, PieceMeasure::number);
      case "finding" -> addFindings(word.parts());
      case "liking" -> liking = word.parts().stream().map(PieceMeasure::number).toList();
      case "verdict" -> verdict = optional(value);
      case "note" -> note = optional(value);
      default -> setScore(name, word.parts());
    }
  }

  private void addFindings(List<String> words) {
    if (words.isEmpty()) {
      findings.clear();
    }
    for (String word : words) {
      String finding =
          FindingVocabulary.of(word).map(FindingVocabulary::word).orElse(word.strip());
      if (!finding.isEmpty() && !findings.contains(finding)) {
        findings.add(finding);
      }
    }
  }

  private void setScore(String name, List<String> scores) {
    String attribute = name.startsWith(SCORE) ? name.substring(SCORE.length()) : "";
    if (attribute.isBlank()) {
      throw PieceWord.bad(
          "A piece has no \"" + name + "\".",
          "It has oven, time, rack, dough, baked, width, height, core, log, crust, finding, liking,"
              + " score.<attribute>, verdict and note.");
    }
    attributes.removeIf(each -> each.name().equals(attribute));
    if (!scores.isEmpty()) {
      attributes.add(
          new Piece.Attribute(attribute, scores.stream().map(PieceMeasure::number).toList()));
    }
  }

  private static Optional<String> optional(String value) {
    return value.isBlank() ? Optional.empty() : Optional.of(value.strip());
  }

  private static OptionalDouble number(String value, ToDoubleFunction<String> read) {
    return value.isBlank()
        ? OptionalDouble.empty()
        : OptionalDouble.of(read.applyAsDouble(value.strip()));
  }
}
