/** Whether what the baker expected was borne out. */
export type ExpectationOutcome = 'held' | 'not-held' | 'not-settled' | 'none'

export type NextStepName = 'adopt' | 'confirm' | 'narrow' | 'repeat' | 'mend'

const outcomes: Record<ExpectationOutcome, string> = {
  held: 'What you expected was borne out.',
  'not-held': 'What you expected was not borne out.',
  'not-settled': 'Whether what you expected holds is not settled.',
  none: 'No expectation was written down before the first mix, so none can be held against the data.',
}

const steps: Record<NextStepName, { title: string; text: string }> = {
  adopt: {
    title: 'Adopt it',
    text: 'Make it the house formula; the next trial can start from there.',
  },
  confirm: {
    title: 'Confirm it',
    text: 'Make the winner and the control again, blind, before you trust it: the best of several looks better than it is.',
  },
  narrow: {
    title: 'Narrow the range',
    text: 'Half the span around the best, with the control kept.',
  },
  repeat: {
    title: 'Repeat it',
    text: 'The same plan once more; more sessions are what the answer lacks.',
  },
  mend: {
    title: 'Mend the fairness items first',
    text: 'Something else changed along with the factor by more than is fair; the same plan without it would tell more.',
  },
}

/** Whether the expectation was borne out, in one sentence; also said where none was written down. */
export function expectationOutcomeText(outcome: ExpectationOutcome): string {
  return outcomes[outcome]
}

/** What to do next: a title for the button and a sentence that says why. */
export function nextStepText(step: NextStepName): { title: string; text: string } {
  return steps[step]
}
