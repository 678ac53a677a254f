package io.ovenmark.desk;

import static java.util.Objects.requireNonNull;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.json.Position;
import io.ovenmark.json.Problem;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quoting;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Resolved;
import io.ovenmark.paste.Doubt;
import io.ovenmark.paste.FoodCandidate;
import io.ovenmark.paste.FoodMatch;
import io.ovenmark.paste.FoodMatcher;
import io.ovenmark.paste.IngredientLine;
import io.ovenmark.paste.LineChoices;
import io.ovenmark.paste.PastedAmount;
import io.ovenmark.paste.PastedFormula;
import io.ovenmark.paste.PastedLine;
import io.ovenmark.paste.PastedYield;
import io.ovenmark.paste.RecipeJsonLd;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Reads ingredient lines, a whole block or a schema.org recipe as it was pasted, and proposes a
 * formula with the foods of the main line's pantry and of the built-in table. Nothing is written.
 *
 * <pre>{@code
 * PasteViews.PastedView view = new ReadPasted(desk).call("120 g almond meal\n60 g water");
 * PasteChoices choices = PasteChoices.ofFoods(Map.of("almond meal", "almond-flour"));
 * Formula draft = new ReadPasted(desk).formula("-", bytes, choices).formula();
 * }</pre>
 */
public final class ReadPasted {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ReadPasted(Desk desk) {
    this.desk = desk;
  }

  /**
   * Reads pasted text.
   *
   * @param text lines of text, JSON-LD or a page that holds it
   * @return what was read
   * @throws Refusal when JSON or a page is pasted that is broken or holds no recipe
   */
  public PasteViews.PastedView call(String text) {
    return call(text, PasteChoices.NONE);
  }

  /**
   * Reads pasted text with choices made.
   *
   * @param text lines of text, JSON-LD or a page that holds it
   * @param choices foods and amounts that were chosen, and lines to leave out; what no line needs
   *     does not count
   * @return what was read
   * @throws Refusal when JSON or a page is pasted that is broken or holds no recipe, or a chosen
   *     food does not exist
   */
  public PasteViews.PastedView call(String text, PasteChoices choices) {
    requireNonNull(text, "text");
    return view(
        read("pasted text", text, choices),
        RecipeJsonLd.isMeant(text) ? "schema.org" : "text");
  }

  /**
   * The formula that a pasted file makes.
   *
   * @param file the name used in messages
   * @param utf8 its bytes
   * @param choices foods and amounts that were chosen, and lines to leave out
   * @return the formula with what should be known about it
   * @throws Refusal with every line that is in doubt and how to settle it, and every choice that no
   *     line needs
   */
  public Made formula(String file, byte[] utf8, PasteChoices choices) {
    PastedFormula pasted = read(file, text(file, utf8), choices);
    List<Problem> problems = new ArrayList<>();
    for (PastedLine line : pasted.doubtful()) {
      for (Doubt doubt : line.doubts()) {
        problems.add(
            new Problem(
                file,
                new Position(line.number(), 1),
                "",
                Quoting.quote(line.text()) + ": " + doubt.message(),
                hint(line, doubt)));
      }
    }
    unused(file, pasted, choices.foods()).ifPresent(problems::add);
    unused(file, pasted, "--amount", choices.lines().amounts().keySet()).ifPresent(problems::add);
    unused(file, pasted, "--leave-out", choices.lines().leftOut()).ifPresent(problems::add);
    if (problems.isEmpty() && !pasted.isCertain()) {
      problems.add(
          new Problem(
              file,
              Position.NONE,
              "",
              "There is no ingredient line in it.",
              "Write one on each line, such as \"120 g water\"."));
    }
    if (!problems.isEmpty()) {
      throw Refusal.of(problems);
    }
    return new Made(pasted.draft(), pasted.remarks());
  }

