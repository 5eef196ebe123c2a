import { expect, type Page } from '@playwright/test'

const starts = {
  'Head coach': /\/review$/,
  Coach: /\/squads\/[^/]+\/today$/,
  Parent: /\/family\/[^/]+$/,
} as const

/** Signs in by the big button of the first page, and stands where that person begins. */
export async function signIn(page: Page, as: keyof typeof starts): Promise<void> {
  await page.goto('/')
  await page
    .getByRole('button', { name: new RegExp(`^${as}`) })
    .first()
    .click()
  await expect(page).toHaveURL(starts[as])
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
}

/** Follows a section of the book. */
export async function openTab(page: Page, name: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Sections of the book' }).getByRole('link', { name }).click()
  await expect(
    page.getByRole('navigation', { name: 'Sections of the book' }).getByRole('link', { name }),
  ).toHaveAttribute('aria-current', 'page')
}

/** Names and addresses of the squad's players, as its coach's season book links them. */
export async function playersInBook(
  page: Page,
): Promise<readonly { readonly id: string; readonly name: string }[]> {
  await openTab(page, 'Season book')
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^Season book/)
  const links = page.locator('main a[href*="/players/"]')
  const players = await links.evaluateAll((all) =>
    all.map((link) => ({
      id: link.getAttribute('href')?.split('/').at(-1) ?? '',
      name: link.textContent ?? '',
    })),
  )
  expect(players.length).toBeGreaterThan(10)
  return players
}
