package io.ovenmark.notebook.store;

import io.ovenmark.notebook.store.StoreException.Reason;
import java.io.IOException;
import org.eclipse.jgit.errors.CorruptObjectException;
import org.eclipse.jgit.errors.IncorrectObjectTypeException;
import org.eclipse.jgit.errors.LargeObjectException;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.errors.RevWalkException;

/** Turns what JGit and the disk throw into {@link StoreException}. */
final class Faults {
  private Faults() {}

  /** Something to do with the repository. */
  @FunctionalInterface
  interface Task<T> {
    T run() throws IOException;
  }

  /**
   * Runs a task about an object, a branch or a path.
   *
   * @param where the id, name or path, for the message
   */
  static <T> T guard(String where, Task<T> task) {
    try {
      return task.run();
    } catch (MissingObjectException e) {
      String id = e.getObjectId() == null ? where : e.getObjectId().name();
      throw new StoreException(
          Reason.MISSING, id, "The notebook has no Git object " + id + " (" + where + ").", e);
    } catch (IncorrectObjectTypeException e) {
      throw new StoreException(
          Reason.MISSING, where, "The Git object of " + where + " is not of the kind meant.", e);
    } catch (CorruptObjectException e) {
      throw corrupt(where, e);
    } catch (IOException e) {
      throw new StoreException(
          Reason.DISK, where, "Reading or writing " + where + " failed: " + e.getMessage(), e);
    } catch (RevWalkException
        | LargeObjectException
        | IllegalArgumentException
        | IndexOutOfBoundsException
        | NegativeArraySizeException e) {
      throw corrupt(where, e);
    }
  }

  static StoreException corrupt(String where, Throwable cause) {
    return new StoreException(
        Reason.CORRUPT,
        where,
        "The Git data of " + where + " is damaged: restore it from a clone or a backup ("
            + (cause == null ? "the content does not match its id" : cause.getMessage()) + ").",
        cause);
  }
}
