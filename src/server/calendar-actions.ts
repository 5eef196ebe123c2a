'use server'

import { z } from 'zod'
import { action } from '#server/action'
import { makeCalendarInput, makeCalendarOf, takeBackCalendarOf } from '#server/calendar-deeds'
import { addressOfRequest } from '#server/request-address'

/** A new address for one's own calendar program. */
export const makeOwnCalendar = action(makeCalendarInput, async (viewer, { squadIds }) =>
  makeCalendarOf(viewer, { squadIds, address: await addressOfRequest() }),
)

/** The address opens nothing any more. */
export const takeBackOwnCalendar = action(z.object({}), (viewer) => takeBackCalendarOf(viewer))
