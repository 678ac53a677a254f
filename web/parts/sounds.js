// Sounds for timers, made without any file. A browser lets a page sound only after it was touched.

import {preferences} from "/preferences.js";

// A pentatonic scale from C5, in hertz: tones of different pieces go together.
const SCALE = [523.25, 587.33, 659.25, 783.99, 880];
const MOST_BEEPS = 4;
const BEEP_S = 0.16;
const GAP_S = 0.14;
const LOUD = 0.35;

let context = null;

/** Whether sound is wanted. */
export function isWanted() {
  return (preferences().sound ?? "on") === "on";
}

/** Whether the browser would let this page sound now. */
export function isAllowed() {
  return context ? context.state === "running" : navigator.userActivation?.hasBeenActive ?? false;
}

/** Wakes the sound; to be called from a touch or a key. */
export async function allow() {
  context ??= make();
  await context?.resume();
}

function make() {
  const Sound = globalThis.AudioContext;
  return Sound ? new Sound() : null;
}

/** Sounds the pattern of a piece: its own pitch and its own number of beeps. */
export async function ring(place) {
  if (!isWanted() || !isAllowed()) {
    return;
  }
  await allow();
  if (!context || context.state !== "running") {
    return;
  }
  const pitch = SCALE[place % SCALE.length];
  const beeps = 1 + (place % MOST_BEEPS);
  for (let i = 0; i < beeps; i += 1) {
    beep(pitch, context.currentTime + i * (BEEP_S + GAP_S));
  }
}

function beep(pitch, at) {
  const tone = context.createOscillator();
  const volume = context.createGain();
  tone.frequency.value = pitch;
  volume.gain.setValueAtTime(0, at);
  volume.gain.linearRampToValueAtTime(LOUD, at + 0.01);
  volume.gain.linearRampToValueAtTime(0, at + BEEP_S);
  tone.connect(volume).connect(context.destination);
  tone.start(at);
  tone.stop(at + BEEP_S);
}
