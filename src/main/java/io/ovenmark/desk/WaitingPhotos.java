package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Photo;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.KeptPhoto;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.photo.NormalisedPhoto;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Pictures that were made ready one by one and wait to be added to a bake together, in one commit.
 * They are kept beside Git's data, already upright, small and without metadata, so that they outlive
 * a closed window or a program that was ended.
 *
 * <pre>{@code
 * WaitingPhotos waiting = new WaitingPhotos(desk);
 * PhotoViews.WaitingPhoto one = waiting.put("seeded-lupin-bun", "2026-09-14-1", "a.jpg", ready);
 * waiting.add("seeded-lupin-bun", "2026-09-14-1", List.of(one.picture()), by);
 * }</pre>
 */
public final class WaitingPhotos {
  /** The most that wait for one bake. */
  public static final int MOST = 200;

  private static final String FOLDER = "waiting-photos";
  private static final String NOTE = ".json";
  private static final String PICTURE = ".jpg";
  private static final int LONGEST_NAME = 120;
  private static final Pattern ID = Pattern.compile("[0-9a-f]{40}");

  private final Desk desk;
  private final BakeParts parts;

  /** What is kept of a picture beside its bytes. */
  private record Note(
      String name, String caption, String taken, String zone, int width, int height) {}

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public WaitingPhotos(Desk desk) {
    this.desk = desk;
    this.parts = new BakeParts(desk);
  }

