import { demoSquads } from './club'
import { buildDemoClub } from './demo-club'
import { printJson } from './print-json'
import { seasonLogOfSquad } from './season-log-of-squad'

/** The files beside the demo club, by name, to the byte: a season log for the command, and two lists as people have them. */
export function demoFiles(): ReadonlyMap<string, Uint8Array> {
  const log = printJson(seasonLogOfSquad(buildDemoClub(), demoSquads.underTen.id))
  return new Map([
    ['demo-season-log.json', new TextEncoder().encode(log)],
    ['demo-roster.csv', inWindows1252(rosterLines.join('\r\n'))],
    ['demo-attendance.csv', new TextEncoder().encode(`${byteOrderMark}${attendanceLines.join('\n')}\n`)],
  ])
}

const byteOrderMark = '\uFEFF'

/** From a spreadsheet of another age: a title, semicolons, surname first, one child twice, one known already. */
const rosterLines = [
  'Trial day, under-tens;;;;',
  'Surname;First name;May keep;Joined;Kit number',
  'Quillfeather-Núñez;Iñaki;no;13.06.2026;21',
  'D’Arcy-Møss;Zoë;yes;13.06.2026;22',
  '"Pebble ""Pip"" Brookes";Ana  María;;13.06.2026;23',
  "O'Thornwillow;Séamus;no;13.06.2026;24",
  'Quillfeather-Núñez;Iñaki;no;13.06.2026;21',
  'Marlwick;Dilnoza;yes;01.09.2025;4',
  ';;;;',
  '',
]

/** A coach's own sheet for three practices nobody wrote down. */
const attendanceLines = [
  'Player,07/10/2025,25/11/2025,24/03/2026',
  'Adaeze Fernhollow,1,1,1',
  'Bao Quillstone,1,0,1',
  'Cosmo Brackenlight,1,1,late 10',
  'Dilnoza Marlwick,1,1,1',
  'Elif Copperdene,0,1,1',
  'Freya Ottermere,0,0,1',
  'Goran Pellbrook,1,1,1',
  'Hana Saltmarrow,1,late 15,1',
  'Inês Larkspindle,1,1,0',
  'Jiho Umberfield,1,1,1',
  'Kiri Wrenfold,1,inj,1',
  'Luca Sandthistle,1,1,1',
  "Mina O'Thornwillow,1,1,0",
  'Noor Applemoor,0,1,1',
]

/** Latin letters as Windows-1252 has them; of its own 27 signs only the curly apostrophe is needed here. */
function inWindows1252(text: string): Uint8Array {
  return Uint8Array.from(text, (letter) => {
    const code = letter === '’' ? 0x92 : (letter.codePointAt(0) ?? 0)
    if (code > 0xff) throw new Error(`${letter} is not in Windows-1252.`)
    return code
  })
}
