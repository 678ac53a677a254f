package io.ovenmark.notebook.index;

import io.ovenmark.notebook.store.Author;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitFacts;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.CommitMessage;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What all commits read so far did to the formulas, in columns.
 *
 * <p>A commit's row never changes, whatever branches do, because it depends on the commit alone.
 * Rows are cut into lines: a commit whose first parent is the end of a line continues it, any
 * other begins a new line that remembers where it left its parent's. The line of a branch is then
 * a short list of pieces of lines, and whether a commit belongs to it is one comparison.
 */
final class HistoryTable {
  private static final int MERGE = 1;

  final IdColumn commits;
  final Columns columns;
  private final List<String> paths = new ArrayList<>();
  private final Map<String, Integer> pathNumbers = new HashMap<>();
  private final List<Ints> changesOfPath = new ArrayList<>();
  private final List<Author> authors = new ArrayList<>();
  private final Map<Author, Integer> authorNumbers = new HashMap<>();

  /** The numbers of a table. Those of commits and of changes run in parallel. */
  static final class Columns {
    Ints parent = new Ints();
    Ints line = new Ints();
    Ints position = new Ints();
    Ints flags = new Ints();
    Ints secondsHigh = new Ints();
    Ints secondsLow = new Ints();
    Ints offset = new Ints();
    Ints author = new Ints();
    Ints messageEnd = new Ints();
    Ints changeEnd = new Ints();
    Ints changeCommit = new Ints();
    Ints changePath = new Ints();
    Ints changeFrom = new Ints();
    Ints lineParent = new Ints();
    Ints linePosition = new Ints();
    Ints lineLength = new Ints();
    IdColumn blobs = new IdColumn(new Bytes());
    Bytes messages = new Bytes();
  }

  HistoryTable() {
    this(new IdColumn(new Bytes()), new Columns(), List.of(), List.of());
  }

  /** A table from what was stored. */
  HistoryTable(IdColumn commits, Columns columns, List<String> paths, List<Author> authors) {
    this.commits = commits;
    this.columns = columns;
    paths.forEach(this::pathNumber);
    authors.forEach(this::authorNumber);
    for (int change = 0; change < columns.changePath.size(); change++) {
      changesOfPath.get(columns.changePath.get(change)).add(change);
    }
  }

  int size() {
    return commits.size();
  }

  List<String> paths() {
    return paths;
  }

  List<Author> authors() {
    return authors;
  }

  /** The row of a commit, -1 if it has none. */
  int find(CommitId commit) {
    return commits.find(IdColumn.parse(commit.hex()));
  }

  CommitId commit(int row) {
    return new CommitId(commits.hex(row));
  }

  /** The row of the first parent, -1 for a first commit. */
  int parent(int row) {
    return columns.parent.get(row);
  }

  /** Adds a commit whose first parent, if it has one, has a row. */
  void add(CommitFacts facts, String message, List<Change> changes) {
    Columns c = columns;
    int row = commits.size();
    int parent = facts.parents().isEmpty() ? -1 : find(facts.parents().get(0));
    for (Change change : changes) {
      int path = pathNumber(change.path());
      changesOfPath.get(path).add(c.changePath.size());
      c.changeCommit.add(row);
      c.changePath.add(path);
      c.changeFrom.add(change.renamedFrom().map(this::pathNumber).orElse(-1));
      c.blobs.add(change.blob().map(blob -> IdColumn.parse(blob.hex())).orElse(IdColumn.NONE));
    }
    c.changeEnd.add(c.changePath.size());
    c.messages.add(message.getBytes(StandardCharsets.UTF_8));
    c.messageEnd.add(c.messages.size());
    c.author.add(authorNumber(facts.author()));
    long seconds = facts.time().toEpochSecond();
    c.secondsHigh.add((int) (seconds >> 32));
    c.secondsLow.add((int) seconds);
    c.offset.add(facts.time().getOffset().getTotalSeconds());
    c.flags.add(facts.parents().size() > 1 ? MERGE : 0);
    c.parent.add(parent);
    addToLine(parent);
    commits.add(IdColumn.parse(facts.id().hex()));
  }

