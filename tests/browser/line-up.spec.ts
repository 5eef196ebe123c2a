import { expect, type Page, test } from '@playwright/test'
import { expectGoodPage } from './support/axe'
import { sheetsOf } from './support/pdf'
import { readText } from './support/read-text'
import { openTab, signIn } from './support/sign-in'

// The tests of a run share one club: each width plans a match of its own that nothing else looks at.
const matches = { 390: '2026-06-21', 1280: '2026-06-28' } as const

async function openLineUp(page: Page, day: string) {
  await signIn(page, 'Coach')
  await openTab(page, 'Practices and matches')
  await page.getByRole('link', { name: 'New practice or match' }).click()
  await page.getByRole('button', { name: 'Match', exact: true }).click()
  await page.getByLabel('Day', { exact: true }).fill(day)
  await page.getByLabel('Title').fill('Against the Long Meadow Voles')
  await page.getByRole('button', { name: 'Go on to writing it down' }).click()
  await page.waitForURL(/sessions\/[0-9a-f-]{36}/)
  await page.goto(page.url().replace(/(sessions\/[0-9a-f-]{36}).*$/, '$1'))
  await page.getByRole('link', { name: 'Plan the line-up' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^Plan the line-up, /)
}

const part = (page: Page, name: string) => page.locator(`[data-part="${name}"]`)

async function searched(page: Page) {
  await expect(part(page, 'proof')).toHaveAttribute('data-settled', 'yes', { timeout: 25_000 })
}

/** Six come to seven a side: said beside the field, with what would work; then ten come. */
async function sixThenTen(page: Page) {
  const boxes = page.getByRole('list').getByRole('checkbox', { checked: true })
  while ((await boxes.count()) > 6) await boxes.last().click()
  await expect(page.getByRole('alert').first()).toContainText('play with six')
  await expect(part(page, 'choices')).toContainText('With six a side: everyone', { timeout: 10_000 })
  await expectGoodPage(page)
  const open = page.getByRole('list').getByRole('checkbox', { checked: false })
  while ((await boxes.count()) < 10) await open.first().click()
  await expect(page.getByRole('heading', { name: 'Who comes: 10' })).toBeVisible()
  await expect(part(page, 'proof')).toContainText(/As even as ten players allow|A fair plan for ten players/)
}

test.describe('at 390 px', () => {
  test.use({ viewport: { width: 390, height: 844 } })

  test('a coach sees at once what stands in the way, stops the search, swaps two', async ({ page }) => {
    await openLineUp(page, matches[390])
    await sixThenTen(page)
    // The search may be over before it is stopped.
    await page
      .getByRole('button', { name: 'Stop, keep the best so far' })
      .click({ timeout: 3000 })
      .catch(() => {})
    await searched(page)
    const on = page.getByRole('button', { name: /, 2nd half, from 0:00: (back|middle|forward)/ }).first()
    const off = page.getByRole('button', { name: /, 2nd half, from 0:00: off/ }).first()
    await on.click()
    await off.click()
    await expect(part(page, 'swap')).toContainText(/minutes in place of|play as long as before|would|At /)
    await expectGoodPage(page)
  })
})

test.describe('at 1280 px', () => {
  test.use({ viewport: { width: 1280, height: 844 } })

  test('a coach plans for ten, takes a trade, holds a place, saves, prints sheet and card', async ({
    page,
  }) => {
    await openLineUp(page, matches[1280])
    await sixThenTen(page)
    await searched(page)
    await page.getByRole('button', { name: /^Work out what fewer changes would cost/ }).click()
    const trade = part(page, 'choices').getByRole('listitem').filter({ hasText: 'fewer:' }).first()
    await trade.getByRole('button', { name: 'Take this' }).click({ timeout: 25_000 })
    await searched(page)
    await expect(page.getByLabel('Changes I will bear', { exact: true })).toBeAttached()

    await page.getByRole('button', { name: /, 1st half, from 0:00: keeper/ }).click()
    await page.getByRole('button', { name: 'Hold this place' }).click()
    await page.getByRole('button', { name: 'Close', exact: true }).click()
    await expect(page.getByRole('button', { name: /, 1st half, from 0:00: keeper.*, held/ })).toBeVisible()
    await expectGoodPage(page)

    await page.getByRole('button', { name: 'Save this line-up' }).click()
    await expect(page.getByRole('status').filter({ hasText: /^Saved\./ })).toBeVisible({ timeout: 15_000 })
    await page.reload()
    await expect(page.getByRole('button', { name: /, 1st half, from 0:00: keeper.*, held/ })).toBeVisible()

    await page.getByRole('link', { name: 'Print on A4' }).click()
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Against the Long Meadow Voles')
    await expectGoodPage(page)
    const [sheet, ...more] = sheetsOf(await page.pdf({ format: 'A4' }))
    expect(more).toEqual([])
    expect(sheet?.width).toBeCloseTo(595, -1)
    const text = await readText(page)
    for (const word of ['apart', 'owed', 'less', 'Fernhollow', '■']) expect(text).not.toContain(word)

    // Cards of 74 × 105 mm: A7 of ISO 216, at 96 px to the inch.
    await page.getByRole('link', { name: 'As a card' }).click()
    const card = page.locator('.line-up-card').first()
    await page.emulateMedia({ media: 'print' })
    const box = await card.boundingBox()
    expect(box?.width).toBeCloseTo((74 / 25.4) * 96, 0)
    expect(box?.height).toBeCloseTo((105 / 25.4) * 96, 0)
    expect(await card.evaluate(({ scrollHeight, clientHeight }) => scrollHeight - clientHeight)).toBe(0)
  })
})
