package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.cause.Baked;
import io.ovenmark.cause.Cause;
import io.ovenmark.cause.Inquiry;
import io.ovenmark.cause.Plan;
import io.ovenmark.cause.PlanSize;
import io.ovenmark.cause.Plans;
import io.ovenmark.cause.Remedy;
import io.ovenmark.cause.Suspect;
import io.ovenmark.compare.Side;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.measure.Quantity;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Looks into a finding: likely causes held against the formula's figures, what changed when it came
 * or went, and the plan of bakes that tells those changes apart. Each bake counts with the revision
 * and the foods that were baked; what is to be done next counts with the foods of today.
 *
 * <pre>{@code
 * new FindCauses(desk).call(address, CauseOrder.of("gummy crumb"));
 * }</pre>
 */
public final class FindCauses {
  private static final int USUAL_TRAY = 6;

  private final Desk desk;

  /** What was asked about. */
  record Asking(
      FindLevers.State state, List<Baked> bakes, Optional<Inquiry> inquiry, PlanSize size) {}

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public FindCauses(Desk desk) {
    this.desk = desk;
  }

  /**
   * Looks into a finding, or lists all of them.
   *
   * @param address which state; bakes up to it on its line of history count
   * @param order what is asked
   * @return the causes
   * @throws Refusal when there is no such state, or a number cannot be read
   */
  public CauseViews.CauseSheet call(Address address, CauseOrder order) {
    return new CauseSheetMaker(desk, ask(address, order)).sheet();
  }

  /**
   * Begins a draft with what is done against a cause.
   *
   * @param address which state
   * @param order the finding
   * @param number the cause's number in the answer
   * @param by who, and when
   * @return the draft
   * @throws Refusal when there is no such cause, or nothing can be set against it
   */
  public DraftViews.DraftView remedy(Address address, CauseOrder order, int number, By by) {
    Asking asking = ask(address, order);
    List<Suspect> suspects = inquiry(asking).suspects();
    if (number < 1 || number > suspects.size()) {
      throw none("cause", number, suspects.size());
    }
    Suspect suspect = suspects.get(number - 1);
    Cause cause = suspect.cause();
    Formula formula =
        suspect.remedy().formula()
            .orElseThrow(
                () ->
                    new Refusal(
                        Refusal.Reason.INVALID,
                        "cause",
                        "Nothing can be set against \"" + cause.words() + "\" in the formula.",
                        "What helps: " + cause.against() + "."));
    return begin(formula, asking.state().shown(), Remedy.note(cause), by);
  }

  /**
   * Begins a draft of a dough of a plan.
   *
   * @param address which state
   * @param order the finding, and how much is baked
   * @param plan the plan's number in the answer
   * @param setting the setting's number in the plan
   * @param by who, and when
   * @return the draft
   * @throws Refusal when there is no such plan or setting
   */
  public DraftViews.DraftView setting(
      Address address, CauseOrder order, int plan, int setting, By by) {
    Asking asking = ask(address, order);
    Inquiry inquiry = inquiry(asking);
    List<Plan> plans = inquiry.plans().map(Plans::plans).orElse(List.of());
    if (plan < 1 || plan > plans.size()) {
      throw none("plan", plan, plans.size());
    }
    Plan chosen = plans.get(plan - 1);
    if (setting < 1 || setting > chosen.settings().size()) {
      throw none("setting", setting, chosen.settings().size());
    }
    Plan.Setting wanted = chosen.settings().get(setting - 1);
    Formula formula = PlanViewMaker.kept(wanted);
    String note =
        "Plan against " + inquiry.finding() + ", setting " + setting + " of "
            + chosen.settings().size() + ": "
            + String.join(", ", PlanViewMaker.levels(chosen, wanted));
    Address base = desk.address(inquiry.turn().orElseThrow().later().side().address());
    return begin(formula, base, note, by);
  }

  private DraftViews.DraftView begin(Formula formula, Address base, String note, By by) {
    JsonText document = JsonText.of(FormulaCodec.write(formula));
    KeepDrafts drafts = new KeepDrafts(desk);
    DraftViews.DraftView begun =
        drafts.begin(Optional.of(document), Optional.of(base.toString()), by);
    drafts.keep(begun.id(), begun.version(), new KeepDrafts.Typed(document, "", note), by);
    return drafts.show(begun.id());
  }

