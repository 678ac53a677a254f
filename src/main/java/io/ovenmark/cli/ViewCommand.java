package io.ovenmark.cli;

import io.ovenmark.demo.DemoNotebook;
import io.ovenmark.desk.Desk;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.web.Opening;
import io.ovenmark.web.Viewer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Opens the viewer. */
@Command(
    name = "view",
    header = "Open the viewer for a browser.",
    description = {
      "Open the viewer and print its address for a browser. What is written there is committed in"
          + " the name of the author in Git's configuration, else of the account. It answers only on"
          + " this machine and goes on until it is ended with Ctrl-C."
    },
    footerHeading = "%nExamples:%n",
    footer = {"  ovenmark view", "  ovenmark view --demo"})
final class ViewCommand extends Verb {
  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "0",
      description = "Port to listen on; default: any free one.")
  private int port;

  @Option(
      names = "--demo",
      description = "View a fresh copy of the demo notebook, made in a temporary folder.")
  private boolean demo;

  @Override
  public Integer call() {
    if (demo && hasNotebookOption()) {
      throw usage("Give either --demo or --notebook, not both.");
    }
    Path folder = demo ? freshDemo() : notebookFolder();
    Complaints complaints = complaints();
    try (Desk desk = new Desk(Notebook.open(folder));
        Viewer viewer =
            Viewer.start(desk, new Opening(port, () -> by(desk)), complaints::about)) {
      out().line("Viewing " + folder);
      out().line("Open " + viewer.address() + " in a browser; end with Ctrl-C.");
      surroundings().stay().run();
    }
    return ExitCode.DONE.number();
  }

  private By by(Desk desk) {
    RecordWriter writer = new RecordWriter(desk.notebook());
    return Authors.by(surroundings(), null, writer::configuredAuthor);
  }

  private Path freshDemo() {
    Path folder;
    try {
      folder = Files.createTempDirectory(surroundings().temporary(), "ovenmark-demo-");
    } catch (IOException e) {
      throw new Refusal(
          Refusal.Reason.NOT_WRITABLE,
          "--demo",
          "No temporary folder can be made (" + e.getMessage() + ").",
          "Make the demo with: ovenmark demo DIR, then: ovenmark view --notebook DIR");
    }
    err().line("Writing the demo notebook, which takes a few seconds …");
    DemoNotebook.create(folder, (done, total) -> {});
    return folder;
  }
}
