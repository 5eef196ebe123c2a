import type { Viewer } from '#access/viewer'
import { newId } from '#data/ids'
import { recordSquads } from '#data/squads'
import { type FileInput, fileInput } from '#server/import-input'
import type { TestClub } from './test-club'

/** What the page sends of a file, by the page's own schema. */
export function anImport(
  file: string | Uint8Array,
  input: { readonly squadId: string; readonly what: FileInput['what'] } & Partial<Omit<FileInput, 'file'>>,
): FileInput {
  const bytes = typeof file === 'string' ? new TextEncoder().encode(file) : file
  return fileInput.parse({ ...input, file: new File([bytes as Uint8Array<ArrayBuffer>], 'file.csv') })
}

export function headCoachOf(at: TestClub): Viewer {
  return {
    clubId: at.club.id,
    personId: at.headCoachId,
    name: 'Lou Wynd',
    role: 'headCoach',
    squadIds: [],
    playerIds: [],
  }
}

export function coachOf(at: TestClub, squadIds: readonly string[] = [at.squadId]): Viewer {
  return {
    clubId: at.club.id,
    personId: at.coach.personId,
    name: 'Kit Vale',
    role: 'coach',
    squadIds,
    playerIds: [],
  }
}

/** A second squad of the club, with nobody in it. */
export async function emptySquad(at: TestClub): Promise<string> {
  const id = newId()
  await at.run((tx) => recordSquads(tx, [{ id, name: `Herons ${id.slice(-4)}`, ageLimit: 12 }]))
  return id
}
