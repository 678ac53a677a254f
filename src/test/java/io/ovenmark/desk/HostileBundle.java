package io.ovenmark.desk;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.notebook.store.RepositoryFixture;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;

/** Makes bundles by native Git that no notebook would make: a clone with one more tree entry. */
final class HostileBundle {
  private static final String FOLDER = "40000";

  private final RepositoryFixture git;
  private final Path clone;

  /** A row of a tree. */
  private record Row(String mode, String name, String id) {
    /** Git sorts folders as if their names ended in a slash. */
    String order() {
      return name + (mode.equals(FOLDER) ? "/" : "");
    }
  }

  HostileBundle(RepositoryFixture git, Path good, Path clone) {
    this.git = git;
    this.clone = clone;
    git.gitIn(good.getParent(), "clone", "-q", good.toString(), clone.toString());
  }

  /** A blob. */
  String blob(byte[] content) {
    try {
      Path file = Files.write(clone.resolve(".git/content"), content);
      return git.gitIn(clone, "hash-object", "-w", "--no-filters", file.toString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  String blob(String content) {
    return blob(content.getBytes(UTF_8));
  }

  String head() {
    return git.gitIn(clone, "rev-parse", "HEAD");
  }

  /**
   * A tree like the one of a folder of the main line, with one more entry, or another one of that
   * name.
   */
  String treeWith(String folder, String mode, String name, String id) {
    List<Row> rows = new ArrayList<>();
    git.gitIn(clone, "ls-tree", "HEAD:" + folder)
        .lines()
        .map(line -> line.split("[ \t]", 4))
        .map(part -> new Row(part[0].replaceFirst("^0", ""), part[3], part[2]))
        .filter(row -> !row.name().equals(name))
        .forEach(rows::add);
    rows.add(new Row(mode, name, id));
    rows.sort(Comparator.comparing(Row::order));
    return tree(rows);
  }

  /** A tree with one entry. */
  String tree(String mode, String name, String id) {
    return tree(List.of(new Row(mode, name, id)));
  }

  private String tree(List<Row> rows) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    for (Row row : rows) {
      bytes.writeBytes((row.mode() + " " + row.name()).getBytes(UTF_8));
      bytes.write(0);
      bytes.writeBytes(HexFormat.of().parseHex(row.id()));
    }
    try {
      Path file = Files.write(clone.resolve(".git/content"), bytes.toByteArray());
      return git.gitIn(
          clone, "hash-object", "-w", "-t", "tree", "--literally", file.toString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The main line with one more commit of that tree, as a bundle. */
  Path bundleOf(String tree, Path file) {
    String commit = git.gitIn(clone, "commit-tree", "-p", "HEAD", "-m", "One more", tree);
    git.gitIn(clone, "update-ref", "refs/heads/main", commit);
    git.gitIn(clone, "bundle", "create", "-q", file.toString(), "main");
    try {
      assertThat(new String(Files.readAllBytes(file), ISO_8859_1)).contains(commit);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return file;
  }
}
