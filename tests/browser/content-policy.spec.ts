import { expect, type Page, test } from '@playwright/test'
import { openTab, signIn } from './support/sign-in'

/** What a page was kept from loading or doing: W3C Content Security Policy 3 has it as an event, and browsers print it. */
async function listenForViolations(page: Page): Promise<readonly string[]> {
  const found: string[] = []
  await page.exposeFunction('turnbookViolation', (what: string) => found.push(what))
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI, sourceFile }) => {
      const told = `${location.pathname}: ${violatedDirective} ${blockedURI} ${sourceFile}`
      ;(window as unknown as { turnbookViolation: (what: string) => void }).turnbookViolation(told)
    })
  })
  page.on('console', (message) => {
    if (/content security policy/i.test(message.text())) found.push(message.text())
  })
  return found
}

test('the policy of the pages keeps out what is not theirs, and nothing that is', async ({ page }) => {
  const violations = await listenForViolations(page)
  await signIn(page, 'Coach')
  for (const tab of ['Season book', 'Practices and matches', 'Themes', 'Flags', 'Files'])
    await openTab(page, tab)
  await openTab(page, 'Today')
  // The solver: a worker, with WebAssembly in it.
  await page.getByRole('link', { name: 'To the pitch' }).click()
  await expect(page.getByRole('navigation', { name: 'Screens of the practice' })).toBeVisible()
  await page.goto('/')
  await signIn(page, 'Parent')
  await page.goto('/')
  await page.getByText('Others of this club').click()
  await page.getByRole('button', { name: /^Administrator/ }).click()
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
  for (const of of ['people', 'seasons', 'squads', 'requests']) {
    await page.goto(`/club/${of}`)
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
  }
  expect(violations).toEqual([])

  // That the listening hears, and that the policy holds: what markup that got in would try first.
  const isRun = await page.evaluate(async () => {
    const planted = document.createElement('div')
    planted.innerHTML = '<img src="/nothing" onerror="window.planted = true" alt="">'
    document.body.append(planted)
    const picture = new Image()
    picture.src = 'https://elsewhere.example/look.png'
    await new Promise((done) => setTimeout(done, 300))
    return 'planted' in window
  })
  expect(isRun).toBe(false)
  expect(violations.join('\n')).toMatch(/script-src-attr inline/)
  expect(violations.join('\n')).toMatch(/img-src https:\/\/elsewhere\.example/)
})
