package io.ovenmark.notebook;

import static java.util.Objects.requireNonNull;

import io.ovenmark.bake.Bake;
import io.ovenmark.formula.Formula;
import io.ovenmark.notebook.FormulaPast.End;
import io.ovenmark.notebook.FormulaPast.Moment;
import io.ovenmark.notebook.store.Author;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.BundleFile;
import io.ovenmark.notebook.store.Chronicle;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.LongConsumer;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * One formula with its history, variants, bakes and photos, and with what its figures rest on, as a
 * notebook of its own. Nothing else of the notebook is in it: commits about other things are left
 * out, and of the settings only what figures are worked out by goes along.
 *
 * <pre>{@code
 * Excerpt excerpt = Excerpt.of(notebook, wish, by);
 * excerpt.writeBundle(file, done -> {});
 * }</pre>
 *
 * <p>Files keep their content, so that bakes find the formula that was weighed. Commits have other
 * ids, since what they follow is not the same.
 */
public final class Excerpt {
  private final Notebook notebook;
  private final Wish wish;
  private final String slug;
  private final FormulaPast past;
  private final MadeContents contents;
  private final OutgoingFiles outgoing;
  private final Chronicle chronicle;
  private final Contained contained;

  /**
   * What is wanted.
   *
   * @param lead the formula's main line, with which all variants go along, or a variant, which goes
   *     alone and is the main line there
   * @param reference whether the formula that it was rebuilt from goes along
   * @param people how a person is named there
   * @param notes a note as it goes along
   * @param prices whether prices of foods go along, and fields of their files that this program
   *     does not know
   * @param pictures a picture without what it tells beside what it shows; the same bytes when there
   *     is nothing to take out, empty when it is no picture
   * @param otherwise tells a text that speaks of what does not go along
   */
  public record Wish(
      Address lead,
      boolean reference,
      boolean prices,
      UnaryOperator<Author> people,
      Notes notes,
      Function<byte[], Optional<byte[]>> pictures,
      Predicate<String> otherwise) {
    /** Checks that nothing is null. */
    public Wish {
      requireNonNull(lead, "lead");
      requireNonNull(people, "people");
      requireNonNull(notes, "notes");
      requireNonNull(pictures, "pictures");
      requireNonNull(otherwise, "otherwise");
    }
  }

  /** Words a note anew. */
  public interface Notes {
    /**
     * A note as it goes along.
     *
     * @param note the note
     * @param otherwise what to say when nothing of it may go
     * @param author who wrote it
     * @return not blank
     */
    String worded(String note, String otherwise, Author author);

    /**
     * A bake as it goes along.
     *
     * @param bake the bake
     * @return the same when nothing of it stays
     */
    Bake told(Bake bake);
  }

  /**
   * What goes along.
   *
   * @param name the formula's name
   * @param revisions for each line of history how many revisions it has, the main line first
   * @param bakes how many bakes
   * @param photos how many photos
   * @param foods short names of the foods
   * @param goals short names of the goals
   * @param references short names of the formulas that it was rebuilt from, also those that stay
   * @param referencesAlong those of them that go along
   * @param people who wrote, in alphabetical order
   * @param prices short names of the foods that have a price or fields that this program does not
   *     know
   * @param publications how many published revisions
   * @param notes how many notes
   * @param notesCut notes as they were that do not go along as they are
   * @param commitsLeftOut how many commits are about other things
   * @param photosLeftOut paths of pictures that cannot be read
   * @param photosStripped paths of pictures that told something beside what they show
   * @param speaksOfOthers paths of files that speak of what does not go along
   * @param unknownFields for each file the fields that this program does not know
   */
  public record Contained(
      String name,
      Map<String, Integer> revisions,
      int bakes,
      int photos,
      List<String> foods,
      List<String> goals,
      List<String> references,
      List<String> referencesAlong,
      List<Author> people,
      List<String> prices,
      int publications,
      int notes,
      List<String> notesCut,
      int commitsLeftOut,
      List<String> photosLeftOut,
      List<String> photosStripped,
      List<String> speaksOfOthers,
      Map<String, List<String>> unknownFields) {}

  private Excerpt(Notebook notebook, Wish wish, By by) {
    this.notebook = notebook;
    this.wish = wish;
    this.slug = wish.lead().formula();
    this.past = FormulaPast.of(notebook, wish.lead(), wish.reference());
    this.contents = new MadeContents(notebook.store(), wish.pictures());
    this.outgoing =
        new OutgoingFiles(notebook, contents, slug, wish.prices(), wish.notes()::told);
    List<String> cut = new ArrayList<>();
    Retelling.Notes notes =
        (note, otherwise, author) -> {
          String worded = wish.notes().worded(note, otherwise, author);
          if (!worded.strip().equals(note.strip())) {
            cut.add(note.strip());
          }
          return worded;
        };
    Formula formula = notebook.formula(notebook.newest(wish.lead()));
    Retelling retelling =
        new Retelling(
            past,
            slug,
            slug,
            path -> Optional.empty(),
            new Retelling.Telling(
                files -> outgoing.files(files, formula.name()), notes, wish.people()));
    retelling.tellAll();
    retelling.tellPublications(notebook.store());
    for (Map.Entry<Address, End> end : past.ends().entrySet()) {
      SortedMap<String, BlobId> now = outgoing.files(end.getValue().files(), formula.name());
      if (!now.equals(retelling.filesAt(end.getKey()))) {
        String note = "Foods, goals and settings as they are now";
        retelling.append(end.getKey(), now, by, ids -> note);
      }
    }
    this.chronicle = retelling.chronicle();
    this.contained = describe(formula, cut);
  }

