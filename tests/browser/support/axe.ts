import { expect, type Page } from '@playwright/test'
import axeCore from 'axe-core'

type Finding = {
  readonly id: string
  readonly impact: string
  readonly nodes: readonly { readonly html: string }[]
}

/** Holds the page against axe's rules, and against its own width: nothing may stick out sideways. */
export async function expectGoodPage(page: Page): Promise<void> {
  // Between two pages of one visit the document has no title for a moment.
  await expect(page).toHaveTitle(/\S/)
  await page.evaluate(axeCore.source)
  const found = await page.evaluate(async () => {
    const { axe } = window as unknown as { axe: { run: () => Promise<{ violations: readonly Finding[] }> } }
    const { violations } = await axe.run()
    return violations
      .filter(({ impact }) => impact === 'serious' || impact === 'critical')
      .map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)
  })
  expect(found, page.url()).toEqual([])
  const beyond = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
  expect(beyond, `${page.url()} is wider than the screen`).toBeLessThanOrEqual(0)
}
