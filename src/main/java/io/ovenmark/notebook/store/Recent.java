package io.ovenmark.notebook.store;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;

/** Keeps the answers that were asked for last; for questions whose answer never changes. */
final class Recent<K, V> {
  private final Map<K, V> answers = new LinkedHashMap<>(16, 0.75f, true);
  private final int most;

  /** Finds an answer that is not kept. */
  @FunctionalInterface
  interface Source<V> {
    V find() throws IOException;
  }

  Recent(int most) {
    this.most = most;
  }

  V get(K question, Source<V> source) throws IOException {
    synchronized (this) {
      V known = answers.get(question);
      if (known != null) {
        return known;
      }
    }
    V found = source.find();
    synchronized (this) {
      answers.put(question, found);
      if (answers.size() > most) {
        answers.remove(answers.keySet().iterator().next());
      }
    }
    return found;
  }
}
