import { expect, type Page, test } from '@playwright/test'
import { expectGoodPage } from './support/axe'
import { openTab, signIn } from './support/sign-in'

// The tests of a run share one club: what is made here has a name of its own at each width, and is put away again.

async function openDesigns(page: Page) {
  await openTab(page, 'Practices and matches')
  await page.getByRole('link', { name: 'Designs', exact: true }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Designs of practices')
}

const openAll = (page: Page) =>
  page.locator('main details').evaluateAll((all) => {
    for (const one of all) one.setAttribute('open', '')
  })

/** A part of the page that opens, by what it is called. */
const opened = (page: Page, summary: RegExp) => page.locator('details').filter({ hasText: summary })

/** Names are taken for good: a run in a book that has seen one before needs others. */
const run = Date.now().toString(36).slice(-5)

for (const width of [390, 1280] as const) {
  test.describe(`at ${width} px`, () => {
    test.use({ viewport: { width, height: 844 } })

    test('a coach finds a design for those who come, and what becomes of it with fewer', async ({ page }) => {
      await signIn(page, 'Coach')
      await openDesigns(page)
      await expectGoodPage(page)
      await page.getByLabel('Theme').selectOption({ label: '– Finishing' })
      await page.getByLabel('Children').fill('12')
      await page.getByRole('button', { name: 'Show' }).click()
      await expect(page).toHaveURL(/children=12/)
      await expect(page.getByRole('heading', { name: /^\d+ of \d+ designs$/ })).toBeVisible()
      await page.getByRole('link', { name: 'First look, first shot' }).click()

      await expect(page.getByRole('heading', { level: 1 })).toHaveText('First look, first shot')
      await expect(page.getByRole('img', { name: /^One against one to goal: / })).toBeVisible()
      await expect(page.getByText(/tighter than a match on the pitches published by/)).toBeVisible()
      await expect(page.getByText('With 14 every round can be played as it is drawn.')).toBeVisible()
      await expectGoodPage(page)
      await page.getByRole('spinbutton', { name: 'Children' }).fill('9')
      await page.getByRole('button', { name: 'Reckon for so many' }).click()
      await expect(page.getByText('With 9:')).toBeVisible()
      const smaller = page.getByRole('listitem').filter({ hasText: 'Three against two, late runner:' })
      await expect(smaller.first()).toContainText(/instead of/)
    })

    test('a copy is edited; what makes no sense is said beside its field, and saved only when put right', async ({
      page,
    }) => {
      const name = `Wide lanes ${run} at ${width}`
      await signIn(page, 'Coach')
      await openDesigns(page)
      await page.getByRole('link', { name: 'Lanes and the extra one', exact: true }).click()
      await page.getByRole('button', { name: 'Make a copy' }).click()
      await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^Edit: Lanes and the extra one, copy/)
      await page.getByLabel('Name', { exact: true }).fill(name)
      await page.getByLabel('Width', { exact: true }).fill('32')
      await page.getByRole('button', { name: 'yards' }).click()
      await expect(page.getByLabel('Length', { exact: true })).toHaveValue('32.808')
      await page.getByRole('button', { name: 'metres' }).click()
      await expect(page.getByLabel('Width', { exact: true })).toHaveValue('32')

      const first = opened(page, /^1\. Two against one in lanes/)
      await first.getByLabel('Seconds a turn', { exact: true }).fill('0')
      await expect(
        first.getByText('is no length; write how long a turn lasts, such as 45 seconds'),
      ).toBeVisible()
      await first.getByLabel('Turns', { exact: true }).fill('0')
      await expect(first.getByText(/is a round without turns/)).toBeVisible()
      const area = first.getByRole('group', { name: 'Area 1', exact: true })
      for (const [role, times] of [
        ['Attack', 2],
        ['Defence', 1],
      ] as const)
        for (let time = 0; time < times; time += 1)
          await area.getByRole('button', { name: `${role}: fewer` }).click()
      await expect(area.getByText(/has no places; give it attackers/)).toBeVisible()
      await openAll(page)
      await expectGoodPage(page)

      await page.getByRole('button', { name: 'Save the design' }).click()
      const refused = page.getByRole('alert').filter({ hasText: 'Nothing was saved yet' })
      await expect(refused).toContainText('Round 1, length of a turn:')
      await expect(refused).toContainText('Round 1, area 1:')

      await first.getByLabel('Seconds a turn', { exact: true }).fill('50')
      await first.getByLabel('Turns', { exact: true }).fill('5')
      for (let time = 0; time < 9; time += 1) await area.getByRole('button', { name: 'Attack: more' }).click()
      await expect(first.getByText(/15 places, and Under-10s has 14 children; .* would fit/)).toBeVisible()
      await expect(page.getByText('Meant for another squad than Under-10s')).toBeVisible()
      for (let time = 0; time < 6; time += 1)
        await area.getByRole('button', { name: 'Attack: fewer' }).click()
      await area.getByRole('button', { name: 'Defence: more' }).click()
      await expect(first.getByText(/would fit/)).toBeHidden()
      await expect(page.getByText('Meant for another squad than Under-10s')).toBeHidden()
      await page.getByRole('button', { name: 'Save the design' }).click()

      await expect(page.getByRole('heading', { level: 1 })).toHaveText(name)
      await expect(page.getByText('5 turns of 50 s, 20 s between')).toBeVisible()
      await expect(page.getByText('3v1, 2v1, 2v1: more of us')).toBeVisible()
      await expect(page.getByText('30 × 32 m.')).toBeVisible()
      await expect(page.getByRole('link', { name: 'Lanes and the extra one' })).toBeVisible()

      await page.getByRole('button', { name: 'Put away' }).click()
      await expect(page.getByRole('button', { name: 'Take out again' })).toBeVisible()
      await openDesigns(page)
      await expect(page.getByRole('link', { name })).toBeHidden()
      await page.getByRole('link', { name: /^Put away: / }).click()
      await expect(page.getByRole('link', { name })).toBeVisible()
    })

    test('a new design is written from nothing, with an adaptation that says what it does', async ({
      page,
    }) => {
      const name = `From nothing ${run} at ${width}`
      await signIn(page, 'Coach')
      await openDesigns(page)
      await page.getByRole('link', { name: 'New design' }).click()
      await expect(page.getByRole('heading', { level: 1 })).toHaveText('New design')
      await page.getByRole('button', { name: 'Save the design' }).click()
      await expect(page.getByText('is empty; write what the design is called').first()).toBeVisible()
      await page.getByLabel('Name', { exact: true }).fill(name)

      await page.getByRole('button', { name: 'Add an adaptation' }).click()
      const adaptation = opened(page, /^No title yet/)
      await adaptation.getByLabel('What is done', { exact: true }).fill('Three quarters as long')
      const named = opened(page, /^Three quarters as long/)
      await named.getByLabel('Why').fill('Less time to look up.')
      // 30 × 20 m for the three of the first round is 200 m², three quarters of it 150 m².
      await expect(named.getByText('200 → 150 m² for each child')).toBeVisible()
      await openAll(page)
      await expectGoodPage(page)
      await page.reload()
      await expect(page.getByText('What you had typed here before is back.')).toBeVisible()
      await expect(page.getByLabel('Name', { exact: true })).toHaveValue(name)
      await page.getByRole('button', { name: 'Save the design' }).click()
      await expect(page.getByRole('heading', { level: 1 })).toHaveText(name)
      await expect(page.getByText('Harder for the attackers.')).toBeVisible()
      await page.getByRole('button', { name: 'Put away' }).click()
      await expect(page.getByRole('button', { name: 'Take out again' })).toBeVisible()
    })
  })
}
