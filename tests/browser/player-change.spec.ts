import { expect, type Page, test } from '@playwright/test'
import { expectGoodPage } from './support/axe'
import { openTab, signIn } from './support/sign-in'

// The tests of a run share one book: what is changed of a player is set back, and names are told apart by the width.

async function openPlayers(page: Page) {
  await openTab(page, 'Season book')
  await page.getByRole('link', { name: 'Players: who belongs to the squad' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^Players/)
}

/** Opens the page of one of those who may be put in goal, and gives the name. From the season’s start on: it has figures. */
async function openKeeper(page: Page): Promise<string> {
  await openPlayers(page)
  const since = page.getByRole('row').filter({ hasText: /since .* 2025/ })
  const row = since.filter({ hasText: 'may be put there' }).first()
  const name = (await row.getByRole('link').textContent()) ?? ''
  await row.getByRole('link').click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(name)
  return name
}

/** Even share of attack on a player's page, in minutes. */
async function evenAttack(page: Page): Promise<number> {
  const name = await page
    .getByRole('img', { name: /^Attack: had/ })
    .first()
    .getAttribute('aria-label')
  return Number(/even share (\d+) min/.exec(name ?? '')?.[1])
}

const saved = (page: Page, text: RegExp) => page.getByRole('status').filter({ hasText: text })
// The season's sessions and flags are made anew with it: on a busy machine that takes its time.
const counting = { timeout: 30_000 }

// Before the season, and at each width a day of its own: what is agreed ends on the day on which it begins.
for (const [width, agreedDay] of [
  [390, '2025-08-01'],
  [1280, '2025-08-02'],
] as const) {
  test.describe(`at ${width} px`, () => {
    test.use({ viewport: { width, height: 844 } })

    test('a coach says from when on a player asks not to be put in goal, and agrees fewer turns', async ({
      page,
    }) => {
      await signIn(page, 'Coach')
      const name = await openKeeper(page)
      const settings = page
        .locator('section')
        .filter({ has: page.getByRole('heading', { name: 'In the squad' }) })
      await expect(settings.getByText('May be put in goal.')).toBeVisible()

      await settings.getByText('May be put in goal, or asks not to be').click()
      await settings.getByLabel('From', { exact: true }).first().fill('2026-03-01')
      await settings.getByRole('button', { name: 'Save from that day on' }).click()
      await expect(
        saved(page, new RegExp(`${name} is not to be put in goal from 2026-03-01 on. \\d+ written sessions`)),
      ).toBeVisible(counting)
      await expect(settings.getByText('From Sun, 1 Mar 2026 on: asks not to be put in goal.')).toBeVisible()
      await expect(settings.getByText('Before Sun, 1 Mar 2026: may be put in goal.')).toBeVisible()

      const before = await evenAttack(page)
      expect(before).toBeGreaterThan(10)
      await settings.getByText('What is agreed with the family').click()
      const agreement = settings.locator('form').filter({ hasText: 'How much of an even share' })
      await agreement.getByLabel(/^How much of an even share/).fill('50')
      await agreement.getByLabel('From', { exact: true }).fill(agreedDay)
      await settings.getByRole('button', { name: 'Agree this' }).click()
      await expect(saved(page, /No reason is kept/)).toBeVisible(counting)
      await expect(page.getByText('50 % of an even share is due', { exact: false }).first()).toBeVisible()
      await expect.poll(() => evenAttack(page), counting).toBeLessThan(before)
      expect(Math.abs((await evenAttack(page)) - before / 2)).toBeLessThanOrEqual(1)
      await expectGoodPage(page)

      // Taken back, both: the book is as it was before.
      const ending = settings.locator('form').filter({ has: page.getByRole('button', { name: 'End it' }) })
      await ending.getByLabel('Last day', { exact: true }).fill(agreedDay)
      await ending.getByRole('button', { name: 'End it' }).click()
      await expect.poll(() => evenAttack(page), counting).toBe(before)
      await settings.getByLabel('From', { exact: true }).first().fill('2026-03-01')
      await settings.getByRole('button', { name: 'Save from that day on' }).click()
      await expect(settings.getByText('May be put in goal.')).toBeVisible(counting)

      // What is wrong is said beside the form, and what was typed stays.
      await settings.getByText('Days in the squad').click()
      await settings.getByLabel('Until').last().fill('2024-01-01')
      await settings.getByRole('button', { name: 'Save days' }).click()
      await expect(page.getByRole('alert').filter({ hasText: 'is before' })).toBeVisible(counting)
      await expect(settings.getByLabel('Until').last()).toHaveValue('2024-01-01')
    })

    test('a player is added, one more of the same name stays apart, and one leaves', async ({ page }) => {
      await signIn(page, 'Coach')
      await openPlayers(page)
      const name = `Wren Alder${width}`
      const add = async () => {
        await page.getByLabel('Name', { exact: true }).fill(name)
        // From a day to come on: the practices that other tests write go on as they are.
        await page.getByLabel('Member from').fill('2026-09-01')
        await page.getByRole('button', { name: 'Add the player' }).click()
      }
      await add()
      await expect(saved(page, new RegExp(`${name} belongs to the`))).toBeVisible(counting)
      await expect(page.getByRole('link', { name, exact: true })).toBeVisible()

      await add()
      await expect(page.getByRole('alert').filter({ hasText: `There is a ${name} already` })).toBeVisible(
        counting,
      )
      await expect(page.getByLabel('Name', { exact: true })).toHaveValue(name)
      await page.getByLabel('Who is it?').selectOption('another')
      await page.getByRole('button', { name: 'Add the player' }).click()
      await expect(page.getByRole('link', { name: `${name} (2)` })).toBeVisible(counting)
      await expectGoodPage(page)

      await page.getByRole('link', { name: `${name} (2)` }).click()
      await expect(page.getByRole('heading', { level: 1 })).toHaveText(`${name} (2)`)
      await page.getByText('Days in the squad').click()
      const first = await page.getByLabel('Member from').inputValue()
      await page.getByLabel('Until').last().fill(first)
      await page.getByRole('button', { name: 'Save days' }).click()
      await expect(saved(page, /belongs to the squad from .* to /)).toBeVisible(counting)
    })

    test('a theme is added and planned, never more than the whole', async ({ page }) => {
      await signIn(page, 'Coach')
      await openTab(page, 'Themes')
      const theme = `Throwing in ${width}`
      await page.getByText('A new theme', { exact: true }).click()
      await page.getByRole('textbox', { name: 'Name', exact: true }).fill(theme)
      await page.getByRole('button', { name: 'Add the theme' }).click()
      await expect(saved(page, new RegExp(`Added: ${theme}`))).toBeVisible()

      await page.getByText(/^The programme of /).click()
      const share = page.getByRole('textbox', { name: theme })
      await share.fill('100')
      await expect(page.getByText('100 % at most can be planned').first()).toBeVisible()
      await page.getByRole('button', { name: 'Save the programme' }).click()
      await expect(page.getByRole('alert').filter({ hasText: 'Take' })).toBeVisible()
      await expect(share).toHaveValue('100')
      await share.fill('0')
      await page.getByRole('button', { name: 'Save the programme' }).click()
      await expect(saved(page, /^The programme of .* is saved/)).toBeVisible()
      await expectGoodPage(page)
    })
  })
}

test('a parent finds neither the squad’s players nor a form to change one', async ({ page }) => {
  await signIn(page, 'Coach')
  await openTab(page, 'Season book')
  const address = page.url().replace(/book$/, 'players')
  await page.context().clearCookies()
  await signIn(page, 'Parent')
  await expect(page.getByText('Change', { exact: true })).toHaveCount(0)
  await page.goto(address)
  await expect(page.getByRole('heading', { level: 1 })).not.toHaveText(/^Players/)
  await expect(page.getByRole('button', { name: 'Add the player' })).toHaveCount(0)
})
