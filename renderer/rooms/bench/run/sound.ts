import { ref } from "vue";

const storageKey = "flocwright-sound";
/** Whether timers may be heard; remembered on this machine. */
export const soundOn = ref(localStorage.getItem(storageKey) !== "off");

export function switchSound(): void {
  soundOn.value = !soundOn.value;
  localStorage.setItem(storageKey, soundOn.value ? "on" : "off");
  if (soundOn.value) signal("end");
}

let context: AudioContext | null = null;

/** Two rising tones when a time is up, one short tone for a lap. Silent where sound is off or there is none. */
export function signal(kind: "end" | "lap"): void {
  if (!soundOn.value || typeof AudioContext === "undefined") return;
  context ??= new AudioContext();
  const tones = kind === "end" ? [660, 990] : [880];
  for (const [i, hertz] of tones.entries()) {
    const oscillator = context.createOscillator();
    const volume = context.createGain();
    const at = context.currentTime + i * 0.22;
    oscillator.frequency.value = hertz;
    volume.gain.setValueAtTime(0.25, at);
    volume.gain.exponentialRampToValueAtTime(0.001, at + 0.2);
    oscillator.connect(volume).connect(context.destination);
    oscillator.start(at);
    oscillator.stop(at + 0.22);
  }
}
