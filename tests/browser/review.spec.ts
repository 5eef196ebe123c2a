import { expect, type Page, test } from '@playwright/test'
import { sheetsOf } from './support/pdf'
import { readText } from './support/read-text'
import { openTab, playersInBook, signIn } from './support/sign-in'

const squadsOf = (page: Page) => page.locator('main section').filter({ has: page.locator('h2 a') })

async function expectA4(page: Page, sheetCount: number) {
  const sheets = sheetsOf(await page.pdf({ preferCSSPageSize: true }))
  expect(sheets).toHaveLength(sheetCount)
  for (const { width, height } of sheets) {
    expect(Math.abs(width - 595.28)).toBeLessThan(1)
    expect(Math.abs(height - 841.89)).toBeLessThan(1)
  }
}

test('the review prints on A4, one sheet for every squad, without what is for the screen', async ({
  page,
}) => {
  await signIn(page, 'Head coach')
  const squads = await squadsOf(page).count()
  expect(squads).toBeGreaterThan(1)
  await expectA4(page, squads)
  await page.emulateMedia({ media: 'print' })
  await expect(page.getByRole('navigation')).toHaveCount(0)
  await expect(page.getByText('Hand this squad over').first()).toBeHidden()
  await expect(page.getByText(/within the band/).first()).toBeVisible()
})

test('every squad says first what is written, then one sentence, and keeps the indices for who asks', async ({
  page,
}) => {
  await signIn(page, 'Head coach')
  for (const squad of await squadsOf(page).all()) {
    const text = await readText(page, squad)
    expect(text.indexOf('written down')).toBeGreaterThan(0)
    expect(text.indexOf('written down')).toBeLessThan(text.indexOf('within the band'))
    expect(text).not.toContain('Jain')
    await squad.getByText('Indices, and what they mean').click()
    await expect(squad.getByRole('columnheader', { name: 'Jain' })).toBeVisible()
    await expect(squad.getByText(/an even share of zero/)).toBeVisible()
  }
  // The autumn of the older squad is too little written to say anything.
  await page.getByRole('link', { name: /^Autumn term/ }).click()
  await expect(page.getByText('Not enough written down to say.').first()).toBeVisible()
})

test('the committee’s print has no player’s name and fits one sheet', async ({ page }) => {
  await signIn(page, 'Head coach')
  const players = await playersInBook(page)
  await openTab(page, 'Review')
  await page.getByRole('link', { name: 'Print for the committee' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/for the committee/)
  const text = await readText(page)
  for (const { name } of players) for (const part of name.split(' ')) expect(text).not.toContain(part)
  await expectA4(page, 1)
})

test('a coach sees the review once it is opened, answers it, and the head coach reads the answer', async ({
  page,
}) => {
  await signIn(page, 'Coach')
  await openTab(page, 'Review')
  await expect(page.getByText(/has not opened the review of this term yet/)).toBeVisible()
  await signIn(page, 'Head coach')
  await page.getByRole('button', { name: /^Open the review of/ }).click()
  await expect(page.getByText(/can be answered until it is final on Mon,? 15 Jun 2026/).first()).toBeVisible()

  await signIn(page, 'Coach')
  await openTab(page, 'Review')
  await expect(squadsOf(page)).toHaveCount(1)
  await page.getByLabel('Answer of the squad’s coach').fill('Two wet weeks; every round is written since.')
  await page.getByRole('button', { name: 'Save the answer' }).click()
  await expect(page.getByRole('status')).toHaveText('Answered.')

  await signIn(page, 'Head coach')
  await expect(page.getByText('Two wet weeks; every round is written since.').first()).toBeVisible()
})

test('a squad is handed over in one action, and not for a day that is over', async ({ page }) => {
  await signIn(page, 'Head coach')
  const squad = squadsOf(page).last()
  await squad.getByText('Hand this squad over').click()
  await squad.getByLabel('To').selectOption({ label: 'Petra Lindwhistle' })
  await squad.getByLabel('From').fill('2026-06-01')
  await squad.getByRole('button', { name: /^Hand over/ }).click()
  await expect(squad.getByRole('alert')).toContainText('choose 2026-06-08 or a later day')
  await expect(squad.getByLabel('From')).toHaveValue('2026-06-01')
  await squad.getByLabel('From').fill('2026-06-08')
  await squad.getByRole('button', { name: /^Hand over/ }).click()
  await expect(squad.getByText('Coached by Petra Lindwhistle')).toBeVisible()
})
