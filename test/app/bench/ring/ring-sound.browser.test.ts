import { expect, test } from 'vitest'
import { ringSeconds, scheduleRing } from '@/app/bench/ring/ring-sound.ts'

const hertz = 48_000

async function rendered(): Promise<Float32Array> {
  const context = new OfflineAudioContext(1, Math.ceil(ringSeconds * hertz), hertz)
  scheduleRing(context, 0)
  return (await context.startRendering()).getChannelData(0)
}

/** Power of one frequency in the sound, by Goertzel's recurrence. */
function powerAt(sound: Float32Array, frequency: number): number {
  const turn = 2 * Math.cos((2 * Math.PI * frequency) / hertz)
  let [before, last] = [0, 0]
  for (const sample of sound) [before, last] = [last, sample + turn * last - before]
  return (last * last + before * before - turn * last * before) / sound.length ** 2
}

test('the ring is as loud as a device gives: near full scale at its peaks, at least -12 dB of it on average while it sounds', async () => {
  const sound = await rendered()
  const peak = sound.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0)
  expect(peak).toBeGreaterThan(0.7)
  expect(peak).toBeLessThanOrEqual(1)
  // Of the 1.7 s a stroke sounds in six times 0.18 s.
  const energy = sound.reduce((sum, sample) => sum + sample * sample, 0)
  const rms = Math.sqrt(energy / (6 * 0.18 * hertz))
  expect(20 * Math.log10(rms)).toBeGreaterThan(-12)
})

test('most of it lies where small loudspeakers and ears are good: above 900 Hz, with a part from 2 to 4 kHz', async () => {
  const sound = await rendered()
  const all = [988, 1976, 2960, 3952].map((each) => powerAt(sound, each))
  const low = [120, 250, 500].reduce((sum, each) => sum + powerAt(sound, each), 0)
  const total = all.reduce((sum, each) => sum + each, 0)
  expect(low / total).toBeLessThan(0.02)
  expect(((all[2] ?? 0) + (all[3] ?? 0)) / total).toBeGreaterThan(0.2)
})