  /**
   * A formula that was made from pasted text.
   *
   * @param formula the formula, named as it was pasted
   * @param remarks what a person should know about it
   */
  public record Made(Formula formula, List<String> remarks) {
    /** Copies the list. */
    public Made {
      requireNonNull(formula, "formula");
      remarks = List.copyOf(remarks);
    }

    /**
     * What was committed, with the remarks about the pasted text in front.
     *
     * @param written what was committed
     * @return the same with more remarks
     */
    public WriteViews.RevisionWritten told(WriteViews.RevisionWritten written) {
      List<String> all = new ArrayList<>(remarks);
      all.addAll(written.remarks());
      return new WriteViews.RevisionWritten(
          written.outcome(),
          written.revision(),
          written.base(),
          written.changes(),
          written.comparison(),
          written.mergedWith(),
          written.conflicts(),
          written.foodsAdded(),
          written.leftAsEditedByHand(),
          List.copyOf(all));
    }
  }

  private static String hint(PastedLine line, Doubt doubt) {
    List<FoodCandidate> candidates = line.match().candidates();
    if (doubt.kind() == Doubt.Kind.LINE) {
      return doubt.hint() + " To go on without it: --leave-out " + line.number();
    }
    if (doubt.kind() != Doubt.Kind.FOOD) {
      String amount = line.choices().isEmpty() ? "AMOUNT" : line.choices().get(0).toString();
      return doubt.hint() + " To choose: --amount \"" + line.number() + "=" + amount + "\"";
    }
    String words = line.read().map(IngredientLine::food).orElse("").replace("\"", "");
    return doubt.hint()
        + " To choose: --food \"" + words + "="
        + (candidates.isEmpty() ? "FOOD" : candidates.get(0).food().slug()) + "\"";
  }

  /** A choice for words that no line has is a slip. */
  private static Optional<Problem> unused(
      String file, PastedFormula pasted, Map<String, String> foods) {
    for (String words : new TreeMap<>(foods).keySet()) {
      boolean used =
          pasted.lines().stream()
              .flatMap(line -> line.read().stream())
              .anyMatch(read -> FoodMatcher.sameWords(words, read.food()));
      if (!used) {
        String all =
            pasted.lines().stream()
                .flatMap(line -> line.read().stream())
                .map(IngredientLine::food)
                .filter(food -> !food.isEmpty())
                .distinct()
                .collect(Collectors.joining(", "));
        return Optional.of(
            new Problem(
                file,
                Position.NONE,
                "--food",
                "No line has the words " + Quoting.quote(words) + " for its food.",
                "The lines have: " + all + "."));
      }
    }
    return Optional.empty();
  }

  /** So is a choice for a line that is no ingredient. */
  private static Optional<Problem> unused(
      String file, PastedFormula pasted, String option, Set<String> named) {
    return new TreeSet<>(named)
        .stream()
            .filter(
                name ->
                    pasted.lines().stream()
                        .filter(line -> isIngredient(line.kind()))
                        .noneMatch(line -> LineChoices.means(name, line)))
            .findFirst()
            .map(
                name ->
                    new Problem(
                        file,
                        Position.NONE,
                        option,
                        "There is no ingredient on line " + Quoting.quote(name) + ".",
                        "Name the line by its number, or write it as it was pasted."));
  }

  private static boolean isIngredient(PastedLine.Kind kind) {
    return kind == PastedLine.Kind.INGREDIENT || kind == PastedLine.Kind.LEFT_OUT;
  }

