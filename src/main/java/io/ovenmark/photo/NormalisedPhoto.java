package io.ovenmark.photo;

import static java.util.Objects.requireNonNull;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;

/**
 * A picture as the notebook keeps it: upright, sRGB, without any metadata. What the camera noted of
 * the time is kept beside it as a value.
 *
 * @param jpeg the bytes
 * @param width pixels from left to right, above 0
 * @param height pixels from top to bottom, above 0
 * @param taken when it was taken by the camera's own clock; empty when not noted
 * @param zone the clock's distance from UTC; empty when not noted
 */
public record NormalisedPhoto(
    byte[] jpeg,
    int width,
    int height,
    Optional<LocalDateTime> taken,
    Optional<ZoneOffset> zone) {
  /** Copies the bytes. */
  public NormalisedPhoto {
    jpeg = jpeg.clone();
    requireNonNull(taken, "taken");
    requireNonNull(zone, "zone");
  }

  @Override
  public byte[] jpeg() {
    return jpeg.clone();
  }

  /**
   * When it was taken.
   *
   * @param otherwise the zone of a camera that noted none
   * @return the point in time; empty when the camera noted no time
   */
  public Optional<OffsetDateTime> takenAt(ZoneOffset otherwise) {
    return taken.map(time -> time.atOffset(zone.orElse(otherwise)));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof NormalisedPhoto that
        && Arrays.equals(jpeg, that.jpeg)
        && width == that.width
        && height == that.height
        && taken.equals(that.taken)
        && zone.equals(that.zone);
  }

  @Override
  public int hashCode() {
    return Objects.hash(Arrays.hashCode(jpeg), width, height, taken, zone);
  }

  @Override
  public String toString() {
    return "NormalisedPhoto[" + width + " × " + height + ", " + jpeg.length + " bytes]";
  }
}
