package io.ovenmark.notebook;

import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.store.BundleFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.LongConsumer;

/**
 * Another notebook, to be read: a bundle that somebody sent, or a colleague's folder.
 *
 * <pre>{@code
 * try (ForeignNotebook foreign = ForeignNotebook.open(notebook, file, done -> {})) {
 *   foreign.notebook().latest().formulas();
 * }
 * }</pre>
 */
public final class ForeignNotebook implements AutoCloseable {
  private final Notebook notebook;
  private final Optional<Path> scratch;

  private ForeignNotebook(Notebook notebook, Optional<Path> scratch) {
    this.notebook = notebook;
    this.scratch = scratch;
  }

  /**
   * Opens it. Of a bundle every object is checked, in a folder of its own that is deleted on
   * closing.
   *
   * @param own the own notebook, beside which a bundle is unpacked
   * @param place the bundle, or the folder
   * @param progress told how many objects are read
   * @return the other notebook, open
   * @throws Refusal when there is nothing there, or no notebook
   * @throws io.ovenmark.notebook.store.StoreException when the bundle is damaged
   */
  public static ForeignNotebook open(Notebook own, Path place, LongConsumer progress) {
    if (Files.isDirectory(place)) {
      if (place.toAbsolutePath().normalize().equals(own.folder())) {
        throw new Refusal(
            Refusal.Reason.INVALID,
            place.toString(),
            "This is the notebook itself.",
            "Name a bundle, or the folder of another notebook.");
      }
      return new ForeignNotebook(Notebook.open(place), Optional.empty());
    }
    if (!Files.isRegularFile(place)) {
      throw new Refusal(
          Refusal.Reason.NOT_FOUND,
          place.toString(),
          "There is no such file or folder.",
          "Check the name.");
    }
    Path scratch = ScratchFolder.in(own.ownFolder());
    boolean opened = false;
    try {
      BundleFile.read(place, scratch, Layout.SETTINGS, Layout::isAtTop, progress);
      ForeignNotebook foreign =
          new ForeignNotebook(Notebook.open(scratch), Optional.of(scratch));
      opened = true;
      return foreign;
    } catch (Refusal refusal) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          String.valueOf(place.getFileName()),
          "The bundle holds no notebook: " + refusal.getMessage(),
          "Ask whoever sent it for one that was shared from Ovenmark.");
    } catch (UnreadableException damaged) {
      throw LegibleFiles.refusal(Layout.SETTINGS, damaged);
    } finally {
      if (!opened) {
        BundleFile.forget(scratch);
      }
    }
  }

  /**
   * The notebook.
   *
   * @return open, for reading
   */
  public Notebook notebook() {
    return notebook;
  }

  @Override
  public void close() {
    notebook.close();
    scratch.ifPresent(BundleFile::forget);
  }
}
