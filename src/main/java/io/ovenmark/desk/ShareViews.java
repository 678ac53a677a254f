package io.ovenmark.desk;

import java.util.List;

/** The records of sharing a formula and of taking one in, as programs see them. */
public final class ShareViews {
  private ShareViews() {}

  /**
   * What goes along with a formula.
   *
   * @param formula short name
   * @param name name for people
   * @param variant the variant that is shared alone, as the main line; null for all lines
   * @param onMainLine whether the main line has the formula
   * @param variants the variants that can be shared alone
   * @param lines its lines of history
   * @param bakes how many bakes
   * @param photos how many photos
   * @param foods short names of the foods that its figures rest on
   * @param goals short names of the goals
   * @param references the conventional formulas that it was rebuilt from
   * @param people who wrote, as they will be named
   * @param foodsWithPrices foods whose file has a price, or fields that Ovenmark does not know
   * @param publications how many revisions are published
   * @param notes how many notes
   * @param notesCut the notes as they are here that do not go along as they are
   * @param commitsLeftOut how many commits about other things stay
   * @param photosLeftOut pictures that cannot be read and stay
   * @param photosStripped pictures that say where, when or with what they were taken, or more; that
   *     is taken out
   * @param speaksOfOthers files that name another formula and go along as they are written
   * @param unknownFields files with fields that Ovenmark does not know, which go along
   * @param withReference whether the conventional formulas go along
   * @param withEmails whether people's e-mail addresses go along
   * @param withPrices whether prices go along, and fields of foods that Ovenmark does not know
   * @param withOthersNotes whether notes go along that others than the sharer wrote
   * @param sharer who shares
   * @param fileName a name for the bundle
   */
  public record Share(
      String formula,
      String name,
      String variant,
      boolean onMainLine,
      List<String> variants,
      List<SharedLine> lines,
      int bakes,
      int photos,
      List<String> foods,
      List<String> goals,
      List<SharedReference> references,
      List<Person> people,
      List<String> foodsWithPrices,
      int publications,
      int notes,
      List<String> notesCut,
      int commitsLeftOut,
      List<String> photosLeftOut,
      List<String> photosStripped,
      List<String> speaksOfOthers,
      List<FieldsOfFile> unknownFields,
      boolean withReference,
      boolean withEmails,
      boolean withPrices,
      boolean withOthersNotes,
      String sharer,
      String fileName) {}

  /**
   * A line of history.
   *
   * @param line such as {@code seeded-lupin-bun/egg-free}
   * @param variant the variant's name, or null for the main line
   * @param revisions number of its newest revision
   */
  public record SharedLine(String line, String variant, int revisions) {}

  /**
   * A conventional formula.
   *
   * @param formula short name
   * @param along whether it goes along
   */
  public record SharedReference(String formula, boolean along) {}

  /**
   * Somebody who wrote.
   *
   * @param name the name
   * @param email the address, or null when it does not go along or there is none
   */
  public record Person(String name, String email) {}

  /**
   * Fields that Ovenmark does not know.
   *
   * @param file the file
   * @param fields their names
   */
  public record FieldsOfFile(String file, List<String> fields) {}

  /**
   * What was shared.
   *
   * @param share what went along
   * @param file where it was written
   * @param folder whether that is a folder
   * @param bytes the file's size, or null for a folder
   */
  public record Shared(Share share, String file, boolean folder, Long bytes) {}

  /**
   * What there is to take in.
   *
   * @param formulas the formulas of the bundle or notebook
   * @param arrival what would come in; null when one of several has to be chosen first
   */
  public record Offer(List<OfferedFormula> formulas, Arrival arrival) {}

  /**
   * A formula of another notebook.
   *
   * @param formula short name
   * @param name name for people
   */
  public record OfferedFormula(String formula, String name) {}

  /**
   * What would come in, or has.
   *
   * @param formula short name in the other notebook
   * @param name name for people
   * @param as short name here
   * @param taken whether that name is in use here already
   * @param lines its lines of history as they are named here
   * @param bakes how many bakes
   * @param photos how many photos
   * @param newFoods foods that are not here yet
   * @param differing foods and goals that are here with other contents
   * @param newGoals goals that are not here yet
   * @param newReferences conventional formulas that come in too
   * @param ownReferences conventional formulas that are here already and stay as they are
   * @param policyDiffers whether the other notebook works figures out by another rule
   * @param photosLeftOut pictures that cannot be read
   * @param photosStripped pictures that said where, when or with what they were taken, or more
   * @param people who wrote
   * @param seen names everything that the choices rest on, to be sent along with them
   */
  public record Arrival(
      String formula,
      String name,
      String as,
      boolean taken,
      List<SharedLine> lines,
      int bakes,
      int photos,
      List<String> newFoods,
      List<DifferingFile> differing,
      List<String> newGoals,
      List<String> newReferences,
      List<String> ownReferences,
      boolean policyDiffers,
      List<String> photosLeftOut,
      List<String> photosStripped,
      List<String> people,
      String seen) {}

  /**
   * A food or a goal that is here with other contents.
   *
   * @param kind {@code food} or {@code goal}
   * @param slug its short name
   * @param theirs the short name that theirs would get
   */
  public record DifferingFile(String kind, String slug, String theirs) {}

  /**
   * What was taken in.
   *
   * @param revision its newest revision here
   * @param arrival what came in
   * @param differing what became of what differs: {@code own}, {@code theirs}, or null when nothing
   *     does
   * @param leftAsEditedByHand files on disk that were in the way and stayed
   */
  public record TakenIn(
      WriteViews.RevisionView revision,
      Arrival arrival,
      String differing,
      List<String> leftAsEditedByHand) {}
}
