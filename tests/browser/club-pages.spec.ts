import { expect, type Page, test } from '@playwright/test'
import { expectGoodPage } from './support/axe'
import { openTab, signIn } from './support/sign-in'

/** A phone and a desk; one load of the page serves both. */
const widths = [390, 1280]

/** `largest`: what is folded away stays so when it has more elements than this; axe takes many seconds for thousands. */
async function expectGoodAtEveryWidth(page: Page, { largest = Infinity } = {}): Promise<void> {
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
  await page.locator('main details').evaluateAll((all, most) => {
    for (const one of all) if (one.querySelectorAll('*').length <= most) one.setAttribute('open', '')
  }, largest)
  for (const width of widths) {
    await page.setViewportSize({ width, height: 844 })
    await expectGoodPage(page)
  }
}

async function expectGoodPages(page: Page, addresses: readonly string[]): Promise<void> {
  for (const address of addresses) {
    const response = await page.goto(address)
    expect(response?.status(), address).toBe(200)
    await expectGoodAtEveryWidth(page)
  }
}

/** Where the first link of the page leads whose address fits. */
async function firstLink(page: Page, address: RegExp): Promise<string> {
  const all = await page
    .locator('main a')
    .evaluateAll((links) => links.map((link) => link.getAttribute('href')))
  const found = all.find((href) => href !== null && address.test(href))
  if (!found) throw new Error(`${page.url()} has no link like ${address}`)
  return found
}

async function signInToOffice(page: Page): Promise<void> {
  await page.goto('/')
  await page.getByText('Others of this club').click()
  await page.getByRole('button', { name: /^Administrator/ }).click()
  await expect(page.getByRole('button', { name: 'Sign out' })).toBeVisible()
}

test('the pages for whoever is not signed in are good', async ({ page }) => {
  await page.goto('/')
  await expect(page.getByText(/stands still on Mon,? 8 Jun 2026/)).toBeVisible()
  await expectGoodAtEveryWidth(page)
  const mailed = ['signIn', 'newPassword', 'address'].map((purpose) => `/verify/${purpose}.${'a'.repeat(43)}`)
  await expectGoodPages(page, ['/sign-in', '/welcome', ...mailed])
})

test('the head coach’s pages are good, with everything on them opened', async ({ page }) => {
  await signIn(page, 'Head coach')
  for (const tab of ['Review', 'Policy', 'Themes', 'Flags']) {
    await openTab(page, tab)
    await expectGoodAtEveryWidth(page)
  }
  await expectGoodPages(page, ['/review/committee', '/club', '/account', '/club/formats'])
  await expectGoodPages(page, [await firstLink(page, /^\/club\/formats\/[^/]{36}$/)])
  await expectGoodPages(page, [await firstLink(page, /^\/club\/formats\/.*\/edit$/)])
})

test('a squad’s matches and a player’s are good', async ({ page }) => {
  await signIn(page, 'Coach')
  await openTab(page, 'Season book')
  await page.goto(await firstLink(page, /\/matches$/))
  await expect(page.getByText(/^Over \d+ matches everyone had between/)).toBeVisible()
  await expectGoodAtEveryWidth(page)
  await expectGoodPages(page, [await firstLink(page, /\/players\/.*kind=match/)])
})

test('luck or habit is good, and the coach is led to it', async ({ page }) => {
  await signIn(page, 'Coach')
  await openTab(page, 'Flags')
  await page.goto(await firstLink(page, /\/luck$/))
  await expect(page.getByText(/^A fair draw would give gaps like these/)).toBeVisible()
  await expectGoodAtEveryWidth(page)
})

test('the pages of whoever arranges the club are good', async ({ page }) => {
  await signInToOffice(page)
  await expectGoodPages(page, ['/club', '/club/seasons', '/club/squads', '/club/people'])
  await expectGoodPages(page, [await firstLink(page, /^\/club\/people\/./)])
})

test('the pages of whoever answers families are good', async ({ page }) => {
  await signInToOffice(page)
  await expectGoodPages(page, ['/club/record', '/club/requests'])
  const child = await firstLink(page, /^\/club\/children\/./)
  await expectGoodPages(page, [await firstLink(page, /^\/club\/requests\/./)])
  await page.goto(child)
  await expectGoodAtEveryWidth(page, { largest: 500 })
})

test('a coach’s pages about families, helpers and weekly practices are good', async ({ page }) => {
  await signIn(page, 'Coach')
  await openTab(page, 'Practices and matches')
  const weekly = await firstLink(page, /\/sessions\/weekly$/)
  const fridays = 'weekday=5&startsAt=17:00&place=&lengthMinutes=60&firstDay=2026-06-08&lastDay=2026-06-30'
  await expectGoodPages(page, [`${weekly}?${fridays}`])
  await expect(page.getByRole('button', { name: 'Add these 3 practices' })).toBeVisible()
  await openTab(page, 'Families')
  await expectGoodAtEveryWidth(page)
  const child = await firstLink(page, /\/families\/./)
  await expectGoodPages(page, [child, `${child}/links`])
})

test('the parent’s pages are good', async ({ page }) => {
  await signIn(page, 'Parent')
  await expectGoodAtEveryWidth(page)
  await expectGoodPages(page, [`${new URL(page.url()).pathname}/ask`])
})
