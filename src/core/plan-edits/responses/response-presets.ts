import type { Response } from '@/core/trial/response.ts'

/** A response without its id. */
export type ResponsePreset = Omit<Response, 'id'>

const rating = (low: string, middle: string | null, high: string): Response['scale'] => ({
  kind: 'nine-point',
  anchors: [
    { at: 1, text: low },
    ...(middle === null ? [] : [{ at: 5, text: middle }]),
    { at: 9, text: high },
  ],
})

/** A strength that is neither good nor bad by itself: asked of each serving, with its meaning under the question. */
const attribute = (
  name: string,
  definition: string,
  low: string,
  high: string,
): ResponsePreset => ({
  ...{ name, definition, by: 'taster', about: 'serving', margin: 1 },
  scale: rating(low, null, high),
  better: { is: 'neither' },
})

/** The nine points of liking: Peryam and Pilgrim 1957, Food Technology 11(9), from memory. */
const likingPoints = [
  'dislike extremely',
  'dislike very much',
  'dislike moderately',
  'dislike slightly',
  'neither like nor dislike',
  'like slightly',
  'like moderately',
  'like very much',
  'like extremely',
] as const

/** Responses that most dough trials ask for, ready to be changed. Margins are a start, not a rule (common practice). */
export const responsePresets: readonly ResponsePreset[] = [
  {
    name: 'Liking',
    by: 'taster',
    about: 'serving',
    scale: {
      kind: 'nine-point',
      anchors: likingPoints.map((text, index) => ({ at: index + 1, text })),
    },
    better: { is: 'higher' },
    margin: 1,
  },
  {
    name: 'Crispness',
    definition: 'how loudly and how readily the crust breaks at the first bite',
    by: 'taster',
    about: 'serving',
    scale: rating('soft', null, 'very crisp'),
    better: { is: 'higher' },
    margin: 1,
  },
  {
    name: 'Openness of crumb',
    definition: 'how large and uneven the holes of the cut face are',
    by: 'taster',
    about: 'serving',
    scale: rating('tight', null, 'very open'),
    better: { is: 'neither' },
    margin: 1,
  },
  {
    name: 'Saltiness',
    by: 'taster',
    about: 'serving',
    scale: { kind: 'just-about-right', low: 'much too bland', high: 'much too salty' },
    better: { is: 'target', at: 3 },
    margin: 0.5,
  },
  attribute('Chew', 'how much work it takes before it can be swallowed', 'tender', 'very chewy'),
  attribute(
    'Gumminess',
    'how far the crumb balls together and clings to the teeth',
    'not gummy',
    'very gummy',
  ),
  attribute(
    'Crust colour',
    'from the palest to the darkest part that is not burnt',
    'pale',
    'very dark',
  ),
  attribute('Charring', 'black spots or edges, and the bitterness of them', 'none', 'a great deal'),
  attribute(
    'Flavour',
    'how strong the taste of grain and ferment is, whether liked or not',
    'bland',
    'very strong',
  ),
  attribute(
    'Aroma',
    'how strong the smell is when it is held to the nose, before a bite',
    'hardly any',
    'very strong',
  ),
  {
    name: 'Stickiness at the bench',
    by: 'baker',
    about: 'batch',
    scale: rating('comes off clean', null, 'sticks to everything'),
    better: { is: 'lower' },
    margin: 1,
  },
  {
    name: 'Bake loss',
    by: 'baker',
    about: 'piece',
    scale: { kind: 'measured', unitOfMeasure: '%', measure: 'bake-loss' },
    better: { is: 'neither' },
    margin: 1,
  },
  {
    name: 'Rise',
    by: 'baker',
    about: 'batch',
    scale: { kind: 'measured', unitOfMeasure: '%', measure: 'rise' },
    better: { is: 'neither' },
    margin: 10,
  },
]

/** A response of the baker's own: by tasters, on a nine-point scale, the higher the better. */
export function ownResponse(id: string): Response {
  return {
    id,
    name: 'New response',
    by: 'taster',
    about: 'serving',
    scale: rating('not at all', null, 'extremely'),
    better: { is: 'higher' },
    margin: 1,
  }
}
