/** Sound and shaking of the bench. Browsers stay silent until the page was pressed once. */

let speaker: AudioContext | null = null;

/** Call it from a press: from then on the alarm can sound. */
export function unlockAlarm(): void {
  if (typeof AudioContext === 'undefined') return;
  try {
    speaker ??= new AudioContext();
    // Where it is refused, words and shaking are left.
    void speaker.resume().catch(() => {});
  } catch {
    // No sound on this device.
  }
}

/** Beeps, their pitch in Hz and the pattern of shaking in ms: heard over a fan, and told apart with the eyes on the work. */
const TONES = {
  soft: { pitch: 880, beeps: 2, shake: [200, 100, 200] },
  loud: { pitch: 1320, beeps: 5, shake: [500, 150, 500, 150, 500] },
} as const;

/** s */
const BEEP = 0.22;
const PAUSE = 0.13;
/** Softens the start and the end of a beep, which would crack otherwise, s. */
const RAMP = 0.01;
const VOLUME = 0.6;

/** Sounds, unless muted, and shakes the device where it can. */
export function soundAlarm(tone: keyof typeof TONES, isMuted: boolean): void {
  const { pitch, beeps, shake } = TONES[tone];
  shakeDevice(shake);
  if (isMuted || speaker === null || speaker.state !== 'running') return;
  for (let i = 0; i < beeps; i++) beep(speaker, pitch, speaker.currentTime + i * (BEEP + PAUSE));
}

function beep(on: AudioContext, pitch: number, start: number): void {
  const wave = on.createOscillator();
  const volume = on.createGain();
  wave.type = 'square';
  wave.frequency.value = pitch;
  volume.gain.setValueAtTime(0, start);
  volume.gain.linearRampToValueAtTime(VOLUME, start + RAMP);
  volume.gain.setValueAtTime(VOLUME, start + BEEP - RAMP);
  volume.gain.linearRampToValueAtTime(0, start + BEEP);
  wave.connect(volume).connect(on.destination);
  wave.start(start);
  wave.stop(start + BEEP);
}

function shakeDevice(pattern: readonly number[]): void {
  const device = navigator as { vibrate?: (pattern: number[]) => boolean };
  device.vibrate?.([...pattern]);
}
