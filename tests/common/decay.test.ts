import { describe, expect, it } from 'vitest'
import { decay } from '#common/decay'

describe('decay', () => {
  it('is e to the power of −x, nearly; as the language itself works it out', () => {
    for (const x of [0, 0.01, 0.5, 1, 2, 5, 10]) expect(Math.abs(decay(x) - Math.exp(-x))).toBeLessThan(3e-4)
  })

  it('never rises, and ends at nothing', () => {
    const values = Array.from({ length: 400 }, (_, step) => decay(step / 10))
    expect(values.every((value, index) => value <= (values[index - 1] ?? 1))).toBe(true)
    expect(decay(1e300)).toBe(0)
  })
})
