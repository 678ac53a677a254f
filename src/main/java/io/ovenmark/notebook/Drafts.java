package io.ovenmark.notebook;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.CanonicalJson;
import io.ovenmark.json.Fields;
import io.ovenmark.json.Members;
import io.ovenmark.json.UnreadableException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.SecureRandom;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/**
 * The drafts of a notebook: files of their own under {@code .git/ovenmark/drafts/}, outside of
 * history, so that a reload, the end of the program or a closed laptop loses nothing. Each save is
 * written beside the last one, forced to disk and moved into its place. A save names the version
 * that it was based on and is refused when another one came between, also from another program.
 *
 * <pre>{@code
 * Drafts drafts = new Drafts(notebook);
 * Draft draft = drafts.begin("formula", "{}", by);
 * draft = drafts.save(draft.id(), draft.version(), "{\"name\": \"Bun\"}", by);
 * drafts.discard(draft.id(), draft.version());
 * }</pre>
 */
public final class Drafts {
  /** Characters that a draft holds at most. */
  public static final int LONGEST = 1 << 20;

  private static final Pattern ID = Pattern.compile("[a-z]{1,20}-[0-9a-f]{16}");
  private static final Pattern KIND = Pattern.compile("[a-z]{1,20}");
  private static final String ENDING = ".json";
  private static final SecureRandom RANDOM = new SecureRandom();
  private static final ConcurrentHashMap<Path, Object> MONITORS = new ConcurrentHashMap<>();

  private final Path folder;

  /**
   * Of a notebook.
   *
   * @param notebook the notebook
   */
  public Drafts(Notebook notebook) {
    folder = notebook.ownFolder().resolve("drafts");
  }

  /**
   * All drafts of a kind. One whose file is damaged is left out, and its file is left alone.
   *
   * @param kind what they are drafts of
   * @return the drafts, last saved first
   */
  public List<Draft> all(String kind) {
    List<Draft> drafts = new ArrayList<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, kind + "-*" + ENDING)) {
      for (Path file : files) {
        String name = file.getFileName().toString();
        find(name.substring(0, name.length() - ENDING.length())).ifPresent(drafts::add);
      }
    } catch (NoSuchFileException e) {
      return List.of();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    drafts.sort(
        Comparator.comparing((Draft draft) -> draft.time().toInstant())
            .reversed()
            .thenComparing(Draft::id));
    return List.copyOf(drafts);
  }

  /**
   * A draft.
   *
   * @param id its name
   * @return the draft as it was saved last; empty when there is none, or its file is damaged
   */
  public Optional<Draft> find(String id) {
    if (!ID.matcher(id).matches()) {
      return Optional.empty();
    }
    byte[] bytes;
    try {
      bytes = Files.readAllBytes(file(id));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    try {
      return Optional.of(read(id, bytes));
    } catch (UnreadableException e) {
      return Optional.empty();
    }
  }

  /**
   * A new draft.
   *
   * @param kind what it is a draft of; one lower-case word
   * @param content what was typed so far
   * @param by who types, and when
   * @return the draft, version 1
   * @throws Refusal when the content is too long
   */
  public Draft begin(String kind, String content, By by) {
    if (!KIND.matcher(kind).matches()) {
      throw new IllegalArgumentException("not a kind of draft: " + kind);
    }
    byte[] random = new byte[8];
    RANDOM.nextBytes(random);
    String id = kind + "-" + HexFormat.of().formatHex(random);
    Draft draft = draft(id, 1, content, by);
    alone(() -> write(draft));
    return draft;
  }

  /**
   * Saves what was typed.
   *
   * @param id the draft
   * @param version the version that it was typed into
   * @param content all that it holds now
   * @param by who types, and when
   * @return the draft, one version on
   * @throws Refusal when there is no such draft any more, the content is too long, or the draft was
   *     saved elsewhere since that version
   */
  public Draft save(String id, long version, String content, By by) {
    return alone(
        () -> {
          requireVersion(id, version);
          return write(draft(id, version + 1, content, by));
        });
  }

  /**
   * Throws a draft away.
   *
   * @param id the draft
   * @param version the version that was looked at
   * @return what was thrown away
   * @throws Refusal when there is no such draft any more, or it was saved elsewhere since that
   *     version
   */
  public Draft discard(String id, long version) {
    return alone(
        () -> {
          Draft draft = requireVersion(id, version);
          try {
            Files.delete(file(id));
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
          return draft;
        });
  }

  private Draft requireVersion(String id, long version) {
    Draft draft =
        find(id)
            .orElseThrow(
                () ->
                    new Refusal(
                        Refusal.Reason.NOT_FOUND,
                        id,
                        "There is no such draft any more.",
                        "It was finished or thrown away elsewhere; keep what you typed as a new"
                            + " draft."));
    if (draft.version() != version) {
      throw new Refusal(
          Refusal.Reason.CONFLICT,
          id,
          "This draft was changed elsewhere meanwhile, by " + draft.author() + ".",
          "Take what is there now, or keep what you typed as a draft of its own.");
    }
    return draft;
  }

  private static Draft draft(String id, long version, String content, By by) {
    requireNonNull(content, "content");
    if (content.length() > LONGEST) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "draft",
          "The draft is longer than a megabyte.",
          "Shorten its texts.");
    }
    String kind = id.substring(0, id.indexOf('-'));
    return new Draft(id, kind, version, by.time(), by.author().name(), content);
  }

  private static Draft read(String id, byte[] bytes) {
    Fields fields = Fields.of(id, bytes);
    long version = fields.whole("version", 1, Integer.MAX_VALUE).orElse(1);
    OffsetDateTime time =
        fields.parsed("time", Drafts::time).orElse(OffsetDateTime.MIN);
    String author = fields.text("author").orElse("");
    String content = fields.requiredText("content").orElse("");
    fields.finish();
    return new Draft(id, id.substring(0, id.indexOf('-')), version, time, author, content);
  }

  private static OffsetDateTime time(String text) {
    try {
      return OffsetDateTime.parse(text);
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException("\"" + text + "\" is not a time.", e);
    }
  }

  private Draft write(Draft draft) {
    byte[] bytes =
        CanonicalJson.write(
            new Members()
                .number("version", BigDecimal.valueOf(draft.version()))
                .text("time", draft.time().toString())
                .text("author", draft.author())
                .text("content", draft.content())
                .object());
    Path part = folder.resolve(draft.id() + ".part");
    try {
      Files.write(part, bytes);
      try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
        channel.force(true);
      }
      Files.move(part, file(draft.id()), StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return draft;
  }

  private Path file(String id) {
    return folder.resolve(id + ENDING);
  }

  /** Lets one writer in at a time, of this program and of others. */
  private Draft alone(Supplier<Draft> work) {
    synchronized (MONITORS.computeIfAbsent(folder, key -> new Object())) {
      try {
        Files.createDirectories(folder);
        try (FileChannel channel =
                FileChannel.open(
                    folder.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            FileLock lock = channel.lock()) {
          requireNonNull(lock, "lock");
          return work.get();
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
