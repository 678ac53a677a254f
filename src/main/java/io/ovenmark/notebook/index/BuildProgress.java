package io.ovenmark.notebook.index;

/** Is told how far the reading of new commits has come. */
@FunctionalInterface
public interface BuildProgress {
  /** Listens to nothing. */
  BuildProgress NONE = (done, total) -> {};

  /**
   * Called from the thread that asked for a history, every few hundred commits and at the end.
   *
   * @param done how many commits have been read
   * @param total how many there are to read
   */
  void scanned(long done, long total);
}
