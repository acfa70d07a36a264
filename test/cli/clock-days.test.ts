import { expect, test } from 'vitest'
import { runCommand } from './run-command.ts'
import { samplePath } from './sample-file.ts'

test('clock says which days of another kind go where the one that was asked for does not', async () => {
  // The loaves take more than six hours: eaten at 11:00 they would be begun in the night.
  const asked = ['clock', samplePath('pan-loaf-salt'), '--eat', '2026-12-05T11:00']
  const { code, out } = await runCommand(...asked)
  expect(code).toBe(0)
  expect(out).toContain('Days of another kind that go too:')
  expect(out.replaceAll(/\s+/g, ' ')).toMatch(
    /- Mix Saturday 0[67]:\d\d, eat 1[23]:\d\d\. You eat .* later than asked\./,
  )
  for (const line of out.split('\n')) expect([...line].length).toBeLessThanOrEqual(80)
})
