'use server'

import { action } from '#server/action'
import { eraseChildOf, recordConsentOf, withdrawConsentOf } from '#server/change-rights'
import { consentInput, eraseInput, withdrawInput } from '#server/rights-input'
import { isFresh } from '#server/sign-in'

/** Takes a child's name out of the book, for good. */
export const eraseChild = action(eraseInput, async (viewer, input) =>
  eraseChildOf(viewer, input, { isFresh: await isFresh() }),
)

/** What a guardian agreed to. */
export const recordConsent = action(consentInput, (viewer, input) => recordConsentOf(viewer, input))

/** A guardian takes back what it agreed to. */
export const withdrawConsent = action(withdrawInput, (viewer, input) => withdrawConsentOf(viewer, input))
