import type { Response } from '@/core/trial/response.ts'

const nine = (low: string, high: string, middle?: string): Response['scale'] => ({
  kind: 'nine-point',
  anchors: [
    { at: 1, text: low },
    ...(middle === undefined ? [] : [{ at: 5, text: middle }]),
    { at: 9, text: high },
  ],
})

const tasted = { by: 'taster', about: 'serving' } as const

/** The responses that the samples ask for; the words of the liking scale are those of the nine-point hedonic scale (1955). */
export const sampleResponses = {
  liking: {
    ...tasted,
    name: 'Liking',
    scale: nine('dislike extremely', 'like extremely', 'neither like nor dislike'),
    better: { is: 'higher' },
    margin: 1,
  },
  crispness: {
    ...tasted,
    name: 'Crispness',
    scale: nine('soft', 'shatters'),
    better: { is: 'higher' },
    margin: 1,
  },
  openness: {
    ...tasted,
    name: 'Openness of crumb',
    scale: nine('tight', 'very open'),
    better: { is: 'neither' },
    margin: 1,
  },
  saltiness: {
    ...tasted,
    name: 'Saltiness',
    scale: { kind: 'just-about-right', low: 'much too bland', high: 'much too salty' },
    better: { is: 'target', at: 3 },
    margin: 0.5,
  },
  stickiness: {
    name: 'Stickiness at the bench',
    by: 'baker',
    about: 'batch',
    scale: nine('comes off clean', 'sticks to everything'),
    better: { is: 'lower' },
    margin: 1,
  },
  bakeLoss: {
    name: 'Bake loss',
    by: 'baker',
    about: 'piece',
    scale: { kind: 'measured', unitOfMeasure: '%', measure: 'bake-loss' },
    better: { is: 'neither' },
    margin: 1,
  },
} as const satisfies Record<string, Omit<Response, 'id'>>
