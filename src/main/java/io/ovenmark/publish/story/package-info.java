/**
 * The story of how a formula came to be: which bakes taught something, and a page, a Markdown text
 * and a set of pictures that tell it. It knows neither Git nor HTTP. Start with {@link
 * io.ovenmark.publish.story.Story} and {@link io.ovenmark.publish.story.Lesson}.
 */
package io.ovenmark.publish.story;
