import { expect, type Page, test } from '@playwright/test'
import { openTab, signIn } from './support/sign-in'

const openCount = async (page: Page) => {
  const label = await page
    .getByRole('navigation', { name: 'Flags' })
    .getByRole('link', { name: /^Open/ })
    .textContent()
  return Number(/\((\d+)\)/.exec(label ?? '')?.[1])
}

const firstFlag = (page: Page) =>
  page
    .locator('main li')
    .filter({ has: page.getByRole('button') })
    .first()

test.beforeEach(async ({ page }) => {
  await signIn(page, 'Coach')
  await openTab(page, 'Flags')
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^Flags/)
})

test('a flag is answered in one tap, and stands among the answered with who, when and why', async ({
  page,
}) => {
  const before = await openCount(page)
  expect(before).toBeGreaterThan(1)
  const who = (await firstFlag(page).getByRole('link').first().textContent()) ?? ''
  await firstFlag(page).getByRole('button', { name: 'Agreed with family' }).click()
  await expect.poll(() => openCount(page)).toBe(before - 1)
  await page.getByRole('link', { name: /^Answered/ }).click()
  const answered = page.locator('main li').filter({ hasText: 'Agreed with family' }).first()
  await expect(answered).toContainText(who)
  await expect(answered).toContainText('Answered by Idris Fallowmere on')

  // A wrong tap is put right by another answer.
  await answered.getByText('Answer otherwise').click()
  await answered.getByRole('button', { name: 'Talked it over' }).click()
  await expect(page.locator('main li').filter({ hasText: ': Talked it over' })).toContainText([who])
})

test('own words are refused empty, kept as typed, and taken', async ({ page }) => {
  const before = await openCount(page)
  const flag = firstFlag(page)
  await flag.getByText('In own words').click()
  await flag.getByRole('button', { name: 'Answer', exact: true }).click()
  await expect(flag.getByRole('alert')).toContainText('write a few words')
  await flag.getByLabel(/^Own words/).fill('Starts with the ball on Tuesday.')
  await flag.getByRole('button', { name: 'Answer', exact: true }).click()
  await expect.poll(() => openCount(page)).toBe(before - 1)
})

test('flags are looked up by cause and by what to do, never put in order of size', async ({ page }) => {
  const causes = page.getByRole('navigation', { name: 'Cause' }).getByRole('link')
  const labels = await causes.allTextContents()
  for (const label of labels.slice(1)) {
    const count = Number(/\((\d+)\)/.exec(label)?.[1])
    await causes.filter({ hasText: label }).click()
    await expect(causes.filter({ hasText: label })).toHaveAttribute('aria-current', 'true')
    await expect(page.locator('main li').filter({ has: page.getByRole('button') })).toHaveCount(count)
    await causes.first().click()
    await expect(causes.first()).toHaveAttribute('aria-current', 'true')
  }
  const orders = page.getByRole('navigation', { name: 'In order of' }).getByRole('link')
  await expect(orders).toHaveText(['names', 'what to do'])
})
