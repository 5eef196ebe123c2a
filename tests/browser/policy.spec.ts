import { expect, test } from '@playwright/test'
import { openTab, signIn } from './support/sign-in'

test('rules are changed as a new version; what is wrong is said and what was typed is kept', async ({
  page,
}) => {
  await signIn(page, 'Head coach')
  await openTab(page, 'Policy')
  const club = page
    .locator('main section')
    .filter({ has: page.getByRole('heading', { name: 'The whole club' }) })
  await club.getByText(/^Versions/).click()
  await expect(club.getByText(/week 36 of 2025 to week 1 of 2026/)).toBeVisible()
  await expect(club.getByText('Nobody waits more than 3 turns in a row.')).toBeVisible()

  // The older squad's age, which no other test looks at.
  const twelve = page.locator('main section').filter({ has: page.getByRole('heading', { name: 'Under 12' }) })
  await twelve.getByText('Make rules of its own for this age').click()
  await twelve.getByLabel(/most turns in a row/).fill('two')
  await twelve.getByLabel(/so many per cent are attack/).fill('40')
  await twelve.getByRole('button', { name: 'Make these the rules' }).click()
  await expect(twelve.getByRole('alert')).toContainText('write a number of turns, 1 to 20')
  await expect(twelve.getByLabel(/most turns in a row/)).toHaveValue('two')
  await expect(twelve.getByLabel(/so many per cent are attack/)).toHaveValue('40')

  await twelve.getByLabel(/most turns in a row/).fill('3')
  await twelve.getByLabel('Holds from').fill('2026-05-01')
  await twelve.getByRole('button', { name: 'Make these the rules' }).click()
  await expect(twelve.getByRole('status')).toContainText('counted anew', { timeout: 30_000 })
  await expect(twelve.getByText('counts 40 % as attack and 60 % as defence')).toBeVisible()
  await expect(twelve.getByText('Nobody waits more than 3 turns in a row.').first()).toBeVisible()
})

test('a coach reads the rules and cannot change them', async ({ page }) => {
  await signIn(page, 'Coach')
  await openTab(page, 'Policy')
  await expect(page.getByText(/Nobody waits more than/).first()).toBeVisible()
  await expect(page.getByRole('button', { name: 'Make these the rules' })).toHaveCount(0)
})
