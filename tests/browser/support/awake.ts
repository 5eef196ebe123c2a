import { expect, type Locator } from '@playwright/test'

/**
 * Waits until the page's script has taken over what stands there. Before that a button does what it does without a
 * script. React marks its own elements with keys of this name (its source, not its documentation).
 */
export async function awake(element: Locator): Promise<void> {
  await expect
    .poll(() => element.evaluate((node) => Object.keys(node).some((key) => key.startsWith('__reactProps$'))))
    .toBe(true)
}
