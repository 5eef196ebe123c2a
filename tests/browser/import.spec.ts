import { readFile } from 'node:fs/promises'
import { expect, type Page, test } from '@playwright/test'
import { expectGoodPage } from './support/axe'

// The tests of a run share one book: names are told apart by the width they were imported at, and they go into the
// older squad, so that the younger one keeps its fourteen players for the practice that is typed in.

async function openFiles(page: Page) {
  await page.goto('/')
  await page.getByText('Others of this club').click()
  await page.getByRole('button', { name: /Under-12s/ }).click()
  await page.getByRole('navigation').getByRole('link', { name: 'Files' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^Files/)
}

async function choose(page: Page, name: string, content: Buffer | string) {
  await page
    .getByLabel('The file')
    .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(content as string) })
}

const row = (page: Page, line: number) => page.getByRole('listitem').filter({ hasText: `Line ${line} ` })

for (const width of [390, 1280]) {
  test.describe(`at ${width} px`, () => {
    test.use({ viewport: { width, height: 844 } })

    test('a roster is looked at, its questions answered, imported whole, and comes out again', async ({
      page,
    }) => {
      await openFiles(page)
      const names = [
        `"O'Brien-Łukasz, Zoë${width}"`,
        `"Ash, Neo${width}"`,
        `"Ash, Neo${width}"`,
        `"Ash, Neo${width}"`,
      ]
      const dates = ['3/4/2026', '3/4/2026', '3/4/2026', '5/6/2026']
      await choose(
        page,
        'roster.csv',
        `Trial day;\nName;Joined\n${names.map((name, at) => `${name};${dates[at]}`).join('\n')}\n;\n`,
      )

      await expect(page.getByText('Which comes first in the dates')).toBeVisible()
      const button = page.getByRole('button', { name: 'Import all of it' })
      await expect(button).toBeDisabled()
      await page.getByLabel('Dates are written').selectOption('dmy')
      await expect(page.getByText('Which comes first in the dates')).toBeHidden()
      await expect(row(page, 3)).toContainText(`Zoë${width} O'Brien-Łukasz, member from 2026-04-03`)
      await expect(row(page, 5)).toContainText('The same player as line 4')
      await expect(row(page, 6)).toContainText('Is it the same player?')
      await expectGoodPage(page)
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
      ).toBeLessThanOrEqual(0)

      await row(page, 6).getByRole('combobox').selectOption('new')
      await expect(page.getByText(/3 new players/)).toBeVisible()
      await button.click()
      await expect(page.getByRole('status').filter({ hasText: 'Imported: 3 new players' })).toBeVisible()

      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('link', { name: 'Roster (CSV)' }).click(),
      ])
      expect(download.suggestedFilename()).toMatch(/roster .*\.csv$/)
      const text = await readFile(await download.path(), 'utf8')
      expect(text.match(new RegExp(`Neo${width} Ash,`, 'g'))).toHaveLength(2)
    })

    test('an attendance list with a mark nobody knows asks what it means', async ({ page }) => {
      await openFiles(page)
      await page.getByRole('radio', { name: /Attendance/ }).check()
      await choose(page, 'attendance.csv', `Name,2099-01-05\nSomebody${width},zz\n`)
      await expect(page.getByText('It is not clear what “zz” means')).toBeVisible()
      await page.getByLabel(/^“zz”, 1 time/).selectOption('here')
      await expect(page.getByText('Who is it?')).toBeVisible()
      await expect(page.getByText(/has not come yet|in no season/)).toBeVisible()
      await expect(page.getByRole('button', { name: 'Import all of it' })).toBeDisabled()
    })

    test('what cannot be read is refused in a sentence, and the next file is looked at', async ({ page }) => {
      await openFiles(page)
      await choose(page, 'sheet.xlsx', Buffer.from([0x50, 0x4b, 3, 4, 0, 0, 0]))
      await expect(page.getByRole('alert').filter({ hasText: 'not a text' })).toBeVisible()
      await choose(page, 'roster.csv', `Name\nCy Cole${width}\n`)
      await expect(page.getByText(`New player: Cy Cole${width}`)).toBeVisible()
      await expect(page.getByRole('alert').filter({ hasText: 'not a text' })).toBeHidden()
    })
  })
}

test('a parent finds no files: neither the page nor anything to take away', async ({ page }) => {
  await openFiles(page)
  const address = page.url()
  await page.context().clearCookies()
  await page.goto('/')
  await page
    .getByRole('button', { name: /parent/i })
    .first()
    .click()
  await page.waitForURL((url) => url.pathname !== '/')
  await page.goto(address)
  // Streaming has begun before the page knows who asks: what counts is what is shown.
  await expect(page.getByRole('heading', { level: 1 })).not.toHaveText(/^Files/)
  await expect(page.getByText('Take in a file')).toHaveCount(0)
  await expect(page.getByText('Roster (CSV)')).toHaveCount(0)
  const file = await page.request.get(address.replace(/files$/, 'export/roster'))
  expect(file.status()).toBe(404)
})
