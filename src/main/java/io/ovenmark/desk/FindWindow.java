package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.formula.Formula;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.window.BakeWindow;
import io.ovenmark.window.BakedPiece;
import io.ovenmark.window.OvenRange;
import io.ovenmark.window.ProposedLimits;
import io.ovenmark.window.WindowLimit;
import io.ovenmark.window.WindowMap;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds where on the map of oven temperature × time a formula keeps every limit, how sure that is,
 * and what to bake next.
 *
 * <pre>{@code
 * WindowViews.WindowSheet sheet =
 *     new FindWindow(desk).call(address, WindowOrder.of("dough", "crust 2 to 3", "not dry"));
 * }</pre>
 */
public final class FindWindow {
  private final Desk desk;

  /** What was found. */
  record Found(
      FindLevers.State state,
      WindowQuestion question,
      WindowQuestion.Choice choice,
      List<WindowViews.ChoiceView> choices,
      BakeWindow window) {}

  /** A content of the formula, the dough that it makes, and the bakes of it. */
  private record Content(String blob, String dough) {}

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public FindWindow(Desk desk) {
    this.desk = desk;
  }

  /**
   * Finds the window.
   *
   * @param address which state
   * @param order what is asked
   * @return the window, or what is missing for one
   * @throws Refusal when there is no such state, or the question is not understood
   */
  public WindowViews.WindowSheet call(Address address, WindowOrder order) {
    return new WindowSheetMaker(desk, find(address, order)).sheet();
  }

  private Found find(Address address, WindowOrder order) {
    WindowQuestion question = WindowQuestion.read(order);
    FindLevers.State state = FindLevers.state(desk, address);
    Map<String, String> doughs = doughs(address, state);
    String blob =
        state.revision()
            .map(revision -> revision.blob().hex())
            .orElseGet(() -> ShowFormula.read(desk, address).blob());
    String dough = dough(state.sheet().worksheet().formula());
    doughs.put(blob, dough);
    List<Bake> bakes = desk.notebook().bakes(address.formula());
    Map<WindowQuestion.Choice, List<BakedPiece>> pieces =
        new EnumMap<>(WindowQuestion.Choice.class);
    List<WindowViews.ChoiceView> choices = new ArrayList<>();
    for (WindowQuestion.Choice choice : WindowQuestion.Choice.values()) {
      Set<String> kinds = new HashSet<>();
      List<BakedPiece> chosen = new ArrayList<>();
      for (Bake bake : bakes) {
        String of = doughs.get(bake.blob());
        boolean taken =
            switch (choice) {
              case REVISION -> bake.blob().equals(blob);
              case DOUGH -> dough.equals(of);
              case ALL -> of != null;
            };
        if (taken) {
          chosen.addAll(BakedPiece.of(bake, question.dose()));
          kinds.add(of);
        }
      }
      pieces.put(choice, chosen);
      choices.add(
          new WindowViews.ChoiceView(choice.key(), choice.words(), chosen.size(), kinds.size()));
    }
    boolean egg = state.sheet().worksheet().allergens().contains(Allergen.EGGS);
    WindowQuestion.Choice choice =
        question.choice().orElseGet(
            () ->
                window(question, pieces.get(WindowQuestion.Choice.REVISION), egg).map().isPresent()
                    ? WindowQuestion.Choice.REVISION
                    : WindowQuestion.Choice.DOUGH);
    return new Found(
        state, question, choice, choices, window(question, pieces.get(choice), egg));
  }

  private BakeWindow window(WindowQuestion question, List<BakedPiece> pieces, boolean egg) {
    return window(
        question,
        pieces,
        question.limits().isEmpty() ? ProposedLimits.of(pieces, egg) : question.limits());
  }

  private BakeWindow window(
      WindowQuestion question, List<BakedPiece> pieces, List<WindowLimit> limits) {
    boolean fahrenheit = desk.units().degreeUnit().equals("°F");
    BakeWindow window =
        BakeWindow.of(pieces, limits, question.axis(), Optional.empty(), fahrenheit);
    Optional<OvenRange> range =
        window.map().map(WindowMap::range).flatMap(each -> question.range(each, fahrenheit));
    return range.isEmpty()
        ? window
        : BakeWindow.of(pieces, limits, question.axis(), range, fahrenheit);
  }

  /** The dough of each content of the line of history. */
  private Map<String, String> doughs(Address address, FindLevers.State state) {
    Map<String, String> doughs = new HashMap<>();
    if (desk.notebook().newestIfAny(state.line()).isPresent()) {
      for (Revision revision : desk.notebook().revisions(state.line())) {
        desk.readable(revision)
            .ifPresent(formula -> doughs.putIfAbsent(revision.blob().hex(), dough(formula)));
      }
    }
    return doughs;
  }

  /** What is weighed, and into pieces of which size; the order of the lines does not matter. */
  private static String dough(Formula formula) {
    List<String> lines =
        formula.lines().stream()
            .map(line -> line.food() + " " + line.amount())
            .sorted()
            .toList();
    return String.join("\n", lines)
        + "\n" + formula.yield().pieces() + formula.yield().doughPerPieceGrams();
  }
}
