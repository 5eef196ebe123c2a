'use server'

import { z } from 'zod'
import { action } from '#server/action'
import { makePassOf, takeBackPassOf } from '#server/helper-deeds'
import { sessionOfSquad } from '#server/session-input'

const passOfSession = sessionOfSquad.extend({ passId: z.uuid() })

/** A code to scan, for one helper at one practice until midnight. */
export const makeHelperPass = action(sessionOfSquad, (viewer, input) => makePassOf(viewer, input))

/** A code that is to open nothing any more. */
export const takeBackHelperPass = action(passOfSession, (viewer, input) => takeBackPassOf(viewer, input))
