package io.ovenmark.cli;

import static java.util.Objects.requireNonNull;

import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a command may see of the process it runs in; tests put their own in its place.
 *
 * @param out where answers go
 * @param err where refusals and remarks go
 * @param in what is read for a file called {@code -}
 * @param folder the current folder, absolute
 * @param temporary folder for what need not be kept, absolute
 * @param clock time and zone of what is committed
 * @param account name of the user's account, may be empty
 * @param environment value of an environment variable, empty when unset or blank
 * @param stay waits until the person ends the program, for a command that goes on by itself
 */
record Surroundings(
    PrintWriter out,
    PrintWriter err,
    InputStream in,
    Path folder,
    Path temporary,
    Clock clock,
    String account,
    Function<String, Optional<String>> environment,
    Runnable stay) {
  Surroundings {
    requireNonNull(out, "out");
    requireNonNull(err, "err");
    requireNonNull(in, "in");
    requireNonNull(folder, "folder");
    requireNonNull(temporary, "temporary");
    requireNonNull(clock, "clock");
    requireNonNull(account, "account");
    requireNonNull(environment, "environment");
    requireNonNull(stay, "stay");
  }
}
