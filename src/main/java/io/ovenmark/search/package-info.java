/**
 * Words in the history of formulas: how texts are compared, what of a revision and of a bake is
 * searched, and the file in which that is kept. It knows formulas, bakes and their changes, but not
 * Git: rows are found by the ids of the contents that they were made from, so that they never go
 * stale. Start at {@link io.ovenmark.search.SearchIndex}.
 */
package io.ovenmark.search;
