import { normalDensity, normalLower } from './normal.ts'

const reach = 8.75
/** Where φ(z) and Φ(z − w) both fall, they are nothing this soon. */
const reachLeft = 6.5

/** Points on the normal's axis with density and share below, for the trapezoid rule; made when first asked for. */
function gridOf(step: number, end: number) {
  const made = () => {
    const z = Float64Array.from(
      { length: Math.ceil((end + reach) / step) + 1 },
      (_, i) => i * step - reach,
    )
    return { step, z, density: z.map(normalDensity), share: z.map(normalLower) }
  }
  let known: ReturnType<typeof made> | undefined
  return () => {
    known ??= made()
    return known
  }
}

const wide = gridOf(0.25, 45)
const fine = gridOf(0.125, reach)

/**
 * Chance that the range of k independent standard normals exceeds w.
 *
 * With a = Φ(z) and b = Φ(z − w) this is k∫φ(z)[a^{k−1} − (a − b)^{k−1}]dz (the textbook integral, e.g. Hartley 1942,
 * Biometrika 32:309; from memory). The bracket is expanded as b·Σ a^{k−2−i}(a − b)^i, all positive, so that a far tail keeps
 * its relative precision. Trapezoid rule, exponentially exact here.
 */
export function normalRangeUpper(w: number, k: number): number {
  const { step, z, density, share } = wide()
  const end = Math.min(z.length - 1, Math.ceil((w / 2 + 2 * reach) / step))
  const start = Math.floor((w / 2 - reachLeft + reach) / step)
  let total = 0
  for (let i = start; i <= end; i += 1) {
    const a = share[i] as number
    const b = normalLower((z[i] as number) - w)
    const inside = Math.max(0, a - b)
    let power = 1
    let sum = 0
    for (let j = 1; j < k; j += 1) {
      sum = sum * a + power
      power *= inside
    }
    total += (density[i] as number) * b * sum
  }
  return k * step * total
}

/** Chance that the range of k independent standard normals stays below w: k∫φ(z)[Φ(z) − Φ(z − w)]^{k−1}dz. */
export function normalRangeLower(w: number, k: number): number {
  const { step, z, density, share } = fine()
  let total = 0
  for (let i = 0; i < z.length; i += 1) {
    const at = z[i] as number
    const inside =
      at > w / 2
        ? normalLower(w - at) - normalLower(-at)
        : (share[i] as number) - normalLower(at - w)
    total += (density[i] as number) * inside ** (k - 1)
  }
  return k * step * total
}
