package io.ovenmark.desk;

import java.util.List;

/** The records of answers about causes; see {@link Views} for the manner of all of them. */
public final class CauseViews {
  private CauseViews() {}

  /**
   * The findings of a line of history, and one of them looked into.
   *
   * @param address the state that was asked about
   * @param formula short name
   * @param variant name of the variant, or null
   * @param name name for people
   * @param findings all findings of its bakes, faults of the newest bake first
   * @param others faults of the vocabulary that no bake has
   * @param unjudgedBakes bakes on which nothing was found or noted
   * @param inquiry the finding that was asked about, or null
   * @param cautions what to mind
   */
  public record CauseSheet(
      String address,
      String formula,
      String variant,
      String name,
      List<FindingRow> findings,
      List<String> others,
      int unjudgedBakes,
      InquiryView inquiry,
      List<String> cautions) {}

  /**
   * A finding of the history.
   *
   * @param word the finding
   * @param merit true for a merit, false for a fault, null for free words
   * @param standing {@code present}, {@code gone}, {@code always}
   * @param bakes judged bakes with it
   * @param judged judged bakes
   * @param last the newest bake with it
   * @param likely the most common cause whose figure moved with it, or null
   */
  public record FindingRow(
      String word,
      Boolean merit,
      String standing,
      int bakes,
      int judged,
      String last,
      String likely) {}

  /**
   * A finding looked into.
   *
   * @param finding its word
   * @param merit true for a merit, false for a fault, null for free words
   * @param standing {@code not_baked}, {@code never}, {@code always}, {@code present}, {@code gone}
   * @param summary how it stands and what is most likely, in plain words
   * @param bakes the judged bakes, oldest first
   * @param turns where it came and went, oldest first
   * @param causes common causes, those first whose figure moved with it
   * @param pieces pieces of each setting of the plans
   * @param tray pieces that a tray takes in the plans
   * @param plans plans for the newest turn
   * @param remarks what the plans cannot set
   */
  public record InquiryView(
      String finding,
      Boolean merit,
      String standing,
      String summary,
      List<BakeRow> bakes,
      List<TurnView> turns,
      List<CauseView> causes,
      int pieces,
      int tray,
      List<PlanView> plans,
      List<String> remarks) {}

  /**
   * A judged bake.
   *
   * @param formula short name
   * @param bake its name
   * @param address the revision that was baked
   * @param time when
   * @param pieces pieces
   * @param with pieces with the finding
   * @param has whether tray or any piece has it
   */
  public record BakeRow(
      String formula,
      String bake,
      String address,
      String time,
      int pieces,
      int with,
      boolean has) {}

  /**
   * Where the finding came or went.
   *
   * @param came true when it came
   * @param from the earlier bake
   * @param fromAddress its revision
   * @param to the later bake
   * @param toAddress its revision
   * @param sentence what changed and what may be concluded
   * @param confounded whether more than one thing changed
   * @param changes every change
   * @param likeForLike pieces that may be compared, in a sentence, or null
   */
  public record TurnView(
      boolean came,
      String from,
      String fromAddress,
      String to,
      String toAddress,
      String sentence,
      boolean confounded,
      List<ChangedView> changes,
      String likeForLike) {}

  /**
   * One change.
   *
   * @param kind its sort, such as {@code line} or {@code oven_time}
   * @param name in words
   * @param detail how it differs; may be empty
   */
  public record ChangedView(String kind, String name, String detail) {}

  /**
   * A common cause.
   *
   * @param number from 1 in this order
   * @param rank from 1 for the most common of the finding
   * @param cause in plain words
   * @param standing {@code likely}, {@code open}, {@code unmoved}, {@code unlikely}, {@code absent}
   * @param standingText the same in plain words
   * @param gauge the figure it is tested on
   * @param label the figure in words
   * @param unit the figure's unit, or empty
   * @param way {@code higher}, {@code lower} or {@code other}: how it must have moved
   * @param figure the figure in a line, such as {@code liquid ratio 1.33, up 0.35 since the last
   *     bake without this finding}
   * @param now the figure of the state asked about, or null when not exactly known
   * @param nowText the same in words
   * @param evidence how it moved
   * @param details what that says, in sentences
   * @param against what one does against it
   * @param advice the same with figures
   * @param target what the figure should come to, or null
   * @param back whether that is the figure of a bake without the finding
   * @param wish the target as a wish for levers, or null
   * @param draft whether a draft with it can be begun
   * @param source where it is published, or that it is common practice
   */
  public record CauseView(
      int number,
      int rank,
      String cause,
      String standing,
      String standingText,
      String gauge,
      String label,
      String unit,
      String way,
      String figure,
      Double now,
      String nowText,
      List<EvidenceView> evidence,
      List<String> details,
      String against,
      String advice,
      Double target,
      boolean back,
      String wish,
      boolean draft,
      String source) {}

