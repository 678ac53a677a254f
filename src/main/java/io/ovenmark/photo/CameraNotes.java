package io.ovenmark.photo;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.exif.GpsDirectory;
import com.drew.metadata.xmp.XmpDirectory;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.Optional;

/**
 * What the camera noted in a picture (Exif; orientation as TIFF 6.0, tag 274). Notes that are
 * damaged count as absent.
 *
 * @param orientation where row 0 and column 0 belong, 1 to 8; 1 when not noted
 * @param taken when, by the camera's clock; empty when not noted
 * @param zone the clock's distance from UTC; empty when not noted
 * @param location whether it says where
 */
record CameraNotes(
    int orientation, Optional<LocalDateTime> taken, Optional<ZoneOffset> zone, boolean location) {
  private static final CameraNotes NONE =
      new CameraNotes(1, Optional.empty(), Optional.empty(), false);
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu:MM:dd HH:mm:ss", Locale.ROOT)
          .withResolverStyle(ResolverStyle.STRICT);
  private static final int EARLIEST_YEAR = 1900;

  static CameraNotes of(byte[] picture) {
    byte[] told =
        PhotoFormat.of(picture) == PhotoFormat.PNG ? PngChunks.forCameraNotes(picture) : picture;
    Metadata metadata;
    try {
      metadata = ImageMetadataReader.readMetadata(new ByteArrayInputStream(told));
    } catch (ImageProcessingException | IOException | RuntimeException e) {
      return NONE;
    }
    return new CameraNotes(
        orientation(metadata), taken(metadata), zone(metadata), location(metadata));
  }

  private static int orientation(Metadata metadata) {
    for (Directory directory : metadata.getDirectoriesOfType(ExifIFD0Directory.class)) {
      Integer value = directory.getInteger(ExifDirectoryBase.TAG_ORIENTATION);
      if (value != null && value >= 1 && value <= 8) {
        return value;
      }
    }
    return 1;
  }

  private static Optional<LocalDateTime> taken(Metadata metadata) {
    return text(metadata, ExifSubIFDDirectory.class, ExifDirectoryBase.TAG_DATETIME_ORIGINAL)
        .flatMap(CameraNotes::time)
        .or(
            () ->
                text(metadata, ExifIFD0Directory.class, ExifDirectoryBase.TAG_DATETIME)
                    .flatMap(CameraNotes::time));
  }

  private static Optional<ZoneOffset> zone(Metadata metadata) {
    return text(metadata, ExifSubIFDDirectory.class, ExifDirectoryBase.TAG_TIME_ZONE_ORIGINAL)
        .flatMap(
            text -> {
              try {
                return Optional.of(ZoneOffset.of(text));
              } catch (DateTimeException e) {
                return Optional.empty();
              }
            });
  }

  private static Optional<LocalDateTime> time(String text) {
    try {
      return Optional.of(LocalDateTime.parse(text, TIME))
          .filter(time -> time.getYear() >= EARLIEST_YEAR);
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static Optional<String> text(
      Metadata metadata, Class<? extends Directory> type, int tag) {
    for (Directory directory : metadata.getDirectoriesOfType(type)) {
      String value = directory.getString(tag);
      if (value != null && !value.isBlank()) {
        return Optional.of(value.strip());
      }
    }
    return Optional.empty();
  }

  private static boolean location(Metadata metadata) {
    for (Directory gps : metadata.getDirectoriesOfType(GpsDirectory.class)) {
      if (gps.containsTag(GpsDirectory.TAG_LATITUDE)
          || gps.containsTag(GpsDirectory.TAG_LONGITUDE)
          || gps.containsTag(GpsDirectory.TAG_DEST_LATITUDE)) {
        return true;
      }
    }
    for (XmpDirectory xmp : metadata.getDirectoriesOfType(XmpDirectory.class)) {
      if (xmp.getXmpProperties().keySet().stream().anyMatch(name -> name.contains("GPS"))) {
        return true;
      }
    }
    return false;
  }
}
