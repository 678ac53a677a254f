// A bake that is being typed on a page: its document, who keeps it, and what it comes to.

import {Failure, order} from "/api.js";
import {formOf, removePiece} from "/parts/bake-document.js";
import {Keeper, attend, leave} from "/parts/bake-keeper.js";
import {notice} from "/parts/notices.js";

const PAUSE_MS = 60;

/** The state of a form of a bake, and what changes it. */
export class Typing {
  /**
   * document is what is typed; kept what the keeper found, or null; slot where new work is kept;
   * begun is called with the draft's id once it has one; setting holds what first steps begin with.
   */
  constructor({document, words, kept, slot, begun, setting, fixedLetters}) {
    this.document = document;
    this.words = words;
    this.setting = setting ?? null;
    this.fixedLetters = fixedLetters ?? null;
    this.figures = null;
    this.problems = new Map();
    this.group = "oven";
    this.chosen = document.form.pieces[0]?.key ?? null;
    this.redraw = () => {};
    this.failure = null;
    this.keeper = new Keeper({
      slot,
      kept,
      document,
      begun,
      changed: (anew) => {
        if (anew) {
          this.work();
        }
        this.redraw();
      },
    });
    attend(this.keeper);
    this.work();
  }

  /** Something was changed. */
  touched() {
    this.failure = null;
    this.keeper.touch();
    this.work();
    this.redraw();
  }

  /** Asks what it comes to, soon. */
  work() {
    this.stale = true;
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.workNow(), PAUSE_MS);
  }

  /** Asks what it comes to, now; resolves when it is there or could not be had. */
  async workNow() {
    clearTimeout(this.timer);
    this.asking?.abort();
    const mine = new AbortController();
    this.asking = mine;
    const {address, formula, bake, base} = this.document;
    try {
      const form = formOf(this.document);
      this.figures = await order("bake/figures", {address, formula, bake, base, form}, mine.signal);
      this.stale = false;
      this.problems = new Map(
        this.figures.problems.map((each) => [each.field, `${each.sentence} ${each.hint}`]),
      );
    } catch (thrown) {
      if (mine.signal.aborted) {
        return;
      }
      if (!(thrown instanceof Failure)) {
        throw thrown;
      }
      if (thrown.reason !== "silent") {
        this.figures = null;
      }
    }
    this.redraw();
  }

  /** The piece that is looked at; null when there is none. */
  piece() {
    const {pieces} = this.document.form;
    return pieces.find((each) => each.key === this.chosen) ?? pieces[0] ?? null;
  }

  /** Resolves when the figures are those of what is typed, or could not be had. */
  async fresh() {
    if (this.stale) {
      await this.workNow();
    }
  }

  /** The time of a piece in minutes as the server understood it; null for none. */
  minutesOf(piece) {
    const id = piece.id.trim().toLowerCase();
    const known = this.stale ? null : this.figures?.pieces.find((each) => each.id === id);
    // When the viewer does not answer, a plain number still means minutes.
    const plain = /^\d+(\.\d+)?$/.test(piece.minutes.trim()) ? Number(piece.minutes) : null;
    return known?.minutes ?? plain;
  }

  /** Takes a piece away, with a way back. */
  remove(key) {
    const {pieces} = this.document.form;
    const piece = pieces.find((each) => each.key === key);
    const back = removePiece(this.document, key);
    this.touched();
    notice({
      text: `Piece ${piece.id} was taken away.`,
      act: [
        "Bring it back",
        () => {
          back();
          this.touched();
          notice({text: `Piece ${piece.id} is back.`});
        },
      ],
    });
  }

  /** Everything that was typed is done with. */
  end() {
    clearTimeout(this.timer);
    this.asking?.abort();
    this.keeper.forget();
    leave(this.keeper);
  }

  /** The page is left; what was typed is kept. */
  left() {
    this.redraw = () => {};
    leave(this.keeper);
    this.keeper.save();
  }
}
