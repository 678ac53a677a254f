package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Photo;
import io.ovenmark.measure.Quoting;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.KeptPhoto;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.publish.card.Card;
import io.ovenmark.publish.card.CardChoices;
import io.ovenmark.publish.card.CardHtml;
import io.ovenmark.publish.card.CardJsonLd;
import io.ovenmark.publish.card.CardMaker;
import io.ovenmark.publish.card.CardMarkdown;
import io.ovenmark.publish.card.CardPhoto;
import io.ovenmark.publish.card.CardText;
import io.ovenmark.publish.card.KitchenMeasure;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Makes the card of a revision, worked out as {@link ShowFormula} works it out.
 *
 * <pre>{@code
 * String page = new MakeCard(desk).page(Address.parse("seeded-lupin-bun@5"), CardOrder.USUAL);
 * }</pre>
 */
public final class MakeCard {
  private final Desk desk;

  private record Made(
      Worksheet worksheet,
      Card card,
      CardChoices choices,
      Optional<Photo> photo,
      List<Bake> bakes,
      List<CardViews.CautionView> cautions) {}

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public MakeCard(Desk desk) {
    this.desk = desk;
  }

  /**
   * The card in words and data.
   *
   * @param address which revision
   * @param order what somebody chose
   * @return the card
   * @throws Refusal when there is no such revision or photo, or a choice is not understood
   */
  public CardViews.CardSheet call(Address address, CardOrder order) {
    Made made = make(address, order, false);
    Card card = made.card();
    return new CardViews.CardSheet(
        card.address(),
        card.name(),
        made.choices().paper().key(),
        made.choices().masses().unit(),
        card.times(),
        card.yield(),
        made.photo().map(Photo::file).orElse(null),
        made.bakes().stream()
            .flatMap(bake -> bake.photos().stream())
            .map(
                photo ->
                    new CardViews.PhotoChoice(photo.file(), PublishedPhotos.alternative(photo)))
            .toList(),
        card.ingredients().stream()
            .map(
                each ->
                    new CardViews.IngredientView(
                        each.mass(),
                        BakeViews.number(each.grams()),
                        each.measure().orElse(null),
                        each.kitchen().map(KitchenMeasure::grams).orElse(null),
                        each.name(),
                        each.note().orElse(null)))
            .toList(),
        card.method(),
        card.stages().stream().map(Card.Stage::inOneLine).toList(),
        card.figures().stream()
            .map(CardViews.FactView::of)
            .toList(),
        card.basis(),
        card.contains(),
        card.allergensUnknownIn(),
        made.cautions(),
        card.storage().orElse(null),
        UnweighedFoods.remarks(desk, made.worksheet()),
        CardMarkdown.of(card),
        text(card, CardText.LONG),
        text(card, CardText.SHORT),
        CardJsonLd.of(card));
  }

  /**
   * The card as a page of its own, with its picture.
   *
   * @param address which revision
   * @param order what somebody chose
   * @return HTML that needs nothing else
   * @throws Refusal as {@link #call} does
   */
  public String page(Address address, CardOrder order) {
    Made made = make(address, order, true);
    return CardHtml.of(made.card(), made.choices().paper());
  }

  /** The card of a revision before it is laid out, without a picture. */
  Card card(Address address) {
    return make(address, CardOrder.USUAL, false).card();
  }

  private static CardViews.TextView text(Card card, int limit) {
    CardText text = CardText.of(card, limit);
    return new CardViews.TextView(
        text.text(), text.signs(), limit, text.fits(), text.leftOut());
  }

