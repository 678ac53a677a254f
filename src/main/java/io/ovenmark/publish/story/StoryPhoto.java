package io.ovenmark.publish.story;

import java.util.Base64;
import java.util.Optional;

/**
 * A photo in a story.
 *
 * @param jpeg its bytes, a JPEG without camera data; not copied, not to be changed
 * @param alternative what it shows, for whoever does not see it
 * @param caption what is said beside it; empty when nothing is
 */
public record StoryPhoto(byte[] jpeg, String alternative, Optional<String> caption) {
  /** The picture as an address that carries it. */
  String dataAddress() {
    return "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(jpeg);
  }
}
