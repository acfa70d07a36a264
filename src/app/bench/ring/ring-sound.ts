/** One stroke of the ring: two tones, each with its upper partials, that a small loudspeaker gives back well. */
const strokes = [0, 0.22, 0.44, 1.0, 1.22, 1.44]
const strokeSeconds = 0.18
/**
 * Partials in Hz with their share of the amplitude. Common practice of alarms, from memory: the ear is keenest from 2 to 4 kHz,
 * and loudspeakers of phones give little below 600 Hz; a lower one is there for ears that have lost the high ones.
 */
const partials = [
  { hertz: 988, share: 0.34 },
  { hertz: 1976, share: 0.3 },
  { hertz: 2960, share: 0.26 },
  { hertz: 3952, share: 0.1 },
]

/** How long one ring sounds, in seconds. */
export const ringSeconds = 1.7

/** Schedules one ring at a moment of the context's own clock (seconds); gives what takes it back. */
export function scheduleRing(context: BaseAudioContext, at: number): () => void {
  const gain = context.createGain()
  gain.gain.setValueAtTime(0, at)
  for (const offset of strokes) {
    const from = at + offset
    gain.gain.setValueAtTime(0, from)
    gain.gain.linearRampToValueAtTime(0.98, from + 0.006)
    gain.gain.setValueAtTime(0.98, from + strokeSeconds - 0.02)
    gain.gain.linearRampToValueAtTime(0, from + strokeSeconds)
  }
  gain.connect(context.destination)
  const tones = partials.map(({ hertz, share }) => {
    const tone = context.createOscillator()
    const part = context.createGain()
    tone.frequency.value = hertz
    part.gain.value = share
    tone.connect(part).connect(gain)
    tone.start(at)
    tone.stop(at + ringSeconds)
    return tone
  })
  return () => {
    for (const tone of tones) tone.stop(0)
    gain.disconnect()
  }
}
