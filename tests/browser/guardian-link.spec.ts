import { type Browser, expect, type Page, test } from '@playwright/test'
import { expectGoodPage } from './support/axe'

async function signInAs(browser: Browser, name: string): Promise<Page> {
  const page = await (await browser.newContext({ viewport: { width: 390, height: 844 } })).newPage()
  await page.goto('/')
  const button = page.getByRole('button', { name: new RegExp(name) })
  if (!(await button.isVisible())) await page.getByText('Others of this club').click()
  await button.click()
  await expect(page.getByRole('button', { name: 'Sign out' })).toBeVisible()
  return page
}

test('an administrator records a guardian, the coach hands over a link, the parent opens the page with it', async ({
  browser,
}) => {
  const office = await signInAs(browser, 'Odile')
  await office.goto('/club/people')
  await expectGoodPage(office)
  await office.getByLabel('Name').fill('Rosa Wrenfold')
  await office.getByRole('button', { name: 'Add this person' }).click()
  await expect(office.getByRole('heading', { level: 1, name: 'Rosa Wrenfold' })).toBeVisible()
  await office.getByLabel('Find a child by name').fill('kiri')
  await office.getByRole('button', { name: 'Find', exact: true }).click()
  await office.getByRole('button', { name: 'Record Rosa Wrenfold for Kiri Wrenfold' }).click()
  await expect(office.getByText('has not opened the page yet')).toBeVisible()
  await expectGoodPage(office)

  const coach = await signInAs(browser, 'Idris')
  await coach.getByRole('link', { name: 'Families' }).click()
  await coach.getByRole('link', { name: 'Kiri Wrenfold' }).click()
  await coach.getByRole('link', { name: 'Links for guardians' }).click()
  const rosa = coach.locator('section', { hasText: 'Rosa Wrenfold' })
  await rosa.getByRole('button', { name: 'Make a link' }).click()
  await expect(rosa.getByRole('img', { name: 'Code to scan' })).toBeVisible()
  // A code that was taken back is not there to be handed over.
  await rosa.getByRole('button', { name: 'Take this link back' }).click()
  await expect(rosa.getByRole('img', { name: 'Code to scan' })).toBeHidden()
  await rosa.getByRole('button', { name: 'Make a link' }).click()
  await expect(rosa.getByRole('img', { name: 'Code to scan' })).toBeVisible()
  const link = await rosa.getByRole('textbox').inputValue()
  await expectGoodPage(coach)

  // Without a script, as on an old phone.
  const phone = await browser.newContext({ javaScriptEnabled: false })
  const parent = await phone.newPage()
  await parent.goto(link)
  await expect(parent).toHaveURL(/\/welcome$/)
  await expect(parent.getByText('lets you read one page about your child')).toBeVisible()
  await parent.getByLabel('Your e-mail address').fill('rosa@example.org')
  await parent.getByLabel('A password').fill('seven quiet herons wade home')
  await parent.getByRole('button', { name: 'Open my child’s page' }).click()
  await expect(parent).toHaveURL(/\/family\//)
  await expect(parent.getByRole('heading', { level: 1, name: 'Kiri Wrenfold' })).toBeVisible()

  const late = await (await browser.newContext()).newPage()
  await late.goto(link)
  await expect(late.getByText('This link opens nothing.')).toBeVisible()

  await office.goto('/club/record')
  await expect(office.getByText('Choose what is shown')).toBeVisible()
  await expect(office.getByText('Rosa Wrenfold looked at the family’s page of Kiri Wrenfold.')).toBeVisible()
})
