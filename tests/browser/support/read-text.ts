import type { Locator, Page } from '@playwright/test'

/** What a person reads there: only what is shown. */
export function readText(page: Page, part: Locator = page.locator('main')): Promise<string> {
  // biome-ignore lint/performance/useDomNodeTextContent: textContent would read what is hidden too
  return part.innerText()
}
