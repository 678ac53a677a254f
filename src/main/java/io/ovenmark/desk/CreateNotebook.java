package io.ovenmark.desk;

import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.NotebookSettings;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.store.Author;
import io.ovenmark.notebook.store.GitStore;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;

/**
 * Makes a notebook. The one verb that needs no desk.
 *
 * <pre>{@code
 * new CreateNotebook().call(folder, "Saltmarsh bench", configured -> by);
 * }</pre>
 */
public final class CreateNotebook {
  /**
   * Makes a notebook in a folder.
   *
   * @param folder where; made when it does not exist
   * @param title its title, not blank
   * @param by gives who makes it and when; is told who the user is by Git's configuration
   * @return what was made
   * @throws Refusal when there is a notebook already, the folder is a part of one, or is a file
   */
  public WriteViews.NotebookMade call(
      Path folder, String title, Function<Optional<Author>, By> by) {
    if (title.isBlank()) {
      throw new Refusal(
          Refusal.Reason.INVALID, "title", "A notebook needs a title.", "Give it one.");
    }
    NotebookSettings settings = NotebookSettings.titled(title.strip());
    By who = by.apply(GitStore.usersAuthor());
    try (Notebook made = Notebook.create(folder, settings, who)) {
      return new WriteViews.NotebookMade(made.folder().toString(), settings.title());
    }
  }
}
