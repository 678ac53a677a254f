/**
 * The command line: one class for each verb, which reads its words, calls the desk and prints the
 * answer as text or as JSON. It may use the desk, the notebook's words (addresses, refusals) and
 * picocli, and it alone touches the console, the clock and the surroundings of the process. Start
 * with {@link io.ovenmark.cli.Main}, {@link io.ovenmark.cli.Ovenmark} and {@link
 * io.ovenmark.cli.DeskCommand}.
 */
package io.ovenmark.cli;
