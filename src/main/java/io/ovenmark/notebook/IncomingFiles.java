package io.ovenmark.notebook;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.BakeCodec;
import io.ovenmark.bake.Photo;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.store.BlobId;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** The files of a formula of another notebook as they come into the own one. */
final class IncomingFiles {
  /** The largest file of a formula, bake, food or goal that is taken in. */
  private static final int LARGEST_FILE = 1 << 20;

  private final Notebook source;
  private final MadeContents contents;
  private final Contents own;
  private final String slug;
  private final String as;
  private final Map<BlobId, BlobId> bakes = new HashMap<>();
  private final Set<BlobId> looked = new HashSet<>();

  /**
   * For one formula.
   *
   * @param source the other notebook
   * @param contents where what is made anew is kept
   * @param own what the own main line holds
   * @param slug the formula's short name there
   * @param as its short name here
   */
  IncomingFiles(Notebook source, MadeContents contents, Contents own, String slug, String as) {
    this.source = source;
    this.contents = contents;
    this.own = own;
    this.slug = slug;
    this.as = as;
  }

  /** The files of a moment as they come in. */
  SortedMap<String, BlobId> incoming(SortedMap<String, BlobId> files) {
    SortedMap<String, BlobId> told = new TreeMap<>();
    files.forEach(
        (path, blob) -> {
          if (path.equals(Layout.SETTINGS)) {
            settings(blob).ifPresent(made -> told.put(path, made));
          } else if (Layout.isPhoto(path)) {
            contents
                .picture(path, blob)
                .ifPresent(clean -> told.put(renamed(path, Layout.PHOTOS), clean));
          } else if (Layout.isBake(path)) {
            told.put(renamed(path, Layout.BAKES), bake(path, blob));
          } else if (path.equals(Layout.formula(slug))) {
            told.put(Layout.formula(as), small(path, blob));
          } else if (!path.startsWith(Layout.FORMULAS + "/") || isNewHere(path)) {
            told.put(path, small(path, blob));
          }
        });
    return told;
  }

  /** The own formula of a reference's name stays as it is, now and in every step. */
  private boolean isNewHere(String path) {
    return own.blob(path).isEmpty() && !path.equals(Layout.formula(as));
  }

  private BlobId small(String path, BlobId blob) {
    if (looked.add(blob)
        && source.store().read(blob).length > LARGEST_FILE) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          path,
          "The file is larger than the " + (LARGEST_FILE >> 20) + " MB that are taken in.",
          "Ask whoever sent it to make it smaller.");
    }
    return blob;
  }

  private String renamed(String path, String folder) {
    return folder + "/" + as + path.substring(path.lastIndexOf('/'));
  }

  /** A bake under the formula's new name; as it is under the same name, or when it is damaged. */
  private BlobId bake(String path, BlobId blob) {
    small(path, blob);
    if (as.equals(slug)) {
      return blob;
    }
    return bakes.computeIfAbsent(blob, each -> renamedBake(path, each));
  }

  private BlobId renamedBake(String path, BlobId blob) {
    Bake bake;
    try {
      bake =
          BakeCodec.read(
              path, slug, Layout.bakeId(path), source.store().read(blob));
    } catch (UnreadableException damaged) {
      return blob;
    }
    String folder = Layout.photos(slug) + "/";
    List<Photo> photos =
        bake.photos().stream()
            .map(
                photo ->
                    photo.file().startsWith(folder)
                        ? new Photo(
                            renamed(photo.file(), Layout.PHOTOS),
                            photo.caption(),
                            photo.alternative(),
                            photo.taken(),
                            photo.marks(),
                            photo.extras())
                        : photo)
            .toList();
    String address =
        bake.address().replaceAll("^" + slug + "(?=[@/]|$)", as);
    Bake renamed =
        new Bake(
            as,
            bake.id(),
            address,
            bake.blob(),
            bake.time(),
            bake.baker(),
            bake.ambient(),
            bake.note(),
            bake.pieces(),
            bake.findings(),
            photos,
            bake.extras());
    return contents.put(BakeCodec.write(renamed));
  }

  /** The own settings with the other notebook's rules for figures; empty when they are the same. */
  private Optional<BlobId> settings(BlobId blob) {
    NotebookSettings ours = own.settings();
    NotebookSettings theirs;
    try {
      theirs = NotebookSettings.read(Layout.SETTINGS, source.store().read(small("", blob)));
    } catch (UnreadableException damaged) {
      return Optional.empty();
    }
    if (theirs.policy().equals(ours.policy())) {
      return Optional.empty();
    }
    NotebookSettings then =
        new NotebookSettings(
            ours.format(),
            ours.title(),
            ours.temperatureUnit(),
            ours.massUnit(),
            theirs.policy(),
            ours.extras());
    return Optional.of(contents.put(then.write()));
  }
}
