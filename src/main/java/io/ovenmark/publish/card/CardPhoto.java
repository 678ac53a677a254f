package io.ovenmark.publish.card;

import java.util.Base64;

/**
 * The picture of a card.
 *
 * @param jpeg its bytes, a JPEG without camera data; not copied, not to be changed
 * @param alternative what it shows, for whoever does not see it
 */
public record CardPhoto(byte[] jpeg, String alternative) {
  /** The picture as an address that carries it. */
  String dataAddress() {
    return "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(jpeg);
  }
}
