package io.ovenmark.desk;

import io.ovenmark.bake.FindingVocabulary;
import io.ovenmark.cause.Baked;
import io.ovenmark.cause.CauseSentences;
import io.ovenmark.cause.Evidence;
import io.ovenmark.cause.History;
import io.ovenmark.cause.Inquiry;
import io.ovenmark.cause.Plans;
import io.ovenmark.cause.Suspect;
import io.ovenmark.cause.Turn;
import io.ovenmark.compare.Confounding;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Makes the answer about causes out of what was found. */
final class CauseSheetMaker {
  /** Findings that can mean a piece is not done. */
  private static final Set<String> UNDERDONE =
      Set.of("gummy crumb", "wet line", "eggy", "fell", "pale");

  private final Desk desk;
  private final FindCauses.Asking asking;

  CauseSheetMaker(Desk desk, FindCauses.Asking asking) {
    this.desk = desk;
    this.asking = asking;
  }

  CauseViews.CauseSheet sheet() {
    Worksheet sheet = asking.state().sheet().worksheet();
    List<String> words = History.findings(asking.bakes());
    return new CauseViews.CauseSheet(
        asking.state().shown().toString(),
        asking.state().shown().formula(),
        asking.state().shown().variant().orElse(null),
        sheet.formula().name(),
        words.stream().map(this::row).sorted(ORDER).toList(),
        Arrays.stream(FindingVocabulary.values())
            .filter(each -> !each.merit() && !words.contains(each.word()))
            .map(FindingVocabulary::word)
            .toList(),
        (int) asking.bakes().stream().filter(baked -> !baked.isJudged()).count(),
        asking.inquiry().map(this::inquiry).orElse(null),
        cautions(sheet));
  }

  /** Faults and free words before merits, what is there before what is gone; else as they came. */
  private static final Comparator<CauseViews.FindingRow> ORDER =
      Comparator.<CauseViews.FindingRow, Boolean>comparing(
              row -> Boolean.TRUE.equals(row.merit()))
          .thenComparing(row -> row.standing().equals("gone"));

  private static Boolean merit(String word) {
    return FindingVocabulary.of(word).map(FindingVocabulary::merit).orElse(null);
  }

  private CauseViews.FindingRow row(String word) {
    History history = History.of(word, asking.bakes(), desk.units());
    List<Baked> judged = history.bakes();
    List<Baked> with = judged.stream().filter(baked -> baked.has(word)).toList();
    return new CauseViews.FindingRow(
        word,
        merit(word),
        key(history.standing()),
        with.size(),
        judged.size(),
        with.get(with.size() - 1).bake().id(),
        Suspect.of(history, asking.state().sheet().worksheet()).stream()
            .filter(suspect -> suspect.standing() == Suspect.Standing.LIKELY)
            .map(suspect -> suspect.cause().words())
            .findFirst()
            .orElse(null));
  }

  private CauseViews.InquiryView inquiry(Inquiry inquiry) {
    CauseSentences sentences = new CauseSentences(inquiry, desk.units());
    List<CauseViews.CauseView> causes = new ArrayList<>();
    for (Suspect suspect : inquiry.suspects()) {
      causes.add(cause(causes.size() + 1, suspect, sentences));
    }
    PlanViewMaker plans = new PlanViewMaker(desk.units());
    return new CauseViews.InquiryView(
        inquiry.finding(),
        merit(inquiry.finding()),
        key(inquiry.history().standing()),
        sentences.summary(),
        inquiry.history().bakes().stream().map(baked -> bake(baked, inquiry.finding())).toList(),
        inquiry.history().turns().stream().map(CauseSheetMaker::turn).toList(),
        causes,
        asking.size().pieces(),
        asking.size().perTray(),
        plans.views(inquiry.plans().map(Plans::plans).orElse(List.of())),
        inquiry.plans().map(Plans::remarks).orElse(List.of()));
  }

  private static CauseViews.BakeRow bake(Baked baked, String finding) {
    return new CauseViews.BakeRow(
        baked.bake().formula(),
        baked.bake().id(),
        baked.side().address(),
        Json.time(baked.bake().time()),
        baked.bake().pieces().size(),
        baked.with(finding).size(),
        baked.has(finding));
  }

  private static CauseViews.TurnView turn(Turn turn) {
    Confounding confounding = turn.comparison().confounding();
    return new CauseViews.TurnView(
        turn.came(),
        turn.earlier().bake().id(),
        turn.earlier().side().address(),
        turn.later().bake().id(),
        turn.later().side().address(),
        CauseSentences.changed(turn),
        confounding.verdict() == Confounding.Verdict.CONFOUNDED,
        confounding.influences().stream()
            .map(
                each ->
                    new CauseViews.ChangedView(key(each.kind()), each.name(), each.detail()))
            .toList(),
        confounding.likeForLikeSentence().orElse(null));
  }

  private static CauseViews.CauseView cause(
      int number, Suspect suspect, CauseSentences sentences) {
    return new CauseViews.CauseView(
        number,
        suspect.cause().rank(),
        suspect.cause().words(),
        key(suspect.standing()),
        standing(suspect.standing()),
        suspect.cause().gauge().key(),
        suspect.cause().gauge().label(),
        suspect.cause().gauge().unit(),
        suspect.cause().way().key(),
        sentences.figure(suspect),
        FigureSet.number(suspect.now().number()),
        sentences.shown(suspect.cause().gauge(), suspect.now()),
        suspect.evidence().stream()
            .map(evidence -> evidence(suspect, evidence, sentences))
            .toList(),
        sentences.details(suspect),
        suspect.cause().against(),
        sentences.advice(suspect),
        FigureSet.number(suspect.remedy().target()),
        suspect.remedy().back(),
        suspect.remedy().wish().orElse(null),
        suspect.remedy().formula().isPresent(),
        suspect.cause().origin());
  }

  private static CauseViews.EvidenceView evidence(
      Suspect suspect, Evidence evidence, CauseSentences sentences) {
    return new CauseViews.EvidenceView(
        key(evidence.place()),
        FigureSet.number(evidence.without().number()),
        FigureSet.number(evidence.with().number()),
        sentences.shown(suspect.cause().gauge(), evidence.without()),
        sentences.shown(suspect.cause().gauge(), evidence.with()),
        key(evidence.speech()));
  }

  private static String standing(Suspect.Standing standing) {
    return switch (standing) {
      case LIKELY -> "the history speaks for it";
      case OPEN -> "nothing to tell by";
      case UNMOVED -> "did not move with it";
      case UNLIKELY -> "the history speaks against it";
      case ABSENT -> "none of it in the formula";
    };
  }

  private List<String> cautions(Worksheet sheet) {
    List<String> cautions = new ArrayList<>();
    boolean underdone =
        asking.inquiry().map(Inquiry::finding).filter(UNDERDONE::contains).isPresent();
    boolean raw = Cautions.raw(sheet);
    if (underdone && raw) {
      cautions.add(
          "A crumb like this may not be done. With egg or raw flour in it do not serve or taste it"
              + " before the centre has been measured: at least 71 °C (160 °F) for egg; local food"
              + " codes decide.");
    }
    cautions.addAll(Cautions.of(sheet));
    return cautions;
  }

  static String key(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