  /**
   * How a figure stood without the finding and with it.
   *
   * @param place {@code came}, {@code went} or {@code within_a_bake}
   * @param without the figure without it, or null
   * @param with the figure with it, or null
   * @param withoutText the same in words
   * @param withText the same in words
   * @param speech {@code for}, {@code stayed}, {@code against} or {@code unknown}
   */
  public record EvidenceView(
      String place,
      Double without,
      Double with,
      String withoutText,
      String withText,
      String speech) {}

  /**
   * A plan of bakes.
   *
   * @param number from 1
   * @param title what it separates
   * @param design such as {@code 2×2} or {@code half of 2^4}
   * @param resolution of a half, or null
   * @param factors what is set either way
   * @param settings the combinations
   * @param doughs the doughs to mix
   * @param loads what goes into the oven together
   * @param contrasts what each comparison answers
   * @param all what all of it takes
   * @param missing what is left when settings count that were baked already
   * @param pairs what settings say already that differ in one factor alone and were both baked
   * @param remarks what to mind
   */
  public record PlanView(
      int number,
      String title,
      String design,
      Integer resolution,
      List<FactorView> factors,
      List<SettingView> settings,
      List<DoughView> doughs,
      List<LoadView> loads,
      List<ContrastView> contrasts,
      PlanCost all,
      PlanCost missing,
      List<String> pairs,
      List<String> remarks) {}

  /**
   * What is set either way.
   *
   * @param name in words
   * @param from as before
   * @param to as after
   * @param changes the changes that it bundles
   */
  public record FactorView(String name, String from, String to, List<String> changes) {}

  /**
   * A combination.
   *
   * @param number from 1
   * @param levels for each factor its level in words
   * @param high for each factor whether it stands as after
   * @param dough number of its dough
   * @param temperatureC oven temperature, or null
   * @param minutes oven time, or null
   * @param oven both in words; empty when not known
   * @param rack where, or null
   * @param pieceG dough of a piece, or null
   * @param address a revision that is this dough, tray and steam, or null
   * @param baked pieces of it that were baked already
   * @param with those of them with the finding
   * @param bakes in which bakes
   */
  public record SettingView(
      int number,
      List<String> levels,
      List<Boolean> high,
      int dough,
      Double temperatureC,
      Double minutes,
      String oven,
      String rack,
      Double pieceG,
      String address,
      int baked,
      int with,
      List<String> bakes) {}

  /**
   * A dough.
   *
   * @param number from 1
   * @param address a revision of exactly this dough, or null when it needs a draft
   * @param pieces pieces to make of it
   * @param doughG dough to mix, or null
   * @param lines what to weigh
   */
  public record DoughView(
      int number, String address, int pieces, Double doughG, List<WeighedView> lines) {}

  /**
   * A line of a dough.
   *
   * @param line its id
   * @param name the food
   * @param entered the amount of a whole batch
   * @param differs whether it is one of the changes
   * @param grams what to weigh for the plan, or null
   */
  public record WeighedView(
      String line, String name, String entered, boolean differs, Double grams) {}

  /**
   * What goes into the oven together.
   *
   * @param oven its temperature in words; empty when not known
   * @param temperatureC the temperature, or null
   * @param rack where, or null
   * @param trays how many trays
   * @param minutes time in the oven in all, or null
   * @param places the pieces in the order on the tray
   */
  public record LoadView(
      String oven,
      Double temperatureC,
      String rack,
      int trays,
      Double minutes,
      List<PlaceView> places) {}

  /**
   * A piece on a tray.
   *
   * @param place from 1, row by row
   * @param setting number of its setting
   * @param dough number of its dough
   * @param minutes when it is taken out, or null
   */
  public record PlaceView(int place, int setting, int dough, Double minutes) {}

  /**
   * What a comparison answers.
   *
   * @param name the factors
   * @param question what it answers
   * @param plus settings on one side
   * @param minus settings on the other
   * @param alias with what it is mixed up, or null
   * @param effectPoints share of pieces with the finding on the first side less that on the other,
   *     in percentage points; null unless every setting was baked
   */
  public record ContrastView(
      String name,
      String question,
      List<Integer> plus,
      List<Integer> minus,
      String alias,
      Double effectPoints) {}

  /**
   * What baking takes.
   *
   * @param settings combinations
   * @param pieces pieces
   * @param doughs doughs
   * @param doughG dough, or null
   * @param trays trays
   * @param ovenMinutes minutes in the oven without heating up, or null
   */
  public record PlanCost(
      int settings, int pieces, int doughs, Double doughG, int trays, Double ovenMinutes) {}
}
