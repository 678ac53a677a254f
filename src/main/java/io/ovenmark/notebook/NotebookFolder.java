package io.ovenmark.notebook;

import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.notebook.store.Write;
import io.ovenmark.notebook.store.WriteOutcome;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Makes and opens the repository of a notebook and says plainly what is in the way. */
final class NotebookFolder {
  private NotebookFolder() {}

  static GitStore create(Path folder, NotebookSettings settings, By by) {
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw refuse(folder, folder + " is a file.", "Name a folder.");
    }
    refuseBare(folder);
    Optional<Path> above = above(folder);
    if (above.isPresent()) {
      throw refuse(
          folder,
          "This folder is a part of the notebook in " + above.get() + ".",
          "Choose a folder outside of it.");
    }
    GitStore store = GitStore.create(folder);
    boolean made = false;
    try {
      begin(store, folder, settings, by);
      made = true;
      return store;
    } finally {
      if (!made) {
        store.close();
      }
    }
  }

  private static void begin(GitStore store, Path folder, NotebookSettings settings, By by) {
    WriteOutcome outcome;
    do {
      Optional<CommitId> head = store.head(Layout.MAIN);
      if (head.isPresent() && store.blob(head.get(), Layout.SETTINGS).isPresent()) {
        throw new Refusal(
            Refusal.Reason.EXISTS,
            folder.toString(),
            "There is a notebook in this folder already.",
            "Choose another folder, or leave out the creation.");
      }
      if (head.isEmpty() && !store.branches("").isEmpty()) {
        String other = store.checkedOutBranch().orElse(store.branches("").firstKey());
        throw refuse(
            folder,
            "This Git repository has no branch main, which is a notebook's main line.",
            "Rename its branch with: git branch -m " + other + " " + Layout.MAIN);
      }
      Write write =
          Write.to(Layout.MAIN, head, by.author(), by.time(), "Begin the notebook")
              .put(Layout.SETTINGS, settings.write());
      outcome = store.write(write);
    } while (outcome instanceof WriteOutcome.Moved);
  }

  static GitStore open(Path folder) {
    GitStore store = openStore(folder);
    boolean opened = false;
    try {
      check(store, folder);
      opened = true;
      return store;
    } finally {
      if (!opened) {
        store.close();
      }
    }
  }

  private static GitStore openStore(Path folder) {
    try {
      return GitStore.open(folder);
    } catch (StoreException e) {
      if (e.reason() != StoreException.Reason.NOT_A_REPOSITORY) {
        throw e;
      }
      refuseBare(folder);
      Optional<Path> above = above(folder);
      throw refuse(
          folder,
          "There is no notebook in this folder.",
          above
              .map(found -> "The one it is a part of opens with: --notebook " + found)
              .orElse("Make one with: ovenmark new --notebook " + folder));
    }
  }

  private static void check(GitStore store, Path folder) {
    Optional<byte[]> settings =
        store
            .head(Layout.MAIN)
            .flatMap(head -> store.blob(head, Layout.SETTINGS))
            .map(store::read);
    if (settings.isEmpty()) {
      throw refuse(
          folder,
          "This Git repository has no notebook.json on its branch main.",
          "Make it a notebook with: ovenmark new --notebook " + folder);
    }
    int format = NotebookSettings.readFormat(Layout.SETTINGS, settings.get()).orElse(0);
    if (format > NotebookSettings.FORMAT) {
      throw new Refusal(
          Refusal.Reason.NOT_A_NOTEBOOK,
          Layout.SETTINGS,
          "The notebook is of format " + format + ", this program reads up to "
              + NotebookSettings.FORMAT + ".",
          "Use a newer Ovenmark.");
    }
    NotebookSettings.read(Layout.SETTINGS, settings.get());
  }

  /** The notebook that a folder is a part of; none for a notebook's own folder. */
  private static Optional<Path> above(Path folder) {
    Path place = folder.toAbsolutePath().normalize();
    if (Files.exists(place.resolve(".git"))) {
      return Optional.empty();
    }
    for (Path each = place.getParent(); each != null; each = each.getParent()) {
      if (Files.exists(each.resolve(".git"))) {
        return Files.isRegularFile(each.resolve(Layout.SETTINGS))
            ? Optional.of(each)
            : Optional.empty();
      }
    }
    return Optional.empty();
  }

  private static void refuseBare(Path folder) {
    boolean bare =
        Files.isRegularFile(folder.resolve("HEAD"))
            && Files.isDirectory(folder.resolve("objects"))
            && Files.isDirectory(folder.resolve("refs"));
    if (bare) {
      throw refuse(
          folder,
          "This is a Git repository without files (a bare one).",
          "Clone it with git and open the clone.");
    }
  }

  private static Refusal refuse(Path folder, String sentence, String hint) {
    return new Refusal(Refusal.Reason.NOT_A_NOTEBOOK, folder.toString(), sentence, hint);
  }
}
