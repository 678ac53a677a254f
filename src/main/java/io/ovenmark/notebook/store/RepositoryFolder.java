package io.ovenmark.notebook.store;

import io.ovenmark.notebook.store.StoreException.Reason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.stream.Stream;
import org.eclipse.jgit.api.errors.InvalidRefNameException;
import org.eclipse.jgit.errors.RepositoryNotFoundException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.StoredConfig;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;

/** Makes and opens the repository of a folder, and only of that folder, never of one above. */
final class RepositoryFolder {
  private static final String UNFINISHED = ".git.part";

  private RepositoryFolder() {}

  /** Makes a repository unless there is one. */
  static void create(Path place) {
    JGitEnvironment.install();
    Faults.guard(
        place.toString(),
        () -> {
          Files.createDirectories(place);
          if (!Files.exists(place.resolve(Constants.DOT_GIT))) {
            initialise(place);
          } else {
            beginOnMain(place);
          }
          return place;
        });
  }

  /** Native Git may have made the repository with a branch of another name. */
  private static void beginOnMain(Path place) throws IOException {
    try (Repository repository = open(place)) {
      if (repository.getRefDatabase().getRefsByPrefix(Constants.R_HEADS).isEmpty()
          && repository.resolve(Constants.HEAD) == null) {
        repository.updateRef(Constants.HEAD).link(Constants.R_HEADS + GitStore.MAIN);
      }
    }
  }

  /** Builds the repository under another name first, so that there is never half of one. */
  private static void initialise(Path place) throws IOException {
    Path part = place.resolve(UNFINISHED);
    if (Files.exists(part)) {
      try (Stream<Path> files = Files.walk(part)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
    try (Repository fresh =
        new FileRepositoryBuilder()
            .setGitDir(part.toFile())
            .setWorkTree(place.toFile())
            .setInitialBranch(GitStore.MAIN)
            .build()) {
      fresh.create(false);
      StoredConfig config = fresh.getConfig();
      config.setBoolean("core", null, "autocrlf", false);
      config.save();
    } catch (InvalidRefNameException e) {
      throw new IllegalStateException(e);
    }
    Files.move(part, place.resolve(Constants.DOT_GIT), StandardCopyOption.ATOMIC_MOVE);
  }

  /** Opens a repository; the caller closes it. */
  static Repository open(Path place) {
    JGitEnvironment.install();
    if (!Files.exists(place.resolve(Constants.DOT_GIT))) {
      throw notARepository(place, null);
    }
    Repository repository = null;
    boolean done = false;
    try {
      repository =
          new FileRepositoryBuilder().setWorkTree(place.toFile()).setMustExist(true).build();
      if (repository.exactRef(Constants.HEAD) == null) {
        throw notARepository(place, null);
      }
      refuseUnsupported(repository, place);
      done = true;
      return repository;
    } catch (RepositoryNotFoundException e) {
      throw notARepository(place, e);
    } catch (IOException | IllegalArgumentException e) {
      throw new StoreException(
          Reason.CORRUPT,
          place.toString(),
          "The Git repository in " + place + " cannot be opened, its configuration or HEAD is"
              + " damaged (" + causes(e) + ").",
          e);
    } finally {
      if (!done && repository != null) {
        repository.close();
      }
    }
  }

  private static String causes(Throwable fault) {
    String message = fault.getMessage();
    Throwable cause = fault.getCause();
    return cause == null ? message : message + ": " + causes(cause);
  }

  private static void refuseUnsupported(Repository repository, Path place) {
    String format = repository.getConfig().getString("extensions", null, "objectformat");
    if (format != null && !format.equalsIgnoreCase("sha1")) {
      throw new StoreException(
          Reason.UNSUPPORTED_REPOSITORY,
          place.toString(),
          "The repository in " + place + " uses " + format + " ids, only sha1 is supported.");
    }
  }

  private static StoreException notARepository(Path place, Throwable cause) {
    return new StoreException(
        Reason.NOT_A_REPOSITORY,
        place.toString(),
        "The folder " + place + " is not a Git repository: create a notebook in it first.",
        cause);
  }
}
