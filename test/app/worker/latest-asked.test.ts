import { expect, test } from 'vitest'
import { latestAsked } from '@/app/worker/latest-asked.ts'

function slow() {
  const open: {
    question: number
    answer: (value: string) => void
    fail: (cause: Error) => void
  }[] = []
  const ask = (question: number) =>
    new Promise<string>((answer, fail) => {
      open.push({ question, answer, fail })
    })
  return { open, ask }
}

const settled = () => new Promise((done) => setTimeout(done, 0))

test('one question at a time; of those that came meanwhile only the last is asked', async () => {
  const { open, ask } = slow()
  const answers: string[] = []
  const line = latestAsked(
    ask,
    (answer) => answers.push(answer),
    () => {},
  )
  for (const question of [1, 2, 3]) line.ask(question)
  expect(open.map(({ question }) => question)).toEqual([1])
  open[0]?.answer('one')
  await settled()
  expect(open.map(({ question }) => question)).toEqual([1, 3])
  open[1]?.answer('three')
  await settled()
  expect(answers).toEqual(['one', 'three'])
})

test('after a failure the next question is asked; after a stop nothing is said any more', async () => {
  const { open, ask } = slow()
  const said: string[] = []
  const line = latestAsked(
    ask,
    (answer) => said.push(answer),
    (cause) => said.push(String(cause)),
  )
  line.ask(1)
  line.ask(2)
  open[0]?.fail(new Error('no'))
  await settled()
  expect(said).toEqual(['Error: no'])
  line.stop()
  open[1]?.answer('two')
  await settled()
  expect(said).toHaveLength(1)
})
