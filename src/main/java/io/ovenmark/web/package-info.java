/**
 * The viewer: a small server on this machine alone, which answers with the records of {@code desk}
 * as JSON and serves the pages that draw them. It may use {@code desk} and what that offers; it
 * keeps nothing of its own but photos made smaller. Start with {@link io.ovenmark.web.Viewer}, whose list
 * of routes says all that can be asked.
 */
package io.ovenmark.web;
