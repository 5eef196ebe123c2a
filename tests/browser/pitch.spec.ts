import { type BrowserContext, type BrowserContextOptions, expect, type Page, test } from '@playwright/test'
import { awake } from './support/awake'
import { expectGoodPage } from './support/axe'
import { builtAnew } from './support/next-build'
import { atThePitch, eventsOnPhone, expectSameInBook, ids, ownBook, practiceSecond } from './support/pitch'

// One book of its own, two practices of the demo that are planned: the first test plays the one, the others the other.
let book: Awaited<ReturnType<typeof ownBook>>
test.beforeAll(async () => {
  test.setTimeout(120_000)
  book = await ownBook()
})
test.afterAll(() => book.end())

const phone: BrowserContextOptions = {
  viewport: { width: 390, height: 844 },
  hasTouch: true,
  isMobile: true,
  locale: 'en-GB',
  timezoneId: 'Europe/London',
}
const contexts: BrowserContext[] = []
test.afterEach(async () => {
  for (const context of contexts.splice(0)) await context.close()
})

async function newPhone(browser: import('@playwright/test').Browser, more: BrowserContextOptions = {}) {
  const context = await browser.newContext({ ...phone, baseURL: book.address, ...more })
  contexts.push(context)
  return context
}

const screen = (page: Page, name: string) =>
  page.getByRole('navigation', { name: 'Screens of the practice' }).getByRole('button', { name, exact: true })

test('a whole practice in one hand at 390 px, with no signal from start to end: the register and one tap a round', async ({
  browser,
}) => {
  const context = await newPhone(browser)
  const page = await atThePitch(context, 'Idris')
  await page.clock.install()
  await context.setOffline(true)
  // The phone was in the pocket, and the page is opened anew without a signal.
  await page.reload()
  await expect(page.getByRole('heading', { name: 'Who is here?' })).toBeVisible()
  await expectGoodPage(page)

  let taps = 0
  const tap = async (name: string | RegExp) => {
    taps += 1
    await page.getByRole('button', { name }).first().tap()
  }
  const names = await page
    .getByRole('main')
    .getByRole('listitem')
    .getByRole('button', { name: /not here yet$/ })
    .allInnerTexts()
  expect(names).toHaveLength(14)
  // Eleven of fourteen came.
  for (const name of names.slice(0, 11))
    await tap(new RegExp(`^${name.replace(/^\W*/, '').split('\n')[0]} not here yet`))
  await expect(page.getByText('11 here, 3 not here')).toBeVisible()
  const registerTaps = taps
  await tap('Begin with 11')
  await expect(page.getByRole('heading', { name: /^Round 1 of/ })).toBeVisible()
  await expect(page.getByText('New rotation for 11.')).toBeVisible()
  await expectGoodPage(page)

  const title = await page.getByRole('heading', { level: 2 }).first().textContent()
  const rounds = Number(/of (\d+)/.exec(title ?? '')?.[1])
  for (let round = 1; round <= rounds; round++) {
    await expect(page.getByRole('heading', { name: new RegExp(`^Round ${round} of`) })).toBeVisible()
    await page.clock.fastForward('09:00')
    if (round === 2) {
      // The phone goes dark, and the browser throws the page away.
      const before = await practiceSecond(page)
      await page.reload()
      await expect(page.getByRole('heading', { name: /^Round 2 of/ })).toBeVisible()
      const after = await practiceSecond(page)
      expect(after - before).toBeGreaterThanOrEqual(0)
      expect(after - before).toBeLessThan(30)
    }
    await tap(round === rounds ? /^Last round done/ : /^Round done/)
  }
  await expect(page.getByRole('heading', { name: 'The practice is over' })).toBeVisible()
  await expect(page.getByText('no signal')).toBeVisible()
  // What closes the register is the beginning; from there on it is a tap a round, and the last one ends the practice.
  expect(taps - registerTaps - 1).toBe(rounds)
  test.info().annotations.push({ type: 'taps', description: `${taps} in all, ${rounds} rounds` })
  await expectGoodPage(page)
  await screen(page, 'So far').tap()
  await expect(page.getByRole('table')).toBeVisible()
  await expectGoodPage(page)
  await screen(page, 'More').tap()
  await expectGoodPage(page)
  await screen(page, 'Now').tap()

  await context.setOffline(false)
  await expect(page.getByText(/^All sent \d\d:\d\d/)).toBeVisible({ timeout: 20_000 })
  await expectSameInBook(page)

  await page.getByRole('link', { name: 'Check it and write it into the book' }).tap()
  await page.getByRole('button', { name: 'Write into the book' }).tap()
  await expect(page.getByText(/^This stands in the book: written/)).toBeVisible({ timeout: 20_000 })
})

