package io.ovenmark.cli;

/** What the program says to the shell when it ends. */
enum ExitCode {
  /** It is done. */
  DONE(0),
  /** It was refused because of what was asked or of the data at hand. */
  REFUSED(1),
  /** The command line was not understood. */
  USAGE(2),
  /** Somebody else changed the same thing; a person must choose. */
  CONFLICT(3),
  /** The program is at fault. */
  INTERNAL(4);

  private final int number;

  ExitCode(int number) {
    this.number = number;
  }

  int number() {
    return number;
  }
}
