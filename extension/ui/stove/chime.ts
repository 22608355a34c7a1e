/** The sound of a timer: three soft strokes, made on the spot so that no file is loaded. */

/** Hertz, and seconds from stroke to stroke. Own choice. */
const PITCH = 880;
const APART_S = 0.45;
const STROKES = 3;

let context: AudioContext | null = null;

/** To be called when a button is pressed: browsers let a page sound only after that. */
export function readyChime(): void {
  try {
    context ??= new AudioContext();
    void context.resume();
  } catch {
    // A device without sound still shows the timer.
  }
}

function stroke(sound: AudioContext, at: number): void {
  const tone = sound.createOscillator();
  const volume = sound.createGain();
  tone.frequency.value = PITCH;
  volume.gain.setValueAtTime(0.4, at);
  volume.gain.exponentialRampToValueAtTime(0.001, at + APART_S);
  tone.connect(volume).connect(sound.destination);
  tone.start(at);
  tone.stop(at + APART_S);
}

export function chime(): void {
  readyChime();
  if (!context) return;
  for (let n = 0; n < STROKES; n++) stroke(context, context.currentTime + n * APART_S);
}
