package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.store.Author;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Option;

/** A verb that commits something in somebody's name. */
abstract class WritingCommand extends DeskCommand {
  @Option(
      names = "--author",
      paramLabel = "\"NAME <MAIL>\"",
      description = "Who commits it; default: the author in Git's configuration, else the account.")
  private String author;

  /** Who commits, and when. */
  final By by(Desk desk) {
    return by(() -> new RecordWriter(desk.notebook()).configuredAuthor());
  }

  /** Who commits, and when, where there is no notebook yet. */
  final By by(Supplier<Optional<Author>> configured) {
    return Authors.by(surroundings(), author, configured);
  }
}
