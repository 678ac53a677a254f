package io.ovenmark.publish.story;

import io.ovenmark.publish.card.Card;
import java.util.ArrayList;
import java.util.List;

/**
 * The last picture: the macros of a piece, allergens, what to mind, storage, and which revision. No
 * allergen and no caution is ever left out: where one picture has no room, further ones follow.
 */
final class CardPicture {
  private static final double[] SIZES = {40, 38, 36, 34, 32, 30};
  private static final double FIGURES = 640;
  private static final double APART = 88;
  private static final double BESIDE = PictureCanvas.ACROSS - FIGURES - APART;
  private static final double LARGEST_ALONE = 44;
  private static final double SMALLEST_ALONE = 34;

  private final Card card;
  private final CardHead head;
  private final FigureRows figures;
  private final TextColumn column;
  private final String place;

  private CardPicture(
      Story story, FigureRows figures, TextColumn column, int page, int pages) {
    this.card = story.card();
    this.place = pages > 1 ? page + " of " + pages : "";
    this.head = new CardHead(story, place, figures == null);
    this.figures = figures;
    this.column = column;
  }

  /** The pictures that it takes, at least one. */
  static List<CardPicture> of(Story story) {
    Card card = story.card();
    double room = room(story, false);
    FigureRows rows = FigureRows.fitted(card, FIGURES, room);
    for (double size : SIZES) {
      TextColumn all = new TextColumn(BESIDE);
      allergens(all, card, size);
      mind(all, card, size);
      keep(all, card, size);
      if (all.height() <= room) {
        return List.of(new CardPicture(story, rows, all, 1, 1));
      }
    }
    return several(story, rows, room);
  }

  private static double room(Story story, boolean further) {
    return PictureCanvas.BOTTOM - new CardHead(story, "", further).height();
  }

  private static List<CardPicture> several(Story story, FigureRows rows, double room) {
    List<TextColumn> beside = besideFigures(story.card(), room);
    List<TextColumn> columns = new ArrayList<>(beside);
    columns.addAll(cautions(story.card(), room(story, true)));
    List<CardPicture> pictures = new ArrayList<>();
    for (int page = 0; page < columns.size(); page++) {
      FigureRows shown = page < beside.size() ? rows : null;
      pictures.add(new CardPicture(story, shown, columns.get(page), page + 1, columns.size()));
    }
    return List.copyOf(pictures);
  }

  /** Allergens and storage, on one page if that can be. */
  private static List<TextColumn> besideFigures(Card card, double room) {
    List<TextColumn> pages = List.of();
    for (double size : SIZES) {
      TextColumn column = new TextColumn(BESIDE);
      allergens(column, card, size);
      keep(column, card, size);
      pages = column.pages(room, true);
      if (pages.size() == 1) {
        break;
      }
    }
    return pages;
  }

  /** What to mind, over the whole width. */
  private static List<TextColumn> cautions(Card card, double room) {
    List<TextColumn> pages = List.of();
    for (double size = LARGEST_ALONE; size >= SMALLEST_ALONE; size -= 2) {
      TextColumn all = new TextColumn(PictureCanvas.ACROSS);
      mind(all, card, size);
      pages = all.pages(room, false);
      if (pages.size() == 1) {
        break;
      }
    }
    return pages;
  }

  private static void allergens(TextColumn column, Card card, double size) {
    if (card.contains().isEmpty() && card.allergensUnknownIn().isEmpty()) {
      column.heading("Allergens", TextStyle.bold(size));
      column.paragraph("None are stated of its foods.", TextStyle.plain(size));
    }
    if (!card.contains().isEmpty()) {
      column.heading("Contains", TextStyle.bold(size));
      column.paragraph(String.join(", ", card.contains()), TextStyle.bold(size + 2));
    }
    if (!card.allergensUnknownIn().isEmpty()) {
      column.heading("Allergens unknown in", TextStyle.bold(size).in(Palette.WARN));
      column.paragraph(
          String.join(", ", card.allergensUnknownIn()), TextStyle.plain(size).in(Palette.WARN));
    }
  }

  private static void mind(TextColumn column, Card card, double size) {
    column.heading("To mind", TextStyle.bold(size).in(Palette.WARN));
    card.cautions().forEach(column.adding(TextStyle.plain(size)));
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
    if (!place.isEmpty()) {
      words.append(' ').append(place).append('.');
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
      card.basis().forEach(text -> words.append(' ').append(PictureWords.ended(text)));
    }
    words.append(' ').append(PictureWords.ended(column.words()));
    return words.toString();
  }
}
