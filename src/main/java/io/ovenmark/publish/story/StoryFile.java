package io.ovenmark.publish.story;

/**
 * A file of a story that is published in several.
 *
 * @param name its name, such as {@code 02-step.png}
 * @param content its bytes; not copied, not to be changed
 * @param alternative what it shows, for whoever does not see it; empty for a text
 */
public record StoryFile(String name, byte[] content, String alternative) {}
