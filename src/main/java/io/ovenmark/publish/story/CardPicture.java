package io.ovenmark.publish.story;

import io.ovenmark.publish.card.Card;
import java.util.ArrayList;
import java.util.List;

/**
 * The last picture: the macros of a piece, allergens, what to mind, storage, and which revision. No
 * allergen and no caution is ever left out: where one picture has no room, further ones follow.
 */
final class CardPicture {
  private static final double[] SIZES = {38, 36, 34, 32, 30};
  private static final double FIGURES = 640;
  private static final double APART = 88;
  private static final double BESIDE = PictureCanvas.ACROSS - FIGURES - APART;
  private static final double ALONE = 1440;

  private final Story story;
  private final Card card;
  private final FigureRows figures;
  private final TextColumn column;
  private final int page;
  private final int pages;

  private CardPicture(
      Story story, FigureRows figures, TextColumn column, int page, int pages) {
    this.story = story;
    this.card = story.card();
    this.figures = figures;
    this.column = column;
    this.page = page;
    this.pages = pages;
  }

  /** The pictures that it takes, at least one. */
  static List<CardPicture> of(Story story) {
    Card card = story.card();
    double room = PictureCanvas.BOTTOM - new CardHead(story, 1, 1).height();
    FigureRows rows = FigureRows.fitted(card.figures(), FIGURES, room);
    for (double size : SIZES) {
      TextColumn all = everything(card, size);
      if (all.height() <= room) {
        return List.of(new CardPicture(story, rows, all, 1, 1));
      }
    }
    return several(story, rows, room);
  }

  private static TextColumn everything(Card card, double size) {
    TextColumn column = new TextColumn(BESIDE);
    allergens(column, card, size);
    mind(column, card, size);
    keep(column, card, size);
    return column;
  }

  private static List<CardPicture> several(Story story, FigureRows rows, double room) {
    Card card = story.card();
    TextColumn first = new TextColumn(BESIDE);
    allergens(first, card, 34);
    keep(first, card, 34);
    List<TextColumn> columns = new ArrayList<>(first.pages(room));
    int beside = columns.size();
    for (double size : new double[] {44, 40, 36, 34}) {
      TextColumn cautions = new TextColumn(ALONE);
      mind(cautions, card, size);
      List<TextColumn> taken = cautions.pages(room);
      if (taken.size() == 1 || size == 34) {
        columns.addAll(taken);
        break;
      }
    }
    List<CardPicture> pictures = new ArrayList<>();
    for (int page = 0; page < columns.size(); page++) {
      pictures.add(
          new CardPicture(
              story,
              page < beside ? rows : null,
              columns.get(page),
              page + 1,
              columns.size()));
    }
    return List.copyOf(pictures);
  }

  private static void allergens(TextColumn column, Card card, double size) {
    if (card.contains().isEmpty() && card.allergensUnknownIn().isEmpty()) {
      column.heading("Contains", TextStyle.bold(size));
      column.paragraph("None of the allergens that are asked for.", TextStyle.plain(size));
    }
    if (!card.contains().isEmpty()) {
      column.heading("Contains", TextStyle.bold(size));
      column.paragraph(String.join(", ", card.contains()), TextStyle.bold(size));
    }
    if (!card.allergensUnknownIn().isEmpty()) {
      column.heading("Allergens unknown in", TextStyle.bold(size).in(Palette.WARN));
      column.paragraph(
          String.join(", ", card.allergensUnknownIn()),
          TextStyle.bold(size).in(Palette.WARN));
    }
  }

  private static void mind(TextColumn column, Card card, double size) {
    column.heading("To mind", TextStyle.bold(size).in(Palette.WARN));
    card.cautions().forEach(each -> column.paragraph(each, TextStyle.plain(size)));
  }

  private static void keep(TextColumn column, Card card, double size) {
    card.storage()
        .ifPresent(
            storage -> {
              column.heading("To keep", TextStyle.bold(size));
              column.paragraph(storage, TextStyle.plain(size));
            });
  }

  void draw(PictureCanvas canvas) {
    CardHead head = new CardHead(story, page, pages);
    head.draw(canvas);
    double y = head.height();
    if (figures == null) {
      column.draw(canvas, PictureCanvas.LEFT, y);
    } else {
      figures.draw(canvas, PictureCanvas.LEFT, y);
      column.draw(canvas, PictureCanvas.LEFT + FIGURES + APART, y);
    }
  }

  String alternative() {
    StringBuilder words = new StringBuilder(PictureWords.ended(card.name()));
    if (pages > 1) {
      words.append(' ').append(page).append(" of ").append(pages).append('.');
    }
    words.append(' ').append(PictureWords.ended(CardHead.revision(card)));
    if (figures != null) {
      words.append(" Yield: ").append(PictureWords.ended(card.yield())).append(" A piece:");
      String comma = " ";
      for (Card.Fact fact : card.figures()) {
        words.append(comma).append(fact.label()).append(' ').append(fact.text());
        comma = ", ";
      }
      words.append('.');
    }
    words.append(' ').append(column.words());
    return words.toString();
  }
}
