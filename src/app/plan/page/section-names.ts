/** The parts of the page from top to bottom; `path` is where their part of the plan stands. */
export const planSections = [
  { id: 'plan-question', title: 'The question', path: '/question' },
  { id: 'plan-factor', title: 'What changes', path: '/factor' },
  { id: 'plan-levels', title: 'Levels', path: '/levels' },
  { id: 'plan-formula', title: 'Formula', path: '/formula' },
  { id: 'plan-pieces', title: 'Pieces and flights', path: '/flights' },
  { id: 'plan-method', title: 'Method', path: '/steps' },
  { id: 'plan-responses', title: 'Responses', path: '/responses' },
  { id: 'plan-tasters', title: 'Tasters', path: '/tasters' },
  { id: 'plan-sessions', title: 'Sessions', path: '/plannedSessions' },
  { id: 'plan-kitchen', title: 'Kitchen', path: '/kitchenIds' },
  { id: 'plan-temperatures', title: 'Temperatures', path: '/temperature' },
] as const

export type PlanSectionId = (typeof planSections)[number]['id']
