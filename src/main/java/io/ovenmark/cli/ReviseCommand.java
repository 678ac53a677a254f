package io.ovenmark.cli;

import io.ovenmark.desk.Choices;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ReviseFormula;
import io.ovenmark.desk.WriteViews;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Commits the next revision of a formula. */
@Command(
    name = "revise",
    header = "Commit the next revision.",
    description = {
      "Commit the next revision of a formula: with fields changed, with the content of a file, or,"
          + " when neither is given, with the file in the notebook that was edited by hand.",
      "When somebody else committed in the meantime, the two are merged line by line; where both"
          + " changed the same, nothing is written, both sides are shown and the exit code is 3."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark revise seeded-lupin-bun --set water=188g --note \"Crumb was dry\"",
      "  ovenmark revise seeded-lupin-bun --set water-=5g --add caraway=2g --note-from-changes",
      "  ovenmark revise seeded-lupin-bun --file edited.json --note \"Softer dough\""
    })
final class ReviseCommand extends WritingCommand {
  private static final String OURS = "mine";
  private static final String THEIRS = "theirs";

  @Parameters(
      index = "0",
      paramLabel = "FORMULA[/VARIANT]",
      description = "What to revise; FORMULA@N edits revision N and merges with what came since.")
  private String line;

  @Mixin private EditOptions edits;

  @Option(
      names = "--file",
      paramLabel = "FILE",
      description = "Take the whole formula from a JSON file; - is standard input.")
  private String file;

  @Option(
      names = "--base",
      paramLabel = "N",
      description = "The revision that was edited; default: the newest.")
  private Integer base;

  @Option(names = "--note", paramLabel = "TEXT", description = "What was changed and why.")
  private String note;

  @Option(names = "--note-from-changes", description = "Take the changes in words as the note.")
  private boolean noteFromChanges;

  @Option(
      names = "--take",
      paramLabel = "FIELD=SIDE",
      description =
          "Settle a conflict: water.amount=mine, =theirs or =before; all=mine for all of them.")
  private List<String> takes;

  @Override
  ExitCode run(Desk desk) {
    if (file != null && !edits.edits().isEmpty()) {
      throw usage("Give either --file or changes such as --set, not both.");
    }
    if (note != null && noteFromChanges) {
      throw usage("Give either --note or --note-from-changes, not both.");
    }
    Choices choices = Takes.read(takes, OURS, THEIRS);
    ReviseFormula verb = new ReviseFormula(desk);
    ReviseFormula.Proposal proposal = proposal(verb, base(desk));
    String why = note(verb, proposal);
    WriteViews.RevisionWritten written = verb.call(proposal, why, choices, by(desk));
    if (written.outcome().equals("conflict")) {
      if (json()) {
        out().json(written);
      } else {
        conflict(written);
      }
      return ExitCode.CONFLICT;
    }
    print(written, out -> WrittenText.print(written, out));
    return ExitCode.DONE;
  }

  private Address base(Desk desk) {
    if (base != null && base < 1) {
      throw usage("--base must be the number of a revision, 1 or more.");
    }
    Address address = desk.address(line);
    boolean latest = address.point().kind() == Address.Point.Kind.LATEST;
    boolean edited = address.point().kind() == Address.Point.Kind.EDITED;
    if (edited) {
      return Address.latest(address.formula(), address.variant());
    }
    if (base == null) {
      return address;
    }
    if (!latest) {
      throw usage("Give the revision either in the address or with --base, not both.");
    }
    return address.at(base);
  }

  private ReviseFormula.Proposal proposal(ReviseFormula verb, Address base) {
    if (!edits.edits().isEmpty()) {
      return verb.edited(base, edits.edits());
    }
    return file == null
        ? verb.onDisk(base)
        : verb.file(base, InputFile.shown(file), InputFile.read(surroundings(), file));
  }

  private String note(ReviseFormula verb, ReviseFormula.Proposal proposal) {
    if (note != null) {
      return note;
    }
    String changes = verb.noteFromChanges(proposal);
    if (proposal.base().isEmpty()) {
      return "Begin " + proposal.edited().name();
    }
    if (changes.isEmpty()) {
      return "Written in the notebook's own form";
    }
    if (noteFromChanges) {
      return changes;
    }
    throw new Refusal(
        Refusal.Reason.INVALID,
        "--note",
        "A revision needs a note that says what and why.",
        "This one would be: “"
            + changes
            + "”. Say why with --note \"…\", or take that as the note"
            + " with --note-from-changes.");
  }

  private void conflict(WriteViews.RevisionWritten written) {
    Output err = err();
    WriteViews.RevisionView newest = written.revision();
    err.wrapped(
        "ovenmark: Nothing was committed: "
            + newest.address()
            + " by "
            + newest.author()
            + " (“"
            + newest.note()
            + "”) changed the same.",
        "  ");
    WrittenText.conflicts(written.conflicts(), OURS, THEIRS, err);
    err.blank();
    boolean named = base != null || line.contains("@");
    String again =
        named
            ? "Repeat the command with"
            : "Repeat the command with --base " + written.base().revision() + " and";
    String field = WrittenText.shortField(written.conflicts().get(0));
    err.wrapped(
        "  hint:  What you wrote is untouched. "
            + again
            + " a --take for each field, such as --take "
            + field
            + "=mine or --take "
            + field
            + "=theirs, or --take all=mine.",
        "         ");
  }
}
