/**
 * The histories of formulas, read through an index that may be deleted at any time. It may use
 * {@code io.ovenmark.notebook.store} and JGit, and knows paths and ids, not what a formula is.
 * Start at {@link io.ovenmark.notebook.index.History}; {@link
 * io.ovenmark.notebook.index.IndexedHistory} is the fast one and must equal {@link
 * io.ovenmark.notebook.index.PlainWalk}.
 */
package io.ovenmark.notebook.index;
