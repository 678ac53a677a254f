package io.ovenmark.notebook;

import io.ovenmark.notebook.FormulaPast.Moment;
import io.ovenmark.notebook.store.Author;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.Chronicle;
import io.ovenmark.notebook.store.CommitFacts;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.notebook.store.TagFacts;
import io.ovenmark.notebook.store.Transfer;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tells the past of a formula as commits to be made elsewhere. */
final class Retelling {
  private static final Pattern COMMIT = Pattern.compile("\\b[0-9a-f]{40}\\b");

  private final FormulaPast past;
  private final String slug;
  private final String as;
  private final Function<String, Optional<BlobId>> base;
  private final Telling telling;
  private final List<Chronicle.Step> steps = new ArrayList<>();
  private final List<SortedMap<String, BlobId>> files = new ArrayList<>();
  private final List<Integer> numbers = new ArrayList<>();
  private final SortedMap<String, Integer> branches = new TreeMap<>();
  private final List<Chronicle.Label> labels = new ArrayList<>();

  /**
   * How it is told.
   *
   * @param files the files of a moment as they are to be there
   * @param notes a note as it is to be there, given what it is about; not blank
   * @param people a person as they are to be there
   */
  record Telling(
      UnaryOperator<SortedMap<String, BlobId>> files, Notes notes, UnaryOperator<Author> people) {}

  /** Words a note anew. */
  @FunctionalInterface
  interface Notes {
    String worded(String note, String otherwise, Author author);
  }

  /**
   * Begins.
   *
   * @param past the past
   * @param slug the formula's short name there
   * @param as its short name where it is told
   * @param base the files of the commit that it is put on
   * @param telling how it is told
   */
  Retelling(
      FormulaPast past,
      String slug,
      String as,
      Function<String, Optional<BlobId>> base,
      Telling telling) {
    this.past = past;
    this.slug = slug;
    this.as = as;
    this.base = base;
    this.telling = telling;
  }

  /** Tells every moment, and where each line of history ends. */
  void tellAll() {
    for (Moment moment : past.moments()) {
      CommitFacts facts = moment.facts();
      add(
          moment.parent(),
          moment.merged(),
          telling.files().apply(moment.files()),
          telling.people().apply(facts.author()),
          facts.time(),
          message(moment));
    }
    past.ends().forEach((line, end) -> branches.put(branch(line), end.moment()));
  }

  private String branch(Address line) {
    if (line.equals(past.lead())) {
      return Layout.MAIN;
    }
    return Address.latest(as, line.variant()).branch();
  }

  /** The files of the step that a line of history ends at. */
  SortedMap<String, BlobId> filesAt(Address line) {
    return files.get(branches.get(branch(line)));
  }

  /** Adds a step at the end of a line of history. */
  void append(
      Address line, SortedMap<String, BlobId> wanted, By by, Chronicle.Message message) {
    int end = branches.get(branch(line));
    int at =
        add(
            end,
            List.of(),
            wanted,
            telling.people().apply(by.author()),
            by.time(),
            message);
    branches.put(branch(line), at);
  }

  /** Tells the publications of the formula and its variants under their numbers here. */
  void tellPublications(GitStore store) {
    String prefix = Layout.PUBLISHED + slug + "/";
    for (TagFacts tag : store.tags(prefix).values()) {
      String rest = tag.name().substring(prefix.length());
      int slash = rest.lastIndexOf('/');
      Optional<String> variant =
          slash < 0 ? Optional.empty() : Optional.of(rest.substring(0, slash));
      Optional<Integer> moment = past.momentOf(tag.commit().hex());
      boolean named = variant.isEmpty() || Address.isVariant(variant.get());
      if (moment.isEmpty() || !named || numbers.get(moment.get()) == 0) {
        continue;
      }
      String name =
          Layout.publishedTag(
              Address.latest(
                  as, variant.equals(past.lead().variant()) ? Optional.empty() : variant),
              numbers.get(moment.get()));
      if (labels.stream().anyMatch(label -> label.name().equals(name))) {
        continue;
      }
      Author who =
          new Transfer(store)
              .tagger(tag.name())
              .orElseGet(() -> past.moments().get(moment.get()).facts().author());
      labels.add(
          new Chronicle.Label(
              name,
              moment.get(),
              telling.notes().worded(plain(tag.message()), "Published", who),
              telling.people().apply(who),
              kept(tag.time())));
    }
  }

  Chronicle chronicle() {
    return new Chronicle(steps, branches, labels);
  }

