import type { NotAgain } from '@/core/session/dough-again.ts'

/** What making a failed dough again does, with when the new one would be ready for the oven. */
export function doughAgainText(letter: string, readyAt: string): string {
  return `Made again, a new dough takes the place of ${letter} under a new letter. Begun now it is ready for the oven at ${readyAt}, and is baked last. ${letter} stays in the record and counts as a failure of its level.`
}

const barred: Record<NotAgain, string> = {
  'not-in-work': 'This dough was made again already: the new one is among the doughs.',
  'was-baked':
    'A piece of this dough was in the oven already. A dough is made again whole, so log what failed of the others piece by piece.',
  'was-served': 'People have begun to taste, so no dough can take the place of this one any more.',
}

/** Why a dough cannot be made again, and what can be done. */
export const notAgainText = (reason: NotAgain): string => barred[reason]
