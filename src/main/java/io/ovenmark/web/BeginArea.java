package io.ovenmark.web;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.NewFormula;
import io.ovenmark.desk.PasteChoices;
import io.ovenmark.desk.ReadPasted;
import io.ovenmark.notebook.Refusal;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** How a formula is begun: from pasted text, or as a copy of another. Nothing is written here. */
final class BeginArea implements Area {
  private final Desk desk;

  BeginArea(Desk desk) {
    this.desk = desk;
  }

  /**
   * Text to be read.
   *
   * @param text what was pasted
   * @param foods short name of the food by the words that a line has for it; may be missing
   * @param amounts the amount that is meant, by the line as it was pasted; may be missing
   * @param leftOut the lines to leave out, as they were pasted; may be missing
   */
  record Paste(
      String text, Map<String, String> foods, Map<String, String> amounts, List<String> leftOut) {
    Paste {
      if (text == null) {
        throw new Refusal(
            Refusal.Reason.INVALID, "text", "There is no text.", "Paste some lines.");
      }
      foods = foods == null ? Map.of() : foods;
      amounts = amounts == null ? Map.of() : amounts;
      leftOut = leftOut == null ? List.of() : leftOut;
    }

    PasteChoices choices() {
      return PasteChoices.of(foods, amounts, Set.copyOf(leftOut));
    }
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question(
            "copy",
            context -> new NewFormula(desk).copyOf(Asked.address(desk, context, "address")))
        .order(
            "paste",
            context -> {
              Paste paste = Asked.order(context, Paste.class);
              return new ReadPasted(desk).call(paste.text(), paste.choices());
            });
  }
}
