import { expect, test } from '@playwright/test'
import { readText } from './support/read-text'
import { playersInBook, signIn } from './support/sign-in'

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
  const besideThemes = text.replace(/What was practised[\s\S]*?Coming along/, '')
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
  const closed = ['today', 'book', 'sessions', 'themes', 'flags', 'files', `players/${own}`]
  for (const path of [
    ...closed.map((tab) => `${squadUrl}/${tab}`),
    '/review',
    '/review/committee',
    '/policy',
  ])
    expect((await page.request.get(path)).status(), path).toBe(404)
})

test('the coach sees the page word for word as the family does', async ({ page, browser }) => {
  await signIn(page, 'Parent')
  const family = await readText(page)
  const coach = await browser.newPage()
  await signIn(coach, 'Coach')
  await coach.goto(page.url())
  const seen = await readText(coach)
  const notice = 'From here on, the page is as the family sees it.'
  expect(seen).toContain(notice)
  const squeezed = (text: string) => text.replace(notice, '').replace(/\s+/g, ' ').trim()
  expect(squeezed(seen)).toBe(squeezed(family))
})

test('the page is whole without a script', async ({ browser }) => {
  const context = await browser.newContext({ javaScriptEnabled: false })
  const page = await context.newPage()
  await page.goto('/')
  await page.getByRole('button', { name: /^Parent/ }).click()
  await expect(page.getByText('This page counts turns.')).toBeVisible()
  await expect(page.getByRole('heading', { name: 'Practices' })).toBeVisible()
})

test('leaving signs out, and the page is closed', async ({ page }) => {
  await signIn(page, 'Parent')
  const url = page.url()
  await page.getByRole('button', { name: 'Sign out' }).click()
  await expect(page.getByRole('button', { name: /^Head coach/ })).toBeVisible()
  await page.goto(url)
  await expect(page).toHaveURL(/\/$/)
})
