/**
 * The notebook's Git repository as objects, branches, tags and a work tree, in the notebook's own
 * records of paths, bytes and ids. It may use JGit and the JDK and nothing else of Ovenmark; only
 * this package and {@code io.ovenmark.notebook.index} may see JGit. Start at {@link
 * io.ovenmark.notebook.store.GitStore}, then {@link io.ovenmark.notebook.store.Write}.
 */
package io.ovenmark.notebook.store;
