package io.ovenmark.desk;

import com.fasterxml.jackson.annotation.JsonInclude;
import io.ovenmark.notebook.Refusal;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * What the draft of a formula holds, as it is written.
 *
 * @param base address of the revision that it began from; null for a new formula
 * @param baseCommit the commit of that revision; null likewise
 * @param shortName what a new formula shall be filed under, as typed; null for not yet
 * @param note the note for saving it, as typed; null for none yet
 * @param saving what it is being saved with, so that a revision can be recognised as this draft's
 *     when the program ended between the two writes; null before
 * @param document the formula's document
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record DraftContent(
    String base,
    String baseCommit,
    String shortName,
    String note,
    Saving saving,
    JsonText document) {

  /**
   * An attempt to save.
   *
   * @param line the line of history that receives it
   * @param second the revision's time in seconds since 1970
   * @param note its note
   */
  record Saving(String line, long second, String note) {}

  static final String KIND = "formula";

  /** Reads what {@link #json} wrote; empty when it is damaged. */
  static Optional<DraftContent> read(String json) {
    try {
      DraftContent content =
          Json.read(json.getBytes(StandardCharsets.UTF_8), DraftContent.class);
      return Optional.of(content).filter(read -> read.document != null);
    } catch (Refusal e) {
      return Optional.empty();
    }
  }

  String json() {
    return Json.compact(this);
  }

  DraftContent with(JsonText nextDocument, String nextShortName, String nextNote) {
    return new DraftContent(base, baseCommit, nextShortName, nextNote, saving, nextDocument);
  }

  DraftContent with(Saving next) {
    return new DraftContent(base, baseCommit, shortName, note, next, document);
  }
}