test('two phones on one practice, the server killed in the middle, a clock set by hand: the same on both, nothing lost or doubled', async ({
  browser,
}) => {
  const [first, second] = [
    await newPhone(browser),
    await newPhone(browser, { viewport: { width: 320, height: 640 } }),
  ]
  const [one, other] = [await atThePitch(first, 'Samir'), await atThePitch(second, 'Samir')]
  await one.clock.install()
  await one.getByRole('button', { name: /are here: begin$/ }).tap()
  await expect(one.getByRole('heading', { name: /^Round 1 of/ })).toBeVisible()
  await expect(one.getByText(/^All sent/)).toBeVisible()
  await expect(other.getByRole('heading', { name: /^Round 1 of/ })).toBeVisible({ timeout: 20_000 })
  await expectGoodPage(other)

  await book.kill()
  // The one counts ball by ball, the other writes down who leaves; neither hears of the other.
  await screen(one, 'More').tap()
  await one.getByRole('button', { name: 'One ball at a time' }).tap()
  await screen(one, 'Now').tap()
  await one.getByRole('button', { name: 'Start ball 1' }).tap()
  await expect(one.getByText(/not sent yet · no signal$/)).toBeVisible({ timeout: 20_000 })
  const before = await practiceSecond(one)
  // Summer time, or a curious thumb in the settings: the clock of the phone jumps an hour back.
  await one.clock.setSystemTime(Date.now() - 3_600_000)
  await one.waitForTimeout(1_200)
  const after = await practiceSecond(one)
  expect(after - before).toBeGreaterThanOrEqual(1)
  expect(after - before).toBeLessThan(60)
  await one.getByRole('button', { name: 'Ball over' }).tap()
  const ending = one.getByRole('dialog').getByRole('button', { name: 'Nothing' })
  await expect(ending.first()).toBeVisible()
  await expectGoodPage(one)
  const areas = await ending.count()
  for (let area = 0; area < areas; area++) await ending.nth(area).tap()
  await expect(one.getByRole('button', { name: 'Start ball 2' })).toBeVisible()

  await screen(other, 'Who is here').tap()
  await other
    .getByRole('button', { name: /^More for/ })
    .nth(2)
    .tap()
  await expectGoodPage(other)
  await other.getByRole('dialog').getByRole('button', { name: 'Gone' }).tap()
  await other.getByRole('button', { name: '+ name' }).tap()
  await other.getByLabel('First name of the new face').fill('Quill')
  await other.getByRole('button', { name: 'Here', exact: true }).tap()
  await expect(other.getByRole('button', { name: /^Quill/ })).toBeVisible()
  // Both pages are closed and opened again while there is nobody to ask.
  await other.reload()
  await expect(other.getByText(/not sent yet/)).toBeVisible()

  await book.startAgain()
  for (const page of [one, other]) await expect(page.getByText(/^All sent/)).toBeVisible({ timeout: 30_000 })
  const isSame = async () =>
    JSON.stringify(ids(await eventsOnPhone(one))) === JSON.stringify(ids(await eventsOnPhone(other)))
  await expect.poll(isSame, { timeout: 30_000 }).toBe(true)
  await expectSameInBook(one, [one, other])
  const totals = async (page: Page) => {
    await screen(page, 'So far').tap()
    await expect(page.getByRole('table')).toBeVisible()
    return ((await page.getByRole('table').textContent()) ?? '').replaceAll(/\d+:\d\d/g, ' ')
  }
  expect(await totals(one)).toBe(await totals(other))
  await expect(one.getByRole('rowheader', { name: 'Quill' })).toBeVisible()

  // Everything can be taken back, step by step, to the beginning.
  for (;;) {
    const undo = one.getByRole('button', { name: /^Undo: / })
    const count = (await eventsOnPhone(one)).length
    await undo.tap()
    await expect.poll(async () => (await eventsOnPhone(one)).length).toBeGreaterThan(count)
    if ((await one.getByRole('timer', { name: 'Time of the practice' }).count()) === 0) break
  }
  await screen(one, 'Now').tap()
  await expect(one.getByRole('heading', { name: /^Round 1 of/ })).toBeVisible()
  await expect(one.getByText(/^All sent/)).toBeVisible()
})

