import type { Plan } from '@/core/trial/plan-record.ts'

/** What a tell-apart set asks of a taster, whatever the factor is. */
export const tellApartAsks: Record<NonNullable<Plan['tellApart']>['test'], string> = {
  triangle: 'Two of these are alike. Which one is different?',
  'duo-trio': 'Which of the last two is like the first?',
  paired: 'Which of the two has more of it? Pick one, also if you have to guess.',
}
