import { expect, test } from 'vitest'
import { runCommand, scratch } from './run-command.ts'
import { sampleJson } from './sample-file.ts'

/** The focaccia plan, still without a session, so wet a preferment that its driest levels have less water than that. */
function wetPreferment(): string {
  const document = sampleJson('focaccia-hydration')
  for (const list of ['sessions', 'events', 'ballots', 'photos']) document[list] = []
  for (const plan of document.plans) {
    const [flour] = plan.formula.ingredients.filter(
      ({ kind }: { kind: string }) => kind === 'flour',
    )
    const water = plan.formula.ingredients.find(({ kind }: { kind: string }) => kind === 'water')
    plan.formula.preferments = [
      {
        ...{ id: 'wet', name: 'Poolish', kind: 'poolish', flourSharePercent: 70 },
        parts: [flour, water].map(({ id }) => ({ ingredientId: id, percent: 100 })),
      },
    ]
  }
  return scratch('wet-preferment.json', JSON.stringify(document))
}

test.each(['weigh', 'fairness', 'detect'])(
  '%s says first what stops the plan, with the level named',
  async (verb) => {
    const { code, out } = await runCommand(verb, wetPreferment())
    expect(code).toBe(0)
    const [, said = ''] = out.split('Still to mend in the plan\n')
    const flat = said.replaceAll(/\s+/g, ' ')
    expect(flat).toContain('- At 66: The preferments hold')
  },
)

test('the stops are in the JSON too, and a sound plan has none', async () => {
  const { toMend } = JSON.parse((await runCommand('weigh', wetPreferment(), '--json')).out)
  expect(toMend[0]).toMatch(/^At 66: /)
  const sound = scratch('sound.json', JSON.stringify(sampleJson('focaccia-hydration')))
  expect(JSON.parse((await runCommand('weigh', sound, '--json')).out).toMend).toEqual([])
  expect((await runCommand('weigh', sound)).out).not.toContain('Still to mend')
})
