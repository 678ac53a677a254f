package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.lever.Answer;
import io.ovenmark.lever.LeverSentences;
import io.ovenmark.lever.Levers;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import java.util.List;
import java.util.Optional;

/**
 * Finds what to change so that figures come to wanted values, and turns an answer into a revision
 * or into a draft. A change concerns the next revision, so everything is worked out with the foods
 * of today.
 *
 * <pre>{@code
 * FindLevers verb = new FindLevers(desk);
 * LeverOrder order = LeverOrder.of("liquid ratio 0.80");
 * LeverViews.LeverSheet sheet = verb.call(address, order);
 * verb.apply(address, order, 1, Optional.empty(), by);
 * }</pre>
 */
public final class FindLevers {
  private final Desk desk;

  /**
   * What was asked about and the answers.
   *
   * @param state the formula's state
   * @param order what was asked
   * @param levers the answers
   */
  record Found(State state, LeverQuestion order, Levers levers) {}

  /**
   * A state of a formula, worked out with the foods of today.
   *
   * @param shown its address
   * @param line the line of history
   * @param revision the revision; empty for a file edited by hand
   * @param number its number, or the one that it would get
   * @param sheet worked out
   * @param foodsDiffer whether the revision itself rests on other foods
   */
  record State(
      Address shown,
      Address line,
      Optional<Revision> revision,
      int number,
      Desk.Sheet sheet,
      boolean foodsDiffer) {}

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public FindLevers(Desk desk) {
    this.desk = desk;
  }

  /**
   * Finds the answers.
   *
   * @param address which state
   * @param order what is asked
   * @return the answers, or why there are none
   * @throws Refusal when there is no such state, or the question cannot be answered
   */
  public LeverViews.LeverSheet call(Address address, LeverOrder order) {
    return new LeverSheetMaker(desk, find(address, order)).sheet();
  }

  /**
   * The formula that an answer makes, as a document for a draft.
   *
   * @param address which state
   * @param order what is asked
   * @param number the answer's number
   * @return the formula's JSON, with what is to be weighed
   * @throws Refusal when there is no answer of that number
   */
  public JsonText document(Address address, LeverOrder order, int number) {
    Answer answer = answer(find(address, order), number);
    return JsonText.of(FormulaCodec.write(answer.weighed().formula()));
  }

  /**
   * Begins a draft from an answer, with the note that is proposed.
   *
   * @param address which state
   * @param order what is asked
   * @param number the answer's number
   * @param seen the note that was proposed with the answer as it was shown; empty to take it as it
   *     is now
   * @param by who, and when
   * @return the draft
   * @throws Refusal when there is no answer of that number, or it says something else by now
   */
  public DraftViews.DraftView draft(
      Address address, LeverOrder order, int number, Optional<String> seen, By by) {
    Found found = find(address, order);
    Answer answer = answer(found, number);
    String note = LeverSentences.note(found.levers(), answer);
    if (seen.isPresent() && !seen.get().equals(note)) {
      throw new Refusal(
          Refusal.Reason.CONFLICT,
          address.toString(),
          "The formula or its foods changed since these answers were shown: answer " + number
              + " is now “" + note + "”.",
          "Look at the answers again and choose one.");
    }
    JsonText document = JsonText.of(FormulaCodec.write(answer.weighed().formula()));
    KeepDrafts drafts = new KeepDrafts(desk);
    DraftViews.DraftView begun =
        drafts.begin(
            Optional.of(document), Optional.of(found.state().shown().toString()), by);
    KeepDrafts.Typed typed = new KeepDrafts.Typed(document, "", note);
    drafts.keep(begun.id(), begun.version(), typed, by);
    return drafts.show(begun.id());
  }

  /**
   * Commits an answer as the next revision.
   *
   * @param address the revision that was asked about, the newest of its line of history
   * @param order what was asked
   * @param number the answer's number
   * @param note why; empty for the note that is proposed
   * @param by who, and when
   * @return what was committed
   * @throws Refusal when there is no answer of that number, or when a newer revision came since
   */
  public WriteViews.RevisionWritten apply(
      Address address, LeverOrder order, int number, Optional<String> note, By by) {
    Found found = find(address, order);
    Answer answer = answer(found, number);
    Revision base = newestOf(desk, found.state(), address);
    ReviseFormula.Proposal proposal =
        new ReviseFormula.Proposal(
            found.state().line(),
            Optional.of(base),
            answer.weighed().formula(),
            Optional.empty());
    String why = note.orElseGet(() -> LeverSentences.note(found.levers(), answer));
    return new ReviseFormula(desk).call(proposal, why, Choices.NONE, by);
  }

  private static Answer answer(Found found, int number) {
    List<Answer> answers = found.levers().answers();
    return found.levers().answer(number)
        .orElseThrow(
            () ->
                new Refusal(
                    Refusal.Reason.INVALID,
                    "answer",
                    "There is no answer " + number + ".",
                    answers.isEmpty()
                        ? "There is nothing to change, or it cannot be done; ask without a number"
                            + " to see why."
                        : answers.size() == 1
                            ? "There is one answer, number 1."
                            : "The answers are numbered 1 to " + answers.size() + "."));
  }

  private Found find(Address address, LeverOrder order) {
    State state = state(desk, address);
    LeverQuestion question = LeverQuestion.read(order, state.sheet(), desk.units());
    Levers levers =
        Asked.read(
            "question",
            () ->
                Levers.of(
                    state.sheet().worksheet(),
                    question.question(),
                    question.reading(),
                    desk.units()));
    return new Found(state, question, levers);
  }

  /**
   * The revision that answers are about, if it is the newest of its line still.
   *
   * @throws Refusal when it is a file edited by hand, or another revision came since
   */
  static Revision newestOf(Desk desk, State state, Address address) {
    Revision base =
        state
            .revision()
            .orElseThrow(
                () ->
                    new Refusal(
                        Refusal.Reason.INVALID,
                        address.toString(),
                        "The file edited by hand is not a revision yet.",
                        "Commit it first with: ovenmark revise " + address.formula()));
    Revision newest = desk.notebook().newest(state.line());
    if (newest.number() != base.number()) {
      throw new Refusal(
          Refusal.Reason.CONFLICT,
          base.address().toString(),
          "The answers are about " + base.address() + ", but " + newest.address() + " by "
              + newest.author().name() + " (“" + newest.note() + "”) came since.",
          "Ask again about " + newest.address() + ".");
    }
    return base;
  }

  /** A state with the foods of today. */
  static State state(Desk desk, Address address) {
    List<Bake> bakes = desk.notebook().bakes(address.formula());
    if (address.point().kind() == Address.Point.Kind.EDITED) {
      ShowFormula.Edited edited = ShowFormula.read(desk, address);
      Desk.Sheet sheet =
          desk.draft(edited.formula(), edited.line(), Desk.bakesOf(edited.blob(), bakes));
      return new State(
          new Address(address.formula(), edited.line().variant(), Address.Point.EDITED),
          edited.line(),
          Optional.empty(),
          desk.notebook().nextNumber(edited.line()),
          sheet,
          false);
    }
    Revision revision = desk.notebook().revision(address);
    Address line = WriteParts.line(revision.address());
    Formula formula = desk.notebook().formula(revision);
    Desk.Sheet sheet =
        desk.draft(formula, line, Desk.bakesOf(revision.blob().hex(), bakes));
    return new State(
        revision.address(),
        line,
        Optional.of(revision),
        revision.number(),
        sheet,
        desk.restsOnOtherFoods(line, revision));
  }
}
