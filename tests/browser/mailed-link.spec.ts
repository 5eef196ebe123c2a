import { expect, test } from '@playwright/test'

test('the form that a mailed link opens is taken without a script', async ({ browser }) => {
  const page = await (await browser.newContext({ javaScriptEnabled: false })).newPage()
  await page.goto(`/verify/newPassword.${'x'.repeat(43)}`)
  await page.getByLabel('New password').fill('nine plain kettles sing')
  await page.getByRole('button', { name: 'Take this password' }).click()
  await expect(page.getByText('Your password is the old one still')).toBeVisible()
})
