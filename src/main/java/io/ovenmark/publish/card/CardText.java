package io.ovenmark.publish.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A card as plain text for the description of a video: 5 000 signs, or 1 500. What does not fit is
 * left out from the least needful on, and said to be; amounts, allergens and cautions never are.
 *
 * @param text the text
 * @param signs how many code points it has
 * @param fits whether that is within the limit
 * @param leftOut what was left out, in words
 */
public record CardText(String text, int signs, boolean fits, List<String> leftOut) {
  /** Signs of the long form. */
  public static final int LONG = 5000;

  /** Signs of the short form. */
  public static final int SHORT = 1500;

  private static final String METHOD = "the method";

  /** Copies the list. */
  public CardText {
    leftOut = List.copyOf(leftOut);
  }

  /** A paragraph; those with a higher number go first, 0 never goes. */
  private record Part(String text, int goes, String called) {}

  /**
   * Writes it.
   *
   * @param card the card
   * @param limit the most signs, such as {@link #LONG}
   * @return the text; when even the needful is too long, it does not fit
   */
  public static CardText of(Card card, int limit) {
    CardText full = of(card, limit, false);
    if (full.keepsMethod()) {
      return full;
    }
    CardText brief = of(card, limit, true);
    return brief.keepsMethod() || !full.fits ? brief : full;
  }

  private boolean keepsMethod() {
    return fits && !leftOut.contains(METHOD);
  }

  private static CardText of(Card card, int limit, boolean brief) {
    List<Part> all = parts(card, brief);
    List<Part> kept = new ArrayList<>(all);
    while (length(kept) > limit && kept.stream().anyMatch(part -> part.goes > 0)) {
      kept.remove(kept.stream().filter(part -> part.goes > 0).reduce(CardText::lesser).get());
    }
    // what went early may fit again after something longer went
    all.stream()
        .filter(part -> !kept.contains(part))
        .sorted(Comparator.comparingInt(Part::goes))
        .forEach(
            part -> {
              List<Part> more = all.stream().filter(p -> kept.contains(p) || p == part).toList();
              if (length(more) <= limit) {
                kept.clear();
                kept.addAll(more);
              }
            });
    List<String> leftOut = new ArrayList<>();
    if (brief) {
      leftOut.add("kitchen measures and notes of ingredients");
    }
    all.stream().filter(part -> !kept.contains(part)).map(Part::called).forEach(leftOut::add);
    String text = text(kept);
    return new CardText(
        text, text.codePointCount(0, text.length()), length(kept) <= limit, leftOut);
  }

  private static Part lesser(Part one, Part other) {
    return other.goes > one.goes ? other : one;
  }

  private static int length(List<Part> parts) {
    String text = text(parts);
    return text.codePointCount(0, text.length());
  }

  private static String text(List<Part> parts) {
    return parts.stream().map(Part::text).collect(Collectors.joining("\n\n")) + "\n";
  }

  private static List<Part> parts(Card card, boolean brief) {
    List<Part> parts = new ArrayList<>();
    parts.add(new Part(line(card.name()), 0, ""));
    card.description().ifPresent(text -> parts.add(new Part(line(text), 6, "the description")));
    parts.add(new Part(one(card.yield()) + ".", 0, ""));
    parts.add(new Part(ingredients(card, brief), 0, ""));
    if (!card.method().isEmpty()) {
      List<String> steps = new ArrayList<>();
      for (String step : card.method()) {
        steps.add((steps.size() + 1) + ". " + line(step));
      }
      parts.add(new Part("METHOD\n" + String.join("\n", steps), 3, METHOD));
    }
    if (!card.stages().isEmpty()) {
      String stages =
          card.stages().stream()
              .map(stage -> one(stage.inOneLine(Scripts::part)))
              .collect(Collectors.joining("; then "));
      parts.add(new Part("OVEN: " + stages, 0, ""));
    }
    String figures =
        card.figures().stream()
            .map(fact -> fact.label() + " " + fact.text())
            .collect(Collectors.joining(", "));
    parts.add(new Part("A PIECE: " + figures + ".", 1, "the figures"));
    parts.add(new Part(String.join(" ", card.basis()), 5, "how the figures were worked out"));
    card.storage()
        .ifPresent(
            text -> parts.add(new Part("STORAGE: " + Scripts.part(one(text)), 4, "storage")));
    parts.add(
        new Part(
            "TO MIND\n"
                + card.cautions().stream()
                    .map(text -> "• " + line(text))
                    .collect(Collectors.joining("\n")),
            0,
            ""));
    parts.add(new Part(origin(card), 2, "revision and date"));
    return parts;
  }

  private static String ingredients(Card card, boolean brief) {
    if (brief) {
      return "INGREDIENTS: "
          + card.ingredients().stream()
              .map(each -> one(each.mass() + " " + Scripts.part(each.name())))
              .collect(Collectors.joining("; "))
          + ".";
    }
    return "INGREDIENTS\n"
        + card.ingredients().stream()
            .map(each -> "• " + one(each.inOneLine(Scripts::part)))
            .collect(Collectors.joining("\n"));
  }

  private static String line(String text) {
    return Scripts.line(one(text));
  }

  private static String one(String text) {
    return text.replaceAll("\\s*\\R\\s*", " ").strip();
  }

  /** The revision and its day, in one line. */
  static String origin(Card card) {
    return String.format(
        Locale.ROOT,
        "Revision %s%s.",
        card.address(),
        card.date().map(day -> " of " + day).orElse(", not committed"));
  }
}