  /**
   * Keeps a picture until it is added or thrown away.
   *
   * @param formula slug of the formula
   * @param id the bake's name
   * @param name what the file was called, for people only; it never becomes a path
   * @param photo the picture; its marks are not kept
   * @return how it is named from now on
   * @throws Refusal when there is no such bake, or too many wait already
   */
  public PhotoViews.WaitingPhoto put(String formula, String id, String name, ReadyPhoto photo) {
    requireRoom(formula, id);
    Path folder = folder(formula, id);
    NormalisedPhoto picture = photo.picture();
    String named = desk.notebook().blobOf(picture.jpeg()).hex();
    Note note =
        new Note(
            name.codePointCount(0, name.length()) > LONGEST_NAME
                ? name.substring(0, name.offsetByCodePoints(0, LONGEST_NAME)) + "…"
                : name,
            photo.caption().orElse(null),
            picture.taken().map(LocalDateTime::toString).orElse(null),
            picture.zone().map(ZoneOffset::getId).orElse(null),
            picture.width(),
            picture.height());
    try {
      Files.createDirectories(folder);
      write(folder.resolve(named + PICTURE), picture.jpeg());
      write(folder.resolve(named + NOTE), Json.compact(note).getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw notKept(e);
    }
    return view(named, note);
  }

  /**
   * Checks that one more may wait, before it is sent.
   *
   * @param formula slug of the formula
   * @param id the bake's name
   * @throws Refusal when there is no such bake, or too many wait already
   */
  public void requireRoom(String formula, String id) {
    if (list(formula, id).size() >= MOST) {
      throw new Refusal(
          Refusal.Reason.NOT_WRITABLE,
          id,
          "There are " + MOST + " pictures waiting to be added to this bake.",
          "Add them or throw them away, then go on.");
    }
  }

  /**
   * Those that wait.
   *
   * @param formula slug of the formula
   * @param id the bake's name
   * @return in the order in which they were taken, as far as that is known
   * @throws Refusal when there is no such bake
   */
  public List<PhotoViews.WaitingPhoto> list(String formula, String id) {
    Path folder = folder(formula, id);
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(file -> file.endsWith(NOTE))
          .map(file -> file.substring(0, file.length() - NOTE.length()))
          .filter(ID.asMatchPredicate())
          .flatMap(picture -> note(folder, picture).map(note -> view(picture, note)).stream())
          .sorted(
              Comparator.comparing(
                      (PhotoViews.WaitingPhoto each) -> each.taken() == null ? "" : each.taken())
                  .thenComparing(PhotoViews.WaitingPhoto::name)
                  .thenComparing(PhotoViews.WaitingPhoto::picture))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Adds them to the bake in one commit, in the given order, behind the photos that it has. One that
   * the bake shows already is left out.
   *
   * @param formula slug of the formula
   * @param id the bake's name
   * @param pictures which of those that wait
   * @param by who commits it, and when
   * @return the bake as it is now, and which of them were not added
   * @throws Refusal when there is no such bake; nothing is written then
   */
  public PhotoViews.PhotosAdded add(String formula, String id, List<String> pictures, By by) {
    Path folder = folder(formula, id);
    Predicate<String> known = shown(formula, id);
    List<ReadyPhoto> ready = new ArrayList<>();
    List<String> repeated = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    for (String picture : pictures.stream().distinct().toList()) {
      Optional<Note> note = ID.matcher(picture).matches() ? note(folder, picture) : Optional.empty();
      if (known.test(picture)) {
        repeated.add(picture);
      } else if (note.isPresent()) {
        ready.add(ready(folder, picture, note.get()));
      } else {
        missing.add(picture);
      }
    }
    PhotoViews.PhotosAdded added = commit(formula, id, ready, repeated, missing, by);
    throwAway(formula, id, pictures);
    return added;
  }

  /**
   * Adds one picture at once.
   *
   * @param formula slug of the formula
   * @param id the bake's name
   * @param photo the picture
   * @param by who commits it, and when
   * @return the bake as it is now
   * @throws Refusal when there is no such bake
   */
  public PhotoViews.PhotosAdded addAtOnce(String formula, String id, ReadyPhoto photo, By by) {
    String picture = desk.notebook().blobOf(photo.picture().jpeg()).hex();
    boolean known = shown(formula, id).test(picture);
    return commit(
        formula,
        id,
        known ? List.of() : List.of(photo),
        known ? List.of(picture) : List.of(),
        List.of(),
        by);
  }

  private PhotoViews.PhotosAdded commit(
      String formula,
      String id,
      List<ReadyPhoto> ready,
      List<String> repeated,
      List<String> missing,
      By by) {
    if (ready.isEmpty()) {
      return new PhotoViews.PhotosAdded(
          parts.view(parts.bake(formula, id)),
          List.of(),
          List.copyOf(repeated),
          List.copyOf(missing));
    }
    KitchenViews.BakeWritten written = new AddPhotos(desk).add(formula, id, ready, by);
    return new PhotoViews.PhotosAdded(
        written.bake(), written.photosAdded(), List.copyOf(repeated), List.copyOf(missing));
  }

  /**
   * Throws some away.
   *
   * @param formula slug of the formula
   * @param id the bake's name
   * @param pictures which; those that do not wait any more are passed over
   * @throws Refusal when there is no such bake
   */
  public void throwAway(String formula, String id, List<String> pictures) {
    Path folder = folder(formula, id);
    try {
      for (String picture : pictures) {
        if (ID.matcher(picture).matches()) {
          Files.deleteIfExists(folder.resolve(picture + NOTE));
          Files.deleteIfExists(folder.resolve(picture + PICTURE));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether the bake has a photo of some content. */
  private Predicate<String> shown(String formula, String id) {
    Bake bake = parts.bake(formula, id);
    List<String> ids =
        bake.photos().stream()
            .map(Photo::file)
            .flatMap(file -> desk.notebook().keptPhoto(formula, file).stream())
            .map(KeptPhoto::id)
            .map(BlobId::hex)
            .toList();
    return ids::contains;
  }

  private Path folder(String formula, String id) {
    Bake bake = parts.bake(formula, id);
    return desk.notebook().ownFolder().resolve(FOLDER).resolve(bake.formula()).resolve(bake.id());
  }

  private static ReadyPhoto ready(Path folder, String picture, Note note) {
    try {
      NormalisedPhoto photo =
          new NormalisedPhoto(
              Files.readAllBytes(folder.resolve(picture + PICTURE)),
              note.width(),
              note.height(),
              Optional.ofNullable(note.taken()).map(LocalDateTime::parse),
              Optional.ofNullable(note.zone()).map(ZoneOffset::of));
      return new ReadyPhoto(photo, Optional.ofNullable(note.caption()), List.of());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Optional<Note> note(Path folder, String picture) {
    try {
      return Optional.of(Json.read(Files.readAllBytes(folder.resolve(picture + NOTE)), Note.class));
    } catch (NoSuchFileException | Refusal e) {
      return Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PhotoViews.WaitingPhoto view(String picture, Note note) {
    return new PhotoViews.WaitingPhoto(
        picture, note.name(), note.caption(), note.taken(), note.width(), note.height());
  }

  private static void write(Path file, byte[] bytes) throws IOException {
    Path part = Files.createTempFile(file.getParent(), "part", ".part");
    try {
      Files.write(part, bytes);
      Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  private static Refusal notKept(IOException e) {
    return new Refusal(
        Refusal.Reason.NOT_WRITABLE,
        "photo",
        "The picture cannot be kept (" + e.getClass().getSimpleName() + ").",
        "See whether the disk is full or may not be written to.");
  }
}
