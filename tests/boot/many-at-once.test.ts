import { afterAll, describe, expect, inject, it } from 'vitest'
import { manyAtOnce } from '../support/many-at-once'
import { Playground } from '../support/turnbook-process'

const playground = new Playground()
afterAll(() => playground.clear())

describe('many people at once', () => {
  it('lose nothing: each tap that the book said it has is there once, and no request fails', async () => {
    const turnbook = await (
      await playground.start({ data: playground.copyOf(inject('bookToCopy')) })
    ).untilReady()
    const load = { users: 40, seconds: 4, thinkMs: 500 }
    const { acknowledged, inBook, faults } = await manyAtOnce(turnbook.address, load)
    expect(faults).toEqual([])
    expect(acknowledged.length).toBeGreaterThan(40)
    expect(acknowledged.filter((id) => inBook.get(id) !== 1)).toEqual([])
  })
})
