package io.ovenmark.notebook;

import io.ovenmark.bake.Bake;
import io.ovenmark.json.Position;
import io.ovenmark.json.Problem;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.notebook.store.StoreException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The bakes of formulas and their photos, on the main line and on all variants. What was read is
 * kept by the ids of the folders it was read from, and the branches are looked at each time.
 */
final class BakeShelf {
  /** For how many formulas the bakes are kept. */
  private static final int KEPT = 512;

  private final GitStore store;
  private final Folders folders;
  private final Decoder decoder;
  private final Revisions revisions;

  /** What was found: the bakes that can be read, and what is wrong with the others. */
  private record Found(List<Bake> bakes, List<Problem> problems) {}

  /** Folders by their ids, the first line's first. */
  private record Place(String formula, List<String> folders) {}

  private final Map<Place, Found> known =
      Collections.synchronizedMap(
          new LinkedHashMap<>(64, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<Place, Found> eldest) {
              return size() > KEPT;
            }
          });

  BakeShelf(GitStore store, Folders folders, Decoder decoder, Revisions revisions) {
    this.store = store;
    this.folders = folders;
    this.decoder = decoder;
    this.revisions = revisions;
  }

  /** Those that can be read, oldest first. */
  List<Bake> bakes(String formula) {
    return find(formula).bakes();
  }

  /** What is wrong with those that cannot be read. */
  List<Problem> problems(String formula) {
    return find(formula).problems();
  }

  /** The files of all of them by path, readable or not. */
  Map<String, BlobId> files(String formula) {
    return files(formula, heads(formula).values());
  }

  /** The ids of the folders that they are read from. */
  Collection<String> foldersOf(String formula) {
    return heads(formula).keySet();
  }

  /** One of them, read anew or remembered. */
  Bake bake(String formula, String path, BlobId blob) {
    return decoder.bake(formula, path, blob);
  }

  /** The names of all of them, readable or not. */
  SortedSet<String> ids(String formula) {
    SortedSet<String> ids = new TreeSet<>();
    files(formula, heads(formula).values()).keySet().forEach(path -> ids.add(Layout.bakeId(path)));
    return ids;
  }

  /** One head for each content of the formula's folder of bakes, by that content's id. */
  private Map<String, CommitId> heads(String formula) {
    Map<String, CommitId> heads = new LinkedHashMap<>();
    for (Address line : revisions.lines(formula)) {
      Optional<CommitId> head = store.head(line.branch());
      head.flatMap(each -> folders.treeId(each, Layout.bakes(formula)))
          .ifPresent(id -> heads.putIfAbsent(id, head.get()));
    }
    return heads;
  }

  private Found find(String formula) {
    Map<String, CommitId> heads = heads(formula);
    Place place = new Place(formula, List.copyOf(heads.keySet()));
    Found found = known.get(place);
    if (found == null) {
      found = read(formula, heads.values());
      if (found.problems().isEmpty()) {
        known.put(place, found);
      }
    }
    return found;
  }

  private Found read(String formula, Collection<CommitId> heads) {
    List<Bake> bakes = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    files(formula, heads)
        .forEach(
            (path, blob) -> {
              try {
                bakes.add(decoder.bake(formula, path, blob));
              } catch (UnreadableException e) {
                problems.addAll(e.problems());
              } catch (StoreException e) {
                problems.add(new Problem(path, Position.NONE, "", e.getMessage(), ""));
              }
            });
    bakes.sort(Comparator.comparing(Bake::time).thenComparing(Bake::id));
    return new Found(List.copyOf(bakes), List.copyOf(problems));
  }

  /** The files by path; where several heads have one, as the first has it. */
  private Map<String, BlobId> files(String formula, Collection<CommitId> heads) {
    Map<String, BlobId> files = new LinkedHashMap<>();
    for (CommitId head : heads) {
      folders
          .list(head, Layout.bakes(formula))
          .forEach(
              (path, blob) -> {
                if (Layout.isBake(path)) {
                  files.putIfAbsent(path, blob);
                }
              });
    }
    return files;
  }

  Optional<KeptPhoto> photo(String formula, String path) {
    if (!path.startsWith(Layout.photos(formula) + "/")) {
      return Optional.empty();
    }
    for (Address line : revisions.lines(formula)) {
      Optional<BlobId> blob = store.head(line.branch()).flatMap(head -> store.blob(head, path));
      if (blob.isPresent()) {
        return blob.map(id -> new KeptPhoto(id, store::read));
      }
    }
    return Optional.empty();
  }
}
