package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Piece;
import io.ovenmark.tasting.Sample;
import io.ovenmark.tasting.Tasting;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Checks what tastings say of revisions and bakes; they lie on the main line. */
final class CheckTastings {
  private final CheckHistories histories;
  private final Map<String, Bake> bakes;
  private final CheckLog log;

  CheckTastings(CheckHistories histories, Map<String, Bake> bakes, CheckLog log) {
    this.histories = histories;
    this.bakes = bakes;
    this.log = log;
  }

  void check(String path, Tasting tasting) {
    int number = 0;
    for (Sample sample : tasting.samples()) {
      String field = path + ", field samples[" + number++ + "]";
      content(field, sample);
      Bake bake =
          bakes.get(
              "bakes/" + sample.formula() + "/" + sample.bake().orElse("") + ".json");
      if (bake != null) {
        bake(field, sample, bake);
      }
    }
  }

  private void content(String field, Sample sample) {
    Optional<Map<String, List<String>>> history = histories.of(sample.formula());
    if (history.isEmpty()) {
      return;
    }
    List<String> addresses = history.get().getOrDefault(sample.blob(), List.of());
    if (addresses.isEmpty()) {
      log.wrong(
          field + ".blob",
          Optional.empty(),
          history.get().isEmpty()
              ? "The sample is of the formula \"" + sample.formula()
                  + "\", which the notebook lacks."
              : "The sample is of a content that no revision of " + sample.formula() + " has.",
          "Find the revision that was tasted (ovenmark timeline " + sample.formula()
              + ") and write its blob id (ovenmark show, --json).");
    } else if (!addresses.contains(sample.address())) {
      log.notice(
          field + ".address",
          Optional.empty(),
          "The sample says it is of " + sample.address() + ", but its content is that of "
              + String.join(", ", addresses) + ".",
          "The content counts; correct the address if you know it to be a slip.");
    }
  }

  private void bake(String field, Sample sample, Bake bake) {
    if (!bake.blob().equals(sample.blob())) {
      log.wrong(
          field + ".bake",
          Optional.empty(),
          "The bake " + bake.id() + " is of another content than the sample.",
          "Name a bake of that content, or take the field out.");
    } else if (sample.piece().isPresent()
        && bake.pieces().stream().map(Piece::id).noneMatch(sample.piece().get()::equals)) {
      log.wrong(
          field + ".piece",
          Optional.empty(),
          "The bake " + bake.id() + " has no piece \"" + sample.piece().get() + "\".",
          "Name one of its pieces, or take the field out.");
    }
  }
}
