import { expect, test } from '@playwright/test'
import { expectGoodPage } from './support/axe'
import { sheetsOf } from './support/pdf'
import { readText } from './support/read-text'
import { openTab, playersInBook, signIn } from './support/sign-in'

// Never on a family's page, whatever the season was like.
const forbidden = /\b(short|over|gaps?|flags?|rest|bench|percentile|player)\b|[+−]\d|\d ?%/i

test('a parent reads one page about their own child, and can open nothing else', async ({
  page,
  browser,
}) => {
  const coach = await browser.newPage()
  await signIn(coach, 'Coach')
  const squadUrl = coach.url().replace(/\/today$/, '')
  const players = await playersInBook(coach)

  await signIn(page, 'Parent')
  const own = page.url().split('/').at(-1)
  const text = await readText(page)
  expect(text).toMatch(/^.*\n+Season .*\n+From \d+ of the \d+ practices and matches held\./)
  expect(text.trim()).toMatch(/This page counts turns\. It does not say how good anyone is\.$/)
  const besideThemes = text.replace(/What comes next[\s\S]*?Days there and days away/, '')
  expect(besideThemes.length).toBeLessThan(text.length)
  expect(besideThemes.match(forbidden)).toBeNull()

  const others = players.filter(({ id }) => id !== own)
  expect(others.length).toBe(players.length - 1)
  const html = await page.content()
  for (const { id, name } of others) {
    expect(html).not.toContain(name)
    expect(html).not.toContain(id)
    expect((await page.request.get(`/family/${id}`)).status()).toBe(404)
  }
  const closed = ['today', 'book', 'sessions', 'themes', 'flags', 'files', 'families', `players/${own}`]
  for (const path of [
    ...[...closed, `families/${own}`].map((tab) => `${squadUrl}/${tab}`),
    '/review',
    '/review/committee',
    '/policy',
  ])
    expect((await page.request.get(path)).status(), path).toBe(404)
})

test('the page is whole without a script, light with one, and one sheet on paper', async ({
  page,
  browser,
}) => {
  await signIn(page, 'Parent')
  const url = page.url()
  const storageState = await page.context().storageState()
  const read = await readText(page)
  expect(sheetsOf(await page.pdf({ format: 'A4' }))).toHaveLength(1)

  const still = await (await browser.newContext({ storageState, javaScriptEnabled: false })).newPage()
  await still.goto(url)
  expect(await readText(still)).toBe(read)
  await still.getByText('What the words mean').click()
  await expect(still.getByText('One go with the ball.')).toBeVisible()

  // A browser that has nothing of the book yet; what the framework needs by itself is about 134 kB.
  const fresh = await (await browser.newContext({ storageState })).newPage()
  const sizes: Promise<number>[] = []
  fresh.on('requestfinished', (request) => {
    if (request.resourceType() === 'script')
      sizes.push(request.sizes().then(({ responseBodySize }) => responseBodySize))
  })
  await fresh.goto(url, { waitUntil: 'networkidle' })
  const total = (await Promise.all(sizes)).reduce((sum, size) => sum + size, 0)
  expect(total).toBeGreaterThan(50_000)
  expect(total).toBeLessThanOrEqual(140_000)

  await still.getByRole('button', { name: 'Sign out' }).click()
  await still.goto(url)
  await expect(still).not.toHaveURL(url)
})

test('what a coach writes reaches the family only once it is confirmed, and not before the morning', async ({
  page,
  browser,
}) => {
  const parent = await browser.newPage()
  await signIn(parent, 'Parent')
  const before = await readText(parent)
  const name = await parent.getByRole('heading', { level: 1 }).textContent()

  await page.setViewportSize({ width: 390, height: 844 })
  await signIn(page, 'Coach')
  await openTab(page, 'Families')
  await expectGoodPage(page)
  await page.getByRole('link', { name: name ?? '' }).click()
  const main = page.getByRole('main')
  await expect(main.getByText('From here on, the page is as the family will see it.')).toBeVisible()
  await expectGoodPage(page)
  await page.getByLabel('Note for the family').fill('Plays well with kiri.')
  await page.getByRole('button', { name: 'Keep the note' }).click()
  await expect(
    page.getByText('This note names Kiri. Families read only about their own child.'),
  ).toBeVisible()
  await page.getByLabel('Note for the family').fill('Plays well with everyone.')
  await page.getByRole('button', { name: 'Keep the changed note' }).click()
  await expect(page.getByText('The family reads it once you confirm the page.')).toBeVisible()
  await expect(main.locator('section', { hasText: 'From the coach' }).first()).toContainText(
    'Plays well with everyone.',
  )
  await page.getByRole('button', { name: 'Confirm this page' }).click()
  await expect(page.getByText('Families read it from 8:00 tomorrow morning.')).toBeVisible()
  await expect(
    main.getByText('A page is confirmed that the family sees from the next morning.'),
  ).toBeVisible()

  await parent.reload()
  expect(await readText(parent)).toBe(before)
})
