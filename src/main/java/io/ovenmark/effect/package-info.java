/**
 * What mattered: over the bakes of a formula, the changes that moved together with each outcome,
 * by how much, how surely, and how often each was changed alone. Pure: knows no Git, no files and
 * no reader.
 */
package io.ovenmark.effect;
