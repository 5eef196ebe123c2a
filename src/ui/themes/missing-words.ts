import type { ExpectedAttendance } from '#ahead/attendance/expected-attendance'
import type { ProgrammeForecast, ThemeForecast } from '#ahead/missing/forecast-themes'
import { words } from '#ui/words'

// Half a practice more or less decides nothing.
const short = ({ atEnd, dueAtEnd }: ThemeForecast) => Math.max(0, Math.round(dueAtEnd - atEnd))

/** "8 practices are still to come this term; 3 have no theme yet. As things stand, 4 of 6 themes end as wished." */
export function forecastSentence({ coming, open, themes }: ProgrammeForecast): string {
  const wished = themes.filter((own) => short(own) === 0).length
  const ends = `${wished} of ${themes.length} ${themes.length === 1 ? 'theme ends' : 'themes end'} with as many practices as wished.`
  if (coming === 0) return `No practice is still to come in this term. ${ends}`
  const are = coming === 1 ? 'is' : 'are'
  return `${words.practices(coming)} ${are} still to come; ${themedText({ coming, open })}, ${ends}`
}

function themedText({ coming, open }: Pick<ProgrammeForecast, 'coming' | 'open'>): string {
  const each = coming === 1 ? 'it' : 'each'
  if (open === 0) return `${each} has its theme. As planned`
  if (open === coming) return `no theme is planned yet. If ${coming === 1 ? 'it goes' : 'they go'} as so far`
  return `${open} ${open === 1 ? 'has' : 'have'} no theme yet. As planned, and if the others go as so far`
}

/** How the term ends for a theme: "2 too few". */
export function endText(own: ThemeForecast): string {
  const missing = short(own)
  return missing > 0 ? `${missing} too few` : 'as wished'
}

/** How it is expected who comes. */
export const attendanceWords: Readonly<Record<ExpectedAttendance['method'], string>> = {
  drawn:
    'Who comes is expected from each player’s own record of this term, drawn towards the squad’s: the shorter the record, the more.',
  squad:
    'Everyone is expected as often as the squad has come so far: single records do not tell players apart yet.',
  none: 'Nothing was held yet, so everyone is taken to come.',
}
