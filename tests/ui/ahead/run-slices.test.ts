import { expect, it } from 'vitest'
import { runSlices } from '#ui/ahead/run-slices'

/** Takes longer than one burst. */
function* slow(steps: number): Generator<number, string> {
  for (let step = 1; step <= steps; step++) {
    const until = performance.now() + 5
    while (performance.now() < until);
    yield step / steps
  }
  return 'done'
}

it('works all off, and tells how far it is', async () => {
  const parts: number[] = []
  const end = await runSlices(slow(12), {
    signal: new AbortController().signal,
    onPart: (part) => parts.push(part),
  })
  expect(end).toBe('done')
  expect(parts.length).toBeGreaterThan(1)
  expect(parts).toEqual([...parts].sort((a, b) => a - b))
})

it('ends where it is when it is stopped', async () => {
  const stop = new AbortController()
  const slices = slow(1000)
  const end = await runSlices(slices, { signal: stop.signal, onPart: () => stop.abort() })
  expect(end).toBeNull()
  expect(slices.next().value).toBeLessThan(0.1)
})
