package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.json.Problem;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.Tastings;
import io.ovenmark.tasting.Answer;
import io.ovenmark.tasting.AnswerCodec;
import io.ovenmark.tasting.Sample;
import io.ovenmark.tasting.Score;
import io.ovenmark.tasting.Sheet;
import io.ovenmark.tasting.Tasting;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the verbs about tastings have in common. */
final class TastingParts {
  private final Notebook notebook;
  private final Tastings tastings;

  TastingParts(Desk desk) {
    this.notebook = desk.notebook();
    this.tastings = new Tastings(notebook);
  }

  Tastings tastings() {
    return tastings;
  }

  /** A tasting by its name. */
  Tasting tasting(String formula, String id) {
    Asked.slug("formula", formula);
    Optional<Tasting> found = tastings.find(formula, id);
    if (found.isPresent()) {
      return found.get();
    }
    Tastings.Found all = tastings.of(formula);
    List<Problem> damaged =
        all.problems().stream()
            .filter(problem -> problem.file().endsWith("/" + id + ".json"))
            .toList();
    if (!damaged.isEmpty()) {
      throw new UnreadableException(damaged);
    }
    throw new Refusal(
        Refusal.Reason.NOT_FOUND,
        "tasting " + id,
        "There is no tasting \"" + id + "\" of " + formula + ".",
        all.tastings().isEmpty()
            ? "Set one up with: ovenmark tasting new"
            : "Its tastings are "
                + String.join(", ", all.tastings().stream().map(Tasting::id).toList()) + ".");
  }

  /** A sheet by its number. */
  static Sheet sheet(Tasting tasting, int number) {
    return tasting
        .sheet(number)
        .orElseThrow(
            () ->
                new Refusal(
                    Refusal.Reason.NOT_FOUND,
                    "sheet " + number,
                    "The tasting " + tasting.id() + " has no sheet " + number + ".",
                    "Its sheets are 1 to " + tasting.sheets().size() + "."));
  }

  /** Names the state of a sheet's answer. */
  String version(Sheet sheet) {
    return sheet.answer().isEmpty()
        ? ""
        : notebook.blobOf(AnswerCodec.write(sheet.answer())).hex();
  }

  /** The revision of a sample, by what was weighed: its address, else any of that content. */
  Optional<Revision> revision(Sample sample) {
    try {
      Revision named = notebook.revision(Address.parse(sample.address()));
      if (named.blob().hex().equals(sample.blob())) {
        return Optional.of(named);
      }
    } catch (Refusal | IllegalArgumentException gone) {
      // another revision may have the same content
    }
    if (!notebook.isKnown(sample.formula())) {
      return Optional.empty();
    }
    return notebook.lines(sample.formula()).stream()
        .filter(line -> notebook.newestIfAny(line).isPresent())
        .flatMap(line -> notebook.revisions(line).stream())
        .filter(revision -> revision.blob().hex().equals(sample.blob()))
        .findFirst();
  }

  /** The bake of a sample. */
  Optional<Bake> bake(Sample sample) {
    return sample
        .bake()
        .flatMap(
            id ->
                notebook.bakes(sample.formula()).stream()
                    .filter(bake -> bake.id().equals(id))
                    .findFirst());
  }

  List<TastingViews.SampleView> samples(Tasting tasting) {
    List<Sample> samples = tasting.samples();
    return samples.stream()
        .map(
            sample ->
                new TastingViews.SampleView(
                    samples.indexOf(sample) + 1,
                    sample.text(),
                    sample.address(),
                    sample.bake().orElse(null),
                    sample.piece().orElse(null),
                    revision(sample).map(Revision::note).orElse(null)))
        .toList();
  }

  TastingViews.SheetView view(Sheet sheet) {
    return new TastingViews.SheetView(
        sheet.number(),
        sheet.initials().orElse(null),
        sheet.codes(),
        sheet.answer().map(TastingParts::view).orElse(null),
        version(sheet));
  }

  private static TastingViews.AnswerView view(Answer answer) {
    return new TastingViews.AnswerView(
        answer.choice().orElse(null),
        answer.ranking(),
        answer.scores().stream().map(TastingParts::view).toList(),
        answer.note().orElse(null),
        answer.given().map(Json::time).orElse(null));
  }

  private static TastingViews.ScoreView view(Score score) {
    Map<String, Integer> attributes = new LinkedHashMap<>();
    score.attributes().forEach(each -> attributes.put(each.name(), each.score()));
    return new TastingViews.ScoreView(
        score.code(), TastingResultViews.number(score.liking()), attributes);
  }
}
