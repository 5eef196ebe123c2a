import { expect, test } from '@playwright/test'
import { signIn } from './support/sign-in'

// The device is Chromium's own virtual one (WebAuthn Level 3, 11: automation), so that a whole passkey is made and used.
test('a passkey is added, signs in without a password, and is taken away', async ({ page }) => {
  const device = await page.context().newCDPSession(page)
  await device.send('WebAuthn.enable')
  await device.send('WebAuthn.addVirtualAuthenticator', {
    options: {
      protocol: 'ctap2',
      transport: 'internal',
      hasResidentKey: true,
      hasUserVerification: true,
      isUserVerified: true,
      automaticPresenceSimulation: true,
    },
  })
  await signIn(page, 'Coach')
  await page.goto('/account')
  await page.getByLabel('What you call it').fill('left pocket')
  await page.getByRole('button', { name: 'Add a passkey' }).click()
  await expect(page.getByText('From now on this passkey signs you in.')).toBeVisible()
  await page.reload()
  await expect(page.getByText('left pocket')).toBeVisible()

  await page.context().clearCookies()
  await page.goto('/sign-in')
  await page.getByRole('button', { name: 'Sign in with a passkey' }).click()
  await expect(page).toHaveURL(/\/today$/)

  await page.goto('/account')
  await expect(page.getByText('Used just now', { exact: true })).toBeVisible()
  await page.getByRole('button', { name: 'Take away the passkey left pocket' }).click()
  await expect(page.getByText('left pocket')).toBeHidden()
  await page.context().clearCookies()
  await page.goto('/sign-in')
  await page.getByRole('button', { name: 'Sign in with a passkey' }).click()
  await expect(page.getByText('No sign-in here knows this passkey.')).toBeVisible()
})

test('a wrong password is answered without saying which of both was wrong', async ({ page }) => {
  await page.goto('/sign-in')
  await page.getByLabel('Your e-mail address').first().fill('nobody@example.org')
  await page.getByLabel('Password', { exact: true }).fill('seven quiet herons over marl')
  await page.getByRole('button', { name: 'Sign in', exact: true }).click()
  await expect(page.getByText('Address and password do not belong together.')).toBeVisible()
})

test('an address for a calendar program is shown once, is read without a sign-in, and is taken back', async ({
  page,
  playwright,
}) => {
  await signIn(page, 'Coach')
  await page.goto('/account')
  await page.getByRole('button', { name: 'Make an address' }).click()
  const address = await page.getByLabel('Or copy the link').inputValue()
  const stranger = await playwright.request.newContext()
  const given = await stranger.get(address)
  expect(given.headers()['content-type']).toBe('text/calendar; charset=utf-8')
  expect(await given.text()).toMatch(/^BEGIN:VCALENDAR\r\n/)
  await page.reload()
  await expect(page.getByText('last read on')).toBeVisible()
  await expect(page.getByLabel('Or copy the link')).toBeHidden()
  await page.getByRole('button', { name: 'Take the address back' }).click()
  await expect(page.getByRole('button', { name: 'Make an address' })).toBeVisible()
  expect((await stranger.get(address)).status()).toBe(404)
})
