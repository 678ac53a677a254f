// Asks for the figures of what is typed, at every keystroke; an answer that comes too late is left.

import {Failure, order} from "/api.js";
import {baseAddress, change} from "/parts/edit-state.js";
import {massUnit} from "/format.js";

/** Asks for the figures; resolves with true when they were drawn. */
export async function figures(state) {
  state.asking?.abort();
  const mine = new AbortController();
  state.asking = mine;
  const weighed = state.weighed.map((key) => state.keys.lines.indexOf(key)).filter((at) => at >= 0);
  const question = {document: state.document, base: baseAddress(state), weighed};
  try {
    const sheet = await order("draft/figures", question, mine.signal);
    state.sheet = sheet;
    state.lost = null;
    state.places = new Map(sheet.places.map((place, at) => [place, at]));
  } catch (thrown) {
    if (mine.signal.aborted) {
      return false;
    }
    if (!(thrown instanceof Failure)) {
      throw thrown;
    }
    state.lost = thrown;
    if (thrown.reason === "silent") {
      clearTimeout(state.again);
      state.again = setTimeout(() => figures(state).then(() => state.redraw()), 2000);
    }
  }
  state.redraw();
  return true;
}

/** The line of the sheet for a line of the document; null when it is blank or not worked out. */
export function sheetLine(state, place) {
  const at = state.places?.get(place);
  return at === undefined ? null : state.sheet.sheet.lines[at];
}

/**
 * Wishes that a line weighs so much, is so much percent, or that the whole is scaled; the amounts
 * follow. Resolves with null, or with what was refused.
 */
export async function wish(state, field, {target, place = -1, value}) {
  state.wishing?.abort();
  const mine = new AbortController();
  state.wishing = mine;
  const grams = ["grams", "batch", "dough_per_piece"].includes(target);
  const bare = /^[\d.\s/]+$/.test(value);
  const question = {
    document: state.document,
    base: baseAddress(state),
    target,
    place,
    value: grams && bare ? `${value} ${massUnit()}` : value,
  };
  try {
    const answer = await order("draft/reweigh", question, mine.signal);
    change(state, field, (document) => write(document, answer));
    return null;
  } catch (thrown) {
    if (mine.signal.aborted) {
      return null;
    }
    if (!(thrown instanceof Failure)) {
      throw thrown;
    }
    return thrown;
  }
}

function write(document, answer) {
  answer.amounts.forEach(({place, amount}) => {
    document.lines[place].amount = amount;
  });
  if (answer.pieces !== null) {
    document.yield = {...document.yield, pieces: answer.pieces};
  }
  if (answer.dough_per_piece_g !== null) {
    document.yield = {...document.yield, dough_per_piece_g: answer.dough_per_piece_g};
  }
}
