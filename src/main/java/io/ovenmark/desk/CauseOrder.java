package io.ovenmark.desk;

/**
 * A question about causes as it is typed or sent. Every part may be null or empty.
 *
 * @param finding the finding, of the vocabulary or in free words; null for an overview of all
 * @param pieces pieces of each setting of a plan, such as {@code 2}; null for two
 * @param tray pieces that a tray takes; null for the pieces of a batch
 */
public record CauseOrder(String finding, String pieces, String tray) {
  /**
   * A question about one finding.
   *
   * @param finding the finding
   * @return the question
   */
  public static CauseOrder of(String finding) {
    return new CauseOrder(finding, null, null);
  }
}
