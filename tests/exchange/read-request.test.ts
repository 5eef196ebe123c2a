import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { readRequest } from '#exchange/read-request'

const shape = z.array(z.number())
const problemsOf = (numbers: readonly number[]) =>
  numbers.flatMap((own, index) => (own < 0 ? [{ path: `${index}`, message: 'is below 0' }] : []))
const read = (json: unknown) => readRequest(json, { shape, problemsOf })

describe('a request', () => {
  it('is what was sent, where shape and numbers are right', () => {
    expect(read([1, 2])).toEqual({ ok: true, value: [1, 2] })
  })

  it('is refused for its shape first, then for its numbers', () => {
    expect(read([-1, 'two'])).toMatchObject({
      ok: false,
      reasons: [{ message: expect.stringMatching(/^is "two"/) }],
    })
    expect(read([-1, 2, -3])).toMatchObject({ ok: false, reasons: [{ path: '0' }, { path: '2' }] })
  })

  it('is refused with as many faults as there are', () => {
    const refused = read(Array.from({ length: 300_000 }, () => -1))
    expect(refused.ok ? [] : refused.reasons).toHaveLength(300_000)
  })
})
