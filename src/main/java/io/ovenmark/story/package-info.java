/**
 * What somebody chose to tell of how a formula came to be, and the file that keeps it. It may use
 * {@code measure} and {@code json}; it knows neither revisions nor Git. Start with {@link
 * io.ovenmark.story.StoryPlan} and {@link io.ovenmark.story.StoryCodec}.
 */
package io.ovenmark.story;