  private Made make(Address address, CardOrder order, boolean withPicture) {
    CardChoices choices = choices(order);
    List<Bake> all = desk.notebook().bakes(address.formula());
    if (address.point().kind() == Address.Point.Kind.EDITED) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          address.toString(),
          "A card is made of a revision, so that it can be made again.",
          "Save the edited file as a revision first.");
    }
    Revision revision = desk.notebook().revision(address);
    Desk.Sheet sheet = desk.sheet(address, revision, all);
    boolean otherFoods = desk.restsOnOtherFoods(address, revision);
    List<Bake> bakes = Desk.bakesOf(revision.blob().hex(), all);
    Optional<Photo> photo = photo(order, all, bakes);
    Optional<CardPhoto> picture =
        withPicture ? photo.flatMap(chosen -> picture(address, chosen, order)) : Optional.empty();
    String shown =
        revision.address() + (otherFoods ? " (foods of today)" : "");
    List<Caution> own = Cautions.keyed(sheet.worksheet(), bakes, units(choices));
    List<Caution> worded = Cautions.worded(own, CautionWords.read(order.words()));
    CardMaker.Facts facts =
        new CardMaker.Facts(
            shown,
            Optional.of(revision.time().toLocalDate().toString()),
            picture,
            worded.stream().map(Caution::words).toList());
    return new Made(
        sheet.worksheet(),
        CardMaker.of(sheet.worksheet(), facts, choices),
        choices,
        photo,
        all,
        cautions(own, worded, choices));
  }

  private static List<CardViews.CautionView> cautions(
      List<Caution> own, List<Caution> worded, CardChoices choices) {
    List<CardViews.CautionView> views = new ArrayList<>();
    for (int i = 0; i < own.size(); i++) {
      Caution caution = own.get(i);
      views.add(
          new CardViews.CautionView(caution.key(), caution.words(), worded.get(i).words()));
    }
    choices.more().forEach(text -> views.add(new CardViews.CautionView(null, null, text)));
    return views;
  }

  private static ShownUnits units(CardChoices choices) {
    return ShownUnits.of(Optional.of(choices.masses().unit()), Optional.empty());
  }

  private static CardChoices choices(CardOrder order) {
    return new ChoicesOf(order).read();
  }

  private record ChoicesOf(CardOrder order) {
    CardChoices read() {
      CardChoices.Paper paper =
          isBlank(order.paper())
              ? CardChoices.Paper.A4
              : Asked.read("paper", () -> CardChoices.Paper.read(order.paper()));
      CardChoices.Masses masses =
          isBlank(order.masses())
              ? CardChoices.Masses.GRAMS
              : Asked.read("masses", () -> CardChoices.Masses.read(order.masses()));
      double times = isBlank(order.times()) ? 1 : times(order.times().strip());
      return Asked.read(
          "card",
          () ->
              new CardChoices(
                  paper,
                  masses,
                  times,
                  Optional.ofNullable(order.storage()),
                  order.more()));
    }

    private static double times(String text) {
      if (!text.matches("\\d{1,4}(\\.\\d{1,4})?")) {
        throw new Refusal(
            Refusal.Reason.INVALID,
            "times",
            Quoting.quote(text) + " is not a number of times.",
            "Write a number such as 2 or 0.5, with a point.");
      }
      return Double.parseDouble(text);
    }

    private static boolean isBlank(String text) {
      return text == null || text.isBlank();
    }
  }

  private static Optional<Photo> photo(CardOrder order, List<Bake> all, List<Bake> own) {
    Optional<String> wanted =
        Optional.ofNullable(order.photo()).map(String::strip).filter(text -> !text.isEmpty());
    return PublishedPhotos.choose(wanted, all, own, "photo");
  }

  /** A picture that nobody chose and that cannot be read is left out. */
  private Optional<CardPhoto> picture(Address address, Photo photo, CardOrder order) {
    try {
      return Optional.of(picture(address, photo));
    } catch (Refusal e) {
      if (order.photo() == null || order.photo().isBlank()) {
        return Optional.empty();
      }
      throw e;
    }
  }

  private CardPhoto picture(Address address, Photo photo) {
    KeptPhoto kept = PublishedPhotos.kept(desk.notebook(), address.formula(), photo);
    return new CardPhoto(
        PublishedPhotos.smaller(photo, kept), PublishedPhotos.alternative(photo));
  }
}
