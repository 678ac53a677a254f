package io.ovenmark.desk;

import java.util.List;

/** The records of answers about what mattered; see {@link Views} for the manner of all of them. */
public final class MatteredViews {
  private MatteredViews() {}

  /**
   * What mattered over the bakes of a line of history.
   *
   * @param formula short name
   * @param variant name of the variant, or null for the main line
   * @param name name for people
   * @param address the newest revision of the line
   * @param withVariants whether the bakes of all lines were looked at
   * @param variants names of the formula's variants
   * @param bakes bakes that were looked at
   * @param pieces their pieces
   * @param unread bakes whose formula is not in this history or cannot be read
   * @param summary the most certain in a sentence or two
   * @param outcomes each outcome with its effects, or with what is missing
   * @param model how it is worked out
   */
  public record MatteredSheet(
      String formula,
      String variant,
      String name,
      String address,
      boolean withVariants,
      List<String> variants,
      int bakes,
      int pieces,
      int unread,
      String summary,
      List<OutcomeView> outcomes,
      ModelView model) {}

  /**
   * How it is worked out.
   *
   * @param name which model
   * @param why why that
   * @param cannot what it cannot tell
   * @param intervalPercent how probable it is that an interval holds the effect
   */
  public record ModelView(String name, String why, List<String> cannot, int intervalPercent) {}

  /**
   * An outcome.
   *
   * @param outcome its key, such as {@code height_mm} or {@code finding.gummy crumb}
   * @param label in words
   * @param unit such as {@code mm}; empty for none; findings are in pieces of 100
   * @param finding whether it is how often something was found
   * @param sentence what stands out, or what is missing
   * @param missing whether too little is known for effects
   * @param bakes bakes of which it is known
   * @param pieces pieces of which it is known and that were used
   * @param unknownPieces pieces of which it is not known
   * @param setAside pieces not used because a change is not known of them
   * @param mean its mean, or null
   * @param pieceDeviation how much pieces of one tray differ by chance, or null
   * @param bakeDeviation how much bakes differ by chance or by what was not noted, or null
   * @param multiplicity how many effects would stand out by luck, or null
   * @param leftOut changes that were not looked at: unknown of many pieces, or changed too rarely
   * @param effects the most certain first
   */
  public record OutcomeView(
      String outcome,
      String label,
      String unit,
      boolean finding,
      String sentence,
      boolean missing,
      int bakes,
      int pieces,
      int unknownPieces,
      int setAside,
      Double mean,
      Double pieceDeviation,
      Double bakeDeviation,
      String multiplicity,
      int leftOut,
      List<EffectView> effects) {}

  /**
   * What a change went together with.
   *
   * @param change its key, such as {@code line.psyllium-husk}
   * @param kind its sort, such as {@code line} or {@code oven_temperature}
   * @param label in words
   * @param words the change going up, or being so, in words
   * @param with what always changed with it; the effect belongs to all of them together
   * @param perAmount the change that the effect is stated for
   * @param perUnit its unit; empty for a ratio or something that is so or not
   * @param per the same in words and the reader's units; empty for something that is so or not
   * @param least the least that was tried, or null for something that is so or not
   * @param most the most, or null likewise
   * @param tried the same in words
   * @param sentence in plain words
   * @param standing {@code clear} when it shows with all others beside it, {@code along} when it
   *     shows by itself only, {@code open} when it cannot be told from chance
   * @param together the effect with all others looked at beside it
   * @param byItself the effect as if nothing else had changed but by chance
   * @param changed in how many steps it changed, from bake to bake or within a tray
   * @param alone in how many of them it changed alone
   * @param aloneWords the same in words
   * @param steps those steps, the newest first, those where it changed alone before the others; 12
   *     at most
   * @param companions what else moved in them
   */
  public record EffectView(
      String change,
      String kind,
      String label,
      String words,
      List<String> with,
      double perAmount,
      String perUnit,
      String per,
      Double least,
      Double most,
      String tried,
      String sentence,
      String standing,
      SizeView together,
      SizeView byItself,
      int changed,
      int alone,
      String aloneWords,
      List<StepView> steps,
      List<CompanionView> companions) {}

  /**
   * An effect in the outcome's unit.
   *
   * @param value what is expected
   * @param low the lower end of the interval
   * @param high the upper end
   * @param sureOfSign probability that it has this sign
   * @param text in words and the reader's units, such as {@code −3.1 mm}
   * @param lowText the lower end likewise, without the unit
   * @param highText the upper end likewise
   */
  public record SizeView(
      double value,
      double low,
      double high,
      double sureOfSign,
      String text,
      String lowText,
      String highText) {}

  /**
   * Two bakes one after the other, or one tray.
   *
   * @param from address of the revision before
   * @param to address of the revision after
   * @param fromBake id of the bake before
   * @param toBake id of the bake after; the same for one tray
   * @param oneTray whether the pieces of one tray differ
   * @param alone whether two pieces differ in nothing else
   */
  public record StepView(
      String from, String to, String fromBake, String toBake, boolean oneTray, boolean alone) {}

  /**
   * What moved along.
   *
   * @param label in words
   * @param times in how many of the steps
   */
  public record CompanionView(String label, int times) {}
}
