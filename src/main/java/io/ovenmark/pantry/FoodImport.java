package io.ovenmark.pantry;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Reads foods from a food table that a person has downloaded: the ASCII files of the USDA National
 * Nutrient Database for Standard Reference, Release 28, or the CSV files of USDA FoodData Central,
 * in a folder or in a zip file. The files are read as a stream and only the chosen foods are held,
 * so that hundreds of megabytes take little memory. A wrong layout is refused; a faulty row is left
 * out, counted and reported; a figure that is not there stays unknown.
 *
 * <pre>{@code
 * Result result = FoodImport.read(Path.of("sr28asc.zip"),
 *     Selection.words("sesame flour"), Progress.NONE);
 * }</pre>
 */
public final class FoodImport {
  private FoodImport() {}

  /** The layouts that are read. */
  public enum Layout {
    /** SR28: FOOD_DES.txt, NUT_DATA.txt and WEIGHT.txt. */
    SR28,
    /** FoodData Central: food.csv, food_nutrient.csv and their companions. */
    FOOD_DATA_CENTRAL
  }

  /**
   * Which foods are wanted. A food is chosen when its number is named, or when there are words and
   * its description holds all of them (beginnings of words are enough).
   *
   * @param words words of the description; may be empty when there are numbers
   * @param ids NDB numbers (five digits) or FoodData Central ids
   * @param kind the kind to give to all of them; empty to guess
   * @param most how many foods to take at most, at least 1
   */
  public record Selection(String words, Set<String> ids, Optional<FoodKind> kind, int most) {
    /** How many foods are taken when nothing else is said. */
    public static final int USUAL_MOST = 50;

    /** Checks and copies. */
    public Selection {
      requireNonNull(words, "words");
      requireNonNull(kind, "kind");
      ids = Collections.unmodifiableSet(new TreeSet<>(ids));
      if (Words.of(words).isEmpty() && ids.isEmpty()) {
        throw new IllegalArgumentException(
            "Nothing says which foods to read.\n"
                + "Give words of the food's description or its number in the table.");
      }
      if (most < 1) {
        throw new IllegalArgumentException(
            "The greatest number of foods is below 1.\nGive 1 or more.");
      }
    }

    /**
     * Chooses by words.
     *
     * @param words words of the description
     * @return the selection
     */
    public static Selection words(String words) {
      return new Selection(words, Set.of(), Optional.empty(), USUAL_MOST);
    }

    /**
     * Chooses by numbers.
     *
     * @param ids NDB numbers or FoodData Central ids
     * @return the selection
     */
    public static Selection ids(String... ids) {
      return new Selection("", Set.of(ids), Optional.empty(), Math.max(1, ids.length));
    }
  }

  /** Is told how far the reading is, about once for every 64 kilobytes. */
  @FunctionalInterface
  public interface Progress {
    /** Tells nobody. */
    Progress NONE = (file, done, total) -> {};

    /**
     * A part was read.
     *
     * @param file name of the file
     * @param done bytes of it read so far
     * @param total bytes of it in all; 0 when not known
     */
    void read(String file, long done, long total);
  }

  /**
   * A food that was read.
   *
   * @param food the food; its source note says where it comes from
   * @param kindGuessed whether its kind was guessed, to be checked by a person
   */
  public record Found(Food food, boolean kindGuessed) {}

  /**
   * What was read.
   *
   * @param layout which layout the files have
   * @param foods the chosen foods in the order of the file
   * @param problems the first faults of rows, at most 100
   * @param faulty how many faults there were in all
   * @param more whether further foods fit the words but were over the limit
   */
  public record Result(
      Layout layout, List<Found> foods, List<Problem> problems, long faulty, boolean more) {
    /** Copies. */
    public Result {
      foods = List.copyOf(foods);
      problems = List.copyOf(problems);
    }
  }

  /**
   * Reads the chosen foods.
   *
   * @param folderOrZip where the files are
   * @param selection which foods
   * @param progress who is told how far it is
   * @return the foods and what was wrong with rows
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy, when the
   *     place holds neither table
   * @throws io.ovenmark.json.UnreadableException when a file has another layout
   * @throws IOException when a file cannot be read
   */
  public static Result read(Path folderOrZip, Selection selection, Progress progress)
      throws IOException {
    try (FoodFiles files = FoodFiles.open(folderOrZip)) {
      Report report = new Report();
      if (files.has(Sr28Reader.FOODS)) {
        return new Sr28Reader(files, selection, progress, report).read();
      }
      if (files.has(FoodDataCentralReader.FOODS)) {
        return new FoodDataCentralReader(files, selection, progress, report).read();
      }
      throw new IllegalArgumentException(
          "\"" + folderOrZip + "\" holds no food table that is known here.\n"
              + "It should hold FOOD_DES.txt, NUT_DATA.txt and WEIGHT.txt (SR28) or food.csv and"
              + " food_nutrient.csv (FoodData Central).");
    }
  }
}
