import { type Chance, wholeBetween } from '@/core/design/chance.ts'

const steps = 2 ** 30

/** Independent standard normal draws from a stream of chance, by pairs (Box and Muller 1958; from memory). */
export function normalDraws(chance: Chance): () => number {
  let spare: number | null = null
  const uniform = () => (wholeBetween(chance, 1, steps) - 0.5) / steps
  return () => {
    if (spare !== null) {
      const draw = spare
      spare = null
      return draw
    }
    const radius = Math.sqrt(-2 * Math.log(uniform()))
    const angle = 2 * Math.PI * uniform()
    spare = radius * Math.sin(angle)
    return radius * Math.cos(angle)
  }
}