  private void addToLine(int parent) {
    Columns c = columns;
    int line = parent < 0 ? -1 : c.line.get(parent);
    int position = parent < 0 ? -1 : c.position.get(parent);
    if (parent >= 0 && position == c.lineLength.get(line) - 1) {
      c.line.add(line);
      c.position.add(position + 1);
      c.lineLength.set(line, position + 2);
    } else {
      c.line.add(c.lineParent.size());
      c.position.add(0);
      c.lineParent.add(line);
      c.linePosition.add(position);
      c.lineLength.add(1);
    }
  }

  /** For each line how far it belongs to the line of a commit, -1 where it does not. */
  int[] reach(int row) {
    int[] reach = new int[columns.lineParent.size()];
    Arrays.fill(reach, -1);
    int line = columns.line.get(row);
    int position = columns.position.get(row);
    while (line >= 0) {
      reach[line] = position;
      position = columns.linePosition.get(line);
      line = columns.lineParent.get(line);
    }
    return reach;
  }

  boolean isWithin(int[] reach, int row) {
    return columns.position.get(row) <= reach[columns.line.get(row)];
  }

  /** The changes that make the history of a path up to a commit, newest first. */
  int[] follow(int tip, String path) {
    Ints steps = new Ints();
    int[] reach = reach(tip);
    int wanted = pathNumbers.getOrDefault(path, -1);
    int bound = tip + 1;
    while (wanted >= 0) {
      Ints changes = changesOfPath.get(wanted);
      int from = -1;
      for (int i = changes.size() - 1; i >= 0 && from < 0; i--) {
        int change = changes.get(i);
        int row = columns.changeCommit.get(change);
        if (row < bound && isWithin(reach, row)) {
          steps.add(change);
          from = columns.changeFrom.get(change);
          bound = row;
        }
      }
      wanted = from;
    }
    return steps.toArray();
  }

  /** The changes of a commit without the deletions that are half of a rename, by path. */
  int[] changesOf(int row) {
    int start = row == 0 ? 0 : columns.changeEnd.get(row - 1);
    int end = columns.changeEnd.get(row);
    Ints kept = new Ints();
    for (int change = start; change < end; change++) {
      boolean renamedAway = false;
      for (int other = start; other < end; other++) {
        renamedAway |= columns.changeFrom.get(other) == columns.changePath.get(change);
      }
      if (!renamedAway) {
        kept.add(change);
      }
    }
    return kept.toArray();
  }

  String pathOf(int change) {
    return paths.get(columns.changePath.get(change));
  }

  /** A change as a numbered step. */
  Entry entry(int change, int number) {
    Columns c = columns;
    int row = c.changeCommit.get(change);
    long seconds = (long) c.secondsHigh.get(row) << 32 | c.secondsLow.get(row) & 0xffffffffL;
    ZoneOffset offset = ZoneOffset.ofTotalSeconds(c.offset.get(row));
    int messageStart = row == 0 ? 0 : c.messageEnd.get(row - 1);
    CommitMessage message =
        CommitMessage.parse(c.messages.text(messageStart, c.messageEnd.get(row)));
    int from = c.changeFrom.get(change);
    return new Entry(
        number,
        commit(row),
        pathOf(change),
        Optional.ofNullable(c.blobs.hex(change)).map(BlobId::new),
        from < 0 ? Optional.empty() : Optional.of(paths.get(from)),
        OffsetDateTime.ofInstant(Instant.ofEpochSecond(seconds), offset),
        authors.get(c.author.get(row)),
        message.subject(),
        message.body(),
        message.trailers(),
        (c.flags.get(row) & MERGE) != 0);
  }

  private int pathNumber(String path) {
    Integer known = pathNumbers.putIfAbsent(path, paths.size());
    if (known != null) {
      return known;
    }
    paths.add(path);
    changesOfPath.add(new Ints());
    return paths.size() - 1;
  }

  private int authorNumber(Author author) {
    Integer known = authorNumbers.putIfAbsent(author, authors.size());
    if (known != null) {
      return known;
    }
    authors.add(author);
    return authors.size() - 1;
  }
}
