package io.ovenmark.notebook;

import io.ovenmark.measure.Slug;
import io.ovenmark.notebook.index.BuildProgress;
import io.ovenmark.notebook.index.IndexCheck;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.Damage;
import io.ovenmark.notebook.store.HandEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.LongConsumer;

/** A notebook looked at file by file and object by object, for a thorough check. */
public final class Inspection {
  private final Notebook notebook;

  /**
   * Looks at a notebook.
   *
   * @param notebook the notebook, open
   */
  public Inspection(Notebook notebook) {
    this.notebook = notebook;
  }

  /**
   * The newest commit of a branch that the notebook reads.
   *
   * @param branch the branch
   * @param variant the variant that it holds; empty for the main line
   * @param commit its newest commit
   */
  public record Head(String branch, Optional<Address> variant, CommitId commit) {}

  /**
   * The branches that the notebook reads.
   *
   * @return main first, then the variants in alphabetical order
   */
  public List<Head> heads() {
    List<Head> heads = new ArrayList<>();
    heads.add(new Head(Layout.MAIN, Optional.empty(), notebook.head(Layout.MAIN)));
    notebook
        .store()
        .branches(Layout.VARIANTS)
        .forEach(
            (branch, commit) ->
                variant(branch)
                    .ifPresent(line -> heads.add(new Head(branch, Optional.of(line), commit))));
    return heads;
  }

  /**
   * The branches below {@code variant/} that name no formula and variant, so that nobody sees them.
   *
   * @return their names in alphabetical order
   */
  public List<String> oddBranches() {
    return notebook.store().branches(Layout.VARIANTS).keySet().stream()
        .filter(branch -> variant(branch).isEmpty())
        .toList();
  }

  private static Optional<Address> variant(String branch) {
    String[] names = branch.substring(Layout.VARIANTS.length()).split("/", -1);
    if (names.length != 2 || !Slug.isSlug(names[0])) {
      return Optional.empty();
    }
    try {
      return Optional.of(Address.latest(names[0], Optional.of(names[1])));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /**
   * All files of a commit.
   *
   * @param commit the commit
   * @return content by path
   */
  public SortedMap<String, BlobId> files(CommitId commit) {
    return notebook.store().list(commit, "");
  }

  /**
   * The bytes of a content, checked against its id.
   *
   * @param blob the content
   * @return the bytes
   * @throws io.ovenmark.notebook.store.StoreException when it is missing or damaged
   */
  public byte[] bytes(BlobId blob) {
    return notebook.store().read(blob);
  }

  /**
   * The files on disk that differ from the newest commit of the checked-out branch.
   *
   * @return by path
   */
  public List<HandEdit> handEdits() {
    return notebook.store().handEdits("");
  }

  /**
   * Reads every Git object that branches and tags lead to.
   *
   * @param progress told how many have been read
   * @return what is missing or damaged
   */
  public List<Damage> damages(LongConsumer progress) {
    return notebook.store().verify(progress);
  }

  /**
   * Compares the history index with the commits.
   *
   * @param progress told how many commits have been read
   * @return the histories that the index tells wrongly
   */
  public List<IndexCheck.Difference> indexDifferences(BuildProgress progress) {
    return IndexCheck.of(notebook.store(), progress);
  }
}
