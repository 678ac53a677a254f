// Timers of pieces as they are kept in the document of a bake. All times are points in time, in
// milliseconds, so that a timer runs on while its page is closed:
//   planned  how long it shall bake, or null to count upwards only
//   done     how long it baked before the present run
//   since    when the present run began, or null while it stands still
//   out      whether it was taken out
//   touched  when somebody changed it last

const MINUTE_MS = 60_000;
const SECOND_MS = 1000;
const LOUD_MS = 10 * MINUTE_MS;

/** Starts a timer. */
export function started(minutes, now) {
  const planned = minutes === null ? null : Math.round(minutes * MINUTE_MS);
  return {planned, done: 0, since: now, out: false, touched: now};
}

/** Halts it, or lets it go on. */
export function pausedOrNot(timer, now) {
  return timer.since === null
    ? {...timer, since: now, out: false, touched: now}
    : {...timer, done: elapsed(timer, now), since: null, touched: now};
}

/** One minute more. */
export function withMinute(timer, now) {
  return {...timer, planned: (timer.planned ?? elapsed(timer, now)) + MINUTE_MS, touched: now};
}

/** Taken out of the oven. */
export function takenOut(timer, now) {
  return {...timer, done: elapsed(timer, now), since: null, out: true, touched: now};
}

/** How long it has been in the oven. */
export function elapsed(timer, now) {
  return timer.done + (timer.since === null ? 0 : Math.max(0, now - timer.since));
}

/** How long is left, negative when it should be out; null when it counts upwards only. */
export function left(timer, now) {
  return timer.planned === null ? null : timer.planned - elapsed(timer, now);
}

/** Whether it must be taken out. */
export function isDue(timer, now) {
  return !timer.out && timer.since !== null && timer.planned !== null && left(timer, now) <= 0;
}

/** Whether it is in the oven and runs. */
export function isRunning(timer) {
  return timer.since !== null;
}

/** Whether it shall sound: due, and not forgotten long ago. */
export function isLoud(timer, now) {
  return isDue(timer, now) && left(timer, now) > -LOUD_MS;
}

/** When it will be due; null when that cannot be told. */
export function dueAt(timer) {
  return timer.since === null || timer.planned === null
    ? null
    : timer.since + timer.planned - timer.done;
}

/** The big figures: 13:42, 1:02:00, or with a plus what it is over. */
export function clock(milliseconds) {
  const all = Math.ceil(Math.abs(milliseconds) / SECOND_MS);
  const seconds = milliseconds < 0 ? Math.floor(-milliseconds / SECOND_MS) : all;
  const two = (value) => String(value).padStart(2, "0");
  const hours = Math.floor(seconds / 3600);
  const minutes = Math.floor(seconds / 60) % 60;
  const text = hours > 0
    ? `${hours}:${two(minutes)}:${two(seconds % 60)}`
    : `${minutes}:${two(seconds % 60)}`;
  return milliseconds < 0 && seconds > 0 ? `+${text}` : text;
}

/** How long ago it was due, in words. */
export function overdue(timer, now) {
  const minutes = Math.floor(-left(timer, now) / MINUTE_MS);
  if (minutes < 1) {
    return "now";
  }
  const hours = Math.floor(minutes / 60);
  return hours > 0 ? `was due ${hours} h ${minutes % 60} min ago` : `was due ${minutes} min ago`;
}

/** The pieces of a document that have a timer, with their place among all pieces. */
export function timed(document) {
  return document.form.pieces
    .map((piece, place) => ({piece, place, timer: document.timers?.[piece.key] ?? null}))
    .filter((each) => each.timer);
}

/** What to do now, in one sentence; empty when nothing is due. */
export function dueSentence(document, now) {
  const due = timed(document).filter((each) => isDue(each.timer, now));
  const letters = due.map((each) => each.piece.id || "?");
  if (letters.length === 0) {
    return "";
  }
  const last = letters.pop();
  return `${letters.length > 0 ? `${letters.join(", ")} and ${last}` : last}: take out`;
}

/** For the window's title: what is due, else the time left of the next; empty without a timer. */
export function titleOf(document, now) {
  const due = dueSentence(document, now);
  if (due) {
    return due;
  }
  const next = timed(document)
    .filter((each) => dueAt(each.timer) !== null)
    .sort((one, other) => dueAt(one.timer) - dueAt(other.timer))[0];
  return next ? `${next.piece.id} ${clock(left(next.timer, now))}` : "";
}
