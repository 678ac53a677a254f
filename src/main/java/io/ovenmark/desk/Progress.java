package io.ovenmark.desk;

import java.util.concurrent.CancellationException;

/**
 * Told by a long task how far it is. It is called only where the task may end without harm, since
 * that is where the task learns that it is no longer wanted.
 *
 * <pre>{@code
 * for (int at = 0; at < files.size(); at++) {
 *   progress.at(at, files.size());
 *   read(files.get(at));
 * }
 * }</pre>
 */
@FunctionalInterface
public interface Progress {
  /** Nobody watches, nobody cancels. */
  Progress UNWATCHED = (done, total) -> {};

  /**
   * Says how far the task is.
   *
   * @param done parts done so far
   * @param total parts in all; 0 while that is unknown
   * @throws CancellationException when the task is no longer wanted: let it through, leaving
   *     everything as it was or as it is whole
   */
  void at(long done, long total);
}
