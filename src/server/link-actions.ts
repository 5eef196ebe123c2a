'use server'

import { action } from '#server/action'
import {
  makeFamilyLinkOf,
  makePersonLinkOf,
  revokeFamilyLinkOf,
  revokePersonLinkOf,
} from '#server/link-deeds'
import {
  familyLinkInput,
  personLinkInput,
  revokeFamilyLinkInput,
  revokePersonLinkInput,
} from '#server/people-input'
import { addressOfRequest } from '#server/request-address'

/** A link by which an adult joins, or sets a new password. */
export const makePersonLink = action(personLinkInput, async (viewer, input) =>
  makePersonLinkOf(viewer, { ...input, address: await addressOfRequest() }),
)

/** A link that opens one child's page to one guardian. */
export const makeFamilyLink = action(familyLinkInput, async (viewer, input) =>
  makeFamilyLinkOf(viewer, { ...input, address: await addressOfRequest() }),
)

/** A link of an adult that is to open nothing any more. */
export const revokePersonLink = action(revokePersonLinkInput, (viewer, input) =>
  revokePersonLinkOf(viewer, input),
)

/** A link to a child's page that is to open nothing any more. */
export const revokeFamilyLink = action(revokeFamilyLinkInput, (viewer, input) =>
  revokeFamilyLinkOf(viewer, input),
)
