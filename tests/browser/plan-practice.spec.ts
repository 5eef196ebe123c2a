import { expect, type Page, test } from '@playwright/test'
import { expectGoodPage } from './support/axe'
import { sheetsOf } from './support/pdf'
import { readText } from './support/read-text'
import { openTab, signIn } from './support/sign-in'

// The tests of a run share one club: each width plans a practice of its own that nothing else looks at.
const practices = { 390: 'Tue, 23 Jun 2026', 1280: 'Tue, 16 Jun 2026' } as const

async function openPlan(page: Page, day: string) {
  await signIn(page, 'Coach')
  await openTab(page, 'Practices and matches')
  await page
    .getByRole('link', { name: new RegExp(day) })
    .first()
    .click()
  await page.getByRole('link', { name: /^(Plan it|The plan)$/ }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(`Plan the practice, ${day}`)
}

const part = (page: Page, name: string) => page.locator(`[data-part="${name}"]`)
const place = (page: Page, name: string, turn: number) =>
  page.getByRole('button', { name: new RegExp(`^${name}.*, turn ${turn}: `) })

const searching = (page: Page) => page.getByRole('progressbar', { name: 'Looking for a better plan' })

/** Waits until the search for a fairer plan is over. */
async function searched(page: Page) {
  await expect(part(page, 'proof')).toHaveAttribute('data-settled', 'yes', { timeout: 25_000 })
}

for (const width of [390, 1280] as const) {
  test.describe(`at ${width} px`, () => {
    test.use({ viewport: { width, height: 844 } })

    test('a coach plans for fourteen, swaps, holds a place, looks again, saves, prints', async ({ page }) => {
      await openPlan(page, practices[width])
      await page.getByText(/^Practice: /).click()
      await page.getByRole('button', { name: /more designs?$/ }).click()
      await page.getByRole('button', { name: /^Lanes and the extra one/ }).click()
      await expect(page.getByRole('heading', { name: 'Expected: 14' })).toBeVisible()
      await expect(part(page, 'proof')).not.toBeEmpty()
      await searched(page)
      await expect(part(page, 'proof')).toHaveText(
        /^(As fair as fourteen allow( with this free game)?: nothing fairer is possible\.|Within \d+ % of the best possible( with this free game)?\.)$/,
      )
      await expect(part(page, 'facts')).toContainText('Nobody waits more than')
      await expectGoodPage(page)

      // Two places of the first turn: what the swap costs stands there before it is made.
      const first = await placesOf(page, 1)
      const one = first.find(({ word }) => word.startsWith('attacking'))?.name ?? ''
      const other = first.find(({ word }) => word.startsWith('defending'))?.name ?? ''
      await place(page, one, 1).click()
      await expect(part(page, 'swap')).toContainText(`Turn 1: ${one}, attacking`)
      await place(page, other, 1).click()
      await expect(part(page, 'swap')).toContainText(/Costs|more even/)
      await page.getByRole('button', { name: 'Swap them' }).click()
      await expect(place(page, one, 1)).toHaveAccessibleName(/defending/)
      await expect(place(page, other, 1)).toHaveAccessibleName(/attacking/)

      // Held fast, it stays through a new search.
      await place(page, one, 1).click()
      await page.getByRole('button', { name: 'Hold this place fast' }).click()
      await page.getByRole('button', { name: 'Close', exact: true }).click()
      await expect(place(page, one, 1)).toHaveAccessibleName(/defending.*held fast/)
      await page.getByRole('button', { name: 'Look for a fairer plan around what is held fast' }).click()
      await expect(part(page, 'proof')).toHaveAttribute('data-settled', 'no')
      await page.waitForTimeout(1500)
      await expect(place(page, one, 1)).toHaveAccessibleName(/defending.*held fast/)

      await page.getByRole('button', { name: 'Save this plan' }).click()
      await expect(page.getByRole('button', { name: 'Saved' })).toBeVisible({ timeout: 15_000 })
      await expect(page.getByRole('status').filter({ hasText: /^Saved\./ })).toBeVisible()
      await page.reload()
      await expect(place(page, one, 1)).toHaveAccessibleName(/defending.*held fast/)
      await page.getByRole('link', { name: 'Sheet to print' }).click()
      await expect(page.getByRole('heading', { level: 1 })).toHaveText('Lanes and the extra one')
      await expectGoodPage(page)
      const [sheet, ...more] = sheetsOf(await page.pdf({ format: 'A4' }))
      expect(more).toEqual([])
      expect(sheet?.width).toBeCloseTo(595, -1)
      const text = await readText(page)
      for (const word of ['apart', 'owed', 'less', 'Fernhollow', '■']) expect(text).not.toContain(word)
      expect(text).toContain('Adaeze')
    })
  })
}

test('eleven come to a design for more: said why, and one tap takes the nearest that works', async ({
  page,
}) => {
  await openPlan(page, practices[1280])
  await page.getByText(/^Practice: /).click()
  await page.getByRole('button', { name: /more designs?$/ }).click()
  await page.getByRole('button', { name: /^Back to back/ }).click()
  for (const name of ['Adaeze', 'Bao', 'Cosmo'])
    await page.getByRole('checkbox', { name: new RegExp(name) }).click()
  await expect(page.getByRole('heading', { name: 'Expected: 11' })).toBeVisible()
  await expect(part(page, 'ways-out')).toContainText('There is no plan for this')
  await expect(part(page, 'ways-out')).toContainText('eleven are expected for it')
  await expectGoodPage(page)
  await page.getByRole('button', { name: 'Take this' }).first().click()
  await expect(part(page, 'ways-out')).toHaveCount(0)
  await expect(part(page, 'proof')).not.toBeEmpty()
})

test('a child’s day, the sides in their bibs, what rules cost, a search stopped', async ({ page }) => {
  await openPlan(page, practices[1280])
  await page.getByText(/^Practice: /).click()
  await page.getByRole('button', { name: /more designs?$/ }).click()
  await page.getByRole('button', { name: /^Two ferries/ }).click()
  await page.getByRole('button', { name: 'For today: Elif Copperdene' }).click()
  await page.getByLabel('At most so many turns').check()
  await page.getByLabel('Most turns for Elif Copperdene', { exact: true }).fill('12')
  await expect(page.getByRole('button', { name: 'For today: Elif Copperdene' })).toHaveText(
    'at most 12 turns',
  )
  // A design with sides has them kept from the start.
  await expect(page.getByLabel(/Everyone keeps to their bibs/)).toBeChecked()
  await page.getByLabel(/Everyone keeps to their bibs/).uncheck()
  await page.getByLabel(/Everyone keeps to their bibs/).check()
  await expect(page.getByRole('button', { name: 'Split them evenly' })).toBeVisible()
  await page.getByRole('button', { name: 'Stop, keep the best so far' }).click({ timeout: 10_000 })
  await expect(searching(page)).toHaveCount(0)
  await page.getByText('What it does for each child').click()
  const elif = page
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: 'Elif Copperdene' }) })
    .last()
  const turns = [...(await readText(page, elif)).matchAll(/(\d+) turns? ·/g)].slice(0, 3)
  expect(turns.reduce((sum, [, count]) => sum + Number(count), 0)).toBeLessThanOrEqual(12)
  await page.getByText('What each rule costs').click()
  await page.getByRole('button', { name: 'What does each rule cost?' }).click()
  await expect(
    part(page, 'prices')
      .getByText(/costs|not known/)
      .first(),
  ).toBeVisible({ timeout: 15_000 })
  await expectGoodPage(page)
})

