import { type BrowserContext, expect, type Page, test } from '@playwright/test'
import { v7 as uuidv7 } from 'uuid'
import { expectGoodPage } from './support/axe'
import { signIn } from './support/sign-in'

// The tests of a run share one book: each enters a practice of its own and looks at what that one changes.

type Place = { readonly squadId: string; readonly sessionId: string }

/** Enters a practice of today, with a title of its own and no design. */
async function enterPractice(page: Page): Promise<Place> {
  await signIn(page, 'Coach')
  await page.getByRole('link', { name: 'Practices and matches' }).click()
  await page.getByRole('link', { name: 'New practice or match' }).click()
  await page.getByLabel('Title').fill(test.info().testId)
  await page.getByRole('button', { name: 'Go on to writing it down' }).click()
  await expect(page.getByRole('heading', { name: 'Turns' })).toBeVisible()
  const [, squadId = '', sessionId = ''] = /squads\/([^/]+)\/sessions\/([^/]+)/.exec(page.url()) ?? []
  return { squadId, sessionId }
}

const pathOf = ({ squadId, sessionId }: Place, last: string) =>
  `/squads/${squadId}/sessions/${sessionId}/${last}`

/** What a phone sends, from a page of the same address. */
async function tap(
  page: Page,
  sessionId: string,
  deeds: readonly (readonly [second: number, deed: object])[],
) {
  const deviceId = uuidv7()
  const began = Date.now() - 3_600_000
  const events = deeds.map(([second, deed]) => {
    const at = began + second * 1000
    return { id: uuidv7({ msecs: at }), deviceId, at, deed }
  })
  const refused = await page.evaluate(
    async ([id, body]) => {
      const how = { method: 'POST', headers: { 'content-type': 'application/json' }, body }
      const response = await fetch(`/api/pitch/${id}`, how)
      return response.ok ? (await response.json()).refused : response.status
    },
    [sessionId, JSON.stringify({ deviceId, cursor: 0, events })] as const,
  )
  expect(refused).toEqual([])
}

type Pack = { readonly players: readonly { readonly id: string; readonly name: string }[] }

async function packOf(page: Page, sessionId: string): Promise<Pack> {
  return page.evaluate(async (id) => (await fetch(`/api/pitch/${id}`)).json(), sessionId)
}

async function expectGoodWithEverythingOpen(page: Page) {
  for (const width of [390, 1280]) {
    await page.setViewportSize({ width, height: 844 })
    await page.locator('main details').evaluateAll((all) => {
      for (const one of all) one.setAttribute('open', '')
    })
    await expectGoodPage(page)
  }
  await page.setViewportSize({ width: 390, height: 844 })
}

test.use({ viewport: { width: 390, height: 844 } })

test('what was tapped is looked at and written by one button; a late tap asks to be written too', async ({
  page,
}) => {
  const place = await enterPractice(page)
  const { players } = await packOf(page, place.sessionId)
  const [a, b, c, d] = players.map(({ id }) => id) as [string, string, string, string]
  const guest = uuidv7()
  const turn = {
    round: 0,
    seconds: 300,
    gapSeconds: 20,
    stations: [{ attack: [a, guest], defend: [b], keep: [c] }],
  }
  await tap(page, place.sessionId, [
    ...[a, b, c].map((playerId) => [-30, { kind: 'register', playerId, state: 'here' }] as const),
    [-20, { kind: 'guest', playerId: guest, name: 'Zoe Pike' }],
    [0, { kind: 'begin' }],
    [620, { kind: 'roundDone', round: 0, turns: [turn, turn] }],
    [640, { kind: 'stop' }],
  ])
  await page.goto(pathOf(place, 'whistle'))
  await expect(page.getByText('7 taps, round by round.')).toBeVisible()
  const attackers = page.getByRole('row').filter({ hasText: /2 ×/ })
  await expect(attackers.filter({ hasText: 'Zoe Pike' })).toContainText('2 × 10.0')
  await expectGoodWithEverythingOpen(page)
  await page.getByRole('button', { name: 'Write into the book' }).click()
  await expect(page.getByText(/^This stands in the book: written at/)).toBeVisible({ timeout: 20_000 })
  await expectGoodWithEverythingOpen(page)

  await tap(page, place.sessionId, [[500, { kind: 'register', playerId: c, state: 'gone' }]])
  await page.reload()
  await expect(page.getByText(/^1 tap arrived after this was written at/)).toBeVisible()
  await page.getByRole('button', { name: 'Write it again' }).click()
  await expect(page.getByText(/^This stands in the book: written at/)).toBeVisible({ timeout: 20_000 })

  await page.getByLabel('Zoe Pike is a player of the club:').selectOption(d)
  await page.getByRole('button', { name: 'Join the two' }).click()
  await expect(page.getByText(/^Zoe Pike is /)).toBeVisible({ timeout: 20_000 })
  await page.getByRole('link', { name: 'The practice in the book' }).click()
  await expect(page.getByRole('heading', { name: 'What it came to' })).toBeVisible()
  await expect(page.getByRole('row').filter({ hasText: 'Zoe Pike' })).toHaveCount(0)
  await expect(page.getByText(/round by round/).first()).toBeVisible()
})

test('a helper scans a code, sees that one practice with short names, and nothing once it is taken back', async ({
  page,
  browser,
}) => {
  const place = await enterPractice(page)
  await page.goto(pathOf(place, 'helpers'))
  await page.getByRole('button', { name: 'Make a code' }).click()
  await expect(page.getByRole('img', { name: 'Code that lets a helper join this practice' })).toBeVisible()
  await expectGoodWithEverythingOpen(page)
  const link = (await page.getByRole('link', { name: /\/join\// }).getAttribute('href')) ?? ''
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } })
  const helper = await join(context, link)
  const { players } = await packOf(helper, place.sessionId)
  expect(players.length).toBeGreaterThan(10)
  for (const { name } of players) expect(name).toMatch(/^\S+( \p{L}\.)?( \(\d\))?$/u)
  // Nothing else of the book opens: every page leads back to the first.
  for (const path of [pathOf(place, 'whistle'), `/squads/${place.squadId}/today`]) {
    await helper.goto(path)
    await expect(helper).toHaveURL(/:\d+\/$/)
  }
  await page.getByRole('button', { name: 'Take this code back' }).click()
  await expect(page.getByRole('img', { name: 'Code that lets a helper join this practice' })).toHaveCount(0)
  await helper.goto(link)
  await expect(helper.getByText(/This code opens nothing any more/)).toBeVisible()
  expect(await helper.evaluate(async (id) => (await fetch(`/api/pitch/${id}`)).status, place.sessionId)).toBe(
    404,
  )
  await context.close()
})

async function join(context: BrowserContext, link: string): Promise<Page> {
  const helper = await context.newPage()
  await helper.goto(link)
  await expect(helper.getByText(/The practice of the/)).toBeVisible()
  await expectGoodPage(helper)
  await helper.getByRole('button', { name: 'Help at this practice' }).click()
  await expect(helper).toHaveURL(/\/pitch#/)
  return helper
}