test('signing out with taps that are not sent asks first; a phone that has sent all forgets', async ({
  browser,
}) => {
  const context = await newPhone(browser)
  const page = await atThePitch(context, 'Samir')
  await context.setOffline(true)
  await screen(page, 'Who is here').tap()
  await page.getByRole('button', { name: '+ name' }).tap()
  await page.getByLabel('First name of the new face').fill('Brindle')
  await page.getByRole('button', { name: 'Here', exact: true }).tap()
  await expect(page.getByText(/1 not sent yet/)).toBeVisible()
  // Nothing may reach the book from here on: the signal comes back, and another page of the book is opened.
  await context.route('**/api/pitch/**', (route) => route.abort())
  await context.setOffline(false)
  const desk = await context.newPage()
  await page.close()
  await desk.goto('/')
  await awake(desk.getByRole('button', { name: 'Sign out' }))
  await desk.getByRole('button', { name: 'Sign out' }).tap()
  await expect(desk.getByRole('alertdialog')).toContainText('1 tap of a practice is on this phone only')
  await desk.getByRole('button', { name: 'Stay' }).tap()
  await expect(desk.getByRole('alertdialog')).toBeHidden()
  await desk.getByRole('button', { name: 'Sign out' }).tap()
  await context.unroute('**/api/pitch/**')
  await desk.getByRole('link', { name: 'Send them first' }).tap()
  await expect(desk.getByRole('link', { name: /Jun 2026/ })).toBeVisible()
  await expect(desk.getByText(/not sent yet/)).toBeHidden({ timeout: 20_000 })
  await desk.goto('/')
  await awake(desk.getByRole('button', { name: 'Sign out' }))
  await desk.getByRole('button', { name: 'Sign out' }).tap()
  await expect(desk.getByRole('button', { name: /^Coach/ }).first()).toBeVisible()
  const left = () =>
    desk.evaluate(async () => [
      ...(await caches.keys()),
      ...(await indexedDB.databases()).map(({ name }) => name),
    ])
  await expect.poll(left).toEqual([])
  await desk.goto('/pitch')
  await expect(desk.getByText('No practice or match is on this phone yet.')).toBeVisible()
})

test('a new build takes the place of the old one whole, with what is not sent yet; half a build does not', async ({
  browser,
}) => {
  const between = await builtAnew(book.address)
  const context = await newPhone(browser, { baseURL: between.address })
  const page = await atThePitch(context, 'Samir')
  const buildOf = () =>
    page.evaluate(async () => (await caches.keys()).filter((name) => name.startsWith('turnbook-')))
  const [old = ''] = await buildOf()
  const update = () =>
    page.evaluate(async () => {
      const registration = await navigator.serviceWorker.getRegistration('/pitch')
      await registration?.update().catch(() => undefined)
    })
  const installsOver = () =>
    page.evaluate(async () => !(await navigator.serviceWorker.getRegistration('/pitch'))?.installing)
  await context.route('**/api/pitch/**', (route) => route.abort())
  await screen(page, 'Who is here').tap()
  await page.getByRole('button', { name: '+ name' }).tap()
  await page.getByLabel('First name of the new face').fill('Thistle')
  await page.getByRole('button', { name: 'Here', exact: true }).tap()
  await expect(page.getByText(/1 not sent yet/)).toBeVisible()

  // One of its files cannot be had: the phone goes on with the build that it has.
  between.serve('half', (text) => text.replace('const files = [', 'const files = ["/_next/static/gone.js",'))
  await update()
  await expect.poll(installsOver).toBe(true)
  await expect.poll(buildOf).toEqual([old])

  for (const build of ['second', 'third']) {
    between.serve(build)
    await update()
    await expect.poll(buildOf, { timeout: 20_000 }).toContain(`turnbook-${build}`)
    await expect.poll(installsOver).toBe(true)
  }
  // The page that is open may still ask for files of the build before; those of the one before that are gone.
  await expect.poll(buildOf).toEqual(['turnbook-second', 'turnbook-third'])
  await context.setOffline(true)
  await page.reload()
  await expect(page.getByText(/1 not sent yet/)).toBeVisible()
  await expect(page.getByRole('button', { name: /^Thistle/ })).toBeVisible()
  between.end()
})

