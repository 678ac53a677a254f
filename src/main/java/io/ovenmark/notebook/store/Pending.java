package io.ovenmark.notebook.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jgit.lib.ObjectId;

/**
 * What a writer is about to do, written down before it moves a branch, so that another one can
 * finish the work after a sudden death.
 *
 * @param ref the full name of the branch or tag
 * @param target the id it is to get, all zeros to delete it
 * @param files the files of the work tree that follow; none unless the branch is checked out
 * @param others branches and tags to be made once the branch has moved
 * @param gone branches and tags to be deleted after that, with what they led to
 */
record Pending(
    String ref,
    ObjectId target,
    List<FileChange> files,
    List<NewRef> others,
    List<NewRef> gone) {
  private static final String NAME = "pending";
  private static final String FIRST_LINE = "ovenmark pending 1";
  private static final String LAST_LINE = "end";
  private static final String OTHER = "also ";
  private static final String GONE = "gone ";

  /** One file before and after; empty where it does not exist. */
  record FileChange(String path, Optional<BlobId> before, Optional<BlobId> after) {}

  /** A branch or tag that is to be made, with its full name. */
  record NewRef(String ref, ObjectId target) {}

  Pending {
    files = List.copyOf(files);
    others = List.copyOf(others);
    gone = List.copyOf(gone);
  }

  Pending(String ref, ObjectId target, List<FileChange> files) {
    this(ref, target, files, List.of());
  }

  Pending(String ref, ObjectId target, List<FileChange> files, List<NewRef> others) {
    this(ref, target, files, others, List.of());
  }

  static boolean exists(Path folder) {
    return Files.exists(folder.resolve(NAME));
  }

  /** Reads what was left; empty if there is nothing or it was not written to its end. */
  static Optional<Pending> read(Path folder) throws IOException {
    List<String> lines;
    try {
      byte[] bytes = Files.readAllBytes(folder.resolve(NAME));
      lines = List.of(new String(bytes, StandardCharsets.UTF_8).split("\n"));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
    int last = lines.size() - 1;
    if (last < 3 || !lines.get(0).equals(FIRST_LINE) || !lines.get(last).equals(LAST_LINE)) {
      return Optional.empty();
    }
    try {
      List<FileChange> files = new ArrayList<>();
      List<NewRef> others = new ArrayList<>();
      List<NewRef> gone = new ArrayList<>();
      for (String line : lines.subList(3, last)) {
        String[] parts = line.split(" ", 3);
        if (line.startsWith(OTHER) || line.startsWith(GONE)) {
          List<NewRef> refs = line.startsWith(OTHER) ? others : gone;
          refs.add(new NewRef(parts[2], ObjectId.fromString(parts[1])));
          continue;
        }
        files.add(new FileChange(parts[2], blob(parts[0]), blob(parts[1])));
      }
      ObjectId target = ObjectId.fromString(lines.get(2));
      return Optional.of(new Pending(lines.get(1), target, files, others, gone));
    } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
      return Optional.empty();
    }
  }

  void write(Path folder) throws IOException {
    StringBuilder text = new StringBuilder();
    text.append(FIRST_LINE).append('\n').append(ref).append('\n');
    text.append(target.name()).append('\n');
    others.forEach(each -> append(text, OTHER, each));
    gone.forEach(each -> append(text, GONE, each));
    for (FileChange file : files) {
      text.append(name(file.before())).append(' ').append(name(file.after())).append(' ');
      text.append(file.path()).append('\n');
    }
    text.append(LAST_LINE).append('\n');
    Path part = folder.resolve(NAME + ".part");
    Files.write(part, text.toString().getBytes(StandardCharsets.UTF_8));
    Files.move(part, folder.resolve(NAME), StandardCopyOption.ATOMIC_MOVE);
  }

  private static void append(StringBuilder text, String what, NewRef ref) {
    text.append(what).append(ref.target().name()).append(' ').append(ref.ref()).append('\n');
  }

  static void remove(Path folder) throws IOException {
    Files.deleteIfExists(folder.resolve(NAME));
  }

  private static Optional<BlobId> blob(String name) {
    return name.equals("-") ? Optional.empty() : Optional.of(new BlobId(name));
  }

  private static String name(Optional<BlobId> blob) {
    return blob.map(BlobId::hex).orElse("-");
  }
}