  private static String text(String file, byte[] utf8) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(utf8)).toString();
    } catch (CharacterCodingException e) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          file,
          "The file is not UTF-8 text.",
          "Save it again as plain text with the encoding UTF-8.");
    }
  }

  private PastedFormula read(String file, String text, PasteChoices choices) {
    FoodMatcher matcher = matcher(choices.foods());
    if (!RecipeJsonLd.isMeant(text)) {
      String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
      return PastedFormula.read(plain, matcher, choices.lines());
    }
    try {
      return PastedFormula.of(
          RecipeJsonLd.read(file, text.getBytes(StandardCharsets.UTF_8)),
          matcher,
          choices.lines());
    } catch (UnreadableException e) {
      throw Refusal.of(e.problems());
    }
  }

  private FoodMatcher matcher(Map<String, String> foods) {
    Contents contents = desk.notebook().latest();
    FoodMatcher matcher = FoodMatcher.of(readable(contents));
    for (Map.Entry<String, String> choice : new TreeMap<>(foods).entrySet()) {
      String slug = Asked.slug("food", choice.getValue());
      Food food = matcher.find(slug).orElseThrow(() -> FoodParts.noFood(slug, contents));
      FoodMatcher before = matcher;
      matcher = Asked.read("food", () -> before.choosing(choice.getKey(), food));
    }
    return matcher;
  }

  /** The foods that can be read; what is wrong with others is told where they are listed. */
  private static List<Food> readable(Contents contents) {
    List<Food> foods = new ArrayList<>();
    for (String slug : contents.foods()) {
      try {
        contents.food(slug).ifPresent(foods::add);
      } catch (UnreadableException | StoreException e) {
        Refusals.problemsOf(e);
      }
    }
    return foods;
  }

  private static PasteViews.PastedView view(PastedFormula pasted, String source) {
    return new PasteViews.PastedView(
        source,
        pasted.name().orElse(null),
        pasted.isCertain(),
        pasted.lines().stream().map(ReadPasted::view).toList(),
        pasted.draft().method(),
        pasted.yield().map(ReadPasted::view).orElse(null),
        pasted.remarks(),
        new String(FormulaCodec.write(pasted.draft()), StandardCharsets.UTF_8).strip());
  }

  private static PasteViews.PastedYieldView view(PastedYield yield) {
    return new PasteViews.PastedYieldView(
        yield.text(), yield.pieces().orElse(null), yield.perhaps().orElse(null));
  }

  private static PasteViews.PastedLineView view(PastedLine line) {
    Optional<IngredientLine> read = line.read();
    Optional<Resolved> mass =
        line.food().flatMap(food -> line.amount().map(food::resolve)).filter(Resolved::isResolved);
    return new PasteViews.PastedLineView(
        line.number(),
        line.text(),
        word(line.kind()),
        word(line.status()),
        line.section().orElse(null),
        line.amount().map(Amount::toString).orElse(null),
        read.flatMap(IngredientLine::amount)
            .flatMap(PastedAmount::most)
            .map(Amount::toString)
            .orElse(null),
        line.choices().stream().map(Amount::toString).toList(),
        mass.map(each -> each.grams().low()).orElse(null),
        mass.map(Resolved::approximate).orElse(false),
        read.map(IngredientLine::food).filter(food -> !food.isEmpty()).orElse(null),
        foods(line.match()),
        read.map(IngredientLine::alternatives).orElse(List.of()),
        read.map(IngredientLine::optional).orElse(false),
        line.note().orElse(null),
        line.lineId().orElse(null),
        line.doubts().stream()
            .map(each -> new PasteViews.DoubtView(about(each), each.message(), each.hint()))
            .toList(),
        line.remarks());
  }

  private static List<PasteViews.FoodCandidateView> foods(FoodMatch match) {
    Map<String, PasteViews.FoodCandidateView> views = new LinkedHashMap<>();
    for (FoodCandidate each : match.candidates()) {
      String slug = each.food().slug();
      boolean certain = match.food().filter(food -> food.slug().equals(slug)).isPresent();
      views.put(
          slug,
          new PasteViews.FoodCandidateView(
              slug, each.food().name(), each.score(), certain, each.inPantry(), each.why()));
    }
    return List.copyOf(views.values());
  }

  private static String about(Doubt doubt) {
    return doubt.kind() == Doubt.Kind.AMBIGUOUS ? "amount" : word(doubt.kind());
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
