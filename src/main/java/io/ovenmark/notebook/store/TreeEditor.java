package io.ovenmark.notebook.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.eclipse.jgit.lib.AnyObjectId;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.TreeFormatter;
import org.eclipse.jgit.treewalk.CanonicalTreeParser;
import org.eclipse.jgit.util.Paths;

/** Builds the tree of a commit from the tree before; folders without a change are kept as is. */
final class TreeEditor {
  private final ObjectReader reader;
  private final ObjectInserter inserter;

  /** One row of a tree. */
  private record Row(byte[] name, FileMode mode, ObjectId id) {
    boolean isFolder() {
      return mode == FileMode.TREE;
    }
  }

  TreeEditor(ObjectReader reader, ObjectInserter inserter) {
    this.reader = reader;
    this.inserter = inserter;
  }

  /**
   * Applies changes.
   *
   * @param tree the tree before, or null if there is none
   * @param changes for each path its new blob, or empty to delete it
   * @return the new tree, or null if nothing is left in it
   * @throws StoreException {@code NOT_A_FILE} if a path runs through a file or ends at a folder
   */
  ObjectId edit(AnyObjectId tree, SortedMap<String, Optional<ObjectId>> changes)
      throws IOException {
    return edit(tree, changes, "");
  }

  private ObjectId edit(
      AnyObjectId tree, Map<String, Optional<ObjectId>> changes, String folder)
      throws IOException {
    Map<String, Optional<ObjectId>> files = new TreeMap<>();
    Map<String, Map<String, Optional<ObjectId>>> folders = new TreeMap<>();
    changes.forEach(
        (path, blob) -> {
          int slash = path.indexOf('/');
          if (slash < 0) {
            files.put(path, blob);
          } else {
            folders
                .computeIfAbsent(path.substring(0, slash), name -> new TreeMap<>())
                .put(path.substring(slash + 1), blob);
          }
        });
    List<Row> rows = new ArrayList<>();
    for (Row row : rows(tree)) {
      String name = new String(row.name(), StandardCharsets.UTF_8);
      if (files.containsKey(name)) {
        if (isLinkOrFolder(row)) {
          throw notAFile(folder + name);
        }
        files.remove(name).ifPresent(blob -> rows.add(new Row(row.name(), row.mode(), blob)));
      } else if (folders.containsKey(name)) {
        if (!row.isFolder()) {
          if (deletesOnly(folders.remove(name))) {
            rows.add(row);
            continue;
          }
          throw notAFile(folder + name);
        }
        ObjectId below = edit(row.id(), folders.remove(name), folder + name + "/");
        if (below != null) {
          rows.add(new Row(row.name(), FileMode.TREE, below));
        }
      } else {
        rows.add(row);
      }
    }
    files.forEach(
        (name, blob) ->
            blob.ifPresent(id -> rows.add(new Row(bytes(name), FileMode.REGULAR_FILE, id))));
    for (Map.Entry<String, Map<String, Optional<ObjectId>>> entry : folders.entrySet()) {
      ObjectId below = edit(null, entry.getValue(), folder + entry.getKey() + "/");
      if (below != null) {
        rows.add(new Row(bytes(entry.getKey()), FileMode.TREE, below));
      }
    }
    return rows.isEmpty() ? null : write(rows);
  }

  private List<Row> rows(AnyObjectId tree) throws IOException {
    List<Row> rows = new ArrayList<>();
    if (tree == null) {
      return rows;
    }
    CanonicalTreeParser parser = new CanonicalTreeParser();
    parser.reset(reader, tree);
    for (; !parser.eof(); parser.next(1)) {
      byte[] name = new byte[parser.getNameLength()];
      parser.getName(name, 0);
      rows.add(new Row(name, parser.getEntryFileMode(), parser.getEntryObjectId()));
    }
    return rows;
  }

  private ObjectId write(List<Row> rows) throws IOException {
    rows.sort(
        (a, b) ->
            Paths.compare(
                a.name(), 0, a.name().length, a.mode().getBits(),
                b.name(), 0, b.name().length, b.mode().getBits()));
    TreeFormatter formatter = new TreeFormatter();
    for (Row row : rows) {
      formatter.append(row.name(), row.mode(), row.id());
    }
    return inserter.insert(formatter);
  }

  private static boolean isLinkOrFolder(Row row) {
    return row.mode() != FileMode.REGULAR_FILE && row.mode() != FileMode.EXECUTABLE_FILE;
  }

  private static boolean deletesOnly(Map<String, Optional<ObjectId>> changes) {
    return changes.values().stream().allMatch(Optional::isEmpty);
  }

  private static byte[] bytes(String name) {
    return name.getBytes(StandardCharsets.UTF_8);
  }

  private static StoreException notAFile(String path) {
    return new StoreException(
        StoreException.Reason.NOT_A_FILE,
        path,
        "The path " + path + " is a folder or link where a file is needed, or the other way round:"
            + " choose another name.");
  }
}
