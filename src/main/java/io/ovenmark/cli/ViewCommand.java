package io.ovenmark.cli;

import io.ovenmark.demo.DemoNotebook;
import io.ovenmark.desk.Desk;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.web.Network;
import io.ovenmark.web.Opening;
import io.ovenmark.web.Viewer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Opens the viewer. */
@Command(
    name = "view",
    header = "Open the viewer for a browser.",
    description = {
      "Open the viewer and print its address for a browser. What is written there is committed in"
          + " the name of the author in Git's configuration, else of the account. It answers only"
          + " on this machine and goes on until it is ended with Ctrl-C.",
      "",
      "With --lan it also answers a phone in the same network, once that was paired: scan the code"
          + " that is printed, or type it. A code works once, for a few minutes; a pairing ends"
          + " after 12 hours and when the viewer ends. What goes over the network is not encrypted:"
          + " others on it could read it, so use a network that you trust."
    },
    footerHeading = "%nExamples:%n",
    footer = {"  ovenmark view", "  ovenmark view --demo"})
final class ViewCommand extends Verb {
  private static final int FIRST_PORT = 20_000;
  private static final int PORTS = 12_000;
  private static final String CHOOSE = "";
  private static final DateTimeFormatter CLOCK_TIME =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  @Option(
      names = "--port",
      paramLabel = "N",
      description =
          "Port to listen on, 0 for any; default: one that stays the same for a folder, so that"
              + " browsers keep what they keep for it, else any free one.")
  private Integer port;

  @Option(
      names = "--lan",
      paramLabel = "ADDRESS",
      arity = "0..1",
      fallbackValue = CHOOSE,
      description =
          "Answer paired phones in the same network too, at this address of the machine; without"
              + " one, at the first for private networks.")
  private String lan;

  @Option(
      names = "--demo",
      description = "View a fresh copy of the demo notebook, made in a temporary folder.")
  private boolean demo;

  @Override
  public Integer call() {
    if (demo && hasNotebookOption()) {
      throw usage("Give either --demo or --notebook, not both.");
    }
    Optional<Network> network = Optional.ofNullable(lan).map(this::network);
    Path folder = demo ? freshDemo() : notebookFolder();
    try (Desk desk = new Desk(Notebook.open(folder));
        Viewer viewer = start(desk, folder, network)) {
      out().line("Viewing " + folder);
      out().line("Open " + viewer.address() + " in a browser; end with Ctrl-C.");
      viewer.invite().ifPresent(invitation -> print(invitation, viewer));
      surroundings().stay().run();
    }
    return ExitCode.DONE.number();
  }

  private Network network(String address) {
    List<LanAddresses.Connection> connections = LanAddresses.connections();
    return new Network(
        address.equals(CHOOSE)
            ? LanAddresses.choose(connections)
            : LanAddresses.named(address, connections),
        surroundings().clock());
  }

  private Viewer start(Desk desk, Path folder, Optional<Network> network) {
    if (port != null) {
      return start(desk, port, network);
    }
    try {
      return start(desk, usualPort(folder), network);
    } catch (Refusal inUse) {
      return start(desk, 0, network);
    }
  }

  private Viewer start(Desk desk, int at, Optional<Network> network) {
    return Viewer.start(desk, new Opening(at, () -> by(desk), network), complaints()::about);
  }

  /**
   * A port by the folder: below those that systems give out by themselves (from 32768 on Linux),
   * and above those of services.
   */
  static int usualPort(Path folder) {
    return FIRST_PORT + Math.floorMod(folder.toString().hashCode(), PORTS);
  }

  private void print(Viewer.Invitation invitation, Viewer viewer) {
    out().blank();
    invitation.drawing().forEach(out()::line);
    out().blank();
    String until = CLOCK_TIME.format(invitation.until().atZone(surroundings().clock().getZone()));
    out()
        .wrapped(
            "For a phone in the same network: scan this with its camera, or open "
                + invitation.page()
                + " there and type "
                + invitation.code()
                + ". It works once, until "
                + until
                + "; more codes are made at "
                + viewer.address()
                + "phone. What goes over the network is not encrypted.",
            "");
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
