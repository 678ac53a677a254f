/**
 * How fast the program is, measured beside native Git on a generated notebook of 200 formulas and
 * 20 000 commits. It may use everything of the program and is run by hand, never by the tests: a
 * time depends on the machine and on who else is at work on it. Start with {@link
 * io.ovenmark.speed.SpeedRun}.
 */
package io.ovenmark.speed;