test('somebody leaves in the middle of a ball and another goes in; out for today takes a held press, and so does taking it back', async ({
  browser,
}) => {
  const context = await newPhone(browser)
  const page = await atThePitch(context, 'Samir')
  const dialog = page.getByRole('dialog')
  const hold = async (name: RegExp) => {
    const box = await dialog.getByRole('button', { name }).boundingBox()
    if (!box) throw new Error('nothing to hold')
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2)
    await page.mouse.down()
    await expect(dialog.getByRole('alertdialog')).toBeVisible()
    await page.mouse.up()
  }
  await page.getByRole('button', { name: /: begin$|^Begin with/ }).tap()
  await screen(page, 'More').tap()
  await page.getByRole('button', { name: 'One ball at a time' }).tap()
  await screen(page, 'Now').tap()
  await page.getByRole('button', { name: 'Start ball 1' }).tap()
  const ball = page.getByRole('region', { name: /^Playing: ball 1/ })
  await expect(ball.getByRole('listitem').first()).toBeVisible()
  const placed = await ball.getByRole('listitem').allInnerTexts()
  const [leaver = ''] = placed
  await ball.getByRole('button', { name: leaver, exact: true }).tap()
  await dialog.getByRole('button', { name: 'Gone' }).tap()
  await expect(dialog.getByText(`Who goes in for ${leaver}?`)).toBeVisible()
  const instead = dialog.getByRole('listitem').first()
  const substitute = ((await instead.textContent()) ?? '').trim()
  await instead.getByRole('button').tap()
  await expect(ball.getByRole('listitem')).toHaveCount(placed.length)
  await expect(ball.getByRole('button', { name: substitute, exact: true })).toBeVisible()
  await expect(ball.getByRole('button', { name: leaver, exact: true })).toBeHidden()

  // A short tap does nothing.
  await ball.getByRole('button', { name: substitute, exact: true }).tap()
  await dialog.getByRole('button', { name: /^Out for today/ }).tap()
  await expect(dialog.getByRole('alertdialog')).toBeHidden()
  await hold(/^Out for today/)
  await expectGoodPage(page)
  await dialog.getByRole('button', { name: 'Yes, out for today' }).tap()
  const nobody = dialog.getByRole('button', { name: 'Nobody' })
  if (await nobody.isVisible()) await nobody.tap()
  await expect(ball.getByRole('button', { name: substitute, exact: true })).toBeHidden()
  await screen(page, 'Who is here').tap()
  const entry = page
    .getByRole('main')
    .getByRole('button', { name: `${substitute} out for today`, exact: true })
  await entry.tap()
  await expect(dialog.getByRole('button', { name: /^Here/ })).toBeHidden()
  await hold(/^Take back/)
  await dialog.getByRole('button', { name: 'No', exact: true }).tap()
  await dialog.getByRole('button', { name: 'Back', exact: true }).tap()
  await expect(entry).toBeVisible()
  await entry.tap()
  await hold(/^Take back/)
  await dialog.getByRole('button', { name: 'Yes, by mistake' }).tap()
  await expect(
    page.getByRole('main').getByRole('button', { name: `${substitute} here`, exact: true }),
  ).toBeVisible()
  await expect(page.getByText(/^All sent/)).toBeVisible({ timeout: 20_000 })
  await expectSameInBook(page)
})
