package io.ovenmark.notebook;

import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.story.StoryCodec;
import io.ovenmark.story.StoryPlan;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The stories of formulas, one for each line of history. All are kept on the main line: what is told
 * of a variant is not part of its own history.
 *
 * <pre>{@code
 * Optional<Stories.Kept> kept = new Stories(notebook).find(line);
 * }</pre>
 */
public final class Stories {
  private final Notebook notebook;

  /**
   * A story with what a later change of it is based on.
   *
   * @param plan what was chosen
   * @param content id of its file's content, 40 hexadecimal digits
   */
  public record Kept(StoryPlan plan, String content) {}

  /**
   * The stories of a notebook.
   *
   * @param notebook the notebook, open
   */
  public Stories(Notebook notebook) {
    this.notebook = notebook;
  }

  /**
   * The story of a line of history.
   *
   * @param line a formula or variant
   * @return the story; empty when none was kept
   * @throws io.ovenmark.json.UnreadableException when its file is damaged
   */
  public Optional<Kept> find(Address line) {
    String path = StoryPlan.untold(line.formula(), line.variant()).path();
    Contents contents = notebook.latest();
    return contents
        .blob(path)
        .flatMap(
            blob ->
                contents
                    .story(Address.latest(line.formula(), line.variant()), path)
                    .map(plan -> new Kept(plan, blob.hex())));
  }

  /**
   * Commits a story.
   *
   * @param plan the story as it shall be
   * @param based id of the content that it was changed from; empty when there was none
   * @param note for the commit
   * @param by who and when
   * @return the story as it is kept now
   * @throws Refusal when somebody changed the story meanwhile
   */
  public Kept put(StoryPlan plan, Optional<String> based, String note, By by) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    files.put(plan.path(), StoryCodec.write(plan));
    Optional<BlobId> there = notebook.latest().blob(plan.path());
    if (!there.map(BlobId::hex).equals(based)) {
      throw RecordWriter.changed(plan.path());
    }
    SortedMap<String, Optional<BlobId>> expected = new TreeMap<>();
    expected.put(plan.path(), there);
    try {
      new RecordWriter(notebook).put(Layout.MAIN, files, expected, note, by);
    } catch (Refusal refusal) {
      throw refusal.reason() == Refusal.Reason.EXISTS
          ? RecordWriter.changed(plan.path())
          : refusal;
    }
    return find(Address.latest(plan.formula(), plan.variant())).orElseThrow();
  }
}
