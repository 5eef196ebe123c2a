import { expect, type Page, test } from '@playwright/test'
import { expectGoodPage } from './support/axe'
import { openTab, signIn } from './support/sign-in'

// The tests of a run share one club: this one enters a match of its own that nothing else looks at.
test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true })

/** Enters a match of today and saves a line-up for ten of the squad; where its pages are. */
async function planForTen(page: Page): Promise<string> {
  await signIn(page, 'Coach')
  await openTab(page, 'Practices and matches')
  await page.getByRole('link', { name: 'New practice or match' }).click()
  await page.getByRole('button', { name: 'Match', exact: true }).click()
  await page.getByLabel('Title').fill(`Against the Reed Warblers ${test.info().testId}`)
  await page.getByRole('button', { name: 'Go on to writing it down' }).click()
  await page.waitForURL(/sessions\/[0-9a-f-]{36}/)
  const place = page.url().replace(/(sessions\/[0-9a-f-]{36}).*$/, '$1')
  await page.goto(`${place}/line-up`)
  const coming = page.getByRole('list').getByRole('checkbox', { checked: true })
  await expect(coming.first()).toBeVisible()
  while ((await coming.count()) > 10) await coming.last().click()
  await expect(page.getByRole('heading', { name: 'Who comes: 10' })).toBeVisible()
  await page.getByRole('button', { name: 'Save this line-up' }).click()
  await expect(page.getByRole('status').filter({ hasText: /^Saved\./ })).toBeVisible({ timeout: 15_000 })
  return place
}

const seconds = (clock: string) => {
  const [minutes = 0, rest = 0] = clock.split(':').map(Number)
  return minutes * 60 + rest
}

/** Names and seconds of a table's rows; `column`: which of the cells after the name. */
async function secondsByName(
  page: Page,
  table: string,
  column: number,
): Promise<ReadonlyMap<string, number>> {
  const rows = await page.getByRole('table', { name: table }).getByRole('row').all()
  const read = await Promise.all(
    rows.slice(1).map(async (row) => {
      const name = ((await row.getByRole('rowheader').allInnerTexts())[0] ?? '').split('\n')[0] ?? ''
      return [name, seconds(((await row.getByRole('cell').allInnerTexts())[column] ?? '').trim())] as const
    }),
  )
  return new Map(read)
}

test('ten for seven a side without a signal: one arrives at half-time, one goes off hurt, and the book balances', async ({
  page,
  context,
}) => {
  const place = await planForTen(page)
  await page.goto(`/pitch#${place.split('/').at(-1)}`)
  const screens = page.getByRole('navigation', { name: 'Screens of the match' })
  await expect(screens).toBeVisible()
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready
  })
  await expect(page.getByText('Getting ready to work without a signal')).toBeHidden({ timeout: 20_000 })
  await page.clock.install()
  await context.setOffline(true)
  await page.reload()
  await expect(page.getByRole('heading', { name: 'Who is here?' })).toBeVisible()

  const tap = (name: string | RegExp) => page.getByRole('button', { name }).first().tap()
  const open = (name: string) => screens.getByRole('button', { name, exact: true }).tap()
  const listed = await page
    .getByRole('main')
    .getByRole('button', { name: /not here yet$/ })
    .allInnerTexts()
  const names = listed.map((text) => text.replace(/^\W*/, '').split('\n')[0] ?? '')
  expect(names).toHaveLength(10)
  const late = names[9] ?? ''
  for (const name of names.slice(0, 9)) await tap(new RegExp(`^${name} not here yet`))
  await expect(page.getByText('9 here, ')).toBeVisible()
  await tap('Kick off the first half, 7 on')

  // The first change is called by name, and needs no tap when it is made in time.
  const card = page.getByRole('region', { name: 'Next change' })
  await expect(card).toContainText(/in \d+:\d\d/)
  await expectGoodPage(page)
  await page.clock.fastForward('07:12')
  const onNow = page.getByRole('region', { name: 'On now' }).getByRole('button')
  await expect(onNow).toHaveCount(7)
  const hurt = ((await onNow.allInnerTexts()).at(-1) ?? '').split('\n')[0] ?? ''
  await onNow.last().tap()
  await tap('Goes off hurt')
  await expect(page.getByRole('region', { name: 'Not playing' }).getByRole('button')).toContainText(hurt)
  // Somebody is on in its place at once, by the plan made anew.
  await expect(page.getByText(/^Planned anew: /)).toBeVisible()
  await expect(onNow).toHaveCount(7)

  await page.clock.fastForward('17:48')
  await tap(/^Whistle/)
  await open('Who is here')
  await tap(new RegExp(`^${late} not here yet`))
  await tap('Kick off the second half, 7 on')
  await page.clock.fastForward('12:00')
  // Back from the pocket: the page was thrown away, and the clock went on.
  await page.reload()
  await expect(page.getByRole('timer', { name: 'Time of the period' })).toContainText(/^12:/)
  await page.clock.fastForward('13:00')
  await tap(/^Whistle/)
  await tap('Full time')
  await expect(page.getByRole('heading', { name: 'The match is over' })).toBeVisible()

  await open('Minutes')
  const played = await secondsByName(page, 'Minutes of play so far, in goal, and at the end as planned', 0)
  await expectGoodPage(page)
  const why = (await page.getByRole('main').getByRole('listitem').allInnerTexts()).join('\n')
  const half = 25 * 60
  for (const [name, had] of played) {
    const promised = name === late ? half / 2 : half
    if (had < promised) expect(why).toMatch(new RegExp(`${name} .*(there for|cannot have)`))
  }

  await context.setOffline(false)
  await page.clock.fastForward('00:15')
  await open('Now')
  await page.getByRole('link', { name: 'Check it and write it into the book' }).tap({ timeout: 20_000 })
  await expect(page.getByRole('heading', { name: /^After the whistle/ })).toBeVisible()
  const lengths = await page.getByText(/^The (first|second) half: \d+:\d\d/).allInnerTexts()
  const whole = lengths.reduce((sum, text) => sum + seconds(text.split(': ')[1] ?? ''), 0)
  await page.getByText('As planned, and as it came').click()
  const inBook = await secondsByName(page, 'Time of play as planned and as it came', 1)
  // Seven were on at every second, but for the one in which the hurt player had gone and nobody was told yet.
  const all = [...inBook.values()].reduce((sum, had) => sum + had, 0)
  expect(7 * whole - all).toBeGreaterThanOrEqual(0)
  expect(7 * whole - all).toBeLessThanOrEqual(1)
  expect([...inBook.values()].toSorted()).toEqual([...played.values()].toSorted())
  await expectGoodPage(page)
  await page.getByRole('button', { name: 'Write into the book' }).tap()
  await expect(page.getByText(/^This stands in the book: written/)).toBeVisible({ timeout: 20_000 })
})