  private int add(
      int parent,
      List<Integer> merged,
      SortedMap<String, BlobId> wanted,
      Author author,
      OffsetDateTime time,
      Chronicle.Message message) {
    SortedMap<String, BlobId> before =
        parent == Chronicle.BASE ? new TreeMap<>() : files.get(parent);
    TreeSet<String> paths = new TreeSet<>(before.keySet());
    paths.addAll(wanted.keySet());
    SortedMap<String, Optional<BlobId>> changes = new TreeMap<>();
    for (String path : paths) {
      Optional<BlobId> from = Optional.ofNullable(before.get(path)).or(() -> base.apply(path));
      Optional<BlobId> to = Optional.ofNullable(wanted.get(path)).or(() -> base.apply(path));
      if (!from.equals(to)) {
        changes.put(path, to);
      }
    }
    int number = parent == Chronicle.BASE ? 0 : numbers.get(parent);
    numbers.add(changes.containsKey(Layout.formula(as)) ? number + 1 : number);
    files.add(wanted);
    steps.add(new Chronicle.Step(parent, merged, changes, author, kept(time), message));
    return steps.size() - 1;
  }

  /** Git keeps no time before 1970. */
  private static OffsetDateTime kept(OffsetDateTime time) {
    return time.toEpochSecond() < 0
        ? OffsetDateTime.of(1970, 1, 1, 0, 0, 0, 0, ZoneOffset.UTC)
        : time;
  }

  private Chronicle.Message message(Moment moment) {
    CommitFacts facts = moment.facts();
    StringBuilder said = new StringBuilder(facts.subject());
    if (!facts.body().isEmpty()) {
      said.append("\n\n").append(facts.body());
    }
    StringBuilder persons = new StringBuilder();
    Map<String, String> own = new TreeMap<>();
    facts
        .trailers()
        .forEach(
            (key, value) -> {
              if (!Revisions.OWN_TRAILERS.contains(key)) {
                persons.append('\n').append(key).append(": ").append(value);
              } else if (!key.equals(IncomingFormula.TAKES_IN)
                  && !key.equals(TakenAlong.TAKES_IN_WITH)) {
                own.put(key, value);
              }
            });
    if (!persons.isEmpty()) {
      said.append('\n').append(persons);
    }
    String note =
        telling
            .notes()
            .worded(plain(said.toString()), otherwise(moment.touched()), facts.author());
    Map<String, String> told = new HashMap<>();
    own.forEach((key, value) -> translatable(value).ifPresent(kept -> told.put(key, kept)));
    if (told.isEmpty()) {
      return ids -> note;
    }
    return ids -> note + "\n\n" + trailers(new TreeMap<>(told), ids);
  }

  private static String otherwise(FormulaPast.Touched touched) {
    return switch (touched) {
      case FORMULA -> "Formula changed";
      case BAKES -> "Bakes recorded or changed";
      case PHOTOS -> "Photos changed";
      case NOTHING -> "Carried over";
    };
  }

  /** What a trailer says, unless it names a commit that is not told. */
  private Optional<String> translatable(String value) {
    Matcher matcher = COMMIT.matcher(value);
    while (matcher.find()) {
      if (past.momentOf(matcher.group()).isEmpty()) {
        return Optional.empty();
      }
    }
    String words = plain(value).replace('\n', ' ').strip();
    if (past.lead().variant().isPresent()) {
      words = words.replaceAll("(?<![a-z0-9-])" + past.lead().line() + "(?=[@ ]|$)", as);
    }
    return words.isEmpty()
        ? Optional.empty()
        : Optional.of(words.replaceAll("(?<![a-z0-9-])" + slug + "(?=[@/ ]|$)", as));
  }

  private String trailers(SortedMap<String, String> told, IntFunction<CommitId> ids) {
    StringBuilder lines = new StringBuilder();
    told.forEach(
        (key, value) -> {
          Matcher matcher = COMMIT.matcher(value);
          String translated =
              matcher.replaceAll(
                  found -> ids.apply(past.momentOf(found.group()).orElseThrow()).hex());
          lines.append(key).append(": ").append(translated).append('\n');
        });
    return lines.toString();
  }

  /** Without control characters, which a note from elsewhere may hold. */
  private static String plain(String text) {
    StringBuilder kept = new StringBuilder();
    text.codePoints()
        .filter(each -> each == '\n' || each == '\t' || !Character.isISOControl(each))
        .forEach(kept::appendCodePoint);
    return kept.toString();
  }
}
