package io.ovenmark.desk;

import io.ovenmark.bake.AttributeVocabulary;
import io.ovenmark.bake.Bake;
import io.ovenmark.bake.BakeCodec;
import io.ovenmark.bake.BakeFormText;
import io.ovenmark.bake.FindingVocabulary;
import io.ovenmark.bake.Piece;
import io.ovenmark.bake.TypedUnits;
import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.measure.Temperature;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.worksheet.Worksheet;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Gathers what the form of a bake begins with: the revision and the others that could be chosen,
 * the settings of the formula and of the last bake, unfinished work, and the words to choose from.
 *
 * <pre>{@code
 * BakeFormViews.BakeStart start = new StartBake(desk).call(Address.parse("seeded-lupin-bun"), by);
 * }</pre>
 */
public final class StartBake {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public StartBake(Desk desk) {
    this.desk = desk;
  }

  /**
   * For a new bake.
   *
   * @param address the revision that shall be baked, the newest when it names none
   * @param by who bakes, and when
   * @return what the form begins with
   * @throws Refusal when there is no such revision, or it cannot be read
   */
  public BakeFormViews.BakeStart call(Address address, By by) {
    Notebook notebook = desk.notebook();
    Revision revision = notebook.revision(address);
    Formula formula = notebook.formula(revision);
    Worksheet sheet = desk.sheet(revision, List.of()).worksheet();
    String slug = address.formula();
    return new BakeFormViews.BakeStart(
        slug,
        formula.name(),
        WriteParts.revision(revision),
        BakeFormText.time(by.time()),
        by.author().name(),
        FigureSet.number(sheet.doughPerPieceGrams()),
        setting(formula).orElse(null),
        revisions(slug),
        lastBake(slug).orElse(null),
        formulaDrafts(slug),
        new BakeDrafts(desk).of(slug),
        words());
  }

  /**
   * For changes of a recorded bake.
   *
   * @param formula short name of the formula
   * @param id name of the bake
   * @param units the units beside the fields
   * @return the bake as a form
   * @throws Refusal when there is no such bake
   */
  public BakeFormViews.FilledForm filled(String formula, String id, TypedUnits units) {
    Bake bake = new BakeParts(desk).bake(formula, id);
    return new BakeFormViews.FilledForm(text(bake), BakeFormText.of(bake, units), words());
  }

  /** A bake as the text that is sent along with changes of it. */
  static String text(Bake bake) {
    return new String(BakeCodec.write(bake), StandardCharsets.UTF_8);
  }

  private static Optional<BakeFormViews.OvenSetting> setting(Formula formula) {
    return formula.bake().stream()
        .filter(each -> each.temperature().isPresent() && each.minutes().isPresent())
        .max((one, other) -> Double.compare(minutes(one), minutes(other)))
        .map(
            each ->
                new BakeFormViews.OvenSetting(
                    each.temperature().map(Temperature::toString).orElse(null),
                    minutes(each),
                    each.rack().orElse(null)));
  }

  private static double minutes(BakeSetting setting) {
    return setting.minutes().getAsDouble();
  }

  private List<WriteViews.RevisionView> revisions(String formula) {
    Notebook notebook = desk.notebook();
    List<WriteViews.RevisionView> all = new ArrayList<>();
    for (Address line : notebook.lines(formula)) {
      if (notebook.newestIfAny(line).isEmpty()) {
        continue;
      }
      int fork = line.variant().isPresent() ? notebook.forkNumber(line) : 0;
      List<Revision> revisions = new ArrayList<>(notebook.revisions(line));
      Collections.reverse(revisions);
      revisions.stream()
          .filter(each -> each.number() > fork)
          .map(WriteParts::revision)
          .forEach(all::add);
    }
    return all;
  }

  private Optional<BakeFormViews.LastBake> lastBake(String formula) {
    List<Bake> bakes =
        desk.notebook().bakes(formula).stream().filter(b -> !b.pieces().isEmpty()).toList();
    if (bakes.isEmpty()) {
      return Optional.empty();
    }
    Bake last = bakes.get(bakes.size() - 1);
    return Optional.of(
        new BakeFormViews.LastBake(
            last.id(),
            Json.time(last.time()),
            last.pieces().stream()
                .map(piece -> new BakeFormViews.LastPiece(piece.id(), setting(piece)))
                .toList()));
  }

  private static BakeFormViews.OvenSetting setting(Piece piece) {
    return new BakeFormViews.OvenSetting(
        piece.temperature().map(Temperature::toString).orElse(null),
        BakeViews.number(piece.minutes()),
        piece.rack().orElse(null));
  }

  private List<DraftViews.DraftEntry> formulaDrafts(String formula) {
    return new KeepDrafts(desk)
        .all().drafts().stream().filter(each -> formula.equals(each.formula())).toList();
  }

  /**
   * What the form of a bake offers to choose from.
   *
   * @return findings, attributes and scales in words
   */
  static BakeFormViews.Words words() {
    return new BakeFormViews.Words(
        Arrays.stream(FindingVocabulary.values())
            .map(each -> new Views.FindingView(each.word(), each.merit()))
            .toList(),
        Arrays.stream(AttributeVocabulary.values())
            .map(each -> new BakeFormViews.AttributeWords(each.word(), each.steps()))
            .toList(),
        AttributeVocabulary.OTHER_STEPS,
        AttributeVocabulary.LIKING,
        AttributeVocabulary.CRUST);
  }
}
