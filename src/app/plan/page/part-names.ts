/** The parts of the page that open and shut: their id in the page, and what of the plan and which fields stand in each. */
const planParts = [
  { id: 'plan-question', title: 'The question', leads: ['/question', 'question'] },
  {
    id: 'plan-factor',
    title: 'What changes',
    leads: ['/factor', '/doughs', 'factor/'],
  },
  { id: 'plan-levels', title: 'Levels', leads: ['/levels', 'level/'] },
  { id: 'plan-main', title: 'What decides', leads: ['/mainResponseId'] },
  { id: 'plan-expectation', title: 'What we expect', leads: ['/expectation', 'expectation/'] },
  {
    id: 'plan-hoped',
    title: 'What we hope',
    leads: ['/writtenFirst/hopedLevelId', '/writtenFirst/againstUsual'],
  },
  {
    id: 'plan-formula',
    title: 'Formula',
    leads: ['/formula', 'ingredient/', 'preferment/', 'batch/'],
  },
  { id: 'plan-sheet', title: 'Weigh sheet', leads: ['plan-sheet'] },
  { id: 'plan-method', title: 'Steps of the method', leads: ['/steps', 'step/'] },
  { id: 'plan-clock', title: 'The day, by the clock', leads: ['plan-clock'] },
  {
    id: 'plan-pieces',
    title: 'Pieces and flights',
    leads: [
      ...['/flights', '/pieces', '/serving', '/sparePieces', '/placesPerLoad', '/warmUpPiece'],
      ...['flights', 'places', 'spares', 'servingRule'],
    ],
  },
  { id: 'plan-responses', title: 'Responses', leads: ['/responses', 'response/'] },
  {
    id: 'plan-tasters',
    title: 'At the table',
    leads: ['/tasters', '/tellApart', '/atTable', '/keyKeptBy', 'tell-apart/', 'ranking/'],
  },
  {
    id: 'plan-sessions',
    title: 'Sessions',
    leads: [
      '/plannedSessions',
      '/pairsOfHands',
      '/writtenFirst',
      'sessions',
      'hands',
      'most-sessions',
    ],
  },
  { id: 'plan-kitchen', title: 'Kitchen', leads: ['/kitchenIds'] },
  {
    id: 'plan-temperatures',
    title: 'Water and warmth',
    leads: ['/temperature', 'temperature/', 'plan-water'],
  },
  { id: 'plan-fairness', title: 'Fairness', leads: ['plan-fairness'] },
  { id: 'plan-detect', title: 'What it could show', leads: ['plan-detect'] },
  { id: 'plan-day', title: 'The day', leads: ['plan-day'] },
  { id: 'plan-paper', title: 'On paper', leads: ['plan-paper'] },
] as const satisfies readonly { id: string; title: string; leads: readonly string[] }[]

export type PlanPartId = (typeof planParts)[number]['id']

const titles = new Map<string, string>(planParts.map(({ id, title }) => [id, title]))

export function partTitle(id: PlanPartId): string {
  return titles.get(id) ?? ''
}

/** The part in which a place of the plan (JSON Pointer), a field (its name) or a part itself (its id) stands; null for none that opens. */
export function partOf(to: string): PlanPartId | null {
  const found = planParts.find(
    ({ id, leads }) =>
      id === to ||
      leads.some((lead) => to === lead || to.startsWith(lead.endsWith('/') ? lead : `${lead}/`)),
  )
  return found?.id ?? null
}
