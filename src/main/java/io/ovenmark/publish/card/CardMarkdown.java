package io.ovenmark.publish.card;

import java.util.List;
import java.util.regex.Pattern;

/** A card as Markdown (CommonMark). */
public final class CardMarkdown {
  private static final Pattern SIGNS = Pattern.compile("([\\\\`*_{}\\[\\]<>#|~&])");
  private static final Pattern BEGINS_LIST =
      Pattern.compile("^(\\s*\\d{1,9})([.)])(?=\\s|$)|^(\\s*)([-+])");

  private CardMarkdown() {}

  /**
   * Writes it.
   *
   * @param card the card; its picture is left out, since Markdown cannot carry it
   * @return Markdown that ends with a line break
   */
  public static String of(Card card) {
    StringBuilder out = new StringBuilder();
    out.append("# ").append(line(card.name())).append("\n\n");
    card.description().ifPresent(text -> out.append(line(text)).append("\n\n"));
    out.append(plain(card.yield())).append("\n\n## Ingredients\n\n");
    for (Card.Ingredient each : card.ingredients()) {
      out.append("- **").append(plain(each.mass())).append("**");
      each.measure().ifPresent(text -> out.append(" (").append(within(text)).append(")"));
      out.append(' ').append(within(Scripts.part(each.name())));
      each.note().ifPresent(text -> out.append(", ").append(within(Scripts.part(text))));
      out.append('\n');
    }
    out.append("\n## Method\n\n");
    int step = 1;
    for (String text : card.method()) {
      out.append(step++).append(". ").append(line(text)).append('\n');
    }
    out.append(card.method().isEmpty() ? "Not stated.\n" : "").append("\n## Oven\n\n");
    for (Card.Stage stage : card.stages()) {
      out.append("- ").append(plain(stage.inOneLine(Scripts::part))).append('\n');
    }
    out.append(card.stages().isEmpty() ? "Not stated.\n" : "").append("\n## A piece\n\n");
    out.append("| figure | a piece |\n|---|---|\n");
    for (Card.Fact fact : card.figures()) {
      out.append("| ").append(plain(fact.label())).append(" | ").append(plain(fact.text()))
          .append(" |\n");
    }
    out.append('\n').append(plain(String.join(" ", card.basis()))).append("\n\n## To mind\n\n");
    list(out, card.cautions());
    card.storage()
        .ifPresent(text -> out.append("\n## Storage\n\n").append(line(text)).append('\n'));
    out.append('\n').append(plain(CardText.origin(card))).append('\n');
    return out.toString();
  }

  private static void list(StringBuilder out, List<String> texts) {
    texts.forEach(text -> out.append("- ").append(line(text)).append('\n'));
  }

  private static String line(String text) {
    return plain(Scripts.line(text));
  }

  /**
   * A text that begins a line, without anything that Markdown would take for its own.
   *
   * @param text any text
   * @return the text in one line, its signs escaped
   */
  public static String plain(String text) {
    return BEGINS_LIST.matcher(within(text)).replaceFirst("$1$3\\\\$2$4");
  }

  /**
   * The same for a text within a line, where no list begins.
   *
   * @param text any text
   * @return the text in one line, its signs escaped
   */
  public static String within(String text) {
    String oneLine = text.replaceAll("\\s*\\R\\s*", " ").strip();
    return SIGNS.matcher(oneLine).replaceAll("\\\\$1");
  }
}
