import { z } from 'zod'
import { situations } from '#exposure/column'
import { seatRoles } from '#practice/turn'
import { noFocus, type ThemeFocus } from '#themes/theme-focus'

export const focusRolesShape = z.array(z.enum(seatRoles)).max(seatRoles.length)
export const focusSituationsShape = z.array(z.enum(situations)).max(situations.length)

/** What a theme is about, as the database keeps it; an empty object is a theme that is about anything. */
export const themeFocusShape: z.ZodType<ThemeFocus> = z
  .object({ roles: focusRolesShape, situations: focusSituationsShape })
  .partial()
  .transform((focus) => ({ ...noFocus, ...focus }))
