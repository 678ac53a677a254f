package io.ovenmark.desk;

import com.fasterxml.jackson.annotation.JsonProperty;
import io.ovenmark.bake.BakeForm;
import java.util.List;

/** The records of bakes that are being typed; see {@link Views} for the manner of all of them. */
public final class BakeFormViews {
  private BakeFormViews() {}

  /**
   * What the form of a bake offers to choose from.
   *
   * @param findings faults and merits
   * @param attributes what tasters score on a just-about-right scale
   * @param otherSteps the words of the steps of any other attribute, from −2 to 2
   * @param liking the words of liking from 1 to 9
   * @param crust the words of the crust from 0 to 4
   */
  public record Words(
      List<Views.FindingView> findings,
      List<AttributeWords> attributes,
      List<String> otherSteps,
      List<String> liking,
      List<String> crust) {}

  /**
   * An attribute in words.
   *
   * @param name its name
   * @param steps the words of its steps from −2 to 2
   */
  public record AttributeWords(String name, List<String> steps) {}

  /**
   * What is needed to begin recording a bake.
   *
   * @param formula short name
   * @param name name of the formula
   * @param revision the revision that was asked for, with the id of its content
   * @param time now, as a form states times
   * @param baker who writes
   * @param doughPerPieceG dough mass of a piece by the formula, or null
   * @param setting the formula's own oven temperature and time, or null
   * @param revisions all revisions that can be chosen, newest first, the main line before variants
   * @param lastBake the last bake of the formula, or null
   * @param drafts unfinished drafts of the formula itself
   * @param unfinished bakes of the formula that were begun and not recorded yet
   * @param words what there is to choose from
   */
  public record BakeStart(
      String formula,
      String name,
      WriteViews.RevisionView revision,
      String time,
      String baker,
      Double doughPerPieceG,
      OvenSetting setting,
      List<WriteViews.RevisionView> revisions,
      LastBake lastBake,
      List<DraftViews.DraftEntry> drafts,
      List<Unfinished> unfinished,
      Words words) {}

  /**
   * An oven setting.
   *
   * @param temperature as written, or null
   * @param minutes or null
   * @param rack or null
   */
  public record OvenSetting(String temperature, Double minutes, String rack) {}

  /**
   * The settings of the last bake, without anything that was measured.
   *
   * @param bake its name
   * @param time when
   * @param pieces letters, places, temperatures and times
   */
  public record LastBake(String bake, String time, List<LastPiece> pieces) {}

  /**
   * How a piece of the last bake was baked.
   *
   * @param id its letter
   * @param setting temperature, time and place
   */
  public record LastPiece(String id, OvenSetting setting) {}

  /**
   * A bake that is being typed.
   *
   * @param id name of the draft
   * @param version the version that the next keeping must name
   * @param time when it was kept last
   * @param author by whom
   * @param address the revision that is baked
   * @param bake name of the recorded bake that is being changed, or null for a new one
   * @param pieces how many pieces
   * @param timers how many timers have been started
   */
  public record Unfinished(
      String id,
      long version,
      String time,
      String author,
      String address,
      String bake,
      int pieces,
      int timers) {}

  /**
   * A bake that is being typed, with all that it holds.
   *
   * @param outcome {@code kept}, {@code merged} (with what was kept elsewhere meanwhile) or {@code
   *     conflict} (nothing was kept, a person must choose)
   * @param id name of the draft
   * @param version the version that the next keeping must name
   * @param time when it was kept last
   * @param author by whom
   * @param document what it holds now, JSON; in a conflict what was kept elsewhere
   * @param conflicts what was typed differently into two copies
   */
  public record BakeDraft(
      String outcome,
      String id,
      long version,
      String time,
      String author,
      String document,
      List<WriteViews.ConflictView> conflicts) {}

  /**
   * A recorded bake as a form.
   *
   * @param base the bake as it is, to be sent back with the changes
   * @param form its texts
   * @param words what there is to choose from
   */
  public record FilledForm(String base, BakeForm form, Words words) {}

  /**
   * What is wrong with a field of a form.
   *
   * @param field its place, such as {@code pieces.0.dough}
   * @param sentence what is wrong
   * @param hint what to write
   */
  public record FieldProblem(String field, String sentence, String hint) {}

  /**
   * A grid that was read.
   *
   * @param pieces its pieces; empty when it is not understood
   * @param problem why not, or null
   */
  public record GridRead(List<GridPiece> pieces, FieldProblem problem) {}

  /**
   * A piece of a grid.
   *
   * @param id its letter
   * @param temperature as written
   * @param minutes time in the oven
   */
  public record GridPiece(String id, String temperature, Double minutes) {}

  /**
   * An unsaved bake worked out.
   *
   * @param pieces the pieces as far as they are understood
   * @param missing for each piece what its loss and its spread factor lack
   * @param summary the tray in figures
   * @param weighed on how many weighed pieces the baked mass rests
   * @param bakedPercent baked mass in percent of the dough mass, or null
   * @param bakedUnknown why nothing is known of 100 g baked, or null
   * @param perPiece a piece as the formula divides the dough
   * @param per100GBaked 100 g as baked
   * @param weighedPieces each piece by its own mass, in the same order as the pieces
   * @param remarks what to mind about the measures
   * @param cautions what to mind about the formula
   * @param problems what is wrong, field by field
   */
  public record BakeFigures(
      List<Views.PieceView> pieces,
      List<Missing> missing,
      Views.BakeSummary summary,
      int weighed,
      Double bakedPercent,
      String bakedUnknown,
      FigureSet perPiece,
      @JsonProperty("per_100_g_baked") FigureSet per100GBaked,
      List<FigureSet> weighedPieces,
      List<String> remarks,
      List<String> cautions,
      List<FieldProblem> problems) {}

  /**
   * What was not measured of a piece.
   *
   * @param loss what the loss on baking lacks, or null when it is known
   * @param spread what the spread factor lacks, or null when it is known
   */
  public record Missing(String loss, String spread) {}

  /**
   * A bake that was changed, or why it was not.
   *
   * @param outcome {@code changed}, {@code unchanged} (it says all of that already) or {@code
   *     conflict} (nothing was written, a person must choose)
   * @param bake the bake as it is now
   * @param merged whether somebody else's changes were joined with these
   * @param against the bake that the conflicts were found against, to be sent back with the choices
   * @param conflicts what both sides changed
   * @param remarks what else a person should know
   */
  public record BakeChanged(
      String outcome,
      Views.BakeView bake,
      boolean merged,
      String against,
      List<WriteViews.ConflictView> conflicts,
      List<String> remarks) {}
}
