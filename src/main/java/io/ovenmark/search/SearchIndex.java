package io.ovenmark.search;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What was found out about the steps and bakes of a notebook, by the ids of their contents, kept in
 * memory and in one file that may be deleted at any time. A row depends on nothing but those
 * contents, so that whatever happens to branches leaves it right. Threads may share it.
 *
 * <pre>{@code
 * SearchIndex index = new SearchIndex(folder);
 * StepFacts facts =
 *     index.step(before, after).orElseGet(() -> index.add(before, after, worked out));
 * index.save();
 * }</pre>
 */
public final class SearchIndex {
  /** Stands for the content before the first. */
  public static final String NOTHING = "0".repeat(40);

  private final SearchFile file;
  private final Map<String, StepFacts> steps = new HashMap<>();
  private final Map<String, BakeFacts> bakes = new HashMap<>();
  private boolean read;
  private int saved;

  /**
   * An index.
   *
   * @param folder where its file is or will be; made when it is written
   */
  public SearchIndex(Path folder) {
    file = new SearchFile(folder);
  }

  /**
   * Where it is kept.
   *
   * @return the file, which may be missing
   */
  public Path file() {
    return file.path();
  }

  /**
   * What is known of a step.
   *
   * @param from id of the content before, or {@link #NOTHING}
   * @param to id of the content after
   * @return the facts, empty when they were not worked out yet
   */
  public synchronized Optional<StepFacts> step(String from, String to) {
    ensureRead();
    return Optional.ofNullable(steps.get(from + to));
  }

  /**
   * Remembers what a step brought.
   *
   * @param from id of the content before, or {@link #NOTHING}
   * @param to id of the content after
   * @param facts what was found
   * @return the same facts
   */
  public synchronized StepFacts add(String from, String to, StepFacts facts) {
    ensureRead();
    steps.put(from + to, facts);
    return facts;
  }

  /**
   * What is known of a bake.
   *
   * @param content id of its content
   * @return the facts, empty when they were not worked out yet
   */
  public synchronized Optional<BakeFacts> bake(String content) {
    ensureRead();
    return Optional.ofNullable(bakes.get(content));
  }

  /**
   * Remembers a bake.
   *
   * @param content id of its content
   * @param facts what was found
   * @return the same facts
   */
  public synchronized BakeFacts add(String content, BakeFacts facts) {
    ensureRead();
    bakes.put(content, facts);
    return facts;
  }

  /** How many rows there are. */
  synchronized int size() {
    ensureRead();
    return steps.size() + bakes.size();
  }

  /**
   * Writes the file when there is something new. Where it cannot be written, the index stays in
   * memory.
   */
  public synchronized void save() {
    if (size() == saved) {
      return;
    }
    saved = size();
    try {
      file.write(new SearchFile.Rows(steps, bakes));
    } catch (IOException e) {
      return;
    }
  }

  private void ensureRead() {
    if (!read) {
      read = true;
      file.read()
          .ifPresent(
              rows -> {
                steps.putAll(rows.steps());
                bakes.putAll(rows.bakes());
              });
      saved = steps.size() + bakes.size();
    }
  }
}
