import { expect, type Page, test } from '@playwright/test'
import { expectGoodPage } from './support/axe'
import { signIn } from './support/sign-in'

// The tests of a run share one book: each enters a practice of its own and looks at what that one changes.

/** Enters a practice of today, with a title of its own and no design, and stands on the page of writing it down. */
async function enterPractice(page: Page) {
  await page.getByRole('link', { name: 'Practices and matches' }).click()
  await page.getByRole('link', { name: 'New practice or match' }).click()
  // A second practice of a day needs another title.
  await page.getByLabel('Title').fill(test.info().testId)
  await page.getByRole('button', { name: 'Go on to writing it down' }).click()
  await expect(page.getByRole('heading', { name: 'Turns' })).toBeVisible()
  await expect(page.locator('#cell-13-3')).toBeVisible()
}

async function writeItDown(page: Page) {
  await page.getByRole('button', { name: 'Write it down' }).click()
  // The account and the flags of the whole season are made anew with it: on a busy machine that takes its time.
  await expect(page.getByRole('heading', { name: 'What it came to' })).toBeVisible({ timeout: 20_000 })
}

type AttackOfBook = { readonly had: number; readonly even: number; readonly difference: number }

/** The first player's attack in the season book, in minutes. */
async function attackInBook(page: Page): Promise<AttackOfBook> {
  await page.getByRole('link', { name: 'Season book' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^Season book/)
  const first = page.getByRole('img', { name: /^Attack: had/ }).first()
  const name = (await first.getAttribute('aria-label')) ?? ''
  const [, had, even] = /had (\d+) min, even share (\d+) min/.exec(name) ?? []
  const [, size = '0', side] = /(\d+) min (less|more)/.exec(name) ?? []
  return { had: Number(had), even: Number(even), difference: side === 'less' ? -Number(size) : Number(size) }
}

const markOf = (page: Page, row: number, column: number) => page.locator(`#cell-${row}-${column}`)

test.describe('with a keyboard, at 1280 px', () => {
  test.use({ viewport: { width: 1280, height: 900 } })

  test('a practice of fourteen players and four rounds is typed in, and the season book moves by it', async ({
    page,
  }) => {
    await signIn(page, 'Coach')
    const before = await attackInBook(page)
    await enterPractice(page)

    let strokes = 0
    const press = async (key: string) => {
      strokes += 1
      await page.keyboard.press(key)
    }
    await markOf(page, 0, 0).click()
    // The click on the first cell marked it; the first letter says what it is.
    for (const key of 'aaaaaadddddkww') await press(key)
    for (let round = 2; round <= 4; round++) {
      await press('s')
      // Whoever is first attacks in every round; the next key stands in the cell below, so it goes back up.
      await press('a')
      await press('ArrowUp')
      if (round < 4) await press('ArrowRight')
    }
    test.info().annotations.push({ type: 'key strokes', description: String(strokes) })
    expect(strokes).toBeLessThanOrEqual(30)

    await expect(
      page.getByRole('button', { name: /^Round 1: 6 against 5, 1 in goal; 2 waiting/ }),
    ).toBeVisible()
    await expect(page.getByRole('button', { name: /^Round 2: 6 against 5, 1 in goal/ })).toBeVisible()
    await expect(markOf(page, 6, 1)).toHaveText('A')
    await expect(markOf(page, 0, 3)).toHaveText('A')
    await expectGoodPage(page)

    // What the page shows before it is written is what the book says after.
    await page.getByText('What this comes to: 24 turns').click()
    const preview = await page.getByRole('row').filter({ hasText: /24 ×/ }).first().textContent()
    await writeItDown(page)
    const written = await page.getByRole('row').filter({ hasText: /24 ×/ }).first().textContent()
    expect(written).toBe(preview)
    await expectGoodPage(page)

    const after = await attackInBook(page)
    // Four rounds of six turns of 45 s are 18 minutes; what is shown is rounded.
    expect(Math.abs(after.had - before.had - 18)).toBeLessThanOrEqual(1)
    const [, even = ''] = /24 × 18\.0 \(([\d.]+)\)/.exec((preview ?? '').replace(/\s+/g, ' ')) ?? []
    expect(Math.abs(after.even - before.even - Number(even))).toBeLessThanOrEqual(1)
    expect(after.difference).toBeGreaterThan(before.difference)
    expect(Math.abs(after.difference - before.difference - (18 - Number(even)))).toBeLessThanOrEqual(1.5)
  })

  test('a block of a spreadsheet is pasted, with names, and one wrong cell refuses all of it', async ({
    page,
    context,
  }) => {
    await context.grantPermissions(['clipboard-read', 'clipboard-write'])
    await signIn(page, 'Coach')
    await enterPractice(page)
    const names = await page.getByRole('rowheader').allInnerTexts()
    const paste = async (text: string) => {
      await page.evaluate((block) => navigator.clipboard.writeText(block), text)
      await markOf(page, 0, 0).focus()
      await page.keyboard.press('ControlOrMeta+v')
    }
    await paste(`${names[3]}\tA\tD\n${names[5]}\tD\tQ`)
    await expect(page.getByText('Line 2, cell 3 of what you pasted is “Q”')).toBeVisible()
    await expect(markOf(page, 3, 0)).toHaveText('')
    await paste(`${names[3]}\tA\tD\n${names[5]}\tD\tA`)
    await expect(markOf(page, 3, 0)).toHaveText('A')
    await expect(markOf(page, 5, 1)).toHaveText('A')
  })

  test('what does not fit is said at once, is not written, and nothing typed is lost, not by a reload either', async ({
    page,
  }) => {
    await signIn(page, 'Coach')
    await enterPractice(page)
    await markOf(page, 0, 0).focus()
    for (const key of 'aaadd') await page.keyboard.press(key)
    await page.getByRole('button', { name: /^Round 1:/ }).click()
    await page
      .getByRole('region', { name: 'Settings of Round 1' })
      .getByRole('button', { name: 'Areas: more' })
      .click()
    await expect(page.getByText('Round 1: 3 attacking do not go evenly into 2 areas.').first()).toBeVisible()
    await page.getByRole('button', { name: 'Write it down' }).click()
    await expect(page.getByText('Nothing was saved; what you typed is still here')).toBeVisible()
    await expect(markOf(page, 2, 0)).toHaveText('A')
    await page.reload()
    await expect(page.getByText('What you had typed here before is back.')).toBeVisible()
    await expect(markOf(page, 2, 0)).toHaveText('A')
    // A fourth attacker and it fits: two against one in either area.
    await markOf(page, 5, 0).focus()
    await page.keyboard.press('a')
    await expect(page.getByRole('button', { name: /^Round 1: 2 against 1, 2 areas/ })).toBeVisible()
    await writeItDown(page)
  })

  test('of two who write the same practice the second is told, and keeps what was typed', async ({
    page,
    context,
  }) => {
    await signIn(page, 'Coach')
    await enterPractice(page)
    const second = await context.newPage()
    await second.goto(page.url())
    for (const one of [page, second]) {
      await markOf(one, 0, 0).focus()
      for (const key of 'ad') await one.keyboard.press(key)
    }
    await writeItDown(page)
    await second.getByRole('button', { name: 'Write it down' }).click()
    await expect(second.getByText('Somebody else wrote this at the same time')).toBeVisible()
    await expect(markOf(second, 1, 0)).toHaveText('D')
  })

  test('as planned, except: stopped early, one left, two swapped; it says so', async ({ page }) => {
    await signIn(page, 'Coach')
    await enterPractice(page)
    await page.getByRole('button', { name: 'As planned, except' }).click()
    await page.getByLabel('Practice design').selectOption({ index: 1 })
    await page.getByLabel('Played').selectOption('4')
    await expect(page.getByText('What this comes to: 4 turns')).toBeVisible()
    await page.getByText(/^Who was there/).click()
    await page
      .getByRole('button', { name: /^More for/ })
      .first()
      .click()
    await page.getByLabel('At minute').fill('2')
    await page.getByRole('button', { name: 'left then' }).click()
    await expect(markOf(page, 0, 3)).toHaveText('–')
    const [third, fourth] = [await markOf(page, 2, 1).textContent(), await markOf(page, 3, 1).textContent()]
    await page.getByLabel('First of the two who swapped').selectOption({ index: 3 })
    await page.getByLabel('Second of the two who swapped').selectOption({ index: 4 })
    await page.getByRole('button', { name: 'Swap', exact: true }).click()
    await expect(markOf(page, 2, 1)).toHaveText(fourth ?? '')
    await expect(markOf(page, 3, 1)).toHaveText(third ?? '')
    await writeItDown(page)
    await expect(page.getByText(/as planned/).first()).toBeVisible()
  })
})

test.describe('by taps, at 390 px', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true })

  test('the same practice and a free game after it, then a turn is corrected', async ({ page }) => {
    await signIn(page, 'Coach')
    await enterPractice(page)
    let taps = 0
    const tap = async (name: string | RegExp) => {
      taps += 1
      await page.getByRole('button', { name }).tap()
    }
    const tapCell = async (row: number) => {
      taps += 1
      await markOf(page, row, 0).tap()
    }
    await tap('attacking')
    for (let row = 0; row < 6; row++) await tapCell(row)
    await tap('defending')
    for (let row = 6; row < 11; row++) await tapCell(row)
    await tap('in goal')
    await tapCell(11)
    for (const round of [2, 3, 4]) await tap(`Round ${round}: as the one before, sides swapped`)
    test.info().annotations.push({ type: 'taps', description: String(taps + 1) })
    expect(taps).toBeLessThanOrEqual(30)
    await expectGoodPage(page)
    await tap('+ free game')
    await tap('Free game: as the one before, sides swapped')
    await expect(page.getByText('What this comes to: 26 turns')).toBeVisible()
    await writeItDown(page)
    await expectGoodPage(page)

    await page.getByRole('link', { name: 'Correct turn 2', exact: true }).tap()
    await expect(markOf(page, 0, 0)).toHaveText('A')
    await markOf(page, 0, 0).tap()
    await expect(markOf(page, 0, 0)).toHaveText('D')
    await writeItDown(page)
    await page.getByText('Everything as it was written; 1 correction').tap()
    await expect(page.locator('del')).toHaveCount(1)
    await expect(page.locator('li').filter({ has: page.locator('del') })).toContainText(
      /written by .+; corrected by .+/,
    )
  })

  test('round by round: sides stay and swap what they do', async ({ page }) => {
    await signIn(page, 'Coach')
    await enterPractice(page)
    await page.getByRole('button', { name: 'Round by round' }).tap()
    const round = (number: number) => page.getByRole('region', { name: `Round ${number}`, exact: true })
    await page.getByRole('button', { name: 'attacking', exact: true }).tap()
    for (let player = 0; player < 3; player++)
      await round(1).getByRole('listitem').nth(player).getByRole('button').tap()
    await page.getByRole('button', { name: 'defending', exact: true }).tap()
    for (let player = 3; player < 5; player++)
      await round(1).getByRole('listitem').nth(player).getByRole('button').tap()
    await round(1).getByRole('button', { name: 'Balls: fewer' }).tap()
    await round(2).getByRole('button', { name: 'Sides stay, roles swap' }).tap()
    await expect(round(1).getByRole('heading')).toContainText('3v2')
    await expect(round(2).getByRole('heading')).toContainText('2v3')
    await expect(page.getByText('What this comes to: 11 turns')).toBeVisible()
    await writeItDown(page)
    await expect(page.getByText(/round by round/).first()).toBeVisible()
  })

  test('out for today takes a held press and a second answer, both ways', async ({ page }) => {
    await signIn(page, 'Coach')
    await enterPractice(page)
    await page.getByText(/^Who was there/).tap()
    await page
      .getByRole('button', { name: /^More for/ })
      .first()
      .tap()
    const out = page.getByRole('button', { name: 'out for today from then' })
    await out.tap()
    await expect(page.getByRole('alertdialog')).toBeHidden()
    const hold = async () => {
      await page.mouse.down()
      await expect(page.getByRole('alertdialog')).toBeVisible()
      await page.mouse.up()
    }
    await out.hover()
    await hold()
    await page.getByRole('button', { name: 'Yes, out for today' }).tap()
    await expect(markOf(page, 0, 0)).toHaveText('–')
    await page
      .getByRole('button', { name: /^More for/ })
      .first()
      .tap()
    await page.getByRole('button', { name: 'Take back “out for today”' }).hover()
    await hold()
    await page.getByRole('alertdialog').getByRole('button', { name: 'No' }).tap()
    await expect(markOf(page, 0, 0)).toHaveText('–')
  })

  test('a match is typed in: periods, a change, lines', async ({ page }) => {
    await signIn(page, 'Coach')
    await page.getByRole('link', { name: 'Practices and matches' }).tap()
    await expectGoodPage(page)
    await page.getByRole('link', { name: 'New practice or match' }).tap()
    await page.getByRole('button', { name: 'Match', exact: true }).tap()
    await expectGoodPage(page)
    await page.getByRole('button', { name: 'Go on to writing it down' }).tap()
    await markOf(page, 0, 0).focus()
    for (const key of 'kbbmmff') await page.keyboard.press(key)
    await page.getByRole('button', { name: /as before$/ }).tap()
    await page.getByLabel('A change at minute').fill('40')
    await page.getByRole('button', { name: '+ change' }).tap()
    await markOf(page, 6, 2).focus()
    await page.keyboard.press('o')
    await page.keyboard.press('f')
    await expect(page.getByText('1-2-2-2 = 7')).toHaveCount(3)
    await expectGoodPage(page)
    await writeItDown(page)
    await expect(page.getByRole('heading', { name: 'Places' })).toBeVisible()
    await expectGoodPage(page)
  })
})
