import { expect, test } from '@playwright/test'
import { expectGoodPage } from './support/axe'
import { openTab, signIn } from './support/sign-in'

for (const width of [390, 1280]) {
  test.describe(`at ${width} px`, () => {
    test.use({ viewport: { width, height: 844 } })

    test('the first page is good', async ({ page }) => {
      await page.goto('/')
      await expect(page.getByText(/stands still on Mon,? 8 Jun 2026/)).toBeVisible()
      await expectGoodPage(page)
    })

    test('the head coach’s pages are good, with everything on them opened', async ({ page }) => {
      await signIn(page, 'Head coach')
      for (const tab of ['Review', 'Policy', 'Themes', 'Flags']) {
        await openTab(page, tab)
        await page.locator('main details').evaluateAll((all) => {
          for (const one of all) one.setAttribute('open', '')
        })
        await expectGoodPage(page)
      }
      await page.goto('/review/committee')
      await expectGoodPage(page)
    })

    test('the parent’s page is good', async ({ page }) => {
      await signIn(page, 'Parent')
      await expectGoodPage(page)
    })
  })
}