  private static Inquiry inquiry(Asking asking) {
    return asking.inquiry()
        .orElseThrow(
            () ->
                new Refusal(
                    Refusal.Reason.INVALID,
                    "finding",
                    "No finding is named.",
                    "Name one, such as \"gummy crumb\"."));
  }

  private static Refusal none(String what, int number, int most) {
    return new Refusal(
        Refusal.Reason.INVALID,
        what,
        "There is no " + what + " " + number + ".",
        most == 0
            ? "There is none of this finding."
            : most == 1 ? "There is one, number 1." : "They are numbered 1 to " + most + ".");
  }

  private Asking ask(Address address, CauseOrder order) {
    FindLevers.State state = FindLevers.state(desk, address);
    List<Baked> bakes = bakes(state);
    PlanSize size =
        Asked.read(
            "plan",
            () ->
                new PlanSize(
                    count("pieces", order.pieces()).orElse(PlanSize.USUAL_PIECES),
                    count("tray", order.tray()).orElseGet(() -> usualTray(state))));
    Optional<Inquiry> inquiry =
        Optional.ofNullable(order.finding())
            .filter(finding -> !finding.isBlank())
            .map(
                finding ->
                    Inquiry.of(finding, bakes, state.sheet().worksheet(), size, desk.units()));
    return new Asking(state, bakes, inquiry, size);
  }

  private static Optional<Integer> count(String where, String text) {
    if (text == null || text.isBlank()) {
      return Optional.empty();
    }
    if (!text.strip().matches("[0-9]{1,4}")) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          where,
          "The number of pieces \"" + text.strip() + "\" is not understood.",
          "Write a whole number, such as 2.");
    }
    return Optional.of(Integer.valueOf(text.strip()));
  }

  private static int usualTray(FindLevers.State state) {
    Quantity pieces = state.sheet().worksheet().pieces();
    return pieces.isKnown() && pieces.low() >= 1
        ? (int) Math.min(PlanSize.MOST_PER_TRAY, Math.round(pieces.low()))
        : USUAL_TRAY;
  }

  /** The bakes of a line of history up to a state, oldest first, each with its revision. */
  private List<Baked> bakes(FindLevers.State state) {
    String formula = state.line().formula();
    List<Bake> all = desk.notebook().bakes(formula);
    if (all.isEmpty() || desk.notebook().newestIfAny(state.line()).isEmpty()) {
      return List.of();
    }
    int fork =
        state.line().variant().isPresent() ? desk.notebook().forkNumber(state.line()) : 0;
    Map<String, Revision> byContent = new HashMap<>();
    Map<String, Revision> byAddress = new HashMap<>();
    for (Revision revision : desk.notebook().revisions(state.line())) {
      if (revision.number() <= state.number()) {
        byContent.putIfAbsent(revision.blob().hex(), revision);
        byAddress.put(address(state.line(), fork, revision).toString(), revision);
      }
    }
    List<Baked> bakes = new ArrayList<>();
    for (Bake bake : all) {
      Optional<Revision> revision =
          Optional.ofNullable(byAddress.get(bake.address()))
              .filter(each -> each.blob().hex().equals(bake.blob()))
              .or(() -> Optional.ofNullable(byContent.get(bake.blob())));
      revision.ifPresent(
          found -> bakes.add(baked(address(state.line(), fork, found), found, bake, all)));
    }
    bakes.sort(Comparator.comparing(baked -> baked.bake().time().toInstant()));
    return bakes;
  }

  /** Before its fork the line of a variant is the main line. */
  private static Address address(Address line, int fork, Revision revision) {
    return revision.number() > fork
        ? revision.address()
        : Address.latest(line.formula(), Optional.empty()).at(revision.number());
  }

  private Baked baked(Address address, Revision revision, Bake bake, List<Bake> all) {
    Desk.Sheet sheet = desk.sheet(address, revision, all);
    return new Baked(
        new Side(
            address.toString(),
            Optional.of(revision.time()),
            Optional.of(revision.note()),
            sheet.worksheet(),
            sheet.goal(),
            List.of(bake)));
  }
}
