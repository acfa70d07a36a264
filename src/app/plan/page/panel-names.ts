/** What follows from the plan, from top to bottom, by the element each stands in. */
export const planPanels = [
  { id: 'plan-ready', title: 'Begin' },
  { id: 'plan-weigh-sheet', title: 'Weigh sheet' },
  { id: 'plan-water', title: 'Water' },
  { id: 'plan-fairness', title: 'Fairness check' },
  { id: 'plan-detect', title: 'What it could show' },
  { id: 'plan-day', title: 'The day' },
  { id: 'plan-paper', title: 'On paper' },
] as const
