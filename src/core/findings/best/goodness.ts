import type { Better } from '@/core/trial/response.ts'

/** How good an answer is, so that more is better: turned round where lower is better, the nearness to a target, else itself. */
export function goodness(value: number, better: Better): number {
  switch (better.is) {
    case 'lower':
      return -value
    case 'target':
      return -Math.abs(value - better.at)
    default:
      return value
  }
}
