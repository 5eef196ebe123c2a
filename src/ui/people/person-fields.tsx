import type { ViewerRole } from '#access/viewer'
import { capital } from '#ui/capital'
import { Field } from '#ui/page/field'
import { Select } from '#ui/page/select'
import { words } from '#ui/words'

type PersonFieldsProps = {
  readonly person: { readonly name: string; readonly email: string | null; readonly role: ViewerRole }
  readonly roles: readonly ViewerRole[]
}

export const personPlaces = { name: 'Name', email: 'E-mail', role: 'Role' }

/** Name, address and role. */
export function PersonFields({ person, roles }: PersonFieldsProps) {
  return (
    <>
      <Field
        name="name"
        label={personPlaces.name}
        required
        maxLength={80}
        autoComplete="off"
        defaultValue={person.name}
      />
      <Field
        name="email"
        label={personPlaces.email}
        hint="Only to send a link to. Can stay empty."
        type="email"
        maxLength={254}
        autoComplete="off"
        defaultValue={person.email ?? ''}
      />
      <Select
        name="role"
        label={personPlaces.role}
        defaultValue={person.role}
        options={roles.map((role) => ({ value: role, label: capital(words.viewerRole[role]) }))}
      />
    </>
  )
}
