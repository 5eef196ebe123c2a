import { expect, test } from '@playwright/test'
import { expectGoodPage } from './support/axe'
import { openTab, signIn } from './support/sign-in'

test('a coach plans the weeks ahead by keyboard, looks at what if, saves, and prints', async ({ page }) => {
  await signIn(page, 'Coach')
  await openTab(page, 'Weeks ahead')
  const proof = page.locator('[data-part="proof"]')
  await expect(proof).toContainText('In expectation')
  const planned = page.locator('button[aria-pressed="true"]')
  // The first one’s turns are planned already: the second goes in the place of the third.
  await expect(page.getByRole('region', { name: 'Weeks and themes' })).toBeVisible()
  const names = await planned.evaluateAll((cells) =>
    cells.map((cell) => cell.getAttribute('aria-label') ?? ''),
  )
  const byDay = (day: string) => names.find((name) => name.includes(day))?.split(',')[0] ?? ''
  const [before, after] = [byDay('9 Jun'), byDay('11 Jun')]
  expect(before).not.toBe('')
  await page.locator('button[aria-pressed="true"][aria-label*="9 Jun"]').focus()
  await page.keyboard.press('Shift+ArrowRight')
  await expect(page.getByText(/9 Jun 2026 and .*11 Jun 2026 are exchanged, and held/)).toBeVisible()
  await expect(page.locator('button[aria-pressed="true"][aria-label*="11 Jun"]')).toHaveAttribute(
    'aria-label',
    new RegExp(`^${before},.*held$`),
  )
  await expect(page.locator('button[aria-pressed="true"][aria-label*="9 Jun"]')).toHaveAttribute(
    'aria-label',
    new RegExp(`^${after},.*held$`),
  )
  await page.getByLabel('What if', { exact: true }).selectOption('drop')
  await page.getByRole('button', { name: 'See what changes' }).click()
  await expect(page.locator('[data-part="what-if"]')).toContainText(/would end inside the tolerance/)
  await page.getByRole('button', { name: 'Leave it as it is' }).click()
  for (const width of [390, 1280]) {
    await page.setViewportSize({ width, height: 844 })
    await expectGoodPage(page)
  }
  // Other tests look at these practices too.
  await page.getByLabel('Put theme and design onto the next four practices').uncheck()
  await page.getByRole('button', { name: 'Save this plan' }).click()
  await expect(page.getByText(/^Saved: \d+ practices ahead\./)).toBeVisible()
  await page.getByRole('link', { name: 'Print on A4' }).click()
  await expect(page.getByRole('button', { name: 'Print it' })).toBeVisible()
  await expect(page.getByRole('row', { name: /11 Jun 2026/ })).toContainText(before)
  await expectGoodPage(page)
})