test('twenty-four turns for fourteen fit on one sheet of A4', async ({ page }) => {
  // Names of designs are taken for good.
  const name = `The very long way ${Date.now().toString(36).slice(-5)}`
  await signIn(page, 'Coach')
  await openTab(page, 'Practices and matches')
  await page.getByRole('link', { name: 'Designs', exact: true }).click()
  await page.getByRole('link', { name: 'The long way round', exact: true }).click()
  await page.getByRole('button', { name: 'Make a copy' }).click()
  await page.getByLabel('Name', { exact: true }).fill(name)
  const first = page.locator('details').filter({ hasText: /^1\. / })
  await first.getByLabel('Turns', { exact: true }).fill('10')
  await page.getByRole('button', { name: 'Save the design' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(name)
  const design = page.url()
  await openPlan(page, 'Tue, 9 Jun 2026')
  await page.getByText(/^Practice: /).click()
  await page.getByRole('button', { name: /more designs?$/ }).click()
  await page.getByRole('button', { name: new RegExp(`^${name}`) }).click()
  await expect(place(page, 'Noor', 24)).toBeVisible()
  await page.getByRole('button', { name: 'Save this plan' }).click()
  await page.getByRole('link', { name: 'Sheet to print' }).click()
  await expect(page.getByRole('rowheader')).toHaveCount(24)
  expect(sheetsOf(await page.pdf({ format: 'A4' }))).toHaveLength(1)
  await page.goto(design)
  await page.getByRole('button', { name: 'Put away' }).click()
  await expect(page.getByRole('button', { name: 'Take out again' })).toBeVisible()
})

test('a parent reaches neither the plan nor its sheet', async ({ page }) => {
  await openPlan(page, practices[1280])
  const address = page.url()
  await page.getByRole('button', { name: 'Sign out' }).click()
  await signIn(page, 'Parent')
  for (const where of [address, `${address}/sheet`]) {
    const answer = await page.goto(where)
    expect(answer?.status()).toBe(404)
  }
})

/** Who is where in a turn, as the buttons of the plan say it. */
async function placesOf(page: Page, turn: number) {
  const labels = await page
    .getByRole('button', { name: new RegExp(`, turn ${turn}: `) })
    .evaluateAll((all) => all.map((button) => button.getAttribute('aria-label') ?? ''))
  return labels.map((label) => {
    const [name = '', word = ''] = label.split(`, turn ${turn}: `)
    return { name, word }
  })
}
