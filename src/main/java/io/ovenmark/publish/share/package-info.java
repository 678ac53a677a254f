/**
 * What may be said to somebody else of one formula: which notes speak of others, and how they are
 * worded then. It knows only texts, neither files nor Git. Start with {@link
 * io.ovenmark.publish.share.Discretion}.
 */
package io.ovenmark.publish.share;
