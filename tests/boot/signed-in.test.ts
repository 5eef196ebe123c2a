import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest'
import { manyAtOnce } from '../support/many-at-once'
import { HttpUser } from '../support/over-http'
import { Playground } from '../support/turnbook-process'

const playground = new Playground()
let address = ''
beforeAll(async () => {
  const turnbook = await playground.start({ data: playground.copyOf(inject('bookToCopy')) })
  ;({ address } = await turnbook.untilReady())
})
afterAll(() => playground.clear())

describe('somebody who is signed in', () => {
  it('is sent no page and no file that a browser or a proxy may keep', async () => {
    const coach = new HttpUser(address)
    const home = await coach.signIn('Idris Fallowmere')
    const squad = home.replace(/\/today$/, '')
    const parent = new HttpUser(address)
    const family = await parent.signIn('Chinwe Fernhollow')
    const asked = [
      [coach, home],
      [coach, `${squad}/book`],
      [coach, `${squad}/export/roster`],
      [coach, `${squad}/no-such-page`],
      [coach, '/api/pitch'],
      [parent, family],
    ] as const
    for (const [user, path] of asked) {
      const response = await user.ask(path)
      await response.text()
      // ASVS 5.0, 14.3.2.
      expect([path, response.headers.get('cache-control')]).toEqual([
        path,
        expect.stringContaining('no-store'),
      ])
    }
  })

  it('is not signed in by anything that a stranger brings along', async () => {
    const stranger = new HttpUser(address)
    const response = await stranger.ask('/api/pitch', { headers: { 'x-forwarded-for': '127.0.0.1' } })
    expect(response.status).toBe(401)
    await response.text()
  })
})

describe('many people at once', () => {
  it('lose nothing: each tap that the book said it has is there once, and no request fails', async () => {
    const { acknowledged, inBook, faults } = await manyAtOnce(address, {
      users: 40,
      seconds: 4,
      thinkMs: 500,
    })
    expect(faults).toEqual([])
    expect(acknowledged.length).toBeGreaterThan(40)
    expect(acknowledged.filter((id) => inBook.get(id) !== 1)).toEqual([])
  })
})
