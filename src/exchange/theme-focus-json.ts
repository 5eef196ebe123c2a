import { z } from 'zod'
import { noFocus, type ThemeFocus } from '#themes/theme-focus'

/** What a theme is about, as the database keeps it; an empty object is a theme that is about anything. */
export const themeFocusShape: z.ZodType<ThemeFocus> = z
  .object({
    roles: z.array(z.enum(['attack', 'defend', 'keep'])).max(3),
    situations: z.array(z.enum(['outnumbering', 'level', 'outnumbered'])).max(3),
  })
  .partial()
  .transform((focus) => ({ ...noFocus, ...focus }))
