package io.ovenmark.notebook;

import io.ovenmark.measure.Slug;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Where things are kept in a notebook: paths, branches and tags, said once. */
final class Layout {
  static final String MAIN = "main";
  static final String SETTINGS = "notebook.json";
  static final String FORMULAS = "formulas";
  static final String PANTRY = "pantry";
  static final String GOALS = "goals";
  static final String BAKES = "bakes";
  static final String PHOTOS = "photos";
  static final String TASTINGS = "tastings";
  static final String STORIES = "stories";
  static final String VARIANTS = "variant/";
  static final String PUBLISHED = "published/";
  private static final String JSON = ".json";
  private static final Set<String> BESIDE =
      Set.of("README.md", "README", "LICENSE", ".gitignore", ".gitattributes");
  private static final Pattern BAKE =
      Pattern.compile("bakes/[^/]+/\\d{4}-\\d\\d-\\d\\d-\\d{1,4}\\.json");

  private static final Pattern TASTING =
      Pattern.compile("tastings/[^/]+/\\d{4}-\\d\\d-\\d\\d-\\d{1,4}\\.json");

  private static final Pattern PHOTO =
      Pattern.compile("photos/[^/]+/[A-Za-z0-9_-][A-Za-z0-9._-]*\\.(?:jpg|jpeg|JPG|JPEG)");

  private Layout() {}

  static String formula(String slug) {
    return FORMULAS + "/" + slug + JSON;
  }

  static String food(String slug) {
    return PANTRY + "/" + slug + JSON;
  }

  static String goal(String slug) {
    return GOALS + "/" + slug + JSON;
  }

  static String bakes(String formula) {
    return BAKES + "/" + formula;
  }

  static String photos(String formula) {
    return PHOTOS + "/" + formula;
  }

  static String tastings(String formula) {
    return TASTINGS + "/" + formula;
  }

  static String variantBranch(String formula, String name) {
    return VARIANTS + formula + "/" + name;
  }

  static String publishedTag(Address line, int number) {
    return PUBLISHED + line.line() + "/" + number;
  }

  /** The slug of a file directly in a folder; empty for any other path or an odd name. */
  static Optional<String> slugIn(String folder, String path) {
    String prefix = folder + "/";
    if (!path.startsWith(prefix) || !path.endsWith(JSON)) {
      return Optional.empty();
    }
    String name = path.substring(prefix.length(), path.length() - JSON.length());
    return Slug.isSlug(name) ? Optional.of(name) : Optional.empty();
  }

  /** Whether a path lies in one of the folders that the notebook reads. */
  static boolean isInFolder(String path) {
    return List.of(FORMULAS, PANTRY, GOALS, BAKES, PHOTOS, TASTINGS, STORIES).stream()
        .anyMatch(folder -> path.startsWith(folder + "/"));
  }

  /**
   * Whether something at the top of a repository belongs to a notebook: its settings, its folders,
   * which end in a slash, and what people and Git put beside them.
   */
  static boolean isAtTop(String name) {
    return name.equals(SETTINGS) || isInFolder(name) || BESIDE.contains(name);
  }

  /** Whether a path is a bake's. */
  static boolean isBake(String path) {
    return BAKE.matcher(path).matches();
  }

  /** Whether a path is a tasting's. */
  static boolean isTasting(String path) {
    return TASTING.matcher(path).matches();
  }

  /** The line of history that a story's file is of; empty for any other path. */
  static Optional<Address> storyOf(String path) {
    Optional<String> main = slugIn(STORIES, path);
    if (main.isPresent()) {
      return main.map(slug -> Address.latest(slug, Optional.empty()));
    }
    return formulaOf(path)
        .filter(Slug::isSlug)
        .flatMap(
            formula ->
                slugIn(STORIES + "/" + formula, path)
                    .map(variant -> Address.latest(formula, Optional.of(variant))));
  }

  /** Whether a path is a picture's. */
  static boolean isPhoto(String path) {
    return PHOTO.matcher(path).matches();
  }

  /** The folder within another one that a file is in: of a bake, photo or tasting the formula. */
  static Optional<String> formulaOf(String path) {
    String[] parts = path.split("/", -1);
    return parts.length == 3 ? Optional.of(parts[1]) : Optional.empty();
  }

  /** The name of a bake or tasting in its file's path. */
  static String bakeId(String path) {
    return path.substring(path.lastIndexOf('/') + 1, path.length() - JSON.length());
  }
}