  /**
   * Makes it; nothing is written.
   *
   * @param notebook where the formula is
   * @param wish what is wanted
   * @param by who shares it, and when
   * @return the excerpt
   * @throws Refusal when the line has no such formula
   */
  public static Excerpt of(Notebook notebook, Wish wish, By by) {
    return new Excerpt(notebook, wish, by);
  }

  /**
   * What goes along.
   *
   * @return counted and named
   */
  public Contained contained() {
    return contained;
  }

  /**
   * How many commits there are to write.
   *
   * @return 1 or more
   */
  public int steps() {
    return chronicle.steps().size();
  }

  /**
   * Writes it as a Git bundle.
   *
   * @param file where; replaced when it exists
   * @param progress told how many commits are written
   */
  public void writeBundle(Path file, LongConsumer progress) {
    Path scratch = ScratchFolder.in(notebook.ownFolder());
    BundleFile.write(file, chronicle, contents::read, scratch, progress);
  }

  /**
   * Writes it as a notebook's folder.
   *
   * @param folder where; missing or empty
   * @param progress told how many commits are written
   */
  public void writeFolder(Path folder, LongConsumer progress) {
    BundleFile.unfold(folder, chronicle, contents::read, progress);
  }

  private Contained describe(Formula formula, List<String> cut) {
    Map<String, Integer> revisions = new LinkedHashMap<>();
    SortedSet<String> paths = new TreeSet<>();
    SortedSet<String> unreadable = new TreeSet<>();
    past.ends()
        .forEach(
            (line, end) -> {
              revisions.put(
                  line.equals(wish.lead()) ? slug : line.line(), notebook.nextNumber(line) - 1);
              paths.addAll(end.files().keySet());
              unreadable.addAll(contents.unreadable(end.files()));
            });
    Map<Author, Author> people = new LinkedHashMap<>();
    SortedSet<String> references = new TreeSet<>();
    SortedSet<String> along = new TreeSet<>();
    Map<BlobId, String> texts = new LinkedHashMap<>();
    for (Moment moment : past.moments()) {
      people.putIfAbsent(moment.facts().author(), moment.facts().author());
      moment.files().forEach((path, blob) -> texts.putIfAbsent(blob, path));
    }
    past.ends().values().forEach(e -> e.files().forEach((p, b) -> texts.putIfAbsent(b, p)));
    SortedSet<String> priced = new TreeSet<>();
    SortedSet<String> speaking = new TreeSet<>();
    Map<String, List<String>> unknown = new TreeMap<>();
    texts.forEach(
        (blob, path) -> {
          if (Layout.isPhoto(path) || path.equals(Layout.SETTINGS)) {
            return;
          }
          Optional<BlobId> told = outgoing.file(path, blob);
          if (told.isEmpty()) {
            return;
          }
          byte[] bytes = contents.read(told.get());
          if (wish.otherwise().test(new String(bytes, StandardCharsets.UTF_8))) {
            speaking.add(path);
          }
          Layout.slugIn(Layout.PANTRY, path)
              .filter(food -> outgoing.hasPrivate(path, blob))
              .ifPresent(priced::add);
          List<String> fields = UnknownFields.of(path, bytes);
          if (!fields.isEmpty()) {
            unknown.put(path, fields);
          }
          if (path.equals(Layout.formula(slug))) {
            UnknownFields.formula(path, bytes)
                .flatMap(Formula::reference)
                .ifPresent(references::add);
          } else {
            Layout.slugIn(Layout.FORMULAS, path).ifPresent(along::add);
          }
        });
    return new Contained(
        formula.name(),
        revisions,
        (int) paths.stream().filter(Layout::isBake).count(),
        (int) paths.stream().filter(Layout::isPhoto).count() - unreadable.size(),
        slugs(paths, Layout.PANTRY),
        slugs(paths, Layout.GOALS),
        List.copyOf(references),
        List.copyOf(along),
        people.keySet().stream()
            .sorted(
                Comparator.comparing(Author::name).thenComparing(Author::email))
            .toList(),
        List.copyOf(priced),
        chronicle.labels().size(),
        past.moments().size() + chronicle.labels().size(),
        List.copyOf(cut),
        past.leftOut(),
        List.copyOf(unreadable),
        List.copyOf(contents.stripped()),
        List.copyOf(speaking),
        unknown);
  }

  private static List<String> slugs(SortedSet<String> paths, String folder) {
    return paths.stream().flatMap(path -> Layout.slugIn(folder, path).stream()).toList();
  }
}
